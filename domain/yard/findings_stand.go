package yard

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

func (j *judge) stand(i int) {
	s := &j.layout.Stands[i]
	find := func(fault Fault, other string, figure float64, key practice.Key) {
		j.add(Finding{Fault: fault, Stand: s.ID, Name: s.Letter, Other: other, At: s.At, Figure: figure}, key)
	}
	j.taken(i, find)
	j.strong(s, find)
	j.bounds(s, find)
	j.services(s, find)
	if j.lies(j.places(s), book.ColdHollow, 0) {
		find(InHollow, "", 0, 0)
	}
	if j.light.Noon(s.At) {
		find(SunAtNoon, "", 0, 0)
	}
	if h := j.light.Morning(s.At); h < j.numbers.Get(practice.MorningSunLeast) {
		find(NoMorningSun, "", h, practice.MorningSunLeast)
	}
}

type finds func(fault Fault, other string, figure float64, key practice.Key)

func (j *judge) strong(s *Stand, find finds) {
	key := practice.StrongApart
	if j.ground.Dearth {
		key = practice.StrongApartDearth
	}
	name, near := "", j.numbers.Get(key)
	for _, c := range j.layout.Colonies {
		if d := distance(s.At, c.At); d < near {
			name, near = c.Name, d
		}
	}
	if near < j.numbers.Get(key) {
		find(NearStrong, name, near, key)
	}
}

// within is how far the nearest feature of a kind is in metres, 0 within one, below
// 0 where none is drawn.
func (j *judge) within(s *Stand, k book.FeatureKind) float64 {
	near := -1.0
	for _, f := range j.ground.shapes(k) {
		if d := f.away(of(s.At)); near < 0 || d < near {
			near = d
		}
	}
	return near
}

// bounds are the setbacks and the boundary itself.
func (j *judge) bounds(s *Stand, find finds) {
	for _, b := range []struct {
		what  book.FeatureKind
		fault Fault
		name  string
		key   practice.Key
	}{{book.Dwelling, NearDwelling, "a dwelling", practice.SetbackDwelling}, {book.Track, NearTrack, "a track", practice.SetbackTrack}} {
		if d := j.within(s, b.what); d >= 0 && d < j.numbers.Get(b.key) {
			find(b.fault, b.name, d, b.key)
		}
	}
	drawn, edge := false, 0.0
	for _, f := range j.ground.shapes(book.Boundary) {
		if d := f.edge(of(s.At)); !drawn || d < edge {
			edge = d
		}
		drawn = true
	}
	switch beyond, is := j.outside(s); {
	case is:
		find(OutsideBounds, "", beyond, 0)
	case drawn && edge < j.numbers.Get(practice.SetbackBoundary):
		find(NearBoundary, "", edge, practice.SetbackBoundary)
	}
}

// services are water and the vehicle.
func (j *judge) services(s *Stand, find finds) {
	const metres = 1000
	if d := j.within(s, book.Water) / metres; d > j.numbers.Get(practice.WaterWithin) {
		find(FarFromWater, "", d, practice.WaterWithin)
	}
	if d := j.within(s, book.VehicleSpot); d > j.numbers.Get(practice.VehicleWithin) {
		find(FarFromVehicle, "", d, practice.VehicleWithin)
	}
}

// reach tells of each nuc to which nobody can walk.
func (j *judge) reach() {
	for _, i := range unreached(j.doors, j.ground, j.numbers) {
		j.add(j.nuc(i, OutOfReach, "", 0), practice.WalkwayLeast)
	}
}
