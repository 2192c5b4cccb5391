package geofile_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/storage/geofile"
)

// A degree of latitude and of longitude in km by latitude, WGS 84, as geodesy tables
// print it (Snyder 1987, Map Projections, USGS Prof Paper 1395, from memory).
func TestTheLengthOfADegree(t *testing.T) {
	for lat, km := range map[float64][2]float64{
		0: {110.574, 111.320}, 15: {110.649, 107.550}, 30: {110.852, 96.486}, 45: {111.132, 78.847}, 60: {111.412, 55.800}, 75: {111.618, 28.902},
	} {
		const part = 0.01
		_, y := geofile.PlaneAt(geofile.Origin{Lat: lat, Lon: 10}).Metres(geofile.Origin{Lat: lat + part/2, Lon: 10})
		x, _ := geofile.PlaneAt(geofile.Origin{Lat: lat, Lon: 10}).Metres(geofile.Origin{Lat: lat, Lon: 10 + part/2})
		for what, c := range map[string][2]float64{"latitude": {2 * y, km[0]}, "longitude": {2 * x, km[1]}} {
			if math.Abs(c[0]-c[1]*1000*part) > 0.02 {
				t.Errorf("at %v° a degree of %s is %.3f km, want %v", lat, what, c[0]/1000/part, c[1])
			}
		}
	}
}

// How far off the plane is: against the length of the meridian, summed up from its
// curvature, and of the equator.
func TestTheErrorOfThePlane(t *testing.T) {
	const a, e2, r = 6378137, 0.00669437999014, 6371000
	for _, lat := range []float64{0, 37, 50, 71} {
		for _, degrees := range []float64{0.01, 0.1, 1} {
			var arc float64
			const steps = 100_000
			for k := range steps {
				sin := math.Sin((lat + degrees*(float64(k)+0.5)/steps) * math.Pi / 180)
				arc += a * (1 - e2) / math.Pow(1-e2*sin*sin, 1.5) * degrees / steps * math.Pi / 180
			}
			x, y := geofile.PlaneAt(geofile.Origin{Lat: lat, Lon: 7}).Metres(geofile.Origin{Lat: lat + degrees, Lon: 7})
			if off, most := math.Abs(y-arc), arc*arc*arc/(6*r*r)*1.02+1e-4*degrees; math.Abs(x) > 1e-6 || off > most {
				t.Errorf("%v° north of %v°: %.6f m off %.3f, want at most %.6f", degrees, lat, off, arc, most)
			}
		}
	}
	x, _ := geofile.PlaneAt(geofile.Origin{}).Metres(geofile.Origin{Lon: 0.1})
	if arc := a * 0.1 * math.Pi / 180; math.Abs(x-arc) > 0.006 {
		t.Errorf("along the equator %.4f m, want %.4f", x, arc)
	}
}

// There and back is the same place to a thousandth of a millimetre, at the poles and
// on the date line too.
func TestThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := geofile.Origin{
			Lat: rapid.OneOf(rapid.Float64Range(-90, 90), rapid.SampledFrom([]float64{-90, 90, 0, 89.9999})).Draw(t, "lat"),
			Lon: rapid.OneOf(rapid.Float64Range(-180, 180), rapid.SampledFrom([]float64{-180, 180, 179.9999})).Draw(t, "lon"),
		}
		x, y := rapid.Float64Range(-5000, 5000).Draw(t, "x"), rapid.Float64Range(-5000, 5000).Draw(t, "y")
		p := geofile.PlaneAt(o)
		at := p.Degrees(x, y)
		if math.Abs(at.Lat) > 90 || math.Abs(at.Lon) > 180 {
			t.Fatalf("%v is no place", at)
		}
		if gx, gy := p.Metres(at); math.Hypot(gx-x, gy-y) > 1e-6 {
			t.Fatalf("%v, %v comes back as %v, %v", x, y, gx, gy)
		}
	})
}
