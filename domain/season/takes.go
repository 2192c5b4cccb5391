package season

import (
	"math"

	"lidmark/domain/plan"
)

// tenths are minutes in whole tenths, so that sums of them are exact.
func tenths(minutes float64) int32 { return int32(math.Round(10 * minutes)) }

// takes are what a batch of a size on a ladder takes up, and for how long.
func (g *ground) takes(l plan.Ladder, s plan.Size) []span {
	all := []span{{g.besides(grafts), l.Day, l.Day, 1}}
	all = append(all, g.rearing(l, s)...)
	if s.Incubated > 0 {
		from, to := l.Incubates(s)
		all = append(all, span{g.besides(incubator), from, to, int32(s.Incubated)})
	}
	if y := g.yard(s.Yard); y >= 0 {
		all = append(all, nucsOf(l, s, y))
	}
	for _, m := range g.planner.Minutes(l, s) {
		all = append(all, span{g.besides(minutes), m.Day, m.Day, tenths(m.Minutes)})
	}
	return all
}

// rearing are the starters until the cells move, and the finishers for a turn.
func (g *ground) rearing(l plan.Ladder, s plan.Size) []span {
	start, finish := g.planner.Rearing(l, s)
	return []span{
		{g.besides(starters), start.From, start.To, int32(start.Amount)},
		{g.besides(finishers), finish.From, finish.To, int32(finish.Amount)},
	}
}

// nucsOf are the nucs from when they are made up until the queens are ready.
func nucsOf(l plan.Ladder, s plan.Size, yard int) span {
	in := l.InNucs(s)
	return span{yard, in.From, in.To, int32(in.Amount)}
}

// work is the keeper's time for a batch, in tenths of minutes.
func work(all []span, minutes int) (sum int64) {
	for _, s := range all {
		if s.good == minutes {
			sum += int64(s.amount)
		}
	}
	return sum
}
