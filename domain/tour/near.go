package tour

import (
	"cmp"
	"math"
	"slices"
)

// squares are points by squares of a size at which each holds about two.
type squares struct {
	at   []Point
	low  Point
	side float64
	wide int
	tall int
	in   [][]int32
}

func newSquares(at []Point) *squares {
	low, high := at[0], at[0]
	for _, p := range at {
		low = Point{min(low.X, p.X), min(low.Y, p.Y)}
		high = Point{max(high.X, p.X), max(high.Y, p.Y)}
	}
	const a = 2.0 // points a square
	w, h := high.X-low.X, high.Y-low.Y
	side := max(math.Sqrt(w*h*a/float64(len(at))), max(w, h)*a/float64(len(at)))
	if !(side > 0) || math.IsInf(side, 0) {
		side = 1
	}
	s := &squares{at: at, low: low, side: side, wide: int(w/side) + 1, tall: int(h/side) + 1}
	s.in = make([][]int32, s.wide*s.tall)
	for i, p := range at {
		x, y := s.of(p)
		s.in[y*s.wide+x] = append(s.in[y*s.wide+x], int32(i))
	}
	return s
}

func (s *squares) of(p Point) (x, y int) {
	return min(int((p.X-s.low.X)/s.side), s.wide-1), min(int((p.Y-s.low.Y)/s.side), s.tall-1)
}

// ring calls for the points of the squares that are r away from that of a point.
func (s *squares) ring(p Point, r int, yield func(i int32)) {
	x, y := s.of(p)
	for yy := max(y-r, 0); yy <= min(y+r, s.tall-1); yy++ {
		step := 1
		if yy != y-r && yy != y+r {
			step = max(2*r, 1)
		}
		for xx := x - r; xx <= x+r; xx += step {
			if xx >= 0 && xx < s.wide {
				for _, i := range s.in[yy*s.wide+xx] {
					yield(i)
				}
			}
		}
	}
}

// reach is the ring to which all lies that is nearer than the far corner of another.
func reach(r int) int { return int(math.Ceil(float64(r+1) * math.Sqrt2)) }

// nearest are the k other points nearest to each, the nearest first, by the
// caller's distance among those near in the plane.
func nearest(at []Point, k int, distance func(i, j int) float64) [][]int32 {
	s := newSquares(at)
	out := make([][]int32, len(at))
	all := make([]int32, 0, 8*k)
	for i := range at {
		all = all[:0]
		for r, enough := 0, -1; (enough < 0 || r <= enough) && r <= max(s.wide, s.tall); r++ {
			s.ring(at[i], r, func(j int32) {
				if int(j) != i {
					all = append(all, j)
				}
			})
			if enough < 0 && len(all) >= k {
				enough = reach(r)
			}
		}
		slices.SortFunc(all, func(a, b int32) int {
			return cmp.Or(cmp.Compare(distance(i, int(a)), distance(i, int(b))), cmp.Compare(a, b))
		})
		out[i] = slices.Clone(all[:min(k, len(all))])
	}
	return out
}

// greedy goes from a point always on to the nearest that is left.
func greedy(at []Point, from int, near [][]int32, distance func(i, j int) float64) []int32 {
	left := newSquares(at)
	seen := make([]bool, len(at))
	order := make([]int32, 0, len(at))
	for i := int32(from); i >= 0; i = left.next(i, near, seen, distance) {
		seen[i] = true
		order = append(order, i)
	}
	return order
}

// next is the nearest point not seen, first among the neighbours, else by rings;
// -1 when all are seen. Squares forget the points seen on the way.
func (s *squares) next(i int32, near [][]int32, seen []bool, distance func(i, j int) float64) int32 {
	for _, j := range near[i] {
		if !seen[j] {
			return j
		}
	}
	best, least := int32(-1), math.Inf(1)
	for r, enough := 0, -1; (enough < 0 || r <= enough) && r <= max(s.wide, s.tall); r++ {
		s.ring(s.at[i], r, func(j int32) {
			if d := distance(int(i), int(j)); !seen[j] && d < least {
				best, least = j, d
			}
		})
		if enough < 0 && best >= 0 {
			enough = reach(r)
		}
	}
	return best
}
