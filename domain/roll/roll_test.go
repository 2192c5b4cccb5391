package roll_test

import (
	"encoding/binary"
	"fmt"
	"strings"
	"testing"
	"time"
	_ "time/tzdata" // the zones, on machines that have none

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/roll"
)

// context is the evening of Mon 24 May 2027, with a book or none.
func context(v *book.View) roll.Context {
	zone, err := booktest.Zones("Europe/Berlin")
	if err != nil {
		panic(err)
	}
	n := uint64(0)
	if v != nil {
		n = 1 << 32
	}
	return roll.Context{View: v, Now: time.Date(2027, 5, 24, 19, 0, 0, 0, zone), Zone: zone, Mint: func() (id [16]byte) {
		n++
		binary.BigEndian.PutUint64(id[:], n)
		id[6], id[8] = 0x70, 0x80
		return id
	}}
}

// sheet is a sheet with its headings, cells parted by a bar.
func sheet(headings string, rows ...string) (s roll.Sheet, o roll.Options) {
	for i, text := range append([]string{headings}, rows...) {
		row := roll.Row{Number: i + 1}
		for cell := range strings.SplitSeq(text, "|") {
			row.Cells = append(row.Cells, roll.Cell{Text: strings.TrimSpace(cell)})
		}
		s.Rows = append(s.Rows, row)
	}
	for word := range strings.SplitSeq(headings, "|") {
		c, err := roll.ParseColumn(word)
		if err != nil {
			panic(err)
		}
		o.Columns = append(o.Columns, c)
	}
	o.Heading = 1
	return s, o
}

// season is a book of all that a list says.
func season(r roll.Result, was *book.View) *book.Season {
	entries := r.Entries(context(nil).Now, "Ida", context(was).Mint)
	if was != nil {
		return was.Season().With(entries...)
	}
	return book.NewSeason(booktest.Zones, entries)
}

func TestRowsInWords(t *testing.T) {
	for _, c := range []struct{ head, row, want string }{
		{"nuc|holds", "A3|", "A3 (new, Home A)"},
		{"nuc", "a-3", "A3 (new, Home A)"},
		{"nuc|stand", "12|C", "C12 (new, Home C)"},
		{"nuc|holds", "A3|·", "A3 (new, Home A)"},
		{"nuc|holds", "A3|E", "A3 (new, Home A): eggs, Mon 24 May"},
		{"nuc|holds", "A3|laying workers", "A3 (new, Home A): many eggs a cell, Mon 24 May"},
		{"nuc|holds|brood", "A3|B|2,5", "A3 (new, Home A): capped brood 2.5 palms, Mon 24 May"},
		{"nuc|batch|grafted|cell given|eggs", "A3|4|20.4.2027|1 May 2027|20/5/2027", "A3 (new, Home A): cell from batch 4 given, Sat 1 May; eggs, Thu 20 May"},
		{"nuc|batch|grafted|cell given|emerged", "A3|batch 4|20.4.2027|1.5.2027|3.5.2027", "A3 (new, Home A): cell from batch 4 given, Sat 1 May; cell open at the tip, Mon 3 May"},
		{"nuc|cell given", "A3|1.5.2027 18:30", "A3 (new, Home A): cell given, Sat 1 May 18:30"},
		{"nuc|holds|last look|queen", "A3|E|20.5.2027|yes", "A3 (new, Home A): queen seen, eggs, Thu 20 May"},
		{"nuc|holds|last look|queen", "A3|virgin|20.5.2027|no", "A3 (new, Home A): no queen seen, Thu 20 May"},
		{"nuc|virgin put in|emerged|holds", "A3|3.5.2027|2.5.2027|V", "A3 (new, Home A): virgin put in, emerged Sun 2 May, Mon 3 May"},
		{"nuc|holds|colour|disc", "A3|E|w|14", "A3 (new, Home A): eggs, Mon 24 May; queen marked: white, disc 14, Mon 24 May"},
		{"nuc|holds|eggs|colour|line|emerged", "A3|E|20.5.2027|Pink|Rook|2.5.2027", "A3 (new, Home A): queen, line Rook, born 2027-05-02, Sun 2 May; eggs, Thu 20 May; queen marked: pink, Thu 20 May"},
		{"nuc|holds|line|emerged", "A3|E|Rook|2.5.2027", "A3 (new, Home A): note: the queen emerged 2027-05-02, Sun 2 May; eggs, Mon 24 May; note: line Rook, Mon 24 May"},
		{"nuc|cell given|holds|last look", "A3|1.5.2027|empty|20.5.2027", "A3 (new, Home A): cell given, Sat 1 May; lost, Thu 20 May"},
		{"nuc|holds|last look|stores|queen", "A3|empty|20.5.2027|2|no", "A3 (new, Home A): note: stores 2, Thu 20 May"},
		{"nuc|yard|note|note", "A3|Far Wood|left|right", "A3 (new, Far Wood A): note: left; right, Mon 24 May"},
		{"nuc|eggs|note", "A3|20.5.2027|calm", "A3 (new, Home A): eggs, Thu 20 May; note: calm, Mon 24 May"},
		{"nuc|eggs", "A3|20.12.2026", "A3 (new, Home A): eggs, Sun 20 Dec 2026"},
		{"nuc|eggs", "A3|24.5.2027", "A3 (new, Home A): eggs, Mon 24 May"},
	} {
		s, o := sheet(c.head, c.row)
		r := roll.Read(s, o, context(nil))
		if !r.Ready() || r.Rows[0].Words != c.want {
			t.Errorf("%s: %s\n\tgot  %s %v\n\twant %s", c.head, c.row, r.Rows[0].Words, r.Mistakes(), c.want)
		}
	}
}

