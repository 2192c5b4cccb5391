package review_test

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/demo"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// kindsJudged are the kinds of way as the judge named them.
var kindsJudged = map[string]review.Kind{
	"leave": review.Leave, "look": review.LookFirst, "cell": review.GiveCell, "virgin": review.PutInVirgin, "break down": review.BreakDown,
	"take out": review.TakeOut, "shake out": review.ShakeOut, "unite": review.Unite, "feed": review.Feed, "narrow": review.Narrow, "catch": review.Catch,
}

// TestJudgedByHand: what a producer of queens judged from the histories alone, see
// testdata/judged.md: common practice, no source. The chances told there are within
// the band beside them, and what is advised is what the judge would allow.
func TestJudgedByHand(t *testing.T) {
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	day := calendar.Date(2026, time.November, 25)
	v := book.NewSeason(time.LoadLocation, demo.Season(day, zone)).At(day.At(23, 59, zone))
	j := rules.Judge(v)
	r := review.Of(j, review.InHand(j.Course()), review.Usual(v))
	nucs := map[string]review.Nuc{}
	for _, n := range r.Nucs {
		nucs[n.Name] = n
	}
	rows := judgedRows(t)
	if len(rows) != 24 {
		t.Fatalf("%d nucs judged, want 24", len(rows))
	}
	for _, row := range rows {
		n, ok := nucs[row[0]]
		if !ok {
			t.Errorf("%s is not under review", row[0])
			continue
		}
		hand, told := shares(t, row[2]), sixOf(n.Chances)
		band := shares(t, row[4])[0]
		most := 0.0
		for i := range told {
			most = max(most, math.Abs(told[i]-hand[i]))
		}
		if most > band {
			t.Errorf("%s: %.0f, by hand %.0f: %.0f apart, want %.0f at most", n.Name, told, hand, most, band)
		}
		kind := n.Ways[n.Best].Kind
		if n.Ways[n.Best].OwnFirst { // the cell is given in the same visit
			kind = review.GiveCell
		}
		if !slices.Contains(kindsOf(t, row[5]), kind) {
			t.Errorf("%s: %s, the hand allows %s", n.Name, r.Title(n.Ways[n.Best]), row[5])
		}
		t.Logf("%s|%s|%.0f|%s", n.Name, fmt.Sprintf("%.0f %.0f %.0f %.0f %.0f %.0f", told[0], told[1], told[2], told[3], told[4], told[5]), most, r.Title(n.Ways[n.Best]))
	}
}

// judgedRows are the rows of the table, a cell each: nuc, history, by hand, by the
// program, band, what the hand allows, and so on.
func judgedRows(t *testing.T) (rows [][]string) {
	text, err := os.ReadFile("../../testdata/judged.md")
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.SplitSeq(string(text), "\n") {
		cells := strings.Split(strings.Trim(line, "| "), "|")
		if len(cells) != 8 || strings.HasPrefix(line, "|---") || strings.HasPrefix(line, "| nuc") {
			continue
		}
		for i := range cells {
			cells[i] = strings.TrimSpace(cells[i])
		}
		rows = append(rows, cells)
	}
	return rows
}

func shares(t *testing.T, cell string) (all []float64) {
	for word := range strings.FieldsSeq(cell) {
		share, err := strconv.ParseFloat(word, 64)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, share)
	}
	return all
}

func kindsOf(t *testing.T, cell string) (kinds []review.Kind) {
	for name := range strings.SplitSeq(cell, ", ") {
		kind, ok := kindsJudged[name]
		if !ok {
			t.Fatalf("%q is no kind of way", name)
		}
		kinds = append(kinds, kind)
	}
	return kinds
}

// sixOf are the chances in per cent as the judge told them apart: laying, still to lay,
// of its own raising to come, none, drone layer, laying workers.
func sixOf(c course.Chances) [6]float64 {
	return [6]float64{
		100 * c.Lays(), 100 * (c.Cell + c.Virgin + c.Mated), 100 * (c.OwnCell + c.OwnVirgin + c.OwnMated), 100 * c.None, 100 * c.DroneLayer, 100 * c.LayingWorkers,
	}
}
