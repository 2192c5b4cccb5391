package course_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// twins are nucs of which the same is written; the last goes its own way.
var twins = []book.NucID{booktest.Nuc("A1"), booktest.Nuc("A2"), booktest.Nuc("A3")}

// diary is the season of the twins: deeds at random hours, some of them written
// days later or struck, weather seen and foretold.
func diary(t *rapid.T) *booktest.Pen {
	p := &booktest.Pen{Zone: berlin(t)}
	p.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "Europe/Berlin"})
	for _, n := range twins {
		p.Write(book.NucNamed{Nuc: n, Name: n.String()}, book.NucPlaced{Nuc: n, Yard: yard})
	}
	p.Write(book.Grafted{Batch: batch, Number: 4, Larvae: 20})
	at := time.Date(2027, 5, 3, 0, 0, 0, 0, p.Zone)
	for range rapid.IntRange(1, 10).Draw(t, "deeds") {
		at = at.Add(time.Duration(rapid.IntRange(1, 150).Draw(t, "hours")) * time.Hour)
		deed := rapid.IntRange(0, len(done)-1).Draw(t, "deed")
		late := time.Duration(rapid.IntRange(0, 3).Draw(t, "days late")) * 24 * time.Hour
		apart := rapid.Bool().Draw(t, "apart")
		for i, n := range twins {
			if hour := i * 2; apart && i < 2 { // the same, two hours later
				p.At(at.Add(time.Duration(hour) * time.Hour).Format("2006-01-02 15:04"))
			} else {
				p.At(at.Format("2006-01-02 15:04"))
			}
			if i == 2 {
				deed = rapid.IntRange(0, len(done)-1).Draw(t, "deed of the other")
			}
			p.Write(done[deed](n, at))
			last := &p.Entries[len(p.Entries)-1]
			last.Written = last.Written.Add(late)
			if rapid.IntRange(0, 9).Draw(t, "struck") == 0 {
				p.At(at.Add(50 * time.Hour).Format("2006-01-02 15:04")).Strike()
			}
		}
	}
	weathered(t, p)
	return p
}

var done = []func(book.NucID, time.Time) book.Fact{
	func(n book.NucID, _ time.Time) book.Fact { return book.NucMadeUp{Nuc: n, Cups: 3} },
	func(n book.NucID, _ time.Time) book.Fact { return book.NucMadeUp{Nuc: n, Cups: 3, Open: 1, Capped: 1} },
	func(n book.NucID, _ time.Time) book.Fact { return book.CellGiven{Nuc: n, Batch: batch} },
	func(n book.NucID, _ time.Time) book.Fact { return book.CellGiven{Nuc: n} },
	func(n book.NucID, at time.Time) book.Fact {
		return book.VirginPutIn{Nuc: n, Emerged: at.Add(-50 * time.Hour)}
	},
	func(n book.NucID, _ time.Time) book.Fact {
		return book.QueenPutIn{To: n.Subject(), Queen: booktest.Queen("a")}
	},
	func(n book.NucID, _ time.Time) book.Fact { return book.BroodGiven{To: n.Subject(), Open: 1} },
	func(n book.NucID, _ time.Time) book.Fact { return book.Looked{Nuc: n, Eggs: book.NoEggs} },
	func(n book.NucID, _ time.Time) book.Fact { return book.Looked{Nuc: n, Eggs: book.SingleEggs} },
	func(n book.NucID, _ time.Time) book.Fact {
		return book.Looked{Nuc: n, Queen: book.NoneSeen, Eggs: book.NoEggs, OwnCells: book.Said(2)}
	},
	func(n book.NucID, _ time.Time) book.Fact {
		return book.Looked{Nuc: n, Queen: book.VirginSeen, Thorough: true}
	},
	func(n book.NucID, _ time.Time) book.Fact { return book.Looked{Nuc: n, Cell: book.CellTornAtSide} },
	func(n book.NucID, _ time.Time) book.Fact {
		return book.Looked{Nuc: n, Eggs: book.SingleEggs, Queen: book.QueenSeen, Brood: book.Said(2), Cell: book.CellShut}
	},
	func(n book.NucID, _ time.Time) book.Fact { return book.OwnCellsBroken{Nuc: n, Found: book.Said(1)} },
	func(n book.NucID, _ time.Time) book.Fact { return book.QueenCaught{Nuc: n} },
	func(n book.NucID, _ time.Time) book.Fact { return book.QueenGone{Nuc: n} },
	func(n book.NucID, _ time.Time) book.Fact { return book.ShakenOut{Nuc: n} },
	func(n book.NucID, _ time.Time) book.Fact { return book.Looked{Nuc: n, DroneBrood: true} },
	func(n book.NucID, _ time.Time) book.Fact { return book.Looked{Nuc: n, Eggs: book.NoEggs, Quick: true} },
	func(n book.NucID, _ time.Time) book.Fact {
		return book.Looked{Nuc: n, Eggs: book.ManyEggs, Quick: true}
	},
	func(n book.NucID, _ time.Time) book.Fact { return book.Looked{Nuc: n, Larvae: true} },
	func(n book.NucID, _ time.Time) book.Fact {
		return book.Looked{Nuc: n, Cell: book.CellOpenAtTip, OwnCells: book.Said(0), Brood: book.Said(0)}
	},
}

func weathered(t *rapid.T, p *booktest.Pen) {
	for range rapid.IntRange(0, 20).Draw(t, "weathers") {
		d := calendar.Date(2027, 5, rapid.IntRange(3, 60).Draw(t, "day"))
		w := book.WeatherSeen{Yard: yard, Day: d, Sign: rapid.SampledFrom([]book.Sign{book.Flying, book.HalfFit, book.NoFlight}).Draw(t, "sign")}
		told := d
		if w.Forecast = rapid.Bool().Draw(t, "forecast"); w.Forecast {
			told -= calendar.Day(rapid.IntRange(1, 5).Draw(t, "ahead"))
		}
		p.At(told.String() + " 20:00").Write(w)
	}
}

// answers is all that a course says of a nuc.
type answers struct {
	Row, From  calendar.Day
	Chances    course.Chances
	Evidence   []course.Evidence
	Known, Was []course.DayChances
	Presumed   course.Presumption
	Eggs       [3]float64
	EggsDay    calendar.Day
}

func answersOf(c *course.Course, n *book.Nuc) answers {
	h, e := c.Held(n), c.Eggs(n)
	return answers{
		Row: h.Row, From: h.From, Chances: h.Chances(), Evidence: c.Evidence(n),
		Known: c.Known(n, 3), Was: c.Was(n), Presumed: c.Of(n),
		Eggs: [...]float64{e.By(h.Row), e.By(h.Row + 9), e.Ever()}, EggsDay: e.Day(0.7),
	}
}

// TestMemoryChangesNoAnswer: a course that goes on from others, of days in any
// order, of other states of the book, as known at other times, says of every
// nuc what a new one says; also of nucs that share their history. What it says
// is sound: the chances of each day are chances, and what is known of today is
// what is held today.
func TestMemoryChangesNoAnswer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := diary(t)
		var c *course.Course
		for range rapid.IntRange(2, 6).Draw(t, "views") {
			written := p.Entries[:rapid.IntRange(8, len(p.Entries)).Draw(t, "entries")]
			on := time.Date(2027, 5, 1, 9, 0, 0, 0, p.Zone).Add(time.Duration(rapid.IntRange(0, 1500).Draw(t, "on")) * time.Hour)
			var known time.Time
			if rapid.Bool().Draw(t, "as known") {
				known = on.Add(time.Duration(rapid.IntRange(-100, 100).Draw(t, "known")) * time.Hour)
			}
			v := book.NewSeason(booktest.Zones, written).AsKnown(on, known)
			c = course.Again(v, c)
			for _, id := range twins {
				got, want := answersOf(c, v.Nuc(id)), answersOf(course.New(v), v.Nuc(id))
				if d := cmp.Diff(want, got); d != "" {
					t.Fatalf("as new, and with memory (+):\n%s", d)
				}
				soundAnswers(t, got)
			}
		}
	})
}

