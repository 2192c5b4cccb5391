package view

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// ground is a map being drawn. Everything is placed on the screen: places of
// the yard go through the camera, lids and names keep their size.
type ground struct {
	*sheet
	frame   scene.Area
	camera  scene.Camera
	yard    *book.Yard
	r       *state.Reading
	stand   []state.Standing                           // what stands there
	wear    func(n *state.Nuc, on *spot, l *scene.Lid) // what a lid has otherwise; nil: nothing
	sized   func(*state.Standing) float64              // how large its lids are, once that is settled
	steady  *steadyLetters                             // where letters are to lie, and lay; nil: where most have room
	dark    []yard.Shadow                              // nil: as on a usual morning
	figures bool                                       // lids are large enough for figures
	hollow  bool                                       // lids are too small for the hatch of what nobody saw
	bare    bool                                       // all are too small for the keeper's strokes
	taken   claims                                     // where lids, names and colonies lie: no name goes there
	drawn   claims                                     // where the ground is drawn: the name of a stand goes there in need
}

// mapPane draws a yard's ground with all that stands on it, its scale and the
// line of reason.
func (p *sheet) mapPane(a scene.Area) {
	p.clipped(a, scene.Tag{}, func() {
		p.rect(a, scene.Ground)
		if !p.l.MapTurns() {
			p.mapHead(a)
		}
		r := p.s.Reading()
		y := p.s.MapYard()
		g := ground{sheet: p, frame: p.l.MapFrame(), camera: p.s.MapCamera(), yard: r.View.Yard(y), r: r, stand: r.Standing(y)}
		ref := scene.Ref{Kind: state.PaneRef, ID: state.MapGround}
		p.clipped(g.frame, scene.Tag{Ref: ref}, g.draw)
		p.hollow = g.hollow && p.l.Main.Empty()
		if p.l.MapTurns() {
			g.mapRow(p.l.MapRow())
			return
		}
		p.add(scene.Rect{Area: g.frame, Stroke: stroke(scene.Ink2, 1)})
		g.margin(a)
		p.reasonLine(a)
	})
}

// mapHead draws the map's title, its layers, and where it fills the room the
// field of the filter and the way to the other forms.
func (p *sheet) mapHead(a scene.Area) {
	y := a.Y + 22
	x := p.text(a.X+state.Edge, y, "Map", ink(14).semi()) + 10
	to := p.layersEnd(a)
	if p.mapForms() {
		p.allForms(scene.Area{X: a.X, Y: a.Y - 3, W: a.W, H: a.H})
		p.rule(to+16, a.Y+10, to+16, a.Y+28, scene.Rule)
	}
	to = p.layers(to, y, x+20)
	if p.filtering() && p.l.Main.Empty() {
		if field := (scene.Area{X: x, Y: a.Y + 3, W: min(300, to-10-x), H: leastTarget}); field.W >= 80 {
			p.filterField(field, "any word, stand, batch or letter")
		}
		return
	}
	if word := "lay it out"; to-x > 2*p.width(word, ink(13)) {
		to = p.layItOut(to, y, word)
	}
	if p.s.Filled().IsZero() {
		p.fit(x, y, p.s.Reading().View.Yard(p.s.MapYard()).Name, ink2(13), to-10)
	}
}

// mapForms tells whether the map's head leads to the other forms of Yard: where
// it fills the room.
func (p *sheet) mapForms() bool { return p.s.Pane == state.Map && p.l.Turns.Empty() }

// layersEnd is where the layers in the head of the map end.
func (p *sheet) layersEnd(a scene.Area) float64 {
	if p.mapForms() {
		return a.Right() - 222
	}
	return a.Right() - 14
}

// draw draws the ground, then what stands on it, then names.
func (g *ground) draw() {
	g.drawGround()
	g.colonies()
	stands := g.stands()
	if g.l.MapTurns() {
		g.northAndScale()
	}
	g.standNames(stands)
	g.featureNames()
}

// drawGround draws what lies and stands around the boxes.
func (g *ground) drawGround() {
	g.taken.frame, g.drawn.frame = g.frame, g.frame
	g.rect(g.frame, scene.Map)
	if photo := g.yard.Picture; len(photo.JPEG) > 0 {
		g.add(state.PhotoOf(photo, g.camera))
	}
	g.crosses()
	shade := g.shadow
	if g.dark != nil {
		shade = func(book.FeatureDrawn) {}
		g.shadows()
	}
	for _, draw := range []func(book.FeatureDrawn){shade, g.feature} {
		for _, f := range g.yard.Features {
			draw(f)
		}
	}
}

