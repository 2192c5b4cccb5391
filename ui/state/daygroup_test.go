package state_test

import (
	"fmt"
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// TestWhatIsDoneOfAGroupIsOneLine: nucs of a line of which it is written one by one stand
// together in what is done of it, before those that are left.
func TestWhatIsDoneOfAGroupIsOneLine(t *testing.T) {
	w := keeper(t).run("today")
	var group state.PageLine
	for _, l := range w.Lines() {
		if l.Act == rules.ActGiveCell && len(l.Of) > 4 {
			group = l
		}
	}
	if len(group.Of) == 0 {
		t.Fatal("no group is to be given cells")
	}
	for i, at := range []int{0, 1, 3} { // the first of all, the first of those left, one among them
		w.take(group.Of[at]).fill("give cell", fmt.Sprintf("batch=5, Plover, %d cells", 25-i)).kept().run("today")
	}
	var done, left [][]book.Subject
	for _, l := range w.Lines() {
		if l.Act != group.Act || l.Title != group.Title || !slices.ContainsFunc(l.Of, func(of book.Subject) bool { return slices.Contains(group.Of, of) }) {
			continue
		}
		if l.Done {
			done = append(done, l.Of)
		} else {
			left = append(left, l.Of)
		}
	}
	if len(done) != 1 || len(done[0]) != 3 || len(left) != 1 || len(left[0]) != len(group.Of)-3 {
		t.Errorf("of %d nucs done %v, left %v", len(group.Of), done, left)
	}
}
