package state_test

import (
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// How sure by larvae is turned to with a key, gone through with arrows, and an amount
// that is taken is the wish of so many larvae in the same nucs, as sure as it said.
func TestAnAmountOfLarvaeIsTaken(t *testing.T) {
	w := planner(t).typedInto(state.WishQueens, "20")
	all := w.answer().ByLarvae
	if dots, larvae := w.PlanSure(w.PlanPane(w.Layout()).Parts[1]); !dots || larvae || len(all) < 8 {
		t.Fatalf("dots %v, larvae %v of %d amounts", dots, larvae, len(all))
	}
	w.press("H", state.Alt|state.Shift).settled()
	if dots, larvae := w.PlanSure(w.PlanPane(w.Layout()).Parts[1]); dots || !larvae || w.Focus != state.LarvaeOf(w.answer().Larvae) {
		t.Fatalf("turned around: dots %v, larvae %v, the keys on %v", dots, larvae, w.Focus)
	}
	at := 0
	for i, n := range all {
		if n.Grafted {
			at = i
		}
	}
	nucs, want := w.answer().Nucs, all[at-1]
	w.press("Left").press("Enter").settled()
	if a := w.answer(); a.Larvae != want.Larvae || a.Nucs != nucs || a.Chance != want.Chance {
		t.Errorf("%d larvae in %d nucs, %.4f; the bar said %+v in %d", a.Larvae, a.Nucs, a.Chance, want, nucs)
	}
	for i, n := range w.answer().ByLarvae {
		if was := all[i]; n.Larvae != was.Larvae || n.Chance != was.Chance || n.Fewest != was.Fewest || n.Grafted != (i == at-1) {
			t.Errorf("the amounts moved: %+v, before %+v", n, was)
		}
	}
	tag := scene.Tag{Ref: state.LarvaeOf(all[at].Larvae)}
	w.send(state.Pressed{Tag: tag}, state.Released{Tag: tag}).settled()
	if a := w.answer(); a.Larvae != all[at].Larvae || a.Chance != all[at].Chance || w.Typed(state.WishLarvae) != strconv.Itoa(all[at].Larvae) {
		t.Errorf("taken back: %d larvae, %.4f", a.Larvae, a.Chance)
	}
}

// Where larvae are said graft by graft, or no number of them helps, the key says so.
func TestNoLarvaeToCompare(t *testing.T) {
	for field, c := range map[string][2]string{state.WishLarvae: {"80 + 60", "graft by graft"}, state.WishQueens: {"900", "no number of larvae"}} {
		w := planner(t).typedInto(field, c[0])
		command, _ := state.CommandNamed("by larvae")
		if why := command.Reason(w.State); !strings.Contains(why, c[1]) {
			t.Errorf("%s in %s: %q", c[0], field, why)
		}
		if dots, larvae := w.PlanSure(scene.Area{H: 1000}); !dots || larvae {
			t.Errorf("%s in %s: larvae are shown", c[0], field)
		}
	}
}

// The window has what the terminal says: both ask the answer.
func TestByLarvaeIsTheAnswers(t *testing.T) {
	w := planner(t)
	wish, _ := w.Wish()
	want := plan.New(w.Present().Course).Possible(wish).ByLarvae()
	got := w.answer().ByLarvae
	if len(got) != len(want) || len(got) == 0 {
		t.Fatalf("%d amounts, want %d", len(got), len(want))
	}
	for i := range got {
		if got[i] != want[i] {
			t.Errorf("%+v, want %+v", got[i], want[i])
		}
	}
}
