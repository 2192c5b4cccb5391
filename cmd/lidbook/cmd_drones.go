package main

import (
	"fmt"
	"math"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/season"
)

// dronesShape is the drones for the virgins of a yard, in JSON.
type dronesShape struct {
	Yard     string          `json:"yard"`
	Colonies []string        `json:"droneColonies"` // in the yard, or so near that their drones fly there
	Best     []spanShape     `json:"atTheirBest"`
	Days     []droneDayShape `json:"days"` // on which virgins fly
	Short    string          `json:"firstShort,omitempty"`
	CombBy   string          `json:"combInBy,omitempty"`        // for that day
	CombNow  string          `json:"combOfTodayRipe,omitempty"` // where that is past
	Numbers  []usedShape     `json:"numbers"`
}

// spanShape is days from one to another, both included, in JSON.
type spanShape struct {
	From string `json:"from"`
	To   string `json:"to"`
}

// droneDayShape is a day on which virgins fly, in JSON.
type droneDayShape struct {
	Day       string  `json:"day"`
	Virgins   int     `json:"virgins"`
	Wanted    float64 `json:"coloniesWanted"`
	Have      float64 `json:"coloniesThere"`
	Drones    string  `json:"drones"`
	Ripe      float64 `json:"ripeDrones"` // of a comb in each of the colonies; none that is past its best
	PerVirgin float64 `json:"dronesPerVirgin"`
	Enough    bool    `json:"enough"`
}

// usedShape is a number that was used, in JSON.
type usedShape struct {
	Name   string  `json:"name"`
	Value  float64 `json:"value"`
	Unit   string  `json:"unit"`
	Source string  `json:"source"`
}

// dronesUsed are the numbers on which it stands whether drones are enough.
var dronesUsed = []practice.Key{
	practice.DroneColonies, practice.QueensPerDroneColony, practice.DroneRipe, practice.DroneBestUntil, practice.DronesPerComb, practice.MatesOfQueen,
}

