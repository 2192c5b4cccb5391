package view_test

import (
	"cmp"
	"slices"
	"testing"

	"lidmark/ui/state"
)

// TestTheHeadSaysTheOrderInForce: the words over lids, wall and table are the order in
// which the nucs below them stand.
func TestTheHeadSaysTheOrderInForce(t *testing.T) {
	for _, c := range []struct {
		pane  state.Pane
		heads state.Heads
		sort  state.Sort
		want  string
	}{
		{state.Table, state.StandHeads, state.Sort{}, "sorted by needs you, then days to due"},
		{state.Table, state.StandHeads, state.Sort{By: state.ByAge, Within: state.ByBees}, "sorted by age, then bees"},
		{state.Table, state.StandHeads, state.Sort{By: state.ByPlace}, "stand order"},
		{state.Table, state.StandHeads, state.Sort{By: state.ByPlace, Down: true}, "stand order, backwards"},
		{state.Table, state.BatchHeads, state.Sort{By: state.ByName}, "by batch, sorted by name, then needs you"},
		{state.Lids, state.StandHeads, state.Sort{}, "stand order"},
		{state.Wall, state.BatchHeads, state.Sort{}, "by batch"},
	} {
		s := open(t)
		s.Width, s.Height = 1920, 1080
		s.Room, s.Pane, s.Heads, s.Sort = state.Yard, c.pane, c.heads, c.sort
		said := func(w written) bool { return w.Text.Text == c.want }
		if !slices.ContainsFunc(texts(t, window(s), s.Size()), said) {
			t.Errorf("pane %v under %v, %v does not say %q", c.pane, c.heads, c.sort, c.want)
		}
	}
}

// TestTheTableInStandOrder: chosen from the list of heads the rows stand as they are
// walked, and a click on the head of places turns them about.
func TestTheTableInStandOrder(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Table
	s, _ = state.Update(s, state.Ran{Command: "heads stand order"})
	at := map[*state.Nuc]int{}
	for i, n := range s.Reading().Nucs {
		at[n] = i
	}
	walked := func(a, b state.TableLine) int { return cmp.Compare(at[a.Nuc], at[b.Nuc]) }
	if rows := s.Listing(); len(rows) == 0 || !slices.IsSortedFunc(rows, walked) {
		t.Error("the rows are not in stand order")
	}
	s.Sort.Down = true
	if rows := s.Listing(); !slices.IsSortedFunc(rows, func(a, b state.TableLine) int { return walked(b, a) }) {
		t.Error("the rows are not in stand order turned about")
	}
}
