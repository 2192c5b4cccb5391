package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// partLook is how a part of a strip or band looks: the fill of its condition, always solid,
// for a hatch says "not seen yet"; and its letter.
type partLook struct {
	like   scene.Condition
	letter string // "" where no lid has one for it
}

// partLooks are the looks of the parts. No two are filled alike.
var partLooks = [...]partLook{
	state.LayingPart:  {scene.Laying, scene.Laying.Sign()},
	state.MatedPart:   {like: scene.Mated},
	state.VirginPart:  {scene.Virgin, scene.Virgin.Sign()},
	state.CellPart:    {scene.Cell, scene.Cell.Sign()},
	state.OwnPart:     {like: scene.OwnQueen},
	state.NonePart:    {scene.NoQueen, scene.NoQueen.Sign()},
	state.DronePart:   {scene.DroneLayer, scene.DroneLayer.Sign()},
	state.WorkersPart: {scene.ManyEggs, scene.ManyEggs.Sign()},
}

// partLeast is how wide a part of a strip is at least, dp: one that is narrower would
// be all outline.
const partLeast = 5.0

// partsStrip draws chances as a strip. What is too little to be seen stands together at
// its end, in no colour.
func (p *sheet) partsStrip(a scene.Area, parts state.CourseParts) {
	drawn, rest := parts.Drawn(partLeast / a.W)
	x := a.X
	part := func(share float64, fill scene.Role) {
		if share > 0 {
			w := share * a.W
			p.add(scene.Rect{Area: scene.Area{X: x, Y: a.Y, W: w, H: a.H}, Fill: fill, Stroke: stroke(scene.Ink, 1)})
			x += w
		}
	}
	for i, share := range drawn {
		part(share, partLooks[i].like.Fill())
	}
	part(rest, scene.Rule)
}

// swatch draws a part's look in a small square.
func (p *sheet) swatch(a scene.Area, part state.CoursePart) {
	p.add(scene.Rect{Area: a, Fill: partLooks[part].like.Fill(), Stroke: stroke(scene.Ink, 1)})
}
