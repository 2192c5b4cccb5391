package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// matingHours are the hours of some days on which queens can mate in a yard: fit to fly, as
// far as drones are there, in each kind of spell with how often it comes.
type matingHours struct {
	on      []weather.Spells
	weights []float64 // one, where all spells are alike
}

// matingHours are those of the days from one to before another.
func (p *Planner) matingHours(yard book.YardID, from, to calendar.Day) (h matingHours) {
	y, alike := p.course.Weather(yard), true
	for d := from; d < to; d++ {
		drones := p.DronesOn(yard, d)
		var s weather.Spells
		if drones > 0 {
			s = y.Spells(d)
		}
		for i := range s {
			s[i] *= drones
		}
		alike = alike && s[0] == s[1] && s[1] == s[2]
		h.on = append(h.on, s)
	}
	if alike {
		h.weights = []float64{1}
	} else {
		h.weights = weather.SpellWeights[:]
	}
	return h
}

// MatingHours are the hours of a day on which queens can mate in a yard: fit to fly, fewer where drones
// are fewer, and none where none are there.
func (p *Planner) MatingHours(yard book.YardID, d calendar.Day) float64 {
	drones := p.DronesOn(yard, d)
	if drones == 0 {
		return 0
	}
	return drones * p.course.Weather(yard).Hours(d)
}
