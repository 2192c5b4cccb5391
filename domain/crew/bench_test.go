package crew_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// BenchmarkPlanOfTheDemo chooses what is done on a day of the demo. Its floor is
// BenchmarkDayOfTheDemo.
func BenchmarkPlanOfTheDemo(b *testing.B) {
	j, on := demoDay(&testing.T{})
	hands := crew.Hands{{{Minutes: 240}, {Minutes: 240}}, {{Minutes: 240}}}
	for b.Loop() {
		if _, err := crew.Plan(j, on, hands); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkDayOfTheDemo is the day's work from which that choice starts.
func BenchmarkDayOfTheDemo(b *testing.B) {
	j, on := demoDay(&testing.T{})
	for b.Loop() {
		if len(j.Day(on).Stops) == 0 {
			b.Fatal("no work")
		}
	}
}

// many are 840 jobs in six yards, three helpers in two vans.
func many() crew.Problem {
	p := crew.Problem{Teams: []crew.Team{{Minutes: []float64{450, 450}}, {Minutes: []float64{450}}}}
	for y := range 6 {
		s := crew.Site{Far: 10 + float64(y)}
		for i := range 140 {
			s.Jobs = append(s.Jobs, crew.Job{Minutes: 1 + float64(i%3), Loss: float64(i%50) / 100, Hard: i%7 == 0})
		}
		p.Sites = append(p.Sites, s)
	}
	return p
}

// BenchmarkAHandIsMissing chooses the best of 840 jobs. Its floor is BenchmarkBareJobs.
func BenchmarkAHandIsMissing(b *testing.B) {
	p := many()
	for b.Loop() {
		if _, err := crew.Best(p); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkBareJobs is a bare walk over the same jobs.
func BenchmarkBareJobs(b *testing.B) {
	p := many()
	for b.Loop() {
		sum := 0.0
		for _, s := range p.Sites {
			for _, j := range s.Jobs {
				sum += j.Loss
			}
		}
		if sum == 0 {
			b.Fatal("nothing is lost")
		}
	}
}

// inSummer is a book of 2,500 nucs in the middle of a round.
func inSummer() *book.View {
	return book.NewSeason(time.LoadLocation, booktest.Big(2500, 50)).At(booktest.BigNow)
}

// BenchmarkAShortDayOfMany is a short day at 2,500 nucs, two vans. Its floor is
// BenchmarkADayOfMany.
func BenchmarkAShortDayOfMany(b *testing.B) {
	v := inSummer()
	j := rules.Judge(v)
	for b.Loop() {
		if _, err := crew.Plan(j, v.Today(), crew.Hands{{{Minutes: 240}, {Minutes: 240}}, {{Minutes: 240}}}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkADayOfMany is the day's work of 2,500 nucs from which that choice starts.
func BenchmarkADayOfMany(b *testing.B) {
	v := inSummer()
	j := rules.Judge(v)
	for b.Loop() {
		if len(j.Day(v.Today()).Stops) == 0 {
			b.Fatal("no work")
		}
	}
}
