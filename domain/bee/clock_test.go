package bee_test

import (
	"math"
	"testing"
	"time"
	_ "time/tzdata" // so that the zones below are there on any machine

	"pgregory.net/rapid"

	"lidmark/domain/bee"
	"lidmark/domain/practice"
)

// TestFirstEmergence checks testdata/published/first-emergence.csv, made by
// an independent quadrature of the same model for larvae of 18 h, to its
// printed digits. The hour for 48 cells at 0.01 is 243.4493 by a third
// quadrature and printed as 243.5, hence a slack of 0.001 h.
func TestFirstEmergence(t *testing.T) {
	for _, row := range published(t, "first-emergence.csv") {
		cells, p := number(t, row["cells"]), number(t, row["share"])
		b := bee.Batch{Graft: graft, LarvaAge: 18 * time.Hour, Cells: int(cells)}
		got := b.Clock(defaults).FirstOut(p).Sub(graft).Hours()
		if want := number(t, row["hours_from_graft"]); math.Abs(got-want) > 0.051 {
			t.Errorf("%v cells, chance %v: hour %.3f, want %v", cells, p, got, want)
		}
		if want := number(t, row["day_from_graft"]); math.Abs(got/24-want) > 0.005 {
			t.Errorf("%v cells, chance %v: day %.3f, want %v", cells, p, got/24, want)
		}
	}
}

// firstBy is the chance that one of n cells is out by hour x, by Simpson's
// rule in 4000 steps: slow, and written apart from the program.
func firstBy(n practice.Numbers, cells int, x float64) float64 {
	normal := func(z float64) float64 { return 0.5 * math.Erfc(-z/math.Sqrt2) }
	mean := n.Get(practice.QueenEmerges) - n.Get(practice.QueenHatches) - n.Get(practice.LarvaAgeAtGraft)
	own, shared, q := n.Get(practice.EmergenceSpread), n.Get(practice.SharedShiftSpread), n.Get(practice.OverAgedShare)
	const steps, width = 4000, 8.0
	sum, h := 0.0, 2*width/steps
	for i := range steps + 1 {
		z := -width + float64(i)*h
		in := (1-q)*normal(-(x-shared*z-mean)/own) + q*normal(-(x-shared*z-mean+n.Get(practice.OverAgedBy))/own)
		weight := []float64{2, 4}[i%2]
		if i == 0 || i == steps {
			weight = 1
		}
		sum += weight * math.Exp(-z*z/2) * math.Pow(in, float64(cells))
	}
	return 1 - sum*h/3/math.Sqrt(2*math.Pi)
}

func TestQuadratureHasConverged(t *testing.T) {
	worst := 0.0
	for _, own := range []float64{4, 8, 16} {
		for _, shared := range []float64{0.5, 8, 16} {
			n := with(t, with(t, defaults, practice.EmergenceSpread, own), practice.SharedShiftSpread, shared)
			for _, cells := range []int{1, 24, 300} {
				c := bee.Batch{Graft: graft, Cells: cells}.Clock(n)
				for x := 220.0; x < 340; x += 7 {
					worst = max(worst, math.Abs(c.FirstBy(at(x))-firstBy(n, cells, x)))
				}
			}
		}
	}
	if worst > 1e-5 {
		t.Errorf("the even steps are off by %.2g", worst)
	}
}

// TestNoSharedShift: with no shift and no older larvae the law is the plain
// minimum of normals, 1 − Φ(−z)ⁿ.
func TestNoSharedShift(t *testing.T) {
	n := with(t, with(t, defaults, practice.SharedShiftSpread, 0), practice.OverAgedShare, 0)
	c := bee.Batch{Graft: graft, Cells: 24}.Clock(n)
	// 1 − 0.5^(1/24) = 0.0284679, whose normal quantile is −1.903801.
	if got, want := c.FirstOut(0.5).Sub(graft).Hours(), 295-8*1.903801; math.Abs(got-want) > 0.001 {
		t.Errorf("first of 24: hour %.4f, want %.4f", got, want)
	}
	if got := c.Out(at(295)); math.Abs(got-12) > 1e-9 {
		t.Errorf("out by the mean hour: %v, want 12 of 24", got)
	}
}

// drawBatch draws a batch and a keeper's numbers.
func drawBatch(t *rapid.T) (bee.Batch, practice.Numbers) {
	n := defaults
	for _, k := range []practice.Key{practice.EmergenceSpread, practice.SharedShiftSpread, practice.OverAgedShare, practice.QueenEmerges} {
		r := practice.Of(k)
		n, _ = n.With(k, rapid.Float64Range(r.Min, r.Max).Draw(t, r.Name))
	}
	return bee.Batch{
		Graft:    graft,
		LarvaAge: time.Duration(rapid.IntRange(6, 48).Draw(t, "larva age")) * time.Hour,
		Cells:    rapid.IntRange(1, 120).Draw(t, "cells"),
	}, n
}

