package state_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// reviewer is a keeper in the room Review of the demo season.
func reviewer(t testing.TB) *window {
	w := &window{t: t, State: open(t)}
	w.send(state.Opened{Book: w.Book}).settled()
	w.Pen.IDs, w.Pen.Writer = book.NewIDs(now, w.Book.Season, [32]byte{1}), "Ida"
	w.press("R", state.Alt).settled()
	if sheet, now := w.ReviewSheet(); w.Room != state.Review || sheet == nil || !now || len(w.ReviewRows()) == 0 {
		t.Fatal("Alt+R does not lead to a review of the demo season")
	}
	return w
}

// settled does what the window asked for: deeds are written, reviews reckoned.
func (w *window) settled() *window {
	for len(w.effects) > 0 {
		effects := w.effects
		w.effects = nil
		for _, e := range effects {
			switch e := e.(type) {
			case state.Write:
				w.send(state.Written{Number: e.Deed.Number, Book: w.Book.With(e.Deed.Entries...)})
			case state.ReckonReview:
				w.send(e.Reckon())
			case state.ReckonPlan:
				w.send(e.Reckon())
			case state.ReckonOrders:
				w.send(e.Reckon())
			case state.ReckonSeason:
				w.send(e.Reckon())
			}
		}
	}
	return w
}

// decided is how many nucs have a decision.
func (w *window) decided() (n int) {
	for _, m := range w.Reading().Nucs {
		if m.Plan.What != book.PlanNone {
			n++
		}
	}
	return n
}

func (w *window) undecided() int {
	sheet, _ := w.ReviewSheet()
	return sheet.Decisions(book.YardID{})
}

func (w *window) undoWords() string { return w.Pen.Done[len(w.Pen.Done)-1].Words }

func TestTheReviewIsWorstFirst(t *testing.T) {
	w := reviewer(t)
	sheet, _ := w.ReviewSheet()
	if w.ReviewCount() != w.undecided() || w.undecided() == 0 {
		t.Errorf("the room's word counts %d, the list %d", w.ReviewCount(), w.undecided())
	}
	last, alike, seen := 100.0, 0, map[int]bool{}
	for _, row := range w.ReviewRows() {
		first := sheet.Nucs[row.Nucs[0]]
		if first.Loses > last+1e-9 {
			t.Errorf("%s loses %.3f and stands behind one that loses %.3f", first.NucNamed.Name, first.Loses, last)
		}
		last = first.Loses
		alike += len(row.Nucs) - 1
		for _, i := range row.Nucs {
			if seen[i] || !sheet.Nucs[i].Decide || len(row.Nucs) > 1 && !sheet.Nucs[i].Sure {
				t.Errorf("%s stands twice, or where it should not", sheet.Nucs[i].NucNamed.Name)
			}
			seen[i] = true
		}
	}
	if alike == 0 || len(seen) != w.undecided() {
		t.Errorf("%d share a line, %d of %d stand in the list", alike, len(seen), w.undecided())
	}
}

func TestOneIsAcceptedAndUndone(t *testing.T) {
	w := reviewer(t)
	if w.press("Enter"); len(w.effects) > 0 || !strings.Contains(w.Note.Text, "choose a nuc") {
		t.Errorf("Enter with nothing chosen: %q", w.Note.Text)
	}
	for w.Selection.Len() != 1 {
		w.press("Down")
	}
	name, before := w.chosen(), w.undecided()
	w.press("Enter").settled()
	if w.decided() != 1 || w.undecided() != before-1 || w.nuc(name).Plan.Day < today {
		t.Fatalf("after Enter %d are decided, %d are not: %q", w.decided(), w.undecided(), w.Note.Text)
	}
	if !strings.Contains(w.undoWords(), name) || strings.Contains(w.undoWords(), "of 100") {
		t.Errorf("undo says %q", w.undoWords())
	}
	if w.chosen() == name {
		t.Error("the keys stay on what is decided")
	}
	rows := w.ReviewRows()
	sheet, _ := w.ReviewSheet()
	if end := rows[len(rows)-1]; sheet.Nucs[end.Nucs[0]].NucNamed.Name != name {
		t.Errorf("%s did not go to the end of the list", name)
	}
	found := false
	for _, l := range w.run("today").Lines() {
		found = found || slices.Contains(l.Of, w.nuc(name).Nuc.Nuc.Subject())
	}
	if !found && w.nuc(name).Plan.Day == today {
		t.Errorf("%s is no work of today", name)
	}
	w.run("review").press("Z", state.Ctrl).settled()
	if w.decided() != 0 || w.undecided() != before {
		t.Errorf("undone, %d are decided and %d are not", w.decided(), w.undecided())
	}
}

