package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// keyboard is a keeper without a mouse, before the demo season in an evening.
func keyboard(t testing.TB) *hands {
	h := &hands{t: t, State: open(t)}
	h.Now = today.At(18, 30, zone)
	h.Pen.IDs = book.NewIDs(h.Now, h.Book.Season, [32]byte{1})
	h.Pen.Writer = "Ida"
	return h
}

// chosen is the name of the one nuc on the card.
func (h *hands) chosen() string {
	if id, ok := h.Selection.Last().Nuc(); ok && h.Selection.Len() == 1 {
		return h.Reading().Nuc(book.NucID(id)).Name
	}
	return ""
}

// seen fails unless what has the keys is drawn in the window.
func (h *hands) seen() *hands {
	h.t.Helper()
	if h.Focus == (scene.Ref{}) {
		return h
	}
	a, ok := window(h.State).Where(h.Focus)
	if !ok || !h.Size().Contains(a.Centre()) || a.W < 4 || a.H < 4 {
		h.t.Errorf("%v has the keys and is not to be seen: %v", h.Focus, a)
	}
	return h
}

// TestADayByKeyboard ticks, puts off, finds a nuc and looks at it, types the
// evening, prints, changes a number and is back, without a mouse and without the
// name of a command.
func TestADayByKeyboard(t *testing.T) {
	h := keyboard(t)
	h.press("Alt+T", "Down")
	for l, ok := h.ChosenLine(); ok && (h.TickSays(l).Asks || len(l.Of) != 1); l, ok = h.ChosenLine() {
		h.press("Down")
	}
	h.press("Space")
	if len(h.Pen.Done) != 1 || h.Selection.Len() == 0 {
		t.Fatalf("Space ticks %d lines, and %d things are chosen", len(h.Pen.Done), h.Selection.Len())
	}
	h.press("Alt+O").seen().press("Tab").write("rain").seen().press("Enter")
	if h.Form != nil || len(h.Pen.Done) != 2 || !strings.Contains(h.Pen.Done[1].Words, "put off") {
		t.Fatalf("put off: a form is open %v, done are %d", h.Form != nil, len(h.Pen.Done))
	}

	h.press("Escape") // what was put off is of a whole yard, whose nucs are chosen
	h.press("Alt+Y", "Alt+4", "Ctrl+F").write("D2").press("Enter")
	if h.chosen() != "D2" {
		t.Fatalf("of the only nuc that the filter leaves Enter chooses %q", h.chosen())
	}
	if h.write("v e0 s3").seen(); h.InField() != h.CardField() {
		t.Fatalf("a letter goes to %v", h.Focus)
	}
	h.press("Enter")
	if got := h.Pen.Done[len(h.Pen.Done)-1].Words; !strings.Contains(got, "D2: virgin seen") {
		t.Errorf("the line wrote %q", got)
	}
	h.press("Escape", "Escape", "Escape")
	if h.Filter != "" || h.Selection.Len() != 0 || h.Typing {
		t.Errorf("Esc leaves the filter %q and %d chosen", h.Filter, h.Selection.Len())
	}

	h.press("Alt+I", "Alt+E").write("v s3").seen().press("Enter").write("n s4").press("Enter")
	if h.Walk == nil || h.Walk.Done < 2 || h.InField() != state.WalkField {
		t.Fatal("two lines are not two rows")
	}
	done := h.Walk.Done
	h.press("Ctrl+Z", "Ctrl+Z", "Ctrl+Y")
	if h.Walk.Done != done-1 {
		t.Errorf("two undone and one redone of %d leave %d", done, h.Walk.Done)
	}
	h.tab(state.CommandOf("reader")).seen().press("Enter")
	if h.Walk.Reader == "" {
		t.Error("Enter on the word chooses nobody who reads aloud")
	}
	if h.write("q"); h.InField() != state.WalkField || h.Typed(state.WalkField) != "q" {
		t.Errorf("typed on, the letter goes to %v", h.Focus)
	}
	h.press("BackSpace")
	if h.asked = nil; !slices.ContainsFunc(h.press("Ctrl+P").asked, func(e state.Effect) bool { _, ok := e.(state.Print); return ok }) {
		t.Errorf("Ctrl+P asks for %+v", h.asked)
	}
	h.press("Escape")
	if h.Walk != nil {
		t.Error("Esc does not leave the walk")
	}

	done = len(h.Pen.Done)
	h.press("Alt+U", "Down", "Down", "Down", "Enter").seen()
	if h.InField() != state.NumberField {
		t.Fatalf("Enter leads to %v", h.Focus)
	}
	h.write("5").press("Enter")
	if len(h.Pen.Done) != done+1 {
		t.Errorf("Enter in a number writes nothing: %q", h.Note.Text)
	}
	if h.press("Escape"); h.InField() != "" || h.Room != state.Numbers {
		t.Errorf("Esc in the number leads to %v in room %d", h.Focus, h.Room)
	}
	if h.press("Alt+T"); h.Room != state.Today {
		t.Error("Alt+T does not lead back")
	}
}

// TestAnArrowTakesTheKeysFromAButton: Space behind it is about where it led.
func TestAnArrowTakesTheKeysFromAButton(t *testing.T) {
	h := keyboard(t).press("Alt+T").tab(state.CommandOf("type it in"))
	for h.press("Down"); ; h.press("Down") {
		if l, ok := h.ChosenLine(); !ok || !h.TickSays(l).Asks {
			break
		}
	}
	if h.press("Space"); h.Walk != nil || len(h.Pen.Done) != 1 {
		t.Errorf("Space behind an arrow opens the walk %v, ticks %d", h.Walk != nil, len(h.Pen.Done))
	}
}

// TestTabInTheWalk goes through its head from left to right.
func TestTabInTheWalk(t *testing.T) {
	h := keyboard(t).press("Alt+I")
	var got []string
	for range 40 {
		h.press("Tab").seen()
		if h.Focus.Kind == state.CommandRef {
			got = append(got, h.Focus.ID)
		}
	}
	at := slices.Index(got, "morning")
	want := []string{"morning", "midday", "afternoon", "evening", "reader", "all nucs"}
	if at < 0 || len(got) < at+len(want) || !slices.Equal(got[at:at+len(want)], want) {
		t.Errorf("Tab goes through %v", got)
	}
}
