package state_test

import (
	"math"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// pull drags the division by so much and leaves the button down.
func (w *window) pull(by float64) *window {
	p := w.Layout().Splitter().Centre()
	tag := scene.Tag{Ref: scene.Ref{Kind: state.SplitRef}}
	return w.send(state.Pressed{At: p, Tag: tag, Clicks: 1}, state.Moved{At: p.Add(scene.Point{X: by}), Tag: tag})
}

// release lets the button go where the pointer is.
func (w *window) release(clicks int) *window {
	return w.send(state.Released{At: w.Pointer, Tag: scene.Tag{Ref: scene.Ref{Kind: state.SplitRef}}, Clicks: clicks})
}

func TestTheDivisionIsDragged(t *testing.T) {
	w := start(t).run("yard")
	before := w.Layout().Map.W
	w.pull(-80)
	if got := w.Layout().Map.W; math.Abs(got-before+80) > 0.01 {
		t.Errorf("dragged by 80 dp the map is %.0f wide, was %.0f", got, before)
	}
	if w.Prefs.Split != 0 {
		t.Error("the division is kept before the button is let go")
	}
	if w.press("Escape"); w.Layout().Map.W != before {
		t.Errorf("Esc leaves the map %.0f wide, was %.0f", w.Layout().Map.W, before)
	}
	w.effects = nil
	w.pull(-80).release(1)
	kept := false
	for _, e := range w.effects {
		k, ok := e.(state.KeepPrefs)
		kept = kept || ok && k.Prefs.Split == w.Split
	}
	if got := w.Layout().Map.W; math.Abs(got-before+80) > 0.01 || !kept {
		t.Errorf("let go, the map is %.0f wide, was %.0f; kept %v", got, before, kept)
	}
	w.pull(0).release(2)
	if got := w.Layout().Map.W; got != before {
		t.Errorf("a double click puts the map at %.0f, it was %.0f", got, before)
	}
	if w.press("Left", state.Alt, state.Shift); w.Layout().Map.W >= before {
		t.Error("a key gives the lids no room")
	}
}

// TestTheDivisionGivesWay: however it was dragged, in every window map and lids
// fill the room, both have room, and a row of lids fits into its pane.
func TestTheDivisionGivesWay(t *testing.T) {
	base := start(t).run("yard").State
	rapid.Check(t, func(t *rapid.T) {
		s := base
		s.Split = rapid.Float64Range(-3000, 3000).Draw(t, "split")
		s.Width = rapid.Float64Range(state.LeastWidth, 2600).Draw(t, "width")
		s.Text = rapid.SampledFrom([]float64{1, 1.5, 2}).Draw(t, "text")
		l := s.Layout()
		if l.Narrow {
			return
		}
		if l.Map.W < 200 || l.Map.Right() != l.Main.X || math.Abs(l.Main.Right()-l.Card.X) > 0.01 {
			t.Fatalf("split by %.0f: map %v, lids %v, card %v", s.Split, l.Map, l.Main, l.Card)
		}
		if row := float64(l.Columns)*l.Pitch + float64(l.Columns/4-1)*state.GridGap; l.Columns < 4 || row > l.Main.W {
			t.Fatalf("split by %.0f: %d lids in a row are %.0f wide, the pane %.0f", s.Split, l.Columns, row, l.Main.W)
		}
	})
}

func TestADoubleClickOnAHeadFillsTheRoom(t *testing.T) {
	w := start(t).run("yard")
	twice := func(p scene.Point, ref scene.Ref) {
		tag := scene.Tag{Ref: ref}
		for clicks := range 2 {
			w.send(state.Pressed{At: p, Tag: tag, Clicks: clicks + 1}, state.Released{At: p, Tag: tag, Clicks: clicks + 1})
		}
	}
	head := func(a scene.Area) scene.Point { return scene.Point{X: a.X + 200, Y: a.Y + 15} }
	for _, want := range []state.Pane{state.Map, state.Split} {
		if twice(head(w.Layout().Map), scene.Ref{}); w.Pane != want {
			t.Errorf("a double click on the map's head makes pane %d, want %d", w.Pane, want)
		}
	}
	ground := scene.Ref{Kind: state.PaneRef, ID: state.GridGround}
	for _, want := range []state.Pane{state.Lids, state.Split} {
		if twice(head(w.Layout().Main), ground); w.Pane != want {
			t.Errorf("a double click on the head of the lids makes pane %d, want %d", w.Pane, want)
		}
	}
	if twice(w.Layout().Main.Centre(), ground); w.Pane != state.Split {
		t.Error("a double click below the head fills the room")
	}
	b := w.Lanes(w.Layout())[0].Batch.Subject()
	if twice(w.Layout().Lanes.Centre(), state.RefOf(b)); w.Fill != state.BatchFill || w.FillOf != b {
		t.Errorf("a double click on a lane fills the room with %d", w.Fill)
	}
}

func TestTheFilterOffersItsWords(t *testing.T) {
	w := start(t).run("filter").write("needs you vi")
	words := w.FilterWords()
	if len(words) == 0 || words[0].Word != "virgin" {
		t.Fatalf("on %q the filter offers %v", w.Filter, words)
	}
	w.press("Tab")
	if got := len(w.Shown()); got != words[0].N {
		t.Errorf("%q was to find %d, and finds %d", w.Filter, words[0].N, got)
	}
	w.press("Escape").run("filter").tap(scene.Ref{Kind: state.FilterRef, ID: "good brood"}, 0)
	if w.Filter != "good brood " || !w.Typing {
		t.Errorf("a click on a word makes %q", w.Filter)
	}
}

// TestEveryOfferedWordFindsWhatItSays types anything.
func TestEveryOfferedWordFindsWhatItSays(t *testing.T) {
	base := start(t).run("filter").State
	rapid.Check(t, func(t *rapid.T) {
		s := base
		s.Filter = rapid.StringMatching(`(virgin |batch 3 |needs you )?[a-z]{0,2}`).Draw(t, "typed")
		for _, w := range s.FilterWords() {
			next, _ := state.Update(s, state.Pressed{Tag: scene.Tag{Ref: scene.Ref{Kind: state.FilterRef, ID: w.Word}}})
			next, _ = state.Update(next, state.Released{Tag: scene.Tag{Ref: scene.Ref{Kind: state.FilterRef, ID: w.Word}}})
			if got := len(next.Shown()); got < w.N || w.N == 0 {
				t.Fatalf("%q with %q finds %d, offered with %d", s.Filter, w.Word, got, w.N)
			}
		}
	})
}

func TestEveryPartGetsItsTurn(t *testing.T) {
	w := start(t).run("map")
	w.Width = 900
	for _, step := range []struct {
		command string
		shown   func(state.Layout) scene.Area
	}{
		{"part lanes", func(l state.Layout) scene.Area { return l.Lanes }},
		{"part main", func(l state.Layout) scene.Area { return l.Main }},
		{"map", func(l state.Layout) scene.Area { return l.Map }},
		{"next part", func(l state.Layout) scene.Area { return l.Lanes }},
		{"next part", func(l state.Layout) scene.Area { return l.Main }},
		{"next part", func(l state.Layout) scene.Area { return l.Map }},
	} {
		if w.run(step.command); step.shown(w.Layout()).Empty() {
			t.Errorf("after %q its part is not shown: part %d, pane %d", step.command, w.Part, w.Pane)
		}
	}
}

// TestTheGroundStaysInSight pans and zooms as wildly as goes.
func TestTheGroundStaysInSight(t *testing.T) {
	base := start(t).run("map").State
	rapid.Check(t, func(t *rapid.T) {
		s := base
		frame := s.Layout().MapFrame()
		for range rapid.IntRange(1, 6).Draw(t, "moves") {
			p := scene.Point{X: rapid.Float64Range(frame.X, frame.Right()-1).Draw(t, "x"), Y: rapid.Float64Range(frame.Y, frame.Bottom()-1).Draw(t, "y")}
			if rapid.Bool().Draw(t, "zoom") {
				s, _ = state.Update(s, state.Wheeled{At: p, DY: rapid.SampledFrom([]float64{-20, 20}).Draw(t, "turn")})
				continue
			}
			s, _ = state.Update(s, state.Pressed{At: frame.Centre(), Button: state.Secondary})
			s, _ = state.Update(s, state.Moved{At: p.Mul(rapid.Float64Range(0.5, 9).Draw(t, "far"))})
			s, _ = state.Update(s, state.Released{At: p})
		}
		ground, middle := s.Reading().Ground(s.MapYard()), s.MapCamera().World(frame.Centre())
		if !ground.Inset(-0.01).Contains(middle) {
			t.Fatalf("in the middle of the map is %v, the ground is %v", middle, ground)
		}
	})
}
