package rules_test

import (
	"regexp"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// A season over New Year, as in the south: in all that is found and due no day of the year
// before is without its year, and none of this year has it.
func TestDaysOfAnotherYearHaveTheirs(t *testing.T) {
	today := calendar.Date(2027, time.January, 3)
	v := book.NewSeason(time.LoadLocation, demo.Season(today, time.UTC)).At(today.At(7, 30, time.UTC))
	judged := rules.Judge(v)
	var said []string
	for _, f := range judged.Findings() {
		said = append(said, f.What, f.Why, f.Do)
	}
	for _, d := range judged.Deadlines(today-10, today+20) {
		said = append(said, d.What, d.Do)
	}
	day, dated := regexp.MustCompile(`\d (Oct|Nov|Dec|Jan|Feb)( 20\d\d)?\b`), 0
	for _, s := range said {
		for _, m := range day.FindAllStringSubmatch(s, -1) {
			want := " 2026"
			if m[1] == "Jan" || m[1] == "Feb" {
				want = ""
			}
			if dated++; m[2] != want {
				t.Errorf("%q says %q", s, m[0])
			}
		}
	}
	if dated < 50 {
		t.Errorf("only %d days are told in %d texts", dated, len(said))
	}
}
