package yard_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/yard"
)

var hill = booktest.Yard("Hill")

func hillBook() *booktest.Pen {
	a := booktest.Stand("A")
	return (&booktest.Pen{}).At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: hill, Name: "Hill", Zone: "UTC"},
		book.StandSet{Stand: a, Yard: hill, Letter: "A", At: book.Point{X: 9, Y: 38}, Turn: 4, Places: 4},
		book.StandSet{Stand: booktest.Stand("B"), Yard: hill, Letter: "B", At: book.Point{X: 17, Y: 39}, Places: 1},
		book.NucNamed{Nuc: booktest.Nuc("A2"), Name: "A2", Entrance: 90},
		book.NucPlaced{Nuc: booktest.Nuc("A2"), Yard: hill, Stand: a, Place: 2},
		book.NucNamed{Nuc: booktest.Nuc("A1"), Name: "A1"},
		book.NucPlaced{Nuc: booktest.Nuc("A1"), Yard: hill, Stand: a, Place: 1},
		book.FrontMarked{Nuc: booktest.Nuc("A1"), Shape: "disc", Colour: "blue"},
		book.ColonyDescribed{Colony: booktest.Colony("S2"), Name: "S2", Yard: hill, At: book.Point{X: 3, Y: 4}},
	)
}

func TestOfReadsTheBook(t *testing.T) {
	got := yard.Of(hillBook().View("2027-05-02 08:00"), hill)
	want := yard.Layout{
		Yard: hill,
		Stands: []yard.Stand{
			{ID: booktest.Stand("A"), Letter: "A", At: book.Point{X: 9, Y: 38}, Turn: 4, Places: 4, Nucs: []yard.Nuc{
				{ID: booktest.Nuc("A1"), Name: "A1", Place: 1, Mark: yard.Mark{Shape: "disc", Colour: "blue"}, Idle: true},
				{ID: booktest.Nuc("A2"), Name: "A2", Place: 2, Bearing: 90, Idle: true},
			}},
			{ID: booktest.Stand("B"), Letter: "B", At: book.Point{X: 17, Y: 39}, Places: 1},
		},
		Colonies: []yard.Colony{{ID: booktest.Colony("S2"), Name: "S2", At: book.Point{X: 3, Y: 4}}},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	if doors := got.Doors(yard.Spacing{Block: 0.3, Row: 1}); len(doors) != 3 || doors[1].Bearing != 94 || !doors[2].Colony {
		t.Errorf("doors %+v", doors)
	}
}

// What is kept of a try-out and laid over the real layout again is the try-out.
func TestATryOutComesBack(t *testing.T) {
	p := hillBook()
	now := yard.Of(p.View("2027-05-02 08:00"), hill)
	tried := now.Clone()
	tried.Stands[0].Turn, tried.Stands[0].Nucs[1].Mark = 45, yard.Mark{Shape: "bar", Colour: "white"}
	tried.Stands = append(tried.Stands, yard.Stand{ID: booktest.Stand("C"), Letter: "C", At: book.Point{X: 1, Y: 1}, Places: 1})
	if now.Stands[0].Turn != 4 || now.Stands[0].Nucs[1].Mark != (yard.Mark{}) {
		t.Fatal("the try-out changed the real layout")
	}
	kept := tried.TriedAs(booktest.Layout("turned"), "turned", now)
	if len(kept.Stands) != 2 || len(kept.Fronts) != 1 {
		t.Errorf("kept %+v", kept)
	}
	if diff := cmp.Diff(tried, now.Try(kept)); diff != "" {
		t.Error(diff)
	}
	v := p.View("2027-05-02 08:00")
	if !now.Still(v) || tried.Still(v) || (yard.Layout{Yard: hill}).Still(v) {
		t.Error("what stands as it stood is not told from what does not")
	}
	for what, f := range map[string]book.Fact{
		"a stand turned":   book.StandSet{Stand: booktest.Stand("B"), Yard: hill, Letter: "B", At: book.Point{X: 17, Y: 39}, Turn: 9, Places: 1},
		"a nuc carried":    book.NucPlaced{Nuc: booktest.Nuc("A2"), Yard: hill, Stand: booktest.Stand("B"), Place: 1},
		"a front painted":  book.FrontMarked{Nuc: booktest.Nuc("A1"), Shape: "bar", Colour: "blue"},
		"a colony set":     book.ColonyDescribed{Colony: booktest.Colony("S3"), Name: "S3", Yard: hill},
		"a nuc taken away": book.NucPlaced{Nuc: booktest.Nuc("A2"), Yard: booktest.Yard("Far")},
	} {
		if now.Still(hillBook().At("2027-05-03 08:00").Write(f).View("2027-05-03 09:00")) {
			t.Errorf("%s, and the layout is still the same", what)
		}
	}
	holds := now.With(func(n book.NucID) yard.Holding { return yard.Holding{Bees: 900, Virgins: 1} })
	if n := holds.Stands[0].Nucs[0]; n.Bees != 900 || n.Virgins != 1 || now.Stands[0].Nucs[0].Bees != 0 {
		t.Errorf("held %+v", n)
	}
}
