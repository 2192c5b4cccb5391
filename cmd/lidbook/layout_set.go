package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/founding"
	"lidmark/domain/yard"
)

// setFlags say how stands are set in a try-out.
type setFlags struct {
	try, at, mark string
	facing, rows  string
	turn          float64
	places        int
}

func layoutSet(a *app) *cobra.Command {
	var f setFlags
	c := a.deciding(&cobra.Command{
		Use:   "set STAND ...",
		Short: "Set stands of a try-out elsewhere, turn them or the boxes on them, mark their fronts",
		Long:  "Works at the try-out, never at the yard itself. A letter that no stand has becomes a new stand\nwith --places.",
		Example: "  lidbook layout set B --at 12.5,7 --turn 90\n  lidbook layout set N1 N2 N3 --turn 180 --in \"by the hedge\"\n" +
			"  lidbook layout set A B --facing \"N E W S\"\n  lidbook layout set A B C D --rows \"2 x 2, 6 m, 5 m\" --at 4,20\n" +
			"  lidbook layout set N2 --mark \"yellow bar\"\n  lidbook layout set T --at 3,4 --places 4",
		Args: cobra.MinimumNArgs(1),
	}, func(d *desk, c *cobra.Command, args []string) error { return d.layoutSet(c, args, f) })
	fl := c.Flags()
	fl.StringVar(&f.at, "at", "", "its middle is `X,Y`: metres east and north of the yard's origin")
	signed(c, &f.turn, "turn", "it is turned so many degrees clockwise from north")
	fl.StringVar(&f.facing, "facing", "", "the entrances on it `FACE`: S or 180, \"N E W S\" by place, or out, each to its own side")
	fl.StringVar(&f.rows, "rows", "", "they are set in `ROWS` like \"4 x 4, 6 m, 5 m\", from --at or where the first stands to the east and south")
	fl.StringVar(&f.mark, "mark", "", "the fronts on it get this `MARK`, like \"blue disc\", or none")
	amount(c, &f.places, "places", 0, "it is new and has so many places for boxes")
	fl.StringVar(&f.try, "in", "", "in the try-out of this `NAME` (else the plan, or the only one)")
	fl.StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

func (d *desk) layoutSet(c *cobra.Command, letters []string, f setFlags) error {
	find := finder{View: d.view()}
	y, err := find.homeOr(d.flags.yard)
	if err != nil {
		return err
	}
	kept, err := find.tryOut(y, f.try)
	if err != nil {
		return err
	}
	now := yard.Of(find.View, y.Yard)
	try := now.Try(kept.LayoutTried)
	if f.at != "" && f.rows == "" && len(letters) > 1 {
		return errors.New("--at: two stands cannot be in one place; set one at a time, or in rows with --rows")
	}
	for _, letter := range letters {
		if try, err = d.set(c, try, letter, f); err != nil {
			return err
		}
	}
	if try, err = f.inRows(try, letters); err != nil {
		return err
	}
	t := try.TriedAs(kept.Layout, kept.Name, now)
	if err := d.write(t); err != nil {
		return err
	}
	d.sayChanges(now, t)
	return nil
}

// set is the layout with a stand set as the flags say.
func (d *desk) set(c *cobra.Command, l yard.Layout, letter string, f setFlags) (yard.Layout, error) {
	turned := c.Flags().Changed("turn")
	if f.at == "" && !turned && f.mark == "" && f.facing == "" && f.rows == "" {
		return l, errors.New("say with --at where the stand is set, with --turn how it is turned, with --facing where entrances face, with --rows in which rows, or with --mark what its fronts get")
	}
	l = l.Clone()
	i := slices.IndexFunc(l.Stands, func(s yard.Stand) bool { return strings.EqualFold(s.Letter, letter) })
	switch {
	case i < 0 && f.places == 0:
		return l, unknownStand(l, letter)
	case i < 0 && f.at == "":
		return l, fmt.Errorf("stand %s is new: say with --at where it is set", letter)
	case i < 0:
		i = len(l.Stands)
		l.Stands = append(l.Stands, yard.Stand{ID: book.StandID(d.ids.Next()), Letter: letter, Places: f.places})
	case f.places > 0:
		return l, fmt.Errorf("stand %s is there already: --places is for a new one", letter)
	}
	if f.at != "" {
		at, err := pointOf(f.at)
		if err != nil {
			return l, fmt.Errorf("--at: %w", err)
		}
		l.Stands[i].At = at
	}
	pick := yard.Pick{l.Stands[i].ID}
	if turned {
		l = l.Faced(pick, f.turn)
	}
	l, err := f.faced(l, pick)
	if err != nil {
		return l, err
	}
	if f.mark == "" {
		return l, nil
	}
	m, err := markOf(f.mark)
	for _, n := range l.Stands[i].Nucs {
		l = l.Painted([]book.NucID{n.ID}, m)
	}
	return l, err
}

// faced is the layout with the boxes on the picked stands turned.
func (f setFlags) faced(l yard.Layout, p yard.Pick) (yard.Layout, error) {
	if strings.EqualFold(f.facing, "out") {
		return l.Outwards(p), nil
	}
	ways, err := founding.ParseFacing(f.facing)
	if err != nil {
		return l, fmt.Errorf("--facing: %w; or out, each to its own side", err)
	}
	return l.Facing(p, ways...), nil
}

// inRows is the layout with the stands of some letters in rows.
func (f setFlags) inRows(l yard.Layout, letters []string) (yard.Layout, error) {
	if f.rows == "" {
		return l, nil
	}
	rows, err := yard.ParseRows(f.rows)
	if err != nil {
		return l, fmt.Errorf("--rows: %w", err)
	}
	var p yard.Pick
	from := book.Point{}
	for _, s := range l.Stands {
		if !slices.ContainsFunc(letters, func(letter string) bool { return strings.EqualFold(letter, s.Letter) }) {
			continue
		}
		if len(p) == 0 {
			from = s.At
		}
		p = append(p, s.ID)
	}
	if l, err = l.Rowed(p, from, rows); err != nil {
		return l, fmt.Errorf("--rows: %w", err)
	}
	return l, nil
}

func unknownStand(l yard.Layout, letter string) error {
	var there []string
	for _, s := range l.Stands {
		there = append(there, s.Letter)
	}
	if len(there) == 0 {
		return fmt.Errorf("no stand %q: there is none yet; for a new one say --places and --at", letter)
	}
	return fmt.Errorf("no stand %q: there is %s; for a new one say --places and --at", letter, shortList(there))
}

// markOf reads a front mark, its colour first.
func markOf(text string) (yard.Mark, error) {
	if strings.EqualFold(text, "none") {
		return yard.Mark{}, nil
	}
	words := strings.Fields(text)
	if len(words) != 2 {
		return yard.Mark{}, fmt.Errorf("--mark %q: say the colour and the shape, as in \"blue disc\", or none", text)
	}
	return yard.Mark{Colour: words[0], Shape: words[1]}, nil
}
