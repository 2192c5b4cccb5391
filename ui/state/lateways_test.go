package state_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestTheWaysOutAreChosenByKeys: the arrows go through them and no further, the focus
// is where they are, and Enter begins what the chosen one needs.
func TestTheWaysOutAreChosenByKeys(t *testing.T) {
	w := toLate(t)
	l, _ := w.FilledLate()
	w.press("Down")
	if w.Way != 0 || w.Focus != state.WayOf(0) {
		t.Fatalf("the first arrow: way %d, focus %v", w.Way, w.Focus)
	}
	begins := map[bee.Way]string{bee.Cage: "cage cells", bee.Cool: "cool cells", bee.Wait: "give back"}
	for i := range l.Ways {
		if w.Way != i || w.Focus != state.WayOf(i) {
			t.Errorf("way %d, focus %v: want %d", w.Way, w.Focus, i)
		}
		if want := begins[l.Ways[i].Way]; want != "" && w.LateWork().Command != want {
			t.Errorf("%s begins with %q, want %q", l.Ways[i].Way, w.LateWork().Command, want)
		}
		w.press("Down")
	}
	if w.Way != len(l.Ways)-1 {
		t.Errorf("below the last way is way %d of %d", w.Way, len(l.Ways))
	}
	for w.press("Up"); w.Way > 0; w.press("Up") {
	}
	w.press("Enter")
	if w.Form == nil || w.Form.Record != "give cell" {
		t.Errorf("Enter on the best way: form %+v", w.Form)
	}
}

// TestWaitingSaysWhatItLeavesOpen: a way that leaves cells together says what can still
// be done with them at the next free hour, and adds up.
func TestWaitingSaysWhatItLeavesOpen(t *testing.T) {
	l, _ := toLate(t).FilledLate()
	left := 0
	for i, way := range l.Ways {
		note := l.Note(i)
		if way.Left == 0 {
			if strings.Contains(note, "then") {
				t.Errorf("%s: %q", way.Way, note)
			}
			continue
		}
		left++
		give := min(l.Fit-way.Placed, way.Left)
		if give > 0 && !strings.Contains(note, fmt.Sprintf("then give %d", give)) || !strings.Contains(note, "cage "+l.Later[i].String()) {
			t.Errorf("%s: %q, %d could be given and %v caged then", way.Way, note, give, l.Later[i])
		}
		if got := float64(way.Placed+give) + way.Later + way.Lost; math.Abs(got-float64(l.Cells)) > 0.5 {
			t.Errorf("%s: %.1f cells of %d", way.Way, got, l.Cells)
		}
	}
	if left < 2 {
		t.Fatalf("only %d ways leave cells together", left)
	}
}

// TestTheCurvesReachBeyondTheNextFreeHour however far it is, and the band about them
// to the end of them.
func TestTheCurvesReachBeyondTheNextFreeHour(t *testing.T) {
	w := toLate(t)
	for away := range calendar.Day(4) {
		if away > 0 {
			var free []book.Fact
			for p := range w.Reading().View.People() {
				free = append(free, book.DaysOff{Person: p.Person, From: w.Today(), To: w.Today() + away - 1})
			}
			ids := w.Pen.IDs
			ids.Deed()
			w.State, _ = state.Update(w.State, state.Opened{Book: w.Book.With(ids.Entries(calendar.Instantly(w.Now), w.Now, "Ida", free...)...)})
		}
		l, ok := w.Reading().Late(firstLate(w))
		if !ok {
			t.Fatal("no late day")
		}
		if l.Ends().Before(l.Next.Add(5 * time.Hour)) {
			t.Errorf("away %d days: the curves end %v, somebody is free %v", away, l.Ends(), l.Next)
		}
		for i, c := range l.Curves {
			if len(c.Kept) < l.Hours+int(l.Spread) {
				t.Errorf("%s: %d hours of %d", c.Way, len(c.Kept), l.Hours)
			}
			if hours := l.Next.Sub(l.Now).Hours(); math.Abs(state.KeptAt(c.Kept, hours)-l.Ways[i].Kept) > 0.05 {
				t.Errorf("away %d days, %s: the curve keeps %.2f at the next free hour, the table %.2f", away, c.Way, state.KeptAt(c.Kept, hours), l.Ways[i].Kept)
			}
		}
	}
}

