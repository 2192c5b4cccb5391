package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// partLook is how a part of a strip or band looks: the fill of its condition,
// hatched where another part has the same fill, and its letter.
type partLook struct {
	like   scene.Condition
	hatch  scene.Hatch
	letter string // "" where no lid has one for it
}

// partLooks are the looks of the parts.
var partLooks = [...]partLook{
	state.LayingPart:  {like: scene.Laying, letter: scene.Laying.Sign()},
	state.MatedPart:   {like: scene.Mated},
	state.VirginPart:  {like: scene.Virgin, letter: scene.Virgin.Sign()},
	state.CellPart:    {like: scene.Cell, letter: scene.Cell.Sign()},
	state.OwnPart:     {like: scene.Cell, hatch: scene.Hatch{Role: scene.Cell.Line(), Pitch: 5, Weight: 1.2, Falling: true}},
	state.NonePart:    {like: scene.NoQueen, letter: scene.NoQueen.Sign()},
	state.DronePart:   {like: scene.DroneLayer, hatch: scene.Hatch{Role: scene.DroneLayer.Letter(), Pitch: 5, Weight: 1}, letter: scene.DroneLayer.Sign()},
	state.WorkersPart: {like: scene.LayingWorkers, hatch: scene.Hatch{Role: scene.LayingWorkers.Letter(), Pitch: 5, Weight: 1, Falling: true}, letter: scene.LayingWorkers.Sign()},
}

// partsStrip draws chances as a strip.
func (p *sheet) partsStrip(a scene.Area, parts state.CourseParts) {
	x := a.X
	for i, chance := range parts {
		w := chance * a.W
		if w >= 0.5 {
			look := partLooks[i]
			p.add(scene.Rect{Area: scene.Area{X: x, Y: a.Y, W: w, H: a.H}, Fill: look.like.Fill(), Hatch: look.hatch, Stroke: stroke(scene.Ink, 1)})
		}
		x += w
	}
}

// swatch draws a part's look in a small square.
func (p *sheet) swatch(a scene.Area, part state.CoursePart) {
	look := partLooks[part]
	p.add(scene.Rect{Area: a, Fill: look.like.Fill(), Hatch: look.hatch, Stroke: stroke(scene.Ink, 1)})
}
