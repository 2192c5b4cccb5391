package founding

import "lidmark/domain/book"

// ground is a yard with the stands and nucs on it, while rows are set up there.
type ground struct {
	ids    *book.IDs
	yard   book.YardID
	there  *book.View // nil in a new book
	stands map[string]book.StandSet
	south  *book.Point // the middle of the southernmost stand; nil: none yet
	next   *book.Point // where the next new stand was said to go; nil: nobody said
	names  map[string]bool
}

func newGround(ids *book.IDs, yard book.YardID, there *book.View) *ground {
	g := &ground{ids: ids, yard: yard, there: there, stands: map[string]book.StandSet{}, names: map[string]bool{}}
	if there != nil {
		for s := range there.Stands(yard) {
			g.keep(s.StandSet)
		}
	}
	return g
}

// keep notes a stand that is there.
func (g *ground) keep(s book.StandSet) {
	g.stands[s.Letter] = s
	if g.south == nil || s.At.Y < g.south.Y {
		g.south = &s.At
	}
}

// take gives a name to a nuc, if no other nuc of the yard has it.
func (g *ground) take(name string) bool {
	if g.names[name] {
		return false
	}
	if g.there != nil {
		for _, n := range g.there.NucNamed(name) {
			if n.Yard == g.yard {
				return false
			}
		}
	}
	g.names[name] = true
	return true
}

// stand is the stand of a letter with so many places at least, and whether the
// book has to be told of it.
func (g *ground) stand(letter string, places int) (s book.StandSet, changed bool) {
	s, known := g.stands[letter]
	if known && s.Places >= places {
		return s, false
	}
	if s.Places = places; !known {
		s.Stand, s.Yard, s.Letter, s.At = book.StandID(g.ids.Next()), g.yard, letter, g.free()
	}
	g.keep(s)
	return s, true
}

// rowsApart is how far new rows of nucs stand apart, m, so that one walks
// between them; the keeper moves them as they really stand. Common practice, no
// source.
const rowsApart = 3

// free is where the next stand goes: where it was said, else a row south of all
// that are there.
func (g *ground) free() book.Point {
	if at := g.next; at != nil {
		g.next = nil
		return *at
	}
	if g.south == nil {
		return book.Point{}
	}
	return book.Point{X: g.south.X, Y: g.south.Y - rowsApart}
}
