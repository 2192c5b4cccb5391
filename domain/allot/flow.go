package allot

import "math"

// A flow says how many subjects of each class go each way. It starts with the
// best that takes no supply, and grows by one best path after the other: a
// supply with some left gives one, whoever takes it sets another one free, and
// so on until somebody took none before. Every path is the best there is, so
// the gains fall from path to path, and the flow without a path that gains is
// the best of all.
type flow struct {
	*core
	value []float64 // by arc: gain less the price of its minutes
	most  []int     // by arc: how many can go that way; all can be left
	x     []int     // by arc: how many do
	spare []int     // by supply
	moves []queue   // by supply that is set free and supply that is taken
	top   []float64 // by the same: the best gain of a move
	more  []float64 // by supply: what one more would gain
	via   []int     // by supply: which one the next of the path sets free; -1: it stays unused
	ahead []bool    // by supply: more has risen since paths through it were looked at
	path  []move
	work  int
}

// fill finds the flow of most value at a price of minutes.
func (c *core) fill(price float64) *flow {
	n := len(c.left)
	f := &flow{core: c, value: make([]float64, len(c.arcs)), most: make([]int, len(c.arcs)), x: make([]int, len(c.arcs)), work: len(c.arcs)}
	f.spare, f.more, f.via = append([]int(nil), c.left...), make([]float64, n), make([]int, n)
	f.ahead = make([]bool, n)
	f.moves, f.top = make([]queue, n*n), make([]float64, n*n)
	for i, a := range c.arcs {
		f.most[i] = a.room
		if a.leaves() {
			f.most[i] = math.MaxInt
		}
		f.value[i] = max(fine(a.gain-price*a.minutes), -1) // below leaving all are alike
	}
	for _, k := range c.classes {
		f.start(k)
	}
	for i := range f.moves {
		f.moves[i].order()
		f.top[i] = f.best(i)
	}
	for f.grow() {
	} // every path uses up some of a supply, so this ends
	return f
}

// start sends a class along its best arcs that take no supply.
func (f *flow) start(k class) {
	for open := k.count; open > 0; {
		best := -1
		for i := k.first; i < k.last; i++ {
			if f.arcs[i].supply == 0 && f.x[i] == 0 && f.most[i] > 0 && (best < 0 || f.value[i] > f.value[best]) {
				best = i
			}
		}
		many := min(open, f.most[best])
		f.x[best] = many
		open -= many
		for to := k.first; to < k.last; to++ {
			if f.worthwhile(best, to) {
				at := f.arcs[to].supply
				f.moves[at] = append(f.moves[at], f.moveOf(best, to))
			}
		}
	}
}

// worthwhile says whether a move between two arcs of a class can be part of a
// best path: it takes a supply, and another than it sets free.
func (f *flow) worthwhile(from, to int) bool {
	a, b := f.arcs[from].supply, f.arcs[to].supply
	return b > 0 && a != b && f.value[to] > 0 && (a > 0 || f.value[to] > f.value[from])
}

func (f *flow) moveOf(from, to int) move {
	return move{gain: f.value[to] - f.value[from], from: int32(from), to: int32(to)}
}

// grow pushes along the best path, as many as it takes; false: none gains.
func (f *flow) grow() bool {
	f.reckon()
	from := 0
	for s := 1; s < len(f.spare); s++ {
		if f.spare[s] > 0 && f.more[s] > f.more[from] {
			from = s
		}
	}
	if from == 0 {
		return false
	}
	many := f.spare[from]
	f.path = f.path[:0]
	for s := from; s > 0; s = f.via[s] {
		m := f.moves[f.at(f.via[s], s)][0]
		many = min(many, f.x[m.from], f.most[m.to]-f.x[m.to])
		f.path = append(f.path, m)
	}
	if many <= 0 {
		panic("allot: the best path is full, a queue keeps moves that are closed")
	}
	f.spare[from] -= many
	for _, m := range f.path {
		f.shift(int(m.from), int(m.to), many)
	}
	f.refresh(from)
	return true
}

func (f *flow) at(free, taken int) int { return free*len(f.left) + taken }

// reckon finds what one more of every supply would gain, by the best paths
// that end where nothing is set free or what is set free stays unused. No
// cycle gains, so shortening paths ends.
func (f *flow) reckon() {
	n := len(f.left)
	for s := 1; s < n; s++ {
		f.more[s], f.via[s], f.ahead[s] = max(0, f.top[s]), -1, true
		if f.top[s] > 0 {
			f.via[s] = 0
		}
	}
	for changed, passes := true, 0; changed; passes++ {
		if passes > n {
			panic("allot: a cycle of supplies gains, the flow was not the best")
		}
		changed = false
		for free := 1; free < n; free++ {
			if f.ahead[free] {
				f.ahead[free] = false
				changed = f.through(free) || changed
			}
		}
	}
}

// through looks at what other supplies gain by paths whose next step sets this
// one free, and says whether any is better than what is known.
func (f *flow) through(free int) (better bool) {
	n := len(f.left)
	row, base := f.top[free*n:free*n+n], f.more[free]
	for s, gain := range row {
		if gain+base > f.more[s] && s > 0 {
			f.more[s], f.via[s], f.ahead[s], better = gain+base, free, true, true
		}
	}
	f.work += n / 8
	return better
}

// shift moves subjects of a class from one arc to another, and tells the
// queues which moves are open by that.
func (f *flow) shift(from, to, many int) {
	f.x[from] -= many
	f.x[to] += many
	k := f.classes[f.arcs[to].class]
	fresh, reopened := f.x[to] == many, f.x[from]+many == f.most[from]
	for i := k.first; i < k.last; i++ {
		if fresh && f.x[i] < f.most[i] {
			f.push(to, i)
		}
		if reopened && f.x[i] > 0 && !(fresh && i == to) {
			f.push(i, from)
		}
	}
}

func (f *flow) push(from, to int) {
	if from != to && f.worthwhile(from, to) {
		f.moves[f.at(f.arcs[from].supply, f.arcs[to].supply)].push(f.moveOf(from, to))
	}
}

// refresh looks up the best moves again that touch the supplies of a path.
func (f *flow) refresh(from int) {
	n := len(f.left)
	for s := from; s >= 0; s = f.via[s] {
		for o := range n {
			f.top[f.at(s, o)], f.top[f.at(o, s)] = f.best(f.at(s, o)), f.best(f.at(o, s))
		}
		if s == 0 {
			return
		}
	}
}

// best is the gain of the best move of a queue that is still open.
func (f *flow) best(i int) float64 {
	q := &f.moves[i]
	for len(*q) > 0 {
		m := (*q)[0]
		if f.x[m.from] > 0 && f.x[m.to] < f.most[m.to] {
			return m.gain
		}
		q.pop()
	}
	return math.Inf(-1)
}

// total is what the flow gains and how many minutes it takes.
func (f *flow) total() (gain, minutes float64) {
	for i, x := range f.x {
		gain += f.arcs[i].gain * float64(x)
		minutes += f.arcs[i].minutes * float64(x)
	}
	return gain, minutes
}
