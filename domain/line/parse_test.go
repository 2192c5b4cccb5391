package line_test

import (
	"encoding/binary"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

const today = "2027-05-11 20:40"

// yard writes a book of two yards: in the first stand A with 12 nucs and B
// with 6, in the second another A1 and A2; batches 3 and 4, colony S2, virgins
// 1 and 2 in cages, a queen laying in B4.
func yard(t testing.TB) *book.View {
	t.Helper()
	p := &booktest.Pen{Writer: "Ida"}
	p.At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("Hill"), Name: "Home Yard", Zone: "UTC", Home: true},
		book.YardDescribed{Yard: booktest.Yard("Far"), Name: "Far Hill", Zone: "UTC"},
		book.StandSet{Stand: booktest.Stand("A"), Yard: booktest.Yard("Hill"), Letter: "A", Places: 12},
		book.StandSet{Stand: booktest.Stand("B"), Yard: booktest.Yard("Hill"), Letter: "B", Places: 6},
		book.ColonyDescribed{Colony: booktest.Colony("S2"), Name: "S2", Yard: booktest.Yard("Hill"), Roles: []book.Role{book.Finisher}})
	for _, letter := range []string{"A", "B"} {
		for i := range map[string]int{"A": 12, "B": 6}[letter] {
			name := fmt.Sprintf("%s%d", letter, i+1)
			p.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6},
				book.NucPlaced{Nuc: booktest.Nuc(name), Yard: booktest.Yard("Hill"), Stand: booktest.Stand(letter), Place: i + 1},
				book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 3, From: booktest.Colony("S2")})
		}
	}
	for _, name := range []string{"A1", "A2", "D4"} {
		p.Write(book.NucNamed{Nuc: booktest.Nuc("far " + name), Name: name},
			book.NucPlaced{Nuc: booktest.Nuc("far " + name), Yard: booktest.Yard("Far")})
	}
	p.Write(book.NucNamed{Nuc: booktest.Nuc("oak"), Name: "oak-3"})
	p.At("2027-04-20 18:00").Write(book.Grafted{Batch: booktest.Batch("3"), Number: 3, Larvae: 20, Line: "Rook"})
	p.At("2027-04-30 18:00").Write(book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 24, Line: "Rook"})
	p.At("2027-05-02 09:00").Write(
		book.VirginCaged{Queen: booktest.Queen("v1"), Batch: booktest.Batch("3"), Label: "1"},
		book.VirginCaged{Queen: booktest.Queen("v2"), Batch: booktest.Batch("3"), Label: "2"},
		book.Looked{Nuc: booktest.Nuc("B4"), Queen: book.QueenSeen, Eggs: book.SingleEggs})
	return p.View(today)
}

func now(t testing.TB) time.Time {
	t.Helper()
	at, err := time.Parse("2006-01-02 15:04", today)
	if err != nil {
		t.Fatal(err)
	}
	return at
}

// context reads lines in Home Yard on the evening of 11 May.
func context(t testing.TB, v *book.View) line.Context {
	t.Helper()
	var minted uint64
	return line.Context{
		View: v, Now: now(t), Yard: booktest.Yard("Hill"),
		Planned: func(n book.NucID) []book.Fact {
			if n == booktest.Nuc("A12") {
				return nil
			}
			return []book.Fact{book.CellGiven{Nuc: n, Batch: booktest.Batch("4")}}
		},
		Mint: func() (id book.QueenID) {
			minted++
			binary.BigEndian.PutUint64(id[8:], minted)
			return id
		},
	}
}

