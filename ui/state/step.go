package state

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// walk are the nucs in the order in which next and previous go.
func (s State) walk() []*Nuc {
	switch {
	case s.Room != Yard || s.Pane == Map || s.Pane != Table && s.Heads <= YardHeads && len(s.Folded) == 0:
		return s.Shown()
	case s.Pane == Table:
		return nucsOf(s.Listing())
	}
	f := FilterBy(s.Filter)
	var all []*Nuc
	for _, sec := range s.Sections() {
		for _, n := range sec.Nucs {
			if !sec.Folded && f.Shows(n) {
				all = append(all, n)
			}
		}
	}
	return all
}

// nucsOf are the nucs among the rows of the table.
func nucsOf(rows []TableLine) (nucs []*Nuc) {
	for _, row := range rows {
		if row.Head == nil {
			nucs = append(nucs, row.Nuc)
		}
	}
	return nucs
}

// step goes to the next or previous nuc, on Today to the next or previous line
// of the route.
func step(by int, extend bool) func(State) (State, []Effect) {
	return pure(func(s State) State {
		switch s.Room {
		case Today:
			return s.stepTask(by)
		case Numbers:
			return s.stepNumber(by)
		}
		if n := s.stepped(by); n != nil {
			return s.taken(n, extend)
		}
		return s
	})
}

// stepped is the nuc so many further in the walk, nil where none is in sight.
func (s State) stepped(by int) *Nuc {
	all := s.walk()
	if len(all) == 0 {
		return nil
	}
	switch i := slices.Index(all, s.cursor()); {
	case i < 0 && by > 0:
		return all[0]
	case i < 0:
		return all[len(all)-1]
	default:
		return all[min(max(i+by, 0), len(all)-1)]
	}
}

// taken selects a nuc, beside the others or alone, and brings it into sight.
func (s State) taken(n *Nuc, extend bool) State {
	subject := n.Nuc.Nuc.Subject()
	s.Ring = book.Subject{}
	if extend {
		s.Selection = s.Selection.With(subject)
	} else {
		s.Selection = Select(subject)
	}
	return s.revealed()
}

// arrow goes to the nuc beside the chosen one: in the rows of the grid, or the
// nearest that way on the map.
func arrow(dx, dy int, extend bool) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) {
		if s.Room == Today || s.Room == Numbers {
			return step(dx+dy, extend)(s)
		}
		if next := s.besides(dx, dy); next != nil {
			return s.taken(next, extend), nil
		}
		return s, nil
	}
}

// besides is the nuc beside the one the keys stand on, nil where there is none.
func (s State) besides(dx, dy int) *Nuc {
	n, l := s.cursor(), s.Layout()
	switch {
	case n == nil || s.Pane == Table:
		return s.stepped(dx + dy)
	case s.Pane == Wall:
		return s.Wall(l).beside(n, dx, dy)
	case l.Main.Empty() || s.Pane == Map:
		return s.nearest(n, dx, dy)
	default:
		return s.Grid(l).beside(n, dx, dy)
	}
}

// beside is the nuc next to n in the grid, passing over gaps and heads; at
// the end of a row the walk goes on in the next one.
func (g Grid) beside(n *Nuc, dx, dy int) *Nuc {
	row, column, ok := g.find(n.Nuc.Nuc)
	if !ok {
		return nil
	}
	if dy != 0 {
		for i := row + dy; i >= 0 && i < len(g.Rows); i += dy {
			if n := closest(g.Rows[i].Lids, column); n != nil {
				return n
			}
		}
		return nil
	}
	for i := row; i >= 0 && i < len(g.Rows); i += dx {
		lids := g.Rows[i].Lids
		from := column + dx
		if i != row && dx > 0 {
			from = 0
		} else if i != row {
			from = len(lids) - 1
		}
		for j := from; j >= 0 && j < len(lids); j += dx {
			if lids[j] != nil {
				return lids[j]
			}
		}
	}
	return nil
}

// closest is the lid of a row closest to a column.
func closest(lids []*Nuc, column int) (found *Nuc) {
	least := math.MaxInt
	for j, n := range lids {
		if d := max(j-column, column-j); n != nil && d < least {
			found, least = n, d
		}
	}
	return found
}

// beside is the nuc next to n in the wall, passing over heads: at the end of a
// row the next one, above and below the one in the same column or the last.
func (w LidWall) beside(n *Nuc, dx, dy int) *Nuc {
	var rows [][]*Nuc
	row, column := -1, 0
	for _, part := range w.Parts {
		if part.Folded {
			continue
		}
		for all := range slices.Chunk(part.Nucs, w.PerRow) {
			if i := slices.Index(all, n); i >= 0 {
				row, column = len(rows), i
			}
			rows = append(rows, all)
		}
	}
	if row < 0 {
		return nil
	}
	switch column += dx; {
	case column < 0 && row > 0:
		row, column = row-1, len(rows[row-1])-1
	case column >= len(rows[row]) && row+1 < len(rows):
		row, column = row+1, 0
	}
	if row += dy; row < 0 || row >= len(rows) || column < 0 || dx != 0 && column >= len(rows[row]) {
		return nil
	}
	return rows[row][min(column, len(rows[row])-1)]
}

