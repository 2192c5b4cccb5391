package yard

import (
	"fmt"
	"math"
	"slices"

	"lidmark/domain/book"
)

// Peg is a fixed point on the ground at which a tape can begin.
type Peg struct {
	Name string
	At   book.Point
}

// pegged are the features whose points are seen on the ground to a hand's breadth and
// can be walked to.
var pegged = []book.FeatureKind{book.Boundary, book.Wall, book.Dwelling, book.Tree, book.Hedge}

// Pegs are the points of a ground at which tapes can begin: corners and ends of what
// is drawn, and what stands at a point, by the label or kind of the feature and, where
// it has several, the number of the point, such as "boundary 3". None lies in water or
// at its edge.
func (g *Ground) Pegs() (all []Peg) {
	const dry = 0.5 // m from water
	named, water := map[string]int{}, g.shapes(book.Water)
	for i := range g.Features {
		f := &g.Features[i]
		if !slices.Contains(pegged, f.What) || len(f.Points) == 0 {
			continue
		}
		name := f.Label
		if name == "" {
			name = f.What.String()
		}
		if named[name]++; named[name] > 1 {
			name = fmt.Sprintf("%s (%d)", name, named[name])
		}
		all = append(all, pegsOf(name, f.Points)...)
	}
	return slices.DeleteFunc(all, func(p Peg) bool {
		return slices.ContainsFunc(water, func(s shape) bool { return s.away(of(p.At)) < dry })
	})
}

func pegsOf(name string, at []book.Point) (all []Peg) {
	if last := len(at) - 1; last > 0 && at[0] == at[last] {
		at = at[:last]
	}
	if len(at) == 1 {
		return []Peg{{name, at[0]}}
	}
	for i, p := range at {
		all = append(all, Peg{fmt.Sprintf("%s %d", name, i+1), p})
	}
	return all
}

// PegsFor are the two pegs of a ground from which the stands of a layout are best staked
// out: of those from which most stands can be, with tapes of usual length that go through
// no hedge, wall or house, the two whose distance is nearest to a good base. Where no
// stand can be found so, any tape will do; ok is false where none helps.
func PegsFor(l Layout, g *Ground, pegs []Peg) (a, b Peg, ok bool) {
	pegs = outermost(pegs)
	reach, between := make([][]bool, len(pegs)), g.shapes(book.Hedge, book.Wall, book.Dwelling)
	for i, p := range pegs {
		reach[i] = make([]bool, len(l.Stands))
		for k := range l.Stands {
			reach[i][k] = distance(p.At, l.Stands[k].At) <= tapeMost && unbarred(p.At, l.Stands[k].At, between)
		}
	}
	if a, b, ok = pegsFor(l, pegs, func(i, k int) bool { return reach[i][k] }); ok {
		return a, b, ok
	}
	return pegsFor(l, pegs, func(int, int) bool { return true })
}

// A tape is seldom longer than so many metres, and a base about as long suits it; both
// common practice, no source.
const tapeMost, goodBase = 50.0, 45.0

func pegsFor(l Layout, pegs []Peg, reaches func(peg, stand int) bool) (a, b Peg, ok bool) {
	most, best := 0, 0.0
	for i := range pegs {
		for j := i + 1; j < len(pegs); j++ {
			n, base := 0, -math.Abs(distance(pegs[i].At, pegs[j].At)-goodBase)
			for k := range l.Stands {
				if reaches(i, k) && reaches(j, k) && !StakeOf(l.Stands[k].At, pegs[i].At, pegs[j].At).Flat() {
					n++
				}
			}
			if n > most || n == most && base > best {
				a, b, most, best = pegs[i], pegs[j], n, base
			}
		}
	}
	return a, b, most > 0
}

// unbarred tells whether a tape from a peg to a stand goes through none of some shapes. The
// peg may be a corner of one: the first metre is not asked.
func unbarred(peg, at book.Point, between []shape) bool {
	const beside = 1.2
	far := distance(peg, at)
	if far <= beside {
		return true
	}
	from := book.Point{X: peg.X + (at.X-peg.X)*beside/far, Y: peg.Y + (at.Y-peg.Y)*beside/far}
	return !slices.ContainsFunc(between, func(s shape) bool { return s.meets(of(from), of(at)) })
}

// pegsTried is how many pegs are tried in pairs at most.
const pegsTried = 48

// outermost are the pegs that lie furthest out in as many directions as are tried;
// all where there are no more.
func outermost(pegs []Peg) (all []Peg) {
	if len(pegs) <= pegsTried {
		return pegs
	}
	for i := range pegsTried {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / pegsTried)
		out := slices.MaxFunc(pegs, func(p, q Peg) int {
			if p.At.X*sin+p.At.Y*cos < q.At.X*sin+q.At.Y*cos {
				return -1
			}
			return 1
		})
		if !slices.Contains(all, out) {
			all = append(all, out)
		}
	}
	return all
}
