package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// plannedOne is a window in Plan with one batch on the plan, that batch, and where
// its lane can be taken hold of.
func plannedOne(t testing.TB) (w *window, b book.BatchPlan, tag scene.Tag, at scene.Point) {
	w = planner(t).run("plan it").settled()
	b = w.PlannedBatches()[0]
	tag = scene.Tag{Ref: state.PlannedOf(b.Batch)}
	return w, b, tag, scene.Point{X: 700, Y: w.Layout().Lanes.Y + 20}
}

func days(w *window, n float64) scene.Point { return scene.Point{X: n * w.Layout().Ribbon.Column} }

// A lane is dragged: the ladder follows with the same amounts, nothing is written
// until the button goes up, then it is, in words with its price, and undone.
func TestALaneIsDragged(t *testing.T) {
	w, b, tag, from := plannedOne(t)
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, 2)), Tag: tag})
	lane := w.PlannedLanes(w.Layout())[0]
	if lane.Day != b.Day+2 || !lane.Moved() || lane.Chance > lane.Before {
		t.Errorf("dragged two days on: the lane is %d days on, %.2f, before %.2f", lane.Day.Sub(b.Day), lane.Chance, lane.Before)
	}
	if sheet := w.answer(); sheet.Batches[0].Day != b.Day+2 || sheet.Larvae != b.Larvae || sheet.By != b.By {
		t.Errorf("the ladder stands on %s with %d larvae", sheet.Batches[0].Day, sheet.Larvae)
	}
	if on := w.PlannedBatches()[0].Day; on != b.Day {
		t.Error("dragging wrote something")
	}
	w.send(state.Released{At: from.Add(days(w, 2)), Tag: tag}).settled()
	if on := w.PlannedBatches(); len(on) != 1 || on[0].Day != b.Day+2 || on[0].Batch != b.Batch || on[0].By != b.By {
		t.Errorf("let go: %+v", on)
	}
	if words := w.Pen.Done[len(w.Pen.Done)-1].Words; !strings.Contains(words, "moved to") || !strings.Contains(words, "before") {
		t.Errorf("undo says %q", words)
	}
	if w.press("Z", state.Ctrl).settled(); w.PlannedBatches()[0].Day != b.Day {
		t.Error("undo does not put it back")
	}
}

// Esc puts back what was dragged, the wish as well.
func TestALaneIsPutBack(t *testing.T) {
	for room, command := range map[string]string{"Plan": "plan", "Yard": "yard"} {
		w, b, tag, _ := plannedOne(t)
		w.run(command).tap(tag.Ref, 0).settled()
		w.State = w.WithField(state.WishQueens, state.FieldOf("17"))
		from := scene.Point{X: 700, Y: w.Layout().Lanes.Bottom() - 20}
		w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, -5)), Tag: tag})
		if lanes := w.PlannedLanes(w.Layout()); len(lanes) == 0 || lanes[0].Day != b.Day-5 {
			t.Fatalf("%s: the lane does not follow", room)
		}
		w.press("Escape").send(state.Released{At: from, Tag: tag}).settled()
		if on := w.PlannedBatches()[0].Day; on != b.Day || w.Typed(state.WishQueens) != "17" {
			t.Errorf("%s: put back it is on %s, %s queens are wished for", room, on, w.Typed(state.WishQueens))
		}
	}
}

// A grafted batch is nailed down: its lane does not move and says why.
func TestAGraftedLaneIsNailed(t *testing.T) {
	w := start(t).run("yard")
	b := w.Lanes(w.Layout())[0]
	tag := scene.Tag{Ref: state.RefOf(b.Batch.Subject())}
	from := scene.Point{X: 700, Y: w.Layout().Lanes.Y + 20}
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, 3)), Tag: tag})
	if says := w.Hover.Reason; !strings.Contains(says, "was grafted on ") {
		t.Errorf("beside the pointer stands %q", says)
	}
	w.send(state.Released{At: from.Add(days(w, 3)), Tag: tag})
	if !strings.Contains(w.Note.Text, "grafted") || len(w.effects) > 0 {
		t.Errorf("says %q", w.Note.Text)
	}
}

// The card of a planned batch in Yard: it is grafted as the batch it was planned as,
// moved, taken off; what is of grafted batches alone is not offered.
func TestAPlannedBatchOnItsCard(t *testing.T) {
	w, b, tag, _ := plannedOne(t)
	w.run("yard").tap(tag.Ref, 0)
	if !w.Selection.Has(b.Batch.Subject()) || w.Room != state.Yard {
		t.Fatal("a click on its lane does not select it")
	}
	for _, rec := range w.Offered() {
		if !slices.Contains([]string{"graft", "note"}, rec.Name) {
			t.Errorf("%s is offered", rec.Name)
		}
	}
	if c, _ := state.CommandNamed("batch room"); c.Reason(w.State) == "" {
		t.Error("it fills the room like a grafted one")
	}
	grafted := &window{t: t, State: w.State}
	grafted.run("graft").fill("graft", "larvae=90", "when="+today.String()+" 07:00").run("write").settled()
	if all := grafted.PlannedBatches(); len(all) != 0 {
		t.Errorf("grafted, and still planned: %+v", all)
	}
	if got := grafted.Present().View.Batch(b.Batch); got.Larvae != 90 {
		t.Errorf("%d larvae are grafted as what was planned", got.Larvae)
	}
	w.run("move plan").settled()
	if w.Room != state.Plan || w.Planning.Batch != b.Batch || w.answer().Larvae != b.Larvae {
		t.Errorf("moved: room %d, %d larvae", w.Room, w.answer().Larvae)
	}
	w.run("yard").tap(tag.Ref, 0).run("drop plan").settled()
	if len(w.PlannedBatches()) != 0 {
		t.Error("taken off, and still there")
	}
}