func TestParse(t *testing.T) {
	v := yard(t)
	b1, a3, b4 := booktest.Nuc("B1"), booktest.Nuc("A3"), booktest.Nuc("B4")
	four := booktest.Batch("4")
	var first book.QueenID
	first[15] = 1
	for _, c := range []struct {
		text  string
		back  string
		facts []book.Fact
	}{
		{"B1 q e b4 s6 /", "B1: queen seen, eggs, capped brood 4 palms, bees on 6 sides, one stroke: settled", []book.Fact{
			book.Looked{Nuc: b1, Queen: book.QueenSeen, Eggs: book.SingleEggs, Brood: book.Said(4), Sides: book.Said(6)},
			book.LidPainted{Nuc: b1, Stroke: book.Settled},
		}},
		{"A3 n o0 c4 s4 h2", "A3: no queen seen, own cells broken down, cell from batch 4 given, bees on 4 sides, stores 2 of 3", []book.Fact{
			book.Looked{Nuc: a3, Queen: book.NoneSeen, Sides: book.Said(4), Stores: book.Said(2)},
			book.OwnCellsBroken{Nuc: a3},
			book.CellGiven{Nuc: a3, Batch: four},
		}},
		{`B4 c4 s5 h2 "old one, not marked" @pm`, "B4: cell from batch 4 given, bees on 5 sides, stores 2 of 3, note: old one, not marked, afternoon", []book.Fact{
			book.Looked{Nuc: b4, Sides: book.Said(5), Stores: book.Said(2), Note: "old one, not marked"},
			book.CellGiven{Nuc: b4, Batch: four},
		}},
		{"B4 c4k", "B4: cell from batch 4 given, queen caught", []book.Fact{
			book.QueenCaught{Nuc: b4, Queen: first}, book.CellGiven{Nuc: b4, Batch: four},
		}},
		{"B4 k7", "B4: queen caught, cage 7", []book.Fact{book.QueenCaught{Nuc: b4, Queen: first, Label: "7"}}},
		{"B4 k0", "B4: queen caught and culled", []book.Fact{book.QueenCaught{Nuc: b4, Queen: first, Culled: true}}},
		{"A3 ve", "A3: virgin seen, eggs", []book.Fact{book.Looked{Nuc: a3, Queen: book.VirginSeen, Eggs: book.SingleEggs}}},
		{"A3ves5h1", "A3: virgin seen, eggs, bees on 5 sides, stores 1 of 3", []book.Fact{book.Looked{
			Nuc: a3, Queen: book.VirginSeen, Eggs: book.SingleEggs, Sides: book.Said(5), Stores: book.Said(1),
		}}},
		{"A3 e0 b0 - d", "A3: no eggs, no capped brood, no queen seen, drone brood in worker cells", []book.Fact{book.Looked{
			Nuc: a3, Queen: book.NoneSeen, Eggs: book.NoEggs, Brood: book.Said(0), DroneBrood: true,
		}}},
		{"A3 w o3 o0 t4", "A3: many eggs a cell, 3 own cells seen, own cells broken down, temper: fierce", []book.Fact{
			book.Looked{Nuc: a3, Eggs: book.ManyEggs, OwnCells: book.Said(3), Temper: book.Said(4)},
			book.OwnCellsBroken{Nuc: a3, Found: book.Said(3)},
		}},
		{"A3 f0.3l", "A3: fed 0.3 l", []book.Fact{book.Fed{To: a3.Subject(), Litres: 0.3}}},
		{"A3 f0,3 l", "A3: fed 0.3 l, larvae", []book.Fact{book.Looked{Nuc: a3, Larvae: true}, book.Fed{To: a3.Subject(), Litres: 0.3}}},
		{"A3 f250g a1.5", "A3: fed 250 g fondant, 1.5 cups of bees added", []book.Fact{
			book.BeesAdded{Nuc: a3, Cups: 1.5}, book.Fed{To: a3.Subject(), Fondant: 250},
		}},
		{"A3 i2 //", "A3: virgin 2 put in, two strokes: watch", []book.Fact{
			book.VirginPutIn{Nuc: a3, Queen: booktest.Queen("v2"), Batch: booktest.Batch("3")}, book.LidPainted{Nuc: a3, Stroke: book.Watch},
		}},
		{"A3 uB4", "A3: united with B4", []book.Fact{book.United{Nuc: a3, With: b4.Subject()}}},
		{"A3 uS2 x", "A3: united with S2, cross: act", []book.Fact{
			book.LidPainted{Nuc: a3, Stroke: book.Act}, book.United{Nuc: a3, With: booktest.Colony("S2").Subject()},
		}},
		{`B3 "cell dropped" n s4`, "B3: cell dropped, no queen seen, bees on 4 sides", []book.Fact{
			book.Looked{Nuc: booktest.Nuc("B3"), Queen: book.NoneSeen, Sides: book.Said(4)},
			book.Dropped{What: book.Cells, Batch: four, Count: 1},
		}},
		{"A3 robbed toppled", "A3: robbed, toppled", []book.Fact{book.Robbed{Nuc: a3}, book.NucLost{Nuc: a3, How: book.Toppled}}},
		{`A3 "sits well"`, "A3: note: sits well", []book.Fact{book.Noted{Of: a3.Subject(), Text: "sits well"}}},
		{"A1-A4 done as written, except A2 A3", "2 nucs: cell from batch 4 given", []book.Fact{
			book.CellGiven{Nuc: booktest.Nuc("A1"), Batch: four}, book.CellGiven{Nuc: booktest.Nuc("A4"), Batch: four},
		}},
		{"A1-A2 done s5", "2 nucs: bees on 5 sides, cell from batch 4 given", []book.Fact{
			book.Looked{Nuc: booktest.Nuc("A1"), Sides: book.Said(5)},
			book.CellGiven{Nuc: booktest.Nuc("A1"), Batch: four},
			book.Looked{Nuc: booktest.Nuc("A2"), Sides: book.Said(5)},
			book.CellGiven{Nuc: booktest.Nuc("A2"), Batch: four},
		}},
		{"A3, B4 h3", "2 nucs: stores 3 of 3", []book.Fact{book.Looked{Nuc: a3, Stores: book.Said(3)}, book.Looked{Nuc: b4, Stores: book.Said(3)}}},
		{"A3 n B4 e", "A3: no queen seen; B4: eggs", []book.Fact{book.Looked{Nuc: a3, Queen: book.NoneSeen}, book.Looked{Nuc: b4, Eggs: book.SingleEggs}}},
		{"B1–3 q except B2; B4 q", "2 nucs: queen seen, left out: B2; B4: queen seen", []book.Fact{
			book.Looked{Nuc: b1, Queen: book.QueenSeen}, book.Looked{Nuc: booktest.Nuc("B3"), Queen: book.QueenSeen}, book.Looked{Nuc: b4, Queen: book.QueenSeen},
		}},
		{"A 50 looked 41 laying 6 virgins", "A: 50 looked at on A in Home Yard, 41 laying, 6 with a virgin", []book.Fact{
			book.RowLooked{Yard: booktest.Yard("Hill"), Stand: booktest.Stand("A"), Looked: 50, Laying: 41, Virgins: 6},
		}},
		{"yard: 50 looked 41 laying c3", "Home Yard: 50 looked at in Home Yard with batch 3, 41 laying", []book.Fact{
			book.RowLooked{Yard: booktest.Yard("Hill"), Batch: booktest.Batch("3"), Looked: 50, Laying: 41},
		}},
		{"a3 q e", "A3: queen seen, eggs", []book.Fact{book.Looked{Nuc: a3, Queen: book.QueenSeen, Eggs: book.SingleEggs}}},
		{"a3 a2", "A3: 2 cups of bees added", []book.Fact{book.BeesAdded{Nuc: a3, Cups: 2}}},
		{"a3, b4 h3", "2 nucs: stores 3 of 3", []book.Fact{book.Looked{Nuc: a3, Stores: book.Said(3)}, book.Looked{Nuc: b4, Stores: book.Said(3)}}},
		{"A3 B4 h3", "2 nucs: stores 3 of 3", []book.Fact{book.Looked{Nuc: a3, Stores: book.Said(3)}, book.Looked{Nuc: b4, Stores: book.Said(3)}}},
		{"a1-a3 h3 except a1, a2; b4 e", "A3: stores 3 of 3, left out: A1, A2; B4: eggs", []book.Fact{book.Looked{Nuc: a3, Stores: book.Said(3)}, book.Looked{Nuc: b4, Eggs: book.SingleEggs}}},
		{"D4 e", "D4: eggs", []book.Fact{book.Looked{Nuc: booktest.Nuc("far D4"), Eggs: book.SingleEggs}}},
		{"A03 e", "A3: eggs", []book.Fact{book.Looked{Nuc: a3, Eggs: book.SingleEggs}}},
		{"oak-3: e", "oak-3: eggs", []book.Fact{book.Looked{Nuc: booktest.Nuc("oak"), Eggs: book.SingleEggs}}},
		{"   ", "", nil},
	} {
		l, err := line.Parse(c.text, context(t, v))
		if err != nil {
			t.Errorf("Parse(%q): %v", c.text, err)
			continue
		}
		if got := l.String(); got != c.back {
			t.Errorf("Parse(%q) reads back\n%s, want\n%s", c.text, got, c.back)
		}
		if diff := cmp.Diff(c.facts, l.Facts(), cmp.AllowUnexported(book.Amount{})); diff != "" {
			t.Errorf("Parse(%q): facts (-want +got)\n%s", c.text, diff)
		}
	}
}

