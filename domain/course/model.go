package course

import (
	"math"
	"sync"

	"lidmark/domain/practice"
)

// Model is the course of a queen by the day, made from the keeper's numbers.
// It is a value, quick to make once and shared.
type Model struct {
	numbers practice.Numbers

	starts [waitDays]float64     // by age: she flies from today, of those who did not before
	fit    [flyDays]float64      // by age: what an hour fit to fly is worth to a virgin
	lays   [lagDays]float64      // by days since mating: she begins to lay, of those who have not
	turns  [noneDays]float64     // by state: workers lay, of those who do not; none while open brood is there
	ownOut [cellDays]float64     // days from the loss to the emergence of an own queen, less one
	mated  float64               // a fit hour, rate
	lost   float64               // a fit hour, rate, at a usual yard
	brood  int                   // state: no queen since today, and the brood a laying queen leaves
	dies   float64               // a day, share: a virgin at home
	drones float64               // a day, share: a late virgin turns drone layer
	ends   float64               // a day, share: a laying queen
	late   int                   // age from which virgins turn
	raised float64               // share: a queenless nuc on young brood raises a queen
	saw    sights                // what a look is worth
	weak   *Model                // the days of a nuc of too few bees
	any    func() *[states][]way // what a day does whatever its hours, made once a day is asked for
}

// NewModel is the model of the keeper's numbers.
func NewModel(n practice.Numbers) *Model {
	m := &Model{
		numbers: n, mated: n.Get(practice.MatedPerHour), lost: n.Get(practice.LostPerHour),
		dies: leaves(n.Get(practice.VirginDeaths)), drones: leaves(n.Get(practice.DroneLayerTurns)),
		ends: leaves(n.Get(practice.LayingEnds)), late: n.Days(practice.VirginLate), raised: n.Get(practice.OwnCellsRaised),
		saw: sightsOf(n),
	}
	m.starts = starts(n)
	m.lays = hazards(lag(n.Get(practice.MatingToFirstEgg)))
	m.ownOut = ownOut(n)
	lateAge, spread := n.Get(practice.VirginLate), n.Get(practice.VirginLateSpread)
	for age := range m.fit {
		m.fit[age] = 1 - phi((float64(age)+0.5-lateAge)/spread)
	}
	mean, sd := n.Get(practice.LayingWorkersMean), n.Get(practice.LayingWorkersSpread)
	for day := range bareDays {
		before := phi((float64(day) - mean) / sd)
		m.turns[broodDays+day] = (phi((float64(day)+1-mean)/sd) - before) / max(1-before, hardlyAny)
	}
	m.brood = bare - min(n.Days(practice.WorkerCapped), broodDays)
	weak, loses := *m, n.Get(practice.WeakLoses)
	weak.dies, weak.ends = leaves(n.Get(practice.VirginDeaths)+loses), leaves(n.Get(practice.LayingEnds)+loses)
	weak.raised = 0 // too few to raise one
	m.weak = &weak
	m.any, weak.any = sync.OnceValue(m.anyDay), sync.OnceValue(weak.anyDay)
	return m
}

// leaves is the share that leaves in a day at a rate.
func leaves(rate float64) float64 { return -math.Expm1(-rate) }

// hardlyAny is a share of which no further share is taken.
const hardlyAny = 1e-12

// starts are the hazards of the day from which a virgin flies to mate: normal,
// rounded to whole days, folded into the range in which such flights are seen. A
// share never flies: crippled, or of no will to.
func starts(n practice.Numbers) (h [waitDays]float64) {
	mean, sd := n.Get(practice.FirstMatingFlight), n.Get(practice.FirstMatingFlightSpread)
	first, last := n.Days(practice.FirstMatingFlightFrom), min(n.Days(practice.FirstMatingFlightBy), waitDays-1)
	fly, before := 1-n.Get(practice.NeverFlies), 0.0
	for age := range h {
		by := 0.0
		switch {
		case age >= last:
			by = fly
		case age >= first:
			by = fly * phi((float64(age)+0.5-mean)/sd)
		}
		if h[age] = 1; 1-before > hardlyAny {
			h[age] = (by - before) / (1 - before)
		}
		before = by
	}
	return h
}

// lag is the shares of days from mating to the first egg, moved as the keeper's
// mean differs from the usual one.
func lag(mean float64) (shares [lagDays]float64) {
	base := practice.LagShares()
	by := mean - practice.Of(practice.MatingToFirstEgg).Default
	whole := math.Floor(by)
	for i, s := range base {
		at := i + int(whole)
		shares[min(max(at, 0), lagDays-1)] += s * (1 - (by - whole))
		shares[min(max(at+1, 0), lagDays-1)] += s * (by - whole)
	}
	return shares
}

// hazards turns shares by day into the chance of each day of what is left.
func hazards(shares [lagDays]float64) (h [lagDays]float64) {
	left := 1.0
	for i, s := range shares {
		if h[i] = 1; i < lagDays-1 && left > s {
			h[i] = s / left
		}
		left -= s
	}
	return h
}

// ownOut are the shares of days to the emergence of a queen raised after a
// loss, within the range that is seen; it counts from the day after the loss.
func ownOut(n practice.Numbers) (shares [cellDays]float64) {
	row := practice.Of(practice.OwnQueenEmerges)
	mean, sd := n.Get(practice.OwnQueenEmerges), n.Get(practice.OwnQueenEmergesSpread)
	first, last := int(row.Min), int(row.Max)
	if sd == 0 {
		shares[int(math.Round(mean))-1] = 1
		return shares
	}
	var before float64
	for day := first; day <= last; day++ {
		by := phi((float64(day) + 0.5 - mean) / sd)
		if day == last {
			by = 1
		}
		shares[day-1], before = by-before, by
	}
	return shares
}

// phi is the standard normal distribution function.
func phi(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }
