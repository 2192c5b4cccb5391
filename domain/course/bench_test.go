package course_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// big is a book of 10,000 nucs; three histories in four share their days.
func big() *book.Season { return book.NewSeason(time.LoadLocation, booktest.Big(10_000, 30)) }

func all(c *course.Course) (lays float64) {
	for n := range c.View().Nucs() {
		lays += c.Held(n).Chances().Lays()
	}
	return lays
}

// BenchmarkLinesOfNucs is the floor of what nucs may hold: a walk over the lines they follow from.
func BenchmarkLinesOfNucs(b *testing.B) {
	v := big().At(booktest.BigNow)
	all(course.New(v))
	for b.Loop() {
		var lines int
		for n := range v.Nucs() {
			lines += len(v.LinesSince(n.Nuc.Subject(), n.MadeUp.Instant))
		}
		if lines == 0 {
			b.Fatal("no lines")
		}
	}
}

// BenchmarkStates is the floor of a day: a bare walk over its states.
func BenchmarkStates(b *testing.B) {
	was := course.NewModel(practice.Numbers{}).Unknown()
	for b.Loop() {
		if c := was.Chances(); c.Sum() == 0 {
			b.Fatal("no chance of anything")
		}
	}
}

func BenchmarkDay(b *testing.B) {
	m := course.NewModel(practice.Numbers{})
	is, d := m.Unknown(), m.Day(3, 1)
	for range 60 {
		is = is.After(d)
	}
	for b.Loop() {
		if next := is.After(d); next == is {
			b.Fatal("nothing changes")
		}
	}
}

func BenchmarkHeldOfAllNucs(b *testing.B) {
	v := big().At(booktest.BigNow)
	all(course.New(v))
	for b.Loop() {
		if all(course.New(v)) == 0 {
			b.Fatal("nobody lays")
		}
	}
}

// BenchmarkHeldAfterOneEntry is what a keeper waits for after a line: every time a
// look at another nuc, and a course that goes on from the one before it. The season
// with the line in it is folded already; the floor is the walk over all lines.
func BenchmarkHeldAfterOneEntry(b *testing.B) {
	s := big()
	was := course.New(s.At(booktest.BigNow))
	all(was)
	var nucs []book.NucID
	for n := range was.View().Nucs() {
		nucs = append(nucs, n.Nuc)
	}
	pen := &booktest.Pen{Writer: "Ida M."}
	pen.At("2027-07-12 06:30")
	for i := 0; b.Loop(); i++ {
		b.StopTimer()
		pen.Write(book.Looked{Nuc: nucs[i%len(nucs)], Queen: book.NoneSeen, Eggs: book.NoEggs, Quick: i >= len(nucs)})
		v := s.With(pen.Entries...).At(booktest.BigNow)
		for n := range v.Nucs() {
			n.Condition()
		}
		b.StartTimer()
		was = course.Again(v, was)
		all(was)
	}
}

// BenchmarkNucsForSixtyDays is the floor of sixty days: the nucs of each are folded, and their lines walked over.
func BenchmarkNucsForSixtyDays(b *testing.B) {
	s := big()
	for b.Loop() {
		var lines int
		for day := range 60 {
			v := s.At(booktest.BigNow.AddDate(0, 0, day-30))
			for n := range v.Nucs() {
				lines += len(v.LinesSince(n.Nuc.Subject(), n.MadeUp.Instant))
			}
		}
		if lines == 0 {
			b.Fatal("no lines")
		}
	}
}

// BenchmarkHeldForSixtyDays is each of sixty days after the other, from nothing
// reckoned.
func BenchmarkHeldForSixtyDays(b *testing.B) {
	s := big()
	for b.Loop() {
		var c *course.Course
		for day := range 60 {
			c = course.Again(s.At(booktest.BigNow.AddDate(0, 0, day-30)), c)
			all(c)
		}
	}
}
