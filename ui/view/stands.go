package view

import (
	"math"
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// spot is a stand on the map: where it is and how large its lids are.
type spot struct {
	*state.Standing
	at  scene.Point
	lid float64

	first, last int // the places of a row that are drawn
}

// Sizes of lids on the map, dp.
const (
	mapLid      = 29.0
	mapLidMost  = 64.0
	mapLidLeast = 12.0 // below it a nuc is a flat cell,
	mapLidClose = 9.5  // but its stand may come close to the next for a lid
	// A flat cell smaller than this has no edge, nor has the plate it stands on.
	mapCellEdged = 6.0
	mapCell      = 4.0 // the least of them
	// Lids of this size are read well: single boxes that nearly have it lap
	// over their neighbours a little.
	mapLidRead = 16.0
	mapLap     = 1.2
	// A lid of full size and more is hatched; one that nearly has it may touch
	// its neighbours.
	mapLidFull   = 20.0
	mapLidNearly = 18.0
)

// stands draws the stands in sight with their lids and gives them.
func (g *ground) stands() []spot {
	most := g.mostLid()
	g.sizeAlike(most)
	if g.leastLid(g.stand, most) < mapLidFull {
		most, g.hollow = min(most, mapLidFull-0.5), true
		g.sizeAlike(most)
	}
	spots := g.inSight(most)
	g.bare = !slices.ContainsFunc(g.stand, func(s state.Standing) bool { return g.sized(&s) >= scene.LidStroked })
	g.put(spots)
	return spots
}

// letterRoom is how much of its room a small lid of a stand of four has, so that the letter
// of the stand has some beside it.
const letterRoom = 0.9

// sizeAlike makes all lids of a kind alike, of a size at most; where stands come closer
// than that their lids are smaller.
func (g *ground) sizeAlike(most float64) {
	room := func(s *state.Standing) float64 {
		return lidSize(s, g.camera.Length(s.Apart), g.camera.Length(state.PlaceApart), most)
	}
	var sizes [kindsOfStand]float64
	for k := range sizes {
		if sizes[k] = alikeLids(g.stand, k, room); k == kindOfFour && sizes[k] < mapLidFull {
			sizes[k] = min(sizes[k], max(mapLidLeast, sizes[k]*letterRoom))
		}
	}
	g.sized = func(s *state.Standing) float64 { return min(sizes[kindOf(s)], room(s)) }
}

// inSight are the stands in sight, with lids of a size at most.
func (g *ground) inSight(most float64) []spot {
	spots := make([]spot, 0, len(g.stand))
	for i := range g.stand {
		s := g.spotOf(&g.stand[i], most)
		if scene.Around(s.at, 2*s.reach()+mapLidMost).Overlaps(g.frame) {
			spots = append(spots, s)
		}
	}
	return spots
}

// put draws stands: their plates, then the lids.
func (g *ground) put(spots []spot) {
	nucs := 0
	for i := range spots {
		nucs += len(spots[i].Nucs)
	}
	g.marks = slices.Grow(g.marks, len(spots)+nucs+64)
	for i := range spots {
		g.plate(&spots[i])
	}
	g.nucs(spots, nucs)
}

func (g *ground) spotOf(s *state.Standing, most float64) spot {
	first, last := s.InUse()
	return spot{s, g.camera.Screen(s.On), g.lidOn(s, most), first, last}
}

// leastLid is how large the smallest lid of a yard is: where it has no room for a
// hatch all are hollow, so that "not seen yet" has one look in a picture.
func (g *ground) leastLid(all []state.Standing, most float64) float64 {
	least := most
	for i := range all {
		least = min(least, g.lidOn(&all[i], most))
	}
	return least
}

func (g *ground) lidOn(s *state.Standing, most float64) float64 { return min(g.sized(s), most) }

// nucs draws the nucs of the stands, n of them: first the frames of those chosen,
// so that they cover no neighbour, then the lids.
func (g *ground) nucs(spots []spot, n int) {
	filter := state.FilterBy(g.s.Filter)
	lids, nucs := make([]scene.Lid, 0, n), make([]*state.Nuc, 0, n)
	for i := range spots {
		s := &spots[i]
		if s.lid < mapLidLeast {
			g.cells(s, filter)
			continue
		}
		for _, n := range s.Nucs {
			l := g.mapLid(n, s)
			if !scene.Around(l.At, l.Size+mapLid).Overlaps(g.frame) {
				continue
			}
			l.Faded = !filter.Shows(n)
			place := scene.Around(l.At, l.Size)
			if frame, ok := frameOf(l); ok {
				g.add(frame)
				place = frame.Area
			}
			lids, nucs = append(lids, l), append(nucs, n)
			g.take(place)
		}
	}
	for i := range lids {
		lids[i].Selected, lids[i].Hover = false, false
		g.add(lids[i])
		g.layerFigure(nucs[i], &lids[i])
	}
}

// cells draws the nucs of a stand that are too small for letter and signs, those
// chosen in a frame.
func (g *ground) cells(s *spot, filter state.Filter) {
	for _, n := range s.Nucs {
		c := s.at.Add(turned(offset(n.Place, s), s.Turn))
		tag := n.Tag()
		l := scene.Lid{At: c, Size: s.lid, Hover: g.hovered(n, tag.Ref), Selected: g.s.Selection.Has(n.Nuc.Nuc.Subject()) || g.batchChosen(n)}
		if g.wear != nil {
			g.wear(n, s, &l)
			tag = l.Tag
		}
		if frame, ok := frameOf(l); ok {
			g.add(frame)
		}
		g.add(g.cell(n, scene.Around(c, s.lid), tag, !filter.Shows(n)))
		if s.lid >= mapCellEdged && s.Places <= 1 {
			g.take(scene.Around(c, s.lid))
		}
	}
}

// frameOf is the frame of a lid that is selected or under the pointer.
func frameOf(l scene.Lid) (scene.Rect, bool) {
	r := scene.Rect{Area: scene.Around(l.At, l.Size+6), Radius: l.Size*0.2 + 3}
	switch {
	case l.Selected:
		r.Fill, r.Stroke = scene.PenTint, stroke(scene.Pen, 2.5)
	case l.Hover:
		r.Stroke = stroke(scene.Ink2, 1.5)
	default:
		return r, false
	}
	return r, true
}

// cell is a lid too small for letter and signs: a flat square, hollow where
// nobody saw what it holds.
func (g *ground) cell(n *state.Nuc, a scene.Area, tag scene.Tag, faded bool) scene.Rect {
	holds := scene.Condition(n.Presumed.Condition)
	r := scene.Rect{Area: a, Fill: scene.Paper, Stroke: stroke(holds.Line(), 1), Tag: tag}
	switch {
	case faded:
		r.Stroke = stroke(scene.Rule, 1)
	case g.s.Layer == state.ByStrength:
		r.Fill, r.Stroke = strengthLook(n).fill, stroke(scene.Ink2, 1)
	case g.s.Layer == state.BySureness && n.Sureness().Known:
		r.Fill = [...]scene.Role{state.Sure: scene.Paper, state.Likely: scene.BarLight, state.Doubtful: scene.Bar}[n.Sureness().Doubt()]
	case g.s.Layer == state.ByRobbing && holds != scene.Empty:
		r.Fill, r.Stroke = g.robbingLook(n), stroke(scene.Ink2, 1)
	case g.s.Layer == state.ByDue:
		r.Stroke = stroke(scene.Rule, 1)
		if n.PastDue() > 0 {
			r.Fill, _ = g.alarm()
		}
	case n.Presumed.Seen && !g.r.Ahead && holds.Fill() != scene.None:
		r.Fill = holds.Fill()
	}
	if a.W < mapCellEdged && r.Fill != scene.Paper && r.Fill != scene.None && r.Fill != scene.NoQueen.Fill() {
		r.Stroke = scene.Stroke{} // it would leave nothing of the fill
	}
	return r
}

// mostLid is the largest a lid gets at this zoom.
func (g *ground) mostLid() float64 {
	zoom := g.camera.Scale / scene.Fit(g.r.Sight(g.yard.Yard), g.s.NoBand(g.frame)).Scale
	return min(max(mapLid*math.Sqrt(zoom), mapLidFull), mapLidMost)
}

// lidSize is how large the lids of a stand are whose neighbour is so far, and the
// places of a row so far apart, dp: the largest that do not reach it.
func lidSize(s *state.Standing, apart, place, most float64) float64 {
	wide := 1.0
	switch {
	case s.Row():
		wide = rowWide
	case s.Places > 1:
		wide = standWide
	}
	lid := apart * 0.97 / wide
	switch {
	case s.Row():
		lid = min(lid, place/(1+lidGapLeast))
	case lid > mapLidNearly:
		lid = max(lid, mapLidFull)
	case lid >= mapLidClose && lid < mapLidLeast:
		lid = mapLidLeast
	case lid < mapLidRead && s.Places <= 1:
		lid = min(lid*mapLap, mapLidRead)
	}
	return min(max(lid, mapCell), most)
}

// standWide is how far stands of four lie apart at least, in lids: two lids, the
// gap between them, the plate's edge and room for a letter.
const standWide = 3.05

// rowWide is how far rows lie apart at least, in lids: one, and the plate's edges.
const rowWide = 1.4

// lidGap is how far apart lids on a stand lie, dp: their frames have room; and
// where they are small, in lids.
const (
	lidGap      = 5.0
	lidGapLeast = 0.2
)

// gap is how far apart the lids of a stand lie: less where they are small.
func (s *spot) gap() float64 { return min(lidGap, s.lid*lidGapLeast) }

// half is half of how wide and high the plate of a stand is before it is turned.
func (s *spot) half() (w, h float64) {
	h = s.lid + s.gap()/2 + 3
	if s.Row() {
		return (s.lid+s.gap())*float64(s.last-s.first+1)/2 + 3, s.lid/2 + 3
	}
	return h, h
}

// reach is how far a stand with its lids reaches from its middle at most.
func (s *spot) reach() float64 {
	w, h := s.half()
	return math.Hypot(w, h)
}

// plate draws a stand of several places.
func (g *ground) plate(s *spot) {
	if s.Places <= 1 {
		return
	}
	w, h := s.half()
	box := scene.Area{X: s.at.X - w, Y: s.at.Y - h, W: 2 * w, H: 2 * h}
	tag := scene.Tag{Ref: s.Ref, Reason: s.Says}
	if s.lid >= mapCellEdged || s.Row() {
		g.take(box)
	}
	edge := stroke(scene.Rule, 1)
	if s.lid < mapCellEdged {
		edge = scene.Stroke{}
	}
	if s.Turn == 0 {
		g.add(scene.Rect{Area: box, Fill: scene.Panel, Stroke: edge, Tag: tag})
		return
	}
	corners := []scene.Point{at(-w, -h), at(w, -h), at(w, h), at(-w, h)}
	for i := range corners {
		corners[i] = s.at.Add(turned(corners[i], s.Turn))
	}
	g.add(scene.Poly{Points: corners, Fill: scene.Panel, Stroke: edge, Tag: tag})
}

// mapLid is a lid on its place of a stand, turned with it. Its clock shows
// when most of the time is used, and in the layer of what is due.
func (g *ground) mapLid(n *state.Nuc, s *spot) scene.Lid {
	l := g.lidOf(n, s.at.Add(turned(offset(n.Place, s), s.Turn)), s.lid)
	l.Turn, l.Entrance = s.Turn, n.NucNamed.Entrance+s.Turn
	l.Timed = l.Timed && (l.Used > clockShows || g.s.Layer == state.ByDue)
	g.layered(n, &l)
	l.NoRim = !l.Timed
	if g.wear != nil {
		g.wear(n, s, &l)
	}
	return l
}

// clockShows is the share of the time used from which the map shows a clock.
const clockShows = 0.85

// offset is where a lid lies from the middle of its stand before it is turned.
func offset(place int, s *spot) scene.Point {
	switch {
	case s.Places <= 1 || place < 1:
		return scene.Point{}
	case !s.Row():
		k := (s.lid + s.gap()) / 2
		return [4]scene.Point{at(-k, -k), at(k, -k), at(-k, k), at(k, k)}[(place-1)%4]
	default:
		return at((float64(place)-float64(s.first+s.last)/2)*(s.lid+s.gap()), 0)
	}
}

func turned(p scene.Point, degrees float64) scene.Point {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return at(p.X*cos-p.Y*sin, p.X*sin+p.Y*cos)
}

// colonies draws the full-size colonies with their names.
func (g *ground) colonies() {
	for _, c := range g.r.Colonies(g.yard.Yard) {
		o := g.camera.Screen(state.OnGround(c.At))
		if !scene.Around(o, 22).Overlaps(g.frame) {
			continue
		}
		ref := state.RefOf(c.Colony.Subject())
		p := scene.Rect{Area: scene.Around(o, 20), Radius: 2, Fill: scene.Panel, Stroke: stroke(scene.Ink, 1.8)}
		if g.s.Selection.Has(c.Colony.Subject()) {
			p.Fill, p.Stroke = scene.PenTint, stroke(scene.Pen, 2.5)
		}
		p.Tag = scene.Tag{Ref: ref, Reason: c.Name + "  " + roles(c)}
		g.add(p, scene.Rect{Area: scene.Around(o, 11), Radius: 1, Stroke: stroke(scene.Ink, 1.01)})
		g.take(scene.Around(o, 22))
	}
}
