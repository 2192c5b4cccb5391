package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// saidOf is the sentence on the page of the season about an order; "" where none is.
func (w *window) saidOf(number string) string {
	for _, l := range w.seasonLines(state.SeasonSaid) {
		if strings.HasPrefix(l.Cells[0], "Order "+number) {
			return l.Cells[0]
		}
	}
	return ""
}

// While a batch is dragged the lines below tell what its order gets there, and clashes that are
// there only so come first.
func TestOrdersFollowADraggedBatch(t *testing.T) {
	w := seasonal(t)
	b := w.PlannedBatches()[slices.IndexFunc(w.PlannedBatches(), func(b book.BatchPlan) bool { return b.Line == "Rook" })]
	tag := scene.Tag{Ref: state.PlannedOf(b.Batch)}
	from := scene.Point{X: 700, Y: w.Layout().Lanes.Bottom() - 20}
	before, clashes := w.OrderFlags()[0], len(w.SeasonClashes())
	for _, f := range w.OrderFlags() {
		if f.Number == "41" {
			before = f
		}
	}
	sentence := w.saidOf("41")
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, 25)), Tag: tag})
	for _, f := range w.OrderFlags() {
		if f.Number == "41" && f.Chance >= before.Chance {
			t.Errorf("25 days later its order has %.2f, before %.2f", f.Chance, before.Chance)
		}
	}
	if now := w.saidOf("41"); now == sentence || !strings.Contains(now, "wished") {
		t.Errorf("25 days later the page says %q, before %q", now, sentence)
	}
	lane := w.PlannedLane(b)
	if !lane.Unsure() {
		t.Errorf("%.2f, before %.2f, is told as a gain", lane.Chance, lane.Before)
	}
	head := w.seasonLines(state.SeasonTitle)[0].Cells[0]
	if !strings.Contains(head, ", so moved ") {
		t.Errorf("the head says %q", head)
	}
	fresh := true
	for _, l := range w.seasonLines(state.SeasonClash) {
		is := strings.HasPrefix(l.Cells[0], "New: ")
		if is && !fresh {
			t.Error("a new clash stands behind the others")
		}
		fresh = is
	}
	if w.press("Escape").send(state.Released{At: from, Tag: tag}).settled(); w.saidOf("41") != sentence || len(w.SeasonClashes()) != clashes {
		t.Errorf("put back, the page says %q, before %q", w.saidOf("41"), sentence)
	}
}

// An order that waits for queens who stand in nucs says while it is dragged how many are
// missing on the other day, and when they are to be expected.
func TestADraggedOrderTellsWhatItLacks(t *testing.T) {
	w := seasonal(t)
	order := func() state.OrderFlag {
		return w.OrderFlags()[slices.IndexFunc(w.OrderFlags(), func(f state.OrderFlag) bool { return f.Number == "33" })]
	}
	flag := order()
	if flag.Planned || flag.Needs || flag.Unsure() {
		t.Fatalf("order 33 does not wait for what stands in nucs alone: %+v", flag)
	}
	tag := scene.Tag{Ref: state.FlagOf(flag.Order.Order)}
	from := scene.Point{X: 700, Y: w.Layout().Strip.Y + 10}
	back := float64(flag.By.Sub(today) - 2)
	to := from.Add(days(w, -back))
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: to, Tag: tag})
	now := order()
	if !now.Moved() || now.Lacks == 0 || now.All <= now.Day || !now.Unsure() || !strings.Contains(now.Gets(w.Today()), "short on "+now.Day.Short()+", all by ") {
		t.Errorf("in two days it says %q: %+v", now.Gets(w.Today()), now)
	}
	w.send(state.Released{At: to, Tag: tag}).settled()
	after := w.Present()
	if o := after.View.Order(flag.Order.Order); o.By != now.Day {
		t.Fatalf("let go it is due on %s", o.By)
	}
	missing := 0
	for _, p := range w.SeasonSheet().Promises {
		if p.Order == flag.Order.Order {
			missing = p.Queens
		}
	}
	if missing != now.Lacks {
		t.Errorf("let go %d are missing, dragged %d", missing, now.Lacks)
	}
	if words := w.Pen.Done[len(w.Pen.Done)-1].Words; !strings.Contains(words, now.Gets(w.Today())) {
		t.Errorf("undo says %q", words)
	}
}
