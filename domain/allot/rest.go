package allot

import (
	"cmp"
	"math"
	"slices"
)

// A rest is a flow with what it leaves in hand.
type rest struct {
	*core
	x       []int
	left    []int
	minutes float64
}

// count reckons what is left.
func (r *rest) count() {
	r.left, r.minutes = slices.Clone(r.core.left), r.core.minutes
	for i, a := range r.arcs {
		r.use(a, r.x[i])
	}
}

func (r *rest) use(a arc, many int) {
	r.left[a.supply] -= many
	r.minutes -= a.minutes * float64(many)
}

// follow leads the flow towards another, class by class, where what is left
// allows it.
func (r *rest) follow(to []int) {
	for _, k := range r.classes {
		if r.swap(k, r.x, to) {
			copy(r.x[k.first:k.last], to[k.first:k.last])
		} else {
			r.swap(k, to, r.x)
		}
	}
}

// swap takes for a class what one flow takes, gives back what another does,
// and says whether there was enough.
func (r *rest) swap(k class, back, take []int) bool {
	for i := k.first; i < k.last; i++ {
		r.use(r.arcs[i], take[i]-back[i])
	}
	enough := r.minutes >= 0
	for i := k.first; i < k.last; i++ {
		enough = enough && (r.arcs[i].supply == 0 || r.left[r.arcs[i].supply] >= 0)
	}
	return enough
}

// upgrade moves subjects to better arcs while what is left allows it, the
// largest gain first.
func (r *rest) upgrade() {
	r.count()
	for _, m := range r.upgrades() {
		a, b := r.arcs[m.from], r.arcs[m.to]
		many := min(r.x[m.from], b.room-r.x[m.to])
		if b.supply > 0 && b.supply != a.supply {
			many = min(many, r.left[b.supply])
		}
		if more := b.minutes - a.minutes; more > 0 {
			many = int(min(float64(many), math.Floor(r.minutes/more)))
		}
		if many > 0 {
			r.x[m.from], r.x[m.to] = r.x[m.from]-many, r.x[m.to]+many
			r.use(a, -many)
			r.use(b, many)
		}
	}
}

// upgrades are the moves to better arcs that what is left may allow, no unions.
func (r *rest) upgrades() (moves []move) {
	for i, a := range r.arcs {
		if a.union > 0 {
			continue
		}
		k := r.classes[a.class]
		for to := k.first + 1; to < k.last; to++ {
			b := r.arcs[to]
			if b.union == 0 && b.gain > a.gain && b.minutes-a.minutes <= r.minutes && (b.supply == 0 || b.supply == a.supply || r.left[b.supply] > 0) {
				moves = append(moves, move{b.gain - a.gain, int32(i), int32(to)})
			}
		}
	}
	slices.SortFunc(moves, func(m, o move) int {
		return cmp.Or(cmp.Compare(o.gain, m.gain), cmp.Compare(m.from, o.from), cmp.Compare(m.to, o.to))
	})
	return moves
}
