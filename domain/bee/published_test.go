package bee_test

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"testing"
	"time"

	"lidmark/domain/practice"
)

var defaults practice.Numbers

// graft is the hour of the graft in most tests: a Wednesday evening.
var graft = time.Date(2027, time.May, 5, 18, 0, 0, 0, time.UTC)

// published reads a table of testdata/published, each row by its column
// names. A table without rows is a failure.
func published(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "testdata", "published", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	if len(lines) < 2 {
		t.Fatalf("%s has no rows", name)
	}
	var rows []map[string]string
	for _, line := range lines[1:] {
		row := map[string]string{}
		for i, column := range lines[0] {
			row[column] = line[i]
		}
		rows = append(rows, row)
	}
	return rows
}

// number reads one number of a table.
func number(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatalf("not a number: %v", err)
	}
	return v
}

// with changes numbers, failing the test when one is refused.
func with(t testing.TB, n practice.Numbers, k practice.Key, v float64) practice.Numbers {
	t.Helper()
	next, err := n.With(k, v)
	if err != nil {
		t.Fatal(err)
	}
	return next
}

// at is an instant given in hours from the graft.
func at(hours float64) time.Time { return graft.Add(time.Duration(hours * float64(time.Hour))) }
