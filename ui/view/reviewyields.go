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
	label := x + takenSign + 4
	for stands.meets(label-4, label+18) {
		label++
	}
	d.text(min(label, d.Columns.YieldTo+16), middle+5, percent(taken.Lays), ink(14).bold())
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
		if !l.inLane(i, x-r, x+r) {
			l[i] = append(l[i], [2]float64{x - r, x + r})
			return off[i]
		}
	}
	return 0
}

// meets tells whether something stands on the line between two places.
func (l *signLanes) meets(from, to float64) bool { return l.inLane(0, from, to) }

func (l *signLanes) inLane(i int, from, to float64) bool {
	for _, at := range l[i] {
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