func TestMistakesOfRows(t *testing.T) {
	for _, c := range []struct{ head, row, want string }{
		{"nuc|holds", "|E", "row 2, column A: the nuc has no name; write one like A3, or leave the row out"},
		{"nuc", "O3", `row 2, column A: "O3" is no name of a nuc; write one or two capitals and a number, without I and O, like A3; a bare number needs a column with its stand`},
		{"nuc", "12", `row 2, column A: "12" is no name of a nuc; write one or two capitals and a number, without I and O, like A3; a bare number needs a column with its stand`},
		{"nuc", "A1-A12", `row 2, column A: "A1-A12" is no name of a nuc; write one or two capitals and a number, without I and O, like A3; a bare number needs a column with its stand`},
		{"nuc|holds", "A3|C", "row 2, column B: it holds a cell, and no day tells when that was given; write the day into a column of cells given"},
		{"nuc|holds", "A3|?", "row 2, column B: it is due for a look, and no cell or virgin has a day; write the day of the cell or the virgin"},
		{"nuc|bees", "A3|many", `row 2, column B: "many" is no amount; write a number, like 4 or 2.5`},
		{"nuc|bees", "A3|101", "row 2, column B: 101 sides of bees; write 0 to 100"},
		{"nuc|bees", "A3|7", "row 2: 7 sides in A3; it has 6"},
		{"nuc|stores", "A3|-1", "row 2, column B: -1 as stores; write 0 to 3"},
		{"nuc|batch", "A3|0", `row 2, column B: "0" is no number of a batch; write a whole number from 1, like 4`},
		{"nuc|batch", "A3|4", "row 2, column B: nobody says when batch 4 was grafted; say when, or write the day into a column of grafts, in one row of the batch"},
		{"nuc|grafted", "A3|1.5.2027", "row 2, column B: a graft and no number of its batch; number the batch, or leave the day out"},
		{"nuc|queen", "A3|maybe", `row 2, column B: "maybe" does not say whether the queen was seen; write yes or no, or leave the cell empty`},
		{"nuc|eggs", "A3|25.5.2027", "row 2, column B: 25.5.2027 lies ahead; write down what has happened, or leave the cell empty"},
		{"nuc|eggs", "A3|24.5.2027 19:30", "row 2, column B: 24.5.2027 19:30 lies ahead; write down what has happened, or leave the cell empty"},
		{"nuc|eggs", "A3|1.5.2027 25:00", "row 2, column B: 25:00 is no time of day; write the time like 18:00, or only the day"},
		{"nuc|cell given|eggs", "A3|20.5.2027|1.5.2027", "row 2, column C: eggs first seen on Sat 1 May, before cell given on Thu 20 May; mend one of the two days"},
		{"nuc|eggs|last look", "A3|20.5.2027|18.5.2027", "row 2, column C: last look on Tue 18 May, before eggs first seen on Thu 20 May; mend one of the two days"},
		{"nuc|cell given|virgin put in", "A3|1.5.2027|1.5.2027", "row 2, column C: a cell was given and a virgin put in; leave one of the two out: that of which its queen is"},
		{"nuc|holds|queen", "A3|no queen|yes", "row 2, column C: its queen was seen, and it holds: no queen; mend one of the two"},
		{"nuc|holds|bees", "A3|empty|4", "row 2, column B: it is empty, and has bees or brood; mend one of the two"},
		{"nuc|holds|colour", "A3|no queen|red", "row 2, column C: a marked queen, and it holds: no queen; leave out the mark, or mend what it holds"},
		{"nuc|holds|eggs", "A3|virgin|1.5.2027", "row 2, column B: it holds: virgin, and eggs were seen Sat 1 May; mend what it holds, or leave the day of the eggs out"},
		{"nuc|holds|virgin put in", "A3|C|1.5.2027", "row 2, column B: it holds a cell, and a virgin was put in; keep one of the two"},
		{"nuc|holds|cell given|emerged", "A3|C|1.5.2027|3.5.2027", "row 2, column B: it holds a cell, and she emerged; write virgin, or leave the day out"},
		{"nuc|batch|grafted|cell given", "A3|4|1.5.2026|11.5.2027", "row 2, column D: cell given on Tue 11 May, 375 days after the graft of batch 4; mend one of the two days"},
		{"nuc|yard", "A3|" + strings.Repeat("x", 81), "row 2, column B: name of 81 characters; write 80 at most"},
		{"nuc|note", "A3|a\x07b", `row 2, column B: note "a\ab": U+0007 does not show; take it out`},
	} {
		s, o := sheet(c.head, c.row)
		o.Sides = 6
		r := roll.Read(s, o, context(nil))
		if len(r.Mistakes()) == 0 || r.Mistakes()[0].Error() != c.want || r.Ready() || len(r.Rows[0].Facts) > 0 || r.Counts.Mistaken != 1 {
			t.Errorf("%s: %s\n\tgot  %v %s\n\twant %s", c.head, c.row, r.Mistakes(), r.Rows[0].Words, c.want)
		}
	}
}

