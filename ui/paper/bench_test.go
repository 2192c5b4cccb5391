package paper_test

import (
	"context"
	"fmt"
	"io"
	"testing"

	"codeberg.org/go-pdf/fpdf"

	"lidmark/assets"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// busy is a day on which n nucs want a look.
func busy(tb testing.TB, n int) *state.Reading {
	tb.Helper()
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard, batch := booktest.Yard("Hill"), booktest.Batch("1")
	p.At("2027-04-01 18:00").Write(
		book.YardDescribed{Yard: yard, Name: "Hill", Zone: "Europe/Berlin"},
		book.Grafted{Batch: batch, Number: 1, Larvae: n, Line: "Rook"})
	for i := range n {
		stand, name := fmt.Sprint("S", i/4), fmt.Sprint("S", i)
		if i%4 == 0 {
			p.Write(book.StandSet{
				Stand: booktest.Stand(stand), Yard: yard, Letter: stand,
				At: book.Point{X: float64(i / 4 % 10 * 4), Y: float64(i / 40 * 4)}, Places: 4,
			})
		}
		nuc(p, name, stand, i%4+1)
	}
	p.At("2027-04-12 10:00")
	for i := range n {
		id := booktest.Nuc(fmt.Sprint("S", i))
		p.Write(book.NucMadeUp{Nuc: id, Cups: 3}, book.CellGiven{Nuc: id, Batch: batch})
	}
	r := reading(p, "2027-04-30 06:40")
	named := 0
	for _, t := range r.Tasks() {
		named += len(t.Of)
	}
	if named < n {
		tb.Fatalf("only %d of %d nucs want work", named, n)
	}
	return r
}

// BenchmarkRoute prints the sheet of a day with work at 300 nucs. Its floor is
// BenchmarkBareTable.
func BenchmarkRoute(b *testing.B) {
	r := busy(b, 300)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := paper.Route(context.Background(), io.Discard, r, every, paper.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkWeek prints the sheet of a week that begins with work at 300 nucs. Its
// floor is BenchmarkBareWeek.
func BenchmarkWeek(b *testing.B) {
	r := busy(b, 300)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := paper.Week(context.Background(), io.Discard, r, paper.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkBareWeek is the work of the seven days, asked for and not drawn.
func BenchmarkBareWeek(b *testing.B) {
	r := busy(b, 300)
	b.ReportAllocs()
	for b.Loop() {
		for d := r.Day; d < r.Day+7; d++ {
			if plan := r.Judged().Day(d); plan.Day != d {
				b.Fatal("another day")
			}
		}
	}
}

// BenchmarkBareTable is the library by itself: the same 300 lines, each of four
// texts and eight frames, without measuring, lids and page heads.
func BenchmarkBareTable(b *testing.B) {
	const lines, perPage, row = 300, 28, 9.0
	b.ReportAllocs()
	for b.Loop() {
		pdf := fpdf.New("P", "mm", "A4", "")
		pdf.SetAutoPageBreak(false, 0)
		for name, file := range map[string][]byte{"regular": assets.Regular, "semibold": assets.SemiBold, "bold": assets.Bold} {
			pdf.AddUTF8FontFromBytes(name, "", file)
		}
		for i := range lines {
			if i%perPage == 0 {
				pdf.AddPage()
			}
			y := 20 + row*float64(i%perPage)
			for j, text := range []string{"Look for eggs", "17 days old by the calendar, due for a look", fmt.Sprint("S", i), "by Thu"} {
				pdf.SetFont([]string{"semibold", "regular", "bold", "regular"}[j], "", 9)
				pdf.Text(20+float64(j)*20, y+4, text)
			}
			for j := range 8 {
				pdf.Rect(110+10*float64(j), y, 9, 7.6, "FD")
			}
		}
		if err := pdf.Output(io.Discard); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkDense prints the yard sheet of 10 000 nucs; its floor is
// BenchmarkBareSquares.
func BenchmarkDense(b *testing.B) {
	r := stacked(10_000)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := paper.Dense(context.Background(), io.Discard, r, every, paper.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkBareSquares is the library by itself: 10 000 frames with two texts.
func BenchmarkBareSquares(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		pdf := fpdf.New("P", "mm", "A4", "")
		pdf.AddUTF8FontFromBytes("regular", "", assets.Regular)
		pdf.SetFont("regular", "", 8)
		for i := range 10_000 {
			if i%200 == 0 {
				pdf.AddPage()
			}
			x, y := 10+10*float64(i%18), 20+10*float64(i/18%25)
			pdf.Rect(x, y, 10, 10, "FD")
			pdf.Text(x+1, y+3, "1")
			pdf.Text(x+7, y+3, "E")
		}
		if err := pdf.Output(io.Discard); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkLayout prints the layout of 1,000 nucs, 250 stands. Its floor
// is BenchmarkBareTable.
func BenchmarkLayout(b *testing.B) {
	r := busy(b, 1000)
	laid := tried(r)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := paper.Layout(context.Background(), io.Discard, r, laid, paper.Options{}); err != nil {
			b.Fatal(err)
		}
	}
}
