package rules_test

import (
	"reflect"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestACellInAnEmptyNuc: whoever gave a cell or a virgin to a nuc that has no bees
// by the book is asked whether it was made up before, with what the book has of
// that later on the day.
func TestACellInAnEmptyNuc(t *testing.T) {
	cell := book.CellGiven{Nuc: a1, Batch: batch(4)}
	look := book.Looked{Nuc: a1, Sides: book.Said(4)}
	at := time.Date(2027, time.May, 15, 16, 0, 0, 0, time.UTC)
	for _, c := range []struct {
		name  string
		book  func(*booktest.Pen)
		write []book.Fact
		asks  string // "": nothing
		key   string
		want  []book.Fact
	}{
		{"never made up", func(*booktest.Pen) {}, []book.Fact{cell}, "A1 was not made up by then: made up before?", "1", []book.Fact{book.NucMadeUp{Nuc: a1}, cell}},
		{"a virgin", func(*booktest.Pen) {}, []book.Fact{book.VirginPutIn{Nuc: a1}}, "A1 was not made up by then: made up before?", "2", []book.Fact{book.VirginPutIn{Nuc: a1}}},
		{"typed wrong", func(*booktest.Pen) {}, []book.Fact{cell}, "A1 was not made up by then: made up before?", "3", nil},
		{"bees seen with it", func(*booktest.Pen) {}, []book.Fact{look, cell}, "A1 was not made up by then: made up before?", "1", []book.Fact{book.NucMadeUp{Nuc: a1}, look, cell}},
		{"bees seen before", func(p *booktest.Pen) { p.At("2027-05-14 10:00").Write(look) }, []book.Fact{cell}, "", "", []book.Fact{cell}},
		{"made up in that moment", func(p *booktest.Pen) { p.At("2027-05-15 16:00").Write(book.NucMadeUp{Nuc: a1}) }, []book.Fact{cell}, "", "", []book.Fact{cell}},
		{"made up with it", func(*booktest.Pen) {}, []book.Fact{book.NucMadeUp{Nuc: a1, Cups: 2}, cell}, "", "", []book.Fact{book.NucMadeUp{Nuc: a1, Cups: 2}, cell}},
		{"shaken out before", func(p *booktest.Pen) { p.At("2027-05-14 10:00").Write(look, book.ShakenOut{Nuc: a1}) }, []book.Fact{cell}, "A1 was not made up by then: made up before?", "1", []book.Fact{book.NucMadeUp{Nuc: a1}, cell}},
	} {
		p := pen(t)
		c.book(p)
		ask(t, c.name, p.View("2027-05-15 23:00").Season(), at, c.write, c.asks, c.key, c.want)
	}
}

// TestMadeUpLaterThatDay: the line that says so is taken back and told before the
// cell, with its bees.
func TestMadeUpLaterThatDay(t *testing.T) {
	p := pen(t)
	p.At("2027-05-15 20:12").Write(book.NucMadeUp{Nuc: a1, Cups: 3})
	made := p.Entries[len(p.Entries)-1]
	season := p.View("2027-05-15 23:00").Season()
	cell := book.CellGiven{Nuc: a1, Batch: batch(4)}
	at := time.Date(2027, time.May, 15, 16, 0, 0, 0, time.UTC)
	all := ask(t, "yes", season, at, []book.Fact{cell}, "A1 was not made up by then, but at 20:12: made up before?", "1",
		[]book.Fact{book.Struck{Entry: made.ID, Why: "made up before"}, made.Fact, cell})
	n := season.With(all...).At(at.Add(6 * time.Hour)).Nuc(a1)
	if n.Holds.Condition != book.Cell || len(n.Gaps) > 0 || !n.MadeUp.Instant.Equal(at.Add(-time.Second)) {
		t.Errorf("A1 holds %s, made up %v, %v", n.Holds.Condition, n.MadeUp, n.Gaps)
	}
	// Left so, the later line begins a new life: the cell is gone, and the book says
	// that the two do not fit.
	all = ask(t, "no", season, at, []book.Fact{cell}, "A1 was not made up by then, but at 20:12: made up before?", "2", []book.Fact{cell})
	n = season.With(all...).At(at.Add(6 * time.Hour)).Nuc(a1)
	if n.Holds.Condition != book.NoQueen || len(n.Gaps) != 1 {
		t.Errorf("left so A1 holds %s, %v", n.Holds.Condition, n.Gaps)
	}
}

// ask settles facts of a moment with one answer, and gives the entries.
func ask(t *testing.T, name string, s *book.Season, at time.Time, facts []book.Fact, asks, key string, want []book.Fact) []book.Entry {
	t.Helper()
	ids := book.NewIDs(at, s, [32]byte{1})
	asked := ""
	all, keep := rules.Settle(s, ids.Entries(calendar.Instantly(at), at.Add(8*time.Hour), "Ida", facts...), &ids, func(q rules.Question) rules.Answer {
		asked += q.Asks
		for _, a := range q.Answers {
			if a.Key == key {
				return a
			}
		}
		return rules.Answer{}
	})
	var got []book.Fact
	for _, e := range all {
		got = append(got, e.Fact)
	}
	if asked != asks || keep != (want != nil) {
		t.Errorf("%s: asked %q, kept %v; want %q", name, asked, keep, asks)
	}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("%s: written %+v, want %+v", name, got, want)
	}
	return all
}
