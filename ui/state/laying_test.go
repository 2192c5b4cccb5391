package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layingOut is a window that takes what is written, with the layout of the yard Ledge
// filling the room.
func layingOut(t testing.TB) *window {
	w := keeper(t)
	w.press("Z", state.Alt)
	if !w.OnLayout() {
		t.Fatalf("no layout is worked at: %s", w.Note.Text)
	}
	return w
}

func (w *window) standOf(letter string) book.StandSet {
	for _, s := range w.Laying.Try.Stands {
		if s.Letter == letter {
			return book.StandSet{Stand: s.ID, At: s.At, Turn: s.Turn}
		}
	}
	w.t.Fatalf("no stand %s", letter)
	return book.StandSet{}
}

// drag drags a stand of the try-out by so many dp.
func (w *window) dragStand(letter string, by scene.Point) {
	id := w.standOf(letter)
	tag := scene.Tag{Ref: state.TriedStand(id.Stand)}
	at := w.LayingCamera(w.LayingAreas().Try).Screen(state.OnGround(id.At))
	w.send(state.Pressed{At: at, Tag: tag})
	w.send(state.Moved{At: at.Add(by.Mul(0.5)), Tag: tag})
	w.send(state.Moved{At: at.Add(by), Tag: tag})
	w.send(state.Released{At: at.Add(by), Tag: tag})
}

func TestAStandIsDraggedInATryOut(t *testing.T) {
	w := layingOut(t)
	before := w.standOf("B")
	first := w.LayoutSheet()
	if first == nil || !first.Whole || len(first.Changes) != 0 {
		t.Fatalf("at first %+v", first)
	}
	by := w.LayingCamera(w.LayingAreas().Try).Length(3)
	w.dragStand("B", scene.Point{X: by})
	after := w.standOf("B")
	if dx := after.At.X - before.At.X; dx < 2.7 || dx > 3.3 || after.At.X != 0.5*float64(int(2*after.At.X)) {
		t.Errorf("stand B went from %v to %v, want 3 m east on the grid of half a metre", before.At, after.At)
	}
	if sheet := w.LayoutSheet(); len(sheet.Changes) != 1 || sheet.Carried != 4 || sheet.Minutes <= 0 || sheet.Try.Cost == sheet.Now.Cost || !sheet.Whole {
		t.Errorf("after the drag %+v", sheet)
	}
	if got := w.Present().View.Stand(before.Stand).At; got != before.At {
		t.Errorf("the real stand moved to %v", got)
	}
	if w.press("Z", state.Ctrl); w.standOf("B") != before {
		t.Errorf("stepped back, B stands at %v", w.standOf("B").At)
	}
	if w.press("Y", state.Ctrl); w.standOf("B") != after {
		t.Errorf("stepped on, B stands at %v", w.standOf("B").At)
	}
}

// A drag let go with Escape leaves the try-out as it was.
func TestADragOfAStandIsPutBack(t *testing.T) {
	w := layingOut(t)
	before := w.standOf("B")
	tag := scene.Tag{Ref: state.TriedStand(before.Stand)}
	at := w.LayingCamera(w.LayingAreas().Try).Screen(state.OnGround(before.At))
	w.send(state.Pressed{At: at, Tag: tag}).send(state.Moved{At: at.Add(scene.Point{X: 50}), Tag: tag})
	if w.standOf("B") == before {
		t.Fatal("it does not follow the pointer")
	}
	if w.press("Escape"); w.standOf("B") != before {
		t.Error("Escape does not put it back")
	}
}

func TestPickedStandsAreEdited(t *testing.T) {
	w := layingOut(t)
	a, b := w.standOf("A"), w.standOf("B")
	w.tap(state.TriedStand(a.Stand), 0).tap(state.TriedStand(b.Stand), state.Ctrl)
	if len(w.Laying.Pick) != 2 {
		t.Fatalf("%d stands are picked", len(w.Laying.Pick))
	}
	w.press("]").press("Right")
	if got := w.standOf("A"); got.Turn != a.Turn+15 || got.At.X != a.At.X+0.5 {
		t.Errorf("A turned to %v at %v", got.Turn, got.At)
	}
	stands := len(w.Laying.Try.Stands)
	if w.press("D"); len(w.Laying.Try.Stands) != stands+2 || len(w.Laying.Pick) != 2 {
		t.Errorf("doubled: %d stands, %d picked", len(w.Laying.Try.Stands), len(w.Laying.Pick))
	}
	w.press("M").press("H")
	if sheet := w.LayoutSheet(); len(sheet.Changes) != 4 {
		t.Errorf("%d changes", len(sheet.Changes))
	}
}

