package view

import (
	"slices"

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
	tried  bool       // it is the try-out
	marked []wornMark // on the lids that are drawn
}

// layoutMap draws a layout of the yard in a frame.
func (d *layingDraw) layoutMap(frame scene.Area, side *state.LayoutSide, tried bool) {
	alone := *d.sheet
	alone.s.Layer, alone.s.Filter, alone.s.Selection, alone.away = state.ByCondition, "", state.Selection{}, false
	alone.reading = d.s.Present() // a layout is judged as of today
	g := &ground{
		sheet: &alone, frame: frame, camera: d.s.LayingCamera(frame), yard: d.reading.View.Yard(d.s.Laying.Yard),
		r: alone.reading, stand: side.Standing, dark: d.is.Shades,
	}
	m := &layoutMap{ground: g, side: side, front: frontsOf(side.Layout), most: g.mostLid(), tried: tried, chosen: d.s.Selection}
	g.wear, g.steady = m.worn, &d.steady
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
	d.layingScale(frame)
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
// drift, the marks on fronts, and what is picked.
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
	m.frontMarks()
	m.standNames(spots)
	if m.tried {
		m.pointedAt()
		m.drawing()
		m.ruler()
	}
}

// stands draws the stands in sight and gives them, those that are picked last: they lie
// over what they are set down on.
func (m *layoutMap) stands() []spot {
	spots := m.inSight(m.most)
	if !m.tried {
		m.put(spots)
		return spots
	}
	picked := func(s spot) bool { return slices.Contains(m.s.Laying.Pick, s.Stand.Stand) }
	slices.SortStableFunc(spots, func(a, b spot) int { return -book.TrueFirst(picked(a), picked(b)) })
	first := slices.IndexFunc(spots, picked)
	if first < 0 {
		first = len(spots)
	}
	m.put(spots[:first])
	m.put(spots[first:])
	return spots
}

// worn makes a lid what the layout shows of its nuc: its front mark, and no work.
func (m *layoutMap) worn(n *state.Nuc, on *spot, l *scene.Lid) {
	f := m.front[n.Nuc.Nuc]
	m.marked = append(m.marked, wornMark{l.At, l.Size, scene.Front{Shape: shapes[f.nuc.Mark.Shape], Role: colours[f.nuc.Mark.Colour]}})
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
	m.add(scene.Poly{Points: s.frame(), Fill: scene.PenTint, Stroke: stroke(scene.Pen, 2.5)})
}

// frame is a line around a stand.
func (s *spot) frame() []scene.Point {
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
	return corners
}

// pointedAt draws a thin ring around the stand that the pointer is over.
func (m *layoutMap) pointedAt() {
	over := m.s.Hover.Ref
	for i := range m.stand {
		if ref := m.stand[i].Ref; over.Kind == ref.Kind && over.ID == ref.ID {
			s := m.spotOf(&m.stand[i], m.most)
			m.add(scene.Poly{Points: s.frame(), Stroke: stroke(scene.Ink2, 1.5)})
		}
	}
}

// wasThere draws a dot where each stand that is moved stands today, and a dotted line
// from there.
func (m *layoutMap) wasThere() {
	was := map[book.StandID]scene.Point{}
	sheet := m.s.LayoutSheet()
	if sheet.Now.Layout.Idle() {
		return // nothing stands there yet
	}
	now := sheet.Now.Standing
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
