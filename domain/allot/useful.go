package allot

import (
	"iter"
	"slices"
)

// useful are the ways besides leaving that can be chosen: those with a gain
// that no other has at less or like cost; of equals the earliest. They are
// written into a slice that is used again.
func useful(kept []int, ways []Way, timely bool) []int {
	kept = kept[:0]
	for j, w := range ways {
		if w.Worth > ways[0].Worth && !slices.ContainsFunc(kept, func(k int) bool { return ways[k].beats(w, timely) }) {
			kept = slices.DeleteFunc(kept, func(k int) bool { return w.beats(ways[k], timely) })
			kept = append(kept, j)
		}
	}
	return kept
}

// beats says whether a way is as good as another in all, minutes counting
// where they are limited.
func (w Way) beats(o Way, timely bool) bool {
	return w.Worth >= o.Worth && (w.Takes == o.Takes || w.Takes == 0) && (w.Minutes <= o.Minutes || !timely)
}

// gains yields all that can be chosen with what it gains over leaving.
func (p Problem) gains(timely bool) iter.Seq2[Way, float64] {
	return func(yield func(Way, float64) bool) {
		var kept []int
		for _, ways := range p.Ways {
			kept = useful(kept, ways, timely)
			for _, j := range kept {
				if !yield(ways[j], ways[j].Worth-ways[0].Worth) {
					return
				}
			}
		}
		for _, u := range p.Unions {
			if gain := u.Worth - p.leave(u); gain > 0 && !yield(u.Way, gain) {
				return
			}
		}
	}
}

// leave is what the two subjects of a union are worth as they are.
func (p Problem) leave(u Union) float64 { return p.Ways[u.A][0].Worth + p.Ways[u.B][0].Worth }
