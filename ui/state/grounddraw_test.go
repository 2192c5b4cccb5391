package state_test

import (
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