// firstLate is the first batch with a late day.
func firstLate(w *window) book.BatchID {
	for _, b := range w.Reading().Batches() {
		if _, ok := w.Reading().Late(b.Batch); ok {
			return b.Batch
		}
	}
	return book.BatchID{}
}

// TestEveryWayOutBeginsSomething: its main button does what it says, by Enter.
func TestEveryWayOutBeginsSomething(t *testing.T) {
	l, _ := toLate(t).FilledLate()
	for i, way := range l.Ways {
		w := toLate(t)
		w.Way = i
		w.press("Enter")
		if w.Form == nil && w.Fill == state.LateFill {
			t.Errorf("%s: Enter does nothing: %+v", way.Way, w.Note)
		}
	}
}

// TestALateDayIsReadByPages: a page down shows the last way, and the last of the steps
// beside it; a page up goes back.
func TestALateDayIsReadByPages(t *testing.T) {
	w := toLate(t)
	w.send(state.Resized{Width: 800, Height: 560})
	all, shown := w.FillHeight(w.Layout())
	if all <= shown {
		t.Fatal("all of it is in sight")
	}
	for range 20 {
		w.send(state.Keyed{Key: "PageDown", CardMost: 200})
	}
	if w.Scroll[state.FillPlace] != all-shown || w.Scroll[state.CardPlace] != 200 {
		t.Errorf("at the end it is scrolled to %v of %.0f", w.Scroll, all-shown)
	}
	for range 20 {
		w.press("PageUp")
	}
	if w.Scroll[state.FillPlace] != 0 || w.Scroll[state.CardPlace] != 0 {
		t.Errorf("at the top it is scrolled to %v", w.Scroll)
	}
}

// TestEnterBeginsTheWorkOfTheBatchRoom as its main button does.
func TestEnterBeginsTheWorkOfTheBatchRoom(t *testing.T) {
	for _, b := range keeper(t).Reading().Batches() {
		w := keeper(t)
		w.Selection = state.Select(b.Batch.Subject())
		w.run("batch room")
		clicked := w.BatchWork()
		w.press("Enter")
		if clicked.Command == "batch work" && w.Form == nil || clicked.Command == "late day" && w.Fill != state.LateFill {
			t.Errorf("batch %d, %s: Enter leads to fill %v, form %+v", b.Number, clicked.Word, w.Fill, w.Form)
		}
	}
}

// TestTheListOfRecordsTakesTheKeys: Alt+Down opens it with the keys on its first
// record, the arrows go on from there, Enter opens it.
func TestTheListOfRecordsTakesTheKeys(t *testing.T) {
	w := keeper(t)
	w.run("yard")
	w.Selection = state.Select(w.sub("F3"))
	w.press("Down", state.Alt)
	first := w.Focus
	if !w.More || first.Kind != state.CommandRef {
		t.Fatalf("more %v, focus %v", w.More, first)
	}
	w.press("Down").press("Down")
	second := w.Focus
	if second == first || second.Kind != state.CommandRef {
		t.Fatalf("two down from %v is %v", first, second)
	}
	w.press("Enter")
	if w.Form == nil || w.Form.Record != second.ID {
		t.Errorf("Enter on %v: form %+v", second, w.Form)
	}
}

// TestTheFilterLeadsToTheFirstFound: Enter gives the keys to it; a selection of
// several stays.
func TestTheFilterLeadsToTheFirstFound(t *testing.T) {
	w := keeper(t)
	w.run("yard").press("F", state.Ctrl).write("laying").press("Enter")
	n := w.chosenNuc()
	if w.Typing || n == nil || !state.FilterBy("laying").Shows(n) {
		t.Fatalf("typing %v, on %+v", w.Typing, n)
	}
	w.Selection = state.Select(w.sub("A1"), w.sub("A2"))
	w.press("F", state.Ctrl).write("laying").press("Enter")
	if w.Selection.Len() != 2 || w.Ring != n.Nuc.Nuc.Subject() {
		t.Errorf("%d are selected, the keys on %v", w.Selection.Len(), w.Ring)
	}
}

// chosenNuc is the nuc taken last, or nil.
func (w *window) chosenNuc() *state.Nuc {
	id, _ := w.Selection.Last().Nuc()
	return w.Reading().Nuc(id)
}
