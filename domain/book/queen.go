package book

import (
	"cmp"
	"iter"
	"slices"
	"time"

	"lidmark/domain/calendar"
)

// Queen is what the book says of a queen: her life line up to now.
type Queen struct {
	QueenDescribed
	Mark      QueenMarked
	Label     string  // the number of her cage
	Where     Subject // the nuc or colony she is in; none: in a cage, handed over or ended
	Since     calendar.Moment
	Caught    calendar.Moment
	From      NucID // the nuc she was last caught from
	FirstEggs calendar.Moment
	Virgin    bool // caged as a virgin and not yet put in
	InCell    bool // caged as a cell: she is out when its batch is
	Emerged   time.Time
	Handed    calendar.Moment
	HandedTo  string
	Order     OrderID
	Ended     calendar.Moment
	How       QueenEnd
	Tests     []QueenTested
}

// InHand tells whether the keeper still has her.
func (q *Queen) InHand() bool { return q.Handed.IsZero() && q.Ended.IsZero() }

// Caged tells whether she sits in a cage: in a bank or in the hand.
func (q *Queen) Caged() bool {
	_, inNuc := q.Where.Nuc()
	return q.InHand() && !inNuc && (q.Virgin || !q.Caught.IsZero())
}

// Queen is the queen of an id.
func (v *View) Queen(id QueenID) *Queen { return v.queens.get(id, v.foldQueen) }

// Queens yields the queens with a record of their own, by line and name.
func (v *View) Queens() iter.Seq[*Queen] {
	all := collect(v, KindQueen, v.Queen)
	slices.SortFunc(all, func(a, b *Queen) int {
		return cmp.Or(cmp.Compare(a.Line, b.Line), compareNames(a.Name, b.Name), a.Queen.compare(b.Queen))
	})
	return slices.Values(all)
}

func (v *View) foldQueen(id QueenID) *Queen {
	q := &Queen{QueenDescribed: QueenDescribed{Queen: id}}
	for _, e := range v.lines(id.Subject()) {
		v.takeOrigin(q, e)
		q.takePlace(e)
		q.takeEnd(e)
	}
	return q
}

// takeOrigin learns who she is: described, caged as a virgin of a batch, or
// caught from a nuc, whose own record says what it had been given.
func (v *View) takeOrigin(q *Queen, e *Entry) {
	switch f := e.Fact.(type) {
	case QueenDescribed:
		if f.Queen == q.Queen {
			q.QueenDescribed = f
		}
	case QueenMarked:
		q.Mark = f
	case QueenTested:
		q.Tests = append(q.Tests, f)
	case VirginCaged:
		q.Label, q.Virgin, q.InCell = f.Label, true, f.Cell
		v.fromBatch(q, f.Batch)
	case QueenCaught:
		q.Label = cmp.Or(f.Label, q.Label)
		v.fromNuc(q, f.Nuc)
	}
}

func (v *View) fromBatch(q *Queen, id BatchID) {
	if id.IsZero() || !q.Batch.IsZero() {
		return
	}
	b := v.Batch(id)
	q.Batch, q.Mother, q.Line = id, b.Mother, b.Line
}

func (v *View) fromNuc(q *Queen, id NucID) {
	for _, c := range v.Nuc(id).Caught {
		if c.Queen != q.Queen {
			continue
		}
		v.fromBatch(q, c.Was.Batch)
		q.FirstEggs, q.Emerged = c.Was.FirstEggs, c.Was.Emerged
		if q.Descent == DescentUnsaid {
			q.Descent = c.Was.Descent
		}
		if q.MatedAt.IsZero() {
			q.MatedAt, q.MatedYear = v.Nuc(id).Yard, c.At.Instant.Year()
		}
	}
}

func (q *Queen) takePlace(e *Entry) {
	switch f := e.Fact.(type) {
	case VirginCaged:
		q.moved(e.At, f.Bank.Subject())
	case VirginPutIn:
		q.moved(e.At, f.Nuc.Subject())
		q.Virgin = false
	case QueenPutIn:
		q.moved(e.At, f.To)
		q.Virgin = false
	case ColonyDescribed:
		q.moved(e.At, f.Colony.Subject())
	case QueenCaught:
		q.moved(e.At, Subject{})
		q.Caught, q.From = e.At, f.Nuc
	case QueenBanked:
		q.moved(e.At, f.Bank.Subject())
	}
}

func (q *Queen) moved(at calendar.Moment, to Subject) { q.Where, q.Since = to, at }

func (q *Queen) takeEnd(e *Entry) {
	switch f := e.Fact.(type) {
	case QueenHandedOver:
		q.Handed, q.HandedTo, q.Order, q.Where = e.At, f.To, f.Order, Subject{}
	case QueenEnded:
		q.Ended, q.How, q.Where = e.At, f.How, Subject{}
	case QueenCaught:
		if f.Culled {
			q.Ended, q.How = e.At, QueenCulled
		}
	}
}