func TestMistakesAcrossRows(t *testing.T) {
	s, o := sheet("nuc|batch|grafted|line|colour|disc|holds",
		"A1|4|1.5.2027|Rook|red|7|E", "A1||||||", "A2|4|2.5.2027|Rook|||", "A3|4||Wren|||", "A4||||red|7|E", "A5|5|bad||||", "A6|5|||||")
	r := roll.Read(s, o, context(nil))
	want := []string{
		"row 3, column A: A1 stands in row 2 too; keep one of the two",
		"row 4, column C: batch 4 was grafted Sat 1 May, says row 2; mend one of the two",
		"row 5, column D: batch 4 is of line Rook, says row 2; mend one of the two, or number the batches apart",
		"row 6, column F: the disc red 7 is in row 2 too; mend one of the two",
		`row 7, column C: "bad" is no day; write it like 2027-05-15, 15.5.2027 or 15 May 2027`,
		"row 8, column B: nobody says when batch 5 was grafted; say when, or write the day into a column of grafts, in one row of the batch",
	}
	if got := lines(r.Mistakes()); got != strings.Join(want, "\n") {
		t.Errorf("mistakes:\n%s\nwant\n%s", got, strings.Join(want, "\n"))
	}
	if got, want := r.Counts.String(), "1 nuc, 1 batch, 1 queen, 6 rows with mistakes"; got != want {
		t.Errorf("counts are %s, want %s", got, want)
	}
	o.Skip = map[int]bool{3: true, 4: true, 5: true, 6: true, 7: true}
	o.Grafted = map[int]calendar.Day{5: day("2027-05-03")}
	r = roll.Read(s, o, context(nil))
	if got, want := r.Counts.String(), "2 nucs, 2 batches, 1 queen, 5 rows left out"; got != want || !r.Ready() {
		t.Errorf("counts are %s, ready %v, want %s; %v", got, r.Ready(), want, r.Mistakes())
	}
}

func TestMistakesOfColumns(t *testing.T) {
	s, o := sheet("box|yard|yard", "1|x|y")
	want := "column C: column B is the yard too; choose another meaning for one of the two\n" +
		"the list: no column has the names of the nucs; say which it is"
	if got := lines(roll.Read(s, o, context(nil)).Mistakes()); got != want {
		t.Errorf("mistakes:\n%s\nwant\n%s", got, want)
	}
}

func lines(all []roll.Mistake) string {
	var text []string
	for _, m := range all {
		text = append(text, m.Error())
	}
	return strings.Join(text, "\n")
}

