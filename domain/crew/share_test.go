package crew

import (
	"math"
	"testing"

	"lidmark/domain/book"
)

// A yard's work is parted by the time people have left when they have driven there
// and back: who has less than the way stays at home.
func TestAYardIsPartedByTheTimeThatIsLeft(t *testing.T) {
	pieces := func(n int) (all []Work) {
		for range n {
			all = append(all, Work{Minutes: 1})
		}
		return all
	}
	for _, c := range []struct {
		minutes, drive, want []float64
	}{
		{[]float64{300, 60}, []float64{80}, []float64{100, 0}},
		{[]float64{300, 100}, []float64{80}, []float64{92, 8}}, // 220 to 20 of a hundred
		{[]float64{120, 120}, []float64{0}, []float64{50, 50}},
	} {
		people := []Sheet{{Hand: Hand{Minutes: c.minutes[0]}}, {Hand: Hand{Minutes: c.minutes[1]}}}
		share(pieces(100), book.YardID{}, people, c.drive[0])
		for i, want := range c.want {
			if math.Abs(people[i].Working-want) > 1 {
				t.Errorf("%v min, %v of driving: one works %v, want %v", c.minutes, c.drive[0], people[i].Working, want)
			}
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
