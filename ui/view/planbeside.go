package view

import (
	"cmp"
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// keptShown tells whether anything stands beside the ladder.
func (d *planDraw) keptShown() bool {
	return !d.stacks() && len(d.s.Planning.Tries)+len(d.s.PlannedUnseen(d.l)) > 0
}

// keptBottom is where what stands beside the ladder ends.
func (d *planDraw) keptBottom() float64 {
	if planned := len(d.s.PlannedUnseen(d.l)); len(d.s.Planning.Tries) == 0 && planned > 0 {
		return min(d.Kept.Bottom(), d.Kept.Y+46+20*float64(planned))
	}
	return d.Kept.Bottom()
}

// stacks tells whether the parts stand below each other.
func (d *planDraw) stacks() bool { return d.Kept.Y >= d.Ladder.Bottom() || d.Kept.Empty() }

// besideLadder compares what was kept, and lists what is on the plan and has no lane:
// beside the steps only where nothing was kept.
func (d *planDraw) besideLadder() {
	box := d.Kept
	if box.Empty() {
		return
	}
	y := box.Y + 16
	tries, now := d.s.PlanTries()
	if planned := d.s.PlannedUnseen(d.l); len(planned) > 0 && (d.stacks() || len(tries) == 0) {
		y = d.plannedLines(planned, box, y)
	}
	if len(tries) > 0 {
		d.tries(tries, now, scene.Area{X: box.X, Y: y, W: box.W, H: box.Bottom() - y})
	}
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

func (d *planDraw) plannedLines(planned []book.BatchPlan, box scene.Area, y float64) float64 {
	d.text(box.X, y, "On the plan", ink(14).semi())
	y += 21
	for i, b := range planned {
		if more := len(planned) - i; more > 1 && y+20 > box.Bottom()-4 {
			d.link(box.X, y, fmt.Sprintf("%d more: season", more), ink(13).as(scene.Pen), "season", false)
			return y + 34
		}
		lane := d.s.PlannedStands(b)
		figure := ""
		if lane.Queens > 0 && lane.By != 0 {
			figure = plan.OfHundred(lane.Chance) + lane.Wished.Together()
		}
		d.besideLine(box, y, plannedGraft(lane), figure, lane.Ref(), b.Batch == d.s.Planning.Batch)
		y += 20
	}
	return y + 14
}

// tries compares what was kept figure by figure: what stands on the plan before it, what stands
// in the fields behind it.
func (d *planDraw) tries(tries []state.PlanTry, now *state.PlanTry, a scene.Area) {
	x := d.text(a.X, a.Y, "Kept beside", ink(14).semi())
	d.link(x+14, a.Y, "forget them", ink(13).as(scene.Pen), "forget tries", false)
	const names = 62.0
	onPlan, planned := d.s.OnPlan()
	t := tryTable{d: d, rows: append([]string{""}, d.s.TryRows()...), names: names}
	columns := len(tries)
	for _, is := range []bool{planned, now != nil} {
		if is {
			columns++
		}
	}
	t.wide = min(96, (a.W-names)/float64(columns))
	t.row = min(19, (a.H-6)/float64(len(t.rows)))
	t.Area = a
	for i, name := range t.rows {
		d.fit(a.X, t.line(i), name, ink2(13), a.X+names)
	}
	if planned {
		t.column("on the plan", onPlan, ink(13))
	}
	for i, kept := range tries {
		ref := scene.Ref{Kind: state.TryRef, ID: fmt.Sprint(i)}
		box := scene.Rect{
			Area: scene.Area{X: a.X + names + t.wide*float64(t.at) + 2, Y: a.Y + 5, W: t.wide, H: t.row * float64(len(t.rows))}, Radius: 4,
			Tag: scene.Tag{Ref: ref, Reason: fmt.Sprintf("%d queens by %s: take it up again", kept.Wish.Queens, kept.By.Short())},
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
	d                *planDraw
	rows             []string
	names, wide, row float64
	at               int // the next column
}

func (t *tryTable) line(i int) float64 { return t.Y + 4 + t.row*(float64(i)+0.9) }

// column writes one of them.
func (t *tryTable) column(head string, p state.PlanTry, f font) {
	t.at++
	to := t.X + t.names + t.wide*float64(t.at)
	queens, by := p.Wanted()
	says := map[string]string{
		"": head, "wanted": queens, "by": by, "line": cmp.Or(p.Wish.Line, "any"), "graft": shortDay(p.Graft), "larvae": fmt.Sprint(p.Larvae),
		"nucs": fmt.Sprint(p.Nucs), "hours": fmt.Sprintf("%.0f", p.Hours), "chance": plan.OfHundred(p.Chance), "at 90 %": fmt.Sprint(p.Promise),
	}
	for i, row := range t.rows {
		t.d.right(to, t.line(i), scene.Shorten(t.d.measure, says[row], f.size, f.weight, t.wide-6), f)
	}
}