func day(text string) calendar.Day {
	d, err := calendar.ParseDay(text)
	if err != nil {
		panic(err)
	}
	return d
}

func TestColumnsHaveWords(t *testing.T) {
	for _, c := range roll.Columns() {
		got, err := roll.ParseColumn(c.String())
		if err != nil || got != c || c.Words() == "" {
			t.Errorf("ParseColumn(%q) = %v, %v; words %q", c.String(), got, err, c.Words())
		}
	}
	if c, err := roll.ParseColumn("weather"); err == nil {
		t.Errorf("a column of weather is taken as %v", c)
	}
	for column, want := range map[int]string{1: "A", 26: "Z", 27: "AA", 52: "AZ", 53: "BA", 703: "AAA"} {
		if got := roll.Letters(column); got != want {
			t.Errorf("Letters(%d) = %s, want %s", column, got, want)
		}
	}
}

func TestGuesses(t *testing.T) {
	for _, c := range []struct {
		rows    []string
		heading int
		want    string
	}{
		{[]string{"Nuc No.|Condition|Cell in|Disc-No", "A1|E|1.5.2027|4"}, 1, "[nuc holds cell given disc]"},
		{[]string{"My list", "Nuc|Apiary (home)|Color|Comments", "A1|x|red|y"}, 2, "[nuc yard colour note]"},
		{[]string{"A1|E|red|4", "A2|C|blue|5", "A3|V||6"}, 0, "[nuc holds colour ignored]"},
		{[]string{"Nuc|Nuc|?", "A1|E|w", "A2|V|r"}, 1, "[nuc ignored colour]"},
		{[]string{"Where|What|Nuc|Batch", "A1|Rook|4|4"}, 1, "[ignored ignored nuc batch]"},
		{nil, 0, "[]"},
	} {
		var s roll.Sheet
		for i, text := range c.rows {
			row := roll.Row{Number: i + 1}
			for cell := range strings.SplitSeq(text, "|") {
				row.Cells = append(row.Cells, roll.Cell{Text: cell})
			}
			s.Rows = append(s.Rows, row)
		}
		heading := roll.Heading(s)
		if got := fmt.Sprint(roll.Guess(s, heading)); heading != c.heading || got != c.want {
			t.Errorf("%q: heading %d, columns %s, want %d, %s", c.rows, heading, got, c.heading, c.want)
		}
	}
}

// A box holds 24 nucs at most; rows beyond are told.
func TestABoxTooFull(t *testing.T) {
	var rows []string
	for i := range 26 {
		rows = append(rows, fmt.Sprintf("A%d|7", i+1))
	}
	s, o := sheet("nuc|box", rows...)
	r := roll.Read(s, o, context(nil))
	want := "row 26, column B: box 7: 25 nucs in a box: write 1 to 24; number them apart"
	if all := r.Mistakes(); len(all) != 2 || all[0].Error() != want {
		t.Errorf("mistakes:\n%s\nwant two, the first\n%s", lines(all), want)
	}
	o.Skip = map[int]bool{26: true, 27: true}
	if r := roll.Read(s, o, context(nil)); !r.Ready() || r.Counts.Nucs != 24 {
		t.Errorf("without them: %s", r.Counts)
	}
}

// A row whose own writing is at fault keeps its place.
func TestARowInTrouble(t *testing.T) {
	s, o := sheet("nuc", "A1")
	s.Rows[1].Trouble = "a quotation mark is not closed where its cell ends: close it, or take it out"
	want := "row 2: a quotation mark is not closed where its cell ends; close it, or take it out"
	if got := lines(roll.Read(s, o, context(nil)).Mistakes()); got != want {
		t.Errorf("mistakes: %s, want %s", got, want)
	}
}

// In the morning of a day, what the list tells of it counts up to now.
func TestADayThatIsNotOver(t *testing.T) {
	s, o := sheet("nuc|holds|eggs", "A1|E|24.5.2027", "A2|V|")
	c := context(nil)
	c.Now = c.Now.Add(-11 * time.Hour)
	r := roll.Read(s, o, c)
	if !r.Ready() {
		t.Fatal(lines(r.Mistakes()))
	}
	for _, d := range r.Facts() {
		if d.At.Instant.After(c.Now) {
			t.Errorf("%s lies after %v: %v", d.Words, c.Now, d.At.Instant)
		}
	}
}
