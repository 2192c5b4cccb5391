package yard

import (
	"strings"

	"lidmark/domain/book"
)

// Mark is what is painted or hung on a front for bees to know it by. The zero Mark
// is a bare front.
type Mark struct{ Shape, Colour string }

// MarkOf is a front mark of the book.
func MarkOf(f book.FrontMarked) Mark { return Mark{Shape: f.Shape, Colour: f.Colour} }

// Apart is in how many ways bees tell two marks apart: shape, colour, both or
// none. A bare front differs from a marked one in one way. Bees do not see red: to
// them it is black (von Frisch 1914, Der Farbensinn und Formensinn der Biene; from
// memory).
func (m Mark) Apart(o Mark) (ways int) {
	if (m == Mark{}) != (o == Mark{}) {
		return 1
	}
	if !strings.EqualFold(m.Shape, o.Shape) {
		ways++
	}
	if seen(m.Colour) != seen(o.Colour) {
		ways++
	}
	return ways
}

// seen is a colour as a bee sees it.
func seen(colour string) string {
	if colour = strings.ToLower(colour); colour == "red" {
		return "black"
	}
	return colour
}