func TestMistakes(t *testing.T) {
	v := yard(t)
	for _, c := range []struct{ text, want string }{
		{"A3 n c4 s7", "column 9: s has at most 6 sides in A3; write s0 to s6"},
		{"A3 c9", "column 4: there is no batch 9; those in the book: 3 and 4"},
		{"A3 i7", "column 4: no virgin 7 sits in a cage; those in the book: 1 and 2"},
		{"C1 e", "column 1: no nuc is called C1; mend the name, or add the nuc to the book first"},
		{"O1 e", "column 1: no nuc is called O1; names have no I and no O; write 1 or 0 where you mean a figure"},
		{"A3 q n", "column 6: n stands beside q; keep one of the two"},
		{"A3 h4", "column 4: h4 is outside what h can say; write h0 to h3"},
		{"A3 t0", "column 4: t0 is outside what t can say; write t1 to t4"},
		{"A3 b", "column 4: b wants a figure; write it close behind, like b4"},
		{"A3 q z", `column 6: z is no letter of the line; put words of your own in quotes`},
		{"A3 qzzz", `column 5: zzz is no letter of the line; put words of your own in quotes`},
		{"A3", "column 1: nothing is said of A3; say what was seen or done, like q e s5"},
		{"q e", "column 1: nobody knows of which nuc this tells; begin with its name, like L7"},
		{"A3 uA3", "column 4: A3 cannot be united with itself; name the other nuc or colony"},
		{"A3 u", "column 4: u wants the name of a nuc or colony; write it close behind, like uD4"},
		{"A1-A2 i1", "column 7: one virgin cannot go into several nucs; write a line for each nuc"},
		{"A12-A1 e", "column 5: the row runs backwards; write A1-A12"},
		{"B1-A3 e", "column 4: A3 ends a row that begins with B1; write the letters in order, of nucs of one yard"},
		{"A1-A3 e except B4", "column 16: B4 is not in A1-A3; leave out only what is in the row"},
		{"A12 done", "column 1: nothing that can be ticked off is written for A12; type what was seen or done there, or leave it out"},
		{`A3 "old`, `column 4: the note is not closed; end it with "`},
		{"A3 e @22:00", "column 6: @22:00 is still to come; write down what has happened"},
		{"A3 e @dawn", "column 6: @dawn is no time of day; write @am, @noon, @pm, @eve, @night or a time like @14:30"},
		{"A3 5", "column 4: 5 stands alone; put its letter close before it, like s5"},
		{"A 40 looked 41 laying", "column 1: 41 of 40 were found to be something; mend the counts"},
		{"C 40 looked", "column 1: there is no stand C; a nuc has a number as well, like C1, and codes are small letters"},
		{"A1-A3 e except", "column 15: except whom; name the nucs that are left out, like except A3 A9"},
	} {
		_, err := line.Parse(c.text, context(t, v))
		if err == nil {
			t.Errorf("Parse(%q): no mistake, want %s", c.text, c.want)
			continue
		}
		if got := strings.Split(err.Error(), "\n")[0]; got != c.want {
			t.Errorf("Parse(%q)\n   = %s\nwant %s", c.text, got, c.want)
		}
	}
}