func dronesCommand(a *app) *cobra.Command {
	c := a.reading(&cobra.Command{
		Use:   "drones",
		Short: "Ripe drones by day against the virgins that fly",
		Long: "Tells for each yard, and each day on which virgins of planned and grafted batches fly,\nhow many there are and what drones: those of the drone colonies in the yard or so near\n" +
			"that they fly there, of the combs that are in or planned; from when to when those are at\ntheir best, the first day on which they are not enough, and by when comb must hang for it.\nThose too young or past their best count for none. Comb of a grafted batch is taken to\nhave hung in time.",
		Example: "  lidbook drones\n  lidbook drones --yard \"Hill\" --json",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		list := []dronesShape{}
		p := plan.New(course.New(v))
		if a.flags.yard != "" {
			y, err := finder{View: v}.homeOr(a.flags.yard)
			if err != nil {
				return err
			}
			list = append(list, shapeOfDrones(v, season.DronesByDay(p, y.Yard)))
		} else {
			for y := range v.Yards() {
				if f := season.DronesByDay(p, y.Yard); len(f.Days) > 0 {
					list = append(list, shapeOfDrones(v, f))
				}
			}
		}
		return a.show(list, func() {
			if len(list) == 0 {
				a.line("no virgin of a batch, planned or grafted, is still to fly")
			}
			for _, s := range list {
				a.printDrones(s)
			}
			if len(list) > 0 {
				a.printUsed(list[0].Numbers)
			}
		})
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "only for this `YARD`")
	return c
}

func shapeOfDrones(v *book.View, f season.Flights) dronesShape {
	n := v.Numbers()
	s := dronesShape{
		Yard: f.Yard.Name, Colonies: []string{}, Best: []spanShape{}, Days: []droneDayShape{}, Numbers: []usedShape{},
		Short: f.Short.String(), CombBy: f.CombBy.String(),
	}
	if !f.Short.IsZero() && f.CombBy < v.Today() {
		s.CombNow = (v.Today() + calendar.Day(n.Days(practice.DroneRipe))).String()
	}
	for _, c := range f.Colonies {
		s.Colonies = append(s.Colonies, c.Name)
	}
	for _, d := range f.Best {
		s.Best = append(s.Best, spanShape{d.From.String(), d.To.String()})
	}
	for _, d := range f.Days {
		ripe := 0.0
		if d.Drones == season.AtTheirBest {
			ripe = d.Colonies * n.Get(practice.DronesPerComb)
		}
		s.Days = append(s.Days, droneDayShape{
			d.Day.String(), d.Virgins, d.Wanted, d.Colonies, d.Drones.String(), ripe, math.Floor(ripe / float64(d.Virgins)), d.Enough(),
		})
	}
	for _, k := range dronesUsed {
		row := practice.Of(k)
		s.Numbers = append(s.Numbers, usedShape{row.Name, n.Get(k), string(row.Unit), row.Source})
	}
	return s
}

func (a *app) printDrones(s dronesShape) {
	near := "no drone colony in it or near"
	if len(s.Colonies) > 0 {
		near = plural(len(s.Colonies), "drone colony") + ", " + list(s.Colonies)
	}
	a.line("%s: %s", s.Yard, near)
	for _, d := range s.Best {
		a.line("  drones of comb at their best from %s to %s", shortDay(d.From), shortDay(d.To))
	}
	if len(s.Days) == 0 {
		a.line("  no virgin of a batch, planned or grafted, is still to fly there")
		return
	}
	rows := [][]string{{"  from", "to", "virgins", "colonies", "wanted", "their drones", "a virgin", ""}}
	for i, d := range s.Days {
		if i > 0 && d.after(s.Days[i-1]) {
			rows[len(rows)-1][1] = shortDay(d.Day)
			continue
		}
		rows = append(rows, []string{
			"  " + shortDay(d.Day), shortDay(d.Day), fmt.Sprint(d.Virgins), figure(d.Have), figure(d.Wanted), d.Drones, figure(d.PerVirgin), d.words(),
		})
	}
	a.table(rows)
	a.line("  drone comb: %s", s.comb())
}

// after tells whether a day is the next one and like the one before.
func (d droneDayShape) after(was droneDayShape) bool {
	this, _ := calendar.ParseDay(d.Day)
	last, _ := calendar.ParseDay(was.Day)
	was.Day = d.Day
	return this == last+1 && d == was
}

// words say whether drones are enough, else how many colonies are missing.
func (d droneDayShape) words() string {
	switch {
	case d.Enough:
		return "enough"
	case d.Have < d.Wanted:
		return figure(d.Wanted-d.Have) + " short"
	default:
		return "not enough"
	}
}

// comb says by when comb must hang for the first day on which drones are not enough.
func (s dronesShape) comb() string {
	switch {
	case s.Short == "":
		return "none besides what is in or planned"
	case s.CombNow != "":
		return fmt.Sprintf("for %s it was due by %s; comb of today is ripe on %s", shortDay(s.Short), shortDay(s.CombBy), shortDay(s.CombNow))
	default:
		return fmt.Sprintf("in by %s for %s", shortDay(s.CombBy), shortDay(s.Short))
	}
}

// printUsed prints on which numbers it stands whether drones are enough.
func (a *app) printUsed(all []usedShape) {
	used := map[string]usedShape{}
	for _, n := range all {
		used[n.Name] = n
	}
	yard, colony := used[practice.DroneColonies.String()], used[practice.QueensPerDroneColony.String()]
	comb, mates := used[practice.DronesPerComb.String()], used[practice.MatesOfQueen.String()]
	a.line("wanted: %s colonies for a yard (%s), one for %s virgins (%s)", figure(yard.Value), yard.Source, figure(colony.Value), colony.Source)
	a.line("a virgin: drones of one comb a colony, %s ripe ones (%s); she mates with %s", figure(comb.Value), comb.Source, figure(mates.Value))
}
