package view

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// groundTools are the tools of the ground, with their words.
var groundTools = []layingTool{
	{"Boundary", "draw boundary"},
	{"Hedge", "draw hedge"},
	{"Wall", "draw wall"},
	{"Tree", "draw tree"},
	{"Water", "draw water"},
	{"Track", "draw track"},
	{"Vehicle", "draw vehicle spot"},
	{"Dwelling", "draw dwelling"},
	{"Cold hollow", "draw cold hollow"},
	{"Photograph …", "lay photograph"},
	{"From a file …", "take in ground"},
	{"To a file …", "take out ground"},
	{"Measure", "measure"},
	{"Stands", "ground tools"},
}

// features makes what is drawn on the ground something that can be chosen, while the
// tools of the ground are out; what is chosen has a line in the pen's colour.
func (m *layoutMap) features() {
	if !m.s.Laying.Ground || m.s.Drawing.What != 0 {
		return
	}
	for _, f := range m.yard.Features {
		points := m.points(f)
		if len(points) == 0 {
			continue
		}
		chosen := scene.Stroke{}
		if m.chosen.Has(f.Feature.Subject()) {
			chosen = stroke(scene.Pen, 3)
		}
		tag := scene.Tag{Ref: state.RefOf(f.Feature.Subject()), Reason: f.What.String() + "  " + f.Label}
		if len(points) == 1 {
			size := max(leastTarget, m.camera.Length(max(f.Width, 1)))
			if f.What == book.VehicleSpot {
				size = max(leastTarget, m.camera.Length(2.2))
			}
			m.add(scene.Circle{At: points[0], Radius: size / 2, Stroke: chosen, Tag: tag})
			continue
		}
		m.add(scene.Poly{Points: points, Open: true, Stroke: chosen, Tag: tag})
		for _, c := range along(points, leastTarget/2) {
			m.add(scene.Rect{Area: scene.Around(c, leastTarget/2), Tag: tag})
		}
		if chosen.Width > 0 {
			m.numbered(points)
		}
	}
}

// numbered writes the numbers of the points of what is chosen; an outline ends where it
// begins.
func (m *layoutMap) numbered(points []scene.Point) {
	for i, p := range points {
		m.add(scene.Circle{At: p, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Pen, 2)})
		if i == 0 || p != points[0] {
			m.text(p.X+7, p.Y-5, fmt.Sprint(i+1), ink(12).semi().as(scene.Pen))
		}
	}
}

// groundParts writes what is asked of the ground, and what can be done there.
func (d *layingDraw) groundParts(x, y, w float64) float64 {
	if g := d.s.GroundBrought(); g != nil {
		return d.broughtParts(g, x, y, w)
	}
	title := "The ground"
	if what := d.s.DrawWord(); what != "" {
		title = "Drawing: " + what
	}
	d.fit(x, y+16, title, ink(16).semi().as(scene.Pen), x+w)
	y = d.wrap(x, y+40, d.s.GroundSays(), ink2(13.5), w, 6) + 4
	for _, ask := range d.s.GroundAsks() {
		y = d.groundAsk(ask, x, y, w)
	}
	for _, b := range d.groundButtons() {
		if c, _ := state.CommandNamed(b[1]); c.Reason(d.s) == "" || b[1] == "finish drawing" && d.s.DrawWord() != "" {
			x = d.button(x, y, b[0], b[1], false) + 8
		}
	}
	return y + 52
}

func (d *layingDraw) groundButtons() [][2]string {
	wipe := "Wipe it off"
	if what := d.s.GroundChosen(); what != "" {
		wipe = "Wipe off " + what
	}
	return [][2]string{{"Done", "finish drawing"}, {"Point back", "point back"}, {wipe, "wipe feature"}, {"Take the photograph off", "take photograph off"}}
}

// groundAsk draws a field of the ground with its word before it, and what takes it.
func (d *layingDraw) groundAsk(ask state.GroundAsk, x, y, w float64) float64 {
	const word, field, high = 132.0, 74.0, 38.0
	d.fit(x, y+20, ask.Word, ink(14), x+word-6)
	wide := field
	switch ask.Field {
	case state.DrawPoint, state.FeatureMove, state.FeaturePoint: // several figures
		wide += 28
	}
	if ask.Unit == "" && !ask.Short {
		wide = w - word
	}
	d.input(scene.Area{X: x + word, Y: y, W: wide, H: 30}, ask.Field, fieldLook{size: 14, empty: ask.Now, reason: ask.Says, wrong: ask.Wrong != ""})
	end := d.text(x+word+wide+6, y+20, ask.Unit, ink2(13))
	if ask.Command != "" {
		left := end + 10
		if x+w-left < d.width(ask.Does, ink(13.5).medium())+18 { // below, rather than cut
			left, y = x+word, y+high
		}
		d.choice(scene.Area{X: left, Y: y, W: max(0, x+w-left), H: 30}, ask.Does, ask.Command)
	}
	if ask.Wrong != "" {
		return d.wrap(x, y+high+12, sentence(ask.Wrong), ink(13).as(scene.Act), w, 2) + 4
	}
	return y + high
}
