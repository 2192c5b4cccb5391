package rules_test

import (
	"reflect"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// TestKitOfWhatIsKept: the kit of all stops is that of the day; with two hours there
// is none of what waits, and nothing but what must be done where that takes longer.
func TestKitOfWhatIsKept(t *testing.T) {
	day := calendar.Date(2027, time.May, 11)
	s := book.NewSeason(time.LoadLocation, demo.Season(day, time.UTC))
	j := rules.Judge(s.At(day.At(7, 30, time.UTC)))
	plan := j.Day(day)
	if got := j.Kit(plan.Stops, day); !reflect.DeepEqual(got, plan.Kit) {
		t.Errorf("the kit of all stops is %v, that of the day %v", got, plan.Kit)
	}
	const hours = 2
	part := plan.Within(hours * 60)
	if part.Must > hours*60 && part.Minutes != part.Must {
		t.Errorf("%v min must be done, and %v are kept for %d h", part.Must, part.Minutes, hours)
	}
	cages := func(kit []rules.KitLine) (n float64) {
		for _, k := range kit {
			if strings.HasPrefix(k.Goods, "queen cage") {
				n = k.Amount
			}
		}
		return n
	}
	caught := func(stops []rules.Stop) (n float64) {
		for _, task := range tasks(stops) {
			if task.Act == rules.ActCatchQueen {
				n += float64(len(task.Of))
			}
		}
		return n
	}
	if whole := cages(plan.Kit); whole == 0 || whole != caught(plan.Stops) {
		t.Errorf("%v queen cages for %v queens caught: who is taken out to be rid of needs none", whole, caught(plan.Stops))
	}
	if got := cages(j.Kit(part.Stops, day)); got != caught(part.Stops) {
		t.Errorf("with %d h %v queen cages for %v queens caught", hours, got, caught(part.Stops))
	}
}
