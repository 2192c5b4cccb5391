package main

import (
	"encoding/json"
	"testing"

	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// TestOneVoice: what the terminal says of a nuc's look is what the window's card
// and its work of the day say.
func TestOneVoice(t *testing.T) {
	a := &app{now: morning, env: func(string) string { return "" }}
	s := state.State{Book: &state.Book{Season: a.demoSeason()}, Now: morning}
	r := s.Reading()
	looks := 0
	for _, n := range r.Nucs {
		if n.Due == nil || n.Due.Act != rules.ActLookForEggs || looks == 25 {
			continue
		}
		looks++
		out, errs, code := call(t, "", false, "course", n.Name, "--yard", r.View.Yard(n.Yard).Name, "--demo", "--json")
		var of courseShape
		if err := json.Unmarshal([]byte(out), &of); err != nil || code != 0 {
			t.Fatalf("%s: %v %s", n.Name, err, errs)
		}
		zone := r.Course.Zone(n.Yard)
		if got, want := of.LookBest, stamp(n.Due.Best, zone); got != want {
			t.Errorf("%s: the terminal says look on %s, the card %s", n.Name, got, want)
		}
		c := r.CourseOf(n.Nuc.Nuc)
		if of.Half != c.Half.String() || of.Nine != c.Nine.String() {
			t.Errorf("%s: first eggs %s, %s in the terminal, %v, %v on the card", n.Name, of.Half, of.Nine, c.Half, c.Nine)
		}
	}
	if looks < 10 {
		t.Fatalf("only %d looks are due", looks)
	}
}
