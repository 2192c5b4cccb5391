package line_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/handover"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// namesOf are the names that outputs print of a queen: in lists, on her card, in the words of an
// entry.
func namesOf(v *book.View, q *book.Queen) (all []string) {
	all = append(all, rules.Name(v, q.Queen.Subject()))
	if said := line.In(v).Of(q.Queen.Subject()); said != "" && q.InHand() {
		all = append(all, "queen "+said)
	}
	if q.Label != "" && q.InHand() {
		all = append(all, "cage "+q.Label)
	}
	if q.Mark.Disc != "" {
		mark := strings.TrimSpace(q.Mark.Colour + " disc " + q.Mark.Disc)
		all = append(all, mark, strings.TrimSpace("disc "+q.Mark.Colour+" "+q.Mark.Disc), "disc "+q.Mark.Disc)
		if q.Mark.Clipped {
			all = append(all, mark+", wing clipped", q.Mark.Colour+", disc "+q.Mark.Disc+", a wing clipped")
		}
	}
	if words := v.CatchWords(q); words != "" {
		all = append(all, words)
	}
	return all
}

// Every name that is printed of a queen is hers, or says of whom it may be; and each of those
// that it says then is one queen's alone.
func printedNamesFind(t *testing.T, v *book.View) (asked int) {
	t.Helper()
	for q := range v.Queens() {
		for _, name := range namesOf(v, q) {
			if strings.HasPrefix(name, "a queen without") {
				continue
			}
			asked++
			all := line.QueensCalled(v, name, true, anybody)
			if !slices.ContainsFunc(all, func(o *book.Queen) bool { return o.Queen == q.Queen }) {
				t.Errorf("%q finds %d, not her of whom it is said", name, len(all))
			}
			if !q.Handed.IsZero() && !slices.ContainsFunc(handover.HandedOver(v, name), func(g handover.Gone) bool { return g.Queen == q }) {
				t.Errorf("%q does not find her among those handed over", name)
			}
			if len(all) < 2 {
				continue
			}
			_, err := line.Queen(v, name, true, anybody)
			_, list, _ := strings.Cut(err.Error(), "meant, ")
			for one := range strings.SplitSeq(strings.TrimSuffix(list, " and more"), "; ") {
				if found, err := line.Queen(v, one, true, anybody); err != nil || !slices.Contains(all, found) {
					t.Errorf("of %q it says %q, which is not one of them: %v", name, one, err)
				}
			}
		}
	}
	return asked
}

func anybody(*book.Queen) bool { return true }

func TestPrintedNamesFindTheirQueensInTheDemo(t *testing.T) {
	today := calendar.Date(2027, time.May, 11)
	v := book.NewSeason(nil, demo.Season(today, time.UTC)).At(today.At(12, 0, time.UTC))
	if n := printedNamesFind(t, v); n < 100 {
		t.Errorf("only %d names were asked", n)
	}
}

