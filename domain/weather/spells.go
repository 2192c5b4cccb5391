package weather

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Spells are fit hours by how the weeks are in which queens fly: colder than usual, usual, warmer.
type Spells [3]float64

// SpellWeights are how often each of the spells comes. With the places of the spells they
// integrate over a normal distribution, exactly up to polynomials of the fifth degree
// (Gauss-Hermite, Abramowitz & Stegun 25.4.46).
var SpellWeights = Spells{1.0 / 6, 2.0 / 3, 1.0 / 6}

// spellPlaces are where the spells lie, in standard deviations of a spell.
var spellPlaces = Spells{-math.Sqrt(3), 0, math.Sqrt(3)}

// Spells are the hours of a day fit to fly in each kind of spell. Warm and cold days come in
// runs: of how far the days of a month stray from its mean, part is common to all days on which
// the queens of one graft fly. What was seen or foretold, and a day of which nobody knows how
// warm it is usually, is the same in all.
func (y *Yard) Spells(d calendar.Day) Spells {
	y.mu.RLock()
	s, known := y.spells[d]
	y.mu.RUnlock()
	if known {
		return s
	}
	s = y.reckonSpells(d)
	y.mu.Lock()
	y.spells[d] = s
	y.mu.Unlock()
	return s
}

func (y *Yard) reckonSpells(d calendar.Day) (s Spells) {
	f := y.of(d)
	n, ok := book.WeatherNormal{}, false
	switch f.Layer {
	case Typical:
		n, ok = y.normal(d), true
	case Assumed:
		n, ok = y.following(d)
	}
	u, told := y.usualDay(d, n)
	for i, z := range spellPlaces {
		s[i] = f.Hours
		if ok && told {
			common := math.Sqrt(y.inSpell)
			s[i], _ = u.expected(&y.limits, z*common*u.spread, math.Sqrt(1-y.inSpell)*u.spread)
		}
	}
	return s
}

// inSpell is the part of the variance of a day's warmth that is common to the days on which a
// queen flies to mate: the variance of the mean of so many days of which each is as like the day
// before as the keeper's number has it.
func inSpell(n practice.Numbers) float64 {
	like := n.Get(practice.WarmthLasts)
	days := max(1, math.Round(n.Get(practice.VirginLate)-n.Get(practice.FirstMatingFlight)))
	sum := 1.0
	for k := 1.0; k < days; k++ {
		sum += 2 * (1 - k/days) * math.Pow(like, k)
	}
	return sum / days
}
