package view

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layoutMap is one of the two maps of a layout being drawn.
type layoutMap struct {
	*ground
	side   *state.LayoutSide
	front  map[book.NucID]front
	most   float64 // the largest a lid gets
	chosen state.Selection
	tried  bool // it is the try-out
}

// layoutMap draws a layout of the yard in a frame.
func (d *layingDraw) layoutMap(frame scene.Area, side *state.LayoutSide, tried bool) {
	alone := *d.sheet
	alone.s.Layer, alone.s.Filter, alone.s.Selection, alone.away = state.ByCondition, "", state.Selection{}, false
	g := &ground{
		sheet: &alone, frame: frame, camera: d.s.LayingCamera(frame), yard: d.reading.View.Yard(d.s.Laying.Yard),
		r: d.reading, stand: side.Standing, dark: d.is.Shades,
	}
	m := &layoutMap{ground: g, side: side, front: frontsOf(side.Layout), most: g.mostLid(), tried: tried, chosen: d.s.Selection}
	g.wear = m.worn
	tag := scene.Tag{Ref: state.TodayGround}
	if tried {
		tag.Ref = state.TryGround
	}
	alone.marks = nil
	m.draw()
	d.add(scene.Pane{Clip: frame, Marks: alone.marks, Tag: tag})
	edge := stroke(scene.Ink2, 1)
	if tried {
		edge = stroke(scene.Pen, 1)
	}
	d.add(scene.Rect{Area: frame, Stroke: edge})
}

// front is a nuc of a layout and its stand.
type front struct {
	stand *yard.Stand
	nuc   *yard.Nuc
}

func frontsOf(l yard.Layout) map[book.NucID]front {
	fronts := make(map[book.NucID]front, l.Nucs())
	for i := range l.Stands {
		st := &l.Stands[i]
		for k := range st.Nucs {
			fronts[st.Nucs[k].ID] = front{st, &st.Nucs[k]}
		}
	}
	return fronts
}

// draw draws the ground, what stands on it, where it stands today, the ways bees
// drift, and what is picked.
func (m *layoutMap) draw() {
	m.drawGround()
	if m.tried {
		m.features()
	}
	m.settleSizes()
	if m.tried {
		m.picks()
		m.wasThere()
	}
	m.colonies()
	spots := m.stands()
	m.bare(spots)
	m.arrows()
	m.standNames(spots)
	m.scale()
	if m.tried {
		m.drawing()
		m.ruler()
	}
}

// settleSizes makes lids in both maps as large as those of the yard as it stands: where
// stands come close in a try-out they overlap, and no lid shrinks while one is dragged.
func (m *layoutMap) settleSizes() {
	now := m.s.LayoutSheet().Now.Standing
	least := m.leastLid(now, m.most)
	if least < mapLidFull {
		m.most, m.hollow = min(m.most, mapLidFull-0.5), true
	}
	if !m.tried {
		return
	}
	sizes := make(map[book.StandID]float64, len(now))
	for i := range now {
		sizes[now[i].Stand.Stand] = m.lidOn(&now[i], m.most)
	}
	least = min(least, m.most)
	m.sized = func(s *state.Standing) (float64, bool) {
		if lid, ok := sizes[s.Stand.Stand]; ok {
			return lid, true
		}
		return least, len(sizes) > 0
	}
}

// worn makes a lid what the layout shows of its nuc: its front mark, and no work.
func (m *layoutMap) worn(n *state.Nuc, on *spot, l *scene.Lid) {
	f := m.front[n.Nuc.Nuc]
	l.Front = scene.Front{Shape: shapes[f.nuc.Mark.Shape], Role: colours[f.nuc.Mark.Colour]}
	l.NeedsYou, l.Paint, l.Timed, l.NoRim, l.Selected, l.Hover = false, scene.NoPaint, false, true, false, false
	l.Tag = scene.Tag{Ref: on.Ref, Reason: state.FrontSays(f.stand, f.nuc)}
	if m.tried {
		l.Ref = state.TriedNuc(f.stand.ID, f.nuc.ID)
		l.Selected = f.nuc.ID == m.s.Laying.Nuc
	}
}

