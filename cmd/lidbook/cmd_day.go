package main

import (
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// crewShape is a day's work with the hands there are, in JSON. Losses are in queens.
type crewShape struct {
	Day    string           `json:"day"`
	Next   string           `json:"somebodyCanComeAgain"`
	Hard   float64          `json:"hardMinutes"`
	Sheets []crewSheetShape `json:"sheets"`
	Waits  []crewWaitShape  `json:"waits"`
	Later  float64          `json:"waitingMinutes"`
	Loss   float64          `json:"waitingLoses"`
	Exact  bool             `json:"proven"`
	Over   float64          `json:"overMinutes"`
	InRain []string         `json:"cannotWaitForTheRain,omitempty"`
	Taken  bool             `json:"plannedTakenAsDone,omitempty"`
	away   []string         // who was said to be
	Ring   []string         `json:"ring"` // who is free and could be asked, where nobody comes
}

// crewSheetShape is a person's day in JSON.
type crewSheetShape struct {
	Person  string           `json:"person"`
	Van     int              `json:"van"`
	From    string           `json:"from,omitempty"`
	Free    float64          `json:"freeMinutes"`
	Working float64          `json:"workingMinutes"`
	Driving float64          `json:"drivingMinutes"`
	Kit     []kitShape       `json:"kit"`
	Visits  []crewVisitShape `json:"visits"`
}

// crewVisitShape is what one person does in a yard, in JSON.
type crewVisitShape struct {
	Yard string          `json:"yard"`
	Dusk string          `json:"atDusk,omitempty"`
	Work []crewWorkShape `json:"work"`
}

// crewWorkShape is work at some nucs, in JSON.
type crewWorkShape struct {
	Title   string  `json:"title"`
	Of      []thing `json:"of"`
	Minutes float64 `json:"minutes"`
	Hard    bool    `json:"hard"`
	HardBy  string  `json:"hardBy,omitempty"` // none where it is no matter of an hour

	by time.Time
}

// crewWaitShape is work that waits, and what that is expected to cost, in JSON.
type crewWaitShape struct {
	crewWorkShape
	Queens float64 `json:"queens"`
	Why    string  `json:"why"`
}

// crewFlags are who is there on a day.
type crewFlags struct {
	hours   float64
	vans    int
	without []string
	rain    string                 // until what hour
	given   func(flag string) bool // whether it was said
}

func dayCommand(a *app) *cobra.Command {
	var f crewFlags
	c := a.reading(&cobra.Command{
		Use:   "day",
		Short: "A short day: what is done, by whom, what waits, and what the waiting costs",
		Long: "Chooses from the day's work what is done with the hands, hours and vans there are,\nso that what waits costs fewest queens; work with a hard end comes first, and the\n" +
			"way to a yard and home counts. Each person gets a sheet. Below stands what waits,\ndearest first, and why.",
		Example: "  lidbook day\n  lidbook day --hours 4 --without Jon\n  lidbook day --on tomorrow --vans 2\n  lidbook day --rain-until 15:00\n  lidbook day --hours 0",
		Args:    cobra.NoArgs,
	}, func(c *cobra.Command, v *book.View, _ []string) error {
		f.given = c.Flags().Changed
		dry, err := f.dry(v)
		if err != nil {
			return err
		}
		hands, err := f.hands(v)
		if err != nil {
			return err
		}
		j := rules.Judge(v)
		day, err := crew.Plan(j, v.Today(), hands.After(dry))
		if err != nil {
			return err
		}
		kits := day.Kits(j)
		s, route := shapeOfCrew(v, day, kits), j.Day(v.Today())
		s.Taken, s.away = route.Taken, f.without
		for _, t := range crew.InRain(route, v.On(), dry) {
			s.InRain = append(s.InRain, fmt.Sprintf("%s, by %s", t.Title, hour(t.By, v.Zone())))
		}
		return a.show(s, func() { a.printCrew(v, day, s, kits) })
	})
	amount(c, &f.hours, "hours", 0, "nobody has more than so many `HOURS`, the way counted; 0: nobody works")
	amount(c, &f.vans, "vans", 1, "with so many vans; 0: only what can be walked to")
	c.Flags().StringSliceVar(&f.without, "without", nil, "these `PEOPLE` are away")
	c.Flags().StringVar(&f.rain, "rain-until", "", "nothing is done before this `HOUR`, as 15:00")
	return c
}

// the most that anybody can mean; common practice, no source.
const (
	hoursOfADay = 24
	mostVans    = 100
)

// check refuses hours that no day has, and vans that nobody has.
func (f crewFlags) check() error {
	switch {
	case f.hours > hoursOfADay:
		return &usageError{err: fmt.Errorf("--hours: %g are more than a day has, write %d or less", f.hours, hoursOfADay)}
	case f.vans > mostVans:
		return &usageError{err: fmt.Errorf("--vans: %d are more than anybody drives, write %d or less", f.vans, mostVans)}
	}
	return nil
}

// dry is the hour at which the rain is over; zero where there is none.
func (f crewFlags) dry(v *book.View) (time.Time, error) {
	if f.rain == "" {
		return time.Time{}, nil
	}
	at, err := time.ParseInLocation("15:04", f.rain, v.Zone())
	if err != nil {
		return at, &usageError{err: fmt.Errorf("--rain-until: %q is no hour, write one as 15:00", f.rain)}
	}
	return v.Today().At(at.Hour(), at.Minute(), v.Zone()), nil
}

// hands are those who are there.
func (f crewFlags) hands(v *book.View) (crew.Hands, error) {
	if err := f.check(); err != nil {
		return nil, err
	}
	var away []book.PersonID
	for _, name := range f.without {
		p, err := finder{View: v}.person(name)
		if err != nil {
			return nil, fmt.Errorf("--without: %w", err)
		}
		away = append(away, p.Person)
	}
	hands := crew.HandsOf(v, v.Today(), f.vans, f.hours, away...)
	if f.vans == 0 {
		hands = hands.OnFoot()
	}
	switch {
	case f.given("hours") && f.hours == 0:
		return nil, nil
	case hands.Minutes() > 0:
		return hands, nil
	case !v.HoursTold() && len(away) == 0:
		return nil, fmt.Errorf("nobody's free hours are known: say with --hours how many there are, or with lidbook hours PERSON %s 8-12", v.Today())
	}
	return nil, nil // nobody comes: all of it waits
}

func shapeOfCrew(v *book.View, d crew.Day, kits [][]rules.KitLine) crewShape {
	s := crewShape{
		Day: d.On.String(), Next: stamp(d.Next, v.Zone()), Hard: round(d.Must), Sheets: []crewSheetShape{}, Waits: []crewWaitShape{},
		Loss: thousandth(d.Loss), Exact: d.Exact, Over: round(d.Over), Ring: []string{},
	}
	for i, sheet := range d.Sheets {
		one := crewSheetShape{sheet.Name, sheet.Van, stamp(sheet.From, v.Zone()), sheet.Minutes, round(sheet.Working), round(sheet.Driving), shapeOfKit(kits[i]), []crewVisitShape{}}
		for _, visit := range sheet.Visits {
			one.Visits = append(one.Visits, crewVisitShape{v.Yard(visit.Yard).Name, stamp(visit.Dusk, v.Zone()), crewWork(v, visit.Work)})
		}
		s.Sheets = append(s.Sheets, one)
	}
	if len(d.Sheets) == 0 {
		for _, h := range crew.Ring(v, d.On) {
			s.Ring = append(s.Ring, fmt.Sprintf("%s, free %s–%s", h.Name, h.From.In(v.Zone()).Format("15:04"), h.Until.In(v.Zone()).Format("15:04")))
		}
	}
	for _, w := range d.Waits {
		s.Later += w.Minutes
		s.Waits = append(s.Waits, crewWaitShape{crewWork(v, []crew.Work{w})[0], thousandth(w.Price.Queens), w.Price.Why})
	}
	s.Later = round(s.Later)
	return s
}

// crewWork puts like work that follows on each other into one row.
func crewWork(v *book.View, all []crew.Work) []crewWorkShape {
	rows := []crewWorkShape{}
	for _, w := range all {
		if last := len(rows) - 1; last >= 0 && rows[last].Title == w.Task.Title && rows[last].Hard == w.Hard && rows[last].by.Equal(w.HardBy()) {
			rows[last].Of = append(rows[last].Of, thingOf(v, w.Of))
			rows[last].Minutes += w.Minutes
			continue
		}
		rows = append(rows, crewWorkShape{w.Task.Title, []thing{thingOf(v, w.Of)}, w.Minutes, w.Hard, stamp(w.HardBy(), v.Zone()), w.HardBy()})
	}
	for i := range rows {
		rows[i].Minutes = round(rows[i].Minutes)
	}
	return rows
}
