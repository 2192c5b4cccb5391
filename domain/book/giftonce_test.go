package book_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// countsOf are all that is summed of the cells of a batch.
func countsOf(v *book.View) string {
	b := v.Batch(booktest.Batch("4"))
	return fmt.Sprint(len(b.Given), b.Left(), b.Unplaced(), b.Along, b.Lost, len(b.Bee(b.Left()).Log), b.Bee(b.Left()).Cells)
}

// TestTwinsCountOnce: of an evening typed by two, 12 nucs twice, 45 cells were
// given and 12 of 60 are together still, before the twins are struck and after.
func TestTwinsCountOnce(t *testing.T) {
	p := &booktest.Pen{Writer: "Ida"}
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 60})
	p.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: booktest.Batch("4"), Count: 48})
	jon := &booktest.Pen{Writer: "Jon"}
	for i := range 45 {
		cell := book.CellGiven{Nuc: booktest.Nuc(fmt.Sprint(i)), Batch: booktest.Batch("4")}
		p.At("2027-05-15 09:00").Write(cell)
		if i < 12 {
			jon.At("2027-05-15 19:00").Write(cell)
		}
	}
	p.Write(book.Dropped{What: book.Cells, Batch: booktest.Batch("4"), Count: 2})
	p.Entries = append(p.Entries, jon.Entries...)
	b := p.View("2027-05-15 21:00").Batch(booktest.Batch("4"))
	if len(b.Given) != 45 || b.Left() != 12 {
		t.Errorf("%d given, %d left; want 45 and 12", len(b.Given), b.Left())
	}
	p.At("2027-05-17 09:00").Write(book.CellGiven{Nuc: booktest.Nuc("3"), Batch: booktest.Batch("4")})
	if b := p.View("2027-05-17 10:00").Batch(booktest.Batch("4")); len(b.Given) != 46 {
		t.Errorf("a second cell two days later: %d given, want 46", len(b.Given))
	}
}

// TestTheDayOfATwinIsTheYards: the evening before and the same night are two
// days by the clock at home, though one by that of Greenwich.
func TestTheDayOfATwinIsTheYards(t *testing.T) {
	p := &booktest.Pen{Writer: "Ida"}
	p.At("2027-04-01 12:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "Europe/Berlin"})
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 60})
	cell := book.CellGiven{Nuc: booktest.Nuc("A1"), Batch: booktest.Batch("4")}
	p.At("2027-05-15 21:00").Write(cell).At("2027-05-15 22:30").Write(cell)
	if n := len(p.View("2027-05-16 09:00").Batch(booktest.Batch("4")).Given); n != 2 {
		t.Errorf("%d given, want one each day", n)
	}
}

// TestStrikingATwinChangesNoCount: whichever of two like lines of a day is
// struck, and whatever was written between.
func TestStrikingATwinChangesNoCount(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		batch := booktest.Batch("4")
		p := &booktest.Pen{Writer: "Ida"}
		p.At("2027-05-05 18:00").Write(book.Grafted{Batch: batch, Number: 4, Larvae: 60})
		for range rapid.IntRange(1, 20).Draw(t, "lines") {
			p.At(fmt.Sprintf("2027-05-%d %02d:00", rapid.IntRange(14, 16).Draw(t, "day"), rapid.IntRange(8, 20).Draw(t, "hour")))
			nuc := booktest.Nuc(fmt.Sprint(rapid.IntRange(1, 4).Draw(t, "nuc")))
			p.Write(rapid.SampledFrom([]book.Fact{
				book.CellGiven{Nuc: nuc, Batch: batch},
				book.CellGiven{Nuc: nuc, Batch: batch, Protected: true},
				book.VirginPutIn{Nuc: nuc, Batch: batch},
				book.Dropped{What: book.Cells, Batch: batch, Count: 1},
				book.TakenAlong{What: book.Cells, Batch: batch, Count: 5},
			}).Draw(t, "fact"))
		}
		v := p.View("2027-05-20 09:00")
		before := countsOf(v)
		first := map[string]book.Entry{}
		for e := range v.Lines(batch.Subject()) {
			var key string
			switch f := e.Fact.(type) {
			case book.CellGiven:
				key = fmt.Sprint("cell", f.Nuc, e.At.Day(v.Zone()))
			case book.VirginPutIn:
				key = fmt.Sprint("virgin", f.Nuc, e.At.Day(v.Zone()))
			default:
				continue
			}
			if _, twice := first[key]; twice {
				strikes := rapid.SampledFrom([]book.Entry{first[key], e}).Draw(t, "struck")
				p.At("2027-05-20 08:00").Write(book.Struck{Entry: strikes.ID})
				if after := countsOf(p.View("2027-05-20 09:00")); after != before {
					t.Fatalf("struck %v: %s, before %s", strikes, after, before)
				}
				return
			}
			first[key] = e
		}
	})
}

// TestTheZoneNeedsNoBatch: with a disease suspected the yards ask where bees went,
// so for queens and batches, whose days are those of the home yard.
func TestTheZoneNeedsNoBatch(t *testing.T) {
	p := &booktest.Pen{Writer: "Ida"}
	home, nuc, queen, s1 := booktest.Yard("home"), booktest.Nuc("A1"), booktest.Queen("8"), booktest.Colony("S1")
	p.At("2027-04-01 12:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"},
		book.ColonyDescribed{Colony: s1, Name: "S1", Yard: home},
		book.NucNamed{Nuc: nuc, Name: "A1"}, book.NucPlaced{Nuc: nuc, Yard: home})
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 60})
	p.At("2027-05-13 18:00").Write(book.NucMadeUp{Nuc: nuc, Cups: 3, From: s1})
	p.At("2027-05-15 09:00").Write(book.CellGiven{Nuc: nuc, Batch: booktest.Batch("4")})
	p.At("2027-06-10 09:00").Write(book.QueenCaught{Nuc: nuc, Queen: queen})
	p.At("2027-06-11 09:00").Write(book.QueenHandedOver{Queen: queen, Order: booktest.Order("1")})
	p.At("2027-06-12 09:00").Write(book.DiseaseSuspected{Of: s1.Subject(), What: "foul brood"})
	v := p.View("2027-06-13 09:00")
	if v.Zone().String() != "Europe/Berlin" || v.Yard(home).Standstill == nil {
		t.Errorf("zone %v, standstill %v", v.Zone(), v.Yard(home).Standstill)
	}
}