// bare draws stands on which no nuc stands yet.
func (m *layoutMap) bare(spots []spot) {
	for i := range spots {
		s := &spots[i]
		if s.Places > 1 || len(s.Nucs) > 0 {
			continue
		}
		box := scene.Around(s.at, min(max(s.lid, mapLidLeast), mapLid))
		m.add(scene.Rect{Area: box, Radius: 3, Fill: scene.Panel, Stroke: scene.Stroke{Role: scene.Ink2, Width: 1.2, Dash: [2]float64{3, 2}}, Tag: scene.Tag{Ref: s.Ref, Reason: s.Says}})
		m.take(box)
	}
}

// picks draws the frames of the stands that are picked, under them.
func (m *layoutMap) picks() {
	picked := map[book.StandID]bool{}
	for _, id := range m.s.Laying.Pick {
		picked[id] = true
	}
	for i := range m.stand {
		if picked[m.stand[i].Stand.Stand] {
			s := m.spotOf(&m.stand[i], m.most)
			m.pick(&s)
		}
	}
}

func (m *layoutMap) pick(s *spot) {
	const air = 4.0
	w, h := s.lid/2+air, s.lid/2+air
	if s.Places > 1 {
		w, h = s.half()
		w, h = w+air-1, h+air-1
	}
	corners := []scene.Point{at(-w, -h), at(w, -h), at(w, h), at(-w, h)}
	for i := range corners {
		corners[i] = s.at.Add(turned(corners[i], s.Turn))
	}
	m.add(scene.Poly{Points: corners, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 2.5)})
}

// wasThere draws a dot where each stand that is moved stands today, and a dotted line
// from there.
func (m *layoutMap) wasThere() {
	was := map[book.StandID]scene.Point{}
	now := m.s.LayoutSheet().Now.Standing
	for i := range now {
		was[now[i].Stand.Stand] = now[i].On
	}
	for i := range m.stand {
		from, stood := was[m.stand[i].Stand.Stand]
		if !stood || from == m.stand[i].On {
			continue
		}
		a, b := m.camera.Screen(from), m.camera.Screen(m.stand[i].On)
		m.add(scene.Line{From: a, To: b, Stroke: scene.Stroke{Role: scene.Pen, Width: 1.4, Dash: [2]float64{2, 3}}},
			scene.Circle{At: a, Radius: 3.2, Fill: scene.Pen})
		m.take(scene.Around(a, 7))
	}
}

// doorAt is where an entrance is drawn: at the middle of its lid.
func (m *layoutMap) doorAt(door yard.Door) (c scene.Point, reach float64) {
	if door.Colony {
		return m.camera.Screen(state.OnGround(door.At)), 12
	}
	s := m.spotOf(&m.stand[door.Stand], m.most)
	place := m.side.Layout.Stands[door.Stand].Nucs[door.Nuc].Place
	return s.at.Add(turned(offset(place, &s), s.Turn)), s.lid * 0.4
}

// scale draws how long some metres are, where north is, and at what hour the shadows
// lie so, in a corner where nothing is.
func (m *layoutMap) scale() {
	metres := scaleMetres(m.camera)
	long, f := m.camera.Length(metres), ink2(12)
	words := fmt.Sprintf("%.0f m", metres)
	if len(m.dark) > 0 {
		words += ", shadows at " + m.s.LayoutSheet().ShadesAt.Format("15:04")
	}
	wide := 28 + long + 6 + m.width(words, f)
	for _, x := range []float64{m.frame.X + 12, m.frame.Right() - 12 - wide} {
		for _, y := range []float64{m.frame.Bottom() - 14, m.frame.Y + 22} {
			if m.free(scene.Area{X: x - 6, Y: y - 14, W: wide + 10, H: 24}) {
				m.scaleAt(x, y, long, words, f)
				return
			}
		}
	}
}

