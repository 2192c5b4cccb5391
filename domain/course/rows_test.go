package course_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// TestADayEndsWithItsFlights: from 14:00 a nuc is told as the next day begins, or
// from the keeper's own hour.
func TestADayEndsWithItsFlights(t *testing.T) {
	early := book.NumberChanged{Number: practice.FlightsFlown.String(), Value: 12.5}
	for _, c := range []struct {
		at   string
		set  []book.Fact
		want calendar.Day
	}{
		{"2027-05-14 13:59", nil, calendar.Date(2027, 5, 14)},
		{"2027-05-14 14:00", nil, calendar.Date(2027, 5, 15)},
		{"2027-05-14 12:29", []book.Fact{early}, calendar.Date(2027, 5, 14)},
		{"2027-05-14 12:30", []book.Fact{early}, calendar.Date(2027, 5, 15)},
	} {
		p := pen(t)
		p.At("2027-05-13 20:00").Write(c.set...)
		v := p.View(c.at)
		if got := course.New(v).Held(v.Nuc(a1)).Row; got != c.want {
			t.Errorf("at %s: the start of %v, want of %v", c.at, got, c.want)
		}
	}
}

// TestBroodOfAnotherQueen: a nuc made up on 13 May with brood. What may still be of
// the queen who laid it says nothing of one of the nuc's own, and a day later it
// does: eggs hatch after 3 d, larvae are capped after 9 d, capped brood emerges after
// 21 d, and a day is added for the day they were laid on. Many eggs a cell are
// never hers.
func TestBroodOfAnotherQueen(t *testing.T) {
	eggs, many := book.Looked{Nuc: a1, Eggs: book.SingleEggs}, book.Looked{Nuc: a1, Eggs: book.ManyEggs}
	larvae, capped := book.Looked{Nuc: a1, Larvae: true}, book.Looked{Nuc: a1, Brood: book.Said(1)}
	for _, c := range []struct {
		name    string
		madeUp  book.NucMadeUp
		look    book.Looked
		on      string
		counted bool
	}{
		{"eggs", book.NucMadeUp{Open: 1}, eggs, "2027-05-17", false},
		{"eggs a day later", book.NucMadeUp{Open: 1}, eggs, "2027-05-18", true},
		{"eggs where only capped brood was", book.NucMadeUp{Capped: 1}, eggs, "2027-05-17", true},
		{"many eggs", book.NucMadeUp{Open: 1}, many, "2027-05-15", true},
		{"larvae", book.NucMadeUp{Open: 1}, larvae, "2027-05-23", false},
		{"larvae a day later", book.NucMadeUp{Open: 1}, larvae, "2027-05-24", true},
		{"capped brood", book.NucMadeUp{Capped: 1}, capped, "2027-06-04", false},
		{"capped brood a day later", book.NucMadeUp{Capped: 1}, capped, "2027-06-05", true},
		{"capped brood of open", book.NucMadeUp{Open: 1}, capped, "2027-06-04", false},
		{"capped brood of bees alone", book.NucMadeUp{}, capped, "2027-05-15", true},
	} {
		p := pen(t)
		c.madeUp.Nuc, c.madeUp.Cups = a1, 3
		p.At("2027-05-13 18:00").Write(c.madeUp)
		p.At(c.on + " 09:00").Write(c.look)
		v := p.View(c.on + " 12:00")
		if got := course.New(v).Held(v.Nuc(a1)).Weighed; len(got) == 1 != c.counted {
			t.Errorf("%s: %+v, want it counted: %v", c.name, got, c.counted)
		}
	}
}

// TestALayingQueenLeavesYoungBrood: where a look saw that she laid, her loss lets
// the bees raise one of their own.
func TestALayingQueenLeavesYoungBrood(t *testing.T) {
	for name, c := range map[string]struct {
		look book.Looked
		want float64
	}{
		"eggs":         {book.Looked{Eggs: book.SingleEggs}, 0.7},
		"larvae":       {book.Looked{Larvae: true}, 0.7},
		"capped brood": {book.Looked{Brood: book.Said(2)}, 0.7},
		"no eggs":      {book.Looked{Eggs: book.NoEggs}, 0},
		"many eggs":    {book.Looked{Eggs: book.ManyEggs}, 0},
		"queen":        {book.Looked{Queen: book.QueenSeen}, 0},
	} {
		p := pen(t)
		celled(p)
		c.look.Nuc = a1
		p.At("2027-06-10 09:00").Write(c.look)
		p.At("2027-06-11 09:00").Write(book.QueenCaught{Nuc: a1})
		v := p.View("2027-06-11 12:00")
		near(t, name+", own cells", course.New(v).Held(v.Nuc(a1)).Chances().OwnCell, c.want)
	}
}

