package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// TestNothingIsUnitedOnAStandstill: once a disease is suspected in every yard of the demo
// season no work asks for bees to be put together that were apart; before some does.
func TestNothingIsUnitedOnAStandstill(t *testing.T) {
	day := calendar.Date(2027, 5, 11)
	p := &booktest.Pen{Entries: demo.Season(day, time.UTC)}
	mixes := func() (all []string) {
		for _, f := range rules.Judge(p.View("2027-05-11 07:30")).Findings() {
			do := strings.ToLower(f.Do)
			for _, word := range []string{"unite it", "or unite", "unite with", "shake out", "shake it out", "make up a nuc"} {
				if strings.Contains(do, word) {
					all = append(all, f.Do)
					break
				}
			}
		}
		return all
	}
	if len(mixes()) < 4 {
		t.Fatalf("before only %q", mixes())
	}
	for y := range p.View("2027-05-11 07:00").Yards() {
		p.At("2027-05-11 07:10").Write(book.DiseaseSuspected{Of: y.Yard.Subject(), What: "foul brood"})
	}
	if got := mixes(); len(got) > 0 {
		t.Errorf("on standstill: %q", got)
	}
}
