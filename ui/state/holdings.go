package state

import (
	"iter"
	"slices"
	"strconv"
)

// Holding is how many of something the book holds.
type Holding struct{ Word, Figure string }

// Holdings say what the open book holds, and nothing of what it has none of.
func (s State) Holdings() []Holding {
	r := s.Present()
	v := r.View
	all := []Holding{
		{"entries", figures(s.Book.Season.Len())},
		{"nucs", figures(len(r.Nucs))},
		{"batches", figures(len(r.Batches()))},
		{"yards", figures(length(v.Yards()))},
		{"colonies", figures(length(v.Colonies()))},
		{"people", figures(length(v.People()))},
		{"orders", figures(length(v.Orders()))},
	}
	all = slices.DeleteFunc(all, func(h Holding) bool { return h.Figure == "0" })
	for e := range s.Book.Season.Entries() {
		return append(all, Holding{"begun", e.At.Instant.In(v.Zone()).Format("2 Jan 2006")})
	}
	return all
}

func length[T any](all iter.Seq[T]) (n int) {
	for range all {
		n++
	}
	return n
}

// figures writes a whole number with a space before every three figures.
func figures(n int) string {
	said := strconv.Itoa(n)
	for i := len(said) - 3; i > 0; i -= 3 {
		said = said[:i] + " " + said[i:]
	}
	return said
}
