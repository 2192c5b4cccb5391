package view_test

import (
	"fmt"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// longList is a list of 10,000 nucs.
func longList(t testing.TB) state.State {
	lines := []string{"Nuc,Stand,Graft no,Grafted,Cell in,Bees,Remarks"}
	for i := range 10_000 {
		letter := "ABCDEFGHJKLMNPQRSTUVWXYZ"[i/420]
		lines = append(lines, fmt.Sprintf("%c%d,%c,%d,%s,%s,%d,", letter, i%420+1, letter, i/500+1, today-30, today-20, i%7))
	}
	h := nothingOpen(t)
	h.send(state.ListRead{Path: "long.csv", List: aList(lines...)})
	if got := h.Bring.Result.Counts; got.Nucs < 9_900 {
		t.Fatalf("of 10,000 rows was read: %s, %v", got, h.Bring.Result.Mistakes()[0])
	}
	return h.State
}

// TestOnlyVisibleRowsOfAListAreDrawn: a long list costs no more than a window
// full.
func TestOnlyVisibleRowsOfAListAreDrawn(t *testing.T) {
	s := longList(t)
	for range 40 {
		s, _ = state.Update(s, state.Wheeled{DY: 7_777})
	}
	if rows, marks := int(s.ListLayout().Table.H/state.ListRow), len(walk(t, window(s), s.Size())); marks > 120+12*(rows+2) {
		t.Errorf("%d marks for %d rows", marks, rows)
	}
	last := s.Bring.Result.Rows[len(s.Bring.Result.Rows)-1]
	for _, w := range texts(t, window(s), s.Size()) {
		if w.Text.Text == last.Nuc && w.clip.Contains(w.box.Centre()) {
			return
		}
	}
	t.Error("the end of the list is not reached by the wheel")
}

// BenchmarkColumnChanged reads 10,000 rows again because a column means something
// else. Floor: a bare walk over their cells.
func BenchmarkColumnChanged(b *testing.B) {
	s := longList(b)
	b.Run("read", func(b *testing.B) {
		for b.Loop() {
			s, _ = state.Update(s, state.Pressed{Tag: scene.Tag{Ref: state.ChoiceOf(state.ListColumn(7), "note")}})
			s, _ = state.Update(s, state.Released{Tag: scene.Tag{Ref: state.ChoiceOf(state.ListColumn(7), "note")}})
		}
	})
	b.Run("floor", func(b *testing.B) {
		n := 0
		for b.Loop() {
			for _, row := range s.Bring.Rows() {
				for _, c := range row.Cells {
					n += len(c.Text)
				}
			}
		}
		if n == 0 {
			b.Fatal("no cells")
		}
	})
}

// BenchmarkListDrawn draws a window on a list of 10,000 rows. Floor: the same on
// a list of one row.
func BenchmarkListDrawn(b *testing.B) {
	h := nothingOpen(b)
	h.send(state.ListRead{Path: "short.csv", List: aList("Nuc,Note", "A1,a")})
	for name, s := range map[string]state.State{"long": longList(b), "floor": h.State} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				window(s)
			}
		})
	}
}
