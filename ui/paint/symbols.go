package paint

import "lidmark/ui/scene"

// Widths and dashes of symbols, in units of their grid of 24.
const (
	symbolGrid = 24.0
	symbolLine = 1.6
	symbolOn   = 2.5
	symbolOff  = 2.0
)

// icon paints a symbol.
func (g *brush) icon(m *scene.Icon) {
	k := m.Size / symbolGrid
	corner := g.camera.Screen(m.At).Sub(scene.Point{X: m.Size / 2, Y: m.Size / 2})
	for _, part := range symbols[m.Symbol] {
		g.part(part, corner, k, m.Role)
	}
}

// part paints one part of a symbol whose upper left corner is given, k dp for a
// unit of its grid.
func (g *brush) part(p part, corner scene.Point, k float64, role scene.Role) {
	s := scene.Stroke{Role: role, Width: symbolLine * k, Round: true}
	at := func(i int) scene.Point { return corner.Add(scene.Point{X: p.at[i], Y: p.at[i+1]}.Mul(k)) }
	switch p.kind {
	case polygon, polyline:
		points := make([]scene.Point, 0, len(p.at)/2)
		for i := 0; i < len(p.at); i += 2 {
			points = append(points, g.device(at(i)))
		}
		g.outline(points, p.kind == polygon, s.Width*g.scale, s)
	case ring:
		g.circle(at(0), p.at[2]*k, scene.None, s)
	case dot:
		g.circle(at(0), p.at[2]*k, role, scene.Stroke{})
	default:
		g.box(p, scene.Area{X: at(0).X, Y: at(0).Y, W: p.at[2] * k, H: p.at[3] * k}, k, s)
	}
}

// box paints a part of a symbol that is a rectangle.
func (g *brush) box(p part, a scene.Area, k float64, s scene.Stroke) {
	if p.kind == bar {
		g.path.round(g.deviceArea(a), 0, false)
		g.fill(g.theme.Colour(s.Role))
		return
	}
	if s.Round = false; p.kind == dashes {
		s.Dash = [2]float64{symbolOn * k, symbolOff * k}
	}
	g.edge(a, p.at[4]*k, s)
}

// part is one stroke of a symbol: a shape on the grid of icons.
type part struct {
	kind partKind
	at   []float64 // x, y pairs; of a rect x, y, width, height, radius; of a circle x, y, radius
}

// partKind is what a part of a symbol is.
type partKind uint8

const (
	polygon   partKind = iota // outline through points
	polyline                  // line through points
	rectangle                 // outline of a rounded rectangle
	dashes                    // the same, dashed
	ring                      // outline of a circle
	dot                       // filled circle
	bar                       // filled rectangle
)

