package book

import (
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

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
