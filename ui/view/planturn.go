package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// turn draws the fields that say how a nuc is worked, in a sentence.
func (d seasonDraw) turn(row scene.Area) {
	const high, narrow, wide = 34.0, 46.0, 92.0
	sheet := d.s.SeasonSheet()
	if sheet == nil {
		return
	}
	_, wrong := d.s.TurnTyped(sheet.Turn)
	x, y := row.X, row.Y+8
	field := func(name, empty, reason string, w float64) {
		if x+w > row.Right() {
			return
		}
		d.input(scene.Area{X: x, Y: y, W: w, H: high}, name, fieldLook{size: 14, empty: empty, wrong: wrong.Field == name && d.s.Typed(name) != "", reason: reason})
		x += w + 8
	}
	last := "a day"
	if sheet.Turn.Last != 0 {
		last = sheet.Turn.Last.Short()
	}
	x = d.fit(x, y+22, "next cell", ink2(14), row.Right()) + 8
	field(state.TurnGap, "0", "so many days from a catch to the next cell; empty: at the same visit", narrow)
	x = d.fit(x, y+22, "d after the catch, a visit every", ink2(14), row.Right()) + 8
	field(state.TurnVisit, "1", "you come every so many days; empty: any day", narrow)
	x = d.fit(x, y+22, "d, until", ink2(14), row.Right()) + 8
	field(state.TurnLast, last, "the last queens are wanted by that day; empty: when those of the season's last graft are ready", wide)
}

// turnColumns are where the columns of a turn begin, as shares of the width.
var turnColumns = []float64{0, 0.15, 0.29, 0.47, 0.6}

// turnAge writes what a nuc gives by the age at the catch; what is most of its column lies
// on a ground of its own.
func (d seasonDraw) turnAge(l state.SeasonLine, row scene.Area, y float64) {
	const plate = 52.0
	w := min(row.W-indent, 760)
	for i, cell := range l.Cells {
		x, f, to := row.X+indent+turnColumns[i]*w, ink(14), row.X+indent+w
		if i+1 < len(turnColumns) {
			to = row.X + indent + turnColumns[i+1]*w - 8
		}
		switch {
		case l.SeasonLook == state.SeasonTurnHead || i > 2:
			f = ink2(13.5)
		case i > 0 && l.Best[i-1]:
			d.add(scene.Rect{Area: scene.Area{X: x - 8, Y: row.Y + 2, W: plate, H: row.H - 4}, Radius: 4, Fill: scene.PenTint})
			f = f.semi()
		}
		d.fit(x, y, cell, f, to)
	}
	d.rule(row.X+indent, row.Bottom()-0.5, row.X+indent+w, row.Bottom()-0.5, scene.Hair)
}
