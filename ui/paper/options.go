package paper

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/unit"
)

// Options are how a paper is printed. The zero Options are A4 in usual size
// with greys.
type Options struct {
	Page    Page
	Large   bool      // type and rows enlarged to 140 %
	Pure    bool      // black and white only: no grey, no colour
	Book    string    // what the foot calls the book
	Printed time.Time // when it is printed; zero: the foot does not say

	Say   func(string) string // says a text in the keeper's units; nil: in metric ones
	Units unit.System         // of what is measured out: scale bars and tapes
}

// large is how much larger large print is.
const large = 1.4

// Page is a format of paper. The zero Page is A4.
type Page uint8

// The formats.
const (
	A4 Page = iota
	Letter
)

var formats = [...]struct {
	word string
	w, h float64 // mm
}{
	A4:     {"a4", 210, 297},
	Letter: {"letter", 215.9, 279.4}, // 8.5 by 11 inches
}

// Pages are the words by which formats are chosen.
func Pages() []string {
	var words []string
	for _, f := range formats {
		words = append(words, f.word)
	}
	return words
}

// ParsePage is the format of a word; of none it is A4.
func ParsePage(word string) (Page, error) {
	for i, f := range formats {
		if strings.EqualFold(f.word, word) {
			return Page(i), nil
		}
	}
	if word == "" {
		return A4, nil
	}
	return A4, fmt.Errorf("page %q: choose one of %s", word, strings.Join(Pages(), ", "))
}