// Letters come as they are written: small, unless they are held with Shift.
func TestSmallLettersAreKeysOfATryOut(t *testing.T) {
	w := layingOut(t)
	typed := func(text string) { // a character, and the key it is
		for _, r := range text {
			w.write(string(r)).press(string(r))
		}
	}
	w.tap(state.TriedStand(w.standOf("B").Stand), 0)
	stands := len(w.Laying.Try.Stands)
	if typed("d"); len(w.Laying.Try.Stands) != stands+1 {
		t.Error("d doubles nothing")
	}
	if typed("g"); w.Laying.Grid != 0 {
		t.Error("g does not take the grid away")
	}
	w.tap(state.FieldNamed(state.LayoutName), 0)
	typed("wide gap")
	if got := w.Typed(state.LayoutName); got != "wide gap" || len(w.Laying.Try.Stands) != stands+1 || w.Laying.Grid != 0 {
		t.Errorf("typed into a field: %q, %d stands", got, len(w.Laying.Try.Stands))
	}
}

func TestATryOutIsMadeThePlan(t *testing.T) {
	w := layingOut(t)
	b := w.standOf("B")
	w.tap(state.TriedStand(b.Stand), 0).press("]")
	w.run("plan layout").settle()
	plan, ok := w.Present().View.PlannedLayout(w.Laying.Yard)
	if !ok || len(plan.Stands) != 1 || plan.Stands[0].Turn != b.Turn+15 || plan.From < today {
		t.Errorf("the plan %+v, %t", plan, ok)
	}
	if got := w.Present().View.Stand(b.Stand).Turn; got != b.Turn {
		t.Errorf("the stand itself is turned already, by %v", got)
	}
	w.run("drop layout").settle()
	if _, ok := w.Present().View.PlannedLayout(w.Laying.Yard); ok {
		t.Error("thrown away, and still the plan")
	}
}

func TestWhereAStandIsCanBeTyped(t *testing.T) {
	w := layingOut(t)
	b := w.standOf("B")
	w.tap(state.TriedStand(b.Stand), 0)
	typed := func(field, text string) {
		w.tap(state.FieldNamed(field), 0).write(text).press("Return")
	}
	typed(state.LayoutEast, "12,75")
	typed(state.LayoutNorth, "-3")
	typed(state.LayoutTurn, "405")
	if got := w.standOf("B"); got.At != (book.Point{X: 12.75, Y: -3}) || got.Turn != 45 {
		t.Errorf("typed, and it stands at %v turned %v", got.At, got.Turn)
	}
	if typed(state.LayoutEast, "far"); w.Note.Text == "" || w.standOf("B").At.X != 12.75 {
		t.Errorf("%q, and it stands at %v", w.Note.Text, w.standOf("B").At)
	}
	if typed(state.LayoutName, "turned and spread"); w.Laying.Name != "turned and spread" {
		t.Errorf("it is called %q", w.Laying.Name)
	}
}

// A box takes hold of its stand; clicked again it is picked itself, and once more its
// stand is.
func TestABoxIsPickedByASecondClick(t *testing.T) {
	w := layingOut(t)
	b := w.standOf("B")
	var nuc book.NucID
	for _, st := range w.Laying.Try.Stands {
		if st.ID == b.Stand {
			nuc = st.Nucs[1].ID
		}
	}
	box := state.TriedNuc(b.Stand, nuc)
	for i, want := range []book.NucID{{}, nuc, {}} {
		if w.tap(box, 0); len(w.Laying.Pick) != 1 || w.Laying.Pick[0] != b.Stand || w.Laying.Nuc != want {
			t.Errorf("click %d picks %v, and of it %v", i+1, w.Laying.Pick, w.Laying.Nuc)
		}
	}
	tag, at := scene.Tag{Ref: box}, w.LayingCamera(w.LayingAreas().Try).Screen(state.OnGround(b.At))
	w.send(state.Pressed{At: at, Tag: tag}, state.Moved{At: at.Add(scene.Point{X: 60}), Tag: tag}, state.Released{At: at.Add(scene.Point{X: 60}), Tag: tag})
	if w.standOf("B").At.X <= b.At.X {
		t.Error("dragged by a box, the stand stays")
	}
}

