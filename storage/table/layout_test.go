package table_test

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/yard"
	"lidmark/storage/table"
)

// laid is a yard of two stands and a try-out of it: A is carried by 3 and 4 m and
// turned, a new stand has no box.
func laid() (now, try yard.Layout) {
	now = yard.Layout{Stands: []yard.Stand{
		{ID: booktest.Stand("A"), Letter: "A", At: book.Point{X: 12.3456, Y: 1}, Places: 4, Nucs: []yard.Nuc{
			{Name: "A1", Place: 1, Bearing: 90, Mark: yard.Mark{Shape: "disc", Colour: "blue"}}, {Name: "=A2", Place: 2},
		}},
		{ID: booktest.Stand("B"), Letter: "B", At: book.Point{X: -7.77, Y: 9.99}, Places: 1, Nucs: []yard.Nuc{{Name: "B1", Place: 1}}},
	}}
	try = now.Moved(yard.Pick{booktest.Stand("A")}, 3, 4).Turned(yard.Pick{booktest.Stand("A")}, 285)
	try.Stands = append(try.Stands, yard.Stand{ID: booktest.Stand("C"), Letter: "C", At: book.Point{X: 8.88, Y: 5}, Places: 1})
	return now, try
}

func layoutCSV(t *testing.T, p book.Positions) string {
	t.Helper()
	var out bytes.Buffer
	if err := table.Layout(first(laid()), second(laid()), p).Write(&out, table.Format{}); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func first(a, _ yard.Layout) yard.Layout  { return a }
func second(_, b yard.Layout) yard.Layout { return b }

func TestLayout(t *testing.T) {
	id := func(letter string) string { return booktest.Stand(letter).String() }
	want := strings.Join([]string{
		"stand,stand id,x (m),y (m),turned (°),place,nuc,entrance (°),mark colour,mark shape,new,moved (m)",
		"A," + id("A") + ",15.346,5,285,1,A1,15,blue,disc,,5",
		"A," + id("A") + ",15.346,5,285,2,'=A2,285,,,,5",
		"B," + id("B") + ",-7.77,9.99,0,1,B1,0,,,,0",
		"C," + id("C") + ",8.88,5,0,,,,,,yes,",
		"",
	}, "\r\n")
	if got := layoutCSV(t, book.Exactly); got != want {
		t.Errorf("the table is\n%s\nwant\n%s", got, want)
	}
	if got := layoutCSV(t, book.Roughly); got != want {
		t.Error("metres in a yard tell nobody where it lies, and changed")
	}
}

// TestLayoutWithoutPlaces: told nowhere, no figure of where a stand stands or stood is
// in it.
func TestLayoutWithoutPlaces(t *testing.T) {
	got := layoutCSV(t, book.Nowhere)
	for _, figure := range []string{"15.346", "12.346", "-7.77", "9.99", "8.88", "(m)"} {
		if strings.Contains(got, figure) {
			t.Errorf("%s stays in\n%s", figure, got)
		}
	}
	if head, _, _ := strings.Cut(got, "\r\n"); !slices.Contains(strings.Split(head, ","), "entrance (°)") {
		t.Errorf("the bearings are gone: %s", head)
	}
}
