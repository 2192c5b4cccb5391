package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// shadows draws what lies in the shade at the hour that is looked at.
func (g *ground) shadows() {
	for _, s := range g.dark {
		for _, outline := range s.Outlines {
			points := make([]scene.Point, len(outline))
			for i, p := range outline {
				points[i] = g.camera.Screen(state.OnGround(p))
			}
			g.add(scene.Poly{Points: points, Fill: scene.Shadow})
		}
	}
}
