package view

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// spot is a stand on the map: where it is, how large its lids are, and which
// nucs stand on it.
type spot struct {
	*book.Stand
	at   scene.Point
	lid  float64
	nucs []*state.Nuc
}

// Sizes of lids on the map, dp.
const (
	mapLid      = 29.0
	mapLidMost  = 64.0
	mapLidLeast = 12.0 // below it a nuc is a flat cell
	mapCell     = 4.0  // the least of those
	// Lids of this size are read well: single boxes that nearly have it lap
	// over their neighbours a little.
	mapLidRead = 16.0
	mapLap     = 1.2
	// A lid of full size and more is hatched; one that nearly has it may touch
	// its neighbours.
	mapLidFull   = 20.0
	mapLidNearly = 18.0
)

// stands draws all stands with their lids and gives them.
func (g *ground) stands() []spot {
	on := map[book.StandID][]*state.Nuc{}
	for _, n := range g.r.In(g.yard.Yard) {
		on[n.Stand] = append(on[n.Stand], n)
	}
	var spots []spot
	for s := range g.r.View.Stands(g.yard.Yard) {
		spots = append(spots, spot{Stand: s, at: g.camera.Screen(state.OnGround(s.At)), nucs: on[s.Stand]})
	}
	g.size(spots)
	for _, s := range spots {
		g.plate(s)
	}
	g.nucs(spots)
	return spots
}

