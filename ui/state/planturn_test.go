package state_test

import (
	"fmt"
	"slices"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/state"
)

// turnRows are the lines of the page that say what a nuc gives, by age.
func turnRows(w *window) (all []state.SeasonLine) {
	for _, l := range w.SeasonLines(1200, 0) {
		if l.SeasonLook == state.SeasonTurnAge && !l.Head {
			all = append(all, l)
		}
	}
	return all
}

// The turn of a nuc has what the plan has, for the season of the yard as it is typed; the
// best are marked, and what is wrong in a field is said in place of figures.
func TestTheTurnOfANuc(t *testing.T) {
	w := planner(t).press("T", state.Alt|state.Shift).settled()
	if !w.OnSeason() || w.InField() != state.TurnLast || len(turnRows(w)) < 4 {
		t.Fatalf("the keys are on %v; %d rows of a season that drones end", w.Focus, len(turnRows(w)))
	}
	w.typedInto(state.TurnLast, "31 Aug").typedInto(state.TurnVisit, "7")
	v, sheet := w.Present().View, w.SeasonSheet()
	base, err := plan.New(w.Present().Course).Season(plan.New(w.Present().Course).YardOfMostNucs(), plan.Turn{Gap: 2, Drive: 7, Last: calendar.DayOf(now, v.Zone()) + 112})
	if err != nil {
		t.Fatal(err)
	}
	w.typedInto(state.TurnGap, "2").typedInto(state.TurnLast, base.Last.Short())
	rows, want := turnRows(w), plan.RatesOf(v).Yields(base, v.Numbers())
	if sheet.Turn.First != base.First || len(rows) != len(want) || len(rows) < 4 {
		t.Fatalf("%d rows from %s, want %d from %s", len(rows), sheet.Turn.First, len(want), base.First)
	}
	most, living := plan.BestTurns(want)
	for i, y := range want {
		cells := []string{fmt.Sprintf("%d d", y.Catch), fmt.Sprintf("%.1f", y.Queens), fmt.Sprintf("%.1f", y.Living), fmt.Sprintf("%.1f", y.Cells)}
		if !slices.Equal(rows[i].Cells[:4], cells) || rows[i].Best != [2]bool{slices.Contains(most, y), slices.Contains(living, y)} {
			t.Errorf("%v %v, want %v", rows[i].Cells, rows[i].Best, cells)
		}
	}
	for _, c := range [][2]string{{state.TurnGap, "two"}, {state.TurnVisit, "0"}, {state.TurnLast, "12 May"}} {
		was := w.Typed(c[0])
		if w.typedInto(c[0], c[1]); len(turnRows(w)) != 0 {
			t.Errorf("%s in %s gives figures", c[1], c[0])
		}
		if _, wrong := w.TurnTyped(sheet.Turn); wrong.Field != c[0] || wrong.Why == "" {
			t.Errorf("%s in %s: %+v", c[1], c[0], wrong)
		}
		w.typedInto(c[0], was)
	}
}
