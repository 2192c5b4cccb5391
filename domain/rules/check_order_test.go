package rules_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// An order for a line that no breeder has is told of; one for a line that one has, that a substitute
// has, or for any, is not; nor is any where the book tells no breeder's line.
func TestAnOrderForALineWithoutABreederIsToldOf(t *testing.T) {
	bred := (&booktest.Pen{}).At("2027-03-01 12:00").Write(book.ColonyDescribed{Colony: booktest.Colony("s2"), Name: "S2", Line: "Sorrel", Roles: []book.Role{book.Breeder}})
	for name, c := range map[string]struct {
		pen   *booktest.Pen
		order book.OrderTaken
		told  bool
	}{
		"none":       {bred, book.OrderTaken{Line: "Rook"}, true},
		"bred":       {bred, book.OrderTaken{Line: "Sorrel"}, false},
		"substitute": {bred, book.OrderTaken{Line: "Rook", Substitute: []string{"Sorrel"}}, false},
		"any":        {bred, book.OrderTaken{}, false},
		"unknown":    {&booktest.Pen{}, book.OrderTaken{Line: "Rook"}, false},
	} {
		v := c.pen.View("2027-03-02 12:00")
		got := fmt.Sprint(rules.Check(v, rules.PlanOf(v, c.order)).Warned)
		if strings.Contains(got, "no breeder is of Rook: the book has breeders of Sorrel") != c.told {
			t.Errorf("%s: %s", name, got)
		}
	}
}
