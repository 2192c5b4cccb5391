package yard

import (
	"math"

	"github.com/paulmach/orb"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// field is the ground in squares on which somebody with a load can walk or not.
type field struct {
	low        book.Point
	wide, tall int
	blocked    []bool
	walked     []bool
}

const (
	square      = 0.2       // m
	margin      = 3.0       // m around all that stands there, to walk round it
	squaresMost = 6_000_000 // a ground of 240,000 m²
)

// unreached are the doors of nucs to which nobody can walk from the vehicle spot, or
// from the edge of the ground where none is drawn: boxes, hedges, walls, water and
// dwellings are in the way. A ground too wide to go through is not judged.
func unreached(doors []Door, g *Ground, n practice.Numbers) (all []int) {
	f := fieldOf(doors, g)
	if f == nil {
		return nil
	}
	person := n.Get(practice.WalkwayLeast) / 2
	for i := range doors {
		f.stamp(doors[i].At, n.Get(practice.BoxWide)/2+person)
	}
	for _, s := range g.shapes(book.Hedge, book.Wall, book.Water, book.Dwelling) {
		f.block(&s, person)
	}
	f.walk(g.VehicleSpot())
	for i := range doors {
		if !doors[i].Colony && !f.reaches(doors[i].At, n.Get(practice.WorkedFrom)) {
			all = append(all, i)
		}
	}
	return all
}

func fieldOf(doors []Door, g *Ground) *field {
	var b orb.MultiPoint
	for i := range doors {
		b = append(b, of(doors[i].At))
	}
	if at, ok := g.VehicleSpot(); ok {
		b = append(b, of(at))
	}
	if len(b) == 0 {
		return nil
	}
	around := b.Bound().Pad(margin)
	w, h := (around.Right()-around.Left())/square+1, (around.Top()-around.Bottom())/square+1
	if !(w*h <= squaresMost) {
		return nil
	}
	f := &field{low: book.Point{X: around.Left(), Y: around.Bottom()}, wide: int(w), tall: int(h)}
	f.blocked, f.walked = make([]bool, f.wide*f.tall), make([]bool, f.wide*f.tall)
	return f
}

// each calls for the squares whose middle is no further than r from a point.
func (f *field) each(p book.Point, r float64, yield func(at int)) {
	x, y := (p.X-f.low.X)/square, (p.Y-f.low.Y)/square
	k := r / square
	if !(math.Abs(x)+math.Abs(y) < 2*squaresMost) {
		return
	}
	for j := max(0, int(y-k)); j < min(f.tall, int(y+k)+2); j++ {
		for i := max(0, int(x-k)); i < min(f.wide, int(x+k)+2); i++ {
			if math.Hypot(float64(i)-x, float64(j)-y) <= k {
				yield(j*f.wide + i)
			}
		}
	}
}

func (f *field) stamp(p book.Point, r float64) {
	f.each(p, r, func(at int) { f.blocked[at] = true })
}

// block is a feature in the way: its line, and so what is within an outline. What
// lies off the field is passed over.
func (f *field) block(s *shape, person float64) {
	r := s.half + person
	high := book.Point{X: f.low.X + float64(f.wide)*square, Y: f.low.Y + float64(f.tall)*square}
	around := orb.MultiPoint{of(f.low), of(high)}.Bound().Pad(r)
	for i := 1; i < len(s.line); i++ {
		a, b := s.line[i-1], s.line[i]
		if !around.Intersects(orb.LineString{a, b}.Bound()) {
			continue
		}
		steps := min(math.Ceil(math.Hypot(b[0]-a[0], b[1]-a[1])/square), squaresMost)
		for k := 0.0; k <= steps; k++ {
			t := k / max(steps, 1)
			f.stamp(book.Point{X: a[0] + t*(b[0]-a[0]), Y: a[1] + t*(b[1]-a[1])}, r)
		}
	}
}

// walk goes from the vehicle spot, or from the edge, to all free squares.
func (f *field) walk(from book.Point, known bool) {
	var open []int
	begin := func(at int) {
		if !f.blocked[at] && !f.walked[at] {
			f.walked[at] = true
			open = append(open, at)
		}
	}
	if known {
		f.each(from, margin/2, begin)
	} else {
		f.edge(begin)
	}
	for len(open) > 0 {
		at := open[len(open)-1]
		open = open[:len(open)-1]
		if at%f.wide > 0 {
			begin(at - 1)
		}
		if at%f.wide < f.wide-1 {
			begin(at + 1)
		}
		if at >= f.wide {
			begin(at - f.wide)
		}
		if at+f.wide < len(f.blocked) {
			begin(at + f.wide)
		}
	}
}

func (f *field) edge(yield func(at int)) {
	for i := range f.wide {
		yield(i)
		yield((f.tall-1)*f.wide + i)
	}
	for j := range f.tall {
		yield(j * f.wide)
		yield(j*f.wide + f.wide - 1)
	}
}

func (f *field) reaches(p book.Point, r float64) (ok bool) {
	f.each(p, r, func(at int) { ok = ok || f.walked[at] })
	return ok
}
