package view

import (
	"cmp"
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// stacks tells whether the parts stand below each other.
func (d *planDraw) stacks() bool { return d.Head > 0 }

// compares tells whether what was kept is compared in place of why.
func (d *planDraw) compares() bool {
	return d.s.Planning.Compare && len(d.s.Planning.Tries) > 0 && !d.stacks()
}

// besideLadder lists below the parts, where they stand below each other, what is on the plan, and
// compares what was kept; beside the steps it says what has room where none of their words, which
// begin at a mark, stand.
func (d *planDraw) besideLadder(from int) {
	tries, now := d.s.PlanTries()
	planned := d.s.PlannedUnseen(d.l)
	if !d.stacks() {
		d.inLadder(planned, len(tries), from)
		return
	}
	if box := d.Kept; !box.Empty() {
		y := box.Y + 16
		if len(planned) > 0 {
			y = d.plannedLines(planned, box, y)
		}
		if len(tries) > 0 {
			d.tries(tries, now, scene.Area{X: box.X, Y: y, W: box.W, H: box.Bottom() - y})
		}
	}
}

// keptRow is how high a line of what is on the plan, or was kept, is; plannedWide how wide what
// is on the plan is beside the steps, dp.
const keptRow, plannedWide = 20.0, 340.0

// inLadder writes beside the steps what is on the plan, as many lines as have room, and what leads
// to what was kept.
func (d *planDraw) inLadder(planned []book.BatchPlan, tries, from int) {
	const edge = 6.0
	a := scene.Area{X: d.Ladder.Right() - state.Edge - plannedWide, W: plannedWide}
	for n := len(planned); n > 0; n-- {
		a.H = keptRow*float64(n+1) + 8
		if a.Y = d.Ladder.Bottom() - edge - a.H; d.clear(a, from) {
			d.rect(a.Inset(-4), scene.Ground)
			d.plannedLines(planned, scene.Area{X: a.X, Y: a.Y, W: a.W, H: a.H}, a.Y+14)
			planned = nil
			break
		}
	}
	var links [][2]string
	if len(planned) > 0 {
		links = append(links, [2]string{fmt.Sprintf("%d on the plan: season", len(planned)), "season"})
	}
	if tries > 0 && !d.compares() {
		links = append(links, [2]string{fmt.Sprintf("kept beside: %d", tries), "compare"})
	}
	f := ink(13).as(scene.Pen)
	for _, l := range links {
		w := d.width(l[0], f)
		a := scene.Area{X: d.Ladder.Right() - state.Edge - w, W: w, H: keptRow}
		for a.Y = d.Ladder.Bottom() - edge - a.H; a.Y > d.Ladder.Y; a.Y -= 4 {
			if d.clear(a, from) {
				d.link(a.X, a.Y+14, l[0], f, l[1], false)
				break
			}
		}
	}
}

// clear tells whether no step, and none of the marks from one on, lies in an area of the ladder.
func (d *planDraw) clear(a scene.Area, from int) bool {
	const air = 12.0
	a = a.Inset(-air)
	for graft := range d.all.Batches {
		for i, r := range d.s.PlanRungs(graft) {
			if d.rungBar(r, d.rungY(i)).Overlaps(a) {
				return false
			}
		}
	}
	for _, m := range d.marks[from:] {
		t, ok := m.(scene.Text)
		if !ok {
			continue
		}
		w := d.width(t.Text, font{t.Size, t.Weight, t.Role})
		x := t.At.X
		if t.Anchor == scene.Right {
			x -= w
		}
		if a.Overlaps(scene.Area{X: x, Y: t.At.Y - t.Size, W: w, H: 1.3 * t.Size}) {
			return false
		}
	}
	return true
}

// besideLine is a line that can be clicked, with a figure at its end.
func (d *planDraw) besideLine(box scene.Area, y float64, words, figure string, ref scene.Ref, on bool) {
	area := scene.Area{X: box.X - 6, Y: y - 14, W: box.W + 12, H: 20}
	r := scene.Rect{Area: area, Radius: 4, Tag: scene.Tag{Ref: ref}}
	if on {
		r.Fill, r.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
	} else if d.hovers(ref) {
		r.Fill = scene.Sunk
	}
	d.add(r)
	end := box.X + box.W
	if figure != "" {
		end = d.right(end, y, figure, ink(13).semi()) - 10
	}
	d.fit(box.X, y, words, ink(13), end)
}

// plannedLines lists what is on the plan and has no lane in an area, from a first line on; it gives
// where the next one would stand.
func (d *planDraw) plannedLines(planned []book.BatchPlan, box scene.Area, y float64) float64 {
	d.text(box.X, y, "On the plan", ink(14).semi())
	y += keptRow
	for i, b := range planned {
		if more := len(planned) - i; more > 1 && y+keptRow > box.Bottom() {
			d.link(box.X, y, fmt.Sprintf("%d more: season", more), ink(13).as(scene.Pen), "season", false)
			return y + 34
		}
		lane := d.s.PlannedStands(b)
		figure := ""
		if lane.Queens > 0 && lane.By != 0 {
			figure = plan.OfHundred(lane.Chance) + lane.Wished.Together()
		}
		d.besideLine(box, y, plannedGraft(lane, d.s.Today()), figure, lane.Ref(), b.Batch == d.s.Planning.Batch)
		y += keptRow
	}
	return y + 14
}

// triesBeside compares what was kept in the place of why; where its columns want more, in that of
// the minutes too.
func (d *planDraw) triesBeside(a scene.Area) {
	foot := d.planButtons(a)
	if d.triesWide() {
		a.W, a.X = a.Right()-d.Parts[2].X, d.Parts[2].X
	}
	d.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
	tries, now := d.s.PlanTries()
	d.tries(tries, now, scene.Area{X: a.X + state.Edge, Y: a.Y + 24, W: a.W - 2*state.Edge, H: foot - a.Y - 24})
}

// triesWide tells whether the columns of what was kept want more than the place of why.
func (d *planDraw) triesWide() bool {
	return d.compares() && tryNames+tryLeast*float64(d.tryColumns()) > d.Parts[3].W-2*state.Edge
}

// tryColumns is how many there are: what was kept, what stands on the plan and what stands in the
// fields.
func (d *planDraw) tryColumns() int {
	tries, now := d.s.PlanTries()
	n := len(tries)
	if _, planned := d.s.OnPlan(); planned {
		n++
	}
	if now != nil {
		n++
	}
	return n
}

// Widths of the table of what was kept, dp: of the names of its rows, and of a column at least and
// at most.
const tryNames, tryLeast, tryMost = 56.0, 66.0, 96.0

// tries compares what was kept figure by figure: what stands on the plan before it, what stands
// in the fields behind it.
func (d *planDraw) tries(tries []state.PlanTry, now *state.PlanTry, a scene.Area) {
	x := d.text(a.X, a.Y, "Kept beside", ink(15).semi())
	d.link(x+18, a.Y, "forget them", ink(13).as(scene.Pen), "forget tries", false)
	onPlan, planned := d.s.OnPlan()
	t := tryTable{Area: a, d: d, rows: append([]string{""}, d.s.TryRows()...)}
	t.wide = min(tryMost, (a.W-tryNames)/float64(d.tryColumns()))
	t.row = min(keptRow+2, (a.H-tryTop)/float64(len(t.rows)))
	for i, name := range t.rows {
		d.fit(a.X, t.line(i), name, ink2(13), a.X+tryNames)
		d.rule(a.X, t.line(i)+6, a.X+tryNames+t.wide*float64(d.tryColumns()), t.line(i)+6, scene.Hair)
	}
	if planned {
		t.column("on the plan", onPlan, ink(13))
	}
	for i, kept := range tries {
		ref := scene.Ref{Kind: state.TryRef, ID: fmt.Sprint(i)}
		box := scene.Rect{
			Area: scene.Area{X: a.X + tryNames + t.wide*float64(t.at) + 2, Y: a.Y + 8, W: t.wide, H: t.row * float64(len(t.rows))}, Radius: 4,
			Tag: scene.Tag{Ref: ref, Reason: fmt.Sprintf("%s by %s: take it up again", plan.QueensSaid(kept.Wish.Queens), kept.By.ShortFrom(d.s.Today()))},
		}
		if d.hovers(ref) {
			box.Fill = scene.Sunk
		}
		d.add(box)
		t.column("kept", kept, ink(13))
	}
	if now != nil {
		t.column("now", *now, ink(13).semi().as(scene.Pen))
	}
}

// tryTable is a table of try-outs, a column each.
type tryTable struct {
	scene.Area
	d         *planDraw
	rows      []string
	wide, row float64
	at        int // the next column
}

// tryTop is where the rows of that table begin below its head, dp.
const tryTop = 8.0

func (t *tryTable) line(i int) float64 { return t.Y + tryTop + t.row*float64(i+1) - 6 }

// column writes one of them.
func (t *tryTable) column(head string, p state.PlanTry, f font) {
	t.at++
	to := t.X + tryNames + t.wide*float64(t.at)
	queens, by := p.Wanted(t.d.s.Today())
	says := map[string]string{
		"": head, "wanted": queens, "by": by, "line": cmp.Or(p.Wish.Line, "any"), "graft": t.d.shortDay(p.Graft), "larvae": fmt.Sprint(p.Larvae),
		"nucs": fmt.Sprint(p.Nucs), "hours": fmt.Sprintf("%.0f", p.Hours), "of 100": chanceFigure(p.Chance), "at 90 %": fmt.Sprint(p.Promise),
	}
	for i, row := range t.rows {
		t.d.right(to, t.line(i), scene.Shorten(t.d.measure, says[row], f.size, f.weight, t.wide-6), f)
	}
}