func TestManyAreAccepted(t *testing.T) {
	w := reviewer(t)
	w.press("Down").press("Down").press("Down", state.Shift).press("Down", state.Shift).press(" ").press(" ")
	n := w.Selection.Len()
	if n < 3 {
		t.Fatalf("three rows are chosen, and %d nucs", n)
	}
	w.press("Enter").settled()
	if w.decided() != n || !strings.HasPrefix(w.undoWords(), "3 decisions") && n == 3 {
		t.Errorf("%d of %d are decided, undo says %q", w.decided(), n, w.undoWords())
	}
}

func TestAllAreAccepted(t *testing.T) {
	w := reviewer(t)
	all := w.undecided()
	w.press("Enter", state.Ctrl).settled()
	if w.decided() == 0 || w.decided()+w.undecided() < all-1 || w.undecided() > all/2 {
		t.Errorf("of %d nucs %d are decided and %d are not: %q", all, w.decided(), w.undecided(), w.Note.Text)
	}
	w.press("Z", state.Ctrl).settled()
	if w.decided() != 0 {
		t.Errorf("one undo leaves %d decisions", w.decided())
	}
}

func TestAFoldOpensAndCloses(t *testing.T) {
	w := reviewer(t)
	at := slices.IndexFunc(w.ReviewRows(), func(r state.ReviewRow) bool { return r.Fold != "" })
	for range at + 1 {
		w.press("Down")
	}
	row := w.ReviewRows()[at]
	if w.Selection.Len() != len(row.Nucs) {
		t.Fatalf("a line of %d nucs chooses %d", len(row.Nucs), w.Selection.Len())
	}
	closed := len(w.ReviewRows())
	if w.press("Right"); len(w.ReviewRows()) != closed+len(row.Nucs) {
		t.Errorf("opened, the list has %d rows after %d", len(w.ReviewRows()), closed)
	}
	if w.press("Down"); w.Selection.Len() != 1 {
		t.Errorf("below its line %d are chosen", w.Selection.Len())
	}
	if w.press("Left"); len(w.ReviewRows()) != closed || w.Selection.Len() != len(row.Nucs) {
		t.Errorf("closed, %d rows, %d chosen", len(w.ReviewRows()), w.Selection.Len())
	}
	w.tap(state.FoldedOf(row.Fold), 0)
	if len(w.ReviewRows()) == closed {
		t.Error("a click does not open it")
	}
}

func TestAnotherWayIsTaken(t *testing.T) {
	w := reviewer(t)
	w.run("one by one")
	if w.Reviewing.Side != state.WhySide || w.Selection.Len() != 1 {
		t.Fatal("one by one does not begin with a nuc and why")
	}
	i, _ := w.ReviewChosen()
	first, own := w.ReviewWay(i)
	if own {
		t.Error("nobody chose another way yet")
	}
	w.send(state.Keyed{Key: "Tab", Stops: []scene.Ref{state.UseOf(0), state.UseOf(1)}})
	if w.Focus.Kind != state.UseRef {
		t.Fatalf("Tab leads to %v", w.Focus)
	}
	w.press("Down")
	second, own := w.ReviewWay(i)
	if !own || second.Kind == first.Kind && second.Ware == first.Ware {
		t.Fatalf("the arrow takes %v after %v", second.Kind, first.Kind)
	}
	sheet, _ := w.ReviewSheet()
	if _, now := w.ReviewSheet(); now {
		t.Error("the answer does not move with a way taken by hand")
	}
	if w.settled(); true {
		next, now := w.ReviewSheet()
		if at, _ := w.ReviewChosen(); !now || !next.Taken(at) || next.This.Worth > sheet.This.Worth+1e-9 {
			t.Errorf("taken %v, worth %v after %v", next.Taken(at), next.This.Worth, sheet.This.Worth)
		}
	}
	w.tap(w.Focus, 0).settled()
	if i, _ := w.ReviewChosen(); len(w.Reviewing.Ways) != 0 {
		t.Errorf("taken once more it still stands: %v of nuc %d", w.Reviewing.Ways, i)
	}
	w.tap(state.UseOf(1), 0).settled()
	name := w.chosen()
	w.press("Enter").settled()
	if w.decided() != 1 || w.nuc(name).Plan.What == book.PlanNone {
		t.Errorf("Enter on another way decides %d: %q", w.decided(), w.Note.Text)
	}
	w.tap(w.ref(name), 0).run("take back").settled()
	if w.decided() != 0 {
		t.Error("a decision cannot be taken back")
	}
}

