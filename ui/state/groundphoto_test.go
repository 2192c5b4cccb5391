package state_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

func TestAPhotographIsLaidAndScaled(t *testing.T) {
	w := layingOut(t)
	w.run("lay photograph")
	if _, asked := w.effects[len(w.effects)-1].(state.ChooseFile); !asked {
		t.Fatalf("no file is asked for: %v", w.effects)
	}
	w.send(state.Chose{For: "lay photograph", Path: "yard.jpg"})
	if read, asked := w.effects[len(w.effects)-1].(state.ReadPhoto); !asked || read.Path != "yard.jpg" {
		t.Fatalf("it is not read: %v", w.effects)
	}
	if w.send(state.PhotoRead{Wrong: "yard.jpg is neither JPEG nor PNG"}); w.Note.Text == "" {
		t.Error("why there is none is not said")
	}
	w.send(state.PhotoRead{Name: "yard.jpg", JPEG: []byte{0xff, 0xd8}, Wide: 200, High: 100}).settle()
	p := w.Present().View.Yard(w.Laying.Yard).Picture
	if p.Wide != 200 || p.Scale <= 0 {
		t.Fatalf("laid %+v", p)
	}
	if w.run("scale photograph"); w.Note.Text == "" {
		t.Error("scaled by nothing")
	}
	l := *w.Laying
	l.Ruler = []book.Point{{X: 4, Y: 5}, {X: 14, Y: 5}}
	w.Laying = &l
	w.tap(state.FieldNamed(state.PhotoLength), 0).write("20").run("scale photograph").settle()
	scaled := w.Present().View.Yard(w.Laying.Yard).Picture
	if math.Abs(scaled.Scale-2*p.Scale) > 1e-12 || math.Abs(scaled.At.X-(4+2*(p.At.X-4))) > 1e-9 || len(scaled.JPEG) != 2 {
		t.Errorf("ten metres are twenty: %+v, was %+v", scaled, p)
	}
	if w.run("take photograph off").settle(); len(w.Present().View.Yard(w.Laying.Yard).Picture.JPEG) != 0 {
		t.Error("taken off, and it lies there still")
	}
}

func TestAPhotographOnTheMap(t *testing.T) {
	p := book.GroundPictured{JPEG: []byte{1}, Wide: 100, High: 50, At: book.Point{X: 2, Y: 3}, Scale: 0.1, Turn: 90}
	m := state.PhotoOf(p, scene.Camera{Scale: 10})
	near := func(a, b scene.Point) bool { return math.Hypot(a.X-b.X, a.Y-b.Y) < 1e-9 }
	if !near(m.At, scene.Point{X: 20, Y: -30}) || !near(m.Side, scene.Point{Y: 100}) || !near(m.Up, scene.Point{X: 50}) {
		t.Errorf("turned by a quarter it lies at %v along %v and %v", m.At, m.Side, m.Up)
	}
}
