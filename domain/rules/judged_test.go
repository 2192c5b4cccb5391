package rules_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// TestJudgedOnce: one pass answers as passes of their own do, whatever it was
// asked before.
func TestJudgedOnce(t *testing.T) {
	today := calendar.Date(2027, time.June, 9)
	v := book.NewSeason(booktest.Zones, demo.Season(today, time.UTC)).At(today.At(7, 0, time.UTC))
	j := rules.Judge(v)
	for range 2 {
		for d := today - 1; d <= today+3; d++ {
			if diff := cmp.Diff(rules.Day(v, d), j.Day(d)); diff != "" {
				t.Fatalf("the plan of %v:\n%s", d, diff)
			}
		}
		if diff := cmp.Diff(rules.Judge(v).Work(today, today+30), j.Work(today, today+30)); diff != "" {
			t.Fatalf("the work of 30 days:\n%s", diff)
		}
		if diff := cmp.Diff(rules.Deadlines(v, today-9, today+9), j.Deadlines(today-9, today+9)); diff != "" {
			t.Fatalf("the deadlines:\n%s", diff)
		}
		if diff := cmp.Diff(rules.Findings(v), j.Findings()); diff != "" {
			t.Fatalf("what is found:\n%s", diff)
		}
	}
	i := 0
	for n := range v.Nucs() {
		if got, want := j.Presumed()[i], course.ByCalendar(v, n); got != want {
			t.Fatalf("%s is presumed %+v, want %+v", n.Name, got, want)
		}
		i++
	}
}
