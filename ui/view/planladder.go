package view

import (
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// rungFills are the conditions in whose colours the steps of the bees are drawn; the
// others are ink.
var rungFills = map[plan.Step]scene.Condition{
	plan.CountTake: scene.Cell, plan.CountCapped: scene.Cell, plan.GiveCells: scene.Cell, plan.Emerge: scene.Virgin, plan.Fly: scene.Virgin,
	plan.LookForEggs: scene.Due, plan.Ready: scene.GoodBrood,
}

// ladder draws the steps, each a bar on its days, the last one on top: each starts
// where the next one needs it.
func (d *planDraw) ladder() {
	a := d.Ladder
	d.rect(a, scene.Ground)
	r := d.l.Ribbon
	for day := r.First; day <= r.Last(); day++ {
		if day.Weekday() == d.s.Week.Day() {
			d.rule(r.Left(day), a.Y, r.Left(day), a.Bottom(), scene.Hair)
		}
	}
	d.rect(scene.Area{X: r.Left(d.all.By), Y: a.Y, W: r.Column, H: a.H}, scene.PenTint)
	d.ladderHead(a)
	for graft := range d.all.Batches {
		d.rungs(a, graft, d.s.PlanRungs(graft))
	}
	d.besideLadder()
	d.rule(a.X, a.Bottom()-0.5, a.Right(), a.Bottom()-0.5, scene.Rule)
}

func (d *planDraw) ladderHead(a scene.Area) {
	head := "Backwards from " + d.all.By.Short()
	if d.s.Planning.Forwards {
		head = "Forwards from " + d.all.Batches[0].Day.Short()
	}
	d.text(a.X+state.Edge, a.Y+24, head, ink(14).semi())
	d.fit(a.X+state.Edge, a.Y+42, "drag a step: all of them follow", ink2(13), a.X+a.W*0.3)
}

// rungs draws the steps of one graft; the words stand by the last graft's alone.
func (d *planDraw) rungs(a scene.Area, graft int, all []state.PlanRung) {
	last := graft == len(d.all.Batches)-1
	for i, r := range all {
		y := a.Y + 10 + (float64(i)+0.5)*state.RungHeight
		bar := d.rungBar(r, y)
		if i > 0 {
			d.stair(bar, d.rungBar(all[i-1], y-state.RungHeight), r.Step == plan.DroneComb)
		}
		d.bar(r, bar, graft)
		if last {
			d.rungWords(r, bar, y)
		}
	}
}

// rungBar is where a step's bar lies.
func (d *planDraw) rungBar(r state.PlanRung, y float64) scene.Area {
	rb := d.l.Ribbon
	x, to := rb.Left(r.From), rb.Left(r.By+1)
	return scene.Area{X: x, Y: y - 7, W: max(rb.Column, to-x), H: 14}
}

// stair leads from a step up to the next one.
func (d *planDraw) stair(bar, next scene.Area, far bool) {
	if far || next.X < bar.X {
		return
	}
	x := max(bar.Right(), next.X) + 3
	if next.X > bar.Right() {
		x = next.X + 4
	}
	y := bar.Centre().Y
	if x > bar.Right() {
		d.rule(bar.Right(), y, x, y, scene.Ink3)
		d.rule(x, y, x, next.Bottom(), scene.Ink3)
	}
}

func (d *planDraw) bar(r state.PlanRung, bar scene.Area, graft int) {
	b := scene.Rect{Area: bar, Radius: 2, Fill: scene.Panel, Hatch: scene.Hatch{Role: scene.Ink2, Pitch: 4, Weight: 1.4}, Stroke: stroke(scene.Ink, 1)}
	if c, ok := rungFills[r.Step]; ok {
		b.Hatch.Role, b.Hatch.Weight, b.Stroke.Role = c.Fill(), 2, c.Line()
	}
	ref := scene.Ref{Kind: state.RungRef, ID: r.Step.String(), Part: string(rune('0' + graft))}
	b.Tag = scene.Tag{Ref: ref, Reason: d.numbersSaid(r.Step.Used())}
	d.hoverRing(bar, ref)
	d.add(b)
	if !r.Hard.IsZero() {
		d.rect(scene.Area{X: bar.Right() - 3, Y: bar.Y - 3, W: 4, H: bar.H + 6}, scene.Act)
	}
}

// rungWords stand left of the bar: why, then what and how many; right of it where
// there is no room.
func (d *planDraw) rungWords(r state.PlanRung, bar scene.Area, y float64) {
	name, amount, why := ink(14).semi(), ink(14), ink2(13)
	if r.Pressing {
		why = why.as(scene.Act)
	}
	y += 5
	const gap = 9.0
	wide := d.width(r.Name, name) + gap + d.width(r.Amount, amount)
	left := bar.X - gap - d.l.Main.X - state.Edge
	if r.Step == plan.Ready || left > wide+170 {
		x := d.right(bar.X-gap, y, r.Amount, amount)
		x = d.right(x-gap+1, y, r.Name, name)
		d.rightFit(x-14, y, r.Why, why, d.l.Main.X+state.Edge+d.headRoom(y))
		return
	}
	x := d.text(bar.Right()+gap, y, r.Name, name)
	x = d.text(x+gap-1, y, r.Amount, amount)
	d.fit(x+14, y, r.Why, why, d.l.Main.Right()-8)
}

// headRoom is what the head of the ladder takes on its lines.
func (d *planDraw) headRoom(y float64) float64 {
	if y < d.Ladder.Y+52 {
		return 230
	}
	return 0
}

// rightFit writes up to x, shortened where it would begin before from.
func (p *sheet) rightFit(x, y float64, text string, f font, from float64) {
	if x-from < 40 {
		return
	}
	p.right(x, y, scene.Shorten(p.measure, p.say(text), f.size, f.weight, x-from), f)
}
