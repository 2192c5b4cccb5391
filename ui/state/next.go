package state

import "lidmark/domain/book"

// Next is what to do next in a book that has just begun; "" in one that is under
// way.
func (s State) Next() string {
	if s.Book == nil || s.Book.ReadOnly != "" {
		return ""
	}
	r := s.Present()
	madeUp := 0
	for _, n := range r.Nucs {
		madeUp += boolInt(n.Presumed.Condition != book.Empty)
	}
	batches := len(r.Batches())
	switch {
	case len(r.Nucs) == 0:
		return "Set up boxes: “Add boxes” on the yard's card, then their names, like A1-A12"
	case madeUp == 0 && batches == 0:
		return "Nucs made up: Ctrl+A takes all, then “Make it up”. A graft: on the yard's card"
	case madeUp == 0:
		return "When nucs are made up: Ctrl+A takes all, then “Make it up” on their card"
	case batches == 0:
		return "On the evening of a graft: “Write down a graft” on the yard's card"
	case len(r.Plan().Stops) == 0 && s.untold(r):
		return "When a cell is given: take the nuc, “Give a cell”; or type A1 and c1"
	}
	return ""
}

// untold tells whether no nuc holds anything of a batch yet.
func (s State) untold(r *Reading) bool {
	for _, n := range r.Nucs {
		if !n.Holds.Batch.IsZero() {
			return false
		}
	}
	return true
}