// drawLog draws an incubator's log over the capped phase.
func drawLog(t *rapid.T) []bee.Reading {
	var log []bee.Reading
	hour := rapid.Float64Range(60, 200).Draw(t, "log from")
	for range rapid.IntRange(2, 8).Draw(t, "readings") {
		log = append(log, bee.Reading{At: at(hour), Celsius: rapid.Float64Range(28, 38).Draw(t, "celsius")})
		hour += rapid.Float64Range(1, 48).Draw(t, "gap")
	}
	return log
}

// drawSeen draws what a keeper may have seen, sense or not.
func drawSeen(t *rapid.T) []bee.Evidence {
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) bee.Evidence {
		return bee.Evidence{
			At:   at(rapid.Float64Range(-50, 600).Draw(t, "hour")),
			Sign: rapid.SampledFrom([]bee.Sign{bee.SeenOpen, bee.SeenCapped, bee.TipBare, bee.NoneOut, bee.OneOut}).Draw(t, "sign"),
		}
	}), 0, 4).Draw(t, "seen")
}

func TestChancesRise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, n := drawBatch(t)
		b.Log, b.Seen = drawLog(t), drawSeen(t)
		c := b.Clock(n)
		first, out := 0.0, 0.0
		for x := 150.0; x < 500; x += 10 {
			f, o := c.FirstBy(at(x)), c.Out(at(x))
			if !(f >= first-1e-9 && f <= 1) || !(o >= out-1e-6 && o <= float64(b.Cells)+1e-9) {
				t.Fatalf("hour %v: first %v after %v, out %v after %v", x, f, first, o, out)
			}
			if o < f-1e-6 { // one that walked is one out
				t.Fatalf("hour %v: a virgin walks with %v, but only %v are out", x, f, o)
			}
			first, out = f, o
		}
	})
}

func TestFirstOutIsTheInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, n := drawBatch(t)
		if rapid.Bool().Draw(t, "looked") {
			b.Seen = []bee.Evidence{{At: at(rapid.Float64Range(200, 300).Draw(t, "look")), Sign: bee.NoneOut}}
		}
		c := b.Clock(n)
		p := rapid.Float64Range(0.001, 0.999).Draw(t, "p")
		first := c.FirstOut(p) // to the second, and a ripe batch goes fast
		if lo, hi := c.FirstBy(first.Add(-time.Second)), c.FirstBy(first.Add(time.Second)); lo > p || hi < p {
			t.Fatalf("FirstOut(%v) = %v, but the chance there is %v to %v", p, first, lo, hi)
		}
	})
}

func TestWhatMakesTheFirstEarlier(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, n := drawBatch(t)
		b.Log = drawLog(t)
		p := rapid.SampledFrom([]float64{0.01, 0.1, 0.5, 0.9}).Draw(t, "p")
		base := b.Clock(n).FirstOut(p)

		more := b
		more.Cells += rapid.IntRange(1, 50).Draw(t, "more cells")
		older := b
		older.LarvaAge += time.Hour
		warmer := b
		warmer.Log = nil
		for _, r := range b.Log {
			warmer.Log = append(warmer.Log, bee.Reading{At: r.At, Celsius: r.Celsius + rapid.Float64Range(0, 3).Draw(t, "warmer")})
		}
		for what, other := range map[string]bee.Batch{"more cells": more, "older larvae": older, "warmer": warmer} {
			if got := other.Clock(n).FirstOut(p); got.After(base.Add(time.Second)) {
				t.Fatalf("%s: %v, without %v", what, got, base)
			}
		}
		calm := b
		calm.Seen = []bee.Evidence{{At: at(rapid.Float64Range(200, 320).Draw(t, "look")), Sign: bee.NoneOut}}
		if c := calm.Clock(n); !c.Doubted() && c.FirstOut(p).Before(base.Add(-time.Second)) {
			t.Fatalf("none out at a look: %v, without the look %v", c.FirstOut(p), base)
		}
	})
}

