package geofile

import "math"

// Origin is where the origin of a yard lies on Earth, in degrees (WGS 84), north and
// east positive.
type Origin struct{ Lat, Lon float64 }

// Plane is the plane that touches the Earth (WGS 84) at an origin: X east, Y north in
// metres. What lies d metres away is drawn d³/(6·R²) nearer, R being 6,371 km: a
// twentieth of a millimetre at 2 km, 4 mm at 10 km, 4 m at 100 km. It holds at the
// poles and across the date line.
type Plane struct {
	at               [3]float64 // of the origin, from the middle of the Earth
	east, north, out [3]float64
}

// The ellipsoid of WGS 84 (NGA.STND.0036): half its longer axis in metres, and the
// square of its eccentricity.
const (
	equator    = 6378137.0
	flattening = 1 / 298.257223563
	squashed   = flattening * (2 - flattening)
)

// PlaneAt is the plane at an origin.
func PlaneAt(o Origin) Plane {
	sinLat, cosLat := math.Sincos(o.Lat * math.Pi / 180)
	sinLon, cosLon := math.Sincos(o.Lon * math.Pi / 180)
	return Plane{
		at:    onEarth(o),
		east:  [3]float64{-sinLon, cosLon, 0},
		north: [3]float64{-sinLat * cosLon, -sinLat * sinLon, cosLat},
		out:   [3]float64{cosLat * cosLon, cosLat * sinLon, sinLat},
	}
}

func onEarth(o Origin) [3]float64 {
	sinLat, cosLat := math.Sincos(o.Lat * math.Pi / 180)
	sinLon, cosLon := math.Sincos(o.Lon * math.Pi / 180)
	n := equator / math.Sqrt(1-squashed*sinLat*sinLat)
	return [3]float64{n * cosLat * cosLon, n * cosLat * sinLon, n * (1 - squashed) * sinLat}
}

// Metres is a place on Earth in the plane.
func (p Plane) Metres(o Origin) (x, y float64) {
	e := onEarth(o)
	d := [3]float64{e[0] - p.at[0], e[1] - p.at[1], e[2] - p.at[2]}
	return dot(d, p.east), dot(d, p.north)
}

// Degrees is the place on Earth under a point of the plane, for points up to some
// thousand kilometres away.
func (p Plane) Degrees(x, y float64) Origin {
	var q [3]float64
	for i := range q {
		q[i] = p.at[i] + x*p.east[i] + y*p.north[i]
	}
	// How far down it is to the ellipsoid is a root of a·u² + 2b·u + c.
	scale := [3]float64{1, 1, 1 / (1 - squashed)}
	var a, b, c float64
	for i := range q {
		a += scale[i] * p.out[i] * p.out[i]
		b += scale[i] * p.out[i] * q[i]
		c += scale[i] * q[i] * q[i]
	}
	c -= equator * equator
	u := -c / (b + math.Sqrt(max(b*b-a*c, 0)))
	for i := range q {
		q[i] += u * p.out[i]
	}
	across := math.Hypot(q[0], q[1])
	lat := math.Atan2(q[2], across*(1-squashed))
	return Origin{Lat: lat * 180 / math.Pi, Lon: math.Atan2(q[1], q[0]) * 180 / math.Pi}
}

// away is how far a place on Earth is, in a straight line, in metres.
func (p Plane) away(o Origin) float64 {
	e := onEarth(o)
	return math.Hypot(math.Hypot(e[0]-p.at[0], e[1]-p.at[1]), e[2]-p.at[2])
}

func dot(a, b [3]float64) float64 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }
