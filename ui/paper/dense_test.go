package paper_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// stacked is a yard of so many nucs on stands of four in rows of seven, laid
// out close as a large yard is.
func stacked(n int) *state.Reading {
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard := booktest.Yard("Hill")
	p.At("2027-04-20 10:00").Write(book.YardDescribed{Yard: yard, Name: "Hill", Zone: "Europe/Berlin"})
	for i := range n {
		stand := fmt.Sprint("S", i/4)
		if i%4 == 0 {
			p.Write(book.StandSet{
				Stand: booktest.Stand(stand), Yard: yard, Letter: stand,
				At: book.Point{X: float64(i / 4 % 7 * 6), Y: float64(i / 28 * -6)}, Places: 4,
			})
		}
		nuc(p, fmt.Sprintf("%s.%d", stand, i%4+1), stand, i%4+1)
	}
	return reading(p, "2027-05-11 06:40")
}

// TestTwoHundredAPage: stands of four hold some 200 nucs a page of A4, each in
// a square of its own.
func TestTwoHundredAPage(t *testing.T) {
	pages := papers()[1].pages(t, stacked(600), paper.Options{})
	squares := strings.Count(all(pages), ".1") + strings.Count(all(pages), ".2") + strings.Count(all(pages), ".3") + strings.Count(all(pages), ".4")
	if squares < 600 {
		t.Errorf("%d of 600 nucs have a square", squares)
	}
	if len(pages) > 4 { // the letters and counts below take a part of the last one
		t.Errorf("600 nucs take %d pages", len(pages))
	}
}

// TestStandsAsTheyStand: what stands further west or north stands further left
// or above on the sheet.
func TestStandsAsTheyStand(t *testing.T) {
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard := booktest.Yard("Hill")
	p.At("2027-04-20 10:00").Write(book.YardDescribed{Yard: yard, Name: "Hill", Zone: "Europe/Berlin"})
	for _, s := range []struct {
		letter string
		x, y   float64
	}{{"K", 20, 0}, {"L", 0, 1}, {"M", 10, 20}, {"O", 12, 0}} {
		p.Write(book.StandSet{Stand: booktest.Stand(s.letter), Yard: yard, Letter: s.letter, At: book.Point{X: s.x, Y: s.y}, Places: 4})
		nuc(p, s.letter+"1", s.letter, 1)
	}
	page := papers()[1].pages(t, reading(p, "2027-05-11 06:40"), paper.Options{})[0]
	at := map[string]word{}
	for _, w := range page.texts {
		if len(w.text) == 1 && at[w.text].text == "" {
			at[w.text] = w
		}
	}
	if !(at["L"].x < at["O"].x && at["O"].x < at["K"].x && at["L"].y == at["K"].y) {
		t.Errorf("the row from west to east: %v %v %v", at["L"], at["O"], at["K"])
	}
	if at["M"].y >= at["L"].y {
		t.Errorf("the stand in the north stands at %v, the row at %v", at["M"], at["L"])
	}
}

func TestYardsWithoutNucs(t *testing.T) {
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	p.At("2027-04-20 10:00").Write(book.YardDescribed{Yard: booktest.Yard("Hill"), Name: "Hill", Zone: "Europe/Berlin"})
	r := reading(p, "2027-05-11 06:40")
	for _, yard := range []book.YardID{every, booktest.Yard("Hill")} {
		_, err := paper.Dense(t.Context(), &strings.Builder{}, r, yard, paper.Options{})
		if err == nil || !strings.Contains(err.Error(), "set up nucs first") {
			t.Errorf("the error is %v", err)
		}
	}
}

// TestManyNucs: a book of ten thousand nucs is printed, page after page. Labels
// are left out: each is like the other, and their codes take a while.
func TestManyNucs(t *testing.T) {
	season := book.NewSeason(booktest.Zones, booktest.Big(10_000, 10))
	r := (&state.Book{Season: season}).On(booktest.BigNow, calendar.DayOf(booktest.BigNow, zone))
	for _, p := range papers()[:4] {
		var out strings.Builder
		pages, err := p.print(t.Context(), &out, r, paper.Options{})
		if err != nil {
			t.Fatalf("%s: %v", p.name, err)
		}
		if least := map[string]int{"dense": 40, "route": 20}[p.name]; pages < least {
			t.Errorf("%s of 10 000 nucs has %d pages", p.name, pages)
		}
	}
}
