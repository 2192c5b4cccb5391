package season

import (
	"fmt"
	"math"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// moreDrones are more drone colonies with the day by which their comb must hang, so that
// drones are ripe when virgins first fly. Where that day is past only such help as have
// ripe drones already, or a graft so late that comb of today is in time.
func (t *trial) moreDrones(c Clash) (all []Way) {
	n, ripens := math.Ceil(c.Short()), t.days(practice.DroneRipe)
	more, flies := c.said(n, 0, " more "), t.firstFlight(c)
	by := flies - ripens
	its := "its"
	if n > 1 {
		its = "their"
	}
	switch {
	case by >= t.today:
		return []Way{{What: fmt.Sprintf("%s, %s comb in by %s", more, its, t.said(by))}}
	case flies <= t.today:
		all = append(all, Way{What: fmt.Sprintf("virgins fly since %s, too late to raise drones: bring %s with ripe ones", t.said(flies), more)})
	default:
		all = append(all, Way{What: fmt.Sprintf("%s with ripe drones, there by %s; too late to raise, %s comb was due by %s", more, t.said(flies), its, t.said(by))})
	}
	for _, l := range t.loads {
		if later := t.today + ripens - l.ladder.Rung(plan.Fly).From; !l.grafted && c.has(l.id) && later > 0 {
			all = append(all, Way{What: fmt.Sprintf("%s: graft from %s, and comb into %s today", l.title, t.said(l.planned.Day+later), more)})
		}
	}
	return all
}

// firstFlight is the first day on which more virgins fly than drones serve; of a clash
// that is on already, the day since which its virgins do.
func (t *trial) firstFlight(c Clash) calendar.Day {
	first := c.From
	if first > t.today {
		return first
	}
	for _, l := range t.loads {
		if fly := l.ladder.Rung(plan.Fly); c.has(l.id) && fly.From < first {
			first = fly.From
		}
	}
	return first
}