func TestAmountsMoveTheAnswer(t *testing.T) {
	w := reviewer(t)
	before, _ := w.ReviewSheet()
	w.run("review amounts")
	for w.Focus.Kind == state.AmountRef {
		at := w.Focus
		w.digits("0").settled()
		if w.press("Down"); w.Focus == at {
			break
		}
	}
	none, now := w.ReviewSheet()
	if !now || none.Hand.Cells()+none.Hand.Virgins() != 0 || none.This.Expected >= before.This.Expected+1e-9 && none.This.Over == before.This.Over {
		t.Errorf("with nothing in hand the answer is of %d cells", none.Hand.Cells())
	}
	first := w.Amounts()[0].Name
	w.State.Focus = state.AmountOf(first)
	w.digits("12").press("Right").press("BackSpace").settled()
	if got := w.Amounts()[0]; got.Value != 1 || !got.Own {
		t.Errorf("12, one more, a digit less is %+v", got)
	}
	w.run("as in book").settled()
	if again, _ := w.ReviewSheet(); again.Hand.Cells() != before.Hand.Cells() || again.By != before.By {
		t.Error("as in the book is another hand")
	}
	by := before.By
	w.State.Focus = state.AmountOf("day")
	w.press("Right").press("Right").settled()
	if moved, _ := w.ReviewSheet(); moved.By != by+2 {
		t.Errorf("wanted by %v, want %v", moved.By, by+2)
	}
}

func TestThePastIsNotDecided(t *testing.T) {
	w := reviewer(t)
	w.press(",").settled().press("Down").press("Enter")
	if len(w.effects) > 0 || !strings.Contains(w.Note.Text, "has gone") {
		t.Errorf("a decision of yesterday: %q", w.Note.Text)
	}
}

// TestALateAnswerIsNotShown: of what was asked for twice only the last counts.
func TestALateAnswerIsNotShown(t *testing.T) {
	w := reviewer(t)
	w.run("review amounts").press("Right")
	early := w.effects[len(w.effects)-1].(state.ReckonReview).Reckon()
	w.press("Right")
	w.send(early)
	if _, now := w.ReviewSheet(); now {
		t.Error("an answer to an earlier question passes for the last")
	}
	w.settled()
	if _, now := w.ReviewSheet(); !now {
		t.Error("the last answer does not pass")
	}
}

func TestAnEmptyBookIsReviewed(t *testing.T) {
	w := &window{t: t, State: state.State{Now: now, Width: 1440, Height: 900}}
	w.send(state.Opened{Book: &state.Book{Season: book.NewSeason(time.LoadLocation, nil), Name: "new"}})
	w.run("review").settled().press("Down").press("Enter").press("Right").press("Enter", state.Ctrl).run("one by one").run("review amounts")
	if sheet, _ := w.ReviewSheet(); sheet != nil || w.Room != state.Review {
		t.Error("of no nucs there is a review")
	}
}

// TestAnyKeysInReview: nothing panics, what is chosen is known, and the list
// reaches no further than its rows.
func TestAnyKeysInReview(t *testing.T) {
	base := reviewer(t).State
	keys := []string{"Down", "Up", "Left", "Right", "PageDown", "PageUp", "End", "Enter", " ", "BackSpace", "Escape", "+", "-", "7", ".", ","}
	commands := []string{"one by one", "review amounts", "review hand", "review why", "accept", "accept all", "take back", "as in book", "yard", "review"}
	rapid.Check(t, func(t *rapid.T) {
		w := &window{State: base}
		for range rapid.IntRange(1, 12).Draw(t, "steps") {
			if rapid.Bool().Draw(t, "key") {
				w.press(rapid.SampledFrom(keys).Draw(t, "key"), state.Mods(rapid.IntRange(0, 2).Draw(t, "mods")))
			} else {
				w.run(rapid.SampledFrom(commands).Draw(t, "command"))
			}
			if rapid.IntRange(0, 5).Draw(t, "settled") == 0 {
				w.settled()
			}
		}
		p := w.ReviewPane(w.Layout())
		if p.Offset < 0 || p.Offset > max(0, p.Row*float64(len(w.ReviewRows()))-p.Body.H)+0.01 {
			t.Fatalf("scrolled to %v", p.Offset)
		}
		for s := range w.Selection.All() {
			if !w.Reading().Known(s) {
				t.Fatalf("%v is chosen and not known", s)
			}
		}
	})
}

