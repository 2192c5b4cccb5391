package season

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

// circle is a yard with those so near that their drones fly to its virgins: all virgins of
// these yards want the same drone colonies.
type circle struct {
	of       []book.YardID // whose it is
	yards    []book.YardID // those and the ones near them
	colonies float64
}

// circlesOf are the circles of all yards of a book; yards with the same ones near are of one
// circle.
func circlesOf(p *plan.Planner) (all []circle) {
	yards := []book.YardID{{}} // batches of a book without yards
	for y := range p.View().Yards() {
		yards = append(yards, y.Yard)
	}
	for _, y := range yards {
		near := slices.DeleteFunc(slices.Clone(yards), func(o book.YardID) bool { return !p.NearYard(y, o) })
		if i := slices.IndexFunc(all, func(c circle) bool { return slices.Equal(c.yards, near) }); i >= 0 {
			all[i].of = append(all[i].of, y)
			continue
		}
		all = append(all, circle{[]book.YardID{y}, near, float64(len(p.DroneColoniesNear(y)))})
	}
	return all
}

// circleOf is the circle of a yard.
func circleOf(all []circle, yard book.YardID) circle {
	if i := slices.IndexFunc(all, func(c circle) bool { return slices.Contains(c.of, yard) }); i >= 0 {
		return all[i]
	}
	return circle{}
}

// dronesTold tells whether the book tells of any drone colony.
func dronesTold(all []circle) bool {
	return slices.ContainsFunc(all, func(c circle) bool { return c.colonies > 0 })
}

func (c circle) has(y book.YardID) bool { return slices.Contains(c.yards, y) }

// home is the first of its yards in which virgins of some batches fly.
func (c circle) home(all []*load) book.YardID {
	for _, y := range c.yards {
		if slices.ContainsFunc(all, func(l *load) bool { return l.size.Yard == y && l.virgins > 0 }) {
			return y
		}
	}
	return book.YardID{}
}
