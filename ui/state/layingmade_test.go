package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// undoSays is what the foot says that undo takes back.
func (w *window) undoSays() string {
	words, _ := w.UndoWords()
	return words
}

// What was made the plan is said on the card, on the button and in the foot, and undo
// takes that back before it takes back a step; redo makes it the plan again.
func TestAPlanIsTakenBackBeforeAStep(t *testing.T) {
	w := layingOut(t)
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]")
	turned := w.standOf("A")
	if w.LayoutStatus() != "" {
		t.Errorf("never kept it is %q", w.LayoutStatus())
	}
	w.run("plan layout").settle()
	planned := func() bool {
		return slices.ContainsFunc(w.Present().View.Layouts(w.Laying.Yard), func(l book.Layout) bool { return l.Planned() })
	}
	if !planned() || !strings.HasPrefix(w.LayoutStatus(), "The plan from ") || !strings.HasPrefix(w.LayoutPlanWord(), "The plan from ") || !strings.Contains(w.undoSays(), "the plan from") {
		t.Fatalf("made the plan the card says %q, the button %q, the foot %q", w.LayoutStatus(), w.LayoutPlanWord(), w.undoSays())
	}
	if w.run("plan layout"); w.Note.Text == "" {
		t.Error("it is made the plan twice")
	}
	if w.press("Z", state.Ctrl).settle(); planned() || w.standOf("A") != turned {
		t.Fatalf("undone it is still the plan, or A stands as %+v", w.standOf("A"))
	}
	if w.press("Y", state.Ctrl).settle(); !planned() {
		t.Fatalf("done again it is not the plan: %q", w.Note.Text)
	}
	if w.press("]"); !strings.HasPrefix(w.LayoutStatus(), "Changed since it was made the plan") || !strings.Contains(w.undoSays(), "turn stand A") {
		t.Errorf("turned further the card says %q, the foot %q", w.LayoutStatus(), w.undoSays())
	}
	if w.press("Z", state.Ctrl).press("Z", state.Ctrl).settle(); planned() || w.standOf("A") != turned {
		t.Error("step and plan are not taken back one after the other")
	}
	if w.press("Z", state.Ctrl); w.standOf("A") == turned {
		t.Error("the step before the plan is not taken back")
	}
}

// Printed is the plan only where what is printed is what was made the plan.
func TestOnlyThePlanIsPrintedAsThePlan(t *testing.T) {
	w := layingOut(t)
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]").run("plan layout").settle()
	w.press("]").run("print layout")
	for _, e := range w.effects {
		if p, ok := e.(state.Print); ok {
			if !p.Layout.From.IsZero() {
				t.Errorf("changed since, it is printed as the plan from %v", p.Layout.From)
			}
			return
		}
	}
	t.Fatal("nothing is printed")
}

// Keeping is said; the next try-out has the next name.
func TestATryOutKeptIsSaid(t *testing.T) {
	w := layingOut(t)
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]").run("keep layout").settle()
	if w.undoSays() != "kept try-out “try-out 1”" || w.LayoutStatus() != "Kept, not yet the plan" {
		t.Errorf("the foot says %q, the card %q", w.undoSays(), w.LayoutStatus())
	}
	if w.run("new layout"); w.Laying.Name != "try-out 2" {
		t.Errorf("the next is %q", w.Laying.Name)
	}
}

// A try-out that was kept and is called otherwise is kept beside it: both are there, and
// no two have one name.
func TestAnotherNameKeepsBoth(t *testing.T) {
	w := layingOut(t)
	call := func(name string) { w.tap(state.FieldNamed(state.LayoutName), 0).write(name).press("Enter") }
	names := func() (all []string) {
		for _, l := range w.Present().View.Layouts(w.Laying.Yard) {
			all = append(all, l.Name)
		}
		return all
	}
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]").run("keep layout").settle()
	call("by the hedge")
	if says := w.LayoutStatus(); says != "Not kept under this name; “try-out 1” stays as it was kept" {
		t.Errorf("called otherwise: %q", says)
	}
	w.run("keep layout").settle()
	if all := names(); !slices.Equal(all, []string{"by the hedge", "try-out 1"}) || w.undoSays() != "kept try-out “by the hedge” beside “try-out 1”" {
		t.Errorf("kept are %q, undo %q", all, w.undoSays())
	}
	call("try-out 1")
	if c, _ := state.CommandNamed("keep layout"); c.Reason(w.State) != "another try-out is called “try-out 1”: choose a name that none has" {
		t.Errorf("under a name that another has: %q", c.Reason(w.State))
	}
}

// What changes nothing is no step, and each step is named.
func TestStepsOfATryOutAreNamed(t *testing.T) {
	w := layingOut(t)
	for _, letter := range []string{"A", "B", "C"} {
		w.tap(state.TriedStand(w.standOf(letter).Stand), state.Ctrl)
	}
	w.press("S")
	before := w.undoSays()
	if w.press("S"); w.Note.Text != "they stand evenly already" || w.undoSays() != before {
		t.Errorf("spread again: %q, undo %q", w.Note.Text, w.undoSays())
	}
	if w.press("H"); w.undoSays() != "hold stands A, B, C in the try-out" {
		t.Errorf("held: undo %q", w.undoSays())
	}
	if w.press("H"); w.undoSays() != "free stands A, B, C in the try-out" || w.Note.Text != "" {
		t.Errorf("freed: undo %q, and what was refused stays: %q", w.undoSays(), w.Note.Text)
	}
}

// New stands lie on nothing that stands.
func TestNewStandsHaveRoom(t *testing.T) {
	w := layingOut(t)
	for _, letter := range []string{"A", "B", "C", "F", "G"} {
		w.tap(state.TriedStand(w.standOf(letter).Stand), state.Ctrl)
	}
	were := len(w.Laying.Try.Stands)
	for range 3 {
		w.press("D")
	}
	stands := w.Laying.Try.Stands
	if len(stands) != were+15 {
		t.Fatalf("%d stands are new", len(stands)-were)
	}
	for i, a := range stands[were:] {
		for _, b := range stands[:were+i] {
			if dx, dy := a.At.X-b.At.X, a.At.Y-b.At.Y; dx*dx+dy*dy < 1.4*1.4 {
				t.Errorf("%s lies on %s", a.Letter, b.Letter)
			}
		}
	}
}

// The keys of a map bring the try-out nearer and back, and what was said of a stand goes
// when the wheel moves the map.
func TestTheTryOutIsZoomedByKeys(t *testing.T) {
	w := layingOut(t)
	try := w.LayingAreas().Try
	whole := w.LayingCamera(try)
	if w.press("+"); w.LayingCamera(try).Scale <= whole.Scale {
		t.Error("+ does not bring it nearer")
	}
	if w.press("0", state.Ctrl); w.LayingCamera(try) != whole {
		t.Error("Ctrl+0 does not show the whole yard")
	}
	w.send(state.Moved{At: try.Centre(), Tag: scene.Tag{Ref: state.TriedStand(w.standOf("A").Stand), Reason: "A"}})
	if w.send(state.Wheeled{At: try.Centre(), DY: -1}); w.Hover.Reason != "" {
		t.Errorf("the wheel leaves %q", w.Hover.Reason)
	}
}