// A dropped cell is of the batch that is along, whatever the sheet says; of two
// that are, nobody knows which.
func TestDroppedCell(t *testing.T) {
	v := yard(t)
	p := &booktest.Pen{Entries: entries(v)}
	p.At("2027-05-11 09:00").Write(book.TakenAlong{What: book.Cells, Batch: booktest.Batch("3"), Count: 10})
	c := context(t, p.View(today))
	c.Planned = nil
	l, err := line.Parse("B3 cell dropped", c)
	want := []book.Fact{book.Dropped{What: book.Cells, Batch: booktest.Batch("3"), Count: 1}}
	if diff := cmp.Diff(want, l.Facts()); err != nil || diff != "" {
		t.Errorf("one batch along: %v, facts (-want +got)\n%s", err, diff)
	}
	p.Write(book.TakenAlong{What: book.Cells, Batch: booktest.Batch("4"), Count: 10})
	c.View = p.View(today)
	if _, err := line.Parse("B3 cell dropped", c); err == nil || !strings.HasPrefix(err.Error(), "column 4: nobody knows of which batch the cell was;") {
		t.Errorf("two batches along: %v, want the batch asked for", err)
	}
}

// TestDroppedCellByTheSheet: of two batches along it is the one the sheet gives
// the nuc a cell of, if that is along; with none along and no sheet, the only
// one that has cells left.
func TestDroppedCellByTheSheet(t *testing.T) {
	along := func(p *booktest.Pen) {
		for _, b := range []string{"3", "4"} {
			p.Write(book.TakenAlong{What: book.Cells, Batch: booktest.Batch(b), Count: 1})
		}
	}
	cull := func(p *booktest.Pen) { p.Write(book.CellsCulled{Batch: booktest.Batch("3"), Cells: 999}) }
	for _, row := range []struct {
		name  string
		write func(*booktest.Pen)
		sheet string
		want  string
	}{
		{"two along, one on the sheet", along, "4", "4"},
		{"two along, another on the sheet", along, "9", ""},
		{"none along, one left", cull, "", "4"},
		{"none along, two left", func(*booktest.Pen) {}, "", ""},
	} {
		v := yard(t)
		p := &booktest.Pen{Entries: entries(v)}
		row.write(p.At("2027-05-11 09:00"))
		c := context(t, p.View(today))
		c.Planned = func(id book.NucID) []book.Fact {
			if row.sheet == "" {
				return nil
			}
			return []book.Fact{book.CellGiven{Nuc: id, Batch: booktest.Batch(row.sheet)}}
		}
		l, err := line.Parse("B3 cell dropped", c)
		if row.want == "" {
			if err == nil {
				t.Errorf("%s: %v, want the batch asked for", row.name, l.Facts())
			}
			continue
		}
		want := []book.Fact{book.Dropped{What: book.Cells, Batch: booktest.Batch(row.want), Count: 1}}
		if err != nil {
			t.Errorf("%s: %v", row.name, err)
		} else if diff := cmp.Diff(want, l.Facts()); diff != "" {
			t.Errorf("%s: facts (-want +got)\n%s", row.name, diff)
		}
	}
}

