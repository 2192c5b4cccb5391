package line_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/line"
)

func TestNucs(t *testing.T) {
	c := context(t, yard(t))
	want := []book.NucID{booktest.Nuc("A1"), booktest.Nuc("A2"), booktest.Nuc("B4")}
	for _, text := range []string{"A1-A2, B4", "A1 A2 B4", "a1-a2 b4"} {
		if got, err := line.Nucs(text, c); err != nil || !slices.Equal(got, want) {
			t.Errorf("Nucs(%q) = %v, %v, want %v", text, got, err, want)
		}
	}
	for text, want := range map[string]string{
		"":     "column 1: no name of a nuc; write a name or a row, like A3 or A1-A12",
		"C9":   "column 1: no nuc is called C9; mend the name, or add the nuc to the book first",
		"A1 q": "column 4: after the names something else follows; write names parted by commas, like A3, A1-A12",
	} {
		if _, err := line.Nucs(text, c); err == nil || err.Error() != want {
			t.Errorf("Nucs(%q) = %v, want %s", text, err, want)
		}
	}
}

func TestRow(t *testing.T) {
	for text, want := range map[string]string{
		"A1-A3, B4": "A1 A2 A3 B4", "AA9–11": "AA9 AA10 AA11", "": "",
		"A1 B2": "A1 B2", "a1-a3, b4": "A1 A2 A3 B4",
	} {
		got, err := line.Row(text)
		if err != nil || strings.Join(got, " ") != want {
			t.Errorf("Row(%q) = %v, %v, want %s", text, got, err, want)
		}
	}
	for text, want := range map[string]string{
		"A3-A1": "column 1: a row goes up and has one letter; write it like A1-A12",
		"O1":    "column 1: names have no I and no O; choose another letter, they look like 1 and 0",
		"1a":    "column 1: no name of a nuc; write a name or a row, like A3 or A1-A12",
	} {
		if _, err := line.Row(text); err == nil || err.Error() != want {
			t.Errorf("Row(%q) = %v, want %s", text, err, want)
		}
	}
}
