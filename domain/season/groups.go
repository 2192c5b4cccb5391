package season

import (
	"cmp"
	"slices"

	"lidmark/domain/calendar"
)

// together is how many promises one batch serves at most, and ahead how far down
// the list, by the day, the others of the first one are looked for. Conventions of
// the search.
const (
	together = 4
	ahead    = 5
)

// groups are the promises that one batch, or some, may serve, of each line: one of which something is there
// already is served by itself.
func (w Wanted) groups() (all []group) {
	order := w.byDay()
	for at, first := range order {
		var others []int
		for _, i := range order[at+1:] {
			alone := w.Promises[first].Has != nil || w.Promises[i].Has != nil
			if !alone && w.Promises[i].By-w.Promises[first].By <= calendar.Day(w.Near) && len(others) < ahead && w.common([]int{first, i}) {
				others = append(others, i)
			}
		}
		all = append(all, w.grown(group{promises: []int{first}}, others)...)
	}
	return all
}

// byDay are the promises by their day, the order in which queens are dealt out; of
// one day the surest first, then orders as they are served, then the wish of the most
// queens.
func (w Wanted) byDay() []int {
	order := make([]int, len(w.Promises))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		p, q := w.Promises[a], w.Promises[b]
		if c := cmp.Or(cmp.Compare(p.By, q.By), cmp.Compare(q.Sure, p.Sure), cmp.Compare(p.wish(), q.wish())); c != 0 || p.wish() == 0 {
			return c
		}
		return cmp.Compare(q.Queens, p.Queens)
	})
	return order
}

// grown are a group and all that it can be with some of the others.
func (w Wanted) grown(g group, others []int) []group {
	g.line = w.line(g.promises)
	all := []group{g}
	if len(g.promises) == together {
		return all
	}
	for i, p := range others {
		with := append(slices.Clone(g.promises), p)
		if w.common(with) {
			all = append(all, w.grown(group{promises: with}, others[i+1:])...)
		}
	}
	return all
}

// common tells whether one line will do for all of some promises.
func (w Wanted) common(promises []int) bool {
	_, ok := w.lineFor(promises)
	return ok
}

// line is the line of some promises: the first that will do for all.
func (w Wanted) line(promises []int) string {
	line, _ := w.lineFor(promises)
	return line
}

func (w Wanted) lineFor(promises []int) (string, bool) {
	for _, i := range promises {
		for _, line := range w.Promises[i].Lines {
			if !slices.ContainsFunc(promises, func(j int) bool { return !w.Promises[j].takes(line) }) {
				return line, true
			}
		}
	}
	free := !slices.ContainsFunc(promises, func(i int) bool { return len(w.Promises[i].Lines) > 0 })
	return "", free
}
