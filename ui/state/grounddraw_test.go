package state_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// onGround clicks a place of the try-out's ground, m.
func (w *window) onGround(x, y float64) *window {
	at := w.LayingCamera(w.LayingAreas().Try).Screen(state.OnGround(book.Point{X: x, Y: y}))
	tag := scene.Tag{Ref: state.TryGround}
	return w.send(state.Moved{At: at, Tag: tag}).send(state.Pressed{At: at, Tag: tag}).send(state.Released{At: at, Tag: tag})
}

// broughtGround looks at a file of a ground that the book has all of.
func (w *window) broughtGround() *window {
	return w.send(state.GroundRead{ReadGround: state.ReadGround{Path: "hill.geojson", Yard: w.Laying.Yard}})
}

func (w *window) features() []book.FeatureDrawn {
	return w.Present().View.Yard(w.Laying.Yard).Features
}

func TestTheGroundIsDrawn(t *testing.T) {
	w := layingOut(t)
	were := len(w.features())
	w.run("draw hedge").onGround(3, 4)
	if w.run("finish drawing"); w.Note.Text == "" || len(w.Drawing.Points) != 1 {
		t.Errorf("a hedge of one point: %q", w.Note.Text)
	}
	w.onGround(30, 30).run("point back").onGround(9, 4)
	w.tap(state.FieldNamed(state.DrawHeight), 0).press("A", state.Ctrl).write("1,8")
	w.tap(state.FieldNamed(state.DrawLabel), 0).write("hazel")
	w.run("finish drawing").settle()
	all := w.features()
	if len(all) != were+1 {
		t.Fatalf("%d features, there were %d: %s", len(all), were, w.Note.Text)
	}
	f := all[were]
	if f.What != book.Hedge || f.Label != "hazel" || f.Height != 1.8 || f.Width != 1 || len(f.Points) != 2 || f.Points[1] != (book.Point{X: 9, Y: 4}) {
		t.Errorf("drawn %+v", f)
	}
	w.run("draw tree").onGround(20, 20).settle()
	w.run("draw dwelling").onGround(0, 0).onGround(4, 0).onGround(4, 4).run("finish drawing").settle()
	all = w.features()
	if tree := all[were+1]; tree.What != book.Tree || tree.Height != 6 || tree.Points[0] != (book.Point{X: 20, Y: 20}) {
		t.Errorf("a tree takes one click: %+v", tree)
	}
	if house := all[were+2]; len(house.Points) != 4 || house.Points[0] != house.Points[3] {
		t.Errorf("an outline is closed: %+v", house)
	}
	w.press("Escape")
	if w.Drawing.What != 0 || !w.OnLayout() {
		t.Error("Escape puts the tool down, and the try-out stays")
	}
	w.Selection = state.Select(f.Feature.Subject())
	if w.run("wipe feature").settle(); len(w.features()) != were+2 {
		t.Errorf("wiped off, and %d features are there: %s", len(w.features()), w.Note.Text)
	}
	w.tap(state.FieldNamed(state.DrawWind), 0).write("240").run("set wind").settle()
	if wind := w.Present().View.Yard(w.Laying.Yard).Wind; wind.Value != 240 {
		t.Errorf("the wind %+v", wind)
	}
}

// TestAnotherToolWritesWhatIsWhole: nothing that is drawn is thrown away unsaid.
func TestAnotherToolWritesWhatIsWhole(t *testing.T) {
	w := layingOut(t).press("T")
	were := len(w.features())
	outline := func() { w.run("draw boundary").onGround(0, 0).onGround(30, 0).onGround(30, 20) }
	for _, next := range []string{"draw hedge", "draw boundary", "measure", "ground tools"} {
		outline()
		if w.run(next).settle(); len(w.features()) != were+1 {
			t.Errorf("%s: %d features, want %d: %s", next, len(w.features()), were+1, w.Note.Text)
		}
		were = len(w.features())
	}
	w.run("draw tree").onGround(1, 1).onGround(2, 2).press("T").settle()
	if got := len(w.features()); got != were+2 {
		t.Errorf("two trees, and %d features more", got-were)
	}
	w.run("draw hedge").onGround(1, 1).run("draw wall")
	if !strings.Contains(w.Note.Text, "hedge of one point") || len(w.Drawing.Points) != 0 {
		t.Errorf("a hedge of one point is left: %q", w.Note.Text)
	}
	outline()
	if w.press("Escape"); !strings.Contains(w.Note.Text, "not kept") || w.Drawing.What != 0 {
		t.Errorf("Esc says %q", w.Note.Text)
	}
}

