package view

import (
	"math"

	"lidmark/ui/scene"
)

// sign draws the program's own sign, as its icon has it: a lid seen from above,
// the entrance at its foot, one stroke of paint across. k is the size of the
// icon's square, which is 512 units wide.
func (p *sheet) sign(c scene.Point, k float64) {
	unit := k / 512
	spot := func(x, y float64) scene.Point { return c.Add(at((x-256)*unit, (y-256)*unit)) }
	var edge []scene.Point
	corner := func(x, y, from float64) {
		const radius, steps = 92.0, 6
		for i := range steps + 1 {
			turn := (from + 90*float64(i)/steps) * math.Pi / 180
			edge = append(edge, spot(x+radius*math.Cos(turn), y+radius*math.Sin(turn)))
		}
	}
	corner(376, 136, -90)
	corner(376, 376, 0)
	edge = append(edge, spot(314, 468), spot(324, 384), spot(188, 384), spot(198, 468))
	corner(136, 376, 90)
	corner(136, 136, 180)
	paint := stroke(scene.White, 60*unit)
	paint.Round = true
	p.add(scene.Poly{Points: edge, Fill: scene.Green, Stroke: stroke(scene.Ink, 24*unit)},
		scene.Line{From: spot(150, 290), To: spot(352, 122), Stroke: paint})
}
