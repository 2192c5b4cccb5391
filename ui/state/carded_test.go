package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

func TestLinksOfTheCardLeadThereAndBack(t *testing.T) {
	w := writing(t)
	a1, batch := w.sub("A1"), w.nuc("A1").Holds.Batch.Subject()
	mother := w.view().Batch(w.nuc("A1").Holds.Batch).Mother.Subject()
	w.take(a1)
	w.tap(state.LinkTo(batch), 0).tap(state.LinkTo(mother), 0)
	if w.Selection.Last() != mother || len(w.Trail) != 2 {
		t.Fatalf("two links lead to %v, the way back is %d long", w.Selection.Last(), len(w.Trail))
	}
	if w.press("Escape"); w.Selection.Last() != batch {
		t.Error("Esc does not lead back to the batch")
	}
	if w.run("card back"); w.Selection.Last() != a1 || len(w.Trail) != 0 {
		t.Error("the link back does not lead to the nuc")
	}
	w.tap(state.LinkTo(batch), 0).tap(w.ref("C3"), 0)
	if len(w.Trail) != 0 {
		t.Error("the way back outlives another selection")
	}
	if w.press("Escape"); w.Selection.Len() != 0 {
		t.Error("Esc does not leave what was selected by hand")
	}
}

func TestALineIsStruckAndCountsAgain(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1"))
	before, _ := w.nuc("A1").LastLook()
	var look book.Line
	for l := range w.view().History(w.sub("A1")) {
		if _, ok := l.Fact.(book.Looked); ok {
			look = l
		}
	}
	w.tap(state.StrikeOf(look.ID), 0).save()
	if after, _ := w.nuc("A1").LastLook(); after == before {
		t.Fatal("the look that was struck still counts")
	}
	if words := w.Pen.Done[0].Words; !strings.HasPrefix(words, "struck: A1: ") {
		t.Errorf("undo says %q", words)
	}
	if l, ok := w.LineOf(look.ID.String()); !ok || !l.Struck {
		t.Error("the struck line is not to be read any more")
	}
	w.tap(state.StrikeOf(look.ID), 0).save()
	if after, _ := w.nuc("A1").LastLook(); after != before {
		t.Error("the line that was put back does not count")
	}
	w.run("undo").save().run("undo").save()
	if after, _ := w.nuc("A1").LastLook(); after != before {
		t.Error("after both are undone the look does not count")
	}
}

func TestWhatFoundsAThingIsNotStruck(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1"))
	for l := range w.view().History(w.sub("A1")) {
		if _, ok := l.Fact.(book.NucNamed); ok {
			if w.tap(state.StrikeOf(l.ID), 0); len(w.effects) > 0 || !strings.Contains(w.Note.Text, "other lines speak of it") {
				t.Errorf("striking what names a nuc: %d effects, %q", len(w.effects), w.Note.Text)
			}
			return
		}
	}
	t.Fatal("nothing names A1")
}

func TestARefusedButtonTellsWhy(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1"))
	stops := []scene.Ref{state.CommandOf("look"), state.CommandOf("give cell")}
	w.send(state.Keyed{Key: "Tab", Stops: stops}, state.Keyed{Key: "Tab", Stops: stops}, state.Keyed{Key: "Enter"})
	if w.Form != nil || !w.Note.Bad || !strings.HasPrefix(w.Note.Text, "Give a cell: A1 has a laying queen") {
		t.Errorf("Enter on a refused button says %q", w.Note.Text)
	}
	if w.run("look"); w.Note.Text != "" {
		t.Error("the reason stays when something else is done")
	}
}

func TestAFormIsFilledWithTheKeyboardAlone(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1")).run("unite").write("f")
	for _, step := range []struct{ key, want string }{{"Down", "F1"}, {"Down", "F2"}, {"Up", "F1"}} {
		if w.press(step.key); w.Typed("form.with") != step.want {
			t.Fatalf("%s gives %q, want %s", step.key, w.Typed("form.with"), step.want)
		}
	}
	if w.press("Enter"); w.Form != nil {
		t.Fatal("Enter does not write")
	}
	if w.save(); w.nuc("A1").Condition() != book.Empty {
		t.Error("A1 is not united")
	}
	w.take(w.sub("B1")).run("look")
	w.press("Right").press("Tab").press(" ").press("Tab").write("3").press("Tab", state.Shift).press("Tab").press("Tab").write("5")
	if q, e, b, s := w.Typed("form.queen"), w.Typed("form.eggs"), w.Typed("form.brood"), w.Typed("form.sides"); q != "no queen seen" || e != "eggs" || b != "3" || s != "5" {
		t.Errorf("the form says %q, %q, %q, %q", q, e, b, s)
	}
	for range 40 {
		if w.press("Tab"); w.Focus == state.CommandOf("close form") {
			break
		}
	}
	if w.press("Enter"); w.Form != nil {
		t.Error("Tab does not come to the button that leaves the form")
	}
}

func TestAFormIsAboutWhatItWasOpenedFor(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1")).fill("feed", "litres=0.7").tap(w.ref("C4"), 0)
	w.kept()
	if w.nuc("A1").Fed.Litres != 0.7 || w.nuc("C4").Fed.Litres == 0.7 {
		t.Error("the form went to what was selected later")
	}
}

func TestAnswersAreTakenAndLeft(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1")).run("look")
	also := state.FormField + "also"
	w.tap(state.ChoiceOf(also, "quick"), 0).tap(state.ChoiceOf(also, "larvae"), 0)
	if got := w.Typed(also); got != "larvae,quick" {
		t.Errorf("two answers are %q", got)
	}
	w.tap(state.ChoiceOf(also, "quick"), 0).tap(state.ChoiceOf("form.queen", "queen seen"), 0).tap(state.ChoiceOf("form.queen", "queen seen"), 0)
	if w.Typed(also) != "larvae" || w.Typed("form.queen") != "" {
		t.Errorf("taken twice they are %q and %q", w.Typed(also), w.Typed("form.queen"))
	}
}

func TestASuggestionIsClicked(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1")).run("unite").write("s1")
	ask := w.Form.Asks[0]
	all, _ := w.Suggested(ask)
	if len(all) < 2 {
		t.Fatalf("%d fit s1", len(all))
	}
	w.tap(scene.Ref{Kind: state.SuggestRef, ID: "form.with", Part: all[1].Value}, 0)
	if w.Typed("form.with") != all[1].Word || w.InField() != "form.with" {
		t.Errorf("the field says %q", w.Typed("form.with"))
	}
}

func TestMoreListsAndCloses(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1")).run("more")
	if w.press("Escape"); w.More || w.Selection.Len() != 1 {
		t.Error("Esc does not close the list alone")
	}
	if w.run("more").run("feed").press("Escape"); w.Form != nil || !w.More {
		t.Error("leaving a form does not lead back to the list")
	}
	if w.fill("feed", "litres=0.5").kept(); w.More {
		t.Error("the list is open after something was written")
	}
}

func TestWaitingTellsWhatTheClockKnows(t *testing.T) {
	w := writing(t)
	costs := 0
	for _, f := range w.Reading().Findings {
		for i, c := range w.Reading().Waiting(f) {
			if !c.At.After(now) || c.What == "" {
				t.Errorf("%s: a cost at %v, %q", f.What, c.At, c.What)
			}
			if all := w.Reading().Waiting(f); i > 0 && c.At.Before(all[i-1].At) {
				t.Errorf("%s: costs out of order", f.What)
			}
			costs++
		}
	}
	if costs < 20 {
		t.Errorf("only %d costs in the demo season", costs)
	}
}
