package handover_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// fortyShort is a book of 300 nucs and of forty orders that all miss queens.
func fortyShort() *book.View {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for i := range 300 {
		n := booktest.Nuc(fmt.Sprint(i))
		p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: home})
	}
	for i := range 40 {
		name := fmt.Sprint(i + 1)
		p.Write(order(name, 10, fmt.Sprintf("line %d", i%4), calendar.Date(2027, 6, 20)+calendar.Day(i)))
	}
	return p.View("2027-05-03 08:00")
}

// BenchmarkSheet deals queens out to forty orders that all miss some, and says by when to
// graft for each. Its floor is BenchmarkDealOnly.
func BenchmarkSheet(b *testing.B) {
	v := fortyShort()
	for b.Loop() {
		if s := handover.New(plan.New(course.New(v))); s.Orders[39].GraftBy.Day == 0 {
			b.Fatal("no graft is told")
		}
	}
}

// BenchmarkSheetAgain is the same of a planner that was asked before, as the window has it.
func BenchmarkSheetAgain(b *testing.B) {
	p := plan.New(course.New(fortyShort()))
	for b.Loop() {
		handover.New(p)
	}
}

// BenchmarkShortSince tells since when each of forty orders misses queens, of which nothing
// was planned when they were taken a month ago: it looks back as far as it ever does. Its floor is BenchmarkDealBack.
func BenchmarkShortSince(b *testing.B) {
	v := fortyShort()
	sheet := handover.New(plan.New(course.New(v)))
	for b.Loop() {
		if handover.ShortSince(v, sheet) == nil {
			b.Fatal("nothing is told")
		}
	}
}

// BenchmarkDealBack deals queens out as of the two weeks before, and says nothing more.
func BenchmarkDealBack(b *testing.B) {
	v := fortyShort()
	for b.Loop() {
		for d := v.Today() - 14; d < v.Today(); d++ {
			end := (d + 1).Start(v.Zone())
			handover.Deal(plan.New(course.New(v.Season().AsKnown(end, end))))
		}
	}
}

// BenchmarkDealOnly deals them out, and says nothing of grafts.
func BenchmarkDealOnly(b *testing.B) {
	v := fortyShort()
	for b.Loop() {
		handover.Deal(plan.New(course.New(v)))
	}
}
