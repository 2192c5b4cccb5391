package rules

import (
	"fmt"
	"math"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// count is a number of things in words: "1 cell", "24 cells".
func count(n int, thing string) string { return course.Count(n, thing) }

// hour is an instant in words: "Sat 15 May 18:16", with its year where that is not the one
// of today.
func hour(today calendar.Day, t time.Time, zone *time.Location) string {
	return calendar.Instantly(t).InFrom(today, zone)
}

func batchWord(b *book.Batch) string { return fmt.Sprintf("batch %d", b.Number) }

// bees is a number of bees as it may be said: nobody knows the tens.
func bees(n float64) string { return group(int(math.Round(n/50) * 50)) }

// group parts thousands by a space.
func group(n int) string {
	if n < 1000 {
		return fmt.Sprint(n)
	}
	return fmt.Sprintf("%s %03d", group(n/1000), n%1000)
}

// names are nucs by name, in the order given.
func names(v *book.View, nucs []book.NucID) string {
	words := make([]string, len(nucs))
	for i, id := range nucs {
		words[i] = v.Nuc(id).Name
	}
	return strings.Join(words, " ")
}

// How sure a finding is, in words.
const (
	sureSeen     = "seen"
	sureRecorded = "by the book"
	sureCalendar = "by the calendar"
	sureWeather  = "by the calendar and the weather"
	sureReckoned = "reckoned, not seen"
)

// sure says whether what a nuc holds was seen.
func (n *nucCase) sure() string {
	if n.holds.Seen {
		return sureSeen
	}
	return sureCalendar
}

func sentence(s string) string { return plan.Sentence(s) }

// unsentence is a sentence that goes on behind other words.
func unsentence(s string) string {
	first, n := utf8.DecodeRuneInString(s)
	if n == 0 {
		return ""
	}
	return string(unicode.ToLower(first)) + s[n:]
}
