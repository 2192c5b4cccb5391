package geofile_test

import (
	"bytes"
	"errors"
	"flag"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/storage/geofile"
)

var update = flag.Bool("update", false, "write the golden file anew")

// hill is where the yard of the test files lies.
var hill = geofile.Origin{Lat: 50.1, Lon: 8.2}

func drawn(name string, what book.FeatureKind, height, width float64, xy ...float64) book.FeatureDrawn {
	f := book.FeatureDrawn{Feature: booktest.Feature(name), What: what, Height: height, Width: width, Label: name}
	for i := 0; i+1 < len(xy); i += 2 {
		f.Points = append(f.Points, book.Point{X: xy[i], Y: xy[i+1]})
	}
	return f
}

func sample() geofile.Sheet {
	return geofile.Sheet{
		Features: []book.FeatureDrawn{
			drawn("edge", book.Boundary, 0, 0, 0, 0, 40, 0, 40, 30, 0, 30, 0, 0),
			drawn("hazel", book.Hedge, 2, 1, 0, 29, 20, 28, 40, 29.5),
			drawn("plum", book.Tree, 5, 4, 12, 9),
		},
		Stands: []book.StandSet{{Stand: booktest.Stand("A"), Letter: "A", At: book.Point{X: 5, Y: 6}, Turn: 45, Places: 4, Round: "north row"}},
	}
}

