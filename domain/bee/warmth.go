package bee

import (
	"lidmark/domain/practice"
)

// Speed gives how fast a capped queen grows at a temperature in °C, 1 at the
// warmth the timetable is given for. It is the length of the capped phase
// there over its length at celsius, which grows by a fixed number of hours
// for each degree below; so a whole phase spent at 32 °C lasts just the 27 h
// longer that were measured (Chuda-Mickiewicz & Samborski 2015). Only two
// temperatures are published: outside 32 to 35 °C the nearer end is used.
func Speed(celsius float64, n practice.Numbers) float64 {
	phase := n.Get(practice.QueenEmerges) - n.Get(practice.QueenCapped)
	held := min(max(celsius, n.Get(practice.WarmthLeast)), n.Get(practice.WarmthMost))
	below := n.Get(practice.BroodWarmth) - held
	return phase / (phase + below*n.Get(practice.HoursPerDegree))
}

// emergence is the hour from the graft at which a cell of the stated age
// emerges, with the part of the capped phase that the log covers run at the
// speed its warmth allows.
func (b Batch) emergence(n practice.Numbers) float64 {
	age := b.eggAge(n)
	capped := n.Get(practice.QueenCapped) - age
	end := n.Get(practice.QueenEmerges) - age
	for i := 1; i < len(b.Log); i++ {
		from, to := b.since(b.Log[i-1].At), b.since(b.Log[i].At)
		from = max(from, capped)
		if to <= from || from >= end {
			continue
		}
		speed := (Speed(b.Log[i-1].Celsius, n) + Speed(b.Log[i].Celsius, n)) / 2
		// Either the stretch ends first, or the queen is out before it does.
		end += min(to-from, (end-from)/speed) * (1 - speed)
	}
	return end
}
