package rules_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// big is a season of n nucs in yards of 200, each through two cycles of make-up,
// cell, looks, feed and catch, with a batch for every 40.
func big(b testing.TB, n int) *book.View {
	b.Helper()
	p := &booktest.Pen{Writer: "Ida"}
	for i := range n {
		if i%200 == 0 {
			p.At("2027-04-01 08:00").Write(book.YardDescribed{Yard: yardOf(i), Name: fmt.Sprint("yard ", i/200), Home: i == 0, Zone: "Europe/Berlin", Lat: 50 + float64(i)/1e4, Lon: 10})
		}
		if i%40 == 0 {
			p.At("2027-05-05 18:00").Write(book.Grafted{Batch: batchOf(i), Number: i/40 + 1, Larvae: 40})
		}
		if i%4 == 0 {
			p.At("2027-04-02 08:00").Write(book.StandSet{Stand: standOf(i), Yard: yardOf(i), Letter: fmt.Sprint("A", i/4), Places: 4, Round: fmt.Sprint(i / 40)})
		}
		cycle(p, i)
	}
	return book.NewSeason(booktest.Zones, p.Entries).At(time.Date(2027, 6, 25, 8, 0, 0, 0, time.UTC))
}

func yardOf(i int) book.YardID   { return booktest.Yard(fmt.Sprint("y", i/200)) }
func batchOf(i int) book.BatchID { return booktest.Batch(fmt.Sprint("b", i/40)) }
func standOf(i int) book.StandID { return booktest.Stand(fmt.Sprint("s", i/4)) }

func cycle(p *booktest.Pen, i int) {
	n := booktest.Nuc(fmt.Sprint("n", i))
	p.At("2027-04-03 08:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprint("N", i), Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: yardOf(i), Stand: standOf(i), Place: i%4 + 1})
	p.At("2027-05-14 08:00").Write(book.NucMadeUp{Nuc: n, Cups: 3, Capped: 2, Food: 900})
	p.At("2027-05-15 08:00").Write(book.CellGiven{Nuc: n, Batch: batchOf(i)})
	p.At("2027-05-20 08:00").Write(book.Fed{To: n.Subject(), Litres: 0.3})
	if i%3 > 0 {
		p.At("2027-06-02 08:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs, Sides: book.Said(5), Stores: book.Said(1)})
	}
	if i%5 == 1 {
		p.At("2027-06-20 08:00").Write(book.QueenCaught{Nuc: n, Queen: booktest.Queen(fmt.Sprint("q", i))})
	}
}

// BenchmarkFindings is one pass of all rules over 10 000 nucs that are folded
// already.
func BenchmarkFindings(b *testing.B) {
	v := big(b, 10_000)
	rules.Findings(v)
	found := 0
	for b.Loop() {
		found = len(rules.Findings(v))
	}
	b.ReportMetric(float64(found), "findings")
}

// BenchmarkFindingsFloor is the bare pass: it visits the same nucs and their
// entries and looks at one field of each.
func BenchmarkFindingsFloor(b *testing.B) {
	v := big(b, 10_000)
	for b.Loop() {
		for n := range v.Nucs() {
			for e := range v.Lines(n.Nuc.Subject()) {
				if e.At.IsZero() {
					b.Fatal("an entry without a moment")
				}
			}
		}
	}
}

// BenchmarkDay is the route of one day over the same nucs.
func BenchmarkDay(b *testing.B) {
	v := big(b, 10_000)
	for b.Loop() {
		rules.Day(v, calendar.Date(2027, 6, 25))
	}
}
