package rules_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// acts are the acts of a day's route by what they are about.
func acts(v *book.View) map[book.Subject][]rules.Act {
	all := map[book.Subject][]rules.Act{}
	for _, s := range rules.Day(v, v.Today()).Stops {
		for _, task := range s.Tasks {
			for _, of := range task.Of {
				all[of] = append(all[of], task.Act)
			}
		}
	}
	return all
}

// packed is how much of a thing is packed, and its note.
func packed(v *book.View, goods string) (float64, string) {
	for _, k := range rules.Day(v, v.Today()).Kit {
		if strings.HasPrefix(k.Goods, goods) {
			return k.Amount, k.Note
		}
	}
	return 0, ""
}

// TestCellsOnTheWayAreForTheNucsOfTheDay: what was taken along and is in no nuc
// yet is theirs, that day; what is dropped or brought back is not.
func TestCellsOnTheWayAreForTheNucsOfTheDay(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 3))
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: batch(4), Capped: 3})
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2")...).Write(book.BatchReadied{Batch: batch(4), Step: book.NucsReady})
	gives := func(at string) (n int) {
		v := p.View(at)
		for _, name := range []string{"A1", "A2"} {
			if slices.Contains(acts(v)[booktest.Nuc(name).Subject()], rules.ActGiveCell) {
				n++
			}
		}
		if ripe, _ := packed(v, "ripe cell"); ripe != float64(n) {
			t.Errorf("%s: %g ripe cells packed for %d nucs", at, ripe, n)
		}
		return n
	}
	before := gives("2027-05-15 07:00")
	p.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 3})
	if after := gives("2027-05-15 19:00"); before != 2 || after != 2 {
		t.Errorf("cells for %d nucs before, %d once taken along; want 2", before, after)
	}
	if found := of(p.View("2027-05-15 19:00"), rules.CellsOut); len(found) != 1 || found[0].Do != "Place 3 cells of batch 4, on the way: into nucs or cages" {
		t.Errorf("they are in the car and must be out: %+v", found)
	}
	p.At("2027-05-15 09:00").Write(book.Dropped{What: book.Cells, Batch: batch(4), Count: 2})
	if after := gives("2027-05-15 19:00"); after != 1 {
		t.Errorf("two of three dropped: cells for %d nucs", after)
	}
	if after := gives("2027-05-16 09:00"); after != 1 {
		t.Errorf("what was taken along the day before is at hand for %d nucs", after)
	}
	p.At("2027-05-15 21:00").Write(book.RipeCounted{Batch: batch(4), Ripe: 0})
	if after := gives("2027-05-16 09:00"); after != 0 {
		t.Errorf("none by the count, and at hand for %d nucs", after)
	}
}

// TestCellsAtHomeBesideThoseOnTheWay: the nucs that get what is on the way are not
// ready for what is left at home.
func TestCellsAtHomeBesideThoseOnTheWay(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 5))
	p.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: batch(4), Capped: 5})
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2")...).Write(book.BatchReadied{Batch: batch(4), Step: book.NucsReady})
	p.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 2})
	v := p.View("2027-05-15 12:00")
	if cages, _ := packed(v, "cages for cells"); cages != 3 {
		t.Errorf("%g cages, want one for each cell at home", cages)
	}
	if found := of(v, rules.NobodyReady); len(found) != 1 || found[0].Amount != 3 {
		t.Errorf("%+v, want 3 cells without a nuc", found)
	}
}

// TestAReducerANuc: a nuc that is weak and in a robbed yard has one entrance.
func TestAReducerANuc(t *testing.T) {
	p := pen(t)
	p.At("2027-05-01 18:00").Write(madeUp("A1", "A2", "A3")...)
	p.At("2027-05-02 17:00").Write(look("A2", book.Looked{Sides: book.Said(3)}), look("A3", book.Looked{Sides: book.Said(3)}))
	p.At("2027-05-02 18:00").Write(book.Robbed{Nuc: a1})
	v := p.View("2027-05-02 18:30")
	lines, nucs := 0, map[book.Subject]bool{}
	for of, all := range acts(v) {
		for _, a := range all {
			if a == rules.ActNarrowEntrance {
				lines, nucs[of] = lines+1, true
			}
		}
	}
	if n, _ := packed(v, "entrance reducer"); n != float64(len(nucs)) || lines == len(nucs) {
		t.Errorf("%g reducers for %d nucs in %d lines", n, len(nucs), lines)
	}
}

