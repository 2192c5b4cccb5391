package yard

import (
	"cmp"
	"math"
	"slices"

	"lidmark/domain/book"
)

// Pick is the stands of a layout that are worked at.
type Pick []book.StandID

func (p Pick) has(id book.StandID) bool { return slices.Contains(p, id) }

// each is a copy of the layout with what is done to the picked stands that are not
// fixed.
func (l Layout) each(p Pick, do func(*Stand)) Layout {
	l = l.Clone()
	for i := range l.Stands {
		if s := &l.Stands[i]; p.has(s.ID) && !s.Fixed {
			do(s)
		}
	}
	return l
}

// Moved is the layout with the picked stands carried by metres to the east and
// north.
func (l Layout) Moved(p Pick, east, north float64) Layout {
	return l.each(p, func(s *Stand) { s.At = book.Point{X: s.At.X + east, Y: s.At.Y + north} })
}

// Snapped is the layout with the picked stands on the nearest crossing of a grid of
// so many metres; none where the step is not above 0.
func (l Layout) Snapped(p Pick, step float64) Layout {
	if !(step > 0) {
		return l
	}
	on := func(x float64) float64 { return math.Round(x/step) * step }
	return l.each(p, func(s *Stand) { s.At = book.Point{X: on(s.At.X), Y: on(s.At.Y)} })
}

// Turned is the layout with each picked stand turned where it stands, in degrees
// clockwise.
func (l Layout) Turned(p Pick, degrees float64) Layout {
	return l.each(p, func(s *Stand) { s.Turn = compass(s.Turn + degrees) })
}

// Faced is the layout with each picked stand turned to a bearing.
func (l Layout) Faced(p Pick, bearing float64) Layout {
	return l.each(p, func(s *Stand) { s.Turn = compass(bearing) })
}

// compass is a bearing from 0 up to 360.
func compass(degrees float64) float64 {
	d := math.Mod(degrees, 360)
	if d < 0 {
		d += 360
	}
	if d >= 360 {
		return 0 // a hair below north rounds up to it
	}
	return d
}

// Swung is the layout with the picked stands turned together about their middle.
func (l Layout) Swung(p Pick, degrees float64) Layout {
	mid, n := l.middle(p)
	if n == 0 {
		return l
	}
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return l.each(p, func(s *Stand) {
		x, y := s.At.X-mid.X, s.At.Y-mid.Y
		s.At = book.Point{X: mid.X + x*cos + y*sin, Y: mid.Y - x*sin + y*cos}
		s.Turn = compass(s.Turn + degrees)
	})
}

// middle is the middle of the picked stands that can be moved, and how many they
// are.
func (l Layout) middle(p Pick) (mid book.Point, n int) {
	for _, s := range l.picked(p) {
		mid.X, mid.Y, n = mid.X+s.At.X, mid.Y+s.At.Y, n+1
	}
	return book.Point{X: mid.X / float64(max(n, 1)), Y: mid.Y / float64(max(n, 1))}, n
}

// picked are the picked stands that can be moved.
func (l Layout) picked(p Pick) (all []Stand) {
	for _, s := range l.Stands {
		if p.has(s.ID) && !s.Fixed {
			all = append(all, s)
		}
	}
	return all
}

// Lined is the layout with the picked stands on the straight line through the two
// that are furthest apart, each at the place of it that is nearest.
func (l Layout) Lined(p Pick) Layout {
	a, b, ok := l.Ends(p)
	if !ok {
		return l
	}
	dx, dy := b.X-a.X, b.Y-a.Y
	long := dx*dx + dy*dy
	return l.each(p, func(s *Stand) {
		t := ((s.At.X-a.X)*dx + (s.At.Y-a.Y)*dy) / long
		s.At = book.Point{X: a.X + t*dx, Y: a.Y + t*dy}
	})
}

// Ends are the two picked stands that are furthest apart, the western one first; ok is
// false where no two stand apart.
func (l Layout) Ends(p Pick) (a, b book.Point, ok bool) {
	all := l.picked(p)
	far := 0.0
	for i := range all {
		for _, o := range all[i+1:] {
			if d := distance(all[i].At, o.At); d > far {
				a, b, far = all[i].At, o.At, d
			}
		}
	}
	if cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y)) > 0 {
		a, b = b, a
	}
	return a, b, far > 0
}

