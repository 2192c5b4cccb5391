package plan_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/demo"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// The share in use between a default and a keeper's own: 9 of 16 mated, default 0.875
// with a weight of 20, is 0.74, not 0.56; after 90 of 160 it is 0.60.
func TestAShareIsFairAndSmall(t *testing.T) {
	for _, c := range []struct{ won, tried, want float64 }{{9, 16, 0.74}, {90, 160, 0.60}, {0, 0, 0.875}} {
		r := plan.Rate{Default: 0.875, Weight: 20, Won: c.won, Tried: c.tried}
		near(t, fmt.Sprint(c.won, " of ", c.tried), r.Mean(), c.want, 0.005)
	}
	if m := (plan.Rate{Default: 0.3}).Mean(); m != 0.3 {
		t.Errorf("a default without weight and counts is %v", m)
	}
	near(t, "raised", plan.Rate{Default: 0.8, Weight: 20}.Raised(0.05).Mean(), 0.85, 1e-12)
	near(t, "raised to the top", plan.Rate{Default: 0.98, Weight: 20}.Raised(0.05).Mean(), 1, 1e-12)
}

// Published, Pérez-Sato & Ratnieks 2006: of cells given 0.70 lead to laying queens,
// with 0.875 mated; of virgins under a day old 0.65.
func TestDefaultsGiveThePublishedShares(t *testing.T) {
	r := plan.DefaultRates(practice.Numbers{})
	cell := r.Link[plan.EmergedOfRipe].Mean() * r.Link[plan.CellAccepted].Mean() * r.Link[plan.LayingOfAccepted].Mean()
	near(t, "cell to laying", cell, 0.70, 1e-9)
	near(t, "virgin to laying", r.Link[plan.VirginAccepted].Mean()*r.Link[plan.LayingOfAccepted].Mean(), 0.65, 0.003)
}

// graft writes a batch with its counts; none where a count is negative.
func graft(pen *booktest.Pen, day string, larvae, taken, capped int) book.BatchID {
	b := booktest.Batch(day)
	pen.At(day + " 18:00").Write(book.Grafted{Batch: b, Larvae: larvae})
	if taken >= 0 {
		pen.Write(book.TakeCounted{Batch: b, Accepted: taken})
	}
	if capped >= 0 {
		pen.Write(book.CappedCounted{Batch: b, Capped: capped})
	}
	return b
}

func counted(t *testing.T, r plan.Rates, l plan.Link, won, tried float64) {
	t.Helper()
	near(t, l.String()+", won", r.Link[l].Won, won, 1e-9)
	near(t, l.String()+", tried", r.Link[l].Tried, tried, 1e-9)
}

// share is what was counted where a batch has luck, and tells of fewer than it had.
func share(t *testing.T, r plan.Rates, l plan.Link, want float64) {
	t.Helper()
	near(t, l.String()+", share", r.Link[l].Won/r.Link[l].Tried, want, 1e-9)
}

// Only counts that belong together count. A graft that failed outright says nothing
// of the take of others.
func TestWhatIsCountedOfTheLarvae(t *testing.T) {
	var pen booktest.Pen
	graft(&pen, "2027-05-01", 40, 30, 28)
	graft(&pen, "2027-05-02", 40, 0, -1)  // failed outright
	graft(&pen, "2027-05-03", 40, -1, 20) // take not counted
	graft(&pen, "2027-05-04", 40, 50, 45) // more taken than grafted
	graft(&pen, "2027-05-05", 40, 20, 25) // more capped than taken
	graft(&pen, "2027-05-06", 40, -1, -1) // nothing counted
	graft(&pen, "2027-05-07", 40, -1, 0)  // nothing came of it
	r := plan.RatesOf(pen.View("2027-06-30 08:00"))
	counted(t, r, plan.GraftWorks, 3, 5)
	counted(t, r, plan.RipeOfTaken, 28, 30) // without luck every cell tells
	share(t, r, plan.Taken, 50.0/80)
	if tells := r.Link[plan.Taken].Tried; tells >= 30 || tells < 10 {
		t.Errorf("80 larvae of two batches tell as much as %v, want fewer than 30", tells)
	}
}

