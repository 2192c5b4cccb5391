package paper_test

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/demo"
	"lidmark/domain/yard"
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
	b := &state.Book{Season: book.NewSeason(time.LoadLocation, append(demo.Season(today, zone), ahead("").Entries...))}
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

// ahead is what is planned on the evening before the day: two grafts, the first for
// an order.
func ahead(yard string) *booktest.Pen {
	home := booktest.Yard(yard)
	if yard == "" {
		for e := range slices.Values(demo.Season(today, zone)) {
			if f, ok := e.Fact.(book.YardDescribed); ok && f.Home {
				home = f.Yard
			}
		}
	}
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	return p.At("2027-05-10 20:00").Write(
		book.BatchPlanned{
			Batch: next, Day: calendar.Date(2027, time.May, 20), Minute: 15 * 60, Larvae: 64, Nucs: 40, Yard: home, Line: "Rook 12",
			Queens: 24, By: calendar.Date(2027, time.July, 5), Sure: 0.9, Orders: []book.OrderID{booktest.Order("order")}, Why: "for the club",
		},
		book.BatchPlanned{Batch: booktest.Batch("after next"), Day: calendar.Date(2027, time.June, 10), Larvae: 20, Nucs: 12, Yard: home},
		book.OrderTaken{Order: booktest.Order("order"), Number: "71", Customer: "Club", Queens: 2, By: calendar.Date(2027, time.May, 12), Marked: true, Disc: true},
		book.OrderTaken{Order: booktest.Order("later"), Number: "72", Customer: "Club", Queens: 1, By: calendar.Date(2027, time.May, 20), Marked: true, Disc: true},
	)
}

// kitchen is the small book with plans, an order, and two queens for it: one caged
// and marked, one in her nuc.
func kitchen() *booktest.Pen {
	p, queen := hill(), booktest.Queen("caged")
	for i, name := range []string{"A3", "N2"} {
		batch := booktest.Batch("early " + name)
		p.At("2027-03-25 15:00").Write(book.Grafted{Batch: batch, Number: 2 + i, Line: "Linnet", Larvae: 20})
		p.At("2027-04-21 12:00").Write(book.CellGiven{Nuc: booktest.Nuc(name), Batch: batch})
		p.At("2027-04-26 12:00").Write(book.Looked{Nuc: booktest.Nuc(name), Queen: book.QueenSeen, Eggs: book.SingleEggs})
		p.At("2027-05-07 12:00").Write(book.Looked{Nuc: booktest.Nuc(name), Queen: book.QueenSeen, Eggs: book.SingleEggs, Brood: book.Said(4)})
	}
	p.At("2027-05-09 12:00").Write(
		book.QueenDescribed{Queen: queen, Line: "Linnet", Born: calendar.Date(2027, time.April, 5).At(12, 0, zone)},
		book.QueenMarked{Queen: queen, Nuc: booktest.Nuc("N2"), Colour: "yellow", Disc: "14"},
		book.QueenCaught{Nuc: booktest.Nuc("N2"), Queen: queen, Label: "3"},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida", Phone: "555 0101", Free: evenings()},
	)
	p.Entries = append(p.Entries, ahead("Hill").Entries...)
	return p
}

func evenings() (free [7]book.FreeHours) {
	for i := range free {
		free[i] = book.FreeHours{From: 17 * 60, Until: 20 * 60}
	}
	return free
}

// next is the first of the planned batches.
var next = booktest.Batch("next")

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
		{"week", paper.Week},
		{"plan", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Plan(ctx, w, r, next, o)
		}},
		{"buying", paper.Buying},
		{"cages", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Cages(ctx, w, r, book.OrderID{}, 0, o)
		}},
		{"crew", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			day, err := crew.Plan(r.Judged(), r.Day, crew.HandsOf(r.View, r.Day, 2, 1.5))
			if err != nil {
				return 0, err
			}
			return paper.Crew(ctx, w, r, day, o)
		}},
		{"layout", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Layout(ctx, w, r, tried(r), o)
		}},
		{"fronts", func(ctx context.Context, w io.Writer, r *state.Reading, o paper.Options) (int, error) {
			return paper.Fronts(ctx, w, r, every, nil, 0, o)
		}},
	}
}

// tried is a layout of the first yard in which nucs stand: its first stand carried.
func tried(r *state.Reading) state.Laid {
	for y := range r.View.Yards() {
		if now := yard.Of(r.View, y.Yard); now.Nucs() > 0 {
			return state.Laid{Yard: y.Yard, Name: "carried", Try: now.Moved(yard.Pick{now.Stands[0].ID}, 2, 1), From: r.Day}
		}
	}
	return state.Laid{}
}

// hillOf is the small book as a paper wants it: what is about plans, with some.
func hillOf(p paperOf) *state.Reading {
	if slices.Contains([]string{"week", "plan", "buying", "cages", "crew"}, p.name) {
		return reading(kitchen(), "2027-05-11 06:40")
	}
	return reading(hill(), "2027-05-11 06:40")
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
