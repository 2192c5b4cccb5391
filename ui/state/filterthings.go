package state

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
)

// mostFilterThings is how many things are found at a time beside nucs.
const mostFilterThings = 5

// FilterThings are what is found by what is typed into the filter and is no nuc:
// orders by their number and customer, queens, batches, colonies, people.
func (s State) FilterThings() (all []book.Subject) {
	f := FilterBy(s.Filter)
	if !s.Typing || s.Book == nil || f.All() {
		return nil
	}
	add := func(sub book.Subject, words ...string) {
		if len(all) < mostFilterThings && f.finds(words) {
			all = append(all, sub)
		}
	}
	v := s.Present().View
	for o := range v.Orders() {
		add(o.Order.Subject(), "order", o.Number, o.Customer)
	}
	for q := range v.Queens() {
		cage := ""
		if q.Caged() {
			cage = "cage " + v.CageOf(q)
		}
		add(q.Queen.Subject(), "queen", q.Name, q.Label, cage, q.Mark.Colour, "disc "+q.Mark.Disc, v.CatchWords(q))
	}
	for b := range v.Batches() {
		add(b.Batch.Subject(), fmt.Sprintf("batch %d", b.Number), b.Line)
	}
	for c := range v.Colonies() {
		add(c.Colony.Subject(), "colony", c.Name, c.Line)
	}
	for p := range v.People() {
		add(p.Person.Subject(), "person", p.Name)
	}
	return all
}

// finds tells whether each word of the filter begins one of the words.
func (f Filter) finds(words []string) bool {
	all := " " + strings.ToLower(strings.Join(words, " ")) + " "
	for _, w := range f.words {
		if !strings.Contains(all, w) {
			return false
		}
	}
	return true
}
