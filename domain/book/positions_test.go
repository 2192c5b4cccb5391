package book_test

import (
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
)

// placesIn are what of a value tells where something is: points, degrees, photographs.
func placesIn(v reflect.Value, path string) (all []string) {
	if p, ok := v.Interface().(book.Point); ok {
		if p != (book.Point{}) {
			all = append(all, path)
		}
		return all
	}
	switch v.Kind() {
	case reflect.Struct:
		if !v.Type().Field(0).IsExported() {
			return nil
		}
		for field, value := range v.Fields() {
			if !field.IsExported() {
				continue
			}
			name := path + "." + field.Name
			switch field.Name {
			case "Lat", "Lon", "JPEG", "Points":
				if !value.IsZero() {
					all = append(all, name)
				}
			default:
				all = append(all, placesIn(value, name)...)
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			all = append(all, placesIn(v.Index(i), path)...)
		}
	}
	return all
}

// TestNoPlaceStays: told nowhere, no fact of any kind says where something is, and the
// fact itself is not changed.
func TestNoPlaceStays(t *testing.T) {
	had := 0
	for kind, f := range everyFact(t) {
		before := placesIn(reflect.ValueOf(f), kind)
		had += len(before)
		if left := placesIn(reflect.ValueOf(book.Nowhere.Told(f)), kind); len(left) > 0 {
			t.Errorf("places stay: %v", left)
		}
		if after := placesIn(reflect.ValueOf(f), kind); len(after) != len(before) {
			t.Errorf("%s: the fact itself has lost places", kind)
		}
		if got := book.Exactly.Told(f); !reflect.DeepEqual(got, f) {
			t.Errorf("%s told exactly is %+v", kind, got)
		}
	}
	if had < 6 {
		t.Fatalf("only %d places were found in all facts", had)
	}
}

// TestRoughly: a yard is told within a kilometre of where it lies, never to the degree's
// thousandth, and what stands in it stays where it is; its photograph goes.
func TestRoughly(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		y := book.YardDescribed{Lat: rapid.Float64Range(-89, 89).Draw(t, "lat"), Lon: rapid.Float64Range(-180, 180).Draw(t, "lon")}
		got := book.Roughly.Told(y).(book.YardDescribed)
		const degree = 111.2 // km, of the circumference of the Earth, 40 030 km at 6 371 km radius
		north, east := (got.Lat-y.Lat)*degree, (got.Lon-y.Lon)*degree*math.Cos(y.Lat*math.Pi/180)
		if d := math.Hypot(north, east); d > 1 {
			t.Errorf("%v is told %.2f km away", y, d)
		}
		if again := book.Roughly.Told(got).(book.YardDescribed); math.Abs(again.Lat-got.Lat)+math.Abs(again.Lon-got.Lon) > 1e-9 {
			t.Errorf("told twice it moves from %v to %v", got, again)
		}
	})
	s := book.StandSet{At: book.Point{X: 3, Y: 4}}
	if got := book.Roughly.Told(s); got != book.Fact(s) {
		t.Errorf("a stand moved: %+v", got)
	}
	if got := book.Roughly.Told(book.GroundPictured{JPEG: []byte{1}, Scale: 2}).(book.GroundPictured); got.JPEG != nil || got.Scale != 0 {
		t.Errorf("the photograph stays: %+v", got)
	}
	if got := book.Roughly.Told(book.YardDescribed{}).(book.YardDescribed); got.Lat != 0 || got.Lon != 0 {
		t.Errorf("a yard without a place lies at %+v", got)
	}
}
