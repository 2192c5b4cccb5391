package view_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// crowded is the page of the season with two large grafts on one day, on which there are
// too few starters and too little time besides.
func crowded(t *testing.T, size [3]float64) state.State {
	s := open(t)
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	home, on := s.Present().View.HomeYard().Yard, today+7
	p.At(s.Now.Add(-time.Minute).Format("2006-01-02 15:04"))
	for _, name := range []string{"rook", "plover"} {
		p.Write(book.BatchPlanned{Batch: booktest.Batch(name), Line: name, Day: on, Minute: 540, Yard: home, Larvae: 400, Nucs: 200})
	}
	season := s.Book.Season.With(p.Entries...)
	s = planning(s, state.Opened{Book: &state.Book{Season: season, Name: "hill"}, IDs: book.NewIDs(s.Now, season, [32]byte{1})})
	s.Width, s.Height, s.Text = size[0], size[1], size[2]
	s = planning(s, state.Ran{Command: "season"})
	s.Scroll = map[state.Place]float64{state.LanePlace: 1e6} // to what is planned
	return s
}

// TestEachClashHasItsPlace: of three clashes and more of the same days each has a bar that
// lies over no other, within its row, and is hit in its middle.
func TestEachClashHasItsPlace(t *testing.T) {
	for _, size := range seasonSizes {
		s := crowded(t, size)
		l, w := s.Layout(), window(s)
		bars, most := map[scene.Ref][]scene.Area{}, 0
		for _, p := range walk(t, w, s.Size()) {
			if r, ok := p.mark.(scene.Rect); ok && r.Fill == scene.Act && l.Lanes.Contains(scene.Point{X: r.X, Y: r.Y}) {
				tag, _ := w.At(r.Centre())
				bars[tag.Ref] = append(bars[tag.Ref], r.Area)
			}
		}
		lanes := len(s.Lanes(l))
		for i, b := range s.PlannedLanes(l) {
			row := scene.Area{X: l.Lanes.X, Y: l.Lanes.Y + float64(lanes+i)*l.Lane + 1, W: l.Lanes.W, H: l.Lane - 2}
			var in []scene.Area
			for _, m := range s.ClashMarks(b.Batch) {
				found := false
				for _, bar := range bars[m.Ref] {
					if bar.Y >= row.Y && bar.Bottom() <= row.Bottom() {
						in, found = append(in, bar), true
					}
				}
				if !found && l.Ribbon.Left(m.From) < row.Right() {
					t.Errorf("%v: no bar of %q is hit in the row of %s", size, m.Name, b.Line)
				}
			}
			for i, a := range in {
				over := 1
				for k, b := range in {
					if k != i && a.Overlaps(b) {
						t.Errorf("%v: a clash lies at %v, another at %v", size, a, b)
					}
					if k != i && a.X < b.Right() && b.X < a.Right() {
						over++
					}
				}
				most = max(most, over)
			}
		}
		if wrong, _ := unsaid(t, s); len(wrong) > 0 {
			t.Errorf("%v: %q", size, wrong)
		}
		if most < 3 {
			t.Errorf("%v: no three clashes of the same days are drawn", size)
		}
	}
}
