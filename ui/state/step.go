package state

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// walk are the nucs in the order in which next and previous go.
func (s State) walk() []*Nuc {
	if s.Room == Yard && s.Pane == Table {
		return s.Sort.Sorted(s.Reading(), s.Shown())
	}
	return s.Shown()
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
		all := s.walk()
		i := slices.IndexFunc(all, func(n *Nuc) bool { return n.Nuc.Nuc.Subject() == s.Selection.Last() })
		switch {
		case i < 0 && by > 0:
			i = 0
		case i < 0:
			i = len(all) - 1
		default:
			i = min(max(i+by, 0), len(all)-1)
		}
		return s.taken(all[i], extend)
	})
}

// taken selects a nuc, beside the others or alone, and brings it into sight.
func (s State) taken(n *Nuc, extend bool) State {
	subject := n.Nuc.Nuc.Subject()
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
		n := s.chosen()
		if n == nil || s.Room == Today || s.Room == Numbers || s.Pane == Table {
			return step(dx+dy, extend)(s)
		}
		l := s.Layout()
		var next *Nuc
		switch {
		case s.Pane == Wall:
			next = s.besideInWall(n, dx, dy, l)
		case l.Main.Empty() || s.Pane == Map:
			next = s.nearest(n, dx, dy)
		default:
			next = s.Grid(l).beside(n, dx, dy)
		}
		if next == nil {
			return s, nil
		}
		return s.taken(next, extend), nil
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

// besideInWall is the nuc next to n in the wall.
func (s State) besideInWall(n *Nuc, dx, dy int, l Layout) *Nuc {
	all := s.Reading().In(s.Filled())
	i := slices.Index(all, n) + dx + dy*s.Wall(l).PerRow
	if i < 0 || i >= len(all) {
		return nil
	}
	return all[i]
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
	n := s.chosen()
	if n == nil || s.Room != Yard {
		return s
	}
	l := s.Layout()
	switch s.Pane {
	case Split, Lids:
		g := s.Grid(l)
		if row, _, ok := g.find(n.Nuc.Nuc); ok {
			return s.within(GridPlace, g.Offset, g.Rows[row].Y, g.Rows[row].H, g.Height)
		}
	case Wall:
		w := s.Wall(l)
		for _, y := range w.Yards {
			if i := slices.Index(y.Nucs, n); i >= 0 {
				return s.within(WallPlace, w.Offset, y.Y+float64(i/w.PerRow)*WallPitch, WallPitch, w.Height)
			}
		}
	case Table:
		i := slices.Index(s.walk(), n)
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