// twoYears is a book in which a disc, a cage and a nuc come again in the second year: two
// colours of disc 11, two queens who were in cage 7, two who came out of A1, and disc 2 beside
// cage 2.
func twoYears() *booktest.Pen {
	p := (&booktest.Pen{}).At("2026-04-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.NucNamed{Nuc: booktest.Nuc("A1"), Name: "A1", Sides: 6}, book.NucNamed{Nuc: booktest.Nuc("A2"), Name: "A2", Sides: 6},
		book.OrderTaken{Order: booktest.Order("90"), Number: "90", Customer: "Hill farm", Queens: 3, By: calendar.Date(2026, time.June, 20)},
		book.QueenDescribed{Queen: booktest.Queen("named"), Name: "Rook, the old", Line: "Rook"},
	)
	goes := func(at, nuc, queen, cage string, m book.QueenMarked) {
		m.Queen = booktest.Queen(queen)
		p.At(at + " 10:00").Write(book.QueenCaught{Nuc: booktest.Nuc(nuc), Queen: m.Queen, Label: cage})
		p.At(at + " 10:05").Write(m)
	}
	goes("2026-06-13", "A1", "white", "7", book.QueenMarked{Colour: "white", Disc: "11"})
	goes("2026-06-14", "A2", "bare", "", book.QueenMarked{})
	p.At("2026-06-15 10:00").Write(book.QueenHandedOver{Queen: booktest.Queen("white"), Order: booktest.Order("90")}, book.QueenHandedOver{Queen: booktest.Queen("bare"), To: "a neighbour"})
	goes("2027-06-12", "A1", "yellow", "7", book.QueenMarked{Colour: "yellow", Disc: "11", Clipped: true})
	goes("2027-06-13", "A2", "late", "", book.QueenMarked{})
	p.At("2027-06-14 10:00").Write(book.QueenHandedOver{Queen: booktest.Queen("yellow"), To: "Ida"})
	goes("2027-06-15", "A1", "two", "2", book.QueenMarked{Colour: "yellow"})
	goes("2027-06-15", "A2", "disc", "3", book.QueenMarked{Colour: "yellow", Disc: "2"})
	p.At("2027-06-16 08:00").Write(book.VirginCaged{Queen: booktest.Queen("virgin"), Label: "9"}, book.QueenMarked{Queen: booktest.Queen("nuc"), Nuc: booktest.Nuc("A2"), Disc: "40"})
	return p
}

func TestPrintedNamesFindTheirQueensInTheSecondYear(t *testing.T) {
	v := twoYears().View("2027-06-17 08:00")
	if n := printedNamesFind(t, v); n < 30 {
		t.Errorf("only %d names were asked", n)
	}
	for text, want := range map[string]string{
		"white 11": "white", "queen yellow 11": "yellow", "Yellow disc 11, wing clipped": "yellow", "disc 2": "disc", "cage 2": "two", "2": "two", "queen yellow 2": "disc",
		"caught from A2 on Sun 14 Jun 2026": "bare", "the queen caught from A2 on Sun 13 Jun": "late", "A2": "late", "11, Ida": "", "11, order 90": "white", "11, Hill Farm": "white",
		"rook, the old": "named", "disc 40": "nuc", "virgin 9": "virgin", "7, caught from A1 on Sat 12 Jun": "yellow", "11, handed over on 2026-06-15": "white",
		"blue 11": "", "white 2": "", "11": "", "cage 7": "", "the queen once in cage 7": "", "white": "", "nobody": "", "": "",
	} {
		q, err := line.Queen(v, text, true, anybody)
		switch {
		case want == "" && err == nil:
			t.Errorf("%q finds one queen", text)
		case want != "" && err != nil:
			t.Errorf("%q: %v", text, err)
		case want != "" && q.Queen != booktest.Queen(want):
			t.Errorf("%q finds %s", text, rules.Name(v, q.Queen.Subject()))
		}
	}
}

// Who does not say which of two is told both, each by a name that is hers alone.
func TestAmbiguousNamesSayWhichThereAre(t *testing.T) {
	_, err := line.Queen(twoYears().View("2027-06-17 08:00"), "disc 11", true, anybody)
	want := "2 queens are called disc 11: name the one that is meant, queen white 11, caught from A1 on Sat 13 Jun 2026, handed over on Mon 15 Jun 2026; " +
		"queen yellow 11, caught from A1 on Sat 12 Jun, handed over on Mon 14 Jun"
	if err == nil || err.Error() != want {
		t.Errorf("it says %v", err)
	}
}

// The name of a nuc alone is the nuc's, where nothing asks for a queen.
func TestNucsNameNoQueensWhereTheyAreAsked(t *testing.T) {
	v := twoYears().View("2027-06-17 08:00")
	for text, want := range map[string]int{"A2": 0, "from A2": 2, "cage 2": 1} {
		if all := line.QueensCalled(v, text, false, anybody); len(all) != want {
			t.Errorf("%q names %d queens, want %d", text, len(all), want)
		}
	}
}
