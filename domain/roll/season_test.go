package roll_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/roll"
)

// What a list says of a nuc, the season shows, and what follows from it.
func TestTheSeasonShowsWhatTheListSaid(t *testing.T) {
	s, o := sheet("nuc|box|holds|batch|grafted|cell given|virgin put in|emerged|eggs|last look|queen|bees|brood|stores|colour|disc|line|note",
		"A1|1|E|4|17.4.2027|27.4.2027||29.4.2027|15.5.2027|22.5.2027|yes|5||2|white|12|Rook|calm",
		"A2|1|B|4||27.4.2027|||12.5.2027|22.5.2027|yes|5|2|2|||Rook|",
		"A3|2|C|5|12.5.2027|22.5.2027|||||||||||",
		"A4|2|V|4|||29.4.2027|28.4.2027||22.5.2027||4||1|||Rook|",
		"B1|3|no queen||||||||||||||| ",
		"B2|3|D|4||27.4.2027||||22.5.2027||3||1|||Rook|",
		"B3|4|W|||||||22.5.2027|||||||",
		"B4|4|R|4||27.4.2027||||23.5.2027|||||||Rook|",
		"B5|5|empty|4||27.4.2027||||20.5.2027|||||||Rook|",
		"B6|5||||||||||||||||",
		"B7|6|C|||23.5.2027|||||||||||",
		"B8|6|?|4||27.4.2027|||||||||||Rook|")
	o.Sides = 6
	r := roll.Read(s, o, context(nil))
	if !r.Ready() {
		t.Fatalf("mistakes:\n%s", lines(r.Mistakes()))
	}
	v := season(r, nil).At(context(nil).Now)
	var got []string
	for n := range v.Nucs() {
		p := course.ByCalendar(v, n)
		batch := ""
		if b := v.Batch(n.Holds.Batch); !n.Holds.Batch.IsZero() {
			batch = fmt.Sprintf(", batch %d of %s", b.Number, b.Line)
		}
		got = append(got, fmt.Sprintf("%s in box %s on %s%d: %s, by the calendar %s%s", n.Name, v.Box(n.Box).Number, v.Stand(n.Stand).Letter, n.Place, n.Condition(), p.Condition, batch))
	}
	want := `A1 in box 1 on A1: laying, by the calendar good brood, batch 4 of Rook
A2 in box 1 on A2: good brood, by the calendar good brood, batch 4 of Rook
A3 in box 2 on A3: cell, by the calendar virgin, batch 5 of 
A4 in box 2 on A4: virgin, by the calendar virgin, batch 4 of Rook
B1 in box 3 on B1: no queen, by the calendar no queen
B2 in box 3 on B2: drone layer, by the calendar drone layer, batch 4 of Rook
B3 in box 4 on B3: laying workers, by the calendar laying workers
B4 in box 4 on B4: robbed, by the calendar robbed, batch 4 of Rook
B5 in box 5 on B5: empty, by the calendar empty
B6 in box 5 on B6: empty, by the calendar empty
B7 in box 6 on B7: cell, by the calendar cell
B8 in box 6 on B8: cell, by the calendar due for a look, batch 4 of Rook`
	if text := strings.Join(got, "\n"); text != want {
		t.Errorf("the season has\n%s\nwant\n%s", text, want)
	}
	a1 := v.NucNamed("A1")[0]
	look, _ := a1.LastLook()
	if q := v.Queen(a1.Holds.Queen); q.Mark.Colour != "white" || q.Mark.Disc != "12" {
		t.Errorf("the queen of A1 has the mark %+v", q.Mark)
	}
	if look.Note != "calm" || look.Sides != book.Said(5) || look.Stores != book.Said(2) || look.Queen != book.QueenSeen {
		t.Errorf("the last look at A1 is %+v", look)
	}
	if yard := v.HomeYard(); yard.Name != "Home" || !yard.Home || yard.Zone.String() != "Europe/Berlin" {
		t.Errorf("the yard is %+v", yard)
	}
	if n := len(v.Batch(a1.Holds.Batch).Given); n != 7 {
		t.Errorf("batch 4 has %d cells and virgins given, want 7", n)
	}
}