// BenchmarkReview reckons the review of 10,000 nucs; its floor is the walk over
// their nucs.
func BenchmarkReview(b *testing.B) {
	season := book.NewSeason(time.LoadLocation, booktest.Big(10_000, 4))
	s := state.State{Now: booktest.BigNow, Width: 1440, Height: 900}
	s, _ = state.Update(s, state.Opened{Book: &state.Book{Season: season, Name: "big"}})
	s, effects := state.Update(s, state.Ran{Command: "review"})
	ask, ok := effects[len(effects)-1].(state.ReckonReview)
	if !ok {
		b.Fatal("nobody asks for the review")
	}
	b.Run("reckoned", func(b *testing.B) {
		for b.Loop() {
			ask.Reckon()
		}
	})
	s, _ = state.Update(s, ask.Reckon())
	b.Run("rows", func(b *testing.B) {
		for b.Loop() {
			s.ReviewRows()
		}
	})
	b.Run("floor", func(b *testing.B) {
		for b.Loop() {
			late := calendar.Day(0)
			for _, n := range s.Reading().Nucs {
				late = max(late, n.DueDay)
			}
		}
	})
}

// TestSpaceMarksWhatTheKeysStandOn: taken off and chosen again, the others stay.
func TestSpaceMarksWhatTheKeysStandOn(t *testing.T) {
	w := reviewer(t)
	w.press("Down").press("Down").press("Down", state.Shift)
	two := w.Selection
	if w.press(" "); w.Selection.Len() != two.Len()-1 {
		t.Errorf("Space leaves %d of %d", w.Selection.Len(), two.Len())
	}
	if w.press(" "); !w.Selection.Same(two) {
		t.Error("Space again chooses another")
	}
}

// decidedFirst is a review whose first nuc is decided for and chosen.
func decidedFirst(w *window) *window {
	w.run("one by one")
	name := w.chosen()
	return w.press("Enter").settled().tap(w.ref(name), 0)
}

// nothingToReview is a review of one nuc, which is empty.
func nothingToReview(t testing.TB) *window {
	p := booktest.Pen{Zone: zone}
	p.At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "Europe/Berlin"},
		book.NucNamed{Nuc: booktest.Nuc("A1"), Name: "A1", Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc("A1"), Yard: booktest.Yard("home")})
	w := &window{t: t, State: state.State{Now: now, Width: 1440, Height: 900}}
	return w.send(state.Opened{Book: &state.Book{Season: book.NewSeason(time.LoadLocation, p.Entries), Name: "new"}}).run("review").settled()
}

// TestNothingIsDecidedOnADayAhead: on a day that has not come no command and no key of
// Review decides, begins to decide or changes what is in hand; back at now the list is as
// it was.
func TestNothingIsDecidedOnADayAhead(t *testing.T) {
	const reason = "that day has not come"
	for _, days := range []int{9, 21} {
		w := reviewer(t)
		before := w.undecided()
		w.run("review amounts").settled()
		at := w.Focus
		for range days {
			w.run("day on").settled()
		}
		if !w.Ahead() || w.undecided() == 0 {
			t.Fatalf("%d days on nothing needs a decision", days)
		}
		w.State.Focus = at
		for _, does := range []func(){
			func() { w.press("Right") }, func() { w.press("7") }, func() { w.digits("7") },
			func() { w.run("accept all") }, func() { w.press("Enter", state.Ctrl) },
			func() { w.run("one by one") }, func() { w.run("review amounts") },
			func() { w.State.Focus = scene.Ref{}; w.press("Down").press("Enter") }, func() { w.run("accept") },
		} {
			side := w.Reviewing.Side
			does()
			if w.settled(); len(w.Reviewing.Amounts) > 0 || w.decided() > 0 || w.Reviewing.Side != side {
				t.Fatalf("%d days on %d are decided, in hand is %v, the side %d: %q", days, w.decided(), w.Reviewing.Amounts, w.Reviewing.Side, w.Note.Text)
			}
		}
		for _, name := range []string{"accept", "accept all", "one by one", "review amounts"} {
			if c, _ := state.CommandNamed(name); !strings.Contains(c.Reason(w.State), reason) {
				t.Errorf("%d days on %q is refused with %q", days, name, c.Reason(w.State))
			}
		}
		if w.run("now").settled(); w.undecided() != before {
			t.Errorf("back at now %d are undecided, and were %d", w.undecided(), before)
		}
	}
}