func TestYardAskedFor(t *testing.T) {
	c := context(t, yard(t))
	c.Yard = book.YardID{}
	_, err := line.Parse("A1 e", c)
	if want := "column 1: A1 stands in Home Yard and Far Hill; say in which yard you are"; err == nil || err.Error() != want {
		t.Errorf("Parse of an ambiguous name = %v, want %s", err, want)
	}
}

func TestFutureDay(t *testing.T) {
	c := context(t, yard(t))
	c.Day = calendar.Date(2027, 5, 12)
	_, err := line.Parse("A1 e", c)
	if want := "column 1: Wed 12 May is still to come; write down what has happened"; err == nil || err.Error() != want {
		t.Errorf("Parse for tomorrow = %v, want %s", err, want)
	}
}

func TestMoments(t *testing.T) {
	v := yard(t)
	for _, c := range []struct {
		day        calendar.Day
		text, want string
	}{
		{0, "A1 e", "Tue 11 May 20:40"},
		{0, "A1 e @am", "Tue 11 May, morning"},
		{0, "A1 e @night", "Tue 11 May, night"},
		{0, "A1 e @14:30", "Tue 11 May 14:30"},
		{calendar.Date(2027, 5, 10), "A1 e", "Mon 10 May"},
		{calendar.Date(2027, 5, 10), "A1 e @22:00", "Mon 10 May 22:00"},
	} {
		ctx := context(t, v)
		ctx.Day = c.day
		l, err := line.Parse(c.text, ctx)
		if err != nil {
			t.Fatalf("Parse(%q): %v", c.text, err)
		}
		at := l.Sections[0].At
		if got := at.In(time.UTC); got != c.want {
			t.Errorf("Parse(%q) of %v happened %s, want %s", c.text, c.day, got, c.want)
		}
		if at.Instant.After(now(t)) {
			t.Errorf("Parse(%q) happened at %v, after it was written", c.text, at.Instant)
		}
	}
}

