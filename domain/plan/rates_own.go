package plan

import "lidmark/domain/practice"

// Own are the keeper's numbers with his own rates in them, see [Rates.In].
func (p *Planner) Own() practice.Numbers { return p.rates().In(p.numbers) }

// In are numbers with these rates in place of the shares of the table, for what reads shares
// there and is asked of the keeper's own book. A virgin of some days is taken in so much more
// or less often than the table has it as one under a day old is: the book counts both as one.
func (r Rates) In(n practice.Numbers) practice.Numbers {
	moved := func(l Link) float64 {
		if rate := r.Link[l]; rate.Default > 0 {
			return rate.Mean() / rate.Default
		}
		return 1
	}
	virgin := moved(VirginAccepted)
	for _, s := range [...]struct {
		key practice.Key
		by  float64
	}{
		{practice.Take, moved(Taken)},
		{practice.RipeOfTakes, moved(RipeOfTaken)},
		{practice.EmergedOfCells, moved(EmergedOfRipe)},
		{practice.AcceptCell, moved(EmergedOfRipe) * moved(CellAccepted)},
		{practice.AcceptVirginUnderDay, virgin},
		{practice.AcceptVirginDaysOld, virgin},
		{practice.LayingOfAccepted, moved(LayingOfAccepted)},
		{practice.GoodEnough, moved(GoodOfLaying)},
	} {
		n = scaled(n, s.key, s.by)
	}
	return n
}

// scaled are numbers of which one is so much larger, as far as it may be.
func scaled(n practice.Numbers, k practice.Key, by float64) practice.Numbers {
	if by == 1 {
		return n
	}
	row := practice.Of(k)
	next, err := n.With(k, min(row.Max, max(row.Min, n.Get(k)*by)))
	if err != nil {
		return n // no share is out of its range here
	}
	return next
}
