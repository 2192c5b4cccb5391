package state_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
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

// On a day ahead, or one that has gone, nothing becomes the plan and nothing is taken off it:
// the buttons say why.
func TestNoPlanIsMadeOnAnotherDay(t *testing.T) {
	w := planner(t).run("plan it").settled()
	for by, want := range map[calendar.Day]string{9: "that day has not come: go back to now with Home", -2: "that day has gone: go back to now with Home"} {
		w.Day = w.Today() + by
		w.settled()
		for _, name := range []string{"plan it", "drop plan"} {
			if c, _ := state.CommandNamed(name); c.Reason(w.State) != want {
				t.Errorf("%s, %d days on: %q, want %q", name, by, c.Reason(w.State), want)
			}
		}
		if before := len(w.PlannedBatches()); before != 1 || len(w.run("plan it").settled().PlannedBatches()) != before {
			t.Errorf("%d days on something was planned", by)
		}
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

// What stands on the plan is not made the plan once more, and the wish follows what moves it
// elsewhere: a batch dragged in the season, and undo.
func TestTheWishFollowsThePlan(t *testing.T) {
	w := planner(t).run("plan it").settled()
	refused := func() string { c, _ := state.CommandNamed("plan it"); return c.Reason(w.State) }
	if !w.PlanStands() || !strings.HasPrefix(refused(), "nothing changed") {
		t.Errorf("just planned: %q", refused())
	}
	day := w.answer().Batches[0].Day
	w.typedInto(state.WishQueens, "41")
	if w.PlanStands() || refused() != "" {
		t.Errorf("another wish: %q", refused())
	}
	w.typedInto(state.WishQueens, "40").run("season").settled()
	at, ribbon := scene.Point{X: 700, Y: w.Layout().Lanes.Bottom() - 20}, w.Layout().Ribbon
	tag := scene.Tag{Ref: state.PlannedOf(w.Planning.Batch)}
	to := at.Add(scene.Point{X: -2 * ribbon.Column})
	w.send(state.Pressed{At: at, Tag: tag}, state.Moved{At: to, Tag: tag}, state.Released{At: to, Tag: tag}).settled()
	if got := w.PlannedBatches()[0].Day; got != day-2 {
		t.Fatalf("dragged two days back, the graft is %d days on", got.Sub(day))
	}
	if w.press("P", state.Alt).settled(); w.answer().Batches[0].Day != day-2 || !w.PlanStands() {
		t.Errorf("the wish grafts on %v, the plan on %v", w.answer().Batches[0].Day, day-2)
	}
	if w.press("Z", state.Ctrl).settled(); w.answer().Batches[0].Day != day || !w.PlanStands() {
		t.Errorf("undone, the wish grafts on %v, the plan on %v", w.answer().Batches[0].Day, day)
	}
}

// Of several grafts that were planned the wish takes up the first: changed once more none is
// added.
func TestSeveralGraftsArePlannedOnce(t *testing.T) {
	w := planner(t).run("two grafts").settled().run("plan it").settled()
	first := w.PlannedBatches()[0]
	if got := w.answer(); len(w.PlannedBatches()) != 2 || len(got.Batches) != 1 || w.Planning.Batch != first.Batch || got.Batches[0].Day != first.Day || !w.PlanStands() {
		t.Fatalf("%d are planned; the wish has %d grafts", len(w.PlannedBatches()), len(got.Batches))
	}
	if w.run("day earlier").settled().run("plan it").settled(); len(w.PlannedBatches()) != 2 {
		t.Errorf("the first one moved, %d are planned", len(w.PlannedBatches()))
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
	if kept, now := w.PlanTries(); len(kept) != 2 || now == nil || *now != two || two.Promise == one.Promise || two.Hours <= one.Hours {
		t.Errorf("kept %d; now %+v", len(kept), now)
	}
	if two.Chance >= one.Chance || two.Larvae <= one.Larvae { // two small grafts where nucs are few
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

// A step dragged keeps the amounts and the day that queens are wanted for, and the
// answer is there at once.
func TestADragKeepsTheAmounts(t *testing.T) {
	w := planner(t)
	was := w.answer()
	from := scene.Point{X: w.Layout().Ribbon.At(was.Batches[0].Day), Y: w.PlanPane(w.Layout()).Ladder.Y + 100}
	tag := scene.Tag{Ref: scene.Ref{Kind: state.RungRef, ID: "graft", Part: "0"}}
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, -4))})
	if is := w.answer(); is.Batches[0].Day != was.Batches[0].Day-4 || is.Larvae != was.Larvae || is.Nucs != was.Nucs || is.By != was.By {
		t.Errorf("four days sooner: %s, %d larvae, %d nucs by %s", is.Batches[0].Day, is.Larvae, is.Nucs, is.By)
	}
	if len(w.effects) > 0 {
		t.Errorf("while it is dragged %d things are asked for", len(w.effects))
	}
}

// Other days for the graft come with one key, each with what it costs; arrows go
// through them, Enter takes one, and the day of the queens stays.
func TestOtherDates(t *testing.T) {
	w := planner(t).press("D", state.Ctrl)
	others, by := w.answer().Others, w.answer().By
	chosen := w.answer().Batches[0].Day
	if !w.Planning.Dates || len(others) < 2 || w.Focus != state.OtherOf(chosen) {
		t.Fatalf("%d other days, the keys are on %v", len(others), w.Focus)
	}
	for i, o := range others {
		if o.Chance < 0 || o.Chance > 1 || o.Ready == 0 || i > 0 && o.Day <= others[i-1].Day {
			t.Errorf("%d: %+v", i, o)
		}
	}
	later := others[len(others)-1].Day // the next one, if any is
	for _, o := range others {
		if o.Day > chosen {
			later = min(later, o.Day)
		}
	}
	w.press(map[bool]string{true: "Down", false: "Up"}[later > chosen]).press("Return").settled()
	if got := w.answer(); got.Batches[0].Day != later || got.By != by || w.Planning.By != by {
		t.Errorf("taken: graft %s by %s", got.Batches[0].Day, got.By)
	}
	w.run("any day").settled()
	if got := w.answer(); got.By != got.Nearest || w.Planning.By != 0 {
		t.Errorf("ready when they are: by %s, the nearest is %s", got.By, got.Nearest)
	}
	if w.press("D", state.Ctrl); w.Planning.Dates {
		t.Error("the same key does not put them away")
	}
}

// Up and Down go through the breeders' lines; a line that no breeder is of is told
// with those there are, whichever letters are capital.
func TestTheLineIsABreeders(t *testing.T) {
	w := planner(t)
	w.Focus = state.FieldNamed(state.WishLine)
	seen := map[string]bool{}
	for range 10 {
		w.press("Down").settled()
		seen[w.Typed(state.WishLine)] = true
		if _, wrong := w.Wish(); wrong.Field != "" {
			t.Fatalf("%q: %s", w.Typed(state.WishLine), wrong.Why)
		}
	}
	if len(seen) < 3 || !seen[""] {
		t.Errorf("lines: %v", seen)
	}
	delete(seen, "")
	for line := range seen {
		w.typedInto(state.WishLine, strings.ToUpper(line))
		if wish, wrong := w.Wish(); wrong.Field != "" || wish.Line != line {
			t.Errorf("%q is read as %q: %s", strings.ToUpper(line), wish.Line, wrong.Why)
		}
		w.typedInto(state.WishLine, line+"x")
		if _, wrong := w.Wish(); wrong.Field != state.WishLine || !strings.Contains(wrong.Why, line) {
			t.Errorf("%sx: %+v", line, wrong)
		}
	}
}

// A day too near leads to the nearest one with one click.
func TestTheNearestDayIsTaken(t *testing.T) {
	w := planner(t).typedInto(state.WishDay, "+25")
	nearest := w.answer().Nearest
	if w.answer().InTime {
		t.Fatal("25 days are enough")
	}
	w.run("nearest day").settled()
	if got := w.answer(); !got.InTime || got.By != nearest {
		t.Errorf("by %s, in time %v; the nearest was %s", got.By, got.InTime, nearest)
	}
}

// Two grafts for one wish share its queens and its nucs on the plan.
func TestTwoGraftsShareTheWish(t *testing.T) {
	w := planner(t).run("two grafts").settled()
	wished := w.answer()
	w = w.run("plan it").settled()
	all, queens, nucs := w.PlannedBatches(), 0, 0
	for _, b := range all {
		queens, nucs = queens+b.Queens, nucs+b.Nucs
	}
	if len(all) != 2 || queens != 40 || nucs > wished.Nucs {
		t.Errorf("%d batches for %d queens with %d nucs, of %d", len(all), queens, nucs, wished.Nucs)
	}
}

// A wish that scrolls with the rest comes back into sight when a field of it takes
// the keys.
func TestTheWishComesBackIntoSight(t *testing.T) {
	w := planner(t)
	w.Width, w.Height, w.Text = 1280, 800, 2
	l := w.Layout()
	w.send(state.Wheeled{At: l.Main.Centre(), DY: 400})
	if y := w.PlanPane(l).Wish.Y; y >= l.Main.Y {
		t.Fatalf("the wish lies at %.0f in a low window, the room begins at %.0f", y, l.Main.Y)
	}
	w.Focus = scene.Ref{}
	w.tap(state.FieldNamed(state.WishNucs), 0)
	if y := w.PlanPane(l).Wish.Y; y != l.Main.Y {
		t.Errorf("the wish lies at %.0f while one types into it", y)
	}
}

// TestTheFirstBarBeginsWithItsWords: the day from which cells emerge is the first of
// their bar.
func TestTheFirstBarBeginsWithItsWords(t *testing.T) {
	w := planner(t)
	w.answer()
	for _, r := range w.PlanRungs(0) {
		if r.Step != plan.Emerge {
			continue
		}
		_, month, day := r.From.Date()
		if want := fmt.Sprintf("from %d %s ", day, month.String()[:3]); !strings.HasPrefix(r.Why[0], want) {
			t.Errorf("the bar begins %s, the words say %q", want, r.Why[0])
		}
		return
	}
	t.Error("no step says when they emerge")
}

// TestTodayIsSaidOfTodayOnly: what is ordered at once has its date while another day is
// looked at.
func TestTodayIsSaidOfTodayOnly(t *testing.T) {
	w := planner(t)
	w.answer()
	orders := func() (all []string) {
		for _, a := range w.PlanAmounts() {
			if strings.HasPrefix(a.Have, "order by ") {
				all = append(all, a.Have)
			}
		}
		return all
	}
	now := orders()
	w.Day = today + 9
	ahead := orders()
	if len(now) == 0 || len(now) != len(ahead) {
		t.Fatalf("to order: %q, on a day ahead %q", now, ahead)
	}
	for i, said := range ahead {
		want := now[i]
		if want == "order by today" {
			want = "order by " + today.Short()
		}
		if said != want {
			t.Errorf("on a day ahead %q, want %q", said, want)
		}
	}
}

// The first wish is what is owed for the first order that no graft is planned for.
func TestTheFirstWishIsForAnOrderWithoutAGraft(t *testing.T) {
	by := today + 48
	orders := []book.Fact{
		book.OrderTaken{Order: booktest.Order("91"), Number: "91", Customer: "Corin A.", Queens: 7, By: by, Priority: 1},
		book.OrderTaken{Order: booktest.Order("92"), Number: "92", Customer: "Corin A.", Queens: 8, By: by + 1, Priority: 1},
	}
	begun := func(more ...book.Fact) string {
		w := withMore(start(t), append(orders, more...)...).run("plan")
		return w.Typed(state.WishQueens)
	}
	if got := begun(); got != "7" {
		t.Errorf("%s queens are wished for, 7 are owed first", got)
	}
	planned := book.BatchPlanned{Batch: booktest.Batch("next"), Day: today + 8, Larvae: 20, Nucs: 10, Queens: 7, By: by, Orders: []book.OrderID{booktest.Order("91")}}
	if got := begun(planned); got != "8" {
		t.Errorf("%s queens are wished for, a graft for the first 7 is planned", got)
	}
}
