package allot

import "slices"

// A core is what is still open of a problem: classes of subjects that are
// alike, with the ways that may be in a better answer, and what is left in
// hand. Whoever is settled is out of it, and so is who is left as he is.
type core struct {
	classes []class
	arcs    []arc   // of all classes, one class after the other
	left    []int   // by supply, from 1
	minutes float64 // left, or infinite
	gain    float64 // of what is settled
	settled []settled
	bound   float64 // no answer within it gains more, as far as known
}

// A class is subjects that are alike; the first of its arcs leaves them.
type class struct {
	group       int
	count       int
	first, last int // its arcs are those from first to below last
}

// An arc is a way of a class, or half a union of its one subject.
type arc struct {
	gain    float64
	minutes float64
	supply  int // 0: none
	room    int // at most so many of the class
	class   int
	way     int  // of the subject; 0 of a union
	union   int  // from 1; 0: none
	second  bool // the half of the union that takes nothing
}

// settled says that so many subjects of a group have a way, or that a union is
// chosen.
type settled struct{ group, way, many, union int }

// add appends a class with its arcs.
func (c *core) add(k class, arcs []arc) {
	k.first = len(c.arcs)
	for _, a := range arcs {
		a.class = len(c.classes)
		c.arcs = append(c.arcs, a)
	}
	k.last = len(c.arcs)
	c.classes = append(c.classes, k)
}

func (c *core) clone() *core {
	d := *c
	d.classes, d.arcs, d.left, d.settled = slices.Clone(c.classes), slices.Clone(c.arcs), slices.Clone(c.left), slices.Clone(c.settled)
	return &d
}

// fits says whether so many of an arc can be had.
func (c *core) fits(a arc, many int) bool {
	return many <= min(a.room, c.classes[a.class].count) && (a.supply == 0 || many <= c.left[a.supply]) && a.minutes*float64(many) <= c.minutes
}

// settle gives so many subjects of its class the way of an arc. The arcs are
// as wide as before but for this one.
func (c *core) settle(i, many int) {
	a := &c.arcs[i]
	c.take(*a, many)
	a.room -= many
	c.classes[a.class].count -= many
	c.gain += a.gain * float64(many)
	c.settled = append(c.settled, settled{group: c.classes[a.class].group, way: a.way, many: many})
}

// take takes out of what is in hand.
func (c *core) take(a arc, many int) {
	c.minutes -= a.minutes * float64(many)
	if a.supply > 0 {
		c.left[a.supply] -= many
	}
}

// unite chooses a union, given by its two halves; gain is that of both.
func (c *core) unite(h halves, gain float64) {
	for _, i := range h {
		c.take(c.arcs[i], 1)
		c.classes[c.arcs[i].class].count = 0
	}
	c.gain += gain
	c.settled = append(c.settled, settled{union: c.arcs[h[0]].union})
}

// forbid takes a union out.
func (c *core) forbid(h halves) { c.arcs[h[0]].room, c.arcs[h[1]].room = 0, 0 }

// halves are the two arcs of a union.
type halves [2]int

// halved lists the unions that are open, in the order of their second halves.
func (c *core) halved() (all []halves) {
	most := 0
	for _, a := range c.arcs {
		most = max(most, a.union)
	}
	if most == 0 {
		return nil
	}
	seen := make([]int, most+1) // the place of one half, from 1
	for i, a := range c.arcs {
		switch j := seen[a.union]; {
		case a.union == 0:
		case j == 0:
			seen[a.union] = i + 1
		default:
			all = append(all, halves{j - 1, i})
		}
	}
	return all
}

// compact drops what can be chosen no more: arcs without room, classes without
// subjects or with nothing but leaving, and halves of unions without the other.
func (c *core) compact() {
	open := func(a arc) bool { return a.room > 0 && c.classes[a.class].count > 0 }
	for _, h := range c.halved() {
		if !open(c.arcs[h[0]]) || !open(c.arcs[h[1]]) {
			c.forbid(h)
		}
	}
	classes, arcs := c.classes, c.arcs
	c.classes, c.arcs = nil, make([]arc, 0, len(arcs))
	var kept []arc
	for _, k := range classes {
		kept = kept[:0]
		for _, a := range arcs[k.first:k.last] {
			if a.leaves() || a.room > 0 {
				kept = append(kept, a)
			}
		}
		if len(kept) > 1 && k.count > 0 {
			c.add(k, kept)
		}
	}
}

// leaves says whether an arc is that of leaving.
func (a arc) leaves() bool { return a.way == 0 && a.union == 0 }
