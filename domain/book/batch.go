package book

import (
	"cmp"
	"iter"
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Batch is what the book says of a batch.
type Batch struct {
	Grafted
	At       calendar.Moment // the hour of the graft
	Taken    Count           // grafts accepted by the builder
	Capped   Count
	Ripe     Count
	Culled   int
	Given    []Gift // cells and virgins that went into nucs, of each one a nuc and day
	Caged    []QueenID
	Out      int // virgins emerged outside nucs
	Dead     int // cells found dead
	Lost     int // cells dropped or crushed
	Along    int // cells taken along to a yard, less those brought back or caged there
	Finisher ColonyID
	Moved    calendar.Moment // when the cells last moved
	Incubate bool            // in the incubator now
	Log      []bee.Reading
	Signs    []bee.Evidence
	Walking  calendar.Moment // when a virgin was first seen out; zero: not yet

	before int // cells gone when the ripe ones were counted
}

// Count is something counted once, and when.
type Count struct {
	N  int
	At calendar.Moment
}

// Counted tells whether anybody counted.
func (c Count) Counted() bool { return !c.At.IsZero() }

// Gift is a cell or virgin of a batch put into a nuc.
type Gift struct {
	At     calendar.Moment
	Nuc    NucID
	Virgin bool
}

// Batch is the batch of an id.
func (v *View) Batch(id BatchID) *Batch { return v.batches.get(id, v.foldBatch) }

// Batches yields the grafted batches by the hour of the graft.
func (v *View) Batches() iter.Seq[*Batch] {
	all := slices.DeleteFunc(collect(v, KindBatch, v.Batch), func(b *Batch) bool { return b.At.IsZero() })
	slices.SortFunc(all, func(a, b *Batch) int {
		return cmp.Or(a.At.Instant.Compare(b.At.Instant), cmp.Compare(a.Number, b.Number), a.Batch.compare(b.Batch))
	})
	return slices.Values(all)
}

// BatchNumbered is the last grafted batch of a number.
func (v *View) BatchNumbered(number int) (found *Batch) {
	for b := range v.Batches() {
		if b.Number == number {
			found = b
		}
	}
	return found
}

// Cells is how many cells there were to place: the capped ones if they were
// counted, else the accepted ones, else the larvae.
func (b *Batch) Cells() int {
	switch {
	case b.Capped.Counted():
		return b.Capped.N
	case b.Taken.Counted():
		return b.Taken.N
	default:
		return b.Larvae
	}
}

// Uncounted tells whether nobody counted more of it than its larvae.
func (b *Batch) Uncounted() bool {
	return !b.Taken.Counted() && !b.Capped.Counted() && !b.Ripe.Counted()
}

// Left is how many cells are still together where they ripen: not given, caged,
// culled, out, dead or dropped, nor on the way.
func (b *Batch) Left() int { return b.Unplaced() - b.OnTheWay() }

// OnTheWay is how many cells were taken along to a yard and not yet given, caged,
// dropped or brought back. A count of the ripe ones settles them.
func (b *Batch) OnTheWay() int { return min(b.Unplaced(), max(0, b.Along-b.placed())) }

// Unplaced is how many cells are left or on the way to a yard: those that can
// still be given, and of which a virgin will walk.
func (b *Batch) Unplaced() int {
	if b.Ripe.Counted() {
		return max(0, b.Ripe.N-(b.gone()-b.before))
	}
	return max(0, b.Cells()-b.gone())
}

// Living is how many of its cells are not known to be lost: together, on the way,
// in nucs, caged or out. Culled, dead and dropped ones are lost.
func (b *Batch) Living() int {
	n := b.Unplaced() + len(b.Caged) + b.Out
	for _, g := range b.Given {
		if !g.Virgin {
			n++
		}
	}
	return n
}

// gone counts the cells that can no longer be given, each once.
func (b *Batch) gone() int { return b.Culled + b.Out + b.Dead + len(b.Caged) + b.placed() }

// placed counts the cells that went into nucs or were dropped on the way.
func (b *Batch) placed() int {
	n := b.Lost
	for _, g := range b.Given {
		if !g.Virgin {
			n++
		}
	}
	return n
}

// Bee is the batch as its clock sees it, for n cells still together.
func (b *Batch) Bee(n int) bee.Batch {
	return bee.Batch{
		Graft:    b.At.Instant,
		LarvaAge: time.Duration(b.LarvaAge * float64(time.Hour)),
		Cells:    n,
		Log:      b.Log,
		Seen:     b.Signs,
	}
}

func (v *View) foldBatch(id BatchID) *Batch {
	begin := Batch{Grafted: Grafted{Batch: id}}
	return v.season.folded.batches.get(id, v.giftsOnce(v.lines(id.Subject())), practice.Numbers{}, begin)
}

func (b *Batch) again() Batch {
	next := *b
	next.Given, next.Caged = slices.Clip(b.Given), slices.Clip(b.Caged)
	next.Log, next.Signs = slices.Clip(b.Log), slices.Clip(b.Signs)
	return next
}

func (b *Batch) take(e *Entry) {
	b.takeClock(e)
	b.takeCells(e)
}

func (b *Batch) takeClock(e *Entry) {
	switch f := e.Fact.(type) {
	case Grafted:
		b.Grafted, b.At = f, e.At
	case CellsMoved:
		b.Moved, b.Finisher, b.Incubate = e.At, f.To, f.To.IsZero()
	case IncubatorRead:
		b.Log = append(b.Log, bee.Reading{At: e.At.Instant, Celsius: f.Celsius})
	case ClockSeen:
		b.sign(e, f.Sign)
	case CappedCounted:
		b.Capped = Count{f.Capped, e.At}
	case RipeCounted:
		b.Ripe = Count{f.Ripe, e.At}
		b.Along = b.placed() // what nobody accounts for is settled
		b.before = b.gone()
	case TakeCounted:
		b.Taken = Count{f.Accepted, e.At}
	}
}

func (b *Batch) sign(e *Entry, s ClockSign) {
	sign := map[ClockSign]bee.Sign{SeenCapped: bee.SeenCapped, SeenTipBare: bee.TipBare, SeenWalking: bee.OneOut}[s]
	if sign == 0 {
		return
	}
	b.Signs = append(b.Signs, bee.Evidence{At: e.At.Instant, Sign: sign})
	if s == SeenWalking && b.Walking.IsZero() {
		b.Walking = e.At
	}
}

func (b *Batch) takeCells(e *Entry) {
	switch f := e.Fact.(type) {
	case CellsCulled:
		b.Culled += f.Cells
	case CellGiven:
		b.Given = append(b.Given, Gift{e.At, f.Nuc, false})
	case VirginPutIn:
		b.Given = append(b.Given, Gift{e.At, f.Nuc, true})
	case VirginCaged:
		if f.Cell && b.OnTheWay() > 0 {
			b.Along-- // those in the hand are caged
		}
		b.Caged = append(b.Caged, f.Queen)
	case EmergedCounted:
		b.Out += f.Out
		b.Dead += f.Dead
		if f.Out > 0 && b.Walking.IsZero() {
			b.Walking = e.At
		}
	case Dropped:
		if f.What == Cells {
			b.Lost += f.Count
		}
	case TakenAlong:
		if f.What == Cells {
			b.Along += f.Count
		}
	case BroughtBack:
		if f.What == Cells {
			b.Along -= f.Count
		}
	}
}
