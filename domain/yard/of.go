package yard

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
)

// Of is the layout of a yard as the book has it: its stands by letter, with the
// nucs that stand on them by place, and its full-size colonies. Nobody knows by the
// layout what is in a nuc: see [Layout.With].
func Of(v *book.View, id book.YardID) Layout {
	l := Layout{Yard: id}
	at := map[book.StandID]int{}
	for s := range v.Stands(id) {
		at[s.Stand] = len(l.Stands)
		l.Stands = append(l.Stands, Stand{ID: s.Stand, Letter: s.Letter, At: s.At, Turn: s.Turn, Places: s.Places, Round: s.Round})
	}
	for n := range v.Nucs() {
		if i, ok := at[n.Stand]; ok && n.Yard == id {
			l.Stands[i].Nucs = append(l.Stands[i].Nucs, nucOf(v, n))
		}
	}
	for i := range l.Stands {
		slices.SortStableFunc(l.Stands[i].Nucs, func(a, b Nuc) int { return cmp.Compare(a.Place, b.Place) })
	}
	for c := range v.Colonies() {
		if c.Yard == id {
			l.Colonies = append(l.Colonies, Colony{ID: c.Colony, Name: c.Name, At: c.At})
		}
	}
	return l
}

func nucOf(v *book.View, n *book.Nuc) Nuc {
	return Nuc{
		ID: n.Nuc, Name: n.Name, Place: n.Place, Bearing: n.NucNamed.Entrance, Mark: MarkOf(n.Front),
		Shared: !n.Box.IsZero() && v.Box(n.Box).Nucs > 1,
		Idle:   n.MadeUp.IsZero() && n.Holds.Condition == book.Empty,
	}
}

// Still tells whether a layout read by [Of] is how a yard stands at another view.
// It costs no memory, so that whoever reckons a layout can keep it.
func (l Layout) Still(v *book.View) bool {
	i := 0
	for s := range v.Stands(l.Yard) {
		if i >= len(l.Stands) || !l.Stands[i].is(s) {
			return false
		}
		i++
	}
	return i == len(l.Stands) && l.sameNucs(v) && l.sameColonies(v)
}

func (s *Stand) is(o *book.Stand) bool {
	return s.ID == o.Stand && s.At == o.At && s.Turn == o.Turn && s.Places == o.Places
}

// sameNucs: a view gives its nucs stand by stand, each by place, as a layout has
// them.
func (l Layout) sameNucs(v *book.View) bool {
	stand, nuc := 0, 0
	for n := range v.Nucs() {
		if n.Yard != l.Yard || n.Stand.IsZero() {
			continue
		}
		for stand < len(l.Stands) && nuc == len(l.Stands[stand].Nucs) {
			stand, nuc = stand+1, 0
		}
		if stand == len(l.Stands) || l.Stands[stand].ID != n.Stand || l.Stands[stand].Nucs[nuc] != nucOf(v, n) {
			return false
		}
		nuc++
	}
	for stand < len(l.Stands) && nuc == len(l.Stands[stand].Nucs) {
		stand, nuc = stand+1, 0
	}
	return stand == len(l.Stands)
}

func (l Layout) sameColonies(v *book.View) bool {
	i := 0
	for c := range v.Colonies() {
		if c.Yard != l.Yard {
			continue
		}
		if i >= len(l.Colonies) || l.Colonies[i].ID != c.Colony || l.Colonies[i].At != c.At {
			return false
		}
		i++
	}
	return i == len(l.Colonies)
}

// Holding is what is in a nuc as far as homing goes: its bees, 0 where nobody
// knows, the virgins who will fly from it, and the chance that a stranger queen
// finds a queen there.
type Holding struct{ Bees, Virgins, Queenright float64 }

// With is the layout with what its nucs hold.
func (l Layout) With(holds func(book.NucID) Holding) Layout {
	l = l.Clone()
	for i := range l.Stands {
		for k := range l.Stands[i].Nucs {
			n := &l.Stands[i].Nucs[k]
			h := holds(n.ID)
			n.Bees, n.Virgins, n.Queenright = h.Bees, h.Virgins, h.Queenright
		}
	}
	return l
}

// Full is the layout as if a virgin flew from each of its nucs and all of them had
// queens: how a yard is judged that stands empty. See [CostOf].
func (l Layout) Full() Layout {
	return l.With(func(book.NucID) Holding { return Holding{Virgins: 1, Queenright: 1} })
}

// Try is the layout with a try-out laid over it: stands that stand otherwise or are
// new, fronts with other marks, and boxes that face elsewhere.
func (l Layout) Try(t book.LayoutTried) Layout {
	l = l.Clone()
	for _, s := range t.Stands {
		i := slices.IndexFunc(l.Stands, func(was Stand) bool { return was.ID == s.Stand })
		if i < 0 {
			i = len(l.Stands)
			l.Stands = append(l.Stands, Stand{ID: s.Stand})
		}
		to := &l.Stands[i]
		to.Letter, to.At, to.Turn, to.Places, to.Round = s.Letter, s.At, s.Turn, s.Places, s.Round
	}
	for _, f := range t.Fronts {
		if n := l.nuc(f.Nuc); n != nil {
			n.Mark = MarkOf(f)
		}
	}
	for _, f := range t.Faces {
		if n := l.nuc(f.Nuc); n != nil {
			n.Bearing = f.Entrance
		}
	}
	return l
}

func (l Layout) nuc(id book.NucID) *Nuc {
	for i := range l.Stands {
		for k := range l.Stands[i].Nucs {
			if n := &l.Stands[i].Nucs[k]; n.ID == id {
				return n
			}
		}
	}
	return nil
}

// TriedAs is what of a layout differs from how the boxes stand, for the book.
func (l Layout) TriedAs(id book.LayoutID, name string, now Layout) book.LayoutTried {
	t := book.LayoutTried{Layout: id, Yard: l.Yard, Name: name}
	was := map[book.StandID]Stand{}
	nucs := map[book.NucID]Nuc{}
	for _, s := range now.Stands {
		was[s.ID] = s
		for _, n := range s.Nucs {
			nucs[n.ID] = n
		}
	}
	for _, s := range l.Stands {
		if o, ok := was[s.ID]; !ok || o.At != s.At || o.Turn != s.Turn || o.Places != s.Places {
			t.Stands = append(t.Stands, book.StandSet{Stand: s.ID, Yard: l.Yard, Letter: s.Letter, At: s.At, Turn: s.Turn, Places: s.Places, Round: s.Round})
		}
		for _, n := range s.Nucs {
			o, known := nucs[n.ID]
			if known && o.Mark != n.Mark {
				t.Fronts = append(t.Fronts, book.FrontMarked{Nuc: n.ID, Shape: n.Mark.Shape, Colour: n.Mark.Colour})
			}
			if known && o.Bearing != n.Bearing {
				t.Faces = append(t.Faces, book.NucFaced{Nuc: n.ID, Entrance: n.Bearing})
			}
		}
	}
	return t
}
