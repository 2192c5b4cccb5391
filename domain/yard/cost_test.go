package yard_test

import (
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// flying is a layout of single boxes at points from each of which one virgin flies,
// a queen in each with a chance.
func flying(queenright float64, at ...book.Point) yard.Layout {
	l, _ := some(at...)
	for i := range l.Stands {
		l.Stands[i].Nucs[0].Virgins, l.Stands[i].Nucs[0].Queenright = 1, queenright
	}
	return l
}

// Worked by hand: two like boxes 2 m apart, 3.47 of 100 virgins at the wrong door;
// they are lost where a queen is, and stay where none is.
func TestCostByHand(t *testing.T) {
	for _, tt := range []struct {
		queenright, wrong, lost float64
	}{{1, 0.0694, 0.0694}, {0, 0.0694, 0}, {0.5, 0.0694, 0.0347}} {
		c := yard.CostOf(flying(tt.queenright, at(0, 0), at(2, 0)), practice.Numbers{})
		if math.Abs(c.Wrong-tt.wrong) > 5e-5 || math.Abs(c.Lost-tt.lost) > 5e-5 || c.Virgins != 2 || c.Nucs != 2 || c.Alike != 0 {
			t.Errorf("queen next door with chance %v: %+v", tt.queenright, c)
		}
	}
	near := flying(0, at(0, 0))
	near.Colonies = []yard.Colony{{At: at(0, 2)}}
	c := yard.CostOf(near, practice.Numbers{})
	if math.Abs(c.Lost-0.0347) > 5e-5 || math.Abs(c.Pull-0.6*math.Exp(-0.05)) > 1e-12 {
		t.Errorf("a colony 2 m away: %+v", c)
	}
}

// A yard laid out against drift keeps the published 5 % of workers astray, 2 to 9
// (Neumann, Moritz & Mautz 2000, Apidologie 31:67-79; drift.csv): single boxes 3 m
// apart, each facing a quarter further than the one before, no two neighbours with
// one mark.
func TestAYardLaidOutAgainstDrift(t *testing.T) {
	shapes, colours := []string{"disc", "bar", "cross"}, []string{"blue", "white", "yellow", "black"}
	var l yard.Layout
	for i := range 36 {
		l.Stands = append(l.Stands, yard.Stand{At: at(float64(i%6)*2.5, float64(i/6)*2.5), Turn: float64(i%6*90 + i/6*180), Places: 1, Nucs: []yard.Nuc{{
			Place: 1, Mark: yard.Mark{Shape: shapes[i%3], Colour: colours[(i+i/6)%4]},
		}}})
	}
	if got := yard.CostOf(l, practice.Numbers{}).Drift; got < 0.02 || got > 0.09 {
		t.Errorf("drift %.3f, published 0.02 to 0.09", got)
	}
}

func TestArrows(t *testing.T) {
	l, _ := some(at(0, 0), at(0.7, 0), at(30, 0))
	arrows := yard.Arrows(l, practice.Numbers{}, 0.02)
	if len(arrows) != 1 || arrows[0].From.Stand != 0 || arrows[0].To.Stand != 1 || math.Abs(arrows[0].Share-0.0762) > 5e-5 {
		t.Errorf("arrows %+v", arrows)
	}
}

func TestCompare(t *testing.T) {
	n := practice.Numbers{}
	close, wide, wider := flying(1, twenty(0.5)...), flying(1, twenty(5)...), flying(1, twenty(5.2)...)
	for _, tt := range []struct {
		was, now yard.Layout
		words    string
	}{
		{close, wide, "less in 100 of 100 trials"},
		{wide, close, "more in 100 of 100 trials"},
		{wide, wider, "no difference; what there is is smaller than its error"},
	} {
		if got := yard.Compare(tt.was, tt.now, n).Lost.Words(); got != tt.words {
			t.Errorf("%q, want %q", got, tt.words)
		}
	}
	if c := yard.Compare(close, close, n); c.Lost.Said() != 0 || c.Lost.Mean != 0 || c.Drift.High != 0 {
		t.Errorf("a layout differs from itself: %+v", c)
	}
	c := yard.Compare(close, wide, n)
	if c.Lost.Said() != 1 || c.Drift.Said() != 1 || c.Lost.Low <= 0 || c.Lost.Low > c.Lost.Mean || c.Lost.Mean > c.Lost.High {
		t.Errorf("twenty boxes half a metre apart and five metres apart: %+v", c)
	}
	if back := yard.Compare(wide, close, n); back.Lost.Said() != -1 || math.Abs(back.Lost.Mean+c.Lost.Mean) > 1e-12 {
		t.Errorf("the other way round: %+v", back)
	}
	if c := yard.Compare(wide, wider, n); c.Lost.Said() != 0 || c.Drift.Said() != 0 {
		t.Errorf("five metres and a little more is said to differ: %+v", c)
	}
}

func twenty(apart float64) (row []book.Point) {
	for i := range 20 {
		row = append(row, at(float64(i)*apart, 0))
	}
	return row
}

// A further queen next door never helps, and what is lost is no more than what is at
// a wrong door.
func TestCostLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var points []book.Point
		for i := range rapid.IntRange(1, 9).Draw(t, "boxes") {
			points = append(points, at(rapid.Float64Range(0, 12).Draw(t, "x"+strconv.Itoa(i)), rapid.Float64Range(0, 12).Draw(t, "y"+strconv.Itoa(i))))
		}
		l := flying(rapid.Float64Range(0, 1).Draw(t, "queen"), points...)
		c := yard.CostOf(l, practice.Numbers{})
		if c.Lost < 0 || c.Lost > c.Wrong+1e-12 || c.Wrong > c.Virgins || c.Drift < 0 || c.Drift >= 1 {
			t.Fatalf("%+v", c)
		}
		for i := range l.Stands {
			l.Stands[i].Nucs[0].Queenright = 1
		}
		if all := yard.CostOf(l, practice.Numbers{}); all.Lost < c.Lost-1e-12 || math.Abs(all.Lost-all.Wrong) > 1e-12 {
			t.Fatalf("with a queen behind every door %+v, before %+v", all, c)
		}
	})
}
