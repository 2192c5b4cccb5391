package view

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/practice"
	"lidmark/domain/review"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// reviewWhy draws the chosen nuc: what it holds and how that is known, each way with
// what it is worth, and what the worth of the taken one is made of.
func (c *cardDraw) reviewWhy(sheet *state.ReviewSheet, i int) {
	n := sheet.Nucs[i]
	taken, _ := c.s.ReviewWay(i)
	plan, decided := c.s.ReviewDecided(i)
	c.y = c.wrap(c.x, c.y, n.NucNamed.Name+": "+sheet.Title(taken), ink(16).semi(), c.w, 4) + 2
	switch {
	case decided:
		c.para("decided: "+plan.What.String()+" on "+plan.Day.Short(), ink(14).semi().as(scene.Good), 2)
	case n.Why != "":
		c.para("needs you: "+n.Why, ink2(14), 3)
	}
	for _, w := range taken.Warned {
		c.para(sentence(w.Why), ink(13).as(scene.Act), 4)
	}
	c.heading("What it holds " + map[bool]string{false: "today", true: "on " + shortDay(c.r.Day)}[c.s.Away()])
	c.y += 6
	c.strip(n.Chances, scene.Area{X: c.x, Y: c.y, W: c.w, H: 20}, scene.Ref{Kind: "chance"}, "")
	c.y += 40
	c.para(sentence(c.r.Nuc(n.Nuc.Nuc).Presumed.Why), ink2(13), 3)
	const looks = 4
	all := c.r.Course.Evidence(n.Nuc)
	for _, e := range all[max(0, len(all)-looks):] {
		c.para(e.Day.Short()+", "+e.Words, ink(13), 4)
	}
	c.ways(sheet, i)
	c.worthOf(sheet, n, taken)
	accept := button{"Accept", "accept", true}
	if a, _ := state.CommandNamed("accept"); a.Reason(c.s) != "" && decided {
		accept = button{"Take it back", "take back", false}
	}
	c.canOrWhy(accept)
	c.foot.can = append(c.foot.can, button{"Best use", "review hand", false})
}

// ways lists what can be done with a nuc, the most worth first; the one that is
// taken can be another.
func (c *cardDraw) ways(sheet *state.ReviewSheet, i int) {
	c.heading("What can be done")
	c.right(c.x+c.w, c.y-22, "laying, of 100", ink2(12))
	use := c.s.ReviewUse()
	for k, w := range c.s.ReviewUses(i) {
		title := sheet.Title(w)
		to := c.x + c.w - 36
		lines := min(len(scene.Wrap(c.measure, c.say(title), 14, scene.Medium, to-c.x-26)), 3)
		h := 14 + scene.LineHeight(14)*float64(lines)
		box := scene.Rect{Area: scene.Area{X: c.x - 8, Y: c.y - 14, W: c.w + 16, H: h}, Radius: 5}
		box.Tag = scene.Tag{Ref: state.UseOf(k), Reason: "worth " + sheet.Worth(w.Worth) + ", " + minutes(w.Minutes)}
		switch {
		case k == use:
			box.Fill, box.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
		case c.hovers(box.Ref):
			box.Stroke = stroke(scene.Ink2, 1.5)
		}
		c.add(box)
		f := ink(14)
		if sheet.Hand.Lacks(w) {
			f = ink2(14)
			title += ", none in hand"
		}
		if k == use {
			f = f.medium()
		}
		c.waySign(w, sheet.Hand, at(c.x+8, box.Y+h/2), 8, cmp.Or(box.Fill, scene.Panel))
		c.right(c.x+c.w, box.Y+h/2+5, percent(w.Lays), f.semi())
		c.wrap(c.x+26, c.y+6, title, f, to-c.x-26, 3)
		c.y += h
	}
	c.y += 8
}

// worthOf says what the worth of a way is made of, and which numbers it rests on.
func (c *cardDraw) worthOf(sheet *state.ReviewSheet, n review.Nuc, w review.Way) {
	c.heading("Worth " + sheet.Worth(w.Worth))
	var used []practice.Key
	for _, s := range sheet.Why(w) {
		figure := sheet.Worth(s.Queens)
		if s.Queens < 0 {
			figure = "less " + sheet.Worth(-s.Queens)
		}
		lead := c.width(figure, ink(13).semi()) + 10
		c.right(c.x+c.w, c.y, figure, ink(13).semi())
		c.y = c.wrap(c.x, c.y, s.Words, ink(13), c.w-lead, 4) + 3
		used = append(used, s.Used...)
	}
	if spot := sheet.Spot(n, w); spot != "" {
		c.y = c.wrap(c.x, c.y, spot, ink2(13), c.w, 4) + 3
		used = append(used, review.SpotRests()...)
	}
	slices.Sort(used)
	c.heading("Numbers it rests on")
	for _, k := range slices.Compact(used) {
		n := practice.Of(k)
		c.para(fmt.Sprintf("%s: %s %s, %s", n.Title, c.s.NumberSaid(k, c.r.Numbers().Get(k)), c.s.NumberUnit(k), c.s.Sure(n)), ink2(13), 4)
	}
}
