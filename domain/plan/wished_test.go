package plan_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// A reader is told whole hundredths, so what both are told as is what is compared: 89.5 of 100
// are told as 90, and 90 are as sure as 90.
func TestUnsureAsFarAsIsTold(t *testing.T) {
	for _, c := range []struct {
		chance, wished float64
		unsure         bool
	}{
		{0.9, 0.9, false},
		{0.895, 0.9, false},
		{0.8949, 0.9, true},
		{0.91, 0.9, false},
		{0.89, 0.9, true},
		{0.904, 0.9049, false},
		{0.904, 0.906, true},
		{1, 1, false},
		{0, 0, false},
	} {
		if got := plan.Unsure(c.chance, c.wished); got != c.unsure {
			t.Errorf("%v of %v wished: unsure is %v", c.chance, c.wished, got)
		}
	}
}

func TestASentenceBeginsWithACapital(t *testing.T) {
	for s, want := range map[string]string{"": "", "batch 3": "Batch 3", "überall": "Überall", "éclosion": "Éclosion", "č 4": "Č 4", "30 larvae": "30 larvae", "Rook": "Rook"} {
		if got := plan.Sentence(s); got != want {
			t.Errorf("%q begins as %q, want %q", s, got, want)
		}
	}
}

// Twelve queens are planned for an order that takes Rook: as sure as they are by its day. Its day put forward
// they are only as sure as by that, and of a graft of Plover none is for it any more.
func TestAPlanIsAsSureAsItsOrdersAre(t *testing.T) {
	by, order := day(t, "2027-07-20"), booktest.Order("3")
	of := book.OrderTaken{Order: order, Number: "3", Queens: 12, Line: "Rook", By: by}
	wished := func(line string, sooner calendar.Day) plan.Wished {
		taken := of
		taken.By -= sooner
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"}, taken,
			book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-06-01"), Line: line, Yard: booktest.Yard("home"), Larvae: 60, Nucs: 40, Queens: 12, By: by, Orders: []book.OrderID{order}})
		all := plan.New(course.New(p.View("2027-05-01 08:00")))
		for b := range all.View().ToGraft() {
			w, _ := all.Wished(b)
			return w
		}
		return plan.Wished{}
	}
	sure, sooner, other := wished("Rook", 0), wished("Rook", 14), wished("Plover", 0)
	if sure.Chance < 0.8 || strings.Contains(sure.Short(), " by ") {
		t.Errorf("%.3f, %q", sure.Chance, sure.Short())
	}
	if sooner.Chance > sure.Chance-0.2 || !strings.HasSuffix(sooner.Short(), " by Tue 6 Jul") {
		t.Errorf("sooner %.3f, before %.3f, %q", sooner.Chance, sure.Chance, sooner.Short())
	}
	if other.Chance != 0 || other.Short() != "reckoned under 1 of 100: order 3 takes Rook" || !strings.HasSuffix(other.Said(), "under 1 of 100, 90 wished: order 3 takes Rook") {
		t.Errorf("of another line %.3f, %q, %q", other.Chance, other.Short(), other.Said())
	}
	if got, of := other.Do(), sooner.Do(); got != "Graft a line that its order takes" || of != "Graft earlier or more, or promise fewer" {
		t.Errorf("of another line %q, sooner %q", got, of)
	}
}

// What may be promised of a plan is reckoned by the day by which its wish is: the sooner one on which
// its orders leave.
func TestAPlanIsReckonedByOneDay(t *testing.T) {
	by, order := day(t, "2027-07-20"), booktest.Order("3")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.OrderTaken{Order: order, Number: "3", Queens: 12, By: by - 14},
		book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-06-01"), Yard: booktest.Yard("home"), Larvae: 60, Nucs: 40, Queens: 12, By: by, Orders: []book.OrderID{order}})
	all := plan.New(course.New(p.View("2027-05-01 08:00")))
	for b := range all.View().ToGraft() {
		if d := all.Planned(b); d.Wished.Until != by-14 || math.Abs(d.Chances.AtLeast(12)-d.Wished.Chance) > 0.005 {
			t.Errorf("12 are %.3f sure by %s, and %.3f to be promised", d.Wished.Chance, d.Wished.Until, d.Chances.AtLeast(12))
		}
	}
}
