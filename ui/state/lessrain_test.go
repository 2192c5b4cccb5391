package state_test

import (
	"testing"

	"lidmark/ui/state"
)

// TestRainThatIsOverIsNotSaid: of a day under way no hour gone by is offered, what was said
// goes with its hour, and late in the evening there is nothing to say.
func TestRainThatIsOverIsNotSaid(t *testing.T) {
	at := func(w *window, hour, minute int) { w.send(state.Ticked{Now: today.At(hour, minute, zone)}) }
	w := helped(t)
	if w.RainUntil() != 15 {
		t.Errorf("in the morning it rains until %d", w.RainUntil())
	}
	w.run("rain until")
	if at(w, 14, 59); !w.Rains() {
		t.Error("before three the rain is over")
	}
	if at(w, 15, 0); w.Rains() || w.DayPage.Less.On() {
		t.Errorf("at three it rains until %d", w.RainUntil())
	}
	if at(w, 18, 30); w.RainUntil() != 19 {
		t.Errorf("at half past six it rains until %d", w.RainUntil())
	}
	c, _ := state.CommandNamed("rain until")
	less, _ := state.CommandNamed("rain shorter")
	w.DayPage.Less.From = 19
	if less.Reason(w.State) == "" {
		t.Error("rain can be over before now")
	}
	w.DayPage.Less.From = 0
	if at(w, 20, 10); c.Reason(w.State) == "" {
		t.Errorf("at ten past eight it rains until %d", w.RainUntil())
	}
}
