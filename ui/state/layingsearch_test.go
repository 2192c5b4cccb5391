package state_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layouts are windows with a try-out, in which its commands are refused.
func layouts(t *testing.T) []situation {
	picked := func(letters ...string) *window {
		w := layingOut(t)
		for _, l := range letters {
			w.tap(state.TriedStand(w.standOf(l).Stand), state.Ctrl)
		}
		return w
	}
	wrong := layingOut(t)
	wrong.State = wrong.WithField(state.LayoutMore, state.FieldOf("many"))
	photo := layingOut(t).send(state.PhotoRead{Name: "yard.jpg", JPEG: []byte{0xff, 0xd8}, Wide: 200, High: 100}).settle()
	measured := photo.State
	ruled := *measured.Laying
	ruled.Ruler = []book.Point{{X: 4, Y: 5}, {X: 14, Y: 5}}
	measured.Laying = &ruled
	bare := layingOut(t).State
	none := *bare.Laying
	none.Try.Stands = nil
	bare.Laying = &none
	another := picked("A").press("]").run("keep layout").settle().run("new layout")
	another.tap(state.FieldNamed(state.LayoutName), 0).write("try-out 1").press("Enter")
	tree := func(typed string, fields ...string) *window {
		w := layingOut(t).press("T").run("draw tree").onGround(20, 20).press("Enter").settle().run("draw tree")
		w.Selection = state.Select(w.features()[len(w.features())-1].Feature.Subject())
		for _, name := range fields {
			w.State = w.WithField(name, state.FieldOf(typed))
		}
		return w
	}
	return []situation{
		{"a layout", layingOut(t).State},
		{"a layout without a stand", bare},
		{"a layout on a photograph", photo.State},
		{"a layout on a photograph, measured", measured},
		{"a layout, a stand picked", picked("A").State},
		{"a layout, two stands picked", picked("A", "B").press("]").State},
		{"a layout, a better one looked for", layingOut(t).run("move layout").State},
		{"a layout, more boxes that are no number", wrong.State},
		{"a layout, work under way", layingOut(t).send(state.Working{Words: "copying hill", Share: 0.4}).State},
		{"a layout that was kept", picked("A").press("]").run("keep layout").settle().State},
		{"a layout called as another is", another.State},
		{"a layout that is the plan", picked("A").press("]").run("plan layout").settle().State},
		{"a layout, a ground that the book has", layingOut(t).broughtGround().State},
		{"a layout, a hedge to be drawn", layingOut(t).run("draw hedge").State},
		{"a layout, a tree chosen", tree("").State},
		{"a layout, a tree that is to be high", tree("high", state.DrawHeight).State},
		{"a layout, a tree that is to be anywhere", tree("far", state.FeatureMove).State},
		{"a layout, a boundary with a point anywhere", tree("9: 1 2", state.FeaturePoint).State},
		{"a layout, its last step taken back", picked("A").press("]").press("Z", state.Ctrl).State},
	}
}

// searched is the effect of the search that was begun last.
func (w *window) searched() state.SearchLayout {
	w.t.Helper()
	for _, e := range slices.Backward(w.effects) {
		if e, ok := e.(state.SearchLayout); ok {
			return e
		}
	}
	w.t.Fatalf("no layout is looked for: %s", w.Note.Text)
	return state.SearchLayout{}
}

// findLayout looks for a better layout until so many messages came.
func (w *window) findLayout(command string, messages int) *window {
	w.t.Helper()
	e := w.run(command).searched()
	told := 0
	return w.send(e.Search(func(m state.LayoutFound) bool {
		w.send(m)
		told++
		return told < messages
	}))
}

const toTheEnd = 1 << 30