func soundAnswers(t *rapid.T, a answers) {
	if a.From == 0 {
		return
	}
	for _, days := range [][]course.DayChances{a.Known, a.Was} {
		for i, d := range days {
			if wrong := sound(d.Chances); wrong != "" || d.Day != a.From+calendar.Day(i) {
				t.Fatalf("day %d: %v %s: %+v", i, d.Day, wrong, d.Chances)
			}
		}
	}
	today := a.Row.Sub(a.From)
	if len(a.Known) != today+4 || len(a.Was) != today+1 {
		t.Fatalf("%d days known and %d looked back on, day %d", len(a.Known), len(a.Was), today)
	}
	if a.Known[today].Chances != a.Chances {
		t.Fatalf("known of today %+v, held %+v", a.Known[today].Chances, a.Chances)
	}
	if !(a.Eggs[0] >= 0 && a.Eggs[0] <= a.Eggs[1] && a.Eggs[1] <= a.Eggs[2]+1e-12 && a.Eggs[2] <= 1+1e-9) {
		t.Fatalf("first eggs by today, nine days on and ever: %v", a.Eggs)
	}
}

// TestEveningAndMorningLooks: what is seen after the flights of a day counts as
// what is seen on the next morning, and is told with the day it was seen on.
func TestEveningAndMorningLooks(t *testing.T) {
	p := pen(t)
	celled(p)
	a2 := booktest.Nuc("A2")
	p.At("2027-05-13 18:00").Write(book.NucNamed{Nuc: a2, Name: "A2"}, book.NucPlaced{Nuc: a2, Yard: yard}, book.NucMadeUp{Nuc: a2, Cups: 3})
	p.At("2027-05-15 10:00").Write(book.CellGiven{Nuc: a2, Batch: batch})
	p.At("2027-06-02 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs})
	p.At("2027-06-03 08:00").Write(book.Looked{Nuc: a2, Eggs: book.NoEggs})
	v := p.View("2027-06-03 12:00")
	c := course.New(v)
	for id, day := range map[book.NucID]calendar.Day{a1: calendar.Date(2027, 6, 2), a2: calendar.Date(2027, 6, 3)} {
		for range 2 {
			if got := c.Held(v.Nuc(id)).Weighed; len(got) != 1 || got[0].Day != day {
				t.Errorf("looks %+v, want one on %v", got, day)
			}
		}
	}
	if one, other := c.Held(v.Nuc(a1)).Chances(), c.Held(v.Nuc(a2)).Chances(); one != other {
		t.Errorf("seen in the evening %+v, on the next morning %+v", one, other)
	}
}

// TestLookThatNothingExplains: it is told as amiss, what was known is dropped,
// and the look weighs on what is then known.
func TestLookThatNothingExplains(t *testing.T) {
	p := pen(t)
	sight := book.Looked{Nuc: a1, Eggs: book.SingleEggs, Queen: book.QueenSeen, Brood: book.Said(3)}
	p.At("2027-05-14 09:00").Write(sight)
	v := p.View("2027-05-14 10:00")
	c := course.New(v)
	h := c.Held(v.Nuc(a1))
	want := c.Model().Unknown()
	c.Model().Weigh(&want, course.Saw(sight))
	if len(h.Weighed) != 1 || !h.Weighed[0].Amiss || h.Belief != want {
		t.Errorf("a nuc of bees alone with brood, eggs and queen next morning: %+v", h)
	}
	if lays := h.Chances().Lays(); lays < 0.99 {
		t.Errorf("laying %g, want all but certain", lays)
	}
	if got := c.Evidence(v.Nuc(a1))[0].Words; got != "queen seen, eggs, capped worker brood: nothing the book knows explains it; what was known before is dropped" {
		t.Errorf("%q", got)
	}
}

// TestUnexplainedLooksSayNothingOfBefore: what was true before a look that
// dropped what was known is what was known then.
func TestUnexplainedLooksSayNothingOfBefore(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-05-17 09:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs, Queen: book.QueenSeen, Brood: book.Said(3)})
	p.At("2027-05-19 09:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs})
	v := p.View("2027-05-20 09:00")
	c := course.New(v)
	known, was := c.Known(v.Nuc(a1), 0), c.Was(v.Nuc(a1))
	for i, d := range known {
		if d.Day < calendar.Date(2027, 5, 17) {
			near(t, d.Day.String()+", a cell", was[i].Cell, d.Cell)
			near(t, d.Day.String()+", laying", was[i].Lays(), d.Lays())
		}
	}
	if looked := c.Evidence(v.Nuc(a1)); len(looked) != 2 || !looked[0].Amiss || looked[1].Amiss {
		t.Errorf("%+v, want the first amiss", looked)
	}
}

