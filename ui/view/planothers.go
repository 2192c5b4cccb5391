package view

import (
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// others lists other days for the graft, each with what it costs, who is free and what
// is in the way; the day chosen stands among them.
func (d *planDraw) others(a scene.Area) {
	x, w := a.X+state.Edge, a.W-2*state.Edge
	foot, says := d.planButtons(a), "the same amounts for "+d.all.By.ShortFrom(d.s.Today())
	rows := float64(len(d.all.Others) + 1)
	if foot-a.Y-partHeads < rows*(twoLines+2) {
		says = "" // the wish says the day
	}
	y := d.partHead(a, "Other days for the graft", says)
	row := max(26, min(42, (foot-y)/rows))
	chosen, told := d.all.Batches[0].Day, false
	for _, o := range d.all.Others {
		if !told && o.Day > chosen {
			y, told = d.chosenDay(x, y, w, row), true
		}
		if y+row > foot {
			break
		}
		d.otherDay(o, scene.Area{X: x - 6, Y: y, W: w + 12, H: row - 2})
		y += row
	}
	if !told && y+row <= foot {
		d.chosenDay(x, y, w, row)
	}
}

// twoLines is from which height on a day has two lines, dp.
const twoLines = 33.0

// lastSaid is the last graft of the season that makes sense.
func (d *planDraw) lastSaid() string {
	if d.all.Last == 0 {
		return "last graft not known: " + d.all.NoLast
	}
	return "last graft that makes sense: " + d.all.Last.ShortFrom(d.s.Today())
}

// chosenDay writes the day of the answer between the others, and gives where the next
// one begins.
func (d *planDraw) chosenDay(x, y, w, row float64) float64 {
	day := d.all.Batches[0].Day
	d.add(scene.Rect{
		Area: scene.Area{X: x - 6, Y: y, W: w + 12, H: row - 2}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5),
		Tag: scene.Tag{Ref: state.OtherOf(day), Reason: "as it stands"},
	})
	d.right(x+w, y+14, plan.OfHundred(d.all.Chance), ink(14).semi())
	d.text(x, y+14, day.ShortFrom(d.s.Today()), ink(14).semi())
	if row >= twoLines {
		d.fit(x, y+28, "as it stands, in time for "+d.all.Nearest.ShortFrom(d.s.Today()), ink2(12.5), x+w)
	}
	return y + row
}

func (d *planDraw) otherDay(o state.PlanOther, a scene.Area) {
	ref := state.OtherOf(o.Day)
	says, f := "in time for "+o.Ready.ShortFrom(d.s.Today()), ink2(12.5)
	if o.Clash != "" {
		says, f = o.Clash, f.as(scene.Act)
	}
	reason := "graft on " + o.Day.ShortFrom(d.s.Today()) + ": " + says
	if free := o.FreeSaid(len(o.Free)); free != "" {
		reason += "; " + free
	}
	r := scene.Rect{Area: a, Radius: 5, Tag: scene.Tag{Ref: ref, Reason: reason}}
	if d.hovers(ref) {
		r.Stroke = stroke(scene.Ink2, 1.5)
	}
	d.add(r)
	x, to := a.X+6, a.Right()-6
	end := d.right(to, a.Y+14, plan.OfHundred(o.Chance), ink(14).semi()) - 8
	name := d.text(x, a.Y+14, o.Day.ShortFrom(d.s.Today()), ink(14).semi()) + 10
	if a.H < twoLines-2 {
		d.fit(name, a.Y+14, d.wholeClauses(end-name, says), f, end)
		return
	}
	for n := len(o.Free); n >= 0; n-- {
		if free := o.FreeSaid(n); d.width(free, ink2(12.5)) <= end-name {
			d.text(name, a.Y+14, free, ink2(12.5))
			break
		}
	}
	d.fit(x, a.Y+28, d.wholeClauses(to-x, says), f, to)
}
