package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Making up nucs is an event of the day on which it is work, and none once there is nothing to make up.
func TestMakingUpIsAnEventOfItsDay(t *testing.T) {
	for _, taken := range []int{4, 12, 0} {
		p := graftMade(taken)
		v, event, work := p.View("2027-05-12 08:00"), calendar.Day(0), calendar.Day(0)
		for _, f := range rules.Findings(v) {
			if f.Act == rules.ActMakeUp {
				work = calendar.DayOf(f.Best, time.UTC)
			}
		}
		for _, d := range rules.Deadlines(v, v.Today(), v.Today()+20) {
			if strings.Contains(d.What, "make up nucs") && !d.Done {
				event = d.Day
			}
		}
		if event != work || (work == 0) != (taken == 0) {
			t.Errorf("%d taken: work of %s, event of %s", taken, work, event)
		}
	}
}

// What was best done on a day whose hours are over is work of the first day after it.
func TestWorkOfAnEveningThatIsOverGoesOn(t *testing.T) {
	j := rules.Judge(graftPlanned().View("2027-05-06 20:00"))
	today, has := calendar.Date(2027, time.May, 6), func(d, first calendar.Day) bool {
		for _, s := range j.BestOn(d, first).Stops {
			for _, task := range s.Tasks {
				if strings.HasPrefix(task.Title, "Confine the breeder") {
					return true
				}
			}
		}
		return false
	}
	if !has(today, today) || has(today+1, today) || has(today, today+1) || !has(today+1, today+1) {
		t.Errorf("confined today %v, tomorrow %v; once today is over %v, %v", has(today, today), has(today+1, today), has(today, today+1), has(today+1, today+1))
	}
}
