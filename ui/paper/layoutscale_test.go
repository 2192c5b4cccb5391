package paper_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/unit"
	"lidmark/domain/yard"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// onPaper is where the ground lies on a page: its plan's frame, and the lower left corner
// of the boundary, which is 20 m wide and 17 m deep.
type onPaper struct {
	frame bar
	k     float64    // mm in a metre
	edge  [2]float64 // -4, -3 of the ground
}

// at is where a point of the ground lies, mm.
func (o onPaper) at(x, y float64) [2]float64 {
	return [2]float64{o.edge[0] + (x+4)*o.k, o.edge[1] - (y+3)*o.k}
}

// groundOf reads from a page with a plan where the ground lies: the frame is the largest
// that is drawn.
func groundOf(t *testing.T, p printed, scale float64) onPaper {
	t.Helper()
	o := onPaper{k: 1000 / scale}
	for _, b := range p.outlines {
		if b.w*b.h > o.frame.w*o.frame.h {
			o.frame = b
		}
	}
	for _, c := range p.corners {
		if p.goesThrough(c[0]+20*o.k, c[1]) && p.goesThrough(c[0], c[1]-17*o.k) && p.goesThrough(c[0]+20*o.k, c[1]-17*o.k) {
			o.edge = c
			return o
		}
	}
	t.Fatalf("no boundary of 20 by 17 m in 1:%g", scale)
	return o
}

// TestSheetsShareTheirGround: what lies on two sheets lies 10 mm of paper nearer to the
// edge of the one than to that of the other, across and up; and all sheets together have
// the yard in their middle, with all of it on one.
func TestSheetsShareTheirGround(t *testing.T) {
	const overlap = 10.0
	r, laid := laidOut()
	laid.Scale = 50
	pages := layoutPages(t, r, laid, paper.Options{})
	across := 0
	for _, w := range pages[1].texts {
		if strings.HasPrefix(w.text, "sheet ") && len(w.text) == len("sheet 1") && w.text != "sheet 2" {
			across = int(w.text[len(w.text)-1]-'0') - 1 // the sheet below the first
		}
	}
	if across < 2 {
		t.Fatalf("the sheet below the first one is told in none of %v", pages[1].lines())
	}
	first, next, below := groundOf(t, pages[1], 50), groundOf(t, pages[2], 50), groundOf(t, pages[1+across], 50)
	if d := first.edge[0] - next.edge[0]; math.Abs(d-(first.frame.w-overlap)) > 0.05 {
		t.Errorf("a sheet is %.2f mm wide, the ground on the next lies %.2f mm further", first.frame.w, d)
	}
	if d := first.edge[1] - below.edge[1]; math.Abs(d-(first.frame.h-overlap)) > 0.05 {
		t.Errorf("a sheet is %.2f mm high, the ground on the one below lies %.2f mm further", first.frame.h, d)
	}
	last := groundOf(t, pages[6], 50)
	from, to := first.at(-4, 14), last.at(16, -3)
	left, right := from[0]-first.frame.x, last.frame.x+last.frame.w-to[0]
	top, bottom := from[1]-first.frame.y, last.frame.y+last.frame.h-to[1]
	if math.Abs(left-right) > 0.05 || math.Abs(top-bottom) > 0.05 || left < 0.8*first.k || top < 0.8*first.k {
		t.Errorf("around the yard are left %.1f mm and %.1f, above %.1f and below %.1f", left, right, top, bottom)
	}
}

// TestTheBarIsMeasuredInInches: by hand, 10 ft are 3048 mm, at 1:48 63.5 mm, and those are
// 2.5 in at 25.4 mm each (exact: NIST SP 811).
func TestTheBarIsMeasuredInInches(t *testing.T) {
	r, laid := laidOut()
	laid.Scale = 48
	pages := layoutPages(t, r, laid, paper.Options{Units: unit.US, Say: unit.US.Say})
	words := pages[1].texts
	if !slices.ContainsFunc(words, func(w word) bool { return strings.HasSuffix(w.text, ": 10 ft of the bar must measure") }) || !slices.ContainsFunc(words, func(w word) bool { return w.text == "2.5 in." }) {
		t.Errorf("10 ft of the bar must measure 2.5 in: %v", pages[1].lines())
	}
}

// withA is the small book with a boundary and one thing more on its ground, and a try-out.
func withA(what book.FeatureKind, x, y, wide float64) (*state.Reading, state.Laid) {
	_, laid := laidOut()
	p := hill()
	home := booktest.Yard("Hill")
	p.At("2027-05-09 10:00").Write(
		book.FeatureDrawn{Feature: booktest.Feature("edge"), Yard: home, What: book.Boundary, Points: []book.Point{{X: -4, Y: -3}, {X: 16, Y: -3}, {X: 16, Y: 14}, {X: -4, Y: 14}}},
		book.FeatureDrawn{Feature: booktest.Feature("one"), Yard: home, What: what, Points: []book.Point{{X: x, Y: y}}, Width: wide},
	)
	r := reading(p, "2027-05-14 06:40")
	laid.Try = yard.Of(r.View, home).Moved(yard.Pick{booktest.Stand("A")}, 1.5, -2)
	return r, laid
}

// TestWhatLiesNearIsOnThePlan: what stands within 5 m of the yard is drawn as wide as it
// is; what stands further off makes the plan no smaller.
func TestWhatLiesNearIsOnThePlan(t *testing.T) {
	scaleOf := func(r *state.Reading, laid state.Laid) (float64, printed) {
		p := layoutPages(t, r, laid, paper.Options{})[0]
		for _, scale := range []float64{100, 125, 150, 200, 250, 300, 400, 500, 750, 1000} {
			if slices.ContainsFunc(p.texts, func(w word) bool { return w.text == fmt.Sprintf("1:%g", scale) }) {
				return scale, p
			}
		}
		t.Fatalf("no scale in %v", p.lines())
		return 0, p
	}
	for _, c := range []struct {
		x, y, wide float64
		near       bool
	}{
		{20, 5, 1, true},
		{20, 5, 12, true},
		{-8, 5, 12, true},
		{6, 18, 12, true},
		{6, -7, 12, true},
		{14, 5, 12, true},
		{21.7, 5, 10, true},
		{21.9, 5, 10, false}, // the yard with its margin ends at 16.8
		{45, 5, 1, false},
		{6, -40, 1, false},
	} {
		r, laid := withA(book.ColdHollow, c.x, c.y, c.wide)
		scale, p := scaleOf(r, laid)
		o := groundOf(t, p, scale)
		low, high := o.at(c.x-c.wide/2, c.y-c.wide/2), o.at(c.x+c.wide/2, c.y+c.wide/2)
		on := low[0] >= o.frame.x && high[0] <= o.frame.x+o.frame.w && high[1] >= o.frame.y && low[1] <= o.frame.y+o.frame.h
		if c.near && !on {
			t.Errorf("a hollow %g m wide at %g, %g is cut on the plan of 1:%g", c.wide, c.x, c.y, scale)
		}
		if bare, _ := scaleOf(withA(book.ColdHollow, 6, 5, 1)); !c.near && scale != bare {
			t.Errorf("a hollow at %g, %g makes the plan 1:%g, without it it is 1:%g", c.x, c.y, scale, bare)
		}
	}
}
