package view_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// turnedMap is the map of a small window in large text, so many days on.
func turnedMap(t *testing.T, layer state.Layer) state.State {
	t.Helper()
	s := open(t)
	s.Room, s.Pane, s.Layer, s.Text = state.Yard, state.Map, layer, 1.5
	s.Yards[state.Yard] = ledge(s)
	s, _ = state.Update(s, state.Resized{Width: 1280, Height: 800})
	if l := s.Layout(); !l.MapTurns() || l.MapFrame().W < l.Map.W {
		t.Fatal("the map has not all of its pane")
	}
	return s
}

// TestLettersOfASmallMapAreFree: with large text in a small window no letter of a stand
// lies on a lid or on the hedge, whatever day is looked at, and each is where it was.
func TestLettersOfASmallMapAreFree(t *testing.T) {
	base := turnedMap(t, state.ByCondition)
	lay := map[string]scene.Point{}
	for _, days := range daysOn {
		s := lookedOn(base, days)
		frame := s.Layout().MapFrame()
		var things []scene.Area
		hedge := 0
		for _, p := range walk(t, window(s), s.Size()) {
			switch m := p.mark.(type) {
			case scene.Lid:
				if p.clip == frame {
					things = append(things, scene.Around(m.At, m.Size*0.8))
				}
			case scene.Circle:
				if p.clip == frame && m.Stroke.Role == scene.Hedge {
					things, hedge = append(things, scene.Around(m.At, 2*m.Radius)), hedge+1
					if !frame.Contains(m.At) {
						t.Errorf("%d days on: the hedge at %v is cut", days, m.At)
					}
				}
			}
		}
		letters := 0
		for _, w := range texts(t, window(s), s.Size()) {
			if w.clip != frame || w.Weight != scene.Bold || len(w.Text.Text) != 1 {
				continue
			}
			letters++
			if was, known := lay[w.Text.Text]; known && was != w.At {
				t.Errorf("%d days on: %q lies at %v, and lay at %v", days, w.Text.Text, w.At, was)
			}
			lay[w.Text.Text] = w.At
			if slices.ContainsFunc(things, w.box.Inset(1.5).Overlaps) {
				t.Errorf("%d days on: %q lies on a lid or the hedge", days, w.Text.Text)
			}
		}
		if letters != 12 || hedge < 10 {
			t.Errorf("%d days on: %d letters, %d bushes", days, letters, hedge)
		}
	}
}

// TestASmallMapTellsItsSigns: the row below a small map opens a list of all signs, which
// moves nothing, and tells each that stands on a lid, the keeper's strokes too; while a
// nuc is pointed at the row says what there is to know of it.
func TestASmallMapTellsItsSigns(t *testing.T) {
	s := turnedMap(t, state.ByCondition)
	frame := s.Layout().MapFrame()
	s = clickedOn(t, s, "all signs")
	if !s.SignsTold() || s.Layout().MapFrame() != frame {
		t.Fatalf("the list is open %t, the map at %v, and was at %v", s.SignsTold(), s.Layout().MapFrame(), frame)
	}
	said := map[string]bool{}
	for _, w := range texts(t, window(s), s.Size()) {
		said[w.Text.Text] = true
	}
	stroked := 0
	var nuc scene.Lid
	for _, p := range walk(t, window(s), s.Size()) {
		m, ok := p.mark.(scene.Lid)
		if !ok || p.clip != frame {
			continue
		}
		nuc = m
		if word := []string{"", "settled", "watch", "act"}[m.Paint]; m.Paint != scene.NoPaint {
			if stroked++; !said[word] {
				t.Errorf("the list does not tell %q", word)
			}
		}
		if word := book.Condition(m.Condition).String(); !said[word] {
			t.Errorf("the list does not tell %q", word)
		}
	}
	if stroked == 0 || !said["hollow: not seen yet"] {
		t.Errorf("%d lids have strokes", stroked)
	}
	s, _ = state.Update(s, state.Ran{Command: "signs"})
	s, _ = state.Update(s, state.Moved{At: nuc.At, Tag: nuc.Tag})
	row := s.Layout().MapRow()
	for _, w := range texts(t, window(s), s.Size()) {
		if row.Contains(w.At) && w.Text.Text == "all signs" && s.Hover.Reason != "" {
			t.Error("the row tells signs while a nuc is pointed at")
		}
	}
}

// TestTheListOfSignsCloses: Esc closes the list of all signs before it leaves anything
// else, and so does a press outside it and a menu; it stays while a nuc is pointed at, and
// opens no legend of the lids.
func TestTheListOfSignsCloses(t *testing.T) {
	open := clickedOn(t, turnedMap(t, state.ByCondition), "all signs")
	n := open.Reading().Nucs[0]
	open.Selection = state.Select(n.Nuc.Nuc.Subject())
	hovered, _ := state.Update(open, state.Moved{At: open.Layout().MapFrame().Centre(), Tag: n.Tag()})
	if !hovered.SignsTold() || open.Signs {
		t.Errorf("with a nuc pointed at it is open %t, the legend of the lids %t", hovered.SignsTold(), open.Signs)
	}
	for how, m := range map[string]state.Msg{
		"Esc": state.Keyed{Key: "Escape"}, "a menu": state.Ran{Command: "layers"},
		"a press outside": state.Pressed{At: open.Layout().MapFrame().Centre(), Tag: n.Tag()},
		"its sign":        state.Ran{Command: "signs"}, "another part": state.Ran{Command: "part main"},
	} {
		shut, _ := state.Update(open, m)
		if shut.AllSigns || shut.Selection.Len() != 1 {
			t.Errorf("after %s it is open %t, %d selected", how, shut.AllSigns, shut.Selection.Len())
		}
	}
	inside, _ := state.Update(open, state.Pressed{Tag: scene.Tag{Ref: state.SignsRef}})
	if !inside.SignsTold() {
		t.Error("a press on it closes it")
	}
	lanes, _ := state.Update(open, state.Ran{Command: "part lanes"})
	if again, _ := state.Update(lanes, state.Ran{Command: "map"}); !again.Layout().MapTurns() {
		t.Error("Alt+1 does not lead from the batches to the map")
	}
}

// TestTheLineSaysWhatToDo: of a nuc that needs the keeper the line says why, what to do
// and by when, and does not only repeat its lid.
func TestTheLineSaysWhatToDo(t *testing.T) {
	for _, n := range turnedMap(t, state.ByCondition).Reading().Nucs {
		if want := "N3  17 days old by the calendar, due for a look; look for eggs by Wed 12 May"; n.Name == "N3" && n.Tag().Reason != want {
			t.Errorf("the line says %q, want %q", n.Tag().Reason, want)
		}
	}
}
