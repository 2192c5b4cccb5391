package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// comparedShape is layouts held beside each other, in JSON. The first is the yard as it
// stands.
type comparedShape struct {
	Yard    string          `json:"yard"`
	Full    bool            `json:"asIfAVirginFlewFromEach"`
	Virgins float64         `json:"virginsToFly"`
	Layouts []standingShape `json:"layouts"`
}

// standingShape are the figures of a layout, in JSON.
type standingShape struct {
	Name      string  `json:"name"`
	From      string  `json:"plannedFrom,omitempty"`
	Lost      float64 `json:"virginsLost"`
	Wrong     float64 `json:"virginsAtAWrongDoor"`
	Drift     float64 `json:"driftShare"`
	Alike     int     `json:"entrancesAlike"`
	Sunny     int     `json:"entrancesInMorningSun"`
	Pull      float64 `json:"strongColoniesAdd"`
	Round     float64 `json:"roundM"`
	Findings  int     `json:"findings"`
	Stands    int     `json:"standsCarried"`
	Turned    int     `json:"boxesTurned"`
	Fronts    int     `json:"frontsMarked"`
	Minutes   float64 `json:"minutes"`
	LostSaid  string  `json:"virginsLostSaid,omitempty"`
	DriftSaid string  `json:"driftSaid,omitempty"`
}

func layoutCompare(a *app) *cobra.Command {
	c := a.reading(&cobra.Command{
		Use:     "compare [NAME ...]",
		Short:   "Hold try-outs beside the yard as it stands, figure by figure",
		Long:    "Without names all try-outs that are kept. A difference that is smaller than what is known of\nhoming is called no difference.",
		Example: "  lidbook layout compare\n  lidbook layout compare \"by the hedge\" turned --json",
	}, func(_ *cobra.Command, v *book.View, names []string) error {
		f := finder{View: v}
		y, err := f.laidOr(a.flags.yard)
		if err != nil {
			return err
		}
		a.sayYard(v, y)
		var tries []book.Layout
		for _, name := range names {
			l, err := f.tryOut(y, name)
			if err != nil {
				return err
			}
			tries = append(tries, l)
		}
		if len(names) == 0 {
			tries = v.Layouts(y.Yard)
		}
		s := comparedOf(v, y, tries)
		return a.show(s, func() { a.printCompared(s) })
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard, or the first with stands)")
	return c
}

func comparedOf(v *book.View, y *book.Yard, tries []book.Layout) comparedShape {
	g, n := yard.GroundOf(y), v.Numbers()
	shape, now := shapeOfLayout(v, y)
	s := comparedShape{Yard: y.Name, Full: shape.Full, Virgins: shape.Virgins}
	figures := func(name string, l yard.Layout) standingShape {
		c := yard.CostOf(l, n)
		_, metres := yard.RoundOf(l, g)
		return standingShape{
			Name: name, Lost: round(c.Lost), Wrong: round(c.Wrong), Drift: c.Drift, Alike: c.Alike, Sunny: yard.SunnyFronts(l, g, v.Today(), n),
			Pull: round(c.Pull), Round: round(metres), Findings: len(yard.Findings(l, g, v.Today(), n)),
		}
	}
	s.Layouts = append(s.Layouts, figures("now", now))
	holding := course.New(v).Holding
	for _, kept := range tries {
		l := yard.Of(v, y.Yard).Try(kept.LayoutTried).With(holding)
		if shape.Full {
			l = l.Full()
		}
		t := figures(kept.Name, l)
		if kept.Planned() {
			t.From = kept.From.String()
		}
		t.work(yard.ChangesOf(now, l, nil, nil), n)
		c := yard.Compare(now, l, n)
		t.LostSaid, t.DriftSaid = c.Lost.Words(), c.Drift.Words()
		s.Layouts = append(s.Layouts, t)
	}
	return s
}

// work counts what there is to carry, to turn and to mark.
func (s *standingShape) work(changes []yard.Change, n practice.Numbers) {
	minutes := 0.0
	for _, c := range changes {
		s.Fronts += c.Fronts
		s.Turned += c.Turned
		if c.Carried() {
			s.Stands++
		}
		minutes += c.Minutes(n)
	}
	s.Minutes = round(minutes + float64(s.Fronts)*n.Get(practice.MinutesPaintFront))
}

func (a *app) printCompared(s comparedShape) {
	if len(s.Layouts) == 1 {
		a.line("%s: no try-out is kept; begin one with lidbook layout try NAME", s.Yard)
	}
	if s.Full {
		a.line("as if a virgin flew from each nuc and each had a queen")
	}
	rows := [][]string{{s.Yard}}
	for _, r := range []struct {
		name string
		of   func(standingShape) string
	}{
		{fmt.Sprintf("virgins lost, of %.0f", s.Virgins), func(l standingShape) string { return fmt.Sprintf("%.1f", l.Lost) }},
		{"drift, of 100", func(l standingShape) string { return fmt.Sprintf("%.1f", 100*l.Drift) }},
		{"entrances alike", func(l standingShape) string { return fmt.Sprint(l.Alike) }},
		{"in the morning sun", func(l standingShape) string { return fmt.Sprint(l.Sunny) }},
		{"strong colonies add", func(l standingShape) string { return fmt.Sprintf("%.2f", l.Pull) }},
		{"round, m", func(l standingShape) string { return fmt.Sprintf("%.0f", l.Round) }},
		{"faults", func(l standingShape) string { return fmt.Sprint(l.Findings) }},
		{"stands carried, turned", func(l standingShape) string { return fmt.Sprint(l.Stands) }},
		{"boxes turned", func(l standingShape) string { return fmt.Sprint(l.Turned) }},
		{"fronts marked", func(l standingShape) string { return fmt.Sprint(l.Fronts) }},
		{"work, min", func(l standingShape) string { return fmt.Sprintf("%.0f", l.Minutes) }},
	} {
		row := []string{r.name}
		for _, l := range s.Layouts {
			row = append(row, r.of(l))
		}
		rows = append(rows, row)
	}
	for _, l := range s.Layouts {
		rows[0] = append(rows[0], l.Name)
	}
	a.table(rows)
	for _, l := range s.Layouts[1:] {
		a.line("%s: virgins lost: %s; drift: %s", l.Name, l.LostSaid, l.DriftSaid)
		if l.From != "" {
			a.line("%s is the plan from %s", l.Name, shortDay(l.From))
		}
	}
}
