package crew

import (
	"time"

	"lidmark/domain/rules"
)

// After are the same people on a day on which nothing is done before an instant, as in
// rain: whose hours nobody told keeps them all.
func (h Hands) After(dry time.Time) (all Hands) {
	for _, team := range h {
		var later []Hand
		for _, hand := range team {
			if hand.Until.IsZero() {
				hand.From = dry
			}
			later = append(later, hand.leftAt(dry))
		}
		all = append(all, later)
	}
	return all
}

// InRain is the work of a plan that cannot wait until the rain is over: its hard hour is
// before, and not past yet.
func InRain(plan rules.DayPlan, now, dry time.Time) (all []rules.Task) {
	for _, stop := range plan.Stops {
		for _, t := range stop.Tasks {
			if t.Hard && !t.By.IsZero() && t.By.Before(dry) && !t.PastDue(now) {
				all = append(all, t)
			}
		}
	}
	return all
}
