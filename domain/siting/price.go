package siting

import "lidmark/domain/practice"

// Prices are what things weigh against each other, in queens.
type Prices struct {
	Lost   float64 // a virgin who ends where a queen is
	Stays  float64 // a virgin who ends at a wrong door and stays there
	Drift  float64 // all workers of a nuc at a wrong door
	Minute float64 // of work
	Carry  float64 // minutes to carry a nuc to another place, however far
	Turn   float64 // minutes to turn a nuc
	Paint  float64 // minutes to mark a front
	Walk   float64 // m walked in a minute
	Rounds float64 // how often the yard is walked round while the layout stands
	Wind   float64 // a front in the wind that nothing shelters
}

// PricesOf takes the prices from a keeper's numbers: a virgin lost is a queen lost,
// and the bees of a nuc are a cup of bees.
func PricesOf(n practice.Numbers) Prices {
	return Prices{
		Lost: 1, Stays: n.Get(practice.VirginStays), Drift: n.Get(practice.PriceCup), Minute: n.Get(practice.WorthMinute),
		Carry: n.Get(practice.MinutesCarryStand), Turn: n.Get(practice.MinutesTurnNuc), Paint: n.Get(practice.MinutesPaintFront),
		Walk: n.Get(practice.LoadedWalk) * secondsAMinute, Rounds: n.Get(practice.LayoutRounds),
		Wind: n.Get(practice.LayoutWind),
	}
}

const secondsAMinute = 60

// metres is what metres on foot cost in queens.
func (p *Prices) metres(m float64) float64 {
	if p.Walk <= 0 {
		return 0
	}
	return m / p.Walk * p.Minute
}
