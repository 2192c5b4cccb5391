package state

import "lidmark/domain/book"

// tally is how many nucs hold what, how many need the keeper, and what other signs
// stand on their lids.
type tally struct {
	holds   map[book.Condition]int
	need    int
	caught  int
	strokes map[book.Stroke]int
	unseen  int
}

func (r *Reading) readTally(yard book.YardID) tally {
	nucs := r.In(yard)
	t := tally{holds: map[book.Condition]int{}, need: NeedYou(nucs), strokes: map[book.Stroke]int{}}
	for _, n := range nucs {
		t.holds[n.Presumed.Condition]++
		t.strokes[n.Paint]++
		t.caught += boolInt(n.WithoutCaught())
		t.unseen += boolInt(!n.Presumed.Seen || r.Ahead)
	}
	return t
}

// WithoutCaught tells whether a nuc is without a queen since she was caught: the lid
// has a band for the brood that she left.
func (n *Nuc) WithoutCaught() bool {
	k := len(n.Caught)
	return n.Presumed.Condition == book.NoQueen && k > 0 && n.Caught[k-1].At == n.Queenless
}
