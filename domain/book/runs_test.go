package book_test

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/book"

	"pgregory.net/rapid"
)

// spelt are the names a run stands for.
func spelt(t *rapid.T, run string) []string {
	from, to, isRange := strings.Cut(run, "–")
	if !isRange {
		return []string{run}
	}
	first, err := strconv.Atoi(from[1:])
	last, err2 := strconv.Atoi(to[1:])
	if err != nil || err2 != nil || from[0] != to[0] {
		t.Fatalf("%q is no range", run)
	}
	var names []string
	for i := first; i <= last; i++ {
		names = append(names, from[:1]+strconv.Itoa(i))
	}
	return names
}

func TestRangesNameExactlyTheNucs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var names []string
		for _, letter := range []string{"A", "N", "P"} {
			for i := 1; i <= 16; i++ {
				if rapid.Bool().Draw(t, "stands") {
					names = append(names, letter+strconv.Itoa(i))
				}
			}
		}
		var said []string
		for _, run := range book.Runs(names) {
			these := spelt(t, run.Text)
			if len(these) != run.Count {
				t.Fatalf("%q counts %d", run.Text, run.Count)
			}
			said = append(said, these...)
		}
		if !slices.Equal(said, names) {
			t.Fatalf("%v is written as %v", names, said)
		}
		width := rapid.IntRange(0, 80).Draw(t, "room")
		short := book.Names(book.Runs(names), func(s string) bool { return len(s) <= width })
		list, rest, _ := strings.Cut(short, " and ")
		if before, plus, is := strings.Cut(short, " +"); is {
			list, rest = before, plus+" more"
		}
		count := 0
		if _, err := fmt.Sscanf(rest, "%d more", &count); err != nil && rest != "" {
			t.Fatalf("%q does not count the others", short)
		}
		for w := range strings.FieldsSeq(list) {
			count += len(spelt(t, w))
		}
		if count != len(names) || strings.Contains(short, "…") {
			t.Fatalf("%q speaks of %d nucs, there are %d", short, count, len(names))
		}
	})
}

func TestRunsOfOtherNames(t *testing.T) {
	for _, c := range []struct{ names, want string }{
		{"N1 N2", "N1 N2"},
		{"N1 N2 N3", "N1–N3"},
		{"N8 N9 N10 P11", "N8–N10 P11"},
		{"N01 N02 N03", "N01 N02 N03"},
		{"brook ford", "brook ford"},
		{"N3 N2 N1", "N3 N2 N1"},
	} {
		var got []string
		for _, r := range book.Runs(strings.Fields(c.names)) {
			got = append(got, r.Text)
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s is written as %v, want %s", c.names, got, c.want)
		}
	}
}

// TestLongNamesMakeShortRanges: what names of more than one word have in common is said
// once.
func TestLongNamesMakeShortRanges(t *testing.T) {
	runs := book.Runs([]string{"Upper orchard Q1", "Upper orchard Q2", "Upper orchard Q3", "Upper orchard R1"})
	if len(runs) != 2 || runs[0].Text != "Upper orchard Q1–Q3" || runs[0].Count != 3 {
		t.Errorf("the names are written as %v", runs)
	}
}
