package bee_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/bee"
	"lidmark/domain/practice"
)

// The late day: 24 cells loose in the incubator at 34.5 °C, grafted Wednesday
// 5 May 2027 18:00 from larvae of 18 h. It is Saturday 15 May 20:00, and the
// keeper cannot place them before Monday 18:00.
var (
	saturday = time.Date(2027, time.May, 15, 20, 0, 0, 0, time.UTC)
	monday6  = time.Date(2027, time.May, 17, 6, 0, 0, 0, time.UTC)
	noon     = time.Date(2027, time.May, 17, 12, 0, 0, 0, time.UTC)
	monday18 = time.Date(2027, time.May, 17, 18, 0, 0, 0, time.UTC)
)

func lateBatch() bee.Batch {
	return bee.Batch{
		Graft: graft, LarvaAge: 18 * time.Hour, Cells: 24,
		Seen: []bee.Evidence{{At: saturday, Sign: bee.NoneOut}},
	}
}

func TestLateDayHardLine(t *testing.T) {
	b := lateBatch()
	b.Seen = nil
	c := b.Clock(defaults)
	if hard := c.Hard(); hard.After(saturday) || hard.Before(saturday.Add(-6*time.Hour)) {
		t.Errorf("hard line %v, want Saturday 15 May, not after 20:00", hard)
	}
	if got := graft.AddDate(0, 0, window(t, bee.CellsIn).Best); got.Day() != 15 {
		t.Errorf("cells go in on %v, want Saturday 15 May", got)
	}
	if got := c.Hard().Sub(c.Best()); got != 24*time.Hour {
		t.Errorf("best is %v ahead of the hard line, want a day", got)
	}
}

// near fails unless got is within tolerance of want.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if math.Abs(got-want) > tolerance {
		t.Errorf("%s: %.2f, want %v", what, got, want)
	}
}

// TestLateDayByHand holds the losses against figures worked by hand: 0.5 by
// Monday 06:00, 4 by noon, 14 of 24 by 18:00, and 4 to 5 with the incubator
// at 32 °C. They were found with the spread of single cells alone, no shift
// of the whole batch and no older larvae, as chance that the first was out 6 h
// before × cells not out by then. That product is reproduced here. It is wrong
// in two ways. It cannot stand beside the hard line of the same day, which
// needs shift and older larvae (without them the line is Sunday 16:17). And it
// spares cells that would have come out since: a cell destroyed at noon does
// not emerge at four. Counted at the end of the first one's grace, the same
// narrow model loses 15.4 and, cooled, 5.9; the full one 7.8, 12.2, 16.5 and
// 13.2.
func TestLateDayByHand(t *testing.T) {
	narrow := with(t, with(t, defaults, practice.SharedShiftSpread, 0), practice.OverAgedShare, 0)
	c := lateBatch().Clock(narrow)
	product := func(t time.Time) float64 { return c.FirstBy(t.Add(-6*time.Hour)) * (24 - c.Out(t)) }
	near(t, "by hand, 06:00", product(monday6), 0.5, 0.05)
	near(t, "by hand, noon", product(noon), 4, 0.5)
	near(t, "by hand, 18:00", product(monday18), 14, 0.5)
	held := time.Duration(float64(monday18.Sub(saturday)) * bee.Speed(32, narrow))
	near(t, "by hand, cooled", product(saturday.Add(held)), 4.5, 0.5)

	near(t, "narrow, 06:00", c.Loose().Lost(monday6), 0.5, 0.05)
	near(t, "narrow, noon", c.Loose().Lost(noon), 4, 0.5)
	near(t, "narrow, 18:00", c.Loose().Lost(monday18), 15.4, 0.1)
	near(t, "narrow, cooled", c.Cooled(saturday, 32).Lost(monday18), 5.9, 0.1)

	full := lateBatch().Clock(defaults)
	near(t, "06:00", full.Loose().Lost(monday6), 7.8, 0.1)
	near(t, "noon", full.Loose().Lost(noon), 12.2, 0.1)
	near(t, "18:00", full.Loose().Lost(monday18), 16.5, 0.1)
	near(t, "cooled", full.Cooled(saturday, 32).Lost(monday18), 13.2, 0.1)
}

