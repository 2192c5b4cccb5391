package view

import (
	"fmt"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of who comes, dp.
const (
	handsHead = 18.0
	handRow   = 34.0
	handGap   = 8.0
)

// hands draws who comes on the day: a click on somebody who does not; in how many vans
// they drive, and what waiting costs. It gives how much lower what stands below it
// begins, which is the same on every day that is not cut short; nothing where nobody is known, or
// there is no room.
func (p *sheet) hands(a scene.Area) float64 {
	high := handsHead + handRow*p.handRows(a.W)
	if high == handsHead || a.H < high {
		return 0
	}
	all, plan := p.s.Hands(), p.s.Reading().Plan()
	y := a.Y + high
	if len(all) > 0 && len(plan.Stops) > 0 {
		end := p.handsThere(all, a)
		if p.s.DayPage.Less.On() {
			y = end
		}
		if p.s.DayPage.Less.On() && y+lessFootHigh <= a.Bottom() {
			y = p.lessFoot(scene.Area{X: a.X, Y: y, W: a.W}, len(all))
		}
	}
	return y - a.Y - 8
}

// handRows is how many rows all people of the book take at most.
func (p *sheet) handRows(w float64) float64 {
	const most = 3
	rows, x := 0, w
	for who := range p.s.Reading().View.People() {
		wide := min(p.width(who.Name+" 00.0 h", ink(13.5))+22, w)
		if x+wide > w {
			rows, x = rows+1, 0
		}
		x += wide + handGap
	}
	return float64(min(rows, most))
}

// handsThere draws those who may come, as many as have room, and gives where they end.
func (p *sheet) handsThere(all []state.Hand, a scene.Area) float64 {
	p.fit(a.X, a.Y+12, "Who comes", ink2(13), a.Right())
	x, y := a.X, a.Y+handsHead
	for _, h := range all {
		word := handWord(h)
		w := min(p.width(word, ink(13.5))+22, a.W)
		if x > a.X && x+w > a.Right() {
			if x, y = a.X, y+handRow; y+handRow > a.Y+handsHead+handRow*p.handRows(a.W) {
				return y
			}
		}
		p.hand(h, word, scene.Area{X: x, Y: y, W: w, H: handRow - 6})
		x += w + handGap
	}
	return y + handRow
}

// lessFootHigh is how high what stands below those who come is at most, dp.
const lessFootHigh = 72.0

// handWord is who may come, and how long, or that he does not.
func handWord(h state.Hand) string {
	switch {
	case h.Away:
		return h.Name + " away"
	case h.Minutes == 0:
		return h.Name
	case h.Minutes%60 == 0:
		return fmt.Sprintf("%s %d h", h.Name, h.Minutes/60)
	default:
		return fmt.Sprintf("%s %.1f h", h.Name, float64(h.Minutes)/60)
	}
}

func (p *sheet) hand(h state.Hand, word string, a scene.Area) {
	r := scene.Rect{Area: a, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: state.AwayOf(h.Person)}}
	f := ink(13.5)
	r.Reason = h.Name + " does not come: what then"
	if h.Away {
		r.Fill, r.Stroke, f = scene.PenTint, stroke(scene.Pen, 1.5), f.as(scene.Pen)
		r.Reason = h.Name + " comes after all"
	}
	p.hoverRing(a, r.Ref)
	p.add(r)
	p.fit(a.X+11, a.Y+a.H/2+5, word, f, a.Right()-6)
}

// lessFoot says in how many vans people drive, what waiting costs, and gives back the
// day as it was planned. It gives where it ends.
func (p *sheet) lessFoot(a scene.Area, people int) float64 {
	less := p.s.DayPage.Less
	if less.Nobody { // the button at the foot gives the day back
		return p.wrap(a.X, a.Y+14, p.s.Reading().WaitsSaid(less), ink(13.5).semi(), a.W, 4)
	}
	y := a.Y + 18
	if people > 0 {
		p.wideButton(scene.Area{X: a.X, Y: y - 16, W: 28, H: 26}, "−", "van less", false)
		end := p.text(a.X+38, y+2, less.VansSaid(), ink(14))
		p.wideButton(scene.Area{X: end + 10, Y: y - 16, W: 28, H: 26}, "+", "van more", false)
	}
	p.link(a.Right()-p.width("as planned", ink(13.5)), y+2, "as planned", ink(13.5).as(scene.Pen), "as planned", false)
	y += 28
	if said := p.s.Reading().WaitsSaid(less); said != "" {
		y = p.wrap(a.X, y, said, ink(13.5).semi(), a.W, 4)
	}
	return y
}
