package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// sizes of windows with text sizes, from the smallest up.
var sizes = []struct{ width, height, text float64 }{
	{800, 560, 2}, {800, 560, 1}, {1280, 800, 2}, {1280, 800, 1.5}, {1280, 800, 1}, {1440, 900, 1}, {1920, 1080, 1},
}

// sized is the window in one of the sizes.
func sized(s state.State, i int) state.State {
	s.Width, s.Height, s.Text = sizes[i].width, sizes[i].height, sizes[i].text
	return s
}

func TestTheGridShowsWholeRows(t *testing.T) {
	base := open(t)
	base.Room, base.Pane = state.Yard, state.Lids
	rapid.Check(t, func(rt *rapid.T) {
		s := sized(base, rapid.IntRange(0, len(sizes)-1).Draw(rt, "size"))
		if rapid.Bool().Draw(rt, "one yard") {
			s.Yards[state.Yard] = ledge(s)
		}
		s.Filter = rapid.SampledFrom([]string{"", "virgin"}).Draw(rt, "filter")
		l := s.Layout()
		for range rapid.IntRange(0, 40).Draw(rt, "turns") {
			s, _ = state.Update(s, state.Wheeled{At: l.Main.Centre(), DY: 20})
		}
		g := s.Grid(l)
		pane := scene.Area{X: l.Main.X, Y: l.Main.Y + g.Head, W: l.Main.W, H: g.Height}
		seen := 0
		for _, p := range walk(t, window(s), s.Size()) {
			lid, ok := p.mark.(scene.Lid)
			if !ok || p.clip != pane {
				continue
			}
			seen++
			if a := scene.Around(lid.At, lid.Size); g.Height >= 34+g.Row && (a.Y < pane.Y || a.Bottom() > pane.Bottom()) {
				rt.Fatalf("a lid at %v is cut by its pane %v", a, pane)
			}
		}
		if seen == 0 {
			rt.Fatal("no lid is shown")
		}
	})
}

func TestTheFrameOfALidCutsNoName(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	for i := range sizes {
		s := sized(s, i)
		s, _ = state.Update(s, state.Ran{Command: "all"})
		for _, w := range texts(t, window(s), s.Size()) {
			for name, all := range lids(t, s, s.Layout().Main) {
				frame := scene.Around(all[0].At, all[0].Size+6+2.5)
				if w.Size == 13 && w.Anchor == scene.Centre && s.Layout().Main.Contains(w.At) && w.box.Overlaps(frame) {
					t.Fatalf("at %v the frame of %s cuts the name %s", sizes[i], name, w.Text.Text)
				}
			}
		}
	}
}

func TestAFilterIsSeenWhereverItActs(t *testing.T) {
	s := open(t)
	s.Room, s.Filter = state.Yard, "virgin"
	for i := range sizes {
		for pane := range state.Table + 1 {
			for part := range state.LanePart {
				s := sized(s, i)
				s.Pane, s.Part = pane, part
				typed, counted := false, false
				for _, w := range texts(t, window(s), s.Size()) {
					typed = typed || w.Text.Text == s.Filter && w.clip.Contains(w.At)
					counted = counted || strings.HasSuffix(w.Text.Text, " of 128")
				}
				if !typed || !counted {
					t.Errorf("at %v, pane %d, part %d: the filter is typed %v, counted %v", sizes[i], pane, part, typed, counted)
				}
			}
		}
	}
}

func TestAPastDayIsDrawnAsNotNow(t *testing.T) {
	s := open(t)
	s.Room, s.Day = state.Yard, today-6
	needed := 0
	for name, all := range lids(t, s, s.Size()) {
		for _, l := range all {
			if l.NeedsYou && !l.Ahead {
				t.Fatalf("%s is drawn as if it needed the keeper now", name)
			}
			needed += map[bool]int{true: 1}[l.NeedsYou]
		}
	}
	if needed == 0 {
		t.Error("six days ago no nuc needed the keeper")
	}
}
