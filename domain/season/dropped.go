package season

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// Dropped is what the same search finds without some grafts that are planned.
type Dropped struct {
	Grafts         []book.BatchPlan
	Short, Instead int // queens that are short then, and with them

	names []string
}

// droppedMost is without how many grafts, or grafts for one order, is searched at most. A convention of the search.
const droppedMost = 8

// Dropped are the planned grafts, alone or together for an order, without which the same search is short of fewer
// queens, those first without which it is short of the fewest: grafts that hold nucs and of which nothing is made
// ready yet. Tell is asked whether to go on as of a search; what is found by then is told.
func (f Found) Dropped(p *plan.Planner, tell func(Progress) bool) (all []Dropped) {
	_, short := f.Queens()
	if short == 0 {
		return nil
	}
	on := true
	for _, of := range droppable(p) {
		then := f.without(p, of, func(far Progress) bool {
			on = on && (tell == nil || tell(far))
			return on
		})
		if !on {
			break
		}
		d := Dropped{of, then, short, named(p.View(), of)}
		if !slices.ContainsFunc(all, d.noBetter) && then < short {
			all = append(all, d)
		}
	}
	slices.SortStableFunc(all, func(a, b Dropped) int { return cmp.Compare(a.Short, b.Short) })
	return all
}

// noBetter tells whether some of its grafts alone are as good to be dropped.
func (d Dropped) noBetter(of Dropped) bool {
	return of.Short <= d.Short && !slices.ContainsFunc(of.Grafts, func(b book.BatchPlan) bool { return !among(d.Grafts, b) })
}

func among(all []book.BatchPlan, b book.BatchPlan) bool {
	return slices.ContainsFunc(all, func(o book.BatchPlan) bool { return o.Batch == b.Batch })
}

// droppable are the planned grafts that can be dropped: each, then those for one order together.
func droppable(p *plan.Planner) (all [][]book.BatchPlan) {
	var orders []book.OrderID
	of := map[book.OrderID][]book.BatchPlan{}
	for b := range p.View().ToGraft() {
		if b.Nucs == 0 || len(b.Done) > 0 {
			continue
		}
		all = append(all, []book.BatchPlan{b})
		for _, o := range b.Orders {
			if len(of[o]) == 0 {
				orders = append(orders, o)
			}
			of[o] = append(of[o], b)
		}
	}
	for _, o := range orders {
		if len(of[o]) > 1 {
			all = append(all, of[o])
		}
	}
	return all[:min(len(all), droppedMost)]
}

// without is how many queens the same search is short of without some grafts.
func (f Found) without(p *plan.Planner, grafts []book.BatchPlan, tell func(Progress) bool) int {
	w, then := f.Wanted, p.Without(grafts)
	w.Promises = Promises(then, handover.New(then), w.Sure)
	_, short := Search(then, w, tell).Queens()
	return short
}

// Said is it in words: "without the graft of Fri 22 Oct, and its queens: 9 short instead of 17".
func (d Dropped) Said() string {
	grafts, queens := "the graft of ", "its queens"
	if len(d.names) > 1 {
		grafts, queens = "the grafts of ", "their queens"
	}
	return fmt.Sprintf("without %s%s, and %s: %d short instead of %d", grafts, joined(d.names), queens, d.Short, d.Instead)
}

// named are what grafts are called: by their day, and where others are planned for it too by line and larvae.
func named(v *book.View, all []book.BatchPlan) (names []string) {
	for _, b := range all {
		name := b.Day.ShortFrom(v.Today())
		for o := range v.ToGraft() {
			if o.Batch != b.Batch && o.Day == b.Day {
				name = strings.TrimSpace(fmt.Sprintf("%s, %d larvae %s", b.Day.ShortFrom(v.Today()), b.Larvae, b.Line))
			}
		}
		names = append(names, name)
	}
	return names
}