// Spread is the layout with the picked stands evenly on the straight line between
// the two that are furthest apart, in the order in which they stand along it.
func (l Layout) Spread(p Pick) Layout {
	a, b, ok := l.Ends(p)
	if !ok {
		return l
	}
	at := l.along(p, a, b)
	last := float64(len(at) - 1)
	return l.each(p, func(s *Stand) {
		t := float64(slices.Index(at, s.ID)) / last
		s.At = book.Point{X: a.X + t*(b.X-a.X), Y: a.Y + t*(b.Y-a.Y)}
	})
}

// along are the picked stands in the order in which they stand from a to b.
func (l Layout) along(p Pick, a, b book.Point) (ids []book.StandID) {
	all := l.picked(p)
	far := func(s Stand) float64 { return (s.At.X-a.X)*(b.X-a.X) + (s.At.Y-a.Y)*(b.Y-a.Y) }
	slices.SortStableFunc(all, func(x, y Stand) int { return cmp.Compare(far(x), far(y)) })
	for _, s := range all {
		ids = append(ids, s.ID)
	}
	return ids
}

// Arced is the layout with the picked stands evenly on an arc between the two that
// are furthest apart, whose middle is so many metres to the right of the way from
// the western end to the eastern one; to the left where that is below 0. Each faces
// away from the middle of the arc's circle.
func (l Layout) Arced(p Pick, bow float64) Layout {
	a, b, ok := l.Ends(p)
	if !ok || bow == 0 {
		return l.Spread(p)
	}
	at := l.along(p, a, b)
	chord := distance(a, b)
	r := (chord*chord/4 + bow*bow) / (2 * bow) // signed: to the side of the bow
	right := book.Point{X: (b.Y - a.Y) / chord, Y: -(b.X - a.X) / chord}
	mid := book.Point{X: (a.X+b.X)/2 + right.X*(bow-r), Y: (a.Y+b.Y)/2 + right.Y*(bow-r)}
	from := math.Atan2(a.Y-mid.Y, a.X-mid.X)
	sweep := math.Atan2(b.Y-mid.Y, b.X-mid.X) - from
	// the arc runs through the bow, on the side away from the chord
	if side := math.Copysign(1, bow); sweep*side < 0 {
		sweep += side * 2 * math.Pi
	}
	return l.each(p, func(s *Stand) {
		angle := from + sweep*float64(slices.Index(at, s.ID))/float64(len(at)-1)
		s.At = book.Point{X: mid.X + math.Abs(r)*math.Cos(angle), Y: mid.Y + math.Abs(r)*math.Sin(angle)}
		s.Turn = compass(math.Atan2(s.At.X-mid.X, s.At.Y-mid.Y) * 180 / math.Pi)
	})
}

// Painted is the layout with a mark on the fronts of nucs.
func (l Layout) Painted(nucs []book.NucID, m Mark) Layout {
	l = l.Clone()
	for _, id := range nucs {
		if n := l.nuc(id); n != nil {
			n.Mark = m
		}
	}
	return l
}

// Held is the layout with the picked stands fixed where they are, or free.
func (l Layout) Held(p Pick, fixed bool) Layout {
	l = l.Clone()
	for i := range l.Stands {
		if s := &l.Stands[i]; p.has(s.ID) {
			s.Fixed = fixed
		}
	}
	return l
}

// Doubled is the layout with a stand more for each picked one: like it, without its
// nucs, so many metres to the east and north of it, with an id and a letter as given
// in turn.
func (l Layout) Doubled(p Pick, east, north float64, name func() (book.StandID, string)) Layout {
	more := l.picked(p)
	l = l.Clone()
	for _, s := range more {
		s.Nucs = nil
		s.ID, s.Letter = name()
		s.At = book.Point{X: s.At.X + east, Y: s.At.Y + north}
		l.Stands = append(l.Stands, s)
	}
	return l
}
