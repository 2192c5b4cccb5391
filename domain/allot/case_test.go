package allot_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"lidmark/domain/allot"
)

// drawn are the problems of testdata/cases.csv by name, drawn as the script
// beside it says.
func drawn(t testing.TB) map[string]allot.Problem {
	all := map[string]allot.Problem{}
	for _, row := range table(t, "cases.csv") {
		n := map[string]int{}
		for name, text := range row {
			n[name], _ = strconv.Atoi(text)
		}
		all[row["name"]] = draw(n)
	}
	return all
}

func draw(n map[string]int) allot.Problem {
	x := uint64(n["seed"])
	below := func(n int) int {
		x = x*6364136223846793005 + 1442695040888963407
		return int((x >> 33) % uint64(n))
	}
	p := allot.Problem{Minutes: float64(n["minutes"])}
	for range n["supplies"] {
		p.Supply = append(p.Supply, below(2*n["most"]+1))
	}
	for i := range n["subjects"] {
		if i%n["copy"] > 0 {
			p.Ways = append(p.Ways, p.Ways[i-1])
			continue
		}
		ways := []allot.Way{{}}
		for range n["ways"] - 1 {
			w := allot.Way{Worth: float64(below(n["fine"]) + 1)}
			w.Takes, w.Minutes = below(n["supplies"]+1), float64(below(12)+1)
			ways = append(ways, w)
		}
		p.Ways = append(p.Ways, ways)
	}
	for range n["unions"] {
		u := allot.Union{A: below(n["subjects"])}
		u.B = (u.A + 1 + below(4)) % n["subjects"]
		u.Worth, u.Minutes = float64(below(2*n["fine"])+1), float64(below(12)+1)
		p.Unions = append(p.Unions, u)
	}
	return p
}

// table reads a table of testdata, rows by column.
func table(t testing.TB, name string) (rows []map[string]string) {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(lines) < 2 {
		t.Fatalf("%s is empty", name)
	}
	for _, line := range lines[1:] {
		row := map[string]string{}
		for i, text := range line {
			row[lines[0][i]] = text
		}
		rows = append(rows, row)
	}
	return rows
}
