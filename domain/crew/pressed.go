package crew

import (
	"slices"
	"time"
)

// Pressed is work with a hard end before which a person has not the time for it.
type Pressed struct {
	By    time.Time
	Work  float64 // minutes that must be done by then
	There float64 // minutes from when the person is there until then
}

// Pressed is the first hard end of a sheet, of those after an instant, before which there
// is not the time for what must be done by then, the ways not counted; ok is false where
// there is none, or nobody told since when the person is there.
func (s Sheet) Pressed(now time.Time) (p Pressed, ok bool) {
	if s.From.IsZero() {
		return p, false
	}
	var hard []Work
	for _, v := range s.Visits {
		for _, w := range v.Work {
			if w.HardBy().After(now) {
				hard = append(hard, w)
			}
		}
	}
	slices.SortStableFunc(hard, func(a, b Work) int { return a.Task.By.Compare(b.Task.By) })
	sum := 0.0
	for i, w := range hard {
		sum += w.Minutes
		last := i+1 == len(hard) || hard[i+1].Task.By.After(w.Task.By)
		if there := max(0, w.Task.By.Sub(s.From).Minutes()); last && sum > there {
			return Pressed{w.Task.By, sum, there}, true
		}
	}
	return p, false
}

// HardBy is the hour by which work with a hard end must be done; zero where it has none, or is
// no matter of an hour: robbers are at work, she leaves on the day, or the food is out.
func (w Work) HardBy() time.Time {
	if !w.Hard || !w.Task.Hard {
		return time.Time{}
	}
	return w.Task.By
}
