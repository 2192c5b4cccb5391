package view

import (
	"fmt"
	"strings"

	"lidmark/domain/calendar"
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
	var ladders [][]state.PlanRung
	for graft := range d.all.Batches {
		ladders = append(ladders, d.s.PlanRungs(graft))
	}
	d.clipped(a, scene.Tag{}, func() {
		for graft, rungs := range ladders {
			d.rungs(graft, rungs)
		}
	})
	from := len(d.marks)
	for i, r := range ladders[d.most()] {
		if d.rungCut(i) {
			continue
		}
		d.rungWords(r, d.span(ladders, i), d.rungY(i))
	}
	d.besideLadder(from)
	d.rule(a.X, a.Bottom()-0.5, a.Right(), a.Bottom()-0.5, scene.Rule)
}

// most is the graft that has the most nucs: its amounts are told.
func (d *planDraw) most() (graft int) {
	for i, b := range d.all.Batches {
		if b.Size.Nucs > d.all.Batches[graft].Size.Nucs {
			graft = i
		}
	}
	return graft
}

// ladderFrom is from which day the ladder is reckoned.
func (d *planDraw) ladderFrom() string {
	switch today := d.s.Today(); {
	case d.s.Planning.Forwards:
		return "Forwards from " + d.all.Batches[0].Day.ShortFrom(today)
	case !d.all.InTime:
		return "The soonest: " + d.all.Nearest.ShortFrom(today)
	default:
		return "Backwards from " + d.all.By.ShortFrom(today)
	}
}

func (d *planDraw) ladderHead(a scene.Area) {
	head := d.ladderFrom()
	const hint = "drag a step: all follow"
	if d.Head > 0 {
		x := d.fit(a.X+state.Edge, a.Y+20, head, ink(14).semi(), a.Right()-state.Edge)
		d.widest(x+14, a.Y+20, a.Right()-state.Edge, ink2(13), hint, "")
		return
	}
	d.fit(a.X+state.Edge, a.Y+24, head, ink(14).semi(), a.X+d.headWide())
	d.fit(a.X+state.Edge, a.Y+42, hint, ink2(13), a.X+d.headWide())
}

// headWide is what the head of the ladder takes of the first lines: as a rule leastHead, more where its
// day has a year.
func (d *planDraw) headWide() float64 {
	return max(leastHead, state.Edge+d.width(d.ladderFrom(), ink(14).semi()))
}

// leastHead is how wide the head of the ladder is at least, headTall how many dp of the first lines it
// takes, where it stands beside them.
const leastHead, headTall = 240.0, 58.0

func (d *planDraw) rungY(i int) float64 {
	return d.Ladder.Y + d.Head + state.LadderEdge + (float64(i)+0.5)*d.Rung
}

// rungCut tells whether an edge of what scrolls would cut a step: then neither its bar nor
// its words stand there.
func (d *planDraw) rungCut(i int) bool {
	top, foot := d.rungY(i)-state.RungReach, d.rungY(i)+state.RungReach
	return top < d.Body.Y && foot > d.Body.Y || top < d.Body.Bottom() && foot > d.Body.Bottom()
}

// rungs draws the steps of one graft.
func (d *planDraw) rungs(graft int, all []state.PlanRung) {
	for i, r := range all {
		if d.rungCut(i) {
			continue
		}
		bar := d.rungBar(r, d.rungY(i))
		if i > 0 && r.Step != plan.DroneComb {
			d.stair(bar, d.rungBar(all[i-1], d.rungY(i-1)))
		}
		d.bar(r, bar, graft)
	}
}

// rungBar is where a step's bar lies.
func (d *planDraw) rungBar(r state.PlanRung, y float64) scene.Area {
	rb := d.l.Ribbon
	x, to := max(rb.X, rb.Left(r.From)), max(rb.X, rb.Left(r.By+1))
	return scene.Area{X: x, Y: y - 7, W: max(rb.Column, to-x), H: 14}
}

// span is from where to where the bars of a step lie, of all grafts, with the stairs
// that lead on from them.
func (d *planDraw) span(ladders [][]state.PlanRung, i int) scene.Area {
	bar := d.rungBar(ladders[0][i], d.rungY(i))
	x, to := bar.X, bar.Right()
	for _, rungs := range ladders {
		bar = d.rungBar(rungs[i], d.rungY(i))
		x, to = min(x, bar.X), max(to, bar.Right())
		if i > 0 && rungs[i].Step != plan.DroneComb {
			to = max(to, stairAt(bar, d.rungBar(rungs[i-1], 0)))
		}
	}
	left := d.Ladder.X + state.Edge - 9
	return scene.Area{X: max(x, left), Y: bar.Y, W: max(to, left) - max(x, left), H: bar.H}
}

// stairAt is where the stair from a step to the next one goes up.
func stairAt(bar, next scene.Area) float64 {
	switch {
	case next.X < bar.X:
		return bar.Right()
	case next.X > bar.Right():
		return next.X + 4
	default:
		return max(bar.Right(), next.X) + 3
	}
}

