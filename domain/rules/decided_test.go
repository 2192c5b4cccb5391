package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// TestADecisionAtOddsIsSaid: where the rules would now do something else than what was
// decided, the decision stays the task and says so, and they say what was decided.
func TestADecisionAtOddsIsSaid(t *testing.T) {
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	day := calendar.Date(2027, time.May, 11)
	season := book.NewSeason(time.LoadLocation, demo.Season(day, zone))
	now := day.At(7, 30, zone)
	d2 := season.At(now).NucNamed("D2")[0].NucNamed.Nuc
	ids := book.NewIDs(now, season, [32]byte{1})
	at := calendar.Instantly(now)
	season = season.With(ids.Entries(at, now, "Ida", book.Planned{Nuc: d2, What: book.PlanTakeOut, Day: day})...)
	told := 0
	for _, f := range rules.Findings(season.At(now)) {
		switch {
		case f.Of != d2.Subject():
		case f.Rule == rules.Decided:
			told++
			if f.Act != rules.ActTakeOutQueen || !strings.Contains(f.Why, "; by the rules now: look; without worker brood shake out or unite") {
				t.Errorf("decided: %s, %q", f.Act, f.Why)
			}
		case f.Rule == rules.VirginsTime:
			told++
			if f.Act != rules.ActNone || !strings.HasPrefix(f.Do, "Decided otherwise: take out the queen") {
				t.Errorf("the rule: %s, %q", f.Act, f.Do)
			}
		}
	}
	if told != 2 {
		t.Errorf("%d findings", told)
	}
}
