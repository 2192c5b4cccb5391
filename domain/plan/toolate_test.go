package plan_test

import (
	"testing"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// What is too late is said in one sentence, with the soonest day where that is later.
func TestTooLateIsOneSentence(t *testing.T) {
	by := calendar.Date(2027, time.December, 20)
	said := func(d calendar.Day) string { return d.ShortFrom(by) }
	for want, late := range map[string]plan.TooLate{
		"no graft is in time for 1 queen by Mon 20 Dec":                                                                    {Queens: 1, By: by},
		"no graft is in time for 4 queens by Mon 20 Dec; the soonest day is Fri 14 Jan 2028, then with 38 of 100":          {Queens: 4, By: by, Soonest: plan.Soonest{Day: by + 25, Chance: 0.38}},
		"no nuc is free in time for 40 queens by Mon 20 Dec; the soonest day is Fri 14 Jan 2028, then with under 1 of 100": {Queens: 40, By: by, Soonest: plan.Soonest{Day: by + 25}, NoNuc: true},
		"no graft is in time for 2 queens Rook by Mon 20 Dec":                                                              {Queens: 2, Line: "Rook", By: by, Soonest: plan.Soonest{Day: by, Chance: 0.38}},
	} {
		if got := late.Said(said); got != want {
			t.Errorf("%+v is told as %q, want %q", late, got, want)
		}
	}
}