func TestMomentOfTheContext(t *testing.T) {
	c := context(t, yard(t))
	c.Day = calendar.Date(2027, 5, 10)
	c.At = calendar.Instantly(time.Date(2027, 5, 10, 16, 30, 0, 0, time.UTC))
	for text, want := range map[string]string{"A1 e": "Mon 10 May 16:30", "A1 e @am": "Mon 10 May, morning"} {
		l, err := line.Parse(text, c)
		if err != nil || l.Sections[0].At.In(time.UTC) != want {
			t.Errorf("Parse(%q) = %v, %v, want %s", text, l.Sections, err, want)
		}
	}
}

func TestTokensPointIntoTheLine(t *testing.T) {
	l, err := line.Parse(`A3 v s5 h2 /`, context(t, yard(t)))
	if err != nil {
		t.Fatal(err)
	}
	want := []line.Token{{4, 5, "virgin seen"}, {6, 8, "bees on 5 sides"}, {9, 11, "stores 2 of 3"}, {12, 13, "one stroke: settled"}}
	if diff := cmp.Diff(want, l.Sections[0].Tokens); diff != "" {
		t.Errorf("tokens (-want +got)\n%s", diff)
	}
}

func TestHalfTypedLineIsReadBack(t *testing.T) {
	l, err := line.Parse(`A3 v s5 "not yet`, context(t, yard(t)))
	if err == nil || len(l.Sections) != 1 || len(l.Sections[0].Tokens) != 2 || len(l.Facts()) != 0 {
		t.Errorf("half a line = %+v, %v, want two tokens, no facts and a mistake", l, err)
	}
}

func TestLineOfARow(t *testing.T) {
	c := context(t, yard(t))
	c.Nuc = booktest.Nuc("B2")
	l, err := line.Parse("v s5", c)
	if err != nil || l.String() != "B2: virgin seen, bees on 5 sides" {
		t.Errorf("Parse without a name = %q, %v", l, err)
	}
}