// give makes up a nuc and gives it a cell of a batch.
func give(pen *booktest.Pen, b book.BatchID, nuc string) book.NucID {
	id := booktest.Nuc(nuc)
	pen.At("2027-05-10 18:00").Write(book.NucNamed{Nuc: id, Name: nuc}, book.NucMadeUp{Nuc: id})
	pen.At("2027-05-11 18:00").Write(book.CellGiven{Nuc: id, Batch: b})
	return id
}

// Sixteen were seen as virgins, nine laid: nine of sixteen mated, whatever became of
// their cells. Sixteen batches each tell of one; of one batch they tell less, for they had
// her weather.
func TestNineOfSixteenMated(t *testing.T) {
	one := func(int) string { return "one" }
	early := nineOfSixteen(t, "2027-06-03 08:00", one)
	counted(t, early, plan.LayingOfAccepted, 0, 0) // some may still lay
	alone := nineOfSixteen(t, "2027-06-20 08:00", one)
	apart := nineOfSixteen(t, "2027-06-20 08:00", func(i int) string { return fmt.Sprint(i) })
	counted(t, apart, plan.LayingOfAccepted, 9, 16)
	for _, l := range []plan.Link{plan.EmergedOfRipe, plan.CellAccepted} {
		counted(t, alone, l, 16, 16)
		counted(t, apart, l, 16, 16)
	}
	near(t, "in use", apart.Link[plan.LayingOfAccepted].Mean(), 0.74, 0.005)
	share(t, alone, plan.LayingOfAccepted, 9.0/16)
	near(t, "in use of one batch", alone.Link[plan.LayingOfAccepted].Mean(), 0.81, 0.01)
}

// nineOfSixteen are the rates after sixteen nucs were given a cell, each of a batch.
func nineOfSixteen(t *testing.T, on string, batch func(nuc int) string) plan.Rates {
	t.Helper()
	var pen booktest.Pen
	for i := range 16 {
		b := booktest.Batch(batch(i))
		pen.At("2027-05-01 18:00").Write(book.Grafted{Batch: b, Larvae: 40})
		nuc := give(&pen, b, fmt.Sprint("A", i+1))
		pen.At("2027-05-15 18:00").Write(book.Looked{Nuc: nuc, Queen: book.VirginSeen})
		if i < 9 {
			pen.At("2027-05-27 18:00").Write(book.Looked{Nuc: nuc, Eggs: book.SingleEggs})
		} else {
			pen.At("2027-06-02 18:00").Write(book.Looked{Nuc: nuc, Eggs: book.NoEggs})
		}
	}
	return plan.RatesOf(pen.View(on))
}

// What became of each is taken as far as it was seen; the rest is shared out, or left
// out where the book does not tell.
func TestFates(t *testing.T) {
	var pen booktest.Pen
	b := graft(&pen, "2027-05-01", 40, 30, 28)
	torn, laid, caught, culled := give(&pen, b, "A1"), give(&pen, b, "A2"), give(&pen, b, "A3"), give(&pen, b, "A4")
	unseen, open := give(&pen, b, "A5"), give(&pen, b, "A6")
	give(&pen, b, "A7") // nobody looked
	drones := give(&pen, b, "A8")
	pen.At("2027-05-15 18:00").Write(
		book.Looked{Nuc: torn, Cell: book.CellTornAtSide},
		book.Looked{Nuc: open, Cell: book.CellOpenAtTip},
	)
	for _, nuc := range []book.NucID{laid, caught, culled} {
		pen.At("2027-05-27 18:00").Write(book.Looked{Nuc: nuc, Eggs: book.SingleEggs})
	}
	pen.At("2027-06-02 18:00").Write(
		book.Looked{Nuc: unseen, Eggs: book.NoEggs, OwnCells: book.Said(3)},
		book.Looked{Nuc: open, Eggs: book.NoEggs, OwnCells: book.Said(2)},
		book.Looked{Nuc: drones, DroneBrood: true},
	)
	pen.At("2027-06-10 18:00").Write(
		book.QueenCaught{Nuc: caught, Queen: booktest.Queen("sold")},
		book.QueenCaught{Nuc: culled, Queen: booktest.Queen("small"), Culled: true},
	)
	r := plan.RatesOf(pen.View("2027-06-20 08:00"))
	d := plan.DefaultRates(practice.Numbers{})
	e, a, l := d.Link[plan.EmergedOfRipe].Default, d.Link[plan.CellAccepted].Default, d.Link[plan.LayingOfAccepted].Default
	// lost unseen: in shares of the three ways to be lost
	all := 1 - e*a*l
	inCell, inNuc := (1-e)/all, e*(1-a)/all
	// lost after she walked: of the two ways that are left
	refused := (1 - a) / (1 - a*l)
	counted(t, r, plan.EmergedOfRipe, 3+1+1+(1-inCell), 7)
	counted(t, r, plan.CellAccepted, 3+1+(1-refused)+(1-inCell-inNuc), 3+1+1+(1-inCell))
	share(t, r, plan.LayingOfAccepted, 3/(3+1+(1-refused)+(1-inCell-inNuc)))
	counted(t, r, plan.GoodOfLaying, 1, 2)
}

