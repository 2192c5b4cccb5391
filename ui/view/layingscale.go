package view

import (
	"fmt"

	"lidmark/ui/scene"
)

// layingScale draws, under the frame of a map, where north is, how long some metres are,
// and at what hour the shadows lie so.
func (d *layingDraw) layingScale(frame scene.Area) {
	const tick = 4.0
	y, f := frame.Bottom()+14, ink2(12)
	c := d.s.LayingCamera(frame)
	metres := scaleMetres(c)
	x, long := frame.X+28, c.Length(metres)
	d.north(at(frame.X+6, y-3))
	d.rule(x, y, x+long, y, scene.Ink2)
	d.rule(x, y-tick, x, y+1, scene.Ink2)
	d.rule(x+long, y-tick, x+long, y+1, scene.Ink2)
	x = d.text(x+long+6, y+3, fmt.Sprintf("%.0f m", metres), f)
	if len(d.is.Shades) > 0 {
		d.fit(x+20, y+3, "shadows on "+d.is.SunDay.Short()+", "+d.is.ShadesAt.Format("15:04"), f, frame.Right())
	}
}
