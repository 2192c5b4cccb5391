package handover_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// The soonest day of an order that no graft keeps stands with its chance, the same as a wish has for it.
func TestTheSoonestDayHasItsChance(t *testing.T) {
	home, by := booktest.Yard("home"), day(t, "2027-06-01")
	p := (&booktest.Pen{}).At("2027-05-18 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"}, order("1", 6, "", by))
	for _, name := range []string{"A1", "A2", "A3", "A4", "A5", "A6", "A7", "A8", "A9"} {
		p.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name}, book.NucPlaced{Nuc: booktest.Nuc(name), Yard: home})
	}
	planner := plan.New(course.New(p.View("2027-05-20 08:00")))
	o := handover.New(planner).Orders[0]
	a := planner.Possible(plan.Wish{Queens: 6, By: by})
	if !o.Lost || o.Soonest != a.Soonest() || o.Soonest.Day <= by {
		t.Errorf("%+v, and the wish has %+v", o.Soonest, a.Soonest())
	}
	then := planner.Possible(plan.Wish{Queens: 6, By: o.Soonest.Day})
	if d := then.Chance - o.Soonest.Chance; d < -0.005 || d > 0.005 || then.Chance < 0.01 || then.Chance > 0.9 {
		t.Errorf("then with %v, and a wish for that day has %v", o.Soonest.Chance, then.Chance)
	}
}