// TestWrittenTwice: a cell that two writers wrote down is one cell, and so is
// a virgin; another of the next day is another.
func TestWrittenTwice(t *testing.T) {
	given := func(times ...string) course.Chances {
		p := pen(t)
		for _, at := range times {
			p.At(at).Write(book.CellGiven{Nuc: a1, Batch: batch})
		}
		v := p.View("2027-05-16 13:00")
		return course.New(v).Held(v.Nuc(a1)).Chances()
	}
	once, twice, again := given("2027-05-15 10:00"), given("2027-05-15 10:00", "2027-05-15 12:00"), given("2027-05-15 10:00", "2027-05-16 12:00")
	if once != twice {
		t.Errorf("a cell written once leaves %+v, twice %+v", once, twice)
	}
	if !(again.Cell > once.Cell) {
		t.Errorf("a second cell on the next day leaves the chance of one at %g, from %g", again.Cell, once.Cell)
	}
}

// TestMoreHoursNeverLaterEggs: where every day is as good or better for flight,
// no first egg is less probable by any day.
func TestMoreHoursNeverLaterEggs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		worse, better := &booktest.Pen{Zone: berlin(t)}, &booktest.Pen{Zone: berlin(t)}
		open := float64(rapid.IntRange(0, 1).Draw(t, "open brood"))
		for _, p := range []*booktest.Pen{worse, better} {
			p.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "Europe/Berlin"},
				book.NucNamed{Nuc: a1, Name: "A1"}, book.NucPlaced{Nuc: a1, Yard: yard},
				book.NucMadeUp{Nuc: a1, Cups: 3, Open: open}, book.CellGiven{Nuc: a1})
		}
		signs := []book.Sign{book.NoFlight, book.HalfFit, book.Flying}
		for d := calendar.Date(2027, 5, 1); d < calendar.Date(2027, 6, 20); d++ {
			sign := rapid.IntRange(0, 2).Draw(t, "sign")
			worse.At(d.String() + " 20:00").Write(book.WeatherSeen{Yard: yard, Day: d, Sign: signs[sign]})
			better.At(d.String() + " 20:00").Write(book.WeatherSeen{Yard: yard, Day: d, Sign: signs[rapid.IntRange(sign, 2).Draw(t, "better")]})
		}
		on := calendar.Date(2027, 5, rapid.IntRange(2, 40).Draw(t, "on")).String() + " 12:00"
		w, b := worse.View(on), better.View(on)
		late, early := course.New(w).Eggs(w.Nuc(a1)), course.New(b).Eggs(b.Nuc(a1))
		for d := calendar.Date(2027, 5, 1); d < calendar.Date(2027, 7, 20); d++ {
			if e, l := early.By(d), late.By(d); e < l-1e-12 {
				t.Fatalf("laid by %v: %g in better weather, %g in worse", d, e, l)
			}
		}
	})
}