func TestEnterIsDone(t *testing.T) {
	w := layingOut(t).press("T").run("draw hedge").onGround(3, 4).onGround(9, 4)
	were := len(w.features())
	if w.press("Return").settle(); len(w.features()) != were+1 {
		t.Error("Enter does not write the hedge")
	}
	w.onGround(3, 6).onGround(9, 6).tap(state.FieldNamed(state.DrawLabel), 0).write("thorn")
	if w.press("Return").settle(); w.features()[were+1].Label != "thorn" {
		t.Error("Enter in a field does not write the hedge")
	}
}

// TestPointsAreTyped: a figure begins the field of the next point; a point far away comes
// into sight.
func TestPointsAreTyped(t *testing.T) {
	w := layingOut(t).press("T").run("draw boundary")
	were := len(w.features())
	for _, p := range []string{"0 0", "50,0", "50,0 35,5", "-0,5; 35.5"} {
		w.write(p).press("Enter")
	}
	if in := w.LayingAreas().Try; !in.Contains(w.LayingCamera(in).Screen(state.OnGround(book.Point{X: 50, Y: 35.5}))) {
		t.Error("what was typed is out of sight")
	}
	w.press("Enter").settle()
	want := []book.Point{{}, {X: 50}, {X: 50, Y: 35.5}, {X: -0.5, Y: 35.5}, {}}
	if all := w.features(); len(all) != were+1 || !slices.Equal(all[were].Points, want) {
		t.Fatalf("%d features more, %s", len(all)-were, w.Note.Text)
	}
	for _, typed := range []string{"12", "a b", "1 2 3", "1,2,3"} {
		w.tap(state.FieldNamed(state.DrawPoint), 0).press("A", state.Ctrl).write(typed).press("Enter")
		if !strings.Contains(w.Note.Text, "12 4.5") || len(w.Drawing.Points) != 0 {
			t.Errorf("%q: %q", typed, w.Note.Text)
		}
	}
}

// TestTheGroundStaysWhileItIsDrawn: a click goes where the keeper points, however much
// was drawn before.
func TestTheGroundStaysWhileItIsDrawn(t *testing.T) {
	w := layingOut(t)
	try := w.LayingAreas().Try
	all := w.LayingCamera(try)
	edge := try.Inset(2) // the ground shown grows with what is drawn at its edge
	w.press("T").run("draw boundary")
	for _, p := range []scene.Point{{X: edge.X, Y: edge.Y}, {X: edge.Right(), Y: edge.Y}, edge.Centre()} {
		on := all.World(p)
		w.onGround(on.X, -on.Y)
	}
	w.press("Enter").settle()
	if got := w.LayingCamera(try); got != all {
		t.Errorf("the map went from %v to %v, its frame from %v to %v", all, got, try, w.LayingAreas().Try)
	}
	if w.press("T"); w.LayingCamera(try) == all {
		t.Error("what was drawn does not come into sight with the tools of the stands")
	}
}

func TestThePointerIsToldOnTheGround(t *testing.T) {
	w := layingOut(t).press("T").run("draw hedge").onGround(3, 4)
	w.send(state.Moved{At: w.LayingCamera(w.LayingAreas().Try).Screen(state.OnGround(book.Point{X: 6, Y: 8}))})
	at, long, ok := w.DrawPointer()
	if !ok || math.Abs(at.X-6) > 0.01 || math.Abs(at.Y-8) > 0.01 || math.Abs(long-5) > 0.05 {
		t.Errorf("%v, %.2f m long, %v", at, long, ok)
	}
}

func TestTheWindIsSaidByItsName(t *testing.T) {
	w := layingOut(t).press("T")
	for typed, want := range map[string]float64{"W": 270, "nne": 22.5, "240": 240, "0": 0} {
		w.tap(state.FieldNamed(state.DrawWind), 0).write(typed).press("Enter").settle()
		if wind := w.Present().View.Yard(w.Laying.Yard).Wind; wind.Value != want || w.Typed(state.DrawWind) != "" {
			t.Errorf("%q: wind %+v, %q", typed, wind, w.Note.Text)
		}
	}
	w.tap(state.FieldNamed(state.DrawWind), 0).write("up")
	if asks := w.GroundAsks(); !strings.Contains(asks[0].Wrong, "such as W") {
		t.Errorf("%q is taken: %+v", "up", asks[0])
	}
	if w.press("Enter"); !strings.Contains(w.Note.Text, "such as W") {
		t.Errorf("it says %q", w.Note.Text)
	}
}
