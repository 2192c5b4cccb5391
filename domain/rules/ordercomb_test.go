package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// The first step of a graft that an order lacks is its drone comb, while that can be hung in and a drone
// colony is told of; else that its breeder is confined.
func TestTheDroneCombOfAGraftThatAnOrderLacks(t *testing.T) {
	home := booktest.Yard("home")
	for _, c := range []struct {
		on     string
		drones bool
		comb   bool
	}{{"2027-04-02 08:00", true, true}, {"2027-04-02 08:00", false, false}, {"2027-05-28 08:00", true, false}} {
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
			book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
			book.OrderTaken{Order: booktest.Order("o"), Number: "1", Customer: "Mill Farm", Queens: 2, By: calendar.Date(2027, time.July, 20)},
		)
		if c.drones {
			p.Write(book.ColonyDescribed{Colony: booktest.Colony("S3"), Name: "S3", Yard: home, Roles: []book.Role{book.DroneSource}})
		}
		v := p.View(c.on)
		planner := plan.New(course.New(v))
		l, _ := planner.LadderBy(planner.GraftBy(plan.Wish{Queens: 2, By: calendar.Date(2027, time.July, 20)}))
		comb, breeder := l.Rung(plan.DroneComb).By, l.Rung(plan.Confine).By
		want, first := "its breeder is confined on "+breeder.Short(), breeder
		if c.comb {
			want, first = "drone comb is hung in by "+comb.Short()+", "+want, comb
		}
		told := 0
		for _, f := range rules.Findings(v) {
			if f.Rule != rules.OrderShort {
				continue
			}
			told++
			if by := calendar.DayOf(f.By, time.UTC); !strings.Contains(f.Do, "; "+want) || strings.Contains(f.Do, "drone comb") != c.comb || by != first {
				t.Errorf("%+v: by %s %q, want %q", c, by, f.Do, want)
			}
		}
		if told != 1 {
			t.Errorf("%+v: told %d times", c, told)
		}
	}
}
