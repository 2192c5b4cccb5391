package course

import (
	"cmp"
	"slices"
)

// Chances are what a nuc may hold in the keeper's words, in shares that sum to
// one. The queen who was given and one of the nuc's own raising stand apart.
type Chances struct {
	Cell          float64 `json:"cell"`
	Virgin        float64 `json:"virgin"`
	Mated         float64 `json:"mated"` // mated, not laying yet
	Laying        float64 `json:"laying"`
	OwnCell       float64 `json:"ownCell"`
	OwnVirgin     float64 `json:"ownVirgin"`
	OwnMated      float64 `json:"ownMated"`
	OwnLaying     float64 `json:"ownLaying"`
	DroneLayer    float64 `json:"droneLayer"`
	LayingWorkers float64 `json:"layingWorkers"`
	None          float64 `json:"none"` // no queen and no cell
}

// Chances sums the belief up.
func (b *Belief) Chances() Chances {
	return Chances{
		Cell: b.sum(given.cell, cellDays), Virgin: b.virgin(given), Mated: b.sum(given.mated, lagDays), Laying: b.sum(given.lays, layDays),
		OwnCell: b.sum(own.cell, cellDays), OwnVirgin: b.virgin(own), OwnMated: b.sum(own.mated, lagDays), OwnLaying: b.sum(own.lays, layDays),
		DroneLayer: b.sum(drone, droneDays), LayingWorkers: b.sum(workers, workerDays), None: b.sum(none, noneDays),
	}
}

func (b *Belief) virgin(l line) float64 { return b.sum(l.waits, waitDays+flyDays) }

// Lays is the chance of a laying queen, given or own.
func (c Chances) Lays() float64 { return c.Laying + c.OwnLaying }

// Late is the chance of a queen who is mated or may still mate, given or own,
// and does not lay yet.
func (c Chances) Late() float64 { return c.Virgin + c.Mated + c.OwnVirgin + c.OwnMated }

// Queenless is the chance that there is no queen and none to come.
func (c Chances) Queenless() float64 { return c.None + c.LayingWorkers }

// Sum is the sum of all, one but for rounding.
func (c Chances) Sum() float64 {
	return c.Cell + c.Virgin + c.Mated + c.Laying + c.OwnCell + c.OwnVirgin + c.OwnMated + c.OwnLaying + c.DroneLayer + c.LayingWorkers + c.None
}

// Sure is the chance that a laying queen is the one who was given, not one of
// the nuc's own; 1 when nobody lays.
func (c Chances) Sure() float64 {
	if lays := c.Lays(); lays > 0 {
		return c.Laying / lays
	}
	return 1
}

// LaysFor is the chance of a queen who has laid for so many days or more, up
// to thirty.
func (b *Belief) LaysFor(days int) float64 {
	days = min(max(days, 0), layDays-1)
	return b.sum(given.lays+days, layDays-days) + b.sum(own.lays+days, layDays-days)
}

// Named is a chance by what it is of.
type Named struct {
	Name   string
	Chance float64
}

// Told are the chances that are not small, the greatest first: what a keeper
// would tell of a nuc.
func (c Chances) Told() (told []Named) {
	for _, n := range []Named{
		{"laying", c.Lays()},
		{"not laying yet", c.Mated + c.OwnMated + c.Virgin},
		{"cell", c.Cell},
		{"own virgin or cell", c.OwnCell + c.OwnVirgin},
		{"no queen", c.None},
		{"drone layer", c.DroneLayer},
		{"laying workers", c.LayingWorkers},
	} {
		if n.Chance >= small {
			told = append(told, n)
		}
	}
	slices.SortStableFunc(told, func(a, b Named) int { return cmp.Compare(b.Chance, a.Chance) })
	return told
}

// small is the chance under which a thing is not spoken of.
const small = 0.02
