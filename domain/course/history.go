package course

import (
	"encoding/binary"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// An event is one thing done to a nuc or seen of it, as far as its course
// depends on it. It is taken in at the start of its row: the day at whose start
// it counts, see [asked.rowOf].
type event struct {
	row   calendar.Day
	day   calendar.Day // on which it was
	at    calendar.Moment
	do    deed
	young bool       // young brood is there, or the larvae are young enough for new cells
	age   int        // of a virgin, in days
	out   *emergence // of a cell
	sight Sight
	bees  bees
}

type deed uint8

const (
	queenless deed = iota + 1 // made up, or its queen taken or gone
	cellGiven
	virginPutIn
	queenPutIn
	broodGiven
	brokenDown
	looked
)

// rowOf is the row of an instant: its day, or the next once a day's flights are
// flown.
func (a asked) rowOf(t time.Time) calendar.Day {
	d := a.day(t)
	if at := t.In(a.zone); float64(at.Hour())+float64(at.Minute())/60 >= a.numbers.Get(practice.FlightsFlown) {
		d++
	}
	return d
}

// reading gathers the events of a nuc's present life.
type reading struct {
	asked
	open, capped calendar.Day // brood of another queen was last there; 0: none
	lost         calendar.Day // when the present life began without a queen; 0, long past: it did not
	weak         bool         // too few bees were seen, and none given since
	laid         bool         // a queen was seen laying in it
	given        gift         // last
	events       []event
}

// events are those of the nuc's present life, in order, from the last that says
// for certain what it holds.
func (a asked) events() []event {
	lines := a.view.LinesSince(a.nuc.Nuc.Subject(), a.nuc.MadeUp.Instant)
	r := reading{asked: a, events: make([]event, 0, len(lines))}
	for _, e := range lines {
		r.take(e)
	}
	return r.events
}

func (r *reading) take(e *book.Entry) {
	at := event{row: r.rowOf(e.At.Instant), day: r.day(e.At.Instant), at: e.At}
	switch f := e.Fact.(type) {
	case book.NucMadeUp:
		r.brood(e, f.Open > 0, f.Capped > 0)
		at.young, r.weak = f.Open > 0, false
		r.anew(at)
	case book.BroodGiven:
		if f.To == r.nuc.Nuc.Subject() {
			r.brood(e, f.Open > 0, f.Capped > 0)
			at.do, at.young, at.sight.Silent = broodGiven, f.Open > 0, true
			r.add(at)
		}
	case book.CellGiven:
		at.do, at.out = cellGiven, r.emerging(f.Batch, at)
		r.give(at, f.Batch)
	case book.VirginPutIn:
		at.do, at.age = virginPutIn, r.virginAge(f, at)
		r.give(at, f.Batch)
	case book.QueenPutIn:
		if f.To == r.nuc.Nuc.Subject() {
			at.do, r.laid = queenPutIn, true
			r.add(at)
		}
	case book.BeesAdded:
		if at.bees = manyBees; r.tell(at.bees) {
			r.add(at)
		}
	case book.QueenCaught, book.QueenGone:
		at.young = r.laid || r.youngAt(at.row)
		if r.laid {
			r.brood(e, true, true)
		}
		_, gone := e.Fact.(book.QueenGone)
		gift, given := r.gift()
		r.anew(at)
		if gone && given && r.answers(e, gift) {
			r.add(gift)
		}
	default:
		r.takeSight(e, at)
	}
}

// gift is the last event, if something was given.
func (r *reading) gift() (e event, ok bool) {
	if n := len(r.events); n > 0 {
		e = r.events[n-1]
	}
	return e, e.do == cellGiven || e.do == virginPutIn || e.do == queenPutIn
}

// answers tells whether a queen who is told as gone is she who was there before
// a gift, not the gift: it was told with it, or it asked where she was.
func (r *reading) answers(gone *book.Entry, gift event) bool {
	asked := func(g book.Gap) bool { return g.At == gift.at }
	return gift.at == gone.At || slices.ContainsFunc(r.nuc.Gaps, asked)
}

func (r *reading) takeSight(e *book.Entry, at event) {
	switch f := e.Fact.(type) {
	case book.Looked:
		at.do, at.sight, at.bees = looked, r.hers(Saw(f), at.row), r.beesOf(f.Sides)
		r.laid = r.laid || at.sight.Eggs == book.SingleEggs || at.sight.Larvae || at.sight.Capped == Some
		if f.Cell == book.CellTornAtSide {
			r.given = gift{}
		}
		if news := r.tell(at.bees); news || !at.sight.Empty() {
			r.add(at)
		}
	case book.OwnCellsBroken:
		r.broken(at, said(f.Found))
	case book.WildCellsSearched:
		r.broken(at, said(book.Said(float64(f.Found))))
	case book.ShakenOut, book.NucLost:
		r.events = nil
	case book.United:
		if f.Nuc == r.nuc.Nuc {
			r.events = nil
		}
	}
}

// anew begins with a nuc that has no queen for certain: what was before is over.
func (r *reading) anew(e event) {
	e.do, r.lost, r.laid, r.given = queenless, e.row, false, gift{}
	if e.bees = beesUnsaid; r.weak {
		e.bees = fewBees
	}
	r.events = append(r.events[:0], e)
}

func (r *reading) add(e event) { r.events = append(r.events, e) }

// gift is a cell or a virgin of a batch on a day.
type gift struct {
	do    deed
	batch book.BatchID
	day   calendar.Day
}

// give adds a gift, once a day: two writers may write down what happened once.
func (r *reading) give(e event, of book.BatchID) {
	if g := (gift{e.do, of, e.day}); g != r.given {
		r.given, e.sight.Silent = g, true
		r.add(e)
	}
}

func (r *reading) broken(at event, found Said) {
	at.do, at.sight = brokenDown, Sight{OwnCells: found, Young: r.cellsMayStand(r.day(at.at.Instant))}
	at.young = at.row < r.lost+r.days(practice.BreakDownOwnCellsFrom)
	r.add(at)
}

func (r *reading) brood(e *book.Entry, open, capped bool) {
	if open {
		r.open = r.day(e.At.Instant)
	}
	if open || capped {
		r.capped = r.day(e.At.Instant)
	}
}

// youngAt tells whether another queen's larvae are young enough for own cells.
func (r *reading) youngAt(d calendar.Day) bool {
	return r.open != 0 && d <= r.open+r.days(practice.WorkerHatches)+r.days(practice.OwnCellsOnLarvaeUnder)
}

// hers leaves out what a look saw that may be another queen's brood.
func (r *reading) hers(s Sight, d calendar.Day) Sight {
	if r.open != 0 && d <= r.open+1+r.days(practice.WorkerHatches) && s.Eggs != book.ManyEggs {
		s.Eggs = book.EggsUnsaid
	}
	if r.open != 0 && d <= r.open+1+r.days(practice.WorkerCapped) {
		s.Larvae = false
	}
	if r.capped != 0 && d <= r.capped+1+r.days(practice.WorkerEmerges) {
		s.Capped = NotSaid
	}
	s.Young = r.cellsMayStand(d)
	s.Silent = s.Eggs == book.EggsUnsaid && !s.Larvae
	return s
}

// cellsMayStand tells whether own cells begun on brood left lately may still stand.
func (r *reading) cellsMayStand(d calendar.Day) bool {
	return r.open != 0 && d <= r.open+r.days(practice.OwnQueenEmerges)
}

// virginAge is the age of a virgin at the start of an event's row, to the nearest day.
func (r *reading) virginAge(f book.VirginPutIn, at event) int {
	out := f.Emerged
	if out.IsZero() && !f.Queen.IsZero() {
		out = r.view.Queen(f.Queen).Emerged
	}
	if out.IsZero() {
		batch := f.Batch
		if batch.IsZero() && !f.Queen.IsZero() {
			batch = r.view.Queen(f.Queen).Batch
		}
		out = r.Emerges(batch)
	}
	if out.IsZero() || out.After(at.at.Instant) {
		out = at.at.Instant
	}
	return max(0, int(math.Round(r.start(at.row).Sub(out).Hours()/24)))
}

// key is everything an event says, for telling equal histories apart from others.
func (e event) key(k []byte) []byte {
	k = binary.AppendVarint(k, int64(e.row))
	s := e.sight
	flag := func(b bool, bit byte) byte {
		if b {
			return bit
		}
		return 0
	}
	k = append(k, byte(e.do), flag(e.young, 1)|flag(s.Larvae, 2)|flag(s.Drones, 4)|flag(s.Thorough, 8)|flag(s.Quick, 16)|flag(e.row > e.day, 32)|flag(s.Young, 64)|flag(s.Silent, 128),
		byte(e.bees), byte(s.Queen), byte(s.Eggs), byte(s.Capped), byte(s.OwnCells), byte(s.Cell))
	k = binary.AppendVarint(k, int64(e.age))
	if e.do == cellGiven {
		k = binary.AppendVarint(k, e.out.number)
	}
	return k
}