func TestEvidenceMovesTheClock(t *testing.T) {
	b := bee.Batch{Graft: graft, Cells: 24}
	middle := func(seen ...bee.Evidence) float64 {
		b.Seen = seen
		return b.Clock(defaults).Middle().Sub(graft).Hours()
	}
	plain := middle()
	for _, c := range []struct {
		what   string
		seen   bee.Evidence
		sooner bool
	}{
		{"capped already at hour 90", bee.Evidence{At: at(90), Sign: bee.SeenCapped}, true},
		{"still open at hour 115", bee.Evidence{At: at(115), Sign: bee.SeenOpen}, false},
		{"a tip bare at hour 250", bee.Evidence{At: at(250), Sign: bee.TipBare}, true},
		{"a tip bare at hour 290", bee.Evidence{At: at(290), Sign: bee.TipBare}, false},
		{"the first out at hour 255", bee.Evidence{At: at(255), Sign: bee.OneOut}, true},
		{"none out at hour 290", bee.Evidence{At: at(290), Sign: bee.NoneOut}, false},
	} {
		got := middle(c.seen)
		if (got < plain-0.5) != c.sooner || (got > plain+0.5) == c.sooner {
			t.Errorf("%s: middle at %.1f h, without it %.1f h", c.what, got, plain)
		}
	}
	if got := middle(bee.Evidence{At: at(140), Sign: bee.SeenCapped}); math.Abs(got-plain) > 0.1 {
		t.Errorf("capped cells long after the capping moved the clock from %.2f to %.2f h", plain, got)
	}
}

func TestFirstOutAfterALook(t *testing.T) {
	look := at(280)
	b := bee.Batch{Graft: graft, Cells: 24, Seen: []bee.Evidence{{At: look, Sign: bee.NoneOut}}}
	c := b.Clock(defaults)
	if got := c.FirstBy(look); got != 0 {
		t.Errorf("chance at the look %v, want 0", got)
	}
	if got := c.FirstOut(0.01); !got.After(look) || got.After(look.Add(time.Hour)) {
		t.Errorf("a ripe batch at which none was out at %v: first at %v, want within the hour", look, got)
	}
}

// TestTwoOutAtOneLook: virgins found at the same look are believed, and the
// second makes the clock earlier still.
func TestTwoOutAtOneLook(t *testing.T) {
	look := bee.Evidence{At: at(270), Sign: bee.OneOut}
	one := bee.Batch{Graft: graft, Cells: 23, Seen: []bee.Evidence{{At: at(255), Sign: bee.NoneOut}, look}}
	two := one
	two.Cells, two.Seen = 22, append([]bee.Evidence{look}, one.Seen...)
	a, b := one.Clock(defaults), two.Clock(defaults)
	if a.Doubted() || b.Doubted() {
		t.Fatalf("doubted: one out %v, two out %v", a.Doubted(), b.Doubted())
	}
	if !b.Middle().Before(a.Middle()) {
		t.Errorf("middle %v with two out, %v with one", b.Middle(), a.Middle())
	}
}

func TestClockIsDoubted(t *testing.T) {
	b := bee.Batch{Graft: graft, Cells: 24}
	plain := b.Clock(defaults)
	if plain.Doubted() {
		t.Error("a batch nobody looked at is doubted")
	}
	b.Seen = []bee.Evidence{{At: at(150), Sign: bee.OneOut}}
	c := b.Clock(defaults)
	if !c.Doubted() || !c.Middle().Equal(plain.Middle()) {
		t.Errorf("a virgin on day 6: doubted %v, middle %v, want doubted and %v", c.Doubted(), c.Middle(), plain.Middle())
	}
}

// TestNightOfTheClockChange: the clock counts hours that pass, so a batch
// that lives through the night on which the clocks change keeps its hours and
// moves by the wall clock.
func TestNightOfTheClockChange(t *testing.T) {
	zone, err := time.LoadLocation("Europe/Vienna")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name  string
		graft time.Time
		shift time.Duration // of the wall clock on the day of emergence
	}{
		{"spring", time.Date(2027, time.March, 20, 18, 0, 0, 0, zone), time.Hour},
		{"summer", time.Date(2027, time.May, 5, 18, 0, 0, 0, zone), 0},
		{"autumn", time.Date(2027, time.October, 25, 18, 0, 0, 0, zone), -time.Hour},
	} {
		first := bee.Batch{Graft: c.graft, Cells: 24}.Clock(defaults).FirstOut(0.01)
		want := bee.Batch{Graft: graft, Cells: 24}.Clock(defaults).FirstOut(0.01).Sub(graft)
		if got := first.Sub(c.graft); got != want {
			t.Errorf("%s: first after %v, want %v", c.name, got, want)
		}
		_, before := c.graft.Zone()
		_, after := first.Zone()
		if got := time.Duration(after-before) * time.Second; got != c.shift {
			t.Errorf("%s: the wall clock moved by %v, want %v: first is given in the graft's zone", c.name, got, c.shift)
		}
	}
}
