package state

import (
	"cmp"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Standing is a stand as the map shows it: where it is, how far its neighbour,
// and which nucs are on it.
type Standing struct {
	*book.Stand
	On    scene.Point // the ground, m
	Apart float64     // to the next stand, the wider way of the two, m; infinite where it is alone
	Nucs  []*Nuc
	Ref   scene.Ref
	Says  string // when the pointer rests on it
}

// Row tells whether the places of the stand are a row, not a square of four.
func (s *Standing) Row() bool { return isRow(s.Stand) }

// InUse are the first and the last place of a stand on which a nuc stands; all of its
// places where none does, or where they are no row.
func (s *Standing) InUse() (first, last int) {
	if s.Row() {
		for _, n := range s.Nucs {
			if n.Place > 0 && (first == 0 || n.Place < first) {
				first = n.Place
			}
			last = max(last, n.Place)
		}
	}
	if first == 0 {
		return 1, s.Places
	}
	return first, last
}

func isRow(s *book.Stand) bool { return s.Places > block }

// Standing are the stands of a yard.
func (r *Reading) Standing(yard book.YardID) []Standing { return r.standing(yard) }

func (r *Reading) readStanding(yard book.YardID) (all []Standing) {
	on := map[book.StandID][]*Nuc{}
	for _, n := range r.In(yard) {
		on[n.Stand] = append(on[n.Stand], n)
	}
	var places []scene.Point
	for s := range r.View.Stands(yard) {
		all = append(all, Standing{
			Stand: s, On: OnGround(s.At), Nucs: on[s.Stand], Ref: RefOf(s.Stand.Subject()), Says: "stand " + s.Letter + ": its nucs",
		})
		places = append(places, OnGround(s.At))
	}
	for i, apart := range Apart(places) {
		all[i].Apart = apart
	}
	return all
}

// Colonies are the colonies of a yard.
func (r *Reading) Colonies(yard book.YardID) []*book.Colony { return r.colonies(yard) }

func (r *Reading) readColonies(yard book.YardID) (all []*book.Colony) {
	for c := range r.View.Colonies() {
		if c.Yard == yard {
			all = append(all, c)
		}
	}
	return all
}

// Apart is how far each place lies from its neighbour, the wider way of the two.
// Places are walked from west to east, so that only those in between are
// compared and a yard of thousands stays quick.
func Apart(places []scene.Point) []float64 {
	byX := make([]int, len(places))
	for i := range byX {
		byX[i] = i
	}
	slices.SortFunc(byX, func(i, j int) int { return cmp.Compare(places[i].X, places[j].X) })
	apart := make([]float64, len(places))
	for at, i := range byX {
		best := math.Inf(1)
		for _, step := range []int{-1, +1} {
			for k := at + step; k >= 0 && k < len(byX); k += step {
				d := places[byX[k]].Sub(places[i])
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
