package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layoutSizes are windows in which a layout is worked at.
var layoutSizes = [][3]float64{{800, 560, 1}, {1000, 700, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}}

// tried is a window with a try-out in which the first stand is turned and carried.
func tried(t *testing.T) state.State {
	t.Helper()
	s := filled(t, "layout")
	tag := scene.Tag{Ref: state.TriedStand(s.Laying.Try.Stands[0].ID)}
	for _, m := range []state.Msg{state.Pressed{Tag: tag}, state.Released{Tag: tag}, state.Ran{Command: "turn right"}, state.Keyed{Key: "Right"}, state.Keyed{Key: "Right"}} {
		s, _ = state.Update(s, m)
	}
	if len(s.LayoutSheet().Changes) != 1 {
		t.Fatalf("%d changes", len(s.LayoutSheet().Changes))
	}
	return s
}

// Each nuc of the yard stands on both maps, with its entrance as it is there.
func TestBothLayoutsAreSeen(t *testing.T) {
	s := tried(t)
	areas := s.LayingAreas()
	now, try, turned, dots := 0, 0, 0, 0
	for _, p := range walk(t, window(s), s.Size()) {
		switch m := p.mark.(type) {
		case scene.Lid:
			if areas.Now.Contains(m.At) {
				now++
			}
			if areas.Try.Contains(m.At) {
				try++
				if m.Ref.ID == state.TriedStand(s.Laying.Try.Stands[0].ID).ID {
					turned++
					if m.Turn != s.Laying.Try.Stands[0].Turn {
						t.Errorf("a lid of the turned stand is turned by %v", m.Turn)
					}
				}
			}
		case scene.Line:
			if m.Stroke.Role == scene.Pen && m.Stroke.Dash != [2]float64{} && areas.Try.Contains(m.To) {
				dots++
			}
		}
	}
	nucs := s.LayoutSheet().Now.Layout.Nucs()
	if now != nucs || try != nucs || turned != len(s.Laying.Try.Stands[0].Nucs) || dots != 1 {
		t.Errorf("of %d nucs %d stand on the map of today, %d in the try-out, %d on the turned stand; %d were moved", nucs, now, try, turned, dots)
	}
}

// Nothing is cut that a layout says, its figures are said at every size, and every tool
// can be clicked.
func TestALayoutIsWholeAtEverySize(t *testing.T) {
	for _, size := range layoutSizes {
		s := tried(t)
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		for part, name := range map[state.Part]string{state.MainPart: "maps", state.SidePart: "panel"} {
			s.Part = part
			if s.LayingAreas().Turns.Empty() && part == state.SidePart {
				continue
			}
			for _, a := range []scene.Area{s.Layout().Main, s.Layout().Card} {
				if cut := cutTexts(t, s, a); len(cut) > 0 {
					t.Errorf("%v, %s: cut %q", size, name, cut)
				}
			}
		}
		s.Part = state.MainPart
		tools := s.LayingAreas().Tools
		for _, command := range []string{"turn left", "turn right", "swing", "line up", "spread", "bend", "double", "hold", "mark fronts", "grid", "measure", "as it stands", "ground tools"} {
			a, ok := window(s).Where(state.CommandOf(command))
			if !ok || a.H < 28 || !tools.Inset(-6).Contains(a.Centre()) || a.Right() > tools.Right()+8 {
				t.Errorf("%v: the tool %q lies at %v, tools at %v", size, command, a, tools)
			}
		}
	}
}

// In a window with room for one map alone the panel says the figures.
func TestFiguresWithoutRoomStandInThePanel(t *testing.T) {
	s := tried(t)
	s.Width, s.Height = 800, 560
	if a := s.LayingAreas(); !a.Now.Empty() || !a.Figures.Empty() || a.Try.Empty() {
		t.Fatalf("it has room: %+v", a)
	}
	said := false
	for _, w := range texts(t, window(s), s.Size()) {
		said = said || strings.HasPrefix(w.Text.Text, "Bees that drift") && s.LayingAreas().Panel.Contains(w.At)
	}
	if !said {
		t.Error("nobody says how many bees drift")
	}
}

// However small the boxes are drawn, each takes hold of its stand.
func TestABoxPicksItsStand(t *testing.T) {
	for _, scale := range []float64{1.0 / 4, 1.0 / 2, 1, 3} {
		s := filled(t, "layout")
		try := s.LayingAreas().Try
		s.Laying.Camera = s.LayingCamera(try).Zoom(try.Centre(), scale)
		sc, seen := window(s), 0
		for _, st := range s.Laying.Try.Stands {
			for _, n := range st.Nucs {
				box, ok := sc.Where(state.TriedNuc(st.ID, n.ID))
				if !ok || !try.Contains(box.Centre()) {
					continue
				}
				seen++
				if got, _ := sc.At(box.Centre()); got.Ref.Kind != state.TriedRef {
					t.Errorf("scale %v: in the middle of %s lies %v", scale, n.Name, got.Ref)
				}
			}
		}
		if seen == 0 {
			t.Errorf("scale %v: no box is seen", scale)
		}
	}
}
