package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestTheTableHasItsColumns: in a window of 1200 and more the table has all columns as far
// as there is room beside two reasons in whole words, and place, stores and bees give way first; the day of what is due, the
// chances and what was seen last stay.
func TestTheTableHasItsColumns(t *testing.T) {
	all := []string{"nuc", "holds", "place", "batch", "age, d", "last seen", "due", "days", "probably", "bees", "stores", "needs you"}
	for _, c := range []struct {
		width, height, text float64
		without             []string
	}{
		{1920, 1080, 1, nil},
		{1440, 900, 1, nil},
		{1280, 800, 1, []string{"place", "stores"}},
		{1920, 1080, 1.5, []string{"place", "stores"}},
		{1200, 800, 1, []string{"place", "stores", "bees"}},
		{1180, 800, 1, []string{"place", "stores", "bees"}},
	} {
		s := open(t)
		s.Room, s.Pane, s.Width, s.Height, s.Text = state.Yard, state.Table, c.width, c.height, c.text
		main := s.Layout().Main
		var heads []string
		dates, due := 0, scene.Area{}
		for _, w := range texts(t, window(s), s.Size()) {
			switch {
			case !main.Contains(w.At):
			case w.At.Y == main.Y+60:
				word := strings.TrimPrefix(strings.TrimSuffix(w.Text.Text, ": why"), "most ")
				heads = append(heads, strings.TrimSuffix(word, " to due"))
				if word == "due" {
					due = w.box
				}
			case w.At.X > due.Right() && w.At.X < due.X+200 && strings.HasSuffix(w.Text.Text, " May"):
				dates++
			}
		}
		want := slices.DeleteFunc(slices.Clone(all), func(head string) bool { return slices.Contains(c.without, head) })
		if !slices.Equal(heads, want) {
			t.Errorf("%v at %v: the heads are %q, want %q", c.width, c.text, heads, want)
		}
		if dates < 8 {
			t.Errorf("%v at %v: %d of what is due have a day", c.width, c.text, dates)
		}
	}
}

// TestWhatWasSeenLastIsWhole: since the table leaves out what has columns of its own, few
// looks have a code that is cut, in slim columns a fifth.
func TestWhatWasSeenLastIsWhole(t *testing.T) {
	for _, width := range []float64{1280, 1440, 1920} {
		s := open(t)
		s.Room, s.Pane, s.Width, s.Height = state.Yard, state.Table, width, 4000
		main := s.Layout().Main
		from, to := 0.0, 0.0
		rows, cut := 0, 0
		for _, w := range texts(t, window(s), s.Size()) {
			switch {
			case !main.Contains(w.At):
			case w.Text.Text == "last seen":
				from = w.At.X
			case w.Text.Text == "due" && w.At.Y == main.Y+60:
				to = w.At.X
			case w.At.X == from && w.At.Y > main.Y+60:
				rows++
				if strings.HasSuffix(w.Text.Text, "…") || w.box.Right() > to {
					cut++
				}
			}
		}
		if rows < 50 || width >= 1440 && cut > rows/20 || cut > rows/5 {
			t.Errorf("%v: %d of %d rows are cut", width, cut, rows)
		}
	}
}

// TestReasonsAreWhole: no reason is cut within a word, nor counted where it has no room,
// and one that is left out is told to the pointer.
func TestReasonsAreWhole(t *testing.T) {
	for _, c := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}} {
		s := open(t)
		s.Room, s.Pane, s.Width, s.Height, s.Text = state.Yard, state.Table, c[0], 4000, c[2]
		main := s.Layout().Main
		words := map[string]bool{}
		for _, p := range walk(t, window(s), s.Size()) {
			if r, ok := p.mark.(scene.Rect); ok && strings.Contains(r.Reason, ": ") {
				for w := range strings.FieldsSeq(strings.NewReplacer(";", "", ",", "").Replace(r.Reason)) {
					words[w] = true
				}
			}
		}
		left, rows := 0.0, 0
		for _, w := range texts(t, window(s), s.Size()) {
			switch {
			case !main.Contains(w.At):
			case strings.HasPrefix(w.Text.Text, "needs you"):
				left = w.At.X
			case left > 0 && w.At.X == left+16:
				rows++
				said, cut := strings.CutSuffix(w.Text.Text, " …")
				all := strings.Fields(strings.NewReplacer(";", "", ",", "").Replace(said))
				if strings.Contains(said, "+") || strings.HasSuffix(said, "…") || cut && !words[all[len(all)-1]] {
					t.Errorf("%v: %q", c, w.Text.Text)
				}
			}
		}
		if rows < 30 {
			t.Errorf("%v: %d rows have a reason", c, rows)
		}
	}
}

// TestWhatIsDueHasItsDay: on days ahead too, each work in the table has its day, and its
// words are not cut.
func TestWhatIsDueHasItsDay(t *testing.T) {
	for _, c := range [][3]float64{{1200, 4000, 1}, {1280, 4000, 1}, {1280, 4000, 1.5}, {1920, 4000, 1}} {
		s := open(t)
		s.Room, s.Pane, s.Width, s.Height, s.Text = state.Yard, state.Table, c[0], c[1], c[2]
		for day := range 22 {
			main := s.Layout().Main
			from, to, works, days := 0.0, 0.0, 0, 0
			for _, w := range texts(t, window(s), s.Size()) {
				switch head := w.At.Y == main.Y+60; {
				case !main.Contains(w.At):
				case head && w.Text.Text == "due":
					from = w.At.X
				case head && strings.HasPrefix(w.Text.Text, "days"):
					to = w.box.Right() - 10
				case head || from == 0 || w.At.X < from:
				case w.At.X == from:
					if works++; strings.HasSuffix(w.Text.Text, "…") {
						t.Errorf("%v day %d: %q", c, day, w.Text.Text)
					}
				case w.At.X < to && slices.Contains([]string{"Apr", "May", "Jun", "Jul"}, w.Text.Text[max(0, len(w.Text.Text)-3):]):
					days++
				}
			}
			if works < 20 || days != works {
				t.Errorf("%v day %d: %d works have %d days", c, day, works, days)
			}
			s = pressed(s, ".")
		}
	}
}