// stair leads from a step up to the next one.
func (d *planDraw) stair(bar, next scene.Area) {
	if x, y := stairAt(bar, next), bar.Centre().Y; x > bar.Right() {
		d.rule(bar.Right(), y, x, y, scene.Ink3)
		d.rule(x, y, x, next.Bottom(), scene.Ink3)
	}
}

func (d *planDraw) bar(r state.PlanRung, bar scene.Area, graft int) {
	b := scene.Rect{Area: bar, Radius: 2, Fill: scene.Panel, Hatch: scene.Hatch{Role: scene.Ink2, Pitch: 4, Weight: 1.4}, Stroke: stroke(scene.Ink, 1)}
	mark := b.Stroke.Role
	if c, ok := rungFills[r.Step]; ok {
		b.Hatch.Role, mark = c.Line(), c.Line()
	} else if r.Step <= plan.GraftLarvae { // the keeper's own work, before there is a cell
		b.Fill, b.Hatch = scene.Ink2, scene.Hatch{}
	}
	ref := scene.Ref{Kind: state.RungRef, ID: r.Step.String(), Part: string(rune('0' + graft))}
	b.Tag = scene.Tag{Ref: ref, Reason: fmt.Sprintf("%s: %s; %s", r.Name, d.between(r.From, r.By), d.numbersSaid(r.Step.Used()))}
	d.hoverRing(bar, ref)
	if d.l.Ribbon.First > r.By { // all of it lies before the days that are shown
		c := at(bar.X, bar.Centre().Y)
		d.add(scene.Poly{Points: []scene.Point{c, c.Add(at(9, -6)), c.Add(at(9, 6))}, Fill: mark})
		d.hit(bar, ref, b.Tag.Reason)
		return
	}
	d.add(b)
	if !r.Hard.IsZero() {
		d.rect(scene.Area{X: bar.Right() - 3, Y: bar.Y - 3, W: 4, H: bar.H + 6}, scene.Act)
	}
}

// between is a day, or the days from one to another.
func (d *planDraw) between(from, to calendar.Day) string {
	if from == to {
		return from.ShortFrom(d.s.Today())
	}
	return from.ShortFrom(d.s.Today()) + " to " + to.ShortFrom(d.s.Today())
}

// rungWords stand left of the bars: why, then what and how many; right of them where
// there is more room.
func (d *planDraw) rungWords(r state.PlanRung, bar scene.Area, y float64) {
	name, amount, why := ink(14).semi(), ink(14), ink2(13)
	if r.Pressing || !r.Hard.IsZero() {
		why = why.as(scene.Act)
	}
	const gap, apart = 9.0, 14.0
	wide := d.width(r.Name, name) + gap + d.width(r.Amount, amount)
	from := d.Ladder.X + state.Edge
	if d.Head == 0 && y < d.Ladder.Y+headTall {
		from = d.Ladder.X + d.headWide() + 10
	}
	to := d.Ladder.Right() - 14
	left, right := bar.X-gap-from, to-bar.Right()-gap
	y += 5
	whole, first := wide+apart+d.width(strings.Join(r.Why, "; "), why), wide+apart+d.width(r.Why[0], why)
	if !r.Hard.IsZero() && r.Amount != "" && max(left, right) < first { // the hard hour never gives way
		r.Amount = ""
		d.rungWords(r, bar, y-5)
		return
	}
	if left >= whole || right < whole && (left >= first || right < first && (left >= wide || left > right)) {
		x := d.right(bar.X-gap, y, r.Amount, amount)
		x = d.right(x-gap+1, y, scene.Shorten(d.measure, r.Name, name.size, name.weight, max(0, x-gap+1-from)), name)
		if says := d.clauses(r.Why, why, x-apart-from); why.role == scene.Act || d.width(says, why) <= x-apart-from {
			d.rightFit(x-apart, y, says, why, from)
		}
		return
	}
	x := d.fit(bar.Right()+gap, y, r.Name, name, to)
	x = d.fit(x+gap-1, y, r.Amount, amount, to)
	says := d.clauses(r.Why, why, to-x-apart)
	if why.role == scene.Act && to-x > apart+60 || d.width(says, why) <= to-x-apart { // what does not press gives way whole
		d.fit(x+apart, y, says, why, to)
	}
}

// clauses are as many of some clauses as have room, the first one in any case.
func (d *planDraw) clauses(all []string, f font, room float64) string {
	n := len(all)
	for n > 1 && d.width(strings.Join(all[:n], "; "), f) > room {
		n--
	}
	return strings.Join(all[:n], "; ")
}

// rightFit writes up to x, shortened where it would begin before from, and not at all
// where little of it would be left.
func (p *sheet) rightFit(x, y float64, text string, f font, from float64) {
	if x-from < 60 {
		return
	}
	p.right(x, y, scene.Shorten(p.measure, p.say(text), f.size, f.weight, x-from), f)
}
