package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// partLook is how a part of a strip or band looks: the fill of its condition; its letter;
// and, where another part has the same fill or one as light, lines across it. Those fall to
// the right, or cross, for lines that rise alone, on paper, say "not seen yet".
type partLook struct {
	like   scene.Condition
	letter string // "" where no lid has one for it
	hatch  scene.Hatch
}

// partLooks are the looks of the parts. No two are alike, in grey neither.
var partLooks = [...]partLook{
	state.LayingPart:  {like: scene.Laying, letter: scene.Laying.Sign()},
	state.MatedPart:   {like: scene.Mated},
	state.VirginPart:  {like: scene.Virgin, letter: scene.Virgin.Sign()},
	state.CellPart:    {like: scene.Cell, letter: scene.Cell.Sign()},
	state.OwnPart:     {like: scene.Cell, hatch: falling(scene.Cell.Line(), 6, 1.5)},
	state.NonePart:    {like: scene.NoQueen, letter: scene.NoQueen.Sign()},
	state.DronePart:   {like: scene.DroneLayer, letter: scene.DroneLayer.Sign(), hatch: falling(scene.DroneLayer.Letter(), 6, 1.3)},
	state.WorkersPart: {like: scene.LayingWorkers, letter: scene.LayingWorkers.Sign(), hatch: crossed(scene.LayingWorkers.Letter(), 4.6, 1.2)},
}

func falling(role scene.Role, pitch, weight float64) scene.Hatch {
	return scene.Hatch{Role: role, Pitch: pitch, Weight: weight, Falling: true}
}

func crossed(role scene.Role, pitch, weight float64) scene.Hatch {
	return scene.Hatch{Role: role, Pitch: pitch, Weight: weight, Falling: true, Crossed: true}
}

// in is an area that looks so, without an outline.
func (l partLook) in(a scene.Area) scene.Rect {
	return scene.Rect{Area: a, Fill: l.like.Fill(), Hatch: l.hatch}
}

// partLeast is how wide a part of a strip is at least, dp: one that is narrower would
// be all outline.
const partLeast = 5.0

// partsStrip draws chances as a strip. What is too little to be seen stands with the
// greatest part: its word says how much it is.
func (p *sheet) partsStrip(a scene.Area, parts state.CourseParts) {
	x := a.X
	for i, share := range parts.Drawn(partLeast / a.W) {
		if share > 0 {
			part := partLooks[i].in(scene.Area{X: x, Y: a.Y, W: share * a.W, H: a.H})
			part.Stroke = stroke(scene.Ink, 1)
			p.add(part)
			x += part.W
		}
	}
}

// swatch draws a part's look in a small square.
func (p *sheet) swatch(a scene.Area, part state.CoursePart) {
	box := partLooks[part].in(a)
	box.Stroke = stroke(scene.Ink, 1)
	p.add(box)
}
