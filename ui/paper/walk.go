package paper

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// maps are the yards of the day that can be drawn: something stands in them, and
// there is a nuc or colony to go to.
func (d dayRoute) maps() (all []book.YardID) {
	for _, y := range d.yards() {
		if !d.Ground(y).Empty() && len(d.walk(y)) > 0 {
			all = append(all, y)
		}
	}
	return all
}

// walk is where the work of a yard leads, on its ground, from place to place in
// walking order: one round, however often the day comes back.
func (d dayRoute) walk(yard book.YardID) (way []scene.Point) {
	var of []book.Subject
	for _, s := range d.stops {
		for _, t := range s.Tasks {
			of = append(of, t.Of...)
		}
	}
	for _, to := range d.inWalkingOrder(of) {
		p, ok := d.place(to, yard)
		if ok && (len(way) == 0 || way[len(way)-1] != p) {
			way = append(way, p)
		}
	}
	return way
}

// inWalkingOrder are colonies as they come, then nucs in walking order.
func (d dayRoute) inWalkingOrder(of []book.Subject) (ordered []book.Subject) {
	wanted := map[book.Subject]bool{}
	for _, s := range of {
		if s.Kind != book.KindNuc {
			ordered = append(ordered, s)
		}
		wanted[s] = true
	}
	for _, n := range d.Nucs {
		if s := n.Nuc.Nuc.Subject(); wanted[s] {
			ordered = append(ordered, s)
		}
	}
	return ordered
}

// place is where a nuc's stand or a colony stands in a yard.
func (d dayRoute) place(of book.Subject, yard book.YardID) (scene.Point, bool) {
	if id, ok := of.Nuc(); ok {
		n := d.View.Nuc(id)
		return state.OnGround(d.View.Stand(n.Stand).At), !n.Stand.IsZero() && n.Yard == yard
	}
	if id, ok := of.Colony(); ok {
		c := d.View.Colony(id)
		return state.OnGround(c.At), c.Yard == yard
	}
	return scene.Point{}, false
}
