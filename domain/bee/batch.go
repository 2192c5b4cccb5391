package bee

import (
	"math"
	"time"

	"lidmark/domain/practice"
)

// Batch is what is known of the cells of one graft that are still together.
type Batch struct {
	Graft    time.Time     // the instant of the graft
	LarvaAge time.Duration // age of the larvae since hatching; zero: the keeper's usual
	Cells    int           // cells left; below one counts as one
	Log      []Reading     // warmth of the incubator, in the order of time
	Seen     []Evidence    // what was seen of these cells, in the order of time
}

// Reading is one temperature of the air around the cells, in °C. Between two
// readings the warmth runs straight from one to the other; before the first
// and after the last nothing is known, and the clock runs as in a brood nest.
type Reading struct {
	At      time.Time
	Celsius float64
}

// Evidence is one thing seen of a batch.
type Evidence struct {
	At   time.Time
	Sign Sign
}

// Sign is what a look at the cells of a batch can tell about its clock.
type Sign int

// The signs. SeenCapped and SeenOpen speak of the cells as a whole, TipBare
// of one of them: the bees have stripped the wax from its tip. NoneOut says
// that no virgin has walked; OneOut that one has (a cell no longer counted
// in Batch.Cells) and that those left have not.
const (
	SeenOpen Sign = iota + 1
	SeenCapped
	TipBare
	NoneOut
	OneOut
)

// String gives the sign in plain words.
func (s Sign) String() string {
	switch s {
	case SeenOpen:
		return "cells still open"
	case SeenCapped:
		return "cells capped"
	case TipBare:
		return "tip bare"
	case NoneOut:
		return "none out"
	case OneOut:
		return "one out"
	}
	return ""
}

// eggAge is the age at the graft, counted from the egg, in hours.
func (b Batch) eggAge(n practice.Numbers) float64 {
	hatched := n.Get(practice.QueenHatches)
	if b.LarvaAge > 0 {
		return hatched + b.LarvaAge.Hours()
	}
	return hatched + n.Get(practice.LarvaAgeAtGraft)
}

// since is the time from the graft to t in hours.
func (b Batch) since(t time.Time) float64 { return t.Sub(b.Graft).Hours() }

// lookBefore is the hour of the last look before t at which the cells left
// were not out, or −∞.
func (b Batch) lookBefore(t time.Time) float64 {
	last := math.Inf(-1)
	for _, e := range b.Seen {
		if (e.Sign == NoneOut || e.Sign == OneOut) && e.At.Before(t) {
			last = max(last, b.since(e.At))
		}
	}
	return last
}
