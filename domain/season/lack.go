package season

import (
	"fmt"
	"math"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Lack is how much more there would have to be of what stands in the way of a promise.
type Lack struct {
	Limit
	More float64 // in the unit of its kind; 0 where more of it is no way, as of days without a graft
}

// kindOf is the kind of clash in whose unit a limit is told.
var kindOf = map[Limit]Kind{
	NucsLimit: NucsShort, StartersLimit: StartersShort, FinishersLimit: FinishersShort, IncubatorLimit: IncubatorShort, MinutesLimit: MinutesOver,
	BeesLimit: BeesShort, BroodLimit: BroodShort, DronesLimit: DronesShort,
}

// lack is how much of a good a way takes beyond what there is, on its worst day.
func (s *search) lack(o option, good int) Lack {
	limit := s.limitBy(good)
	if kindOf[limit] == 0 {
		return Lack{Limit: limit}
	}
	worst := int32(0)
	s.ground.put(o, 1)
	for _, b := range o.of {
		for _, t := range b.takes {
			if t.good != good {
				continue
			}
			for _, left := range s.ground.days(t) {
				worst = min(worst, left)
			}
		}
	}
	s.ground.put(o, -1)
	if limit == DronesLimit && worst < 0 {
		return Lack{limit, s.moreDrones(good, -worst)}
	}
	return Lack{limit, math.Ceil(float64(-worst) / s.ground.unit(limit))}
}

// moreDrones are the drone colonies of a circle that are missing where so many virgins more fly than its own
// serve: as many as amounts and clashes want for all of them.
func (s *search) moreDrones(good int, virgins int32) float64 {
	have := s.ground.circles[good-s.ground.virgins(0)].colonies
	all := int(have*s.ground.numbers.Get(practice.QueensPerDroneColony)) + int(virgins)
	return plan.DroneColoniesFor(all, s.ground.numbers) - have
}

// unit is how many of the whole numbers in which a good is reckoned make one of the
// unit in which it is told.
func (g *ground) unit(l Limit) float64 {
	switch l {
	case MinutesLimit:
		return 10
	case BeesLimit, BroodLimit:
		return parts
	default:
		return 1
	}
}

// wouldDo is with how much more grafts of some days would do, told beside by when to graft; "" where nothing that
// can be had is.
func (s *search) wouldDo(all []Lack, grafts []calendar.Day, by plan.GraftBy) string {
	var more []string
	for _, l := range all {
		if l.More == 0 {
			return ""
		}
		more = append(more, kindOf[l.Limit].said(l.More, 0, " more "))
	}
	if len(more) == 0 {
		return ""
	}
	if len(grafts) == 1 {
		return fmt.Sprintf("; with %s a graft of %s would do", joined(more), by.Of(grafts[0], s.said))
	}
	var days []string
	for _, d := range grafts {
		days = append(days, s.said(d))
	}
	return fmt.Sprintf("; with %s grafts of %s would do", joined(more), joined(days))
}
