package season

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Wanted is what batches are looked for, and within which limits. What is zero is
// what is usual.
type Wanted struct {
	Promises []Promise
	Yards    []book.YardID // whose nucs may be used; none: of all yards that have some
	From     calendar.Day  // no graft before; 0: the first that is still possible, see [plan.Planner.FirstGraft]
	Sure     float64       // wished certainty of promises that say none, 0 to 1; 0: the keeper's number
	Minutes  float64       // most on one day; 0: no limit
	Grafts   int           // most on one day; 0: one

	// What is tried. Conventions of the search: a wider one takes longer.
	Window int   // days of a graft for each promise and yard, the latest first; 0: 21
	Larvae []int // sizes of a graft; none: 12, 16 … 48, 60 … 240
	Sizes  int   // sizes of one graft of a day, the least work first; 0: 3
	Near   int   // days between promises that one batch may serve; 0: 21

	Rounds int    // of improvement after the first answer; 0: 500
	Nodes  int    // steps of the exact search before it gives way to rounds, each a way that is tried; 0: 2 000 000
	Seed   uint64 // of the chance in the rounds: the same seed gives the same answer
}

// bar is a bar of cell cups, the step in which large grafts grow; small ones grow by a
// third of it, since a finisher's room may lie between two bars.
const bar = 12

func step(larvae int) int {
	if larvae < 4*bar {
		return bar / 3
	}
	return bar
}

// filled is what is wanted with what is usual for what is left open.
func (w Wanted) filled(p *plan.Planner) Wanted {
	w.Grafts = cmp.Or(w.Grafts, 1)
	w.Window = cmp.Or(w.Window, 21)
	w.Sizes = cmp.Or(w.Sizes, 3)
	w.Near = cmp.Or(w.Near, 21)
	w.Rounds = cmp.Or(w.Rounds, 500)
	w.Nodes = cmp.Or(w.Nodes, 2_000_000)
	if len(w.Larvae) == 0 {
		for n := bar; n <= 20*bar; n += step(n) {
			w.Larvae = append(w.Larvae, n)
		}
	}
	if len(w.Yards) == 0 {
		w.Yards = yardsWithNucs(p.View())
	}
	if w.From == 0 {
		w.From = p.FirstGraft()
	}
	w.Sure = cmp.Or(w.Sure, p.View().Numbers().Get(practice.PlanSure))
	w.Promises = slices.Clone(w.Promises)
	larvae := larvaeOf(p.View())
	for i := range w.Promises {
		w.Promises[i].Name = cmp.Or(w.Promises[i].Name, "wish of "+w.Promises[i].By.ShortFrom(p.View().Today()))
		w.Promises[i].Lines = larvae.of(w.Promises[i].Lines)
		w.Promises[i].Sure = cmp.Or(w.Promises[i].Sure, w.Sure)
		w.Promises[i].kept = w.Promises[i].keptAlready(p)
	}
	return w
}

func yardsWithNucs(v *book.View) (all []book.YardID) {
	has := map[book.YardID]bool{}
	for n := range v.Nucs() {
		has[n.Yard] = true
	}
	for y := range v.Yards() {
		if has[y.Yard] {
			all = append(all, y.Yard)
		}
	}
	return all
}
