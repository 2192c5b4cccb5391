package view_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// TestTheLegendExplainsEverySignOnLids: whatever stands on a lid in sight, the legend
// below says what it means, in small windows too.
func TestTheLegendExplainsEverySignOnLids(t *testing.T) {
	for _, pane := range []state.Pane{state.Wall, state.Lids, state.Split, state.Map} {
		for _, size := range [][3]float64{{800, 560, 1}, {1100, 700, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}} {
			s := open(t)
			s.Room, s.Pane, s.Text, s.Signs, s.AllSigns = state.Yard, pane, size[2], true, true
			s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
			l := s.Layout()
			of := l.Main
			if of.Empty() {
				of = l.Map
			}
			said, wanted := map[string]bool{}, map[string]bool{}
			for _, p := range walk(t, view.Window(s, state.Reckoner{}), s.Size()) {
				switch m := p.mark.(type) {
				case scene.Text:
					word := strings.TrimPrefix(m.Text, "hollow: ")
					said[word] = said[word] || of.Contains(m.At)
				case scene.Lid:
					if !of.Contains(m.At) || !p.clip.Contains(m.At) || m.Blank {
						continue
					}
					wanted[book.Condition(m.Condition).String()] = true
					wanted["not seen yet"] = wanted["not seen yet"] || !m.Seen
					wanted["need you"] = wanted["need you"] || m.NeedsYou
					wanted["caught, brood left"] = wanted["caught, brood left"] || m.Caught
					for stroke, word := range []string{book.Settled: "settled", book.Watch: "watch", book.Act: "act"} {
						wanted[word] = wanted[word] || word != "" && m.Paint == scene.Paint(stroke)
					}
				}
			}
			if len(wanted) < 8 {
				t.Fatalf("%v: only %v stands on lids", size, wanted)
			}
			for word, stands := range wanted {
				if stands && word != "" && !said[word] {
					t.Errorf("form %d, %v: the legend does not say %q", pane, size, word)
				}
			}
		}
	}
}

// TestTheLegendKeepsItsPlaces: in every form and size of Yard the legend has all ten
// conditions, also those that no nuc is in.
func TestTheLegendKeepsItsPlaces(t *testing.T) {
	for _, pane := range []state.Pane{state.Wall, state.Lids, state.Split, state.Map} {
		for i := range sizes[1:] {
			s := sized(open(t), i+1)
			s.Room, s.Pane, s.Signs, s.AllSigns = state.Yard, pane, true, true
			if pane == state.Map && s.Text > 1.5 {
				continue // what has no room is told below the lids
			}
			s.Yards[state.Yard] = ledge(s) // where nothing is robbed
			l, said := s.Layout(), map[string]bool{}
			for _, w := range texts(t, view.Window(s, state.Reckoner{}), s.Size()) {
				said[w.Text.Text] = said[w.Text.Text] || l.Main.Contains(w.At) || l.Map.Contains(w.At)
			}
			for _, c := range book.Conditions() {
				if !said[c.String()] {
					t.Errorf("form %d at %v: the legend does not say %q", pane, sizes[i+1], c)
				}
			}
		}
	}
}

// TestTheLegendStaysFromDayToDay: on whatever day is looked at, in whatever window, each
// sign of the legend below the lids stands where it stood, and none of its words is cut.
func TestTheLegendStaysFromDayToDay(t *testing.T) {
	for _, size := range [][2]float64{{1280, 800}, {1440, 900}, {1920, 1080}} {
		stood := map[string]float64{}
		for _, ahead := range []calendar.Day{1, 2, 3, 5, 7, 9} {
			s := open(t)
			s.Room, s.Day = state.Yard, today+ahead
			s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
			l := s.Layout()
			below := scene.Area{X: l.Main.X, Y: l.Main.Bottom() - s.Grid(l).Legend.Height, W: l.Main.W, H: s.Grid(l).Legend.Height}
			if cut := cutTexts(t, s, below); len(cut) > 0 {
				t.Errorf("%v, %d days on: the legend cuts %q", size, ahead, cut)
			}
			signs := 0
			for _, p := range walk(t, window(s), s.Size()) {
				m, ok := p.mark.(scene.Lid)
				if !ok || !below.Contains(m.At) || !m.Seen {
					continue
				}
				signs++
				word := scene.Condition(m.Condition).String()
				if m.Caught {
					word = "caught"
				}
				if x, known := stood[word]; known && x != m.At.X {
					t.Errorf("%v, %d days on: %q stands at %.1f, before at %.1f", size, ahead, word, m.At.X, x)
				}
				stood[word] = m.At.X
			}
			if signs < 10 {
				t.Fatalf("%v: only %d signs are explained", size, signs)
			}
		}
	}
}

// TestALowLegendFolds: where lids have no room the legend takes one line, in which
// nothing is cut, and a click on its end opens it.
func TestALowLegendFolds(t *testing.T) {
	s := open(t)
	s.Room, s.Pane, s.Text = state.Yard, state.Lids, 1.5
	s, _ = state.Update(s, state.Resized{Width: 1280, Height: 800})
	g := s.Grid(s.Layout())
	lids := 0
	for _, row := range g.Visible() {
		lids += len(row.Lids)
	}
	if !g.Legend.Folded || lids < 40 {
		t.Errorf("folded %t, %d lids in sight, want 40", g.Legend.Folded, lids)
	}
	if cut := cutTexts(t, s, s.Layout().Main); len(cut) > 0 {
		t.Errorf("cut: %q", cut)
	}
	if s = clickedOn(t, s, "all signs"); s.Grid(s.Layout()).Legend.Folded {
		t.Error("the legend does not open")
	}
	if s = clickedOn(t, s, "on one line"); !s.Grid(s.Layout()).Legend.Folded {
		t.Error("the legend does not fold again")
	}
}

// TestTheStrokesStandTogether: where the legend is in rows the keeper's three strokes are
// in one of them, in order.
func TestTheStrokesStandTogether(t *testing.T) {
	for i := range sizes {
		s := sized(open(t), i)
		if s.Text > 1.5 {
			continue // not all signs have room
		}
		s.Room, s.Pane, s.Signs = state.Yard, state.Wall, true
		at := map[string]scene.Point{}
		for _, w := range texts(t, window(s), s.Size()) {
			at[w.Text.Text] = w.At
		}
		a, b, c := at["settled"], at["watch"], at["act"]
		if a.Y != b.Y || b.Y != c.Y || a.X >= b.X || b.X >= c.X {
			t.Errorf("at %v: settled at %v, watch at %v, act at %v", sizes[i], a, b, c)
		}
	}
}

// TestWordsOfTheWallDoNotOverlap: names and counts before the lids may take two lines
// each; sections are as high as these need.
func TestWordsOfTheWallDoNotOverlap(t *testing.T) {
	for heads := range 4 {
		for _, size := range [][2]float64{{800, 560}, {1280, 800}} {
			s := open(t)
			s.Room, s.Pane, s.Heads = state.Yard, state.Wall, state.Heads(heads)
			s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
			l := s.Layout()
			var all []written
			for _, w := range texts(t, window(s), s.Size()) {
				if l.Main.Contains(w.At) && w.At.X < l.Main.X+state.WallNames-10 && w.At.Y < l.Main.Bottom()-s.Wall(l).Legend.Height {
					all = append(all, w)
				}
			}
			for i, a := range all {
				for _, b := range all[:i] {
					if a.box.Inset(1).Overlaps(b.box.Inset(1)) {
						t.Errorf("%v: %q and %q overlap", size, a.Text.Text, b.Text.Text)
					}
				}
			}
		}
	}
}
