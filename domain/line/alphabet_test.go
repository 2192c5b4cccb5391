package line_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// Every sign in the list of letters is understood, and so is every phrase,
// with quotes and without.
func TestLettersAreUnderstood(t *testing.T) {
	v := yard(t)
	p := &booktest.Pen{Entries: entries(v)}
	p.At("2027-04-01 09:00").Write(book.NucNamed{Nuc: booktest.Nuc("D4"), Name: "D4"}, book.NucPlaced{Nuc: booktest.Nuc("D4"), Yard: booktest.Yard("Hill")})
	v = p.View(today)
	check := func(text string) {
		if _, err := line.Parse("A3 "+text+" h2", context(t, v)); err != nil && !strings.HasPrefix(text, "h") {
			t.Errorf("A3 %s: %v", text, err)
		}
	}
	for _, l := range line.Letters() {
		signs := strings.Fields(l.Sign)
		if strings.HasPrefix(l.Sign, `"`) {
			signs = []string{l.Sign}
		}
		for _, sign := range signs {
			if strings.HasPrefix(sign, "@") {
				sign = "q " + sign
			}
			check(sign)
		}
	}
	for _, p := range line.Phrases() {
		check(p)
		check(`"` + p + `"`)
	}
}

func entries(v *book.View) (all []book.Entry) {
	for e := range v.All() {
		all = append(all, e)
	}
	return all
}

func TestSheet(t *testing.T) {
	p := &booktest.Pen{}
	p.At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("Hill"), Name: "Home Yard", Zone: "UTC", Home: true},
		book.NucNamed{Nuc: booktest.Nuc("A1"), Name: "A1", Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc("A1"), Yard: booktest.Yard("Hill")},
		book.NucNamed{Nuc: booktest.Nuc("A2"), Name: "A2", Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc("A2"), Yard: booktest.Yard("Hill")})
	p.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 24, LarvaAge: 18})
	p.At("2027-05-14 08:00").Write(book.NucMadeUp{Nuc: booktest.Nuc("A1"), Cups: 4}, book.Looked{Nuc: booktest.Nuc("A1"), Sides: book.Said(5), Stores: book.Said(3)})
	v := p.View("2027-05-15 09:00")
	onSheet := line.Sheet(rules.Day(v, calendar.Date(2027, time.May, 15)))
	got := onSheet(booktest.Nuc("A1"))
	if want := (book.CellGiven{Nuc: booktest.Nuc("A1"), Batch: booktest.Batch("4")}); len(got) == 0 || got[0] != want {
		t.Errorf("the sheet of a nuc without a queen on the day of the cells = %v, want a cell of batch 4", got)
	}
	p.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: booktest.Batch("4"), Count: 24})
	again := line.Sheet(rules.Day(p.View("2027-05-15 09:00"), calendar.Date(2027, time.May, 15)))(booktest.Nuc("A1"))
	if len(again) == 0 || again[0] != got[0] {
		t.Errorf("the sheet when the cells were taken along = %v, want %v", again, got)
	}
	if got := onSheet(booktest.Nuc("A2")); len(got) > 0 {
		t.Errorf("the sheet of an empty nuc = %v, want nothing", got)
	}
}
