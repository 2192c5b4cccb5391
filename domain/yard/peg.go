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

// pegged are the features whose points are seen on the ground to a hand's breadth.
var pegged = []book.FeatureKind{book.Boundary, book.Wall, book.Dwelling, book.Tree, book.Hedge, book.Water, book.VehicleSpot}

// Pegs are the points of a ground at which tapes can begin: corners and ends of what
// is drawn, and what stands at a point, by the label or kind of the feature and, where
// it has several, the number of the point, such as "boundary 3".
func (g *Ground) Pegs() (all []Peg) {
	named := map[string]int{}
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
	return all
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

// PegsFor are the two pegs from which the stands of a layout are best staked out: of
// those from which most stands can be, the two that are furthest apart; ok is false
// where no stand can be staked out from any two.
func PegsFor(l Layout, pegs []Peg) (a, b Peg, ok bool) {
	pegs = outermost(pegs)
	most, far := 0, 0.0
	for i := range pegs {
		for _, q := range pegs[i+1:] {
			n, d := 0, distance(pegs[i].At, q.At)
			for k := range l.Stands {
				if !StakeOf(l.Stands[k].At, pegs[i].At, q.At).Flat() {
					n++
				}
			}
			if n > most || n == most && d > far {
				a, b, most, far = pegs[i], q, n, d
			}
		}
	}
	return a, b, most > 0
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
