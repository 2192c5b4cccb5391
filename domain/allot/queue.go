package allot

// A move takes one of a class from one arc to another and gains by it.
type move struct {
	gain     float64
	from, to int32 // arcs
}

// before orders moves: the most gain first, of equals the earliest arcs.
func (m move) before(o move) bool {
	if m.gain != o.gain {
		return m.gain > o.gain
	}
	if m.from != o.from {
		return m.from < o.from
	}
	return m.to < o.to
}

// A queue is a binary heap of moves, the best first.
type queue []move

func (q *queue) push(m move) {
	h := append(*q, m)
	i := len(h) - 1
	for i > 0 {
		up := (i - 1) / 2
		if !m.before(h[up]) {
			break
		}
		h[i] = h[up]
		i = up
	}
	h[i] = m
	*q = h
}

// pop drops the best.
func (q *queue) pop() {
	h := *q
	last := len(h) - 1
	h[0] = h[last]
	*q = h[:last]
	q.down(0)
}

// order makes a heap of moves in any order.
func (q queue) order() {
	for i := len(q)/2 - 1; i >= 0; i-- {
		q.down(i)
	}
}

func (q queue) down(i int) {
	for {
		best := 2*i + 1
		if best >= len(q) {
			return
		}
		if best+1 < len(q) && q[best+1].before(q[best]) {
			best++
		}
		if !q[best].before(q[i]) {
			return
		}
		q[i], q[best] = q[best], q[i]
		i = best
	}
}