// Tab takes a field over as Enter does, and what is typed for one stand is no other's.
func TestAFieldThatIsLeftIsTaken(t *testing.T) {
	w := layingOut(t)
	a, b := w.standOf("A"), w.standOf("B")
	stops := []scene.Ref{state.FieldNamed(state.LayoutEast), state.FieldNamed(state.LayoutNorth), state.FieldNamed(state.LayoutTurn)}
	tab := func() { w.send(state.Keyed{Key: "Tab", Stops: stops}) }
	w.tap(state.TriedStand(b.Stand), 0).tap(stops[0], 0).write("4")
	tab()
	w.write("−13.5")
	tab()
	if got := w.standOf("B").At; got != (book.Point{X: 4, Y: -13.5}) || w.Typed(state.LayoutEast)+w.Typed(state.LayoutNorth) != "" {
		t.Errorf("typed with Tab between, B stands at %v, and left is %q", got, w.Typed(state.LayoutEast)+w.Typed(state.LayoutNorth))
	}
	w.write("4").tap(state.TriedStand(a.Stand), 0)
	if w.Typed(state.LayoutTurn) != "" || w.standOf("A") != a || w.standOf("B").Turn != b.Turn {
		t.Errorf("typed for B, and then of A %q: A %+v", w.Typed(state.LayoutTurn), w.standOf("A"))
	}
	w.tap(stops[0], 0).write("far")
	tab()
	if w.Note.Text == "" || w.standOf("A") != a || w.Typed(state.LayoutEast) != "far" {
		t.Errorf("no distance: %q", w.Note.Text)
	}
	w.run("turn right").tap(state.FieldNamed(state.LayoutName), 0).write("by the hedge")
	if w.run("keep layout").settle(); w.Present().View.Layouts(w.Laying.Yard)[0].Name != "by the hedge" {
		t.Errorf("a try-out is kept as %q", w.Present().View.Layouts(w.Laying.Yard)[0].Name)
	}
}

// Entrances are typed for all boxes on a stand, for one nuc, or turned outwards; stands
// are set in rows in one step.
func TestEntrancesAndRowsAreTyped(t *testing.T) {
	w := layingOut(t)
	b := w.standOf("B")
	w.tap(state.TriedStand(b.Stand), 0)
	typed := func(field, text string) { w.tap(state.FieldNamed(field), 0).write(text).press("Return") }
	faces := func() []float64 {
		st, _ := w.PickedStand()
		var all []float64
		for i := range st.Nucs {
			all = append(all, st.Faces(&st.Nucs[i]))
		}
		return all
	}
	before := w.LayoutSheet().Try.Cost.Drift
	for text, want := range map[string][]float64{"S": {180, 180, 180, 180}, "N E": {0, 90, 0, 90}} {
		if typed(state.LayoutFaces, text); !slices.Equal(faces(), want) {
			t.Errorf("typed %q they face %v", text, faces())
		}
	}
	typed(state.LayoutFaces, "S")
	if sheet := w.LayoutSheet(); w.FacesSaid() != "S" || len(sheet.Changes) != 1 || sheet.Changes[0].Turned == 0 || sheet.Minutes == 0 || sheet.Carried != sheet.Changes[0].Turned || sheet.Try.Cost.Drift <= before {
		t.Errorf("all one way: %q, %+v, drift %v and was %v", w.FacesSaid(), sheet.Changes, sheet.Try.Cost.Drift, before)
	}
	if w.run("face out"); !slices.Equal(faces(), []float64{b.Turn + 360, b.Turn + 90, b.Turn + 270, b.Turn + 180}) {
		t.Errorf("outwards on a stand turned %v they face %v", b.Turn, faces())
	}
	st, _ := w.PickedStand()
	w.tap(state.TriedNuc(b.Stand, st.Nucs[1].ID), 0)
	if typed(state.LayoutFaces, "225"); faces()[1] != 225 || faces()[0] == 225 || w.FacesSaid() != "SW" {
		t.Errorf("one alone: they face %v", faces())
	}
	if typed(state.LayoutFaces, "up"); w.Note.Text == "" {
		t.Error("up is a bearing")
	}
	w.press("Escape").press("Escape").press("A", state.Ctrl)
	n := len(w.Laying.Try.Stands)
	typed(state.LayoutRows, "8 × 8, 6 m, 5 m")
	first, second := w.Laying.Try.Stands[0], w.Laying.Try.Stands[1]
	if want := "rows from north to south: 8, each of 8 from west to east; 6 m apart in a row, 5 m from row to row"; w.Note.Text != want {
		t.Errorf("rows are read back as %q, want %q", w.Note.Text, want)
	}
	if n > 64 || second.At != (book.Point{X: first.At.X + 6, Y: first.At.Y}) {
		t.Errorf("in rows the second of %d stands at %v, the first at %v", n, second.At, first.At)
	}
	if typed(state.LayoutRows, "1 × 2, 6"); !strings.Contains(w.Note.Text, "places") {
		t.Errorf("%d stands in two places: %q", n, w.Note.Text)
	}
}
