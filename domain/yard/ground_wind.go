package yard

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Wind is from where it mostly blows over a ground, and what shelters there. The zero
// Wind blows on no front.
type Wind struct {
	said     bool
	from     float64 // degrees clockwise from north
	within   float64 // degrees off it at which a front still faces it
	shelters []shelter
}

// shelter is a hedge, a wall or a dwelling, and how far in metres it shelters.
type shelter struct {
	shape
	reach float64
}

// Breeze is the wind on the ground; nobody said from where it blows: on no front.
func (g *Ground) Breeze(n practice.Numbers) Wind {
	w := Wind{said: g.Wind.Said(), from: g.Wind.Value, within: n.Get(practice.WindOnFront)}
	for _, s := range g.shapes(book.Hedge, book.Wall, book.Dwelling) {
		if reach := s.Height * n.Get(practice.ShelterReach); reach > 0 {
			w.shelters = append(w.shelters, shelter{s, reach})
		}
	}
	return w
}

// On tells whether an entrance at a point that faces a bearing, degrees clockwise from
// north, is in the wind: it faces it and nothing shelters it; and by how many degrees
// it faces off it.
func (w *Wind) On(at book.Point, bearing float64) (off float64, is bool) {
	if !w.said {
		return 0, false
	}
	off = between(bearing, w.from)
	return off, off < w.within && !w.sheltered(at)
}

// sheltered tells whether something stands before the wind, no further than it shelters.
func (w *Wind) sheltered(at book.Point) bool {
	p := of(at)
	for i := range w.shelters {
		if s := &w.shelters[i]; s.meets(p, towards(p, w.from, s.reach)) {
			return true
		}
	}
	return false
}
