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
		last = sheet.Turn.Last.ShortFrom(d.s.Today())
	}
	x = d.fit(x, y+22, "next cell", ink2(14), row.Right()) + 8
	field(state.TurnGap, "0", "so many days from a catch to the next cell; empty: at the same visit", narrow)
	x = d.fit(x, y+22, "d after the catch, a visit every", ink2(14), row.Right()) + 8
	field(state.TurnVisit, "1", "you come every so many days; empty: any day", narrow)
	x = d.fit(x, y+22, "d, until", ink2(14), row.Right()) + 8
	field(state.TurnLast, last, "the last queens are wanted by that day; empty: when those of the season's last graft are ready", max(wide, d.width(last, ink(14))+26))
}
