package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// yardstick is a season of 10,000 nucs and half a million entries, its nucs
// folded already.
func yardstick(b *testing.B) *book.View {
	b.Helper()
	v := book.NewSeason(booktest.Zones, booktest.Big(10_000, 60)).At(booktest.BigNow)
	rules.Findings(v)
	return v
}

// BenchmarkFindings is one pass of all rules.
func BenchmarkFindings(b *testing.B) {
	v, found := yardstick(b), 0
	for b.Loop() {
		found = len(rules.Findings(v))
	}
	b.ReportMetric(float64(found), "findings")
}

// BenchmarkFindingsFloor is the bare pass: it visits the same nucs and their
// entries and looks at one field of each.
func BenchmarkFindingsFloor(b *testing.B) {
	v := yardstick(b)
	for b.Loop() {
		for n := range v.Nucs() {
			for e := range v.Lines(n.Nuc.Subject()) {
				if e.At.IsZero() {
					b.Fatal("an entry without a moment")
				}
			}
		}
	}
}

// BenchmarkDay is the route of one day over the same nucs.
func BenchmarkDay(b *testing.B) {
	v := yardstick(b)
	for b.Loop() {
		rules.Day(v, calendar.DayOf(booktest.BigNow, v.Zone()))
	}
}
