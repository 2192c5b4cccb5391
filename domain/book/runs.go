package book

import (
	"fmt"
	"strconv"
	"strings"
)

// Run is a row of names that are written as one: "N1–N8", or a single name.
type Run struct {
	Text  string
	Count int // how many names it stands for
}

// Runs gathers names in their order: three or more of one letter whose numbers
// follow on each other become a range. A range stands for just the names given.
func Runs(names []string) []Run {
	var runs []Run
	for i := 0; i < len(names); {
		j := i + 1
		for j < len(names) && follows(names[j-1], names[j]) {
			j++
		}
		if j-i < 3 {
			runs, i = append(runs, Run{names[i], 1}), i+1
			continue
		}
		last := names[j-1] // "Upper orchard Q1–Q4": the words before the last are the same
		runs, i = append(runs, Run{names[i] + "–" + last[strings.LastIndex(last, " ")+1:], j - i}), j
	}
	return runs
}

// follows tells whether a name is the one after another: N9, N10.
func follows(name, next string) bool {
	letter, number, ok := numbered(name)
	letterNext, numberNext, okNext := numbered(next)
	return ok && okNext && letter == letterNext && numberNext == number+1
}

// numbered cuts a name into its letter and its number.
func numbered(name string) (letter string, number int, ok bool) {
	letter = strings.TrimRight(name, "0123456789")
	number, err := strconv.Atoi(name[len(letter):])
	return letter, number, err == nil && letter+strconv.Itoa(number) == name
}

// Together writes all names in their order, ranges as one: "N1–N8 P2".
func Together(names []string) string {
	return Names(Runs(names), func(string) bool { return true })
}

// Names writes runs as far as they fit, and then how many names there are
// besides. The first run is always written, with a plus where not even the words
// for the others fit.
func Names(runs []Run, fits func(string) bool) string {
	all := 0
	for _, r := range runs {
		all += r.Count
	}
	for k := len(runs); k > 0; k-- {
		said, count := make([]string, 0, k+1), 0
		for _, r := range runs[:k] {
			said, count = append(said, r.Text), count+r.Count
		}
		if count < all {
			said = append(said, fmt.Sprintf("and %d more", all-count))
		}
		if text := strings.Join(said, " "); fits(text) || all == count && k == 1 {
			return text
		}
	}
	if len(runs) == 0 {
		return ""
	}
	return fmt.Sprintf("%s +%d", runs[0].Text, all-runs[0].Count)
}
