package state_test

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Larvae typed one graft after the other are grafts of that size, in ladder, plan and
// try-outs; one batch instead leaves the first.
func TestGraftsOfUnlikeSizeAreTyped(t *testing.T) {
	w := planner(t).typedInto(state.WishLarvae, "80, 60")
	a := w.answer()
	if got := a.Grafted(); !slices.Equal(got, []int{80, 60}) || a.Batches[1].Day.Sub(a.Batches[0].Day) != 7 {
		t.Fatalf("%v larvae are grafted", got)
	}
	for i, want := range []string{"80 larvae, ", "60 larvae, "} {
		said := ""
		for _, r := range w.PlanRungs(i) {
			if r.Step == plan.GraftLarvae {
				said = r.Amount
			}
		}
		if len(said) < len(want) || said[:len(want)] != want {
			t.Errorf("graft %d says %q, want %s", i+1, said, want)
		}
	}
	w.Focus = state.FieldNamed(state.WishLarvae)
	w.press("Up").settled()
	if got := w.Typed(state.WishLarvae); got != "84 + 64" || !slices.Equal(w.answer().Grafted(), []int{84, 64}) {
		t.Errorf("one step up are %q larvae", got)
	}
	w.run("keep try")
	if kept := w.Planning.Tries[0]; kept.Larvae != 148 {
		t.Errorf("%d larvae are kept", kept.Larvae)
	}
	w.typedInto(state.WishApart, "9").run("keep try").typedInto(state.WishApart, "61")
	if _, wrong := w.Wish(); wrong.Field != state.WishApart {
		t.Errorf("61 days apart are read: %+v", wrong)
	}
	w.typedInto(state.WishApart, "9").run("two grafts").settled()
	if got := w.answer().Grafted(); !slices.Equal(got, []int{84}) {
		t.Errorf("one batch instead: %v larvae", got)
	}
	tag := scene.Tag{Ref: scene.Ref{Kind: state.TryRef, ID: "0"}}
	w.send(state.Pressed{Tag: tag}, state.Released{Tag: tag}).settled()
	if got := w.answer().Grafted(); !slices.Equal(got, []int{84, 64}) || w.Typed(state.WishLarvae) != "84 + 64" {
		t.Errorf("taken up again: %v larvae", got)
	}
	tag.Ref.ID = "1"
	if w.send(state.Pressed{Tag: tag}, state.Released{Tag: tag}).settled(); w.answer().Batches[1].Day.Sub(w.answer().Batches[0].Day) != 9 {
		t.Errorf("nine days apart taken up again: %s and %s", w.answer().Batches[0].Day, w.answer().Batches[1].Day)
	}
	w.run("plan it").settled()
	var planned []int
	for _, b := range w.PlannedBatches() {
		planned = append(planned, b.Larvae)
	}
	if !slices.Equal(planned, []int{84, 64}) {
		t.Errorf("%v larvae are planned", planned)
	}
}

// What is no number of larvae says so, and how several grafts are said.
func TestLarvaeThatCannotBeRead(t *testing.T) {
	w := planner(t)
	for _, text := range []string{"eighty", "80 + 0", "80, 3000", "1 2 3 4 5 6 7 8 9"} {
		w.typedInto(state.WishLarvae, text)
		if _, wrong := w.Wish(); wrong.Field != state.WishLarvae {
			t.Errorf("%q is read: %+v", text, wrong)
		}
	}
}

// Each graft's ladder tells its own amounts: by hand 100 larvae want three starters and 40 one,
// of 45 each; and the cups of both are those that the amounts tell of both.
func TestALadderTellsTheAmountsOfItsGraft(t *testing.T) {
	w := planner(t).typedInto(state.WishLarvae, "100, 40")
	w.answer()
	cups := 0
	for i, want := range []string{"3, with ", "1, with "} {
		for _, r := range w.PlanRungs(i) {
			switch r.Step {
			case plan.SetUpStarter:
				if !strings.HasPrefix(r.Amount, want) {
					t.Errorf("graft %d: starters %q, want %q", i+1, r.Amount, want)
				}
			case plan.MakeUpNucs:
				_, says, _ := strings.Cut(r.Amount, ", ")
				n, _ := strconv.Atoi(strings.Fields(says + " 0")[0])
				cups += n
			}
		}
	}
	sheet, _ := w.PlanSheet()
	for _, n := range sheet.Needs {
		if n.Good == plan.CupsOfBees && math.Abs(n.Amount-float64(cups)) > 1 {
			t.Errorf("the ladders tell of %d cups, the amounts of %.1f", cups, n.Amount)
		}
	}
}
