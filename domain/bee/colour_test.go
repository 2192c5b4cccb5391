package bee_test

import (
	"testing"

	"lidmark/domain/bee"
)

// TestMarkColours checks every ending in testdata/published/
// marking-colours.csv, the international convention, in several decades.
func TestMarkColours(t *testing.T) {
	rows := published(t, "marking-colours.csv")
	if len(rows) != 10 {
		t.Fatalf("%d rows, want the ten endings of a year", len(rows))
	}
	for _, row := range rows {
		for _, decade := range []int{1990, 2020, 2030, 2100} {
			year := decade + int(number(t, row["year_ending"]))
			if got := bee.MarkColour(year).String(); got != row["colour"] {
				t.Errorf("MarkColour(%d) = %q, want %q", year, got, row["colour"])
			}
		}
	}
	if got := bee.NoColour.String(); got != "" {
		t.Errorf("no colour is called %q", got)
	}
}
