package strength

import (
	"math"

	"lidmark/domain/practice"
)

// brood are worker cells by the days after which their bees emerge: those of
// place 0 emerge today. Workers emerge 24 days after the egg at most, whatever
// the keeper sets.
type brood struct {
	cells [25]float64
	all   float64 // cells in all
}

// lay puts cells in whose bees emerge in so many days.
func (b *brood) lay(cells float64, in int) {
	if cells > 0 {
		b.cells[min(in, len(b.cells)-1)] += cells
		b.all += cells
	}
}

// spread puts cells in whose bees emerge evenly over the days from one to before
// another.
func (b *brood) spread(cells float64, from, to int) {
	for d := from; d < to; d++ {
		b.lay(cells/float64(to-from), d)
	}
}

// uncap takes out all cells whose bees emerge before so many days have gone by:
// the capped ones.
func (b *brood) uncap(days int) {
	for d := range min(days, len(b.cells)) {
		b.all -= b.cells[d]
		b.cells[d] = 0
	}
	b.all = max(0, b.all)
}

// starve takes out open brood, which emerges in so many days or more, beyond the
// cells that can be fed.
func (b *brood) starve(fed float64, from int) {
	if b.all <= fed {
		return
	}
	open := 0.0
	for _, c := range b.cells[min(from, len(b.cells)):] {
		open += c
	}
	if open <= 0 {
		return
	}
	left := max(0, open-(b.all-fed)) / open
	for d := from; d < len(b.cells); d++ {
		b.cells[d] *= left
	}
	b.all -= open * (1 - left)
}

// day lets a day pass and gives the cells of which bees emerge in it.
func (b *brood) day() float64 {
	if b.all <= 0 {
		return 0
	}
	now := b.cells[0]
	copy(b.cells[:], b.cells[1:])
	b.cells[len(b.cells)-1] = 0
	b.all = max(0, b.all-now)
	return now
}

// rearing is how brood goes, as the keeper's numbers have it.
type rearing struct {
	lays, perBee          float64 // eggs a day; cells a bee
	perDm2, ofComb        float64 // cells on a side; share of it that brood fills
	emerges               float64 // share of capped brood
	laidAhead, cappedOver int     // days from the egg, and from capping, to the bee
}

func rearingOf(n practice.Numbers) rearing {
	return rearing{
		lays: n.Get(practice.QueenLays), perBee: n.Get(practice.BroodPerBee),
		perDm2: n.Get(practice.CellsPerSide), ofComb: n.Get(practice.BroodShareOfComb),
		emerges:    n.Get(practice.CappedEmergence),
		laidAhead:  int(math.Ceil(n.Duration(practice.WorkerEmerges).Hours() / 24)),
		cappedOver: int(math.Ceil(n.Get(practice.CappedEmergesOver))),
	}
}

// eggs is what a queen lays in a day: her rate, as far as the cells that are not
// taken allow. Those are so many as the comb has, and as the bees can feed and
// keep warm: bees fewer than the night needs rear less in the same share.
func (r *rearing) eggs(b *brood, comb, bees, need float64) float64 {
	return min(r.lays, max(0, min(comb, r.reared(bees, need))-b.all))
}

// reared are the cells that bees can feed and keep warm.
func (r *rearing) reared(bees, need float64) float64 {
	return bees * r.perBee * min(1, bees/max(need, 1))
}
