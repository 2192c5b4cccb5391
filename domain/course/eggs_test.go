package course

import (
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/calendar"
)

// TestWhenWaitingIsNotWorthIt, by hand: half lay on day 100, a quarter on 102 and hardly
// any on 104. On 102 half of those who have not laid do, on 104 one of 250: a day is worth
// a tenth of a queen, so waiting pays up to 102 and no more from 103 on.
func TestWhenWaitingIsNotWorthIt(t *testing.T) {
	e := &Eggs{from: 100, on: []float64{0.5, 0, 0.25, 0, 0.001}}
	for _, c := range []struct {
		since calendar.Day
		day   float64
		want  calendar.Day
	}{
		{100, 0.1, 103},
		{102, 0.1, 103},
		{103, 0.1, 103},   // nor does it from any later day on
		{100, 0.5, 103},   // as much as it is worth is enough
		{100, 0.51, 100},  // less is not, on any day
		{100, 0.001, 105}, // always: the day after the last
		{104, 0.004, 105},
		{105, 0.1, 105},
	} {
		if got := e.NotWorth(c.since, c.day); got != c.want {
			t.Errorf("from %d on, a day worth %g: %d, want %d", c.since, c.day, got, c.want)
		}
	}
}

// TestEggsByDay: the shares of days add up, and the day of a share is the first by which
// so many have laid.
func TestEggsByDay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := &Eggs{from: 100, on: rapid.SliceOfN(rapid.Float64Range(0, 0.1), 1, 10).Draw(t, "on")}
		share := rapid.Float64Range(0.01, 0.99).Draw(t, "share")
		last := e.from + calendar.Day(len(e.on)) - 1
		if e.By(e.from-1) != 0 || e.By(last) != e.Ever() {
			t.Fatalf("%v by the day before, %v by the last, %v ever", e.By(e.from-1), e.By(last), e.Ever())
		}
		d := e.Day(share)
		if e.Ever() == 0 {
			if d != 0 {
				t.Fatalf("none ever lays, a share by %d", d)
			}
			return
		}
		if e.By(d) < share*e.Ever() || e.By(d-1) >= share*e.Ever() && e.By(d-1) > 0 {
			t.Fatalf("%v of all by %d: %v, a day before %v of %v", share, d, e.By(d), e.By(d-1), e.Ever())
		}
	})
}
