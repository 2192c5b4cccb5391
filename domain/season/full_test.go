package season_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// full is a season of 2,500 nucs in three yards in which sixty batches are planned, and
// forty orders besides that want a graft.
func full(t testing.TB) (*plan.Planner, season.Wanted) {
	p := bigPen().At("2027-03-31 20:00")
	for i := range 60 {
		p.Write(book.BatchPlanned{
			Batch: booktest.Batch(fmt.Sprint(i)), Day: day(t, "2027-04-15") + calendar.Day(i*3/2), Larvae: 24, Nucs: 18,
			Yard: booktest.Yard(fmt.Sprint("yard ", i%3)), Queens: 8, By: day(t, "2027-06-15") + calendar.Day(i*3/2),
		})
	}
	return plannerOf(p), orders(t)
}

// In a season that is full already an answer is there at once, and what more rounds bring
// is told beside the bound on any plan: how far it is from the best at most.
func BenchmarkFullSeason(b *testing.B) {
	for _, rounds := range []int{0, 50, 500} {
		b.Run(fmt.Sprintf("%d rounds", rounds), func(b *testing.B) {
			p, w := full(b)
			var f season.Found
			for b.Loop() {
				f = season.Search(p, w, func(far season.Progress) bool { return far.Round < rounds })
			}
			_, short := f.Queens()
			b.ReportMetric(float64(short), "short")
			b.ReportMetric(f.Minutes, "min-of-work")
			if f.Bound > 0 {
				b.ReportMetric(float64(f.Least), "least-short")
				b.ReportMetric(f.Bound, "least-min")
			}
		})
	}
	b.Run("clashes", func(b *testing.B) {
		p, _ := full(b)
		for b.Loop() {
			season.Clashes(p)
		}
	})
}
