package crew_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// Of what the demo asks today each thing put off until tomorrow costs what the day prices it with when
// nobody comes, told from half a hundredth of a queen on; and until later never less.
func TestPuttingOffCostsWhatWaitingCosts(t *testing.T) {
	pen := booktest.Pen{Entries: demo.Season(calendar.Date(2027, time.May, 11), time.UTC)}
	j := rules.Judge(pen.View("2027-05-11 08:00"))
	today := j.Course().View().Today()
	day, err := crew.Plan(j, today, nil)
	if err != nil {
		t.Fatal(err)
	}
	type asked struct {
		of   book.Subject
		rule rules.Rule
	}
	prices := map[asked]float64{}
	for _, w := range day.Waits {
		of := map[asked]bool{}
		for _, f := range w.Task.Findings {
			if f.Of == w.Of {
				of[asked{f.Of, f.Rule}] = true
			}
		}
		for one := range of {
			prices[one] += w.Price.Queens
		}
	}
	told := 0
	for one, want := range prices {
		cost, ok := crew.PutOff(j, today+1, book.PutOff{Of: one.of, Rule: string(one.rule)})
		if ok != (want >= 0.005) || math.Abs(cost.Queens-want) > 1e-9 {
			t.Errorf("%s: %.4f queens until tomorrow, the day has %.4f", one.rule, cost.Queens, want)
		}
		if later, _ := crew.PutOff(j, today+5, book.PutOff{Of: one.of, Rule: string(one.rule)}); later.Queens < cost.Queens-1e-9 {
			t.Errorf("%s: %.4f queens in five days, %.4f tomorrow", one.rule, later.Queens, cost.Queens)
		}
		if ok {
			told++
		}
	}
	if told < 3 {
		t.Errorf("%d things cost anything", told)
	}
}
