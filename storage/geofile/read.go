package geofile

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"

	"lidmark/domain/book"
)

// Limits of what is read.
const (
	MostBytes     = 20 << 20 // of a file
	mostPositions = 500_000  // of a file
	mostOfLine    = 2_000    // points of a line
	mostFeatures  = 5_000
)

// Options say how a file is meant.
type Options struct {
	Origin Origin           // of the yard
	Lines  book.FeatureKind // of lines and outlines that do not say what they are
	Points book.FeatureKind // of points that do not
	Stands bool             // points that do not are stands
	Swap   bool             // latitude and longitude stand in each other's place
	Far    bool             // it may lie far from the yard
}

// Found is what a file has for a yard: without yard, and without an id where the file
// has none of the book. Notes are what a keeper should know of the reading.
type Found struct {
	Sheet
	Notes []string
}

// FarError says that a file lies far from the yard: it may be of another, or have
// latitude and longitude in each other's place.
type FarError struct {
	Where     string
	Km        float64 // from the yard
	SwappedKm float64 // from the yard when both are changed over
}

// Swapped tells whether it lies near the yard with latitude and longitude changed
// over.
func (e *FarError) Swapped() bool { return e.SwappedKm <= farFrom }

// May tells whether it may lie so far when the keeper says so, see [Options].
func (e *FarError) May() bool { return e.Km <= farthest }

// Error asks what is meant.
func (e *FarError) Error() string {
	switch lies := fmt.Sprintf("%s lies %.0f km from the yard", e.Where, e.Km); {
	case e.Swapped():
		return fmt.Sprintf("%s, and %.1f km with latitude and longitude changed over: change them over, or choose the right yard", lies, e.SwappedKm)
	case e.May():
		return lies + ": choose the right yard, or say that it may be far"
	default:
		return lies + ": choose the right yard"
	}
}

// farFrom and farthest are km from the yard: what is asked about, what is refused.
const (
	farFrom  = 5
	farthest = 100
)

// reader gathers what a file has.
type reader struct {
	Options
	plane Plane
	count int
	items []item
	notes []string
}

// item is one thing of a file.
type item struct {
	properties
	where  string
	id     string
	line   []Origin
	ring   bool
	walked bool // recorded on foot, so with more points than corners
}

// Read reads GeoJSON or GPX, whichever the content is, of at most [MostBytes]. An
// error names the file and the place in it. A *[FarError] asks about what lies far
// from the yard.
func Read(name string, in io.Reader, o Options) (Found, error) {
	content, err := io.ReadAll(io.LimitReader(in, MostBytes+1))
	switch {
	case err != nil:
		err = fmt.Errorf("it cannot be read (%w): check that its disk is there", err)
	case len(content) > MostBytes:
		err = fmt.Errorf("it is larger than %d MB: save the yard's ground alone", MostBytes>>20)
	}
	var found Found
	if err == nil {
		found, err = read(bytes.TrimSpace(bytes.TrimPrefix(content, []byte("\xEF\xBB\xBF"))), o)
	}
	if err != nil {
		return Found{}, fmt.Errorf("%s: %w", name, err)
	}
	return found, nil
}

func read(content []byte, o Options) (Found, error) {
	r := reader{Options: o}
	var origin *Origin
	var err error
	switch {
	case bytes.HasPrefix(content, []byte("{")):
		origin, err = r.geoJSON(content)
	case bytes.HasPrefix(content, []byte("<")):
		err = r.gpx(content)
	default:
		err = errors.New("it is neither GeoJSON nor GPX: choose another file")
	}
	switch {
	case err != nil:
		return Found{}, err
	case len(r.items) > mostFeatures:
		return Found{}, fmt.Errorf("it has %d things drawn, more than %d: save the yard's ground alone", len(r.items), mostFeatures)
	}
	r.plane = PlaneAt(o.Origin)
	if origin != nil { // only they say how things lie to the yard
		if err := r.ask("the file", []Origin{*origin}); err != nil {
			return Found{}, err
		}
		r.plane = PlaneAt(*origin)
	}
	if err := r.near(); err != nil {
		return Found{}, err
	}
	return r.found()
}

// degrees checks a position.
func (r *reader) degrees(where string, lat, lon float64) (Origin, error) {
	if r.Swap {
		lat, lon = lon, lat
	}
	if !(math.Abs(lon) <= 180) {
		return Origin{}, fmt.Errorf("%s: longitude %g is not within -180 to 180: save the file in degrees (WGS 84)", where, lon)
	}
	if !(math.Abs(lat) <= 90) {
		return Origin{}, fmt.Errorf("%s: latitude %g is not within -90 to 90: save the file in degrees (WGS 84), longitude first", where, lat)
	}
	return Origin{Lat: lat, Lon: lon}, nil
}

func (r *reader) take(where string, it item, line []Origin, ring bool) {
	it.where, it.line, it.ring = where, line, ring
	r.items = append(r.items, it)
}

// near asks about the thing that lies far from the yard.
func (r *reader) near() error {
	for _, it := range r.items {
		if err := r.ask(it.where, it.line); err != nil {
			return err
		}
	}
	return nil
}

func (r *reader) ask(where string, line []Origin) error {
	for i, p := range line {
		km := r.plane.away(p) / 1000
		if km <= farFrom || km <= farthest && r.Far {
			continue
		}
		if len(line) > 1 {
			where = fmt.Sprintf("%s, point %d", where, i+1)
		}
		e := &FarError{Where: where, Km: km, SwappedKm: math.Inf(1)}
		if math.Abs(p.Lon) <= 90 {
			e.SwappedKm = r.plane.away(Origin{Lat: p.Lon, Lon: p.Lat}) / 1000
		}
		return e
	}
	return nil
}
