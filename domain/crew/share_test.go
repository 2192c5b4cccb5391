package crew

import (
	"math"
	"slices"
	"testing"
)

// A yard's work is parted evenly among those who ride.
func TestAYardIsPartedEvenly(t *testing.T) {
	var site Site
	for range 100 {
		site.Jobs = append(site.Jobs, Job{Minutes: 1})
	}
	people := []Hand{{Minutes: 60}, {Minutes: 60}, {Minutes: 60}}
	jobs := bundles{Problem{Sites: []Site{site}}, [][]int{nil}}
	for i := range site.Jobs {
		jobs.of[0] = append(jobs.of[0], i)
	}
	o := outings{jobs: jobs, people: people, sites: []Site{site}, rounds: []round{{}}, work: [][]Work{make([]Work, 100)}, chosen: [][]int{slices.Repeat([]int{1}, 100)}, team: 1}
	out, fits := o.side(o.pieces(func(piece) bool { return true }), 3)
	working := map[int]float64{}
	for i, who := range out.by[0] {
		working[who]++
		if i > 0 && who < out.by[0][i-1] {
			t.Errorf("piece %d goes back to person %d", i, who)
		}
	}
	for i := range people {
		if !fits || math.Abs(working[i+1]-100.0/3) > 1 {
			t.Errorf("person %d works %v of 100 min, fits %v", i+1, working[i+1], fits)
		}
	}
}

// Who shares a van comes home with it: as many ride as together do most.
func TestWhoRidesTogether(t *testing.T) {
	for _, c := range []struct {
		minutes []float64
		drive   float64
		riders  int
		each    float64
	}{
		{[]float64{300, 60}, 80, 1, 220},  // the other has not even the way
		{[]float64{100, 300}, 80, 1, 220}, // two would have 20 each
		{[]float64{300, 240}, 80, 2, 160}, // two do 320
		{[]float64{450, 450, 240}, 200.0 / 3, 2, 450 - 200.0/3},
		{[]float64{120, 120}, 0, 2, 120},
		{[]float64{50}, 80, 0, 0},
		{nil, 0, 0, 0},
	} {
		if n, each := (Team{c.minutes}).riders(c.drive); n != c.riders || math.Abs(each-c.each) > 1e-9 {
			t.Errorf("%v min and %v of driving: %d ride and work %v, want %d and %v", c.minutes, c.drive, n, each, c.riders, c.each)
		}
	}
}

// Nobody in a van is no team: all work waits, and none is lost.
func TestAnEmptyVanDoesNothing(t *testing.T) {
	teams, hands := Hands{{}, {{Minutes: 60}}, {}}.manned()
	if len(teams) != 1 || len(hands) != 1 || teams[0].Minutes[0] != 60 {
		t.Errorf("%d teams of %d vans", len(teams), len(hands))
	}
}

// What is lost over six days is lost by half in three, and no more than whole in more; over
// none it is as over one.
func TestTheShareOfDays(t *testing.T) {
	for _, c := range []struct{ days, over, want float64 }{{3, 6, 0.15}, {6, 6, 0.3}, {12, 6, 0.3}, {0.5, 0, 0.15}} {
		p := pricer{days: c.days}
		if got := p.share(0.3, c.over, "%.0f of 100 in %.1f d").Queens; math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%v days of %v: %v, want %v", c.days, c.over, got, c.want)
		}
	}
}