// A virgin given is counted as one, and eggs whose mother is in doubt are not.
func TestVirginsAndDoubt(t *testing.T) {
	var pen booktest.Pen
	b := graft(&pen, "2027-05-01", 40, 30, 28)
	laid, doubt, again := booktest.Nuc("B1"), booktest.Nuc("B2"), booktest.Nuc("B3")
	for i, nuc := range []book.NucID{laid, doubt, again} {
		pen.At("2027-05-12 18:00").Write(book.NucNamed{Nuc: nuc, Name: fmt.Sprint("B", i+1)}, book.NucMadeUp{Nuc: nuc, Open: float64(i % 2)})
		pen.At("2027-05-13 18:00").Write(book.VirginPutIn{Nuc: nuc, Batch: b})
	}
	pen.At("2027-05-20 18:00").Write(book.Looked{Nuc: again, Queen: book.NoneSeen, Eggs: book.NoEggs})
	pen.At("2027-05-21 18:00").Write(book.CellGiven{Nuc: again, Batch: booktest.Batch("later")})
	pen.At("2027-05-27 18:00").Write(book.Looked{Nuc: laid, Eggs: book.SingleEggs})
	pen.At("2027-06-20 18:00").Write(book.Looked{Nuc: doubt, Eggs: book.SingleEggs})
	r := plan.RatesOf(pen.View("2027-06-25 08:00"))
	d := plan.DefaultRates(practice.Numbers{})
	a, l := d.Link[plan.VirginAccepted].Default, d.Link[plan.LayingOfAccepted].Default
	refused := (1 - a) / (1 - a*l)
	counted(t, r, plan.VirginAccepted, 1+1-refused, 2)
	share(t, r, plan.LayingOfAccepted, 1/(1+1-refused))
	counted(t, r, plan.CellAccepted, 0, 0)
}

// In a whole season nothing is won that was not tried.
func TestRatesOfASeason(t *testing.T) {
	today := day(t, "2027-06-20")
	r := plan.RatesOf(book.NewSeason(nil, demo.Season(today, time.UTC)).At(today.At(20, 0, time.UTC)))
	for l := range r.Link {
		k := r.Link[l]
		if k.Won < 0 || k.Won > k.Tried+1e-9 {
			t.Errorf("%s: %v of %v", plan.Link(l), k.Won, k.Tried)
		}
	}
	if r.Link[plan.Taken].Tried == 0 || r.Link[plan.LayingOfAccepted].Tried == 0 {
		t.Errorf("a season tells nothing of take or mating: %+v", r.Link)
	}
}

// A look without eggs tells of a lost mating only at an age at which nine in ten lay: 15 days by
// the numbers, of a cell from when it is out, two days after it is given. Who looks sooner sees
// no less of her queens for it.
func TestAnEarlyLookLosesNoQueen(t *testing.T) {
	for _, c := range []struct {
		looked string
		tried  float64
	}{{"2027-05-25 18:00", 0}, {"2027-05-28 12:00", 0}, {"2027-05-29 08:00", 1}} {
		var pen booktest.Pen
		b := graft(&pen, "2027-05-01", 40, 30, 28)
		nuc := give(&pen, b, "A1")
		pen.At("2027-05-15 18:00").Write(book.Looked{Nuc: nuc, Queen: book.VirginSeen})
		pen.At(c.looked).Write(book.Looked{Nuc: nuc, Eggs: book.NoEggs})
		counted(t, plan.RatesOf(pen.View("2027-06-20 08:00")), plan.LayingOfAccepted, 0, c.tried)
	}
}
