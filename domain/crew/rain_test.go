package crew_test

import (
	"math"
	"testing"

	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

// It rains until three: what of the free hours of the two is over by then is lost, and
// the only work that does not wait so long is told.
func TestRainUntilThree(t *testing.T) {
	j, on := demoDay(t)
	v := j.Course().View()
	dry := on.At(15, 0, v.Zone()) // Tilda is free from 14:00 to 18:00, Runa from 17:00 to 20:30
	if got := crew.HandsOf(v, on, 1, 0).After(dry).Minutes(); math.Abs(got-(180+210)) > 1e-9 {
		t.Errorf("%v min are left", got)
	}
	unknown := crew.Hands{{{Name: "Ida", Minutes: 240}}}.After(dry)
	if h := unknown[0][0]; h.Minutes != 240 || !h.From.Equal(dry) {
		t.Errorf("whose hours nobody told: %+v", h)
	}
	plan := j.Day(on)
	for _, task := range crew.InRain(plan, v.On(), dry) {
		if !task.Hard || !task.By.Before(dry) || task.By.Before(v.On()) {
			t.Errorf("%s by %v", task.Title, task.By)
		}
	}
	wet := rules.DayPlan{Stops: []rules.Stop{{Tasks: []rules.Task{
		{Title: "hard, before", Hard: true, By: on.At(12, 0, v.Zone())},
		{Title: "hard, after", Hard: true, By: on.At(16, 0, v.Zone())},
		{Title: "hard, past", Hard: true, By: on.At(6, 0, v.Zone())},
		{Title: "soft", By: on.At(12, 0, v.Zone())},
	}}}}
	if all := crew.InRain(wet, v.On(), dry); len(all) != 1 || all[0].Title != "hard, before" {
		t.Errorf("%+v", all)
	}
}
