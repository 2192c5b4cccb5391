package handover

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// plan says of every order that misses queens how many are to be expected in time of those
// who stand in nucs, and what is planned for it. A batch that serves several orders gives them
// its queens in their order: one that is grafted those of whom nobody knows more as surely as
// it was planned, one that is planned those that it is meant to.
func (s *Sheet) plan(p *plan.Planner) {
	batches := plannedBatches(p)
	for i := range s.Orders {
		o := &s.Orders[i]
		if o.Short == 0 {
			continue
		}
		o.Coming = s.inTime(i, s.supply(p, i, nil), p.View().Numbers().Get(practice.NextSure))
		s.fromCells(p, i, batches)
		last := o.lastGraft(p.View().Numbers())
		for b := range batches {
			if b := &batches[b]; b.left == nil && b.grafted <= last && b.serves(o) {
				o.Planned += b.take(o.Missing())
			}
		}
	}
}

// fromCells says how many queens an order is given by its batches that are grafted, of whom nobody
// knows more than that: so many more than are to be expected from nucs as are ready by its day as
// surely as [sureOf] has it, after what the orders before it are told of the same. Those that were grafted for
// nobody can make it surer, never less sure: where more orders want them than they are enough for, it
// has its own.
func (s *Sheet) fromCells(p *plan.Planner, i int, batches []plannedBatch) {
	o := &s.Orders[i]
	n := s.countedOf(p, i, batches)
	if own := ownOf(batches); len(own) < len(batches) {
		n = max(n, s.countedOf(p, i, own))
	}
	n = min(n, o.Short) - o.Coming
	for b := range batches {
		if b := &batches[b]; n > 0 && b.left != nil && b.serves(o) {
			took := b.take(n)
			o.cells, n = o.cells+took, n-took
		}
	}
	o.Planned += o.cells
}

// countedOf is how many queens nucs and the cells of some batches give an order by its day, after what the
// orders before it are told of the same; 0 where none of them serves it.
func (s *Sheet) countedOf(p *plan.Planner, i int, batches []plannedBatch) int {
	o := &s.Orders[i]
	left := cellsFor(batches, o)
	if len(left) == 0 {
		return 0
	}
	before := 0
	for _, b := range s.Orders[:i] {
		switch {
		case waitsWith(batches, &b, o):
			before += b.Coming + b.cells
		case shares(b.Order, o.Order):
			before += b.Coming
		}
	}
	return most(before+o.Short, s.supply(p, i, left), o.Order, o.Catch, sureOf(p, o.Catch, left...)) - before
}

// ownOf are those of some batches that are for somebody.
func ownOf(batches []plannedBatch) []plannedBatch {
	return slices.DeleteFunc(slices.Clone(batches), func(b plannedBatch) bool { return b.free })
}

// graft says until when to graft what an order misses and is not planned, and whether it
// cannot be kept any more.
func (s *Served) graft(p *plan.Planner) {
	missing := s.Missing()
	if missing > 0 && s.lastGraft(p.View().Numbers()) > p.View().Today() {
		s.GraftBy = p.GraftBy(plan.Wish{Queens: missing, By: s.On})
	}
	s.Lost = missing > 0 && s.GraftBy.Day == 0
}

// lastGraft is the last day of a graft that can be in time for an order, by the calendar alone.
func (s Served) lastGraft(n practice.Numbers) calendar.Day { return s.On - FromGraft(n) }

// FromGraft is how many days after its graft a queen can be handed over at the soonest, by
// the calendar.
func FromGraft(n practice.Numbers) calendar.Day {
	return calendar.Day(n.Days(practice.GraftToEmerge) + n.Days(practice.LeastAgeAtHandOver))
}

// evenly is the least chance with which queens of a batch are counted on once something of it is
// counted, however unsure it was planned: more likely than not. Common practice, no source.
const evenly = 0.5

