package paper_test

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

var (
	zone  = mustZone("Europe/Berlin")
	today = calendar.Date(2027, time.May, 11)
	now   = today.At(6, 40, zone)
	every = book.YardID{}
)

func mustZone(name string) *time.Location {
	z, err := time.LoadLocation(name)
	if err != nil {
		panic(err)
	}
	return z
}

// demoDay is the demo season read on its day.
func demoDay(t testing.TB) *state.Reading {
	t.Helper()
	b := &state.Book{Season: book.NewSeason(time.LoadLocation, demo.Season(today, zone))}
	r := b.On(now, today)
	if len(r.Nucs) == 0 || len(r.Tasks()) == 0 {
		t.Fatal("the demo season has no nucs or no work")
	}
	return r
}

// reading is what a pen wrote, read on the day of a moment.
func reading(p *booktest.Pen, moment string) *state.Reading {
	v := p.View(moment)
	return (&state.Book{Season: v.Season()}).On(v.On(), v.Today())
}

// hill is a small book: a yard with a stand of four, two single boxes and a nuc
// on no stand, a batch in two of them, one laying, people with telephones.
func hill() *booktest.Pen {
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard, batch := booktest.Yard("Hill"), booktest.Batch("1")
	p.At("2027-04-20 10:00").Write(
		book.YardDescribed{Yard: yard, Name: "Hill", Home: true, Zone: "Europe/Berlin"},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida", Phone: "555 0101"},
		book.PersonDescribed{Person: booktest.Person("Jon"), Name: "Jon", Phone: "555 0102"},
		book.StandSet{Stand: booktest.Stand("A"), Yard: yard, Letter: "A", At: book.Point{X: 2, Y: 8}, Places: 4, Round: "row"},
		book.StandSet{Stand: booktest.Stand("N1"), Yard: yard, Letter: "N1", At: book.Point{X: 6, Y: 2}, Places: 1, Round: "wall"},
		book.StandSet{Stand: booktest.Stand("N2"), Yard: yard, Letter: "N2", At: book.Point{X: 8, Y: 2}, Places: 1, Round: "wall"},
	)
	for i, name := range []string{"A1", "A2", "A3"} {
		nuc(p, name, "A", i+1)
	}
	nuc(p, "N1", "N1", 1)
	nuc(p, "N2", "N2", 1)
	nuc(p, "Loose", "", 0)
	p.At("2027-04-24 18:00").Write(book.Grafted{Batch: batch, Number: 1, Line: "Rook", Larvae: 20, Grafter: booktest.Person("Ida")})
	p.At("2027-04-25 18:00").Write(book.TakeCounted{Batch: batch, Accepted: 17})
	p.At("2027-05-04 10:00")
	for _, name := range []string{"A1", "A2"} {
		p.Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 3}, book.CellGiven{Nuc: booktest.Nuc(name), Batch: batch})
	}
	p.At("2027-05-08 10:00").Write(
		book.NucMadeUp{Nuc: booktest.Nuc("N1"), Cups: 3},
		book.Looked{Nuc: booktest.Nuc("A1"), Queen: book.VirginSeen, Sides: book.Said(5)},
		book.FrontMarked{Nuc: booktest.Nuc("N1"), Shape: "disc", Colour: "yellow"},
	)
	return p
}

func nuc(p *booktest.Pen, name, stand string, place int) {
	f := book.NucPlaced{Nuc: booktest.Nuc(name), Yard: booktest.Yard("Hill"), Place: place}
	if stand != "" {
		f.Stand = booktest.Stand(stand)
	}
	box := book.BoxID(booktest.Nuc("box " + name))
	p.Write(book.BoxBuilt{Box: box, Number: "7" + name, Nucs: 1}, book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Box: box, Sides: 6}, f)
}

// A paper is one of all those there are, as tests print it.
type paperOf struct {
	name  string
	print func(context.Context, io.Writer, *state.Reading, paper.Options) (int, error)
}

// papers are all papers of a book that has a batch.
func papers() []paperOf {
	return []paperOf{
		{"route", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Route(ctx, w, r, every, o)
		}},
		{"dense", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Dense(ctx, w, r, every, o)
		}},
		{"batch", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Batch(ctx, w, r, r.Batches()[0].Batch, o)
		}},
		{"wallet", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Wallet(ctx, w, r, o, r.Batches()[0].Batch)
		}},
		{"labels", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Labels(ctx, w, r, every, 0, o)
		}},
	}
}

// print prints a paper and reads its pages.
func (p paperOf) pages(t testing.TB, r *state.Reading, o paper.Options) []printed {
	t.Helper()
	var out bytes.Buffer
	n, err := p.print(t.Context(), &out, r, o)
	if err != nil {
		t.Fatalf("%s: %v", p.name, err)
	}
	pages := read(t, out.Bytes())
	if n != len(pages) {
		t.Errorf("%s has %d pages and says %d", p.name, len(pages), n)
	}
	return pages
}

func routeOf(t testing.TB, r *state.Reading, o paper.Options) []printed {
	t.Helper()
	return papers()[0].pages(t, r, o)
}

// choices are the ways to print.
func choices() map[string]paper.Options {
	all := map[string]paper.Options{}
	for _, page := range []paper.Page{paper.A4, paper.Letter} {
		for _, big := range []bool{false, true} {
			for _, pure := range []bool{false, true} {
				o := paper.Options{Page: page, Large: big, Pure: pure, Book: "Hill 2027", Printed: now}
				all[fmt.Sprintf("page %d large %v pure %v", page, big, pure)] = o
			}
		}
	}
	return all
}
