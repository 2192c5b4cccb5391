package course_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// TestDaysAllocateNothing: a belief is a value, and a day or a look makes
// another in its place.
func TestDaysAllocateNothing(t *testing.T) {
	m := course.NewModel(practice.Numbers{})
	b, d := m.Virgin(3), m.Day(3, 1)
	if n := testing.AllocsPerRun(20, func() { b = b.After(d) }); n > 0 {
		t.Errorf("%.0f allocations a day, want none", n)
	}
	if n := testing.AllocsPerRun(20, func() { m.Weigh(&b, course.Sight{Eggs: book.NoEggs}) }); n > 2 {
		t.Errorf("%.0f allocations a look, want at most 2", n)
	}
}

// TestKnownNucsAllocateLittle: a nuc whose life is known already costs its
// events and their key.
func TestKnownNucsAllocateLittle(t *testing.T) {
	const most = 2
	v := book.NewSeason(booktest.Zones, booktest.Big(10, 30)).At(booktest.BigNow)
	c := course.New(v)
	for n := range v.Nucs() {
		c.Held(n)
		if a := testing.AllocsPerRun(20, func() { c.Held(n) }); a > most {
			t.Errorf("%.0f allocations for a nuc that is known, want at most %d", a, most)
		}
	}
}