// TestWhenACellEmerges by its batch, grafted on 5 May, or by none.
func TestWhenACellEmerges(t *testing.T) {
	p := pen(t)
	p.At("2027-05-17 10:00").Write(book.ClockSeen{Batch: batch, Sign: book.SeenWalking})
	v := p.View("2027-05-17 12:00")
	c := course.New(v)
	at := func(moment string) time.Time {
		when, err := time.ParseInLocation("2006-01-02 15:04", moment, p.Zone)
		if err != nil {
			t.Fatal(err)
		}
		return when
	}
	row := calendar.Date(2027, 5, 17)
	before, with, after := c.Emerging(yard, batch, at("2027-05-17 09:59"), row), c.Emerging(yard, batch, at("2027-05-17 10:00"), row), c.Emerging(yard, batch, at("2027-05-17 10:01"), row)
	if !(with[0] > before[0]+0.01 && with[0] < after[0]+0.01 && with[0] > after[0]-0.01) {
		t.Errorf("out today: given before the first virgin was seen %g, with her %g, after her %g", before[0], with[0], after[0])
	}
	far := c.Emerging(yard, batch, at("2027-04-25 10:00"), calendar.Date(2027, 4, 25))
	var sum float64
	for _, share := range far {
		sum += share
	}
	near(t, "of cells weeks off, all", sum, 1)
	near(t, "of cells weeks off, those of the last day and beyond", far[len(far)-1], 1)
	for moment, want := range map[string]course.Emerging{"2027-05-17 10:00": {0, 0.25, 0.5, 0.25}, "2027-05-17 18:00": {0.25, 0.5, 0.25}} {
		when := at(moment)
		row := calendar.Date(2027, 5, 17)
		if when.Hour() == 18 {
			row++
		}
		if got := c.Emerging(yard, book.BatchID{}, when, row); got != want {
			t.Errorf("a ripe cell of no batch, given %s: %v, want %v", moment, got, want)
		}
	}
}

// looksThatDiffer are looks of which each differs from the first in one thing.
func looksThatDiffer() []book.Looked {
	differ := []func(*book.Looked){
		func(*book.Looked) {},
		func(l *book.Looked) { l.Queen = book.NoneSeen },
		func(l *book.Looked) { l.Queen = book.VirginSeen },
		func(l *book.Looked) { l.Eggs = book.SingleEggs },
		func(l *book.Looked) { l.Eggs = book.ManyEggs },
		func(l *book.Looked) { l.Eggs = book.EggsUnsaid },
		func(l *book.Looked) { l.Eggs, l.Larvae = book.EggsUnsaid, true },
		func(l *book.Looked) { l.Brood = book.Said(0) },
		func(l *book.Looked) { l.Brood = book.Said(2) },
		func(l *book.Looked) { l.DroneBrood = true },
		func(l *book.Looked) { l.OwnCells = book.Said(0) },
		func(l *book.Looked) { l.OwnCells = book.Said(2) },
		func(l *book.Looked) { l.Cell = book.CellShut },
		func(l *book.Looked) { l.Cell = book.CellOpenAtTip },
		func(l *book.Looked) { l.Cell = book.CellTornAtSide },
		func(l *book.Looked) { l.Thorough = true },
		func(l *book.Looked) { l.Quick = true },
	}
	var all []book.Looked
	for _, d := range differ {
		l := book.Looked{Queen: book.QueenSeen, Eggs: book.NoEggs}
		d(&l)
		all = append(all, l)
	}
	return all
}

// TestMemoryTellsLooksApart: nucs of one history but for one word of a look are
// told apart by a course that was asked of all of them.
func TestMemoryTellsLooksApart(t *testing.T) {
	p := pen(t)
	var nucs []book.NucID
	for i, l := range looksThatDiffer() {
		n := booktest.Nuc(string(rune('a' + i)))
		nucs = append(nucs, n)
		l.Nuc = n
		p.At("2027-05-13 18:00").Write(book.NucNamed{Nuc: n, Name: n.String()}, book.NucPlaced{Nuc: n, Yard: yard}, book.NucMadeUp{Nuc: n, Cups: 3})
		p.At("2027-05-15 10:00").Write(book.CellGiven{Nuc: n, Batch: batch})
		p.At("2027-06-10 09:00").Write(l)
	}
	v := p.View("2027-06-11 12:00")
	c := course.New(v)
	seen := map[course.Chances]book.NucID{}
	for _, n := range nucs {
		got, want := c.Held(v.Nuc(n)).Chances(), course.New(v).Held(v.Nuc(n)).Chances()
		if got != want {
			t.Errorf("after %+v: %+v, asked alone %+v", v.Nuc(n).Looks, got, want)
		}
		if other, twice := seen[want]; twice {
			t.Errorf("%+v and %+v leave the same", v.Nuc(n).Looks, v.Nuc(other).Looks)
		}
		seen[want] = n
	}
}

// TestMemoryKnowsWhenBroodWasLeft: of two nucs with the same deeds the one whose
// brood was left a day sooner can have no more own cells of it on the last day of
// the other.
func TestMemoryKnowsWhenBroodWasLeft(t *testing.T) {
	p := pen(t)
	sooner, later := booktest.Nuc("B1"), booktest.Nuc("B2")
	for _, n := range []book.NucID{sooner, later} {
		p.At("2027-05-13 08:00").Write(book.NucNamed{Nuc: n, Name: n.String()}, book.NucPlaced{Nuc: n, Yard: yard})
	}
	p.At("2027-05-13 18:00").Write(book.NucMadeUp{Nuc: sooner, Cups: 3, Open: 1})
	p.At("2027-05-14 18:00").Write(book.QueenGone{Nuc: sooner}, book.NucMadeUp{Nuc: later, Cups: 3, Open: 1})
	for _, n := range []book.NucID{sooner, later} {
		p.At("2027-05-24 10:00").Write(book.CellGiven{Nuc: n})
		p.At("2027-05-26 09:00").Write(book.Looked{Nuc: n, OwnCells: book.Said(2)})
	}
	v := p.View("2027-05-26 12:00")
	c := course.New(v)
	one, other := c.Held(v.Nuc(sooner)), c.Held(v.Nuc(later))
	if one.Weighed[0].Sight.Young || !other.Weighed[0].Sight.Young || one.Chances() == other.Chances() {
		t.Errorf("left on the 13th %+v, on the 14th %+v", one.Weighed, other.Weighed)
	}
}