// simulateLoss plays the late day many times: cells, a shift, the first out,
// her grace, what is not yet out then is lost. At now none of all the cells is
// out, and only left of them stay together.
func simulateLoss(n practice.Numbers, cells, left int, now, by, cooled float64) float64 {
	rng := rand.New(rand.NewPCG(1, 2))
	mean := n.Get(practice.QueenEmerges) - n.Get(practice.QueenHatches) - n.Get(practice.LarvaAgeAtGraft)
	wall := func(hour float64) float64 { // growth to wall clock
		if hour <= now {
			return hour
		}
		return now + (hour-now)/cooled
	}
	lost, runs := 0, 0
	out := make([]float64, cells)
	for runs < 20000 {
		shift := rng.NormFloat64() * n.Get(practice.SharedShiftSpread)
		for i := range out {
			out[i] = mean + shift + rng.NormFloat64()*n.Get(practice.EmergenceSpread)
			if rng.Float64() < n.Get(practice.OverAgedShare) {
				out[i] -= n.Get(practice.OverAgedBy)
			}
			out[i] = wall(out[i])
		}
		first := slices.Min(out)
		if first <= now {
			continue // somebody looked: none was out
		}
		runs++
		first = slices.Min(out[:left])
		if over := first + n.Get(practice.GraceOfFirstVirgin); over <= by {
			for _, o := range out[:left] {
				if o > over {
					lost++
				}
			}
		}
	}
	return float64(lost) / float64(runs)
}

func TestLossesAgreeWithASimulation(t *testing.T) {
	c := lateBatch().Clock(defaults)
	now := saturday.Sub(graft).Hours()
	for _, by := range []time.Time{monday6, noon, monday18} {
		hours := by.Sub(graft).Hours()
		// Standard error of the mean of 20000 runs is under 0.08 cells.
		near(t, "kept warm", c.Loose().Lost(by), simulateLoss(defaults, 24, 24, now, hours, 1), 0.25)
		near(t, "at 32 °C", c.Cooled(saturday, 32).Lost(by), simulateLoss(defaults, 24, 24, now, hours, bee.Speed(32, defaults)), 0.25)
	}
}

// TestCellsLeftBehind: on Monday 06:00 none of 24 is out, which makes a late
// batch of it; that still holds for the 10 left when 14 are placed.
func TestCellsLeftBehind(t *testing.T) {
	b := lateBatch()
	b.Seen[0].At = monday6
	next := monday18.Add(12 * time.Hour)
	late := bee.Late{Clock: b.Clock(defaults), Now: monday6, Next: next, Fit: 14}
	for _, w := range late.Ways() {
		if w.Way != bee.Place {
			continue
		}
		want := simulateLoss(defaults, 24, 10, monday6.Sub(graft).Hours(), next.Sub(graft).Hours(), 1)
		near(t, "of the 10 left", w.Lost, want, 0.1)
		return
	}
	t.Error("placing 14 and leaving 10 is not among the ways")
}

func TestEveryCellIsSomewhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, n := drawBatch(t)
		b.Seen = []bee.Evidence{{At: at(rapid.Float64Range(200, 280).Draw(t, "look")), Sign: bee.NoneOut}}
		c := b.Clock(n)
		l := c.Loose()
		if rapid.Bool().Draw(t, "cooled") {
			l = c.Cooled(b.Seen[0].At, 32)
		}
		lost := 0.0
		for x := 150.0; x < 400; x += 12 {
			now, cells, virgins := l.Lost(at(x)), l.Cells(at(x)), l.Virgins(at(x))
			if now < lost-1e-9 {
				t.Fatalf("hour %v: %v lost, before %v", x, now, lost)
			}
			if all := now + cells + virgins; math.Abs(all-float64(b.Cells)) > 0.02*float64(b.Cells)/24+1e-6 {
				t.Fatalf("hour %v: %v lost, %v cells, %v virgins of %d", x, now, cells, virgins, b.Cells)
			}
			lost = now
		}
	})
}

func TestWaysOutSideBySide(t *testing.T) {
	late := bee.Late{Clock: lateBatch().Clock(defaults), Now: saturday, Next: monday18, Fit: 14, Takers: 6}
	ways := map[bee.Way]bee.WayOut{}
	last := math.Inf(1)
	for _, w := range late.Ways() {
		if w.Accepted > last {
			t.Errorf("%v stands below a worse way", w.Way)
		}
		if w.Way.String() == "" || w.LastResort != (w.Way == bee.Cool) {
			t.Errorf("%v: words or last resort wrong", w.Way)
		}
		if w.Placed+w.Caged+w.Left != 24 {
			t.Errorf("%v: %d placed, %d caged, %d left of 24", w.Way, w.Placed, w.Caged, w.Left)
		}
		last, ways[w.Way] = w.Accepted, w
	}
	if len(ways) != 6 {
		t.Fatalf("%d ways out, want 6", len(ways))
	}
	// Taken in later as virgins, 0.63 for 0.80: 24 × 0.17 = 4 fewer.
	near(t, "caged, fewer taken in", 24*0.80-ways[bee.Cage].Accepted, 4, 0.1)
	near(t, "caged, lost", ways[bee.Cage].Lost, 0, 0)
	near(t, "14 placed and 10 caged", ways[bee.PlaceAndCage].Accepted, 14*0.80+10*0.63, 1e-9)
	l := late.Clock.Loose()
	near(t, "waiting, taken in", ways[bee.Wait].Accepted, l.Cells(monday18)*0.80+l.Virgins(monday18)*0.74, 1e-9)
	near(t, "waiting, caged later", ways[bee.Wait].Later, 0, 0)
	near(t, "waiting, kept", ways[bee.Wait].Kept, 24-16.5, 0.1)
	if got, want := ways[bee.PlaceAndCage].Work, 29*time.Minute; got != want {
		t.Errorf("placing 14 and caging 10 takes %v, want %v", got, want)
	}
	if a, b := ways[bee.Cool].Kept, ways[bee.Wait].Kept; a <= b {
		t.Errorf("cooled %.1f are kept, warm %.1f", a, b)
	}
	if a, b := ways[bee.Place].Lost, ways[bee.Wait].Lost*10/24; a >= b {
		t.Errorf("of the 10 left %.1f are lost; fewer cells have a later first, so under %.1f", a, b)
	}
}

