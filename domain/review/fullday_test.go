package review_test

import (
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestFullCombsHaveOneDay: the day on which small combs are full is never told as later
// than the day by which something is done about them.
func TestFullCombsHaveOneDay(t *testing.T) {
	told := 0
	for days := calendar.Day(0); days <= 24; days += 3 {
		_, j := on(t, days)
		v := j.Course().View()
		for _, f := range j.Findings() {
			if f.Rule != rules.Full {
				continue
			}
			told++
			by := calendar.DayOf(f.By, v.Zone())
			for day := by + 1; day < by+60; day++ {
				if strings.HasSuffix(f.What, day.Short()) {
					t.Errorf("%s on %s, and by %s", f.What, v.Today().Short(), by.Short())
				}
			}
		}
	}
	if told == 0 {
		t.Error("no small combs fill up")
	}
}