// crosses marks the ground every ten metres, or more where those would lie too
// close together.
func (g *ground) crosses() {
	every := 10.0
	for _, e := range []float64{50, 100, 500, 1000} {
		if g.camera.Length(every) < crossesLeast {
			every = e
		}
	}
	world := g.camera.WorldArea(g.frame)
	for x := math.Ceil(world.X/every) * every; x < world.Right(); x += every {
		for y := math.Ceil(world.Y/every) * every; y < world.Bottom(); y += every {
			c := g.camera.Screen(at(x, y))
			g.rule(c.X-4, c.Y, c.X+5, c.Y, scene.Rule)
			g.rule(c.X, c.Y-4, c.X, c.Y+5, scene.Rule)
		}
	}
}

// crossesLeast is how far apart the crosses lie at least, dp.
const crossesLeast = 40.0

// margin draws north, the scale and how large lids are, below the ground.
func (g *ground) margin(a scene.Area) {
	y := a.Bottom() - 50
	g.north(at(a.X+22, y+1))
	metres := scaleMetres(g.camera)
	x, long := a.X+52, g.camera.Length(metres)
	g.scaleBar(at(x, y+3), long)
	g.centre(x, y-2, "0", ink2(12))
	g.centre(x+long, y-2, fmt.Sprintf("%.0f m", metres), ink2(12))
	end := x + long + 26
	if wind, ok := g.wind(); ok {
		g.add(scene.Icon{At: at(end+8, y+5), Size: 20, Symbol: scene.WindIcon, Role: scene.Ink2})
		end = g.text(end+24, y+9, "wind "+figure(wind)+" m/s", ink2(12)) + 20
	}
	if beside := g.l.MapLegend(); !beside.Empty() {
		g.legendBeside(beside)
		g.legendWords(end, y+9, g.frame.Right(), g.largerWords()...)
		return
	}
	g.layerLegend(end, y+9, a.Right()-14)
}

// scaleBar draws from o on how long some metres are.
func (g *ground) scaleBar(o scene.Point, long float64) {
	for i := range 4 {
		fill := scene.Panel
		if i%2 == 0 {
			fill = scene.Ink
		}
		g.add(scene.Rect{Area: scene.Area{X: o.X + float64(i)*long/4, Y: o.Y, W: long / 4, H: 5}, Fill: fill, Stroke: stroke(scene.Ink, 1)})
	}
}

// largerWords say that lids are drawn larger than they are.
func (g *ground) largerWords() []string {
	if len(g.stand) == 0 {
		return nil
	}
	return []string{"lids larger than true"}
}

// scaleMetres is a round length that shows 60 to 150 dp long.
func scaleMetres(c scene.Camera) float64 {
	for _, m := range []float64{1, 2, 5, 10, 20, 50, 100, 200} {
		if c.Length(m) >= 60 {
			return m
		}
	}
	return 500
}

// wind is the wind of the day looked at, if anybody told it.
func (g *ground) wind() (float64, bool) {
	return g.yard.Weather[g.r.Day].Wind.Get()
}

func (p *sheet) north(c scene.Point) {
	const h = 22.0
	tip, notch := at(c.X, c.Y-h/2), at(c.X, c.Y+h/2-6)
	p.add(scene.Poly{Points: []scene.Point{tip, at(c.X+6, c.Y+h/2), notch}, Fill: scene.Ink},
		scene.Poly{Points: []scene.Point{tip, at(c.X-6, c.Y+h/2), notch}, Stroke: stroke(scene.Ink, 1)})
	p.text(c.X+9, c.Y+4, "N", ink(12).semi())
}

// reasonLine says what the pointer is over, below the map.
func (p *sheet) reasonLine(a scene.Area) {
	y := a.Bottom() - 32
	p.rule(a.X, y, a.Right(), y, scene.Hair)
	x := a.X + state.Edge
	if p.s.Hover.Reason == "" || p.s.Hover.Ref.Kind == state.CommandRef {
		if p.hintLine(x, y+21, a.Right()-14) {
			return
		}
		p.fit(x, y+21, "Point at a nuc, and here is what there is to know of it", ink3(13), a.Right()-14)
		return
	}
	p.reason(x, y+21, a.Right()-14)
}

// reason says what the pointer is over, from x on no further than to.
func (p *sheet) reason(x, y, to float64) {
	name, rest := cutName(p.s.Hover.Reason)
	if name != "" {
		x = p.text(x, y, name, ink(14).bold()) + 8
	}
	p.fit(x, y, rest, ink(14), to)
}