// TestADayIsPastWhenItIsOver: nothing that is due on a day is past due on its
// evening, but what is due by an hour.
func TestADayIsPastWhenItIsOver(t *testing.T) {
	v := robbedWithWork(t).View("2027-06-02 21:00")
	for _, f := range rules.Findings(v) {
		if !f.Hard && f.PastDue(v.On()) && calendar.DayOf(f.By, v.Zone()) == v.Today() {
			t.Errorf("%s is past due on its own evening, by %v", f.Rule, f.By)
		}
	}
}

// TestNucsWrittenTwice: a look and a cell of each are one nuc, and all are named.
func TestNucsWrittenTwice(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-05-19 18:00").Write(look("A2", book.Looked{Sides: book.Said(3)}), book.CellGiven{Nuc: booktest.Nuc("A2")}, look("A1", book.Looked{Sides: book.Said(3)}))
	jon := &booktest.Pen{Zone: p.Zone, Writer: "Jon"}
	jon.At("2027-05-19 18:00").Write(look("A2", book.Looked{Sides: book.Said(4)}), book.CellGiven{Nuc: booktest.Nuc("A2")}, look("A1", book.Looked{Sides: book.Said(4)}))
	p.Entries = append(p.Entries, jon.Entries...)
	found := of(p.View("2027-05-19 21:00"), rules.Twice)
	want := []book.Subject{a1.Subject(), booktest.Nuc("A2").Subject()}
	if len(found) != 1 || found[0].What != "2 nucs written twice" || !slices.Equal(found[0].Subjects(), want) {
		t.Errorf("%+v, want A1 and A2", found)
	}
}

// TestUncountedCellsAreExpected: 24 grafted and not counted are about 18, by take
// and ripe of takes; counted they are what was counted.
func TestUncountedCellsAreExpected(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 24))
	v := p.View("2027-05-14 19:00")
	cells, note := packed(v, "ripe cells")
	if f := of(v, rules.CellsOut); f[0].Do != "Count the take first, then collect about 18 ripe cells of batch 4: into nucs or cages" || cells != 18 || !strings.Contains(note, "about") {
		t.Errorf("%q, %g cells (%s)", f[0].Do, cells, note)
	}
	minutes := func(v *book.View) float64 { return rules.Day(v, v.Today()).Minutes }
	about := minutes(v)
	p.At("2027-05-14 18:00").Write(book.TakeCounted{Batch: batch(4), Accepted: 20})
	v = p.View("2027-05-14 19:00")
	if f := of(v, rules.CellsOut); f[0].Do != "Collect 20 ripe cells of batch 4: into nucs or cages" || minutes(v) <= about {
		t.Errorf("counted: %q, %g min, before %g", f[0].Do, minutes(v), about)
	}
}

// TestAShutEntranceIsOpenedAgain: at dusk of its day, by the next morning, to the
// hour; it is a line of the route.
func TestAShutEntranceIsOpenedAgain(t *testing.T) {
	for _, row := range []struct{ shut, from, by string }{
		{"2027-05-15 12:00", "2027-05-15 20:00", "2027-05-16 08:00"},
		{"2027-05-15 22:00", "2027-05-15 22:00", "2027-05-16 08:00"},
		{"2027-05-15 07:00", "2027-05-15 20:00", "2027-05-16 07:00"},
	} {
		p := pen(t)
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		p.At(row.shut).Write(book.EntranceSet{Nuc: a1})
		v := p.View("2027-05-15 22:30")
		found := of(v, rules.ShutIn)
		if len(found) != 1 || !found[0].Hard || !found[0].From.Equal(instant(t, row.from)) || !found[0].By.Equal(instant(t, row.by)) {
			t.Errorf("shut %s: %+v, want from %s by %s", row.shut, found, row.from, row.by)
		}
		if !slices.Contains(acts(v)[a1.Subject()], rules.ActOpenEntrance) {
			t.Errorf("shut %s: no line of the route opens it", row.shut)
		}
	}
}

// TestCellsPutOffAreNotGiven: who puts the cells of a batch off puts off giving
// them, until that day.
func TestCellsPutOffAreNotGiven(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 2))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2")...)
	p.At("2027-05-14 08:00")
	was := rules.Judge(p.View("2027-05-14 09:00"))
	p.Write(book.PutOff{Rule: string(rules.CellsOut), Of: batch(4).Subject(), Until: calendar.Date(2027, time.May, 15)})
	v := p.View("2027-05-14 09:00")
	for _, f := range was.Again(v).Findings() {
		if f.Act == rules.ActGiveCell && f.PutOff.IsZero() {
			t.Errorf("put off with its batch, and still to be given: %+v", f)
		}
	}
	if !slices.Contains(acts(p.View("2027-05-15 09:00"))[a1.Subject()], rules.ActGiveCell) {
		t.Error("on that day no cell is given")
	}
}