func TestABetterLayoutIsOneStep(t *testing.T) {
	w := layingOut(t)
	before := w.LayoutSheet().Now.Cost
	first := w.Laying.Try
	w.findLayout("turn layout", toTheEnd)
	f, sheet := w.LayoutSearch(), w.LayoutSheet()
	if f == nil || !f.Done || f.Tries == 0 || len(f.Steps) == 0 {
		t.Fatalf("found %+v", f)
	}
	if w.Busy != nil || !sheet.Whole {
		t.Error("it is still under way")
	}
	if after := sheet.Try.Cost; after.Drift >= before.Drift {
		t.Errorf("drift was %v and is %v", before.Drift, after.Drift)
	}
	for i, st := range w.Laying.Try.Stands {
		if st.At != first.Stands[i].At {
			t.Errorf("stand %s is carried, though stands are only turned", st.Letter)
		}
	}
	if words, ok := w.UndoWords(); !ok || !strings.HasSuffix(words, "in the try-out") {
		t.Errorf("undo says %q", words)
	}
	if w.press("Z", state.Ctrl); len(w.LayoutSheet().Changes) != 0 {
		t.Errorf("stepped back, there are %d changes", len(w.LayoutSheet().Changes))
	}
}

func TestTheSameSearchFindsTheSame(t *testing.T) {
	a, b := layingOut(t).findLayout("move layout", toTheEnd), layingOut(t).findLayout("move layout", toTheEnd)
	if a.LayoutSearch().Now != b.LayoutSearch().Now {
		t.Errorf("%+v, then %+v", a.LayoutSearch().Now, b.LayoutSearch().Now)
	}
}

// The best so far is on the map while it is looked for; Escape keeps it.
func TestASearchIsStopped(t *testing.T) {
	w := layingOut(t)
	e := w.run("move layout").searched()
	w.run("turn layout")
	if !strings.Contains(w.Note.Text, "stop with Esc") {
		t.Errorf("two at once: %q", w.Note.Text)
	}
	told := 0
	last := e.Search(func(m state.LayoutFound) bool {
		w.send(m)
		if told++; told == 3 {
			if w.Busy == nil || w.Busy.Share <= 0 || !w.LayoutSearch().Looking() || len(w.LayoutFigures()) == 0 {
				t.Errorf("nothing says how far it is: %+v", w.Busy)
			}
			w.press("Escape")
		}
		return told < 3
	})
	stands := w.Laying.Try.Stands
	w.send(last)
	if f := w.LayoutSearch(); f == nil || f.Looking() || !f.Stopped || w.Busy != nil || !w.OnLayout() {
		t.Errorf("stopped, and %+v", w.LayoutSearch())
	}
	if !slices.EqualFunc(stands, w.Laying.Try.Stands, func(a, b yard.Stand) bool { return a.At == b.At && a.Turn == b.Turn }) {
		t.Error("what came after the stop is taken")
	}
}

func TestPlacesForMoreBoxes(t *testing.T) {
	w := layingOut(t)
	were := len(w.Laying.Try.Stands)
	w.tap(state.FieldNamed(state.LayoutMore), 0).write("3").press("Return")
	e := w.searched()
	w.send(e.Search(func(state.LayoutFound) bool { return true }))
	if got := len(w.Laying.Try.Stands) - were; got != 3 {
		t.Fatalf("%d stands more: %s", got, w.Note.Text)
	}
	for i := range were {
		if w.Laying.Try.Stands[i].At != w.Present().View.Stand(w.Laying.Try.Stands[i].ID).At {
			t.Errorf("stand %s had to give way", w.Laying.Try.Stands[i].Letter)
		}
	}
	w.run("keep layout").settle()
	if kept := w.Present().View.Layouts(w.Laying.Yard); len(kept) != 1 || len(kept[0].Stands) != 3 {
		t.Errorf("kept %+v", kept)
	}
}

func TestOneTooMany(t *testing.T) {
	w := layingOut(t).run("too many")
	for _, e := range w.effects {
		if e, ok := e.(state.SpareLayout); ok {
			w.send(e.Reckon())
		}
	}
	said := func() bool {
		return slices.ContainsFunc(w.LayoutParts(), func(p state.LayoutPart) bool { return strings.Contains(p.Title, "too many") })
	}
	if !said() {
		t.Error("nobody says which")
	}
	if w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]"); said() {
		t.Error("it is said of another layout")
	}
}

