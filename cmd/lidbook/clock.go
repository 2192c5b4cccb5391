package main

import (
	"fmt"
	"strconv"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// clockShape is a batch's clock in JSON.
type clockShape struct {
	Steps    []windowShape `json:"steps"`
	Best     string        `json:"cellsOutBest"`
	Hard     string        `json:"cellsOutHard"`
	FirstOne string        `json:"firstOut1pc"`
	FirstTen string        `json:"firstOut10pc"`
	FirstMid string        `json:"firstOut50pc"`
	Middle   string        `json:"halfOut"`
	Doubted  bool          `json:"doubted,omitempty"`
}

// windowShape is a step of a batch by the day, in JSON.
type windowShape struct {
	Step string `json:"step"`
	From string `json:"from"`
	Best string `json:"best"`
	By   string `json:"by"`
}

// timetable is a clock with the days of its steps, which agree with each other, and the
// hour by which its cells are best out.
type timetable struct {
	bee.Clock
	steps []bee.Window
	best  time.Time
	zone  *time.Location
}

// timetableOf is that of a graft without a book.
func timetableOf(c bee.Clock, zone *time.Location) timetable {
	steps := c.Windows(zone)
	return timetable{c, steps, c.BestOn(calendar.DayOf(c.Graft(), zone)+calendar.Day(steps[bee.CellsIn-1].Best), zone), zone}
}

// timetableIn is that of a batch of a book, by the hours of its people.
func timetableIn(v *book.View, b *book.Batch) timetable {
	c, zone := course.New(v), v.Zone()
	p := plan.New(c)
	return timetable{c.Clock(b.Batch), p.Windows(b, zone), p.BestOut(b, zone), zone}
}

func clockOf(c timetable) clockShape {
	s := clockShape{
		Best: stamp(c.best, c.zone), Hard: stamp(c.Hard(), c.zone), FirstOne: stamp(c.FirstOut(0.01), c.zone),
		FirstTen: stamp(c.FirstOut(0.1), c.zone), FirstMid: stamp(c.Even(), c.zone), Middle: stamp(c.Middle(), c.zone), Doubted: c.Doubted(),
	}
	graft := calendar.DayOf(c.Graft(), c.zone)
	for _, w := range c.steps {
		s.Steps = append(s.Steps, windowShape{
			w.Step.String(), (graft + calendar.Day(w.From)).String(), (graft + calendar.Day(w.Best)).String(), (graft + calendar.Day(w.By)).String(),
		})
	}
	return s
}

func stepWords(s bee.Step) string {
	if s == bee.Emergence {
		return "emerge, half of them"
	}
	return s.String()
}

func fromTo(w bee.Window) string {
	if w.From == w.By {
		return strconv.Itoa(w.From)
	}
	return fmt.Sprintf("%d to %d", w.From, w.By)
}

// printClock prints a batch's clock: the steps by the day, then the hard hours.
func (a *app) printClock(c timetable) {
	graft := calendar.DayOf(c.Graft(), c.zone)
	rows := [][]string{{"  days from the graft", "best", "day", "from to"}}
	for _, w := range c.steps {
		rows = append(rows, []string{"  " + stepWords(w.Step), (graft + calendar.Day(w.Best)).Short(), strconv.Itoa(w.Best), fromTo(w)})
	}
	a.table(rows)
	a.line("  cells out, best by  %s", hour(c.best, c.zone))
	a.line("  cells out, hard by  %s", hour(c.Hard(), c.zone))
	a.line("  first virgin out    1 in 100 by %s, 10 in 100 by %s, even chance %s", hour(c.FirstOut(0.01), c.zone), hour(c.FirstOut(0.1), c.zone), hour(c.Even(), c.zone))
	a.line("  half of them out    %s", hour(c.Middle(), c.zone))
	if c.Doubted() {
		a.line("  something seen does not fit this clock: the graft, the warmth or the look is wrong")
	}
}
