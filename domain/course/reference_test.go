package course_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// reference is one row of testdata/course-reference.csv: the chances at the
// start of a day, by an independent program of the same definitions (see
// course-reference.md): a virgin accepted, no own cells, nobody looks.
type reference struct {
	weather                            string
	day                                int
	hours                              float64
	virgin, mated, laying, drone, none float64
}

func references(t testing.TB) (rows []reference) {
	t.Helper()
	f, err := os.Open("testdata/course-reference.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil || len(lines) < 200 {
		t.Fatalf("%d lines, %v", len(lines), err)
	}
	for _, l := range lines[1:] {
		var v [7]float64
		for i := range v {
			if v[i], err = strconv.ParseFloat(l[i+1], 64); err != nil {
				t.Fatal(err)
			}
		}
		rows = append(rows, reference{l[0], int(v[0]), v[1], v[2], v[3], v[4], v[5], v[6]})
	}
	return rows
}

// noOwnCells are the default numbers of a nuc that raises no queen of its own,
// whose virgins all fly.
func noOwnCells(t testing.TB) practice.Numbers {
	t.Helper()
	n, err := with(t, practice.OwnCellsRaised, 0).With(practice.NeverFlies, 0)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

func with(t testing.TB, k practice.Key, v float64) practice.Numbers {
	t.Helper()
	n, err := practice.Numbers{}.With(k, v)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// TestReference agrees with the independent program to 1e-9. Laying workers
// count as none there.
func TestReference(t *testing.T) {
	m := course.NewModel(noOwnCells(t))
	var b course.Belief
	var d *course.Day
	for _, r := range references(t) {
		if r.day == 0 {
			b = m.Virgin(0)
		} else {
			b = b.After(d)
		}
		d = m.Day(r.hours, 1)
		got := b.Chances()
		for _, c := range []struct {
			what      string
			got, want float64
		}{
			{"virgin", got.Virgin, r.virgin},
			{"mated", got.Mated, r.mated},
			{"laying", got.Laying, r.laying},
			{"drone layer", got.DroneLayer, r.drone},
			{"none", got.None + got.LayingWorkers, r.none},
		} {
			if !(math.Abs(c.got-c.want) < 1e-9) {
				t.Fatalf("%s, day %d: %s %.12f, want %.12f", r.weather, r.day, c.what, c.got, c.want)
			}
		}
	}
}
