package crew_test

import (
	"testing"
	"time"

	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// Who is there from four has 21 minutes for 27 that are hard by 16:21; what is hard later
// has the time, and what was hard before the day is not told again.
func TestWhatIsHardBeforeThereIsTimeForIt(t *testing.T) {
	at := func(hour, minute int) time.Time { return time.Date(2027, 5, 13, hour, minute, 0, 0, time.UTC) }
	work := func(minutes float64, by time.Time) crew.Work {
		return crew.Work{Task: rules.Task{Hard: true, By: by}, Minutes: minutes, Hard: true}
	}
	sheet := crew.Sheet{Hand: crew.Hand{From: at(16, 0)}, Visits: []crew.Visit{
		{Work: []crew.Work{work(15, at(20, 0)), work(12, at(16, 21)), work(100, at(6, 0))}},
		{Work: []crew.Work{work(15, at(16, 21))}},
	}}
	p, ok := sheet.Pressed(at(7, 0))
	if want := (crew.Pressed{By: at(16, 21), Work: 27, There: 21}); !ok || p != want {
		t.Errorf("%+v %v, want %+v", p, ok, want)
	}
	sheet.From = at(15, 50)
	if p, ok := sheet.Pressed(at(7, 0)); ok {
		t.Errorf("there is the time: %+v", p)
	}
}
