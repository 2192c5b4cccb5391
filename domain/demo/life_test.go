package demo_test

import (
	"fmt"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

const aDay = 24 * time.Hour

// life follows one nuc through its entries and keeps what a keeper would
// laugh at.
type life struct {
	season
	name    string
	lives   bool
	queen   bool // reigns, or may
	mated   bool // seen laying
	brood   bool // seen capped since she was given
	emerged time.Time
	lost    time.Time // when the last queen was taken
	faults  []string
}

func (l *life) fault(e book.Entry, format string, args ...any) {
	l.faults = append(l.faults, fmt.Sprintf("%s, %s, %s: ", l.name, e.At.In(l.zone), book.KindOfFact(e.Fact))+fmt.Sprintf(format, args...))
}

// walks is when the cells of a batch walk, by the timetable of queens.
func (l *life) walks(id book.BatchID) time.Time {
	b := l.Batch(id)
	t := bee.Times(bee.Queen, l.Numbers())
	return b.At.Instant.Add(t.Emerged - t.Hatched - time.Duration(b.LarvaAge*float64(time.Hour)))
}

func (l *life) take(e book.Entry) {
	if !l.lives && isOfTheLiving(e.Fact) {
		l.fault(e, "the nuc is empty")
	}
	switch f := e.Fact.(type) {
	case book.NucMadeUp:
		l.lives, l.queen, l.lost = true, false, e.At.Instant
	case book.NucLost, book.ShakenOut:
		l.lives, l.queen = false, false
	case book.United:
		if l.Nuc(f.Nuc).Name == l.name {
			l.lives, l.queen = false, false
		}
	case book.CellGiven:
		l.given(e, f)
	case book.VirginPutIn:
		l.putIn(e, f)
	case book.QueenCaught:
		l.caught(e)
	case book.Looked:
		l.looked(e, f)
	}
}

func isOfTheLiving(f book.Fact) bool {
	switch f.(type) {
	case book.CellGiven, book.VirginPutIn, book.QueenCaught, book.Looked, book.Fed, book.BeesAdded, book.BroodGiven,
		book.OwnCellsBroken, book.Robbed, book.QueenMarked, book.NucLost, book.ShakenOut:
		return true
	default:
		return false
	}
}

func (l *life) given(e book.Entry, f book.CellGiven) {
	walks := l.walks(f.Batch)
	age := e.At.Instant.Sub(l.Batch(f.Batch).At.Instant)
	if age < 9*aDay || !e.At.Instant.Before(walks) {
		l.fault(e, "the cell is %.1f days old", age.Hours()/24)
	}
	if e.At.Instant.Sub(l.lost) < 6*time.Hour {
		l.fault(e, "queenless only since %v", l.lost)
	}
	if l.mated && l.name != wantedGap {
		l.fault(e, "a queen lays there")
	}
	l.queen, l.mated, l.brood, l.emerged = true, false, false, walks
}

func (l *life) putIn(e book.Entry, f book.VirginPutIn) {
	age := e.At.Instant.Sub(f.Emerged)
	if f.Emerged.IsZero() || age < 0 || age > 7*aDay {
		l.fault(e, "the virgin is %.1f days old", age.Hours()/24)
	}
	l.queen, l.mated, l.brood, l.emerged = true, false, false, f.Emerged
}

func (l *life) caught(e book.Entry) {
	switch age := e.At.Instant.Sub(l.emerged); {
	case !l.queen:
		l.fault(e, "no queen is there")
	case !l.brood:
		l.fault(e, "nobody has seen capped brood of hers")
	case age < l.Numbers().Duration(practice.LeastAgeAtHandOver):
		l.fault(e, "she is %.1f days old", age.Hours()/24)
	}
	l.queen, l.mated, l.lost = false, false, e.At.Instant
}

func (l *life) looked(e book.Entry, f book.Looked) {
	age := e.At.Instant.Sub(l.emerged)
	switch {
	case f.Cell == book.CellOpenAtTip, f.Cell == book.CellTornAtSide:
		if age < 0 || age > 4*aDay {
			l.fault(e, "%v, %.1f days after she walked", f.Cell, age.Hours()/24)
		}
		l.queen = f.Cell == book.CellOpenAtTip
	case f.Eggs == book.SingleEggs:
		if !l.queen || age < 10*aDay {
			l.fault(e, "eggs at %.1f days", age.Hours()/24)
		}
		l.mated = true
	}
	if f.Queen == book.VirginSeen && (!l.queen || l.mated) {
		l.fault(e, "no virgin can be there")
	}
	if f.Queen == book.QueenSeen && !l.mated && !f.DroneBrood {
		l.fault(e, "no queen can be there")
	}
	if f.Brood.Some() && f.Eggs == book.SingleEggs {
		if age < (9+9)*aDay {
			l.fault(e, "capped brood of hers at %.1f days", age.Hours()/24)
		}
		l.brood = true
	}
	l.measures(e, f)
}

// measures: no more bees, food and brood than there is room for.
func (l *life) measures(e book.Entry, f book.Looked) {
	n := l.Nuc(f.Nuc)
	sides, said := f.Sides.Get()
	if !said || sides < 1 || sides > float64(n.Sides) {
		l.fault(e, "bees on %v sides of %d", sides, n.Sides)
	}
	if stores := f.Stores.Or(0); stores < 0 || stores > 3 {
		l.fault(e, "stores %v", stores)
	}
	if room := float64(n.Sides) * n.Side; f.Brood.Or(0) > room/2 {
		l.fault(e, "%v palms of brood in %v dm² of comb", f.Brood.Or(0), room)
	}
}

func TestEveryNucLivesAsBeesDo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		entries := 0
		for n := range s.Nucs() {
			l := life{season: s, name: n.Name}
			for e := range s.Lines(n.Nuc.Subject()) {
				l.take(e)
				entries++
			}
			for _, f := range l.faults {
				t.Error(f)
			}
		}
		if entries == 0 {
			t.Fatal("no nuc has entries")
		}
	})
}

// TestTheKeeperKeepsClearOfFlights: no look inside while a virgin may fly.
func TestTheKeeperKeepsClearOfFlights(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	from, until := s.Numbers().Get(practice.QuietHoursFrom), s.Numbers().Get(practice.QuietHoursUntil)
	looks := 0
	for e := range s.All() {
		if _, ok := e.Fact.(book.Looked); !ok {
			continue
		}
		looks++
		if h := float64(e.At.Instant.In(s.zone).Hour()); from <= h && h < until {
			t.Errorf("a look at %s", e.At.In(s.zone))
		}
	}
	if looks < 150 {
		t.Errorf("only %d looks", looks)
	}
}