func (m *layoutMap) scaleAt(x, y, long float64, words string, f font) {
	m.north(at(x+4, y-3))
	x += 28
	m.rule(x, y, x+long, y, scene.Ink2)
	m.rule(x, y-4, x, y+1, scene.Ink2)
	m.rule(x+long, y-4, x+long, y+1, scene.Ink2)
	m.text(x+long+6, y+3, words, f)
}

// arrows draws the ways that bees take to a wrong door, the wider the more do.
func (m *layoutMap) arrows() {
	for _, a := range m.side.Arrows {
		from, near := m.doorAt(a.From)
		to, far := m.doorAt(a.To)
		if m.shown(a) {
			m.arrow(from, to, near, far, a.Share, between(a))
		}
	}
}

// between tells whether bees go from one stand to another.
func between(a yard.Arrow) bool { return a.To.Colony || a.From.Stand != a.To.Stand }

// insideLid is the least lid of a stand on which every way shows, dp: on smaller ones
// those across its middle would hide the lids.
const insideLid = 34.0

// shown tells whether a way is drawn: from stand to stand, or to the next place of one.
func (m *layoutMap) shown(a yard.Arrow) bool {
	if between(a) {
		return true
	}
	s := m.spotOf(&m.stand[a.From.Stand], m.most)
	nucs := m.side.Layout.Stands[a.From.Stand].Nucs
	from, to := offset(nucs[a.From.Nuc].Place, &s), offset(nucs[a.To.Nuc].Place, &s)
	beside := math.Hypot(from.X-to.X, from.Y-to.Y) < 1.3*(s.lid+s.gap())
	return beside && s.lid >= mapLidRead || s.lid >= insideLid
}

// arrow draws one of them, bent to its left so that it is told from a line of the
// ground.
func (m *layoutMap) arrow(from, to scene.Point, near, far, share float64, bent bool) {
	way := to.Sub(from)
	long := math.Hypot(way.X, way.Y)
	if long < near+far+2 {
		return
	}
	along := way.Mul(1 / long)
	from, to = from.Add(along.Mul(near)), to.Sub(along.Mul(far))
	bend := at(-along.Y, along.X).Mul(-min(0.18*long, 26))
	if !bent {
		bend = scene.Point{}
	}
	middle := from.Add(to).Mul(0.5).Add(bend)
	const steps = 10
	curve := make([]scene.Point, 0, steps+1)
	for i := range steps + 1 {
		t := float64(i) / steps
		curve = append(curve, from.Mul((1-t)*(1-t)).Add(middle.Mul(2*t*(1-t))).Add(to.Mul(t*t)))
	}
	m.shaft(curve, arrowWidth(share))
}

// shaft draws a line with a tip at its end.
func (p *sheet) shaft(curve []scene.Point, width float64) {
	to := curve[len(curve)-1]
	back := to.Sub(curve[len(curve)-2])
	back = back.Mul(1 / max(0.01, math.Hypot(back.X, back.Y)))
	first := to.Sub(curve[0])
	tip := min(3+2*width, 0.7*math.Hypot(first.X, first.Y))
	neck := tip * 0.7
	for len(curve) > 2 {
		if d := to.Sub(curve[len(curve)-2]); math.Hypot(d.X, d.Y) > neck {
			break
		}
		curve = append(curve[:len(curve)-2], to)
	}
	base := to.Sub(back.Mul(tip))
	side := at(-back.Y, back.X).Mul(tip * 0.5)
	curve[len(curve)-1] = to.Sub(back.Mul(neck))
	p.add(scene.Poly{Points: curve, Open: true, Stroke: stroke(scene.Act, width)},
		scene.Poly{Points: []scene.Point{to, base.Add(side), base.Sub(side)}, Fill: scene.Act})
}

// arrowWidth is how wide the arrow of a share of bees is, dp.
func arrowWidth(share float64) float64 { return min(1+30*share, 4.5) }