// nucs draws the nucs of all stands: first the frames of those chosen, so that
// they cover no neighbour, then the lids.
func (g *ground) nucs(spots []spot) {
	filter := state.FilterBy(g.s.Filter)
	n := 0
	for _, s := range spots {
		n += len(s.nucs)
	}
	lids, nucs := make([]scene.Lid, 0, n), make([]*state.Nuc, 0, n)
	g.marks = slices.Grow(g.marks, n+64)
	g.taken = slices.Grow(g.taken, n+64)
	for _, s := range spots {
		for _, n := range s.nucs {
			l := g.mapLid(n, s)
			l.Faded = !filter.Shows(n)
			place := scene.Around(l.At, l.Size)
			if frame, ok := frameOf(l); ok {
				g.add(frame)
				place = frame.Area
			}
			lids, nucs = append(lids, l), append(nucs, n)
			g.taken = append(g.taken, place)
		}
	}
	for i, l := range lids {
		if l.Size < mapLidLeast {
			g.add(cell(l))
			continue
		}
		l.Selected, l.Hover = false, false
		g.add(l)
		if g.s.Layer == state.ByBatch {
			g.batchNumber(nucs[i], l)
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
func cell(l scene.Lid) scene.Rect {
	r := scene.Rect{Area: scene.Around(l.At, l.Size), Fill: scene.Paper, Stroke: stroke(l.Condition.Line(), 1), Tag: l.Tag}
	switch {
	case l.Faded:
		r.Stroke = stroke(scene.Rule, 1)
	case l.Seen && l.Condition.Fill() != scene.None:
		r.Fill = l.Condition.Fill()
	}
	return r
}

// size gives every stand the largest lids that do not reach its neighbour.
func (g *ground) size(spots []spot) {
	zoom := g.camera.Scale / scene.Fit(g.r.Ground(g.yard.Yard), g.frame).Scale
	most := min(max(mapLid*math.Sqrt(zoom), mapLidFull), mapLidMost)
	apart := nearest(spots)
	for i := range spots {
		nearest := apart[i]
		wide := 1.0
		if spots[i].Places > 1 {
			wide = standWide
		}
		lid := nearest * 0.97 / wide
		switch {
		case lid > mapLidNearly:
			lid = max(lid, mapLidFull)
		case lid < mapLidRead && spots[i].Places <= 1:
			lid = min(lid*mapLap, mapLidRead)
		}
		spots[i].lid = min(max(lid, mapCell), most)
	}
}

// nearest is how far each spot lies from its neighbour, the wider way of the
// two. Spots are walked from west to east, so that only those in between are
// compared and a yard of thousands stays quick.
func nearest(spots []spot) []float64 {
	byX := make([]int, len(spots))
	for i := range byX {
		byX[i] = i
	}
	slices.SortFunc(byX, func(i, j int) int { return cmp.Compare(spots[i].at.X, spots[j].at.X) })
	apart := make([]float64, len(spots))
	for at, i := range byX {
		best := math.Inf(1)
		for _, step := range []int{-1, +1} {
			for k := at + step; k >= 0 && k < len(byX); k += step {
				d := spots[byX[k]].at.Sub(spots[i].at)
				if math.Abs(d.X) >= best {
					break
				}
				best = min(best, max(math.Abs(d.X), math.Abs(d.Y)))
			}
		}
		apart[i] = best
	}
	return apart
}

// standWide is how far stands of four lie apart at least, in lids: two lids, the
// gap between them, the plate's edge and room for a letter.
const standWide = 3.05

// lidGap is how far apart lids on a stand lie, dp: their frames have room.
const lidGap = 5.0

// gap is how far apart the lids of a stand lie: less where they are small.
func (s spot) gap() float64 { return min(lidGap, s.lid/5) }

// plate draws a stand of several places.
func (g *ground) plate(s spot) {
	if s.Places <= 1 {
		return
	}
	half := s.lid + s.gap()/2 + 3
	w := half
	if s.Places > 4 {
		w = (s.lid+s.gap())*float64(s.Places)/2 + 3
		half = s.lid/2 + 3
	}
	corners := []scene.Point{at(-w, -half), at(w, -half), at(w, half), at(-w, half)}
	for i := range corners {
		corners[i] = s.at.Add(turned(corners[i], s.Turn))
	}
	g.taken = append(g.taken, scene.Area{X: s.at.X - w, Y: s.at.Y - half, W: 2 * w, H: 2 * half})
	g.add(scene.Poly{Points: corners, Fill: scene.Panel, Stroke: stroke(scene.Rule, 1), Tag: scene.Tag{
		Ref: state.RefOf(s.Stand.Stand.Subject()), Reason: "stand " + s.Letter + ": its nucs",
	}})
}

// mapLid is a lid on its place of a stand, turned with it. Its clock shows
// when most of the time is used, and in the layer of what is due.
func (g *ground) mapLid(n *state.Nuc, s spot) scene.Lid {
	l := g.lidOf(n, s.at.Add(turned(offset(n, s), s.Turn)), s.lid)
	l.Turn = s.Turn
	l.Timed = l.Timed && (l.Used > clockShows || g.s.Layer == state.ByDue)
	l.NoRim = !l.Timed
	if g.s.Layer == state.ByBatch {
		l.Blank = true
	}
	if s.lid < 24 {
		l.Paint = scene.NoPaint
	}
	return l
}

// batchNumber writes the number of a nuc's batch on its lid.
func (g *ground) batchNumber(n *state.Nuc, l scene.Lid) {
	if n.Holds.Batch.IsZero() || l.Faded || l.Size < mapLidNumber {
		return
	}
	role := scene.Ink
	if l.Seen {
		role = l.Condition.Letter()
	}
	g.add(scene.Text{
		At: l.At, Text: strconv.Itoa(g.r.View.Batch(n.Holds.Batch).Number), Size: l.Size * 0.46,
		Weight: scene.Bold, Anchor: scene.Centre, Middle: true, Role: role,
	})
}

// mapLidNumber is the least lid that carries a number, dp.
const mapLidNumber = 18.0

// clockShows is the share of the time used from which the map shows a clock.
const clockShows = 0.85

// offset is where a lid lies from the middle of its stand before it is turned.
func offset(n *state.Nuc, s spot) scene.Point {
	switch {
	case s.Places <= 1 || n.Place < 1:
		return scene.Point{}
	case s.Places <= 4:
		k := (s.lid + s.gap()) / 2
		return [4]scene.Point{at(-k, -k), at(k, -k), at(-k, k), at(k, k)}[(n.Place-1)%4]
	default:
		return at((float64(n.Place)-float64(s.Places+1)/2)*(s.lid+s.gap()), 0)
	}
}

func turned(p scene.Point, degrees float64) scene.Point {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return at(p.X*cos-p.Y*sin, p.X*sin+p.Y*cos)
}

// colonies draws the full-size colonies with their names.
func (g *ground) colonies() {
	for c := range g.r.View.Colonies() {
		if c.Yard != g.yard.Yard {
			continue
		}
		o := g.camera.Screen(state.OnGround(c.At))
		ref := state.RefOf(c.Colony.Subject())
		p := scene.Rect{Area: scene.Around(o, 20), Radius: 2, Fill: scene.Panel, Stroke: stroke(scene.Ink, 1.8)}
		if g.s.Selection.Has(c.Colony.Subject()) {
			p.Fill, p.Stroke = scene.PenTint, stroke(scene.Pen, 2.5)
		}
		p.Tag = scene.Tag{Ref: ref, Reason: c.Name + "  " + roles(c)}
		g.add(p, scene.Rect{Area: scene.Around(o, 11), Radius: 1, Stroke: stroke(scene.Ink, 1.01)})
		g.taken = append(g.taken, scene.Around(o, 22))
	}
}
