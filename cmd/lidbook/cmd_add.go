package main

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

func addCommand(a *app) *cobra.Command {
	c := &cobra.Command{
		Use:   "add",
		Short: "Add a yard, boxes, a colony, a person or a queen to the book",
		Long:  "What is added counts from the book's first day, unless --on says otherwise.",
		Args:  cobra.NoArgs,
		RunE:  func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(addYard(a), addBoxes(a), addCombs(a), addPerson(a), addColony(a), addQueen(a))
	return c
}

// adding is writing of what was there before: it counts from the book's first
// day unless --on was said.
func (a *app) adding(c *cobra.Command, do func(*desk, finder, []string) error) *cobra.Command {
	return a.writing(c, func(d *desk, _ *cobra.Command, args []string) error {
		if d.flags.on == "" {
			for e := range d.season.Entries() {
				d.at = e.At
				break
			}
		}
		f, err := d.finder(d.view())
		if err != nil {
			return err
		}
		return do(d, f, args)
	})
}

func addYard(a *app) *cobra.Command {
	var y book.YardDescribed
	c := a.adding(&cobra.Command{
		Use:     "yard NAME",
		Short:   "Add a yard",
		Example: "  lidbook add yard \"Far Hill\" --drive 25",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, f finder, args []string) error {
		if _, err := f.yard(args[0]); err == nil {
			return fmt.Errorf("yard %s is there already", args[0])
		}
		y.Yard, y.Name = book.YardID(d.ids.next()), args[0]
		y.Zone = cmp.Or(y.Zone, d.zone.String())
		if _, err := namedZone(y.Zone); err != nil {
			return err
		}
		y.Home = f.HomeYard() == nil
		return d.write(y)
	})
	c.Flags().StringVar(&y.Zone, "zone", "", "its time `ZONE` (else that of the home yard)")
	amount(c, &y.Drive, "drive", 0, "`MINUTES` from home")
	signed(c, &y.Lat, "lat", "latitude in degrees, north positive")
	signed(c, &y.Lon, "lon", "longitude in degrees, east positive")
	return c
}

func addBoxes(a *app) *cobra.Command {
	var per int
	var comb combs
	var place string
	c := a.adding(&cobra.Command{
		Use:     "boxes NAMES...",
		Short:   "Add a row of boxes with their nucs and the stand they are on",
		Example: "  lidbook add boxes C1-C8 --kind mini --yard \"Far Hill\"\n  lidbook add boxes D1-D6 --sides 10 --comb 8 --at 0,-12",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, f finder, args []string) error {
		y, err := f.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		set := &setUp{ids: d.ids, yard: y.Yard, per: per, view: f.View}
		if set.combs, err = comb.filled(); err != nil {
			return err
		}
		if set.at, err = parsePoint(place); err != nil {
			return err
		}
		facts, err := set.row(strings.Join(args, ","))
		if err != nil {
			return err
		}
		if err := d.append(d.entries(d.at, facts...)...); err != nil {
			return err
		}
		d.line("added: %s in %s", strings.Join(args, ", "), y.Name)
		return nil
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	amount(c, &per, "nucs-per-box", 1, "how many nucs share a box")
	c.Flags().StringVar(&place, "at", "", "the middle of their stand, `EAST,NORTH` of the yard's origin in m (else a row on from the others)")
	comb.flags(c)
	return c
}

// parsePoint reads "4,-12" in metres; nothing for no text.
func parsePoint(text string) (*book.Point, error) {
	if text == "" {
		return nil, nil
	}
	east, north, _ := strings.Cut(text, ",")
	x, err := strconv.ParseFloat(strings.TrimSpace(east), 64)
	y, err2 := strconv.ParseFloat(strings.TrimSpace(north), 64)
	const most = 10000 // m; no yard is wider
	if err != nil || err2 != nil || !(max(x, -x, y, -y) <= most) {
		return nil, fmt.Errorf("--at %q: write metres to the east and to the north, like 4,-12", text)
	}
	return &book.Point{X: x, Y: y}, nil
}

func addCombs(a *app) *cobra.Command {
	var comb combs
	c := a.adding(&cobra.Command{
		Use:     "combs NUCS...",
		Short:   "Say how much comb nucs have that are in the book",
		Example: "  lidbook add combs A1-A12 --kind half\n  lidbook add combs B1 B2 --sides 4 --comb 1.5",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, f finder, args []string) error {
		nucs, err := f.nucs(args...)
		if err != nil {
			return err
		}
		if comb, err = comb.filled(); err != nil {
			return err
		}
		if comb.sides == 0 && comb.area == 0 {
			return fmt.Errorf("say their --kind, or --sides and --comb")
		}
		var facts []book.Fact
		for _, id := range nucs {
			n := f.Nuc(id).NucNamed
			n.Sides, n.Side = cmp.Or(comb.sides, n.Sides), cmp.Or(comb.area, n.Side)
			facts = append(facts, n)
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	comb.flags(c)
	return c
}

func addPerson(a *app) *cobra.Command {
	var phone string
	c := a.adding(&cobra.Command{
		Use:     "person \"NAME FREE HOURS\"",
		Short:   "Add a person, or say anew when one is free",
		Example: "  lidbook add person \"Jon Mon-Fri 17:00-20:00 Sat 08:00-18:00\"",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, f finder, args []string) error {
		id := book.PersonID(d.ids.next())
		p, err := person(strings.Join(args, " "), id)
		if err != nil {
			return err
		}
		if there, err := f.person(p.Name); err == nil {
			p.Person, p.Phone = there.Person, there.Phone
		}
		p.Phone = cmp.Or(phone, p.Phone)
		return d.write(p)
	})
	c.Flags().StringVar(&phone, "phone", "", "telephone `NUMBER`")
	return c
}

func addColony(a *app) *cobra.Command {
	var roles []string
	var line, queen string
	var thousands float64
	c := a.adding(&cobra.Command{
		Use:     "colony NAME",
		Short:   "Add a full-size colony, or describe it anew",
		Example: "  lidbook add colony S3 --role finisher\n  lidbook add colony S1 --role breeder --line Rook",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, f finder, args []string) error {
		y, err := f.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		fact := book.ColonyDescribed{Colony: book.ColonyID(d.ids.next()), Name: args[0], Yard: y.Yard}
		if there, err := f.colony(args[0]); err == nil {
			fact = there.ColonyDescribed
		}
		if fact.Roles, err = rolesOr(roles, fact.Roles); err != nil {
			return err
		}
		fact.Line, fact.Thousands = cmp.Or(line, fact.Line), cmp.Or(thousands, fact.Thousands)
		if queen != "" {
			q, err := f.queen(queen)
			if err != nil {
				return err
			}
			fact.Queen = q.Queen
		}
		return d.write(fact)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	c.Flags().StringSliceVar(&roles, "role", nil, "what it is kept for: breeder, starter, finisher, \"cell builder\", \"brood source\", \"drone source\", bank")
	c.Flags().StringVar(&line, "line", "", "its mother `LINE`")
	c.Flags().StringVar(&queen, "queen", "", "its queen's `NAME`")
	amount(c, &thousands, "bees", 0, "bees in thousands")
	return c
}

func rolesOr(said []string, were []book.Role) ([]book.Role, error) {
	if len(said) == 0 {
		return were, nil
	}
	roles := make([]book.Role, len(said))
	for i, word := range said {
		if err := roles[i].UnmarshalText([]byte(word)); err != nil {
			return nil, err
		}
	}
	return roles, nil
}

func addQueen(a *app) *cobra.Command {
	var q book.QueenDescribed
	var mother, batch, born, descent string
	c := a.adding(&cobra.Command{
		Use:     "queen NAME",
		Short:   "Add a queen, such as a breeder",
		Example: "  lidbook add queen \"Rook 1\" --line Rook --born 2025-06-10",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, f finder, args []string) (err error) {
		q.Queen, q.Name = book.QueenID(d.ids.next()), args[0]
		if there, err := f.queen(args[0]); err == nil {
			q.Queen = there.Queen
		}
		if mother != "" {
			m, err := f.queen(mother)
			if err != nil {
				return err
			}
			q.Mother = m.Queen
		}
		if batch != "" {
			b, err := f.batch(batch)
			if err != nil {
				return err
			}
			q.Batch = b.Batch
		}
		if born != "" {
			day, err := calendar.ParseDay(born)
			if err != nil {
				return err
			}
			q.Born = day.At(12, 0, d.zone).UTC() // noon is that day in every zone near
		}
		if err := q.Descent.UnmarshalText([]byte(descent)); err != nil {
			return err
		}
		return d.write(q)
	})
	c.Flags().StringVar(&q.Line, "line", "", "her `LINE`")
	c.Flags().StringVar(&mother, "mother", "", "her mother's `NAME`")
	c.Flags().StringVar(&batch, "batch", "", "the `NUMBER` of her batch")
	c.Flags().StringVar(&born, "born", "", "the `DAY` she was born")
	c.Flags().StringVar(&q.DroneLine, "drone-line", "", "`LINE` of the drones")
	c.Flags().StringVar(&descent, "descent", "", "sure or doubtful")
	return c
}
