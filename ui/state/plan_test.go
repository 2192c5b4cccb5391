package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// planner is a keeper in the room Plan of the demo season.
func planner(t testing.TB) *window {
	w := &window{t: t, State: open(t)}
	w.send(state.Opened{Book: w.Book}).settled()
	w.Pen.IDs, w.Pen.Writer = book.NewIDs(now, w.Book.Season, [32]byte{1}), "Ida"
	w.press("P", state.Alt).settled()
	if sheet, now := w.PlanSheet(); w.Room != state.Plan || sheet == nil || !now {
		t.Fatal("Alt+P does not lead to an answer")
	}
	return w
}

// typedInto types a text into a field of the wish.
func (w *window) typedInto(field, text string) *window {
	w.State = w.WithField(field, state.FieldOf("")).WithField(field, state.FieldOf(text))
	w.Focus = state.FieldNamed(field)
	return w.press("End").settled()
}

func (w *window) answer() *state.PlanSheet {
	w.t.Helper()
	sheet, now := w.PlanSheet()
	if sheet == nil || !now {
		w.t.Fatal("there is no answer to what stands in the fields")
	}
	return sheet
}

func TestTheAnswerFollowsTheFields(t *testing.T) {
	w := planner(t)
	before := w.answer()
	w.Focus = state.FieldNamed(state.WishQueens)
	w.press("Up").settled()
	if after := w.answer(); after.Queens != before.Queens+1 || after == before {
		t.Errorf("%d queens wished for, one more than %d with Up", after.Queens, before.Queens)
	}
	w.typedInto(state.WishLarvae, "30")
	if w.answer().Larvae != 30 {
		t.Errorf("%d larvae, 30 typed", w.answer().Larvae)
	}
	w.typedInto(state.WishQueens, "many")
	if _, wrong := w.Wish(); wrong.Field != state.WishQueens || wrong.Why == "" {
		t.Errorf("many queens: %+v", wrong)
	}
	if _, now := w.PlanSheet(); now {
		t.Error("an answer is told as that of a wish that cannot be read")
	}
}

// Planned, undone in words, changed, taken off: the book says the same.
func TestAWishBecomesThePlan(t *testing.T) {
	w := planner(t).run("plan it").settled()
	planned := w.PlannedBatches()
	if len(planned) != 1 || planned[0].Larvae != w.answer().Larvae || planned[0].Day != w.answer().Batches[0].Day {
		t.Fatalf("planned: %+v", planned)
	}
	w.run("day later").settled().run("plan it").settled()
	if moved := w.PlannedBatches(); len(moved) != 1 || moved[0].Day != planned[0].Day+1 || moved[0].Batch != planned[0].Batch {
		t.Errorf("a day later: %+v", moved)
	}
	w.press("Z", state.Ctrl).settled()
	if back := w.PlannedBatches(); len(back) != 1 || back[0].Day != planned[0].Day {
		t.Errorf("undone: %+v", back)
	}
	w.run("drop plan").settled()
	if left := w.PlannedBatches(); len(left) != 0 {
		t.Errorf("taken off, and still there: %+v", left)
	}
}

// A step dragged moves the whole ladder, Esc puts it back, and nothing is written.
func TestAStepIsDragged(t *testing.T) {
	w := planner(t)
	day, ribbon := w.answer().Batches[0].Day, w.Layout().Ribbon
	from := scene.Point{X: ribbon.At(day), Y: w.PlanPane(w.Layout()).Ladder.Y + 100}
	tag := scene.Tag{Ref: scene.Ref{Kind: state.RungRef, ID: "graft", Part: "0"}}
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(scene.Point{X: 3 * ribbon.Column})}).settled()
	if got := w.answer().Batches[0].Day; got != day+3 {
		t.Errorf("dragged three days, the graft is %d days on", got.Sub(day))
	}
	w.press("Escape").settled()
	if got := w.answer().Batches[0].Day; got != day || w.Planning.Forwards {
		t.Errorf("put back, the graft is %d days on", got.Sub(day))
	}
	if len(w.PlannedBatches()) != 0 {
		t.Error("dragging wrote something")
	}
}

func TestTriesAreCompared(t *testing.T) {
	w := planner(t).run("keep try")
	one := w.Planning.Tries[0]
	w.run("two grafts").settled().run("keep try")
	two := w.Planning.Tries[1]
	if two.Chance <= one.Chance || two.Larvae <= one.Larvae {
		t.Errorf("one graft %+v, two %+v", one, two)
	}
	tag := scene.Tag{Ref: scene.Ref{Kind: state.TryRef, ID: "0"}}
	w.send(state.Pressed{Tag: tag}, state.Released{Tag: tag}).settled()
	if got := w.answer(); len(got.Batches) != 1 || got.Chance != one.Chance {
		t.Errorf("taken up again: %d grafts, %.3f, kept with %.3f", len(got.Batches), got.Chance, one.Chance)
	}
}

// The days typed and printed are read back, whatever the field shows.
func TestTheDayOfTheWishIsReadBack(t *testing.T) {
	w := planner(t)
	want := w.answer().By
	for range 20 {
		w.Focus = state.FieldNamed(state.WishDay)
		w.press("Up").settled()
		want++
		if got := w.answer().By; got != want {
			t.Fatalf("wished by %s, want %s", got, want)
		}
	}
}

// inYardOfNone plans in a yard in which no nuc stands.
func (w *window) inYardOfNone() *window {
	nucs := map[book.YardID]bool{}
	for _, n := range w.Present().Nucs {
		nucs[n.Yard] = true
	}
	for y := range w.Present().View.Yards() {
		if !nucs[y.Yard] {
			w.Yards[state.Plan] = y.Yard
		}
	}
	return w.press("End").settled()
}
