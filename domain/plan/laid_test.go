package plan

import (
	"math"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// small are two queens' days told by hand: a third of those who emerge on day 100 and a
// sixth of those of day 101 lay on 103 and 104.
func small() Laid {
	return Laid{
		out: Out{From: 100, Share: []float64{0.5, 0.5}}, from: 100, after: 2, age: 5, fair: 0.9,
		on:   []float64{0, 0, 0, 0.3, 0.3},
		born: [][]float64{{0, 0, 0, 0.2, 0.1}, {0, 0, 0, 0.1, 0.2}},
	}
}

// By counts the day it is asked for, and ready asks age and eggs of the same queen.
func TestLaidByHand(t *testing.T) {
	l := small()
	for d, want := range map[calendar.Day]float64{99: 0, 102: 0, 103: 0.3, 104: 0.6, 200: 0.6} {
		if got := l.By(d); math.Abs(got-want) > 1e-12 {
			t.Errorf("laid by %d: %v, want %v", d, got, want)
		}
	}
	// Old enough on 105 and 106; the eggs of 103 are ready on 105, those of 104 on 106.
	for d, want := range map[calendar.Day]float64{104: 0, 105: 0.2, 106: 0.6, 200: 0.6} {
		if got := l.Ready(d); math.Abs(got-want) > 1e-12 {
			t.Errorf("ready by %d: %v, want %v", d, got, want)
		}
	}
	if by := l.Day(0.5); by != 103 {
		t.Errorf("half of those who ever lay have laid by %d, want 103", by)
	}
	if by := l.ReadyDay(0.9); by != 106 {
		t.Errorf("nine in ten of those who ever lay are ready by %d, want 106", by)
	}
	if got := l.InTime(104, true); math.Abs(got-0.6/0.9) > 1e-12 {
		t.Errorf("laying in time %v of those who lay in fair weather, want two thirds", got)
	}
	if l.fair = 0.3; l.InTime(104, true) != 1 {
		t.Errorf("more than all in time: %v", l.InTime(104, true))
	}
}

// A sum that is reached exactly is reached on that day.
func TestReachesExactly(t *testing.T) {
	for want, day := range map[float64]calendar.Day{0.25: 10, 0.5: 11, 0.75: 12, 5: 13} {
		if got := reaches(10, []float64{0.25, 0.25, 0.25, 0.25}, want); got != day {
			t.Errorf("%v is reached on %d, want %d", want, got, day)
		}
	}
}

// In fine weather 0.8864 of those accepted ever lay, their first egg 10.65 days after
// they emerged on average, counted at the middle of its day: domain/course/testdata
// course-reference.md, by an independent program. One who walks at any hour of a day is
// half a day older on average, as the middle of a day is half a day later.
func TestFollowedAsTheReferenceHasIt(t *testing.T) {
	n, err := practice.Numbers{}.With(practice.NeverFlies, 0)
	if err != nil {
		t.Fatal(err)
	}
	m := course.NewModel(n) // a nuc raises its own where she is lost; these do not count
	fine := m.Day(n.Get(practice.FitHoursPlus), 1)
	var all, age float64
	follow(m, 100, 1, func(calendar.Day) *course.Day { return fine }, func(d calendar.Day, first float64) {
		all += first
		age += first * float64(d-100)
	})
	if math.Abs(all-0.8864) > 0.002 || math.Abs(age/all-10.65) > 0.1 {
		t.Errorf("%.4f lay, on average after %.2f d; want 0.8864 and 10.65", all, age/all)
	}
}
