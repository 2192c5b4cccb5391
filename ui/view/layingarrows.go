package view

import (
	"math"

	"lidmark/domain/yard"
	"lidmark/ui/scene"
)

// arrows draws the ways that bees take to a wrong door, the wider the more do.
func (m *layoutMap) arrows() {
	for _, a := range m.side.Arrows {
		from, near := m.doorAt(a.From)
		to, far := m.doorAt(a.To)
		if !between(a) && m.spotOf(&m.stand[a.From.Stand], m.most).lid < letterLid {
			near, far = near*insideReach, far*insideReach
		}
		if m.shown(a) {
			m.arrow(from, to, near, far, a.Share, between(a))
		}
	}
}

// insideReach is how much nearer to the middles of small lids a way between two of them
// begins and ends: the gap alone has no room for its tip.
const insideReach = 0.7

// between tells whether bees go from one stand to another.
func between(a yard.Arrow) bool { return a.To.Colony || a.From.Stand != a.To.Stand }

// insideLid is the least lid of a stand on which every way shows, dp: on smaller ones
// those across its middle would hide the lids.
const insideLid = 34.0

// besideLid is the least lid of a stand on which ways to the next place show, dp.
const besideLid = 13.0

// shown tells whether a way is drawn: from stand to stand, or to the next place of one.
func (m *layoutMap) shown(a yard.Arrow) bool {
	if between(a) {
		return true
	}
	s := m.spotOf(&m.stand[a.From.Stand], m.most)
	nucs := m.side.Layout.Stands[a.From.Stand].Nucs
	from, to := offset(nucs[a.From.Nuc].Place, &s), offset(nucs[a.To.Nuc].Place, &s)
	beside := math.Hypot(from.X-to.X, from.Y-to.Y) < 1.3*(s.lid+s.gap())
	return beside && s.lid >= besideLid || s.lid >= insideLid
}

// arrow draws one of them, bent to its left so that it is told from a line of the
// ground.
func (m *layoutMap) arrow(from, to scene.Point, near, far, share float64, bent bool) {
	way := to.Sub(from)
	long := math.Hypot(way.X, way.Y)
	if long < near+far+2 {
		return
	}
	along := way.Mul(1 / long)
	from, to = from.Add(along.Mul(near)), to.Sub(along.Mul(far))
	bend := at(-along.Y, along.X).Mul(-min(0.18*long, 26))
	if !bent {
		bend = scene.Point{}
	}
	middle := from.Add(to).Mul(0.5).Add(bend)
	const steps = 10
	curve := make([]scene.Point, 0, steps+1)
	for i := range steps + 1 {
		t := float64(i) / steps
		curve = append(curve, from.Mul((1-t)*(1-t)).Add(middle.Mul(2*t*(1-t))).Add(to.Mul(t*t)))
	}
	m.shaft(curve, arrowWidth(share))
}

// shaft draws a line with a tip at its end.
func (p *sheet) shaft(curve []scene.Point, width float64) {
	to := curve[len(curve)-1]
	back := to.Sub(curve[len(curve)-2])
	back = back.Mul(1 / max(0.01, math.Hypot(back.X, back.Y)))
	first := to.Sub(curve[0])
	tip := min(3+2*width, 0.7*math.Hypot(first.X, first.Y))
	neck := tip * 0.7
	for len(curve) > 2 {
		if d := to.Sub(curve[len(curve)-2]); math.Hypot(d.X, d.Y) > neck {
			break
		}
		curve = append(curve[:len(curve)-2], to)
	}
	base := to.Sub(back.Mul(tip))
	side := at(-back.Y, back.X).Mul(tip * 0.5)
	curve[len(curve)-1] = to.Sub(back.Mul(neck))
	p.add(scene.Poly{Points: curve, Open: true, Stroke: stroke(scene.Act, width)},
		scene.Poly{Points: []scene.Point{to, base.Add(side), base.Sub(side)}, Fill: scene.Act})
}

// arrowWidth is how wide the arrow of a share of bees is, dp.
func arrowWidth(share float64) float64 { return min(1+30*share, 4.5) }
