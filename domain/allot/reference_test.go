package allot_test

import (
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/allot"
)

// TestBestAsReference: of large problems the answer is what a general solver
// found once (testdata/reference.py), or the bound is not below it and says
// how far off the answer may be.
func TestBestAsReference(t *testing.T) {
	cases := drawn(t)
	for _, row := range table(t, "reference.csv") {
		t.Run(row["name"], func(t *testing.T) {
			p, known := cases[row["name"]]
			if !known {
				t.Fatal("no such case")
			}
			want, err := strconv.ParseFloat(row["worth"], 64)
			if err != nil {
				t.Fatal(err)
			}
			a := solved(t, p)
			if a.Worth > want || a.Bound < want {
				t.Errorf("worth %v and bound %v, want %v between", a.Worth, a.Bound, want)
			}
			if a.Exact && a.Worth != want {
				t.Errorf("worth = %v is told as best, want %v", a.Worth, want)
			}
		})
	}
}

// TestAssignments: small tables of figures, least and most, as a general solver and
// all permutations have them (testdata/assignments.py); a column is a supply of one.
func TestAssignments(t *testing.T) {
	for _, row := range table(t, "assignments.csv") {
		for _, sign := range []float64{-1, 1} {
			p := matrix(t, row["rows"], sign)
			a := solved(t, p)
			name := map[float64]string{-1: "least", 1: "most"}[sign]
			want, err := strconv.ParseFloat(row[name], 64)
			if err != nil {
				t.Fatal(err)
			}
			if a.Worth != sign*want || brute(p) != sign*want || !a.Exact {
				t.Errorf("%s: %s = %v, and %v by trying, want %v", row["name"], name, sign*a.Worth, sign*brute(p), want)
			}
			if sign < 0 && row["answers"] == "1" {
				for i, column := range strings.Fields(row["columns"]) {
					if want, _ := strconv.Atoi(column); a.Chosen[i] != want+1 {
						t.Errorf("%s: row %d has column %d, want %d", row["name"], i, a.Chosen[i]-1, want)
					}
				}
			}
		}
	}
}

// matrix is an assignment of rows to columns; leaving a row is out of the
// question.
func matrix(t *testing.T, text string, sign float64) (p allot.Problem) {
	t.Helper()
	for line := range strings.SplitSeq(text, ";") {
		ways := []allot.Way{{Worth: -10000}}
		for i, cell := range strings.Fields(line) {
			cost, err := strconv.ParseFloat(cell, 64)
			if err != nil {
				t.Fatal(err)
			}
			ways = append(ways, allot.Way{Worth: sign * cost, Takes: i + 1})
		}
		p.Ways = append(p.Ways, ways)
		p.Supply = append(p.Supply, 1)
	}
	return p
}
