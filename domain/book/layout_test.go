package book_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

func TestLayouts(t *testing.T) {
	var (
		hill         = booktest.Yard("Hill")
		turned, more = booktest.Layout("turned"), booktest.Layout("more")
		a, a1        = booktest.Stand("A"), booktest.Nuc("A1")
		set          = book.StandSet{Stand: a, Yard: hill, Letter: "A", Places: 4}
		moved        = book.StandSet{Stand: a, Yard: hill, Letter: "A", Places: 4, Turn: 45}
		blue         = book.FrontMarked{Nuc: a1, Shape: "disc", Colour: "blue"}
		east         = book.NucFaced{Nuc: a1, Entrance: 90}
	)
	p := (&booktest.Pen{}).At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: hill, Name: "Hill", Zone: "UTC"}, set, book.NucNamed{Nuc: a1, Name: "A1"},
		book.LayoutTried{Layout: turned, Yard: hill, Name: "turned", Stands: []book.StandSet{moved}, Fronts: []book.FrontMarked{blue}, Faces: []book.NucFaced{east}},
		book.LayoutTried{Layout: more, Yard: hill, Name: "twelve more"},
	)
	names := func(on string) (all []string) {
		for _, l := range p.View(on).Layouts(hill) {
			all = append(all, l.Name)
		}
		return all
	}
	if got := names("2027-05-02 08:00"); !slices.Equal(got, []string{"turned", "twelve more"}) {
		t.Errorf("try-outs %v", got)
	}
	if _, ok := p.View("2027-05-02 08:00").PlannedLayout(hill); ok {
		t.Error("a try-out that nobody made the plan is planned")
	}
	p.At("2027-05-03 08:00").Write(book.LayoutPlanned{Layout: turned, Yard: hill, From: calendar.Date(2027, 5, 20)})
	v := p.View("2027-05-04 08:00")
	plan, ok := v.PlannedLayout(hill)
	if !ok || plan.Name != "turned" || plan.From != calendar.Date(2027, 5, 20) {
		t.Fatalf("planned %v, %t", plan, ok)
	}
	if left := v.Left(plan); !slices.Equal(left.Stands, []book.StandSet{moved}) || !slices.Equal(left.Fronts, []book.FrontMarked{blue}) || !slices.Equal(left.Faces, []book.NucFaced{east}) {
		t.Errorf("left to do: %+v", left)
	}
	p.At("2027-05-20 21:00").Write(moved, blue, book.NucNamed{Nuc: a1, Name: "A1", Entrance: 90})
	if left := p.View("2027-05-21 08:00").Left(plan); !left.Nothing() {
		t.Errorf("done, and left to do: %+v", left)
	}
	p.At("2027-05-22 08:00").Write(book.LayoutDropped{Layout: turned, Yard: hill})
	if _, ok := p.View("2027-05-23 08:00").PlannedLayout(hill); ok || !slices.Equal(names("2027-05-23 08:00"), []string{"twelve more"}) {
		t.Errorf("thrown away, and still there: %v", names("2027-05-23 08:00"))
	}
	if got := p.View("2027-05-23 08:00").Layout(turned).Name; got != "turned" {
		t.Errorf("what was thrown away is called %q", got)
	}
}

func TestFeaturesAreDrawnAnewAndWipedOff(t *testing.T) {
	hill, thorn := booktest.Yard("Hill"), booktest.Feature("thorn")
	at := []book.Point{{X: 4, Y: 30}}
	p := (&booktest.Pen{}).At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: hill, Name: "Hill", Zone: "UTC"},
		book.FeatureDrawn{Feature: thorn, Yard: hill, What: book.Tree, Points: at, Height: 8},
	)
	p.At("2027-05-02 08:00").Write(book.FeatureDrawn{Feature: thorn, Yard: hill, What: book.Tree, Points: at, Height: 5}, book.WindSaid{Yard: hill, From: 240})
	y := p.View("2027-05-02 09:00").Yard(hill)
	if len(y.Features) != 1 || y.Features[0].Height != 5 || !y.Wind.Said() || y.Wind.Value != 240 {
		t.Errorf("drawn anew: %v, wind %v", y.Features, y.Wind)
	}
	p.At("2027-05-03 08:00").Write(book.FeatureDrawn{Feature: thorn, Yard: hill, What: book.Tree})
	if y := p.View("2027-05-03 09:00").Yard(hill); len(y.Features) != 0 {
		t.Errorf("wiped off, and still there: %v", y.Features)
	}
}
