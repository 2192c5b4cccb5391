package handover

import (
	"strings"

	"lidmark/domain/book"
)

// Lacks is what an order asks to be done to a queen that the book does not have of her yet.
type Lacks struct {
	Mark bool // paint or a disc
	Disc bool // a numbered disc
	Clip bool // a clipped wing
}

// LacksOf is what a queen with a mark lacks for an order.
func LacksOf(o *book.Order, m book.QueenMarked) Lacks {
	return Lacks{
		Mark: o.Marked && !o.Disc && m.Colour == "" && m.Disc == "",
		Disc: o.Disc && m.Disc == "",
		Clip: o.Clipped && !m.Clipped,
	}
}

// Any tells whether anything is lacking.
func (l Lacks) Any() bool { return l != Lacks{} }

// Words say what is still to be done to her: "give a disc, clip a wing"; "" for nothing.
func (l Lacks) Words() string { return l.join("mark her", "give a disc", "clip a wing") }

// Wanted names what is lacking: "a disc, a clipped wing"; "" for nothing.
func (l Lacks) Wanted() string { return l.join("a mark", "a disc", "a clipped wing") }

func (l Lacks) join(mark, disc, clip string) string {
	var all []string
	for _, one := range []struct {
		lacks bool
		words string
	}{{l.Mark, mark}, {l.Disc, disc}, {l.Clip, clip}} {
		if one.lacks {
			all = append(all, one.words)
		}
	}
	return strings.Join(all, ", ")
}

// cost is what it costs to give an order a queen who lacks something.
func (l Lacks) cost() (cost float64) {
	for _, lacks := range []bool{l.Mark, l.Disc, l.Clip} {
		if lacks {
			cost += unmarked
		}
	}
	return cost
}

// Words say what is to be done with her until she goes, how she is caught and what she
// still lacks: "catch Mon 24 May; clip a wing"; "" for nothing.
func (g Given) Words() string {
	caught, lacks := g.Catching.Words(), g.Lacks.Words()
	if caught != "" && lacks != "" {
		return caught + "; " + lacks
	}
	return caught + lacks
}
