package yard_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/yard"
)

func bearings(s yard.Stand) (all []float64) {
	for i := range s.Nucs {
		all = append(all, s.Faces(&s.Nucs[i]))
	}
	return all
}

func blockOfFour() yard.Layout {
	s := yard.Stand{ID: booktest.Stand("A"), Letter: "A", Places: 4, Turn: 10}
	for i, name := range []string{"A1", "A2", "A3", "A4"} {
		s.Nucs = append(s.Nucs, yard.Nuc{ID: booktest.Nuc(name), Name: name, Place: i + 1, Bearing: 180})
	}
	return yard.Layout{Yard: booktest.Yard("Hill"), Stands: []yard.Stand{s}}
}

func TestBoxesAreTurnedOnTheirPlaces(t *testing.T) {
	l := blockOfFour()
	pick := yard.Pick{booktest.Stand("A")}
	for name, c := range map[string]struct {
		got  yard.Layout
		want []float64
	}{
		"outwards":  {l.Outwards(pick), []float64{10, 100, 280, 190}},
		"one way":   {l.Facing(pick, 90), []float64{90, 90, 90, 90}},
		"by turns":  {l.Facing(pick, 0, 180), []float64{0, 180, 0, 180}},
		"one alone": {l.FacingOne(booktest.Nuc("A2"), 5), []float64{190, 5, 190, 190}},
		"no way":    {l.Facing(pick), []float64{190, 190, 190, 190}},
	} {
		if got := bearings(c.got.Stands[0]); !slices.Equal(got, c.want) {
			t.Errorf("%s: they face %v, want %v", name, got, c.want)
		}
	}
	l.Stands[0].Nucs[1].Shared = true
	if got := bearings(l.Outwards(pick).Facing(pick, 90).FacingOne(booktest.Nuc("A2"), 5).Stands[0])[1]; got != 190 {
		t.Errorf("a nuc that shares its box is turned alone, to %v", got)
	}
}

// A try-out of the book keeps which way boxes face, and gives it back.
func TestFacesAreTriedAndKept(t *testing.T) {
	now := blockOfFour()
	try := now.Outwards(yard.Pick{booktest.Stand("A")})
	kept := try.TriedAs(booktest.Layout("out"), "out", now)
	if want := 3; len(kept.Faces) != want || len(kept.Stands)+len(kept.Fronts) != 0 {
		t.Fatalf("kept are %+v, want %d faces", kept, want)
	}
	if got := bearings(now.Try(kept).Stands[0]); !slices.Equal(got, bearings(try.Stands[0])) {
		t.Errorf("taken up again they face %v", got)
	}
	c := yard.ChangesOf(now, try, nil, nil)
	if len(c) != 1 || c[0].Turned != 3 || len(c[0].Moved()) != 3 || c[0].Carried() || c[0].Words() != "turn 3 boxes on stand A" {
		t.Errorf("the changes are %+v", c)
	}
}

func TestCompass(t *testing.T) {
	for bearing, want := range map[float64]string{0: "north", 22: "north", 23: "north-east", 90: "east", 359: "north", -90: "west"} {
		if got := yard.Compass(bearing); got != want {
			t.Errorf("%v is %s, want %s", bearing, got, want)
		}
	}
}

// A nuc of a box with several is read as one that shares it.
func TestASharedBoxIsKnown(t *testing.T) {
	hill, a, twin := booktest.Yard("Hill"), booktest.Stand("A"), book.BoxID(booktest.Nuc("twin"))
	p := (&booktest.Pen{}).At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: hill, Name: "Hill", Zone: "UTC"}, book.StandSet{Stand: a, Yard: hill, Letter: "A", Places: 4},
		book.BoxBuilt{Box: twin, Number: "7", Nucs: 2},
		book.NucNamed{Nuc: booktest.Nuc("A1"), Name: "A1", Box: twin}, book.NucPlaced{Nuc: booktest.Nuc("A1"), Yard: hill, Stand: a, Place: 1},
		book.NucNamed{Nuc: booktest.Nuc("A2"), Name: "A2"}, book.NucPlaced{Nuc: booktest.Nuc("A2"), Yard: hill, Stand: a, Place: 2},
	)
	v := p.View("2027-05-02 08:00")
	l := yard.Of(v, hill)
	if n := l.Stands[0].Nucs; !n[0].Shared || n[1].Shared || !l.Still(v) {
		t.Errorf("the nucs are %+v", n)
	}
}
