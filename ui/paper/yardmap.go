package paper

import (
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// mapStrip draws the maps of several yards side by side, with their names.
func (d dayRoute) mapStrip(f *flow, maps []book.YardID) {
	const gap, high = 3.0, 38.0
	per := min(len(maps), max(1, int((f.right()-f.left()+gap)/(52+gap))))
	maps = maps[:per]
	w := (f.right() - f.left() - gap*float64(per-1)) / float64(per)
	w = min(w, 1.8*high)
	a := f.row(high + 6)
	for i, y := range maps {
		x := a.X + float64(i)*(w+gap)
		f.fit(x, a.Y+3.8, d.View.Yard(y).Name, semi(8.6), x+w)
		f.yardMap(d, y, scene.Area{X: x, Y: a.Y + 5, W: w, H: high})
	}
}

// yardMap draws a small map of a yard: its ground, its stands, the walk.
func (f *flow) yardMap(d dayRoute, yard book.YardID, a scene.Area) {
	f.rect(a, 0, white, stroke{black, 0.3})
	m := smallMap{flow: f, day: d, yard: d.View.Yard(yard), walk: d.walk(yard), camera: scene.Fit(d.Ground(yard), a.Inset(1.5))}
	corners := []scene.Point{{X: a.X, Y: a.Y}, {X: a.Right(), Y: a.Y}, {X: a.Right(), Y: a.Bottom()}, {X: a.X, Y: a.Bottom()}}
	f.clipped(corners, func() {
		for _, g := range m.yard.Features {
			m.feature(g)
		}
		m.way()
		m.stands()
		m.vehicleName()
		m.north(m.emptiest(a))
	})
	f.rect(a, 0, none, stroke{black, 0.3})
}

// smallMap is a map being drawn.
type smallMap struct {
	*flow
	day    dayRoute
	yard   *book.Yard
	walk   []scene.Point // m
	camera scene.Camera
}

func (m smallMap) at(p book.Point) scene.Point { return m.camera.Screen(state.OnGround(p)) }

// feature draws something on the ground as a plain line.
func (m smallMap) feature(g book.FeatureDrawn) {
	var points []scene.Point
	for _, p := range g.Points {
		points = append(points, m.at(p))
	}
	if len(points) == 0 {
		return
	}
	switch g.What {
	case book.Tree:
		m.circle(points[0], m.camera.Length(max(g.Width, 1)/2*0.85), none, stroke{pale, 0.2})
	case book.Hedge:
		m.path(points, stroke{black, 0.7}, 0.35, 0.8)
	case book.Water:
		m.path(points, stroke{pale, 0.7})
	case book.Track:
		m.path(points, stroke{pale, 0.3}, 1.8, 1)
	case book.Wall:
		m.path(points, stroke{grey, 0.6})
	case book.VehicleSpot:
		c := points[0]
		m.circle(c, 0.7, black, stroke{})
	case book.Dwelling:
		m.polygon(points, band, stroke{grey, 0.25})
	case book.ColdHollow:
		m.polygon(points, none, stroke{pale, 0.15})
	default:
		m.path(points, stroke{pale, 0.2}, 2.4, 1.2)
	}
}

// stands draws the stands, bold where the walk leads: those of several places
// with their letter, rows of single boxes with theirs beside the first.
func (m smallMap) stands() {
	const side, single = 3.4, 1.5
	rows := map[string][]scene.Point{}
	var letters []string
	for s := range m.day.View.Stands(m.yard.Yard) {
		c, frame := m.at(s.At), stroke{black, 0.22}
		if slices.Contains(m.walk, state.OnGround(s.At)) {
			frame.width = 0.5
		}
		if s.Places > 1 {
			m.rect(scene.Around(c, side), 0, white, frame)
			m.centre(c.X, c.Y+1.05, m.shorten(s.Letter, bold(7.8), 7), bold(7.8))
			continue
		}
		m.rect(scene.Around(c, single), 0, white, frame)
		letter := strings.TrimRight(s.Letter, "0123456789")
		if rows[letter] == nil {
			letters = append(letters, letter)
		}
		rows[letter] = append(rows[letter], c)
	}
	for _, l := range letters {
		m.rowLetter(l, rows[l])
	}
	for c := range m.day.View.Colonies() {
		if c.Yard == m.yard.Yard {
			m.colony(m.at(c.At), 2.2)
		}
	}
}

// rowLetter writes the letter of a row of single boxes above its first one, or
// beside it where the row runs up or down.
func (m smallMap) rowLetter(letter string, row []scene.Point) {
	c, w := row[0], m.width(letter, bold(7.8))
	if d := row[len(row)-1].Sub(c); math.Abs(d.Y) > math.Abs(d.X) {
		m.clear(c.X-1.5-w, c.Y+1, letter, bold(7.8))
		return
	}
	m.clear(c.X-w/2, c.Y-1.5, letter, bold(7.8))
}

// way draws the walk with an arrow on every longer piece.
func (m smallMap) way() {
	var points []scene.Point
	if spot, ok := m.vehicle(); ok {
		points = append(points, spot)
	}
	for _, p := range m.walk {
		points = append(points, m.camera.Screen(p))
	}
	m.path(points, stroke{black, 0.3})
	for i := 1; i < len(points); i++ {
		m.arrow(points[i-1], points[i])
	}
}
