package book

import (
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// BatchPlan is what the book says of a batch that is meant to be grafted.
type BatchPlan struct {
	BatchPlanned
	At      calendar.Moment // when it was planned so
	Done    []ReadyStep     // what was made ready for it, and serves its day
	TooSoon []ReadyStep     // what was made ready for an earlier day from which it was moved, and serves no more
}

// Made tells whether a step that makes ready is done; never for the zero step.
func (p BatchPlan) Made(s ReadyStep) bool { return s != 0 && slices.Contains(p.Done, s) }

// BatchPlan is the plan of a batch as it was last told. Ok is false when it does
// not stand: there is none, it was dropped, or grafted.
func (v *View) BatchPlan(id BatchID) (p BatchPlan, ok bool) {
	grafted := false
	var ready []readied
	for _, e := range v.lines(id.Subject()) {
		switch f := e.Fact.(type) {
		case BatchPlanned:
			p, ok = BatchPlan{BatchPlanned: f, At: e.At}, true
		case BatchReadied:
			ready = append(ready, readied{f.Step, e.At.Day(v.Zone()), p.Day})
		case BatchDropped:
			ok = false
		case Grafted:
			grafted = true // for good: the plan may have been written down after the hour of the graft
		}
	}
	for _, r := range ready {
		if v.serves(r, p.Day) {
			p.Done = append(p.Done, r.step)
		} else {
			p.TooSoon = append(p.TooSoon, r.step)
		}
	}
	return p, ok && !grafted
}

// readied is a step that was made ready on a day for a graft that was planned for another; of none
// yet, for the zero day.
type readied struct {
	step    ReadyStep
	on, day calendar.Day
}

// readyBefore is how long before the graft each step is done that does not keep.
var readyBefore = map[ReadyStep]practice.Key{
	BreederConfined: practice.ConfineBreederBefore, StarterFed: practice.FeedStarterBefore, StarterSetUp: practice.StarterSetUpBefore,
}

// serves tells whether what was made ready serves a graft on a day: as long as the one for which it was
// done could be made, see [View.GraftBy], or where it was done just when this one wants it. Drone comb
// and nucs keep.
func (v *View) serves(r readied, graft calendar.Day) bool {
	before, spoils := readyBefore[r.step]
	if !spoils || r.day == 0 || graft <= r.day {
		return true
	}
	late := v.graftLate()
	wanted := graft - calendar.Day(v.Numbers().Days(before))
	return graft <= r.day+late || wanted-late <= r.on && r.on <= wanted
}
