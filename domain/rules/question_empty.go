package rules

import (
	"fmt"
	"time"

	"lidmark/domain/book"
)

// received asks what does not fit where a nuc was given a cell or a virgin.
func received(v *book.View, id book.NucID, what string) (Question, bool) {
	if q, asks := reigns(v, id, what); asks {
		return q, true
	}
	if q, asks := celledAlready(v, id, what); asks {
		return q, true
	}
	return beeless(v, id)
}

// beeless asks whether a nuc was made up before it was given something, where the
// book has no bees there. Bees that were seen in the same moment do not tell: they
// came from somewhere. What the book has later that day is what was meant.
func beeless(v *book.View, id book.NucID) (Question, bool) {
	n := v.Nuc(id)
	if !withoutBees(v, n) {
		return Question{}, false
	}
	day := v.Season().At((v.Today() + 1).Start(v.Zone()).Add(-time.Second))
	name := day.Nuc(id).Name // it may have been named in the evening as well
	q := Question{Asks: name + " was not made up by then: made up before?", Alike: "not made up"}
	yes := Answer{Key: "1", Words: "yes, made up just before", Earlier: []book.Fact{book.NucMadeUp{Nuc: id}}}
	if later, ok := madeUpAfter(day, id, v.On()); ok {
		at := later.At.Instant.In(day.Zone()).Format("15:04")
		q = Question{Asks: fmt.Sprintf("%s was not made up by then, but at %s: made up before?", name, at), Alike: "made up later"}
		yes.Words = "yes, just before, not later"
		yes.Earlier = []book.Fact{book.Struck{Entry: later.ID, Why: "made up before"}, later.Fact}
	}
	q.Answers = []Answer{yes, {Key: "2", Words: "leave it so"}, {Key: "3", Words: "typed wrong, leave this line", Leave: true}}
	return q, true
}

// withoutBees tells whether a nuc is empty at a view's instant, or was until then
// and was not made up.
func withoutBees(v *book.View, n *book.Nuc) bool {
	switch {
	case n.Holds.Condition == book.Empty:
		return true
	case n.Holds.Condition != book.NoQueen || !n.Holds.Since.Instant.Equal(v.On()) || n.MadeUp == n.Holds.Since:
		return false
	}
	return v.Season().At(v.On().Add(-time.Second)).Nuc(n.NucNamed.Nuc).Holds.Condition == book.Empty
}

// madeUpAfter is the line of a view that says that a nuc was made up after an
// instant.
func madeUpAfter(v *book.View, id book.NucID, at time.Time) (book.Entry, bool) {
	for _, e := range v.LinesSince(id.Subject(), at.Add(time.Second)) {
		if _, ok := e.Fact.(book.NucMadeUp); ok {
			return *e, true
		}
	}
	return book.Entry{}, false
}
