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
		"A1 q": "column 4: after the names something else follows; write names separated by commas, like A3, A1-A12",
	} {
		if _, err := line.Nucs(text, c); err == nil || err.Error() != want {
			t.Errorf("Nucs(%q) = %v, want %s", text, err, want)
		}
	}
}

func TestRow(t *testing.T) {
	for text, want := range map[string]string{
		"A1-A3, B4": "A1 A2 A3 B4", "AA9–11": "AA9 AA10 AA11", "": "",
		"A1 B2": "A1 B2", "a1-a3, b4": "A1 A2 A3 B4", "A1-B2": "A1 A2 B1 B2", "H1-P1": "H1 J1 K1 L1 M1 N1 P1",
		"AZ3-BB4": "AZ3 AZ4 BA3 BA4 BB3 BB4", "Z1-Z2": "Z1 Z2",
	} {
		got, err := line.Row(text)
		if err != nil || strings.Join(got, " ") != want {
			t.Errorf("Row(%q) = %v, %v, want %s", text, got, err, want)
		}
	}
	for text, want := range map[string]string{
		"A3-A1":    "column 1: A3-A1 does not go up; write it like A1-A12, or A1-R4 for four places on each stand",
		"B1-A4":    "column 1: B1-A4 does not go up; write it like A1-A12, or A1-R4 for four places on each stand",
		"A1-AB4":   "column 1: A1-AB4 does not go up; write it like A1-A12, or A1-R4 for four places on each stand",
		"B2 O1":    "column 4: O1: names have no I and no O; choose another letter, they look like 1 and 0",
		"A1-O4":    "column 1: A1-O4: names have no I and no O; choose another letter, they look like 1 and 0",
		"A1-B9999": "column 1: A1-B9999 are more than 9999 names; write fewer",
		"1-64":     "column 1: no name of a nuc; write the letter of its stand, then its place, like A3 or A1-A12",
		"1a":       "column 1: no name of a nuc; write the letter of its stand, then its place, like A3 or A1-A12",
	} {
		if _, err := line.Row(text); err == nil || err.Error() != want {
			t.Errorf("Row(%q) = %v, want %s", text, err, want)
		}
	}
}

// TestRowOfStands: sixteen stands of four, in one row of seven characters.
func TestRowOfStands(t *testing.T) {
	got, err := line.Row("A1-R4")
	if err != nil || len(got) != 64 || got[0] != "A1" || got[32] != "J1" || got[63] != "R4" {
		t.Errorf("%d names, %v: %v", len(got), err, got)
	}
	if got, err := line.Row("A1-ZZ1"); err == nil {
		t.Errorf("%d names from A to ZZ", len(got))
	}
}
