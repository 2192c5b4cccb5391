package course_test

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// signs writes a day's weather for each sign, from a day on.
func signs(p *booktest.Pen, from calendar.Day, days string) {
	sign := map[rune]book.Sign{'+': book.Flying, '±': book.HalfFit, '−': book.NoFlight}
	for i, s := range []rune(days) {
		d := from + calendar.Day(i)
		p.At(d.String() + " 21:00").Write(book.WeatherSeen{Yard: yard, Day: d, Sign: sign[s]})
	}
}

func repeat(s string, n int) (all string) {
	for range n {
		all += s
	}
	return all
}

func berlin(t rapid.TB) *time.Location {
	t.Helper()
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	return zone
}

func between(t *testing.T, what string, got, low, high float64) {
	t.Helper()
	if !(got >= low && got <= high) {
		t.Errorf("%s %.3f, want %.2f to %.2f", what, got, low, high)
	}
}

// TestOwnQueen: caught on 10 May, eggs left, a cell the same hour,
// three flying hours every day; on 26 May no queen and no eggs. Its shares are
// rough arithmetic; ours stay within a few points of them.
func TestOwnQueen(t *testing.T) {
	p := &booktest.Pen{Zone: berlin(t)}
	p.At("2027-04-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "Europe/Berlin"},
		book.NucNamed{Nuc: a1, Name: "A1", Sides: 6, Side: 2}, book.NucPlaced{Nuc: a1, Yard: yard})
	p.At("2027-04-01 09:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3}, book.QueenPutIn{To: a1.Subject(), Queen: booktest.Queen("old")})
	p.At("2027-04-20 09:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs, Brood: book.Said(3), Queen: book.QueenSeen})
	p.At("2027-04-30 09:00").Write(book.Grafted{Batch: booktest.Batch("9"), Number: 9, Larvae: 20, LarvaAge: 18})
	p.At("2027-05-10 10:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("old")}, book.CellGiven{Nuc: a1, Batch: booktest.Batch("9")})
	signs(p, calendar.Date(2027, 4, 20), repeat("+", 60))
	p.At("2027-05-26 18:00").Write(book.Looked{Nuc: a1, Queen: book.NoneSeen, Eggs: book.NoEggs})
	v := p.View("2027-05-26 20:00")
	h := course.New(v).Held(v.Nuc(a1))
	c := h.Chances()
	t.Logf("%+v", c)
	between(t, "own virgin", c.OwnCell+c.OwnVirgin+c.OwnMated, 0.25, 0.45)
	between(t, "none", c.Queenless(), 0.35, 0.50)
	between(t, "laying, missed", c.Lays(), 0.08, 0.20)
	between(t, "given queen late", c.Cell+c.Virgin+c.Mated, 0, 0.17)
	p.At("2027-06-03 10:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs})
	v = p.View("2027-06-03 12:00")
	if n := v.Nuc(a1); n.Holds.Descent != book.DescentDoubtful {
		t.Errorf("descent %v, want doubtful", n.Holds.Descent)
	}
	c = course.New(v).Held(v.Nuc(a1)).Chances()
	t.Logf("%+v", c)
	between(t, "laying", c.Lays(), 0.95, 1)
}

// TestColdWeek: 30 virgins emerged 12 May; five flying days, nine
// without flight, then flying days. No eggs on day 14 are no reason for a cell.
func TestColdWeek(t *testing.T) {
	for _, row := range []struct {
		name, days string
		come       [2]float64 // still to come, after the look on day 14
		by21       [2]float64 // laying on day 21
	}{
		{"cold", repeat("+", 5) + repeat("−", 9) + repeat("+", 30), [2]float64{0.70, 0.86}, [2]float64{0.55, 0.75}},
		{"fine", repeat("+", 44), [2]float64{0, 0.35}, [2]float64{0, 1}},
	} {
		t.Run(row.name, func(t *testing.T) {
			m := course.NewModel(noOwnCells(t))
			b := m.Queenless(false)
			m.GiveCell(&b, course.EmergingIn(0))
			b = b.After(m.Day(3, 1))
			day := func(i int) float64 {
				if []rune(row.days)[i] == '+' {
					return 3
				}
				return 0
			}
			for d := range 14 {
				b = b.After(m.Day(day(d), 1))
			}
			m.Weigh(&b, course.Sight{Eggs: book.NoEggs})
			c := b.Chances()
			t.Logf("day 14: %+v", c)
			between(t, "still to come", c.Late()+c.Lays(), row.come[0], row.come[1])
			for d := 14; d < 21; d++ {
				b = b.After(m.Day(day(d), 1))
			}
			c = b.Chances()
			t.Logf("day 21: %+v", c)
			between(t, "laying on day 21", c.Lays(), row.by21[0], row.by21[1])
		})
	}
}

// TestEvidenceInWords: what a look was worth can be asked.
func TestEvidenceInWords(t *testing.T) {
	p := pen(t)
	celled(p)
	signs(p, calendar.Date(2027, 5, 10), repeat("+", 30))
	p.At("2027-06-02 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs})
	v := p.View("2027-06-02 20:00")
	c := course.New(v)
	got := c.Evidence(v.Nuc(a1))
	if len(got) != 1 || got[0].Words != "no eggs on day 15 after 11 flying days: laying falls from 67 to 14 %" {
		t.Errorf("%+v", got)
	}
	known, was := c.Known(v.Nuc(a1), 0), c.Was(v.Nuc(a1))
	if len(known) != len(was) {
		t.Fatalf("%d days known, %d looked back at", len(known), len(was))
	}
	between(t, "laying today, looked back", was[len(was)-1].Lays()-known[len(known)-1].Lays(), -1e-9, 1e-9)
	for i := range known {
		between(t, "all chances", was[i].Sum(), 1-1e-9, 1+1e-9)
	}
	if day15 := was[len(was)-3]; day15.Lays() > known[len(known)-3].Lays() {
		t.Errorf("no eggs seen later leave laying two days before at %.2f, from %.2f", day15.Lays(), known[len(known)-3].Lays())
	}
}

// TestEvenings: a look in the evening shows on its own day, and the view's day
// has what is held at its instant, in the forenoon and in the evening.
func TestEvenings(t *testing.T) {
	p := pen(t)
	celled(p)
	signs(p, calendar.Date(2027, 5, 10), repeat("+", 30))
	p.At("2027-06-02 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs})
	for _, at := range []string{"2027-06-02 20:00", "2027-06-03 09:00", "2027-06-03 20:00"} {
		v := p.View(at)
		c := course.New(v)
		days := c.Evenings(v.Nuc(a1), 5)
		first, today := days[0].Day, int(v.Today()-days[0].Day)
		for i, d := range days {
			if d.Day != first+calendar.Day(i) {
				t.Fatalf("%s: day %v stands %d days after %v", at, d.Day, i, first)
			}
		}
		if len(days) != today+6 || first != calendar.Date(2027, 5, 13) {
			t.Errorf("%s: %d days from %v", at, len(days), first)
		}
		if held := c.Held(v.Nuc(a1)).Chances(); days[today].Chances != held {
			t.Errorf("%s: today %.3f, held %.3f", at, days[today].Lays(), held.Lays())
		}
		look := calendar.Date(2027, 6, 2)
		if days[look-first].Lays() > 0.3 || days[look-first-1].Lays() < 0.5 {
			t.Errorf("%s: laying on the evening of the look %.2f, before %.2f", at, days[look-first].Lays(), days[look-first-1].Lays())
		}
	}
}

// TestHindsight: each evening up to the view's day is told a second time by all that
// was seen since, alike on the last, and no later day is.
func TestHindsight(t *testing.T) {
	p := pen(t)
	celled(p)
	signs(p, calendar.Date(2027, 5, 10), repeat("+", 30))
	p.At("2027-06-02 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs})
	for _, at := range []string{"2027-06-02 20:00", "2027-06-03 09:00", "2027-06-03 20:00"} {
		v := p.View(at)
		c := course.New(v)
		then, now := c.Evenings(v.Nuc(a1), 0), c.Hindsight(v.Nuc(a1))
		if len(then) != len(now) {
			t.Fatalf("%s: %d evenings, %d looked back at", at, len(then), len(now))
		}
		for i := range then {
			if then[i].Day != now[i].Day || math.Abs(now[i].Sum()-1) > 1e-9 {
				t.Errorf("%s: %v beside %v, all chances %v", at, then[i].Day, now[i].Day, now[i].Sum())
			}
		}
		last := len(then) - 1
		between(t, "laying on the last evening", now[last].Lays()-then[last].Lays(), -1e-9, 1e-9)
		before := int(calendar.Date(2027, 6, 1) - then[0].Day)
		if now[before].Lays() > then[before].Lays()-0.2 {
			t.Errorf("%s: no eggs on the next day leave laying at %.2f of %.2f", at, now[before].Lays(), then[before].Lays())
		}
	}
	if got := course.New(p.View("2027-05-01 20:00")); got.Hindsight(got.View().Nuc(a1)) != nil {
		t.Error("an empty nuc is looked back at")
	}
}

// TestTheOldQueenGone: who answers that the old queen is gone, with the cell or
// later, does not take the cell away.
func TestTheOldQueenGone(t *testing.T) {
	for _, at := range []string{"2027-06-12 10:00", "2027-06-12 20:00"} {
		p := pen(t)
		laying(p)
		p.At("2027-06-01 09:00").Write(book.Grafted{Batch: booktest.Batch("9"), Number: 9, Larvae: 20, LarvaAge: 18})
		p.At("2027-06-12 10:00").Write(book.CellGiven{Nuc: a1, Batch: booktest.Batch("9")})
		p.At(at).Write(book.QueenGone{Nuc: a1})
		v := p.View("2027-06-12 22:00")
		between(t, "a cell, the old queen gone at "+at, course.New(v).Held(v.Nuc(a1)).Chances().Cell, 0.5, 0.9)
	}
}
