package plan

import "math"

// Cost is the misfortune that costs a promise most: a link of the chain, and how many
// queens could be promised if that never went worse than usual. Of a graft it is that
// it fails outright.
type Cost struct {
	Link
	Without int // could be promised
	With    int // as it is
}

// String is the misfortune in the keeper's words.
func (c Cost) String() string { return c.Fails() }

// Dearest is the link of which the misfortune costs most of what can be promised with a
// certainty; ok is false where none costs a queen. All else but its luck and what is
// not known of it stays: what a batch usually loses there is no misfortune.
func (r Rates) Dearest(sure float64, grafts ...Graft) (c Cost, ok bool) {
	most := r.about(grafts...).Promise(sure)
	for _, l := range r.failing() {
		if n := r.spared(l).about(grafts...).Promise(sure); n > most {
			most, c.Link = n, l
		}
	}
	if c.Link == Grafted {
		return c, false
	}
	c.Without, c.With = r.spared(c.Link).Queens(grafts...).Promise(sure), r.Queens(grafts...).Promise(sure)
	return c, c.Without > c.With
}

// failing are the links at which something can go wrong, in their order.
func (r Rates) failing() []Link {
	return append(append([]Link{GraftWorks}, r.before()...), r.after()...)
}

// spared are the rates where one link never goes worse than usual.
func (r Rates) spared(l Link) Rates {
	usual := r.Link[l].Mean()
	if l == GraftWorks {
		usual = 1
	}
	r.Link[l] = Rate{Default: usual, Weight: math.Inf(1)}
	return r
}
