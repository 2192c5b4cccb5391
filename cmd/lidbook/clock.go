package main

import (
	"fmt"
	"strconv"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
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

func clockOf(c bee.Clock, n practice.Numbers, zone *time.Location) clockShape {
	s := clockShape{
		Best: stamp(c.Best(), zone), Hard: stamp(c.Hard(), zone), FirstOne: stamp(c.FirstOut(0.01), zone),
		FirstTen: stamp(c.FirstOut(0.1), zone), FirstMid: stamp(c.Even(), zone), Middle: stamp(c.Middle(), zone), Doubted: c.Doubted(),
	}
	graft := calendar.DayOf(c.Graft(), zone)
	for _, w := range windows(c, n, zone) {
		s.Steps = append(s.Steps, windowShape{
			w.Step.String(), (graft + calendar.Day(w.From)).String(), (graft + calendar.Day(w.Best)).String(), (graft + calendar.Day(w.By)).String(),
		})
	}
	return s
}

// windows are the steps of a batch by the day as its own clock bounds them:
// its cells go into nucs no later than on the day of the hard line, and half of
// them emerge on one day.
func windows(c bee.Clock, n practice.Numbers, zone *time.Location) []bee.Window {
	graft := calendar.DayOf(c.Graft(), zone)
	all := bee.Windows(n)
	for i, w := range all {
		switch w.Step {
		case bee.CellsIn:
			w.By = min(w.By, calendar.DayOf(c.Hard(), zone).Sub(graft))
			w.Best = min(w.Best, w.By)
			w.From = min(w.From, w.Best)
		case bee.Emergence:
			w.Best = calendar.DayOf(c.Middle(), zone).Sub(graft)
			w.From, w.By = min(w.From, w.Best), max(w.By, w.Best)
		}
		all[i] = w
	}
	return all
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
func (a *app) printClock(c bee.Clock, n practice.Numbers, zone *time.Location) {
	graft := calendar.DayOf(c.Graft(), zone)
	rows := [][]string{{"  days from the graft", "best", "day", "from to"}}
	for _, w := range windows(c, n, zone) {
		rows = append(rows, []string{"  " + stepWords(w.Step), (graft + calendar.Day(w.Best)).Short(), strconv.Itoa(w.Best), fromTo(w)})
	}
	a.table(rows)
	a.line("  cells out, best by  %s", hour(c.Best(), zone))
	a.line("  cells out, hard by  %s", hour(c.Hard(), zone))
	a.line("  first virgin out    1 in 100 by %s, 10 in 100 by %s, even chance %s", hour(c.FirstOut(0.01), zone), hour(c.FirstOut(0.1), zone), hour(c.Even(), zone))
	a.line("  half of them out    %s", hour(c.Middle(), zone))
	if c.Doubted() {
		a.line("  something seen does not fit this clock: the graft, the warmth or the look is wrong")
	}
}