func TestMeasuring(t *testing.T) {
	w := layingOut(t).press("R")
	at := func(x, y float64) scene.Point {
		return w.LayingCamera(w.LayingAreas().Try).Screen(state.OnGround(book.Point{X: x, Y: y}))
	}
	click := func(p scene.Point) {
		tag := scene.Tag{Ref: state.TryGround}
		w.send(state.Moved{At: p, Tag: tag}, state.Pressed{At: p, Tag: tag}, state.Released{At: p, Tag: tag})
	}
	click(at(1, 2))
	click(at(4, 6))
	from, to, ok := w.Measured()
	if dx, dy := to.X-from.X, to.Y-from.Y; !ok || dx < 2.99 || dx > 3.01 || dy < 3.99 || dy > 4.01 {
		t.Errorf("measured from %v to %v, %t", from, to, ok)
	}
	if w.press("Escape"); w.Measuring() || !w.OnLayout() {
		t.Error("Escape does not put the ruler down alone")
	}
}

// Try-outs that were kept stand beside this one, figure by figure.
func TestKeptTryOutsAreCompared(t *testing.T) {
	w := layingOut(t)
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]").run("keep layout").settle()
	name := w.Laying.Name
	w.run("as it stands")
	w.tap(state.FieldNamed(state.LayoutName), 0).write("another").press("Return")
	w.tap(state.TriedStand(w.standOf("B").Stand), 0).press("]")
	if lines := w.TriesLines(); len(lines) != 0 {
		t.Fatalf("the one that is worked at is listed: %+v", lines)
	}
	w.run("new layout")
	lines := w.TriesLines()
	if len(lines) != 1 || lines[0].Name != name || len(w.LayoutFigures()[0].Kept) != 1 {
		t.Fatalf("kept %+v", lines)
	}
	if w.tap(lines[0].Ref, 0); w.Laying.Name != name || len(w.LayoutSheet().Changes) != 1 {
		t.Errorf("taken up %q with %d changes", w.Laying.Name, len(w.LayoutSheet().Changes))
	}
}

// A yard of which nothing but its name is known is laid out from nothing.
func TestANewYardIsLaidOut(t *testing.T) {
	at := calendar.Instantly(now)
	b := &state.Book{Name: "new", Season: book.NewSeason(time.LoadLocation, []book.Entry{{At: at, Written: now, Fact: book.YardDescribed{Yard: booktest.Yard("1"), Name: "New field"}}})}
	w := &window{t: t, State: state.State{Now: now, Width: 1440, Height: 900}}
	w.send(state.Opened{Book: b}).run("yard").run("layout")
	if !w.OnLayout() || len(w.LayoutParts()) == 0 || w.LayingCamera(w.LayingAreas().Try).Length(1) < 5 {
		t.Fatalf("nothing to begin with: %s", w.Note.Text)
	}
	w.findLayout("more boxes", toTheEnd)
	if sheet := w.LayoutSheet(); len(w.Laying.Try.Stands) != 12 || sheet.Try.Cost.Nucs != 12 || sheet.Compared != nil {
		t.Errorf("%d stands, %+v", len(w.Laying.Try.Stands), sheet.Try.Cost)
	}
	for _, f := range w.LayoutFigures() {
		if !f.NoNow || f.Now != "–" {
			t.Errorf("%s today: %s", f.Word, f.Now)
		}
	}
}

// A search that finds nothing says so.
func TestASearchThatFindsNothingSaysSo(t *testing.T) {
	w := layingOut(t)
	w.press("A", state.Ctrl).press("H")
	if w.findLayout("turn layout", toTheEnd); !strings.Contains(w.Note.Text, "nothing better found") {
		t.Errorf("all stands are held, and the foot says %q", w.Note.Text)
	}
}
