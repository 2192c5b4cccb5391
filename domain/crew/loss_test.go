package crew_test

import (
	"testing"

	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// What waiting costs in the demo, in queens: robbers at work most, and hard by
// nature; a nuc that is only exposed less than one that is robbed; a look at a nuc that
// most probably has no queen more than at others.
func TestWhatWaitingCosts(t *testing.T) {
	j, on := demoDay(t)
	day, err := crew.Plan(j, on, nil)
	if err != nil {
		t.Fatal(err)
	}
	v := j.Course().View()
	var robbed, exposed, empty, full float64
	for _, w := range day.Waits {
		id, nuc := w.Of.Nuc()
		switch {
		case !nuc:
		case w.Task.Act == rules.ActNarrowEntrance && !v.Nuc(id).RobbedAt.IsZero():
			if robbed = w.Price.Queens; !w.Hard {
				t.Error("robbers at work can wait")
			}
		case w.Task.Act == rules.ActNarrowEntrance:
			exposed = max(exposed, w.Price.Queens)
		case w.Task.Act == rules.ActLookForEggs:
			c := j.Course().Held(v.Nuc(id)).Chances()
			if c.Queenless()+c.DroneLayer > 0.3 {
				empty = max(empty, w.Price.Queens)
			} else if c.Queenless()+c.DroneLayer < 0.2 {
				full = max(full, w.Price.Queens)
			}
		}
	}
	if !(robbed > exposed && exposed > 0) {
		t.Errorf("a robbed nuc costs %.3f, one that is exposed %.3f", robbed, exposed)
	}
	if !(empty > full) {
		t.Errorf("a look at an empty nuc is worth %.4f, at another %.4f", empty, full)
	}
}
