package view

import (
	"fmt"
	"slices"

	"lidmark/ui/scene"
)

// scale draws how long some metres are, where north is, and at what hour the shadows
// lie so, where that has room: where nothing is, else where only the ground is drawn, else
// in a corner.
func (m *layoutMap) scale() {
	metres := scaleMetres(m.camera)
	long, f := m.camera.Length(metres), ink2(12)
	words := []string{fmt.Sprintf("%.0f m", metres)}
	if len(m.dark) > 0 {
		words = []string{words[0] + ", shadows of " + m.s.LayoutSheet().SunDay.Short() + ", " + m.s.LayoutSheet().ShadesAt.Format("15:04"), words[0]}
	}
	at := func(a scene.Area, words string) {
		if !m.free(a) {
			m.add(scene.Rect{Area: a, Radius: 3, Fill: scene.Map, Clear: 0.2})
		}
		m.take(a)
		m.scaleAt(a.X+6, a.Bottom()-9, long, words, f)
	}
	var places []scene.Area
	for _, room := range []func(scene.Area) bool{m.free, m.clear} {
		for _, w := range words {
			places = m.scalePlaces(28+long+6+m.width(w, f)+12, 26)
			if i := slices.IndexFunc(places, room); i >= 0 {
				at(places[i], w)
				return
			}
		}
	}
	at(places[0], words[len(words)-1])
}

// scalePlaces are where the scale may stand, the corners first, then along the lower and
// the upper edge.
func (m *layoutMap) scalePlaces(w, h float64) (places []scene.Area) {
	in := m.frame.Inset(4)
	low, high := in.Bottom()-h, in.Y
	add := func(x, y float64) { places = append(places, scene.Area{X: x, Y: y, W: w, H: h}) }
	for _, x := range []float64{in.X, in.Right() - w} {
		add(x, low)
		add(x, high)
	}
	const step = 40.0
	for _, y := range []float64{low, high} {
		for x := in.X + step; x+w < in.Right(); x += step {
			add(x, y)
		}
	}
	return places
}

func (m *layoutMap) scaleAt(x, y, long float64, words string, f font) {
	m.north(at(x+4, y-3))
	x += 28
	m.rule(x, y, x+long, y, scene.Ink2)
	m.rule(x, y-4, x, y+1, scene.Ink2)
	m.rule(x+long, y-4, x+long, y+1, scene.Ink2)
	m.text(x+long+6, y+3, words, f)
}