// A list of nucs that the book has, and of some beside them.
func TestAListIntoABook(t *testing.T) {
	s, o := sheet("nuc|box|yard|holds", "A1|7|Home|E", "A2|7|Home|E", "B1||Far Wood|")
	was := season(roll.Read(s, o, context(nil)), nil).At(context(nil).Now)
	s, o = sheet("nuc|box|yard|batch|grafted|cell given|holds|last look",
		"A1|||4|20.4.2027|1.5.2027||", "A3|7|home|4||1.5.2027||", "A4||Far Wood|4||1.5.2027||", "B1|||||| R |20.5.2027", "C1||New Mill|||||")
	r := roll.Read(s, o, context(was))
	if !r.Ready() || r.Counts.New != 3 || r.Counts.Nucs != 5 {
		t.Fatalf("%s, %d new:\n%s", r.Counts, r.Counts.New, lines(r.Mistakes()))
	}
	v := season(r, was).At(context(nil).Now)
	var got []string
	for n := range v.Nucs() {
		s := v.Stand(n.Stand)
		got = append(got, fmt.Sprintf("%s: %s on place %d of %d at %v, box %s, %s", v.Yard(n.Yard).Name, n.Name, n.Place, s.Places, s.At, v.Box(n.Box).Number, n.Condition()))
	}
	want := `Home: A1 on place 1 of 3 at {0 0}, box 7, laying
Home: A2 on place 2 of 3 at {0 0}, box 7, laying
Home: A3 on place 3 of 3 at {0 0}, box 7, cell
Far Wood: A4 on place 4 of 4 at {0 -3}, box A4, cell
Far Wood: B1 on place 1 of 1 at {0 0}, box B1, robbed
New Mill: C1 on place 1 of 1 at {0 0}, box C1, empty`
	if text := strings.Join(got, "\n"); text != want {
		t.Errorf("the book has\n%s\nwant\n%s", text, want)
	}
}

// A name that stands in two yards needs its yard.
func TestANameInTwoYards(t *testing.T) {
	s, o := sheet("nuc|yard", "A1|Old Mill", "A1|Far Wood", "B1|")
	was := season(roll.Read(s, o, context(nil)), nil).At(context(nil).Now)
	s, o = sheet("nuc|holds", "A1|E")
	want := "row 2, column A: A1 stands in Far Wood and in Old Mill; say which in a column with the yard"
	if got := lines(roll.Read(s, o, context(was)).Mistakes()); got != want {
		t.Errorf("mistakes %s, want %s", got, want)
	}
	s, o = sheet("nuc|yard|holds", "A1|far wood|E")
	v := season(roll.Read(s, o, context(was)), was).At(context(nil).Now)
	for _, n := range v.NucNamed("A1") {
		if far := v.Yard(n.Yard).Name == "Far Wood"; far != (n.Condition() == book.Laying) {
			t.Errorf("A1 in %s is %s", v.Yard(n.Yard).Name, n.Condition())
		}
	}
}

// What the book has already is not written again.
func TestAListReadTwiceChangesNothing(t *testing.T) {
	s, o := sheet("nuc|holds|batch|grafted|cell given|virgin put in|emerged|eggs|last look|queen|bees|colour|disc|line|note",
		"A1|E|4|17.4.2027|27.4.2027||29.4.2027|15.5.2027|22.5.2027|yes|5|white|12|Rook|calm",
		"A2|V|5|10.4.2027||24.4.2027|23.4.2027||||4|||Wren|",
		"A3|E||||||||||red||Wren|",
		"A4|R||||||||||||Rook|left",
		"A5|empty|4||27.4.2027||||20.5.2027||||||")
	r := roll.Read(s, o, context(nil))
	if !r.Ready() {
		t.Fatalf("mistakes:\n%s", lines(r.Mistakes()))
	}
	v := season(r, nil).At(context(nil).Now)
	r = roll.Read(s, o, context(v))
	if len(r.Facts()) > 0 || len(r.Mistakes()) > 0 || r.Ready() {
		for _, d := range r.Facts() {
			t.Errorf("written again: %s", d.Words)
		}
		t.Errorf("mistakes: %v, ready %v", r.Mistakes(), r.Ready())
	}
	if want := "A1 is in the book, with all of this"; r.Rows[0].Words != want {
		t.Errorf("row 2 says %q, want %q", r.Rows[0].Words, want)
	}
}