func write(t interface{ Fatal(...any) }, s geofile.Sheet, o geofile.Origin, p book.Positions) string {
	var b bytes.Buffer
	if err := geofile.Write(&b, s, o, p); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestGeoJSONReads(t *testing.T) {
	const file = "testdata/yard.geojson"
	got := write(t, sample(), hill, book.Exactly)
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(string(want), got); d != "" {
		t.Error(d)
	}
}

// within tells whether two sheets are the same to a millimetre and a half, rings
// whichever way round.
func within(a, b geofile.Sheet) bool {
	near := func(p, q book.Point) bool { return math.Hypot(p.X-q.X, p.Y-q.Y) < 0.0015 }
	return cmp.Equal(a, b, cmp.Comparer(near), cmp.Comparer(func(p, q []book.Point) bool {
		back := slices.Clone(q)
		slices.Reverse(back)
		return slices.EqualFunc(p, q, near) || slices.EqualFunc(p, back, near)
	}), cmp.Comparer(func(a, b book.FeatureID) bool { return a == b }), cmp.Comparer(func(a, b book.StandID) bool { return a == b }))
}

func TestWhatIsWrittenReadsBack(t *testing.T) {
	side := rapid.Float64Range(1, 900)
	rapid.Check(t, func(t *rapid.T) {
		o := geofile.Origin{
			Lat: rapid.OneOf(rapid.Float64Range(-90, 90), rapid.SampledFrom([]float64{90, -90})).Draw(t, "lat"),
			Lon: rapid.OneOf(rapid.Float64Range(-180, 180), rapid.SampledFrom([]float64{180, 179.9995})).Draw(t, "lon"),
		}
		x, y, w, h := side.Draw(t, "x")-450, side.Draw(t, "y")-450, side.Draw(t, "w"), side.Draw(t, "h")
		s := geofile.Sheet{
			Features: []book.FeatureDrawn{
				drawn("a", book.Boundary, 0, 0, x, y, x+w, y, x+w, y+h, x, y+h, x, y),
				drawn("b", book.Dwelling, h/10, 0, x, y, x, y+h, x+w, y, x, y),
				drawn("c", book.Hedge, 1, w/10, x, y, x+w, y, x, y+h),
				drawn("d", book.Tree, 9, 2, x, y),
			},
			Stands: []book.StandSet{{Stand: booktest.Stand("A"), Letter: "A", At: book.Point{X: x, Y: y}, Turn: w, Places: 4}},
		}
		for _, p := range []book.Positions{book.Exactly, book.Roughly} {
			got, err := geofile.Read("f", strings.NewReader(write(t, s, o, p)), geofile.Options{Origin: o})
			if err != nil || !within(got.Sheet, s) {
				t.Fatalf("%v: %v\n%s", p, err, cmp.Diff(s, got.Sheet))
			}
		}
	})
}

// Open or closed, this way or that way round, an outline is one; a line is not.
func TestTheSameFeature(t *testing.T) {
	edge := drawn("edge", book.Boundary, 0, 0, 0, 0, 40, 0, 40, 30)
	for name, c := range map[string]struct {
		a, b book.FeatureDrawn
		want bool
	}{
		"itself":       {edge, edge, true},
		"closed":       {edge, drawn("edge", book.Boundary, 0, 0, 0, 0, 40, 0, 40, 30, 0, 0), true},
		"turned":       {edge, drawn("edge", book.Boundary, 0, 0, 0, 0, 40, 30, 40.001, 0), true},
		"moved":        {edge, drawn("edge", book.Boundary, 0, 0, 0, 0, 40, 0, 40, 30.1), false},
		"taller":       {edge, drawn("edge", book.Boundary, 1, 0, 0, 0, 40, 0, 40, 30), false},
		"hedge":        {drawn("h", book.Hedge, 1, 1, 0, 0, 1, 1, 2, 0), drawn("h", book.Hedge, 1, 1, 0, 0, 2, 0, 1, 1), false},
		"hedge around": {drawn("h", book.Hedge, 1, 1, 0, 0, 1, 1, 2, 0), drawn("h", book.Hedge, 1, 1, 0, 0, 1, 1, 2, 0, 0, 0), false},
		"none":         {book.FeatureDrawn{}, book.FeatureDrawn{}, true},
	} {
		if got := geofile.SameFeature(c.a, c.b); got != c.want {
			t.Errorf("%s: the same %v, want %v", name, got, c.want)
		}
	}
}

// Coarse tells no position nearer than the grid allows, Without none at all.
func TestPositionsThatAreNotTold(t *testing.T) {
	o := geofile.Origin{Lat: 50.1043, Lon: 8.2031}
	coarse := write(t, sample(), o, book.Roughly)
	if strings.Contains(coarse, "50.1043") || strings.Contains(coarse, "8.2031") || !strings.Contains(coarse, "50.1,") && !strings.Contains(coarse, "50.1]") {
		t.Error(coarse)
	}
	moved := geofile.Origin{Lat: 50.1021, Lon: 8.2043}
	if other := write(t, sample(), moved, book.Roughly); other != coarse {
		t.Error("two yards in one square of the grid are told apart")
	}
	without := write(t, sample(), o, book.Nowhere)
	if strings.Contains(without, "coordinates") || strings.Contains(without, "50.1") {
		t.Error(without)
	}
	got, err := geofile.Read("f", strings.NewReader(without), geofile.Options{Origin: o})
	if err != nil || len(got.Features)+len(got.Stands) != 0 || len(got.Notes) != 4 {
		t.Errorf("%v %+v", err, got)
	}
}

func open(t testing.TB, name string, o geofile.Options) (geofile.Found, error) {
	t.Helper()
	content, err := os.ReadFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return geofile.Read(name, bytes.NewReader(content), o)
}

// A walk round the ground crosses its own beginning: the ends are cut off. Waypoints
// are stands, one says that it is a tree.
func TestAWalkedBoundary(t *testing.T) {
	got, err := open(t, "walk.gpx", geofile.Options{Origin: hill, Lines: book.Boundary, Stands: true})
	if err != nil {
		t.Fatal(err)
	}
	if len(got.Features) != 2 || got.Features[0].What != book.Tree || got.Features[1].What != book.Boundary || got.Features[1].Label != "round the yard" {
		t.Fatalf("%+v", got.Features)
	}
	edge := got.Features[1].Points
	if len(edge) != 5 || edge[0] != edge[4] || len(got.Notes) != 1 {
		t.Errorf("%v %v", edge, got.Notes)
	}
	if len(got.Stands) != 2 || got.Stands[1].Letter != "B" || math.Abs(got.Stands[1].At.Y-22.2) > 0.1 || math.Abs(got.Stands[1].At.X) > 0.01 {
		t.Errorf("%+v", got.Stands)
	}
}

func collection(geometry string) string {
	return `{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"kind":"hedge"},"geometry":` + geometry + `}]}`
}

func TestWhatIsRefused(t *testing.T) {
	for _, c := range [][2]string{
		{"", "f: it is neither GeoJSON nor GPX: choose another file"},
		{"{\n\"type\": \"FeatureCollection\",\n\"features\": [", "f: line 3: it is no GeoJSON from here on (unexpected end of JSON input): save it again"},
		{`{"type":"FeatureCollection","features":{}}`, "it is no GeoJSON from here on"},
		{`{"type":"Topology"}`, `"Topology" is no geometry of GeoJSON`},
		{`{"type":"FeatureCollection","crs":{"properties":{"name":"urn:ogc:def:crs:EPSG::25832"}},"features":[]}`, "no degrees of WGS 84"},
		{collection(`{"type":"LineString","coordinates":[[8.2,50.1],[8.2]]}`), "f: feature 1, point 2: [8.2] is no position: write longitude and latitude in degrees"},
		{collection(`{"type":"LineString","coordinates":[[8.2,null],[8.2,50.1]]}`), "feature 1, point 1: [8.2,null] is no position"},
		{collection(`{"type":"LineString","coordinates":[[8.2,50.1]]}`), "feature 1: a line has two points or more, this one has 1"},
		{collection(`{"type":"LineString","coordinates":7}`), "feature 1: its coordinates are no list"},
		{collection(`{"type":"Point"}`), "feature 1, point 1:  is no position"},
		{collection(`{"type":"LineString","coordinates":[[459217,5547681],[459218,5547681]]}`), "feature 1, point 1: longitude 459217 is not within -180 to 180"},
		{collection(`{"type":"Point","coordinates":[8,91]}`), "latitude 91 is not within -90 to 90"},
		{collection(`{"type":"Polygon","coordinates":[[[8.2,50.1],[8.201,50.1],[8.201,50.101],[8.2,50.101]]]}`), "feature 1, ring 1: it is not closed"},
		{collection(`{"type":"Polygon","coordinates":[[[8.2,50.1],[8.201,50.1],[8.2,50.1]]]}`), "a ring has four points or more, this one has 3"},
		{collection(`{"type":"Polygon","coordinates":[]}`), "the outline has no ring"},
		{collection(`{"type":"Polygon","coordinates":[[[8.2,50.1],[8.201,50.101],[8.201,50.1],[8.2,50.101],[8.2,50.1]]]}`), "feature 1, ring 1: the outline crosses itself between points 1 and 3"},
		{strings.Replace(collection(`{"type":"Point","coordinates":[8.2,50.1]}`), "hedge", "moat", 1), `feature 1: feature "moat": use one of boundary, hedge`},
		{strings.Replace(collection(`{"type":"Point","coordinates":[8.2,50.1]}`), `"kind":"hedge"`, "", 1), "feature 1: nobody says what this point is"},
		{strings.Replace(collection(`{"type":"Point","coordinates":[8.2,50.1]}`), `"kind":"hedge"`, `"kind":"tree","height_m":"tall"`, 1), `feature 1: its height_m is "tall"`},
		{strings.Replace(collection(`{"type":"Point","coordinates":[8.2,50.1]}`), `"kind":"hedge"`, `"kind":"tree","height_m":-1`, 1), "height_m is -1, want 0 to 200"},
		{strings.Replace(collection(`{"type":"Point","coordinates":[8.2,50.1]}`), "hedge", "stand", 1), "the stand has no letter"},
		{strings.Repeat(`{"type":"GeometryCollection","geometries":[`, 6), "it is no GeoJSON"},
		{strings.Repeat(`{"type":"GeometryCollection","geometries":[`, 6) + strings.Repeat("]}", 6), "collections lie more than 4 deep"},
		{"<gpx>\n<wpt lat=\"1\"", "f: line 2: it is no GPX from here on"},
		{"<kml></kml>", "it is no GPX"},
		{"<gpx></gpx>", "it has neither waypoints nor tracks"},
		{`<gpx><trk><trkseg><trkpt lat="50.1" lon="8.2"/><trkpt lat="x" lon="8.2"/></trkseg></trk></gpx>`, `track 1, segment 1, point 2: lat="x" lon="8.2" are no degrees`},
		{`<gpx><wpt lat="NaN" lon="8.2"/></gpx>`, "latitude NaN is not within"},
		{strings.Repeat(" ", geofile.MostBytes+1), "it is larger than 20 MB"},
	} {
		_, err := geofile.Read("f", strings.NewReader(c[0]), geofile.Options{Origin: hill})
		if err == nil || !strings.Contains(err.Error(), c[1]) {
			t.Errorf("%.90s: %v, want %q", c[0], err, c[1])
		}
	}
}

func TestFarIsAskedAbout(t *testing.T) {
	swapped := collection(`{"type":"Point","coordinates":[50.1,8.2]}`)
	_, err := geofile.Read("f", strings.NewReader(swapped), geofile.Options{Origin: hill})
	var far *geofile.FarError
	if !errors.As(err, &far) || far.Km < 5000 || far.SwappedKm > 0.001 || !strings.Contains(err.Error(), "change them over") {
		t.Errorf("%v", err)
	}
	if _, err := geofile.Read("f", strings.NewReader(swapped), geofile.Options{Origin: hill, Swap: true}); err != nil {
		t.Error(err)
	}
	next := collection(`{"type":"Point","coordinates":[8.3,50.1]}`) // 7 km east
	if _, err := geofile.Read("f", strings.NewReader(next), geofile.Options{Origin: hill}); !errors.As(err, &far) || !strings.Contains(err.Error(), "choose the right yard, or") {
		t.Errorf("%v", err)
	}
	if _, err := geofile.Read("f", strings.NewReader(next), geofile.Options{Origin: hill, Far: true}); err != nil {
		t.Error(err)
	}
	coarse := write(t, sample(), geofile.Origin{Lat: 51, Lon: 8}, book.Roughly)
	if _, err := geofile.Read("f", strings.NewReader(coarse), geofile.Options{Origin: hill}); !errors.As(err, &far) {
		t.Errorf("a coarse file of another yard: %v", err)
	}
}

// What other programs write: parts, holes, heights, names, bare geometries.
func TestWhatOthersWrite(t *testing.T) {
	for name, c := range map[string]struct {
		text            string
		features, notes int
	}{
		"bare":    {`{"type":"LineString","coordinates":[[8.2,50.1,120.5],[8.2001,50.1,121]]}`, 1, 0},
		"feature": {`{"type":"Feature","id":7,"properties":null,"geometry":{"type":"Point","coordinates":[8.2,50.1]}}`, 1, 0},
		"parts":   {collection(`{"type":"MultiLineString","coordinates":[[[8.2,50.1],[8.2001,50.1]],[[8.2,50.1001],[8.2001,50.1001]]]}`), 2, 0},
		"points":  {collection(`{"type":"MultiPoint","coordinates":[[8.2,50.1],[8.2001,50.1]]}`), 2, 0},
		"holes":   {collection(`{"type":"MultiPolygon","coordinates":[[[[8.2,50.1],[8.201,50.1],[8.2,50.101],[8.2,50.1]],[[8.2,50.1],[8.201,50.1],[8.2,50.101],[8.2,50.1]]]]}`), 1, 1},
		"many":    {collection(`{"type":"GeometryCollection","geometries":[{"type":"Point","coordinates":[8.2,50.1]},{"type":"LineString","coordinates":[[8.2,50.1],[8.2001,50.1]]}]}`), 2, 0},
		"nowhere": {collection("null"), 0, 1},
		"empty":   {"\uFEFF" + `{"type":"FeatureCollection","features":[]}`, 0, 0},
	} {
		got, err := geofile.Read("f", strings.NewReader(c.text), geofile.Options{Origin: hill, Lines: book.Track, Points: book.Tree})
		if err != nil || len(got.Features) != c.features || len(got.Notes) != c.notes {
			t.Errorf("%s: %v, %+v", name, err, got)
		}
	}
}

func FuzzRead(f *testing.F) {
	for _, name := range []string{"yard.geojson", "walk.gpx"} {
		content, err := os.ReadFile("testdata/" + name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(content)
	}
	f.Add([]byte(write(f, sample(), hill, book.Roughly)))
	f.Add([]byte(write(f, sample(), geofile.Origin{Lat: 90}, book.Exactly)))
	f.Add([]byte(collection(`{"type":"MultiPolygon","coordinates":[[[[8.2,50.1],[8.201,50.1],[8.2,50.101],[8.2,50.1]]]]}`)))
	f.Fuzz(func(t *testing.T, content []byte) {
		o := geofile.Options{Origin: hill, Lines: book.Boundary, Points: book.Tree, Far: true}
		got, err := geofile.Read("f", bytes.NewReader(content), o)
		if err != nil {
			return
		}
		again, err := geofile.Read("f", strings.NewReader(write(t, got.Sheet, hill, book.Exactly)), o)
		if err != nil && !strings.Contains(err.Error(), "crosses itself") { // by the last millimetre
			t.Fatalf("what was taken is refused when written: %v", err)
		}
		if err == nil && len(again.Features)+len(again.Stands) != len(got.Features)+len(got.Stands) {
			t.Fatalf("%+v\nreads back as\n%+v", got.Sheet, again.Sheet)
		}
	})
}
