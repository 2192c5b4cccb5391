package tour

// path is a round that can be turned round in stretches, and taken back.
type path struct {
	order []int32 // points
	pos   []int32 // where each of them is in order
	done  []turn
}

// turn is a stretch of order that was turned round: turned again it is as before.
type turn struct{ from, length int }

func newPath(order []int32) *path {
	p := &path{order: order, pos: make([]int32, len(order))}
	for k, i := range order {
		p.pos[i] = int32(k)
	}
	return p
}

// beside is the point after another, or the one before it.
func (p *path) beside(i int32, after bool) int32 {
	k := int(p.pos[i])
	if after {
		if k++; k == len(p.order) {
			k = 0
		}
	} else if k--; k < 0 {
		k = len(p.order) - 1
	}
	return p.order[k]
}

// join takes the edges a–b and c–d out and puts a–c and b–d in. Both run the same
// way: b is after a and d after c, or both before.
func (p *path) join(a, b, c, d int32) {
	if p.beside(a, true) == b {
		p.reverse(b, c)
	} else {
		p.reverse(a, d)
	}
}

// move is a stretch from a to e, between o and q, that goes between c and f: turned
// round, with e beside c, or kept as it runs, with a beside c. From o the round goes
// on to a, e, q, c and f.
type move struct {
	o, a, e, q, c, f int32
	kept             bool
}

func (p *path) do(m move) {
	p.join(m.o, m.a, m.c, m.f)
	if m.c != m.q {
		p.join(m.o, m.c, m.q, m.e)
	}
	if m.kept {
		p.join(m.c, m.e, m.a, m.f)
	}
}

// reverse turns the stretch from i on to j round, or, which is the same round, all
// the others.
func (p *path) reverse(i, j int32) {
	n := len(p.order)
	from := int(p.pos[i])
	length := (int(p.pos[j])-from+n)%n + 1
	if 2*length > n {
		from, length = (from+length)%n, n-length
	}
	p.turn(turn{from, length})
	p.done = append(p.done, turn{from, length})
}

func (p *path) turn(t turn) {
	n := len(p.order)
	i, j := t.from, (t.from+t.length-1)%n
	for range t.length / 2 {
		a, b := p.order[i], p.order[j]
		p.order[i], p.order[j] = b, a
		p.pos[b], p.pos[a] = int32(i), int32(j)
		if i++; i == n {
			i = 0
		}
		if j--; j < 0 {
			j = n - 1
		}
	}
}

// keep makes what was done stay.
func (p *path) keep() { p.done = p.done[:0] }

// undo takes back what was done since it was last kept.
func (p *path) undo() {
	for k := len(p.done) - 1; k >= 0; k-- {
		p.turn(p.done[k])
	}
	p.keep()
}
