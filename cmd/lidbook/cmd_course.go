package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// courseShape is the course of a nuc in JSON. Chances are shares of one.
type courseShape struct {
	Nuc      thing               `json:"nuc"`
	Days     []course.DayChances `json:"days"`
	NowKnown []course.DayChances `json:"nowKnown,omitempty"`
	Ever     float64             `json:"everLays"`
	Half     string              `json:"firstEggHalfBy,omitempty"`
	Nine     string              `json:"firstEggNineInTenBy,omitempty"`
	LookFrom string              `json:"lookFrom,omitempty"`
	LookBest string              `json:"lookBest,omitempty"`
	LookBy   string              `json:"lookBy,omitempty"`
	NotWorth string              `json:"waitingTooLateFrom,omitempty"`
	Evidence []evidenceShape     `json:"evidence"`
}

// evidenceShape is a look and what it was worth, in JSON.
type evidenceShape struct {
	Day   string `json:"day"`
	Words string `json:"words"`
}

// courseAhead is how many days ahead are told.
const courseAhead = 28

func courseCommand(a *app) *cobra.Command {
	var nowKnown bool
	c := a.ofNuc(&cobra.Command{
		Use:   "course NUC",
		Short: "What a nuc most probably holds, by day, and what each look was worth",
		Long: "Tells the chances by day, from the beginning of the nuc's present life to four\nweeks ahead if nobody looks: when the first egg is to be expected, when a look is\nworth while, from when waiting is not, and what each look was worth.\n\n" +
			"A day is told as it was known on its evening. With --now-known each past day is\ntold a second time beside that, by all that was seen since.",
		Example: "  lidbook course A3\n  lidbook course A3 --on 26.5\n  lidbook course A3 --now-known",
		Args:    cobra.ExactArgs(1),
	}, func(v *book.View, n *book.Nuc) error {
		asked := course.New(v)
		s := shapeOfCourse(asked, n)
		if nowKnown {
			s.NowKnown = asked.Hindsight(n)
		}
		return a.show(s, func() { a.printCourse(v, n, s) })
	})
	c.Flags().BoolVar(&nowKnown, "now-known", false, "tell past days a second time, by all that was seen since")
	return c
}

func shapeOfCourse(c *course.Course, n *book.Nuc) courseShape {
	v, zone := c.View(), c.Zone(n.Yard)
	s := courseShape{Nuc: thingOf(v, n.NucNamed.Nuc.Subject()), Days: c.Evenings(n, courseAhead), Evidence: []evidenceShape{}}
	if len(s.Days) == 0 {
		s.Days = []course.DayChances{}
		return s
	}
	p, eggs := c.Of(n), c.Eggs(n)
	s.LookFrom, s.LookBest, s.LookBy = stamp(p.LookFrom, zone), stamp(p.LookBest, zone), stamp(p.LookBy, zone)
	s.Ever = round(eggs.Ever())
	if eggs.Ever() >= hardlyEver {
		s.Half, s.Nine = eggs.Day(0.5).String(), eggs.Day(0.9).String()
	}
	if !n.Holds.Condition.Queenright() {
		s.NotWorth = eggs.NotWorth(calendar.DayOf(v.On(), zone), v.Numbers().Get(practice.WorthNucDay)).String()
	}
	for _, e := range c.Evidence(n) {
		s.Evidence = append(s.Evidence, evidenceShape{e.Day.String(), e.Words})
	}
	return s
}

// hardlyEver is the chance under which no day of a first egg is told.
const hardlyEver = 0.02

func (a *app) printCourse(v *book.View, n *book.Nuc, s courseShape) {
	if len(s.Days) == 0 {
		a.line("%s is empty.", n.Name)
		return
	}
	a.line("%s  %s", n.Name, course.New(v).Of(n).Why)
	a.table(courseRows(s, v.Today()))
	if s.Half != "" {
		a.line("  %.0f of 100 such queens come to lay; of those who do, half have by %s, nine in ten by %s", 100*s.Ever, shortDay(s.Half), shortDay(s.Nine))
	}
	if missed := missedOn(course.New(v), n); len(missed) > 0 {
		a.line("  so the eggs were there and not seen on %s: a look misses them %.0f times of 100 by your numbers", list(missed), 100*(1-v.Numbers().Get(practice.SeesEggs)))
	}
	a.facts("look from", stampedDay(v, s.LookFrom), "best", stampedDay(v, s.LookBest), "by", stampedDay(v, s.LookBy), "waiting is not worth a nuc's day from", shortDay(s.NotWorth))
	for _, e := range s.Evidence {
		a.line("  %s: %s", shortDay(e.Day), e.Words)
	}
}

// missedOn are the days of looks that found no eggs although half of such queens lay by
// then, by all that was seen since.
func missedOn(c *course.Course, n *book.Nuc) (days []string) {
	eggs := c.Eggs(n)
	if eggs.Ever() < hardlyEver {
		return nil
	}
	for _, e := range c.Evidence(n) {
		if e.Sight.Eggs == book.NoEggs && e.Day > eggs.Day(0.5) && n.Holds.Condition.Queenright() {
			days = append(days, e.Day.Short())
		}
	}
	return days
}

// courseRows are the days of a course: every second one up to today, every fourth
// ahead, with what is known of them now beside what was known then.
func courseRows(s courseShape, today calendar.Day) (rows [][]string) {
	was := map[calendar.Day]string{}
	for _, d := range s.NowKnown {
		was[d.Day] = chanceWords(d.Chances)
	}
	if len(was) > 0 {
		rows = append(rows, []string{"  on", "as known then", "as known now", ""})
	}
	for _, d := range s.Days {
		far := d.Day.Sub(today)
		if far <= 0 && far%2 != 0 || far > 0 && far%4 != 0 {
			continue
		}
		row := []string{"  " + d.Day.Short(), chanceWords(d.Chances)}
		if len(was) > 0 {
			row = append(row, was[d.Day])
		}
		mark := ""
		if far == 0 {
			mark = "today"
		}
		rows = append(rows, append(row, mark))
	}
	return rows
}

// shortDay is a day of JSON for a reader.
func shortDay(text string) string {
	d, err := calendar.ParseDay(text)
	if err != nil {
		return text
	}
	return d.Short()
}
