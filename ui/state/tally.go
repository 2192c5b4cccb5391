package state

import "lidmark/domain/book"

// tally is how many nucs hold what, and how many need the keeper.
type tally struct {
	holds map[book.Condition]int
	need  int
}

// Tally is how many nucs of a yard hold what, of all for the zero yard, and how
// many need the keeper. The map must not be changed.
func (r *Reading) Tally(yard book.YardID) (holds map[book.Condition]int, need int) {
	t := r.tally(yard)
	return t.holds, t.need
}

func (r *Reading) readTally(yard book.YardID) tally {
	nucs := r.In(yard)
	t := tally{map[book.Condition]int{}, NeedYou(nucs)}
	for _, n := range nucs {
		t.holds[n.Presumed.Condition]++
	}
	return t
}
