package rules_test

import (
	"testing"

	"lidmark/domain/rules"
)

// TestTheLastChanceDoesNotWait: a hard end that comes before anybody is free
// again cannot wait, though it lies behind noon of the next day.
func TestTheLastChanceDoesNotWait(t *testing.T) {
	p := pen(t)
	g := graft(9, 24)
	g.LarvaAge = 22
	p.At("2027-05-01 18:30").Write(g)
	v := p.View("2027-05-10 19:00") // a Monday; free again on Tuesday from 18:30
	plan := rules.Day(v, v.Today())
	hard := 0
	for _, s := range plan.Within(0).Stops {
		for _, task := range s.Tasks {
			if task.Act == rules.ActCollectCells {
				hard++
			}
		}
	}
	if hard != 1 || len(plan.Hard) != 1 {
		t.Errorf("%d of the cells' lines are kept and %d are told as hard, want one each; hard %v", hard, len(plan.Hard), plan.Soon)
	}
}

// TestOnlyWhatIsLeftOfTheHours: a day under way begins now and has the minutes
// that are left; when its hours are over it has none. Before they begin it is as
// it was planned.
func TestOnlyWhatIsLeftOfTheHours(t *testing.T) {
	for _, c := range []struct {
		at, home string
		free     float64
	}{
		{"2027-05-11 07:00", "as planned", 120},
		{"2027-05-11 19:50", "later", 40},
		{"2027-05-11 20:31", "none", 0},
	} {
		p := pen(t)
		p.At("2027-05-01 18:30").Write(graft(9, 24))
		v := p.View(c.at)
		whole := rules.Day(v, v.Today())
		left := whole.Left(v)
		if left.Free != c.free {
			t.Errorf("%s: %v min left, want %v", c.at, left.Free, c.free)
		}
		for i, s := range left.Stops {
			planned := whole.Stops[i].Start
			ok := map[string]bool{
				"as planned": s.Start.Equal(planned) && left.Home.Equal(whole.Home),
				"later":      !s.Start.Before(v.On()) && s.Start.Sub(planned) == left.Home.Sub(whole.Home),
				"none":       s.Start.IsZero() && left.Home.IsZero(),
			}[c.home]
			if !ok {
				t.Errorf("%s: a stop planned at %v begins at %v, home at %v", c.at, planned, s.Start, left.Home)
			}
		}
		if len(left.Stops) == 0 {
			t.Errorf("%s: nothing is to be done", c.at)
		}
	}
}
