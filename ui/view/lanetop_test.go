package view_test

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// seasonSizes are windows with names before the lanes, and above them.
var seasonSizes = [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}, {1920, 1080, 1.5}, {800, 560, 1}}

// asSeason is the page of the season of the demo, in a size and on a day.
func asSeason(t *testing.T, size [3]float64, days int) state.State {
	s := open(t)
	s.Now = s.Now.AddDate(0, 0, days)
	s.Width, s.Height, s.Text = size[0], size[1], size[2]
	return planning(s, state.Ran{Command: "season"})
}

// unsaid are the kinds of clashes in sight that no row of a batch names or counts, and how many are
// only counted.
func unsaid(t *testing.T, s state.State) (wrong []string, counted int) {
	l := s.Layout()
	words := texts(t, window(s), s.Size())
	row := func(i int, id book.BatchID) {
		a := scene.Area{X: l.Lanes.X, Y: l.Lanes.Y + float64(i)*l.Lane + 1, W: l.Lanes.W, H: l.Lane - 2}
		said, more := "", 0
		for _, w := range words {
			if a.Contains(w.At) && w.Text.Role == scene.Act {
				said += w.Text.Text + "; "
				if _, n, is := strings.Cut(w.Text.Text, " +"); is {
					more, _ = strconv.Atoi(n)
				}
			}
		}
		kinds := map[string]bool{}
		for _, m := range s.ClashMarks(id) {
			if !kinds[m.Name] && l.Ribbon.Left(m.From) < a.Right() && !strings.Contains(said, strings.TrimPrefix(m.Name, "too few ")) {
				kinds[m.Name] = true
			}
		}
		if counted += more; len(kinds) != more {
			wrong = append(wrong, fmt.Sprintf("row %d does not name %d of its clashes, and says %q", i, len(kinds), said))
		}
	}
	lanes := s.Lanes(l)
	for i, b := range lanes {
		row(i, b.Batch)
	}
	for i, b := range s.PlannedLanes(l) {
		row(len(lanes)+i, b.Batch)
	}
	return wrong, counted
}

// A clash lies within the row of each of its batches, and is named in each; of several in a row of a
// narrow window some may be counted. Whose virgins fly late want drones as well.
func TestClashesBelongToTheirRows(t *testing.T) {
	for _, size := range seasonSizes {
		s := asSeason(t, size, 0)
		l, clashes := s.Layout(), 0
		marks := walk(t, window(s), s.Size())
		for i, b := range s.Lanes(l) {
			row := scene.Area{X: l.Lanes.X, Y: l.Lanes.Y + float64(i)*l.Lane + 1, W: l.Lanes.W, H: l.Lane - 2}
			bars := 0
			for _, p := range marks {
				r, ok := p.mark.(scene.Rect)
				if ok && r.Fill == scene.Act && row.Overlaps(r.Area) {
					if bars++; row.Intersect(r.Area) != r.Area || r.X < l.Ribbon.Left(s.Today()) {
						t.Errorf("%v: a clash of batch %d lies at %v, its row at %v", size, b.Number, r.Area, row)
					}
				}
			}
			clashes += bars
			if want := len(s.ClashMarks(b.Batch)); bars != want || want == 0 && b.Number > 2 {
				t.Errorf("%v: %d clashes are drawn in the row of batch %d, it has %d", size, bars, b.Number, want)
			}
		}
		if wrong, counted := unsaid(t, s); len(wrong) > 0 || clashes == 0 || size[0] >= 1280 && size[2] == 1 && counted > 0 {
			t.Errorf("%v: of %d clashes %d are only counted; %q", size, clashes, counted, wrong)
		}
	}
}

// A label of a stream begins where its part does, and goes on under no other but a little, or all of it stands under a part of that
// look; none is cut, and a name lies over no stream.
func TestLabelsStandUnderTheirParts(t *testing.T) {
	for _, size := range seasonSizes {
		for _, days := range []int{0, 3, 9, 14, 21, 40} {
			s := asSeason(t, size, days)
			l, labels := s.Layout(), 0
			marks := walk(t, window(s), s.Size())
			for _, w := range texts(t, window(s), s.Size()) {
				if !l.Lanes.Contains(w.At) || w.At.X < l.Ribbon.X-2 || w.Text.Text == "mating flights" || strings.HasPrefix(w.Text.Text, "+") {
					continue
				}
				i := int((w.At.Y - l.Lanes.Y) / l.Lane)
				row := scene.Area{X: l.Lanes.X, Y: l.Lanes.Y + float64(i)*l.Lane, W: l.Lanes.W, H: l.Lane}
				parts := partsIn(marks, row)
				label := w.At.Y > row.Bottom()-8
				switch {
				case !label:
					for _, p := range parts {
						if p.box.Overlaps(w.box.Inset(2)) {
							t.Errorf("%v, day %d: %q lies over its stream", size, days, w.Text.Text)
						}
					}
				case !standsUnder(parts, w.box, l.Ribbon.X):
					t.Errorf("%v, day %d: %q at %v stands under no part of its own", size, days, w.Text.Text, w.box)
				default:
					labels++
				}
			}
			if labels < 2 && days <= 21 {
				t.Errorf("%v, day %d: %d labels", size, days, labels)
			}
		}
	}
}

type streamPart struct {
	box  scene.Area
	role scene.Role
}

// partsIn are the pieces of the stream in a row.
func partsIn(marks []placed, row scene.Area) (all []streamPart) {
	for _, p := range marks {
		if m, ok := p.mark.(scene.Poly); ok && strings.HasPrefix(m.Ref.Part, "stage ") && m.Points[0].Y > row.Y && m.Points[0].Y < row.Bottom() {
			all = append(all, streamPart{around(m.Points), m.Stroke.Role})
		}
	}
	return all
}

func around(points []scene.Point) scene.Area {
	x, y := points[0].X, points[0].Y
	to, bottom := x, y
	for _, p := range points {
		x, y, to, bottom = min(x, p.X), min(y, p.Y), max(to, p.X), max(bottom, p.Y)
	}
	return scene.Area{X: x, Y: y, W: to - x, H: bottom - y}
}

// standsUnder tells whether words begin at a part, or stand wholly under one or several that
// look alike.
func standsUnder(parts []streamPart, words scene.Area, from float64) bool {
	return slices.ContainsFunc(parts, func(p streamPart) bool {
		begins := max(p.box.X, from)
		to, last := p.box.Right(), true
		for _, q := range parts {
			last = last && q.box.Right() <= p.box.Right()
			if q.role == p.role && q.box.X <= to+1 {
				to = max(to, q.box.Right())
			}
		}
		if words.X < begins-1 || words.X > to {
			return false
		}
		return words.X < begins+5 && (last || (words.X+words.Right())/2 <= to+4) || words.Right() <= to+1
	})
}
