package view

import (
	"fmt"

	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// banks draws a lane for each bank: how many queens are caged in it, by day, and until when
// they keep.
func (d seasonDraw) banks(a scene.Area) {
	d.rect(a, scene.Ground)
	all, lanes := d.s.Banks(), int(a.H/state.BankHeight+0.5)
	for i, b := range all[:lanes] {
		row := scene.Area{X: a.X, Y: a.Y + float64(i)*state.BankHeight, W: a.W, H: state.BankHeight}
		name := d.s.BankName(b)
		if i == lanes-1 && lanes < len(all) {
			name += fmt.Sprintf(", +%d", len(all)-lanes)
		}
		d.clipped(scene.Area{X: d.l.Ribbon.X, Y: row.Y, W: row.Right() - d.l.Ribbon.X, H: row.H}, scene.Tag{}, func() { d.bank(i, b, name, row) })
		if d.l.Ribbon.X >= 100 {
			d.fit(state.Edge, row.Y+17, "bank "+name, ink2(13), d.l.Ribbon.X-6)
		}
	}
	d.rule(0, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Rule)
}

// bank draws one bank in its row: solid up to now, hatched as long as its queens keep, as
// thick as it has queens. Its name stands in it where no column has it.
func (d seasonDraw) bank(i int, b rules.Bank, name string, row scene.Area) {
	thick, middle := 14.0, 13.0
	r := d.s.Present()
	now := instantX(d.l.Ribbon, r.View.On(), r.View.Zone())
	look := scene.Laying
	if b.Virgins {
		look = scene.Virgin
	}
	says, late := d.s.BankSays(b)
	role, f := scene.Ink, ink(12.5)
	if late {
		role, f = scene.Act, f.semi().as(scene.Act)
	}
	if d.l.Ribbon.X < 100 {
		says = name + ": " + says
	}
	why := d.s.BankName(b) + "  " + says + "; " + d.s.BankWhy(b)
	end := max(b.Last(), d.s.Today()) + 1
	x, y, w := d.l.Ribbon.Left(end)+10, row.Y+17, d.width(says, f)
	if x+w > row.Right()-state.Edge { // above the bar, behind the frame of today
		_, frame := d.frameSides(d.s.Today())
		thick, middle = 8, 19
		x, y = min(frame+8, row.Right()-state.Edge-w), row.Y+12
	}
	for day := b.Since(); day < end; {
		n, to := caged(b, day, d.s.Today()), day+1
		for to < end && caged(b, to, d.s.Today()) == n {
			to++
		}
		high := thick * float64(n) / float64(len(b.Kept))
		x, until := d.l.Ribbon.Left(day), d.l.Ribbon.Left(to)
		known := min(max(x, now), until)
		bar := scene.Area{X: known, Y: row.Y + middle - high/2, W: until - known, H: high}
		d.rect(scene.Area{X: x, Y: bar.Y, W: known - x, H: high}, look.Fill())
		if bar.W > 0 && n > 0 {
			d.add(scene.Rect{Area: bar, Fill: scene.Panel, Stroke: stroke(look.Line(), 0.8), Hatch: scene.Hatch{Role: look.Line(), Pitch: 5, Weight: 1.3}})
		}
		day = to
	}
	by := d.l.Ribbon.Left(b.First() + 1)
	d.text(x, y, says, f)
	d.add(scene.Line{From: at(by, row.Y+middle-thick/2-3), To: at(by, row.Y+middle+thick/2+3), Stroke: stroke(role, 2)})
	d.hit(row, scene.Ref{Kind: state.FigureRef, ID: fmt.Sprint("bank ", i)}, why)
}

// caged is how many of a bank are in it on a day: of those who are too long there already
// all, and ahead those who still keep.
func caged(b rules.Bank, day, today calendar.Day) (n int) {
	for _, k := range b.Kept {
		if k.Since <= day && (day <= today || day <= k.By) {
			n++
		}
	}
	return n
}
