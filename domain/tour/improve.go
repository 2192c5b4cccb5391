package tour

import "math/rand/v2"

const (
	neighbours  = 10     // of a point that are looked at
	stretch     = 3      // points that are moved together, at most
	starts      = 2      // rounds that are begun, where there are few points
	fewUpTo     = 200    // points, to which that is few
	shakes      = 10     // for each point
	shakesMost  = 10_000 // in all
	shakeLength = 15     // points of a stretch that is shaken, at most
	least       = 1e-9   // share of a length that is worth a change
)

// improved is the shortest of a few rounds that begin elsewhere.
func improved(at []Point, distance func(i, j int) float64) []int {
	begun := 1
	if len(at) <= fewUpTo {
		begun, distance = starts, table(len(at), distance)
	}
	near := nearest(at, neighbours, distance)
	var best []int
	for k := range begun {
		s := newSearch(greedy(at, k*len(at)/begun, near, distance), near, distance)
		s.run(rand.New(rand.NewPCG(uint64(len(at)), uint64(k))))
		if order := s.round(); best == nil || Length(order, distance) < Length(best, distance) {
			best = order
		}
	}
	return best
}

// table has the distances of all pairs in hand.
func table(n int, distance func(i, j int) float64) func(i, j int) float64 {
	of := make([]float64, n*n)
	for i := range n {
		for j := range n {
			of[i*n+j] = distance(i, j)
		}
	}
	return func(i, j int) float64 { return of[i*n+j] }
}

// search makes a round shorter step by step.
type search struct {
	*path
	near     [][]int32
	distance func(i, j int) float64
	tiny     float64
	open     []int32 // points around which something changed
	waits    []bool  // the points in open
}

func newSearch(order []int32, near [][]int32, distance func(i, j int) float64) *search {
	s := &search{path: newPath(order), near: near, distance: distance, waits: make([]bool, len(order))}
	s.tiny = least * Length(s.round(), distance) / float64(len(order))
	return s
}

func (s *search) d(i, j int32) float64 { return s.distance(int(i), int(j)) }

// gain is how much shorter a move makes the round.
func (s *search) gain(m move) float64 {
	by := s.d(m.o, m.a) + s.d(m.e, m.q) + s.d(m.c, m.f) - s.d(m.o, m.q)
	if m.kept {
		return by - s.d(m.c, m.a) - s.d(m.e, m.f)
	}
	return by - s.d(m.c, m.e) - s.d(m.a, m.f)
}

func (s *search) round() []int {
	out := make([]int, len(s.order))
	for k, i := range s.order {
		out[k] = int(i)
	}
	return out
}

// run improves the round all over, then shakes it here and there: two stretches
// one after the other change places, what that opens is improved, and what is no
// shorter for it is taken back.
func (s *search) run(chance *rand.Rand) {
	s.look(s.order...)
	s.settle()
	s.keep()
	for range min(shakes*len(s.order), shakesMost) {
		if gain := s.shake(chance) + s.settle(); gain < 0 {
			s.undo()
		}
		s.keep()
	}
}

func (s *search) shake(chance *rand.Rand) float64 {
	n := len(s.order)
	most := min(shakeLength, n/3)
	k, first, second := chance.IntN(n), 1+chance.IntN(most), 1+chance.IntN(most)
	at := func(i int) int32 { return s.order[(k+i)%n] }
	m := move{o: at(0), a: at(1), e: at(first), q: at(first + 1), c: at(first + second), f: at(first + second + 1), kept: true}
	return s.make(m)
}

// make does a move and tells by how much the round is shorter.
func (s *search) make(m move) float64 {
	by := s.gain(m)
	s.do(m)
	s.look(m.o, m.a, m.e, m.q, m.c, m.f)
	return by
}

// look has the surroundings of points looked at.
func (s *search) look(points ...int32) {
	for _, i := range points {
		if !s.waits[i] {
			s.waits[i] = true
			s.open = append(s.open, i)
		}
	}
}

// settle improves until nothing more is found, and tells by how much.
func (s *search) settle() (gain float64) {
	for len(s.open) > 0 {
		i := s.open[len(s.open)-1]
		s.open = s.open[:len(s.open)-1]
		s.waits[i] = false
		for {
			by := s.improve(i)
			if by == 0 {
				break
			}
			gain += by
		}
	}
	return gain
}

// improve makes the round shorter at a point if it can, and tells by how much.
func (s *search) improve(a int32) float64 {
	for _, after := range [...]bool{true, false} {
		o := s.beside(a, !after)
		own := s.d(o, a)
		for _, c := range s.near[a] {
			if s.d(a, c) >= own-s.tiny {
				break
			}
			if by := s.turnAt(o, a, c, after); by > 0 {
				return by
			}
			if by := s.moveTo(o, a, c, after); by > 0 {
				return by
			}
		}
	}
	return 0
}

// turnAt is 2-opt: a goes to c, and what was before both to each other.
func (s *search) turnAt(o, a, c int32, after bool) float64 {
	f := s.beside(c, !after)
	by := s.d(o, a) + s.d(f, c) - s.d(a, c) - s.d(o, f)
	if by <= s.tiny {
		return 0
	}
	s.join(a, o, c, f)
	s.look(o, a, c, f)
	return by
}

// moveTo is Or-opt: a stretch that begins with a goes beside c.
func (s *search) moveTo(o, a, c int32, after bool) float64 {
	e := a
	for range stretch {
		q := s.beside(e, after)
		if c == e || q == o {
			return 0
		}
		tries := [...]move{
			{o, a, e, q, c, s.beside(c, after), true},
			{o, a, e, q, s.beside(c, !after), c, false},
		}
		for _, m := range tries {
			if m.c != o && m.f != q && s.gain(m) > s.tiny {
				return s.make(m)
			}
		}
		e = q
	}
	return 0
}