// sureOf is the chance with which the queens of grafted batches are counted on for a day: that with
// which nucs are, or that with which they were planned, if it is less. So an order falls
// short when it is known that a batch gives less than was planned, and not before.
func sureOf(p *plan.Planner, by calendar.Day, of ...plan.Left) float64 {
	sure, counted := p.View().Numbers().Get(practice.NextSure), false
	for _, l := range of {
		counted = counted || l.Batch.Taken.Counted() || l.Batch.Capped.Counted() || l.Batch.Ripe.Counted()
		if len(l.Plan.Orders) > 0 { // else nobody said how many it is to give to orders
			sure = min(sure, p.AsPlanned(l, meant(l.Plan.BatchPlanned), by))
		}
	}
	if !counted {
		return sure
	}
	return max(evenly, sure)
}

// supply are the queens who may come for an order: those in nucs, who wait to be ready among them,
// and those of cells of its batches that are still to be given.
func (s *Sheet) supply(p *plan.Planner, i int, cells []plan.Left) []coming {
	return withCells(slices.Concat(s.comings(p), s.waiting(s.Orders[i], p.View())), p, cells)
}

// cellsFor is what the grafted batches for an order have left.
func cellsFor(batches []plannedBatch, o *Served) (left []plan.Left) {
	for _, b := range batches {
		if b.left != nil && b.serves(o) {
			left = append(left, *b.left)
		}
	}
	return left
}

// waitsWith tells whether two orders wait for one grafted batch.
func waitsWith(batches []plannedBatch, o, of *Served) bool {
	return slices.ContainsFunc(batches, func(b plannedBatch) bool { return b.left != nil && b.serves(o) && b.serves(of) })
}

// plannedBatch is a batch with the queens that it is meant to give to orders.
type plannedBatch struct {
	grafted calendar.Day
	queens  int
	orders  []book.OrderID
	left    *plan.Left // what it can still give; nil: it is not grafted
	free    bool       // grafted for nobody: it serves whatever order takes its line
}

func (b *plannedBatch) serves(o *Served) bool { return slices.Contains(b.orders, o.Order.Order) }

// take takes as many of its queens as there are, of so many.
func (b *plannedBatch) take(n int) int {
	n = min(n, b.queens)
	b.queens -= n
	return n
}

// plannedBatches are those planned and not overdue on the day that is looked ahead from, and those grafted with
// cells that are still to be given or nucs that nobody looked at since: of the others their nucs tell. Those
// grafted for nobody come last: an order has its own before it has theirs.
func plannedBatches(p *plan.Planner) (all []plannedBatch) {
	v := p.View()
	for b := range v.ToGraft() {
		all = append(all, plannedBatch{grafted: v.GraftOn(b), queens: meant(b.BatchPlanned), orders: v.Awaiting(b.BatchPlanned)})
	}
	var free []plannedBatch
	for b := range v.Batches() {
		l, forNobody := p.Unplanned(b)
		day := b.At.Day(v.Zone())
		switch was := l.Plan.BatchPlanned; {
		case l.Nucs+len(l.Unseen) == 0, forNobody && l.Nucs == 0:
		case forNobody:
			free = append(free, plannedBatch{day, l.Nucs + len(l.Unseen), Takers(v, b.Line), &l, true})
		case len(was.Orders) > 0:
			was.Line = cmp.Or(b.Line, was.Line)
			all = append(all, plannedBatch{day, meant(was), v.Awaiting(was), &l, false})
		}
	}
	return append(all, free...)
}

// Takers are the open orders that take queens of a line.
func Takers(v *book.View, line string) (all []book.OrderID) {
	for o := range v.Orders() {
		if o.Open() > 0 && o.Takes(line) {
			all = append(all, o.Order)
		}
	}
	return all
}

// meant are the queens that a batch was planned for, or as many as it has nucs.
func meant(b book.BatchPlanned) int {
	if b.Queens > 0 {
		return b.Queens
	}
	return b.Nucs
}
