package state_test

import (
	"testing"

	"lidmark/ui/state"
)

// A graft has the hour that is typed; left blank it has the first free one, and what is no
// hour is said.
func TestAGraftHasTheHourThatIsTyped(t *testing.T) {
	w := planner(t).send(state.Ran{Command: "forwards"}).settled()
	found := w.HourFound()
	w.typedInto(state.WishHour, "13:20")
	sheet, now := w.PlanSheet()
	if at := sheet.Batches[0].Ladder.Graft.In(w.Present().View.Zone()).Format("15:04"); !now || at != "13:20" || found == at || found == "" {
		t.Errorf("typed 13:20, the graft is at %s; blank it was at %q", at, found)
	}
	for _, no := range []string{"25:00", "noon", "0:00"} {
		w.typedInto(state.WishHour, no)
		if _, wrong := w.Wish(); wrong.Field != state.WishHour || wrong.Why == "" {
			t.Errorf("%q as an hour: %+v", no, wrong)
		}
	}
}