func TestWaysOutThatAreNone(t *testing.T) {
	c := lateBatch().Clock(defaults)
	for _, w := range (bee.Late{Clock: c, Now: saturday, Next: monday18, Fit: 40}).Ways() {
		switch w.Way {
		case bee.PlaceAndCage:
			near(t, "all fit", w.Accepted, 24*0.80, 1e-9)
		case bee.Place, bee.HandOn:
			t.Errorf("%v is offered, though all fit and nobody takes any", w.Way)
		}
	}
}

// TestAfterTheFirstWalked: on Monday 18:00 a virgin is found walking. Knowing
// that, more is lost than on the average of all such days.
func TestAfterTheFirstWalked(t *testing.T) {
	l := lateBatch().Clock(defaults).Loose()
	if a, b := l.LostIfWalked(monday18), l.Lost(monday18); a <= b || a > 24 {
		t.Errorf("lost knowing that one walked %.1f, else %.1f", a, b)
	}
	if got := l.LostIfWalked(saturday); got != 0 {
		t.Errorf("lost before any could walk: %v", got)
	}
	steps := bee.Triage()
	if steps[0].Do != "find her and cage her before anything else" {
		t.Errorf("the first step is %q, want the walker", steps[0].Do)
	}
	for _, s := range steps {
		if s.Seen == "" || s.Means == "" || s.Do == "" {
			t.Errorf("step %+v is not complete", s)
		}
	}
}

// TestAcceptedIntoNucsThatExist: what is left loose is taken in by no more nucs than
// are ready, and what is alive beyond them is caged then: waiting leaves that open.
// So leaving what does not fit is never above caging it.
func TestAcceptedIntoNucsThatExist(t *testing.T) {
	cell, caged := defaults.Get(practice.AcceptCell), defaults.Get(practice.AcceptVirginDaysOld)
	rapid.Check(t, func(t *rapid.T) {
		fit := rapid.IntRange(0, 30).Draw(t, "nucs ready")
		next := saturday.Add(time.Duration(rapid.IntRange(1, 72).Draw(t, "hours")) * time.Hour)
		accepted := map[bee.Way]float64{}
		for _, w := range (bee.Late{Clock: lateBatch().Clock(defaults), Now: saturday, Next: next, Fit: fit}).Ways() {
			accepted[w.Way] = w.Accepted
			if w.Caged > 0 {
				continue
			}
			if got := float64(w.Placed) + w.Later; got > w.Kept+1e-9 || w.Kept-got > float64(fit)+1e-9 {
				t.Errorf("%v: %d placed and %.1f caged later of %.1f alive, %d nucs ready", w.Way, w.Placed, w.Later, w.Kept, fit)
			}
			if most := (w.Kept-w.Later)*cell + w.Later*caged; w.Accepted > most+1e-9 {
				t.Errorf("%v: %.1f accepted, at most %.1f", w.Way, w.Accepted, most)
			}
		}
		if place, ok := accepted[bee.Place]; ok && place > accepted[bee.PlaceAndCage]+1e-6 {
			t.Errorf("leaving the others: %.1f accepted, caging them %.1f", place, accepted[bee.PlaceAndCage])
		}
	})
}

// TestWaitingLeavesCagesOpen: an hour before anything can be lost, waiting costs
// nothing, for what has no nuc is caged at the next hour as well as now; and yet the
// way that leaves none together stands above it.
func TestWaitingLeavesCagesOpen(t *testing.T) {
	late := bee.Late{Clock: lateBatch().Clock(defaults), Now: saturday, Next: saturday.Add(time.Hour), Fit: 10}
	ways := late.Ways()
	if ways[0].Way != bee.PlaceAndCage {
		t.Errorf("the best way is to %v", ways[0].Way)
	}
	for _, w := range ways {
		if w.Way == bee.Wait {
			near(t, "caged an hour on", w.Later, 14, 0.01)
			near(t, "accepted in the end", w.Accepted, ways[0].Accepted, 0.05)
		}
	}
}
