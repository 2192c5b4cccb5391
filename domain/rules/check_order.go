package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
)

// TakeOrder means to promise queens to somebody.
type TakeOrder struct{ book.OrderTaken }

// check warns of an order for a line of which no colony is a breeder. A book that tells the line of no
// breeder cannot know.
func (i TakeOrder) check(c *checker) {
	o := book.Order{OrderTaken: i.OrderTaken}
	if o.Line == "" {
		return
	}
	var bred []string
	for b := range c.view.Colonies() {
		switch {
		case !b.Is(book.Breeder) || b.Line == "":
		case o.Takes(b.Line):
			return
		case !slices.Contains(bred, b.Line):
			bred = append(bred, b.Line)
		}
	}
	if len(bred) > 0 {
		c.warn(fmt.Sprintf("no breeder is of %s: the book has breeders of %s", o.Lines(), strings.Join(bred, ", ")), "Mend the line, or write down the colony whose larvae are to be grafted")
	}
}
