package plan

import (
	"math"

	"lidmark/domain/practice"
)

// Rate is a keeper's share at one link: what is known of it, and how far the share
// of one batch strays from it.
//
// The share itself is uncertain as a beta is: the default counts as Weight trials,
// what the book tells is added to it. An infinite Weight takes the default as known.
type Rate struct {
	Default    float64 // the share while nothing is counted, 0 to 1
	Weight     float64 // how many trials the default counts for; +Inf: it is known
	Won, Tried float64 // what the book tells, in trials without luck: those of one batch share hers and tell less than their number
	Luck       float64 // standard deviation of the share between batches, 0 to 0.5; 0: all have the same. The default, moved by how far the book's batches stray
}

// Mean is the share in use: the default, moved by what was counted.
func (r Rate) Mean() float64 {
	switch {
	case math.IsInf(r.Weight, 1), r.Tried == 0:
		return r.Default
	default:
		return (r.Default*r.Weight + r.Won) / (r.Weight + r.Tried)
	}
}

// Known is the rate as if its mean were the keeper's rate for sure.
func (r Rate) Known() Rate { return Rate{Default: r.Mean(), Weight: math.Inf(1), Luck: r.Luck} }

// Raised is the rate with its mean so much higher, at most 1, and as well known.
func (r Rate) Raised(by float64) Rate {
	return Rate{Default: min(1, r.Mean()+by), Weight: r.Weight + r.Tried, Luck: r.Luck}
}

// Rates are the keeper's rates, and what is given and counted. Its zero value is
// of no use: see [RatesOf] and [DefaultRates].
type Rates struct {
	Link    [linkCount]Rate // of Grafted, Placed and InTime there is none
	Virgins bool            // virgins are given, not ripe cells
	Laying  bool            // every laying queen counts, not only those good enough to hand over

	kept thinned // what links do, while one wish is answered; nil: nothing is kept
}

// DefaultRates are the rates of a keeper whose book tells nothing yet.
//
// The published acceptance of a cell, 0.70 to laying over 0.875 mated, is counted
// from the cell on: it has her emergence in it. So of those emerged a larger share
// is accepted, and both together are the number of the table.
func DefaultRates(n practice.Numbers) Rates {
	rate := func(share float64) Rate { return Rate{Default: share, Weight: n.Get(practice.PriorWeight)} }
	lucky := func(k practice.Key) Rate {
		r := rate(n.Get(k))
		r.Luck = n.Get(practice.BatchLuck)
		return r
	}
	return Rates{Link: [linkCount]Rate{
		GraftWorks:       rate(1 - n.Get(practice.GraftFails)),
		Taken:            lucky(practice.Take),
		RipeOfTaken:      rate(n.Get(practice.RipeOfTakes)),
		EmergedOfRipe:    rate(n.Get(practice.EmergedOfCells)),
		CellAccepted:     rate(min(1, n.Get(practice.AcceptCell)/n.Get(practice.EmergedOfCells))),
		VirginAccepted:   rate(n.Get(practice.AcceptVirginUnderDay)),
		LayingOfAccepted: lucky(practice.LayingOfAccepted),
		GoodOfLaying:     rate(n.Get(practice.GoodEnough)),
	}}
}

// Known are the rates as if the keeper's own were known for sure: only luck and
// chance are left.
func (r Rates) Known() Rates {
	for i := range r.Link {
		r.Link[i] = r.Link[i].Known()
	}
	return r
}

// before are the links from the take to the nuc, after those from the nuc on.
func (r Rates) before() []Link {
	if r.Virgins {
		return []Link{Taken, RipeOfTaken, EmergedOfRipe}
	}
	return []Link{Taken, RipeOfTaken}
}

func (r Rates) after() []Link {
	all := []Link{EmergedOfRipe, CellAccepted, LayingOfAccepted, GoodOfLaying}
	if r.Virgins {
		all = []Link{VirginAccepted, LayingOfAccepted, GoodOfLaying}
	}
	if r.Laying {
		all = all[:len(all)-1]
	}
	return all
}

// Takes are the accepted grafts to be expected of so many larvae where the graft does not
// fail outright: one that fails wants no finisher.
func (r Rates) Takes(larvae int) float64 { return float64(larvae) * r.Link[Taken].Mean() }

// Ripe are the ripe cells to be expected of so many larvae, of the same grafts.
func (r Rates) Ripe(larvae int) float64 { return r.Takes(larvae) * r.Link[RipeOfTaken].Mean() }
