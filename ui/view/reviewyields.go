package view

import (
	"fmt"
	"strconv"

	"lidmark/domain/review"
	"lidmark/ui/scene"
)

// yields draws what each way would yield on a scale: the best of each sign, and
// large the one that is taken. Where two would cover one another, one stands above or
// below the line, at its place on the scale.
func (d *reviewDraw) yields(n review.Nuc, taken review.Way, a scene.Area, ground scene.Role, ref scene.Ref) {
	middle := a.Y + a.H/2
	mine := tokenOf(taken, d.all.Hand)
	best := d.bestOf(n)
	best[mine] = &taken
	low, high := 1.0, 0.0
	for _, w := range best {
		if w != nil {
			low, high = min(low, w.Lays), max(high, w.Lays)
		}
	}
	x := d.yieldX(taken.Lays)
	if d.yieldX(high)-d.yieldX(low) > 1 {
		d.add(scene.Line{From: at(d.yieldX(low), middle), To: at(d.yieldX(high), middle), Stroke: stroke(scene.Rule, 2)})
	}
	stands := signLanes{}
	stands.put(x, takenSign)
	for t, w := range best {
		if w == nil || token(t) == mine {
			continue
		}
		to := at(d.yieldX(w.Lays), middle+stands.put(d.yieldX(w.Lays), lesserSign))
		if to.Y != middle {
			d.rule(to.X, min(to.Y, middle), to.X, max(to.Y, middle), scene.Rule)
		}
		d.over(*w, to, lesserSign, ground)
		ref.Part = "yield" + strconv.Itoa(t)
		d.hit(scene.Around(to, 2*lesserSign), ref, percent(w.Lays)+" of 100 laying by "+d.all.By.Short()+" if: "+d.all.Title(*w))
	}
	d.over(taken, at(x, middle), takenSign, ground)
	ref.Part = "taken"
	d.hit(scene.Around(at(x, middle), 2*takenSign), ref, percent(taken.Lays)+" of 100 laying by "+d.all.By.Short()+": "+d.all.Title(taken))
	stands.joined(d.yieldX(low), d.yieldX(high))
	d.figure(percent(taken.Lays), at(x, middle), stands)
}

// figure writes how many of 100 lay by the way taken, at its own sign: on the side away
// from the line, or above or below it.
func (d *reviewDraw) figure(said string, sign scene.Point, stands signLanes) {
	const gap = takenSign + 4
	f := ink(14).bold()
	w := d.width(said, f)
	right, left, over := sign.X+gap, sign.X-gap-w, sign.X-w/2
	switch end := d.Columns.YieldTo + 34; {
	case right+w <= end && !stands.meets(0, right, right+w):
		d.text(right, sign.Y+5, said, f)
	case left >= d.Columns.ActTo+2 && !stands.meets(0, left, left+w):
		d.text(left, sign.Y+5, said, f)
	case !stands.meets(1, over, over+w):
		d.text(over, sign.Y-13, said, f)
	default:
		d.text(over, sign.Y+23, said, f)
	}
}

// over draws the sign of a way where nothing shows through.
func (d *reviewDraw) over(w review.Way, c scene.Point, r float64, ground scene.Role) {
	if t := tokenOf(w, d.all.Hand); t == lookToken || t == otherToken { // drawn in lines
		d.add(scene.Circle{At: c, Radius: r, Fill: ground})
	}
	d.waySign(w, d.all.Hand, c, r, ground)
}

// The sizes of signs on the scale, from the middle to the top, dp.
const (
	takenSign  = 10.0
	lesserSign = 7.5
	laneHigh   = 18.0
)

// signLanes are where signs stand in a row: on the line, above and below it.
type signLanes [3][][2]float64

// put finds the lane for a sign, and gives how far from the line it lies.
func (l *signLanes) put(x, r float64) (y float64) {
	off := [3]float64{0, -laneHigh, laneHigh}
	for i := range l {
		if !l.meets(i, x-r, x+r) {
			l[i] = append(l[i], [2]float64{x - r, x + r})
			return off[i]
		}
	}
	return 0
}

// joined takes up the line from the lowest sign to the highest.
func (l *signLanes) joined(low, high float64) { l[0] = append(l[0], [2]float64{low, high}) }

// meets tells whether something stands in a lane between two places.
func (l *signLanes) meets(lane int, from, to float64) bool {
	for _, at := range l[lane] {
		if from < at[1] && at[0] < to {
			return true
		}
	}
	return false
}

// bestOf are the best ways by their signs, of what is in hand and may be done.
func (d *reviewDraw) bestOf(n review.Nuc) (best [otherToken + 1]*review.Way) {
	for i := range n.Ways {
		w := &n.Ways[i]
		t := tokenOf(*w, d.all.Hand)
		if t == otherToken || w.Barred || w.Gives() && d.all.Hand.Wares[w.Ware-1].Many == 0 {
			continue
		}
		if best[t] == nil || w.Worth > best[t].Worth {
			best[t] = w
		}
	}
	return best
}

// loses writes what leaving a nuc loses: the order of the list.
func (d *reviewDraw) loses(n review.Nuc, a scene.Area, ref scene.Ref) {
	if d.Columns.Loses == 0 {
		return
	}
	said := fmt.Sprintf("%.2f", n.Loses)
	left := d.right(d.Columns.Loses, a.Y+a.H/2+5, said, ink(14))
	ref.Part = "loses"
	d.hit(scene.Area{X: left, Y: a.Y + 2, W: d.Columns.Loses - left, H: a.H - 4}, ref, "leaving it loses "+d.all.Worth(n.Loses)+" against: "+d.all.Title(n.Ways[n.Best]))
}
