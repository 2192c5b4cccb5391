package allot

import (
	"cmp"
	"slices"
)

// answer says what was found in the words of the problem: of a group the
// earliest subjects have what gains most.
func (s *search) answer(p Problem) Answer {
	a := Answer{Chosen: make([]int, len(p.Ways)), More: make([]float64, len(p.Supply))}
	slices.SortStableFunc(s.settled, func(x, y settled) int {
		return cmp.Or(cmp.Compare(x.group, y.group), cmp.Compare(s.worthOf(p, y), s.worthOf(p, x)), cmp.Compare(x.way, y.way))
	})
	served := make([]int, len(s.members))
	for _, t := range s.settled {
		if t.union > 0 {
			u := p.Unions[t.union-1]
			a.Chosen[u.A], a.Chosen[u.B] = -1, -1
			a.United = append(a.United, t.union-1)
			continue
		}
		for _, i := range s.members[t.group][served[t.group]:][:t.many] {
			a.Chosen[i] = t.way
		}
		served[t.group] += t.many
	}
	slices.Sort(a.United)
	a.sum(p)
	for i := range a.More {
		a.More[i] = s.worth(s.root.more[i+1])
	}
	if s.timely {
		a.MinuteWorth = s.worth(s.root.price * 1000 / s.step)
	}
	a.Exact, a.Bound = s.bound <= s.best, a.Worth+s.worth(s.bound-s.best)
	return a
}

// worthOf is what one of a settled way is worth to the first of its group.
func (s *search) worthOf(p Problem, t settled) float64 {
	if t.union > 0 {
		return 0 // its two subjects are in no group with others
	}
	return p.Ways[s.members[t.group][0]][t.way].Worth
}

// sum adds up what the chosen ways are worth and take.
func (a *Answer) sum(p Problem) {
	add := func(w Way) {
		a.Worth += w.Worth
		a.Minutes += w.Minutes
	}
	for i, j := range a.Chosen {
		if j >= 0 {
			add(p.Ways[i][j])
		}
	}
	for _, u := range a.United {
		add(p.Unions[u].Way)
	}
}