// symbols holds the parts of every icon.
var symbols = [scene.SymbolCount][]part{
	scene.CellIcon:        {{polygon, []float64{8, 4, 16, 4, 16, 13, 12, 20, 8, 13}}},
	scene.VirginIcon:      {{rectangle, []float64{9, 4, 6, 16, 3}}},
	scene.LayingQueenIcon: {{rectangle, []float64{9, 3, 6, 14, 3}}, {dot, []float64{12, 21, 1.3}}},
	scene.CageIcon:        {{rectangle, []float64{6, 4, 12, 16, 1}}, {polyline, []float64{10, 4, 10, 20}}, {polyline, []float64{14, 4, 14, 20}}},
	scene.BeesIcon:        {{polyline, []float64{5, 7, 7, 20, 17, 20, 19, 7}}, {dot, []float64{10, 12, 1.2}}, {dot, []float64{14, 12, 1.2}}, {dot, []float64{12, 16, 1.2}}},
	scene.FeedIcon:        {{polygon, []float64{8, 4, 16, 4, 16, 14, 14, 17, 10, 17, 8, 14}}, {polyline, []float64{5, 20, 19, 20}}},
	scene.NucIcon:         {{polyline, []float64{10, 19, 5, 19, 5, 5, 19, 5, 19, 19, 14, 19}}, {polyline, []float64{10, 19, 10, 16, 14, 16, 14, 19}}},
	scene.ColonyIcon:      {{rectangle, []float64{4, 4, 16, 16, 1.5}}, {rectangle, []float64{8, 8, 8, 8, 0.8}}},
	scene.StandIcon:       {{rectangle, []float64{4, 4, 7, 7, 1.5}}, {rectangle, []float64{13, 4, 7, 7, 1.5}}, {rectangle, []float64{4, 13, 7, 7, 1.5}}, {rectangle, []float64{13, 13, 7, 7, 1.5}}},
	scene.UniteIcon:       {{rectangle, []float64{3, 9, 6, 6, 1}}, {rectangle, []float64{15, 9, 6, 6, 1}}, {polyline, []float64{9, 12, 15, 12}}},
	scene.ShakeOutIcon:    {{polygon, []float64{10, 3, 18, 7, 14, 15, 6, 11}}, {dot, []float64{7, 19, 1.2}}, {dot, []float64{12, 20, 1.2}}, {dot, []float64{17, 19, 1.2}}},
	scene.NarrowIcon:      {{polyline, []float64{3, 18, 9, 18}}, {polyline, []float64{15, 18, 21, 18}}, {polyline, []float64{9, 12, 9, 18}}, {polyline, []float64{15, 12, 15, 18}}},
	scene.LookIcon:        {{rectangle, []float64{5, 11, 14, 9, 1}}, {polyline, []float64{4, 7, 19, 3}}},
	scene.GraftIcon:       {{polyline, []float64{16, 3, 10, 10, 10, 13, 12, 14}}, {ring, []float64{12, 18, 3.5}}},
	scene.PaintIcon:       {{polyline, []float64{7, 19, 17, 5}}},
	scene.DeadlineIcon:    {{polyline, []float64{4, 12, 17, 12}}, {bar, []float64{17, 6, 3, 12}}},
	scene.FlyingIcon:      {{ring, []float64{12, 10, 4}}, {polyline, []float64{4, 20, 20, 20}}, {polyline, []float64{12, 2, 12, 4}}, {polyline, []float64{4, 10, 6, 10}}, {polyline, []float64{18, 10, 20, 10}}},
	scene.WindIcon:        {{polyline, []float64{4, 16, 18, 8}}, {polygon, []float64{20, 7, 14, 7.5, 16.5, 11.5}}},
	scene.ShadeIcon:       {{ring, []float64{9, 9, 5}}, {polyline, []float64{12, 20, 18, 18, 20, 13}}},
	scene.MeasureIcon:     {{polyline, []float64{4, 12, 20, 12}}, {polyline, []float64{4, 8, 4, 16}}, {polyline, []float64{20, 8, 20, 16}}},
	scene.TurnIcon:        {{polygon, []float64{12, 8, 18, 14, 12, 20, 6, 14}}, {polyline, []float64{5, 6, 9, 3.6, 14, 3.4, 19, 6}}},
	scene.LineUpIcon:      {{polyline, []float64{3, 19, 21, 19}}, {rectangle, []float64{4, 12, 4, 4, 0.5}}, {rectangle, []float64{10, 12, 4, 4, 0.5}}, {rectangle, []float64{16, 12, 4, 4, 0.5}}},
	scene.TryOutIcon:      {{rectangle, []float64{4, 4, 11, 11, 1}}, {dashes, []float64{9, 9, 11, 11, 1}}},
	scene.PrintIcon:       {{rectangle, []float64{6, 3, 12, 18, 1}}, {polyline, []float64{9, 8, 15, 8}}, {polyline, []float64{9, 12, 15, 12}}, {polyline, []float64{9, 16, 13, 16}}},
	scene.NoteIcon:        {{polyline, []float64{4, 20, 20, 20}}, {polyline, []float64{6, 16, 16, 5, 19, 8, 9, 18, 5, 18}}},
	scene.RobbersIcon:     {{polyline, []float64{5, 6, 11, 12, 5, 18}}, {polyline, []float64{11, 6, 17, 12, 11, 18}}, {polyline, []float64{20, 5, 20, 19}}},
	scene.WeakIcon:        {{polygon, []float64{4, 7, 20, 7, 12, 19}}},
	scene.DriftIcon:       {{rectangle, []float64{3, 14, 6, 6, 1}}, {rectangle, []float64{15, 14, 6, 6, 1}}, {polyline, []float64{6, 11, 9, 6, 15, 6, 18, 11}}},
}
