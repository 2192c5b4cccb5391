package plan

// backward goes through some grafts from the last to the first, by how many nucs are
// free at each.
type backward struct {
	ways
	queens [][]complex128 // of a graft, by how many are placed
	placed []placing
	states []state // before each graft, and after the last

	// Of the last two what they give where they work does not hang on how often they
	// do: it is found once for all shares of grafts that work.
	last state // what the last one gives
	both state // what the last but one gives, and the last after it
	one  state // what the last but one gives alone
}

// state is what is still to come, by how many nucs are free: from low on, and the
// last one for all above.
type state struct {
	low int
	of  []complex128
}

func (s state) at(free int) complex128 { return s.of[min(free-s.low, len(s.of)-1)] }

// nothing is what is still to come after the last graft.
var nothing = state{0, []complex128{1}}

func (w ways) backward() *backward {
	n := len(w.grafts)
	b := &backward{ways: w, queens: make([][]complex128, n), placed: make([]placing, n), states: make([]state, n+1), last: w.state(n - 1)}
	for g, graft := range w.grafts {
		b.states[g] = w.state(g)
		most := min(w.high[g], graft.Larvae) + 1
		b.placed[g].back, b.placed[g].sums = make([]complex128, 0, most), make([]complex128, 0, most+1)
	}
	b.states[n] = nothing
	if n > 1 {
		b.both, b.one = w.state(n-2), w.state(n-2)
	}
	return b
}

// reared takes one set of the keeper's rates, in which the first graft has this place.
func (b *backward) reared(k rearing, first int) {
	for g := range b.placed {
		b.placed[g].weigh(k.ripe[first+g], k.tail[first+g], b.queens[g])
	}
	b.lastTwo()
}

// state has room for the state before a graft.
func (w ways) state(g int) state {
	low, high := min(w.low[g], w.enough[g]), min(w.high[g], w.enough[g])
	return state{low, make([]complex128, high-low+1)}
}

// fresh is how many nucs become free after a graft, for the next one.
func (w ways) fresh(g int) int {
	if g+1 < len(w.grafts) {
		return w.grafts[g+1].Nucs
	}
	return 0
}

// gives is what a graft that works and those after it give.
func (b *backward) gives(g int, into, after state) {
	for i := range into.of {
		into.of[i] = b.placed[g].gives(into.low+i, b.fresh(g), after)
	}
}

func (b *backward) lastTwo() {
	n := len(b.grafts)
	b.gives(n-1, b.last, nothing)
	if n > 1 {
		b.gives(n-2, b.both, b.last)
		b.gives(n-2, b.one, nothing)
	}
}

// value is what all grafts give where each works with that chance.
func (b *backward) value(chance float64) complex128 {
	works, fails := complex(chance, 0), complex(1-chance, 0)
	for g := len(b.grafts) - 1; g >= 0; g-- {
		now, after := b.states[g], b.states[g+1]
		switch g {
		case len(b.grafts) - 1:
			copy(now.of, b.last.of)
		case len(b.grafts) - 2:
			for i := range now.of {
				now.of[i] = works*b.both.of[i] + fails*b.one.of[i]
			}
		default:
			b.gives(g, now, after)
		}
		for i := range now.of {
			now.of[i] = works*now.of[i] + fails*after.at(now.low+i+b.fresh(g))
		}
	}
	return b.states[0].at(b.high[0])
}