// nearest is the nuc of the map's yard that lies nearest in a direction:
// what lies aside counts twice.
func (s State) nearest(n *Nuc, dx, dy int) (found *Nuc) {
	r := s.Reading()
	here, least := r.Spot(n), math.Inf(1)
	for _, other := range r.In(n.Yard) {
		d := r.Spot(other).Sub(here)
		along := d.X*float64(dx) + d.Y*float64(dy)
		aside := math.Abs(d.X*float64(dy)) + math.Abs(d.Y*float64(dx))
		if along <= aside/2 || other == n {
			continue
		}
		if away := along + 2*aside; away < least {
			found, least = other, away
		}
	}
	return found
}

// revealed scrolls the pane so that the chosen nuc is in sight.
func (s State) revealed() State {
	n := s.cursor()
	if n == nil || s.Room != Yard {
		return s
	}
	s = s.onMap(n)
	l := s.Layout()
	switch s.Pane {
	case Split, Lids:
		g := s.Grid(l)
		if row, _, ok := g.find(n.Nuc.Nuc); ok {
			return s.within(GridPlace, g.Offset, g.Rows[row].Y, g.Rows[row].H, g.Height)
		}
	case Wall:
		w := s.Wall(l)
		for _, part := range w.Parts {
			if i := slices.Index(part.Nucs, n); i >= 0 && !part.Folded {
				return s.within(WallPlace, w.Offset, part.Y+float64(i/w.PerRow)*w.Down, w.Down+wallGap, w.Height)
			}
		}
	case Table:
		i := slices.IndexFunc(s.Listing(), func(t TableLine) bool { return t.Nuc == n })
		if i < 0 {
			return s
		}
		return s.within(TablePlace, s.Scroll[TablePlace], float64(i)*TableRow, TableRow, float64(l.TableRows())*TableRow)
	}
	return s
}

// within scrolls p, now at offset, so that what lies at y, h high, shows.
func (s State) within(p Place, offset, y, h, pane float64) State {
	switch {
	case y < offset:
		return s.scrolled(p, y-s.Scroll[p])
	case y+h > offset+pane:
		return s.scrolled(p, y+h-pane-s.Scroll[p])
	default:
		return s
	}
}

// onMap is the window with the map moved so that a nuc of its yard is in sight,
// where the map was zoomed.
func (s State) onMap(n *Nuc) State {
	frame := s.Layout().MapFrame()
	c, zoomed := s.Map[s.MapYard()]
	if !zoomed || frame.Empty() || n.Yard != s.MapYard() {
		return s
	}
	const edge = 40.0 // so that the lid and its name show whole, dp
	at := c.Screen(s.Reading().Spot(n))
	d := scene.Point{
		X: max(0, frame.X+edge-at.X) - max(0, at.X-frame.Right()+edge),
		Y: max(0, frame.Y+edge-at.Y) - max(0, at.Y-frame.Bottom()+edge),
	}
	if d == (scene.Point{}) {
		return s
	}
	return s.looking(c.Pan(d))
}

// Spot is where a nuc stands on its yard's ground: about the middle of its
// stand by its place.
func (r *Reading) Spot(n *Nuc) scene.Point {
	if n.Stand.IsZero() {
		return scene.Point{}
	}
	return OnGround(r.View.Stand(n.Stand).At).Add(aside(n, r.View.Stand(n.Stand)))
}

// aside is how far a nuc stands from the middle of its stand, m: two by two
// on stands of up to four places, in a row on longer ones, turned with it.
func aside(n *Nuc, stand *book.Stand) scene.Point {
	p := scene.Point{}
	switch {
	case stand.Places <= 1 || n.Place < 1:
	case stand.Places <= block:
		p = [block]scene.Point{{X: -1, Y: -1}, {X: 1, Y: -1}, {X: -1, Y: 1}, {X: 1, Y: 1}}[(n.Place-1)%block].Mul(placePitch / 2)
	default:
		p.X = (float64(n.Place) - float64(stand.Places+1)/2) * placePitch
	}
	sin, cos := math.Sincos(stand.Turn * math.Pi / 180)
	return scene.Point{X: p.X*cos - p.Y*sin, Y: p.X*sin + p.Y*cos}
}

// placePitch is how far the places of a stand lie apart, m.
const placePitch = 0.5
