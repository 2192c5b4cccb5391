package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/weather"
)

// Drones are all there until so many days after the longest day, and thrown out evenly over so many
// more (the keeper's numbers drones_until and drones_thrown_out); the hours on which queens can mate
// become fewer by as much.
func TestDronesAreThrownOutOverSomeDays(t *testing.T) {
	home := booktest.Yard("home")
	pen := yardOf(4)
	pen.Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"})
	p := plannerOf(pen, "2027-05-11 08:00")
	begin := day(t, "2027-06-21") + 70 // by the defaults
	over := p.View().Numbers().Days(practice.DronesThrownOut)
	for after, want := range map[int]float64{-1: 1, 0: 1, over / 2: 0.5, over: 0, over + 30: 0} {
		d := begin + calendar.Day(after)
		if got := p.DronesOn(home, d); math.Abs(got-want) > 1e-9 {
			t.Errorf("%d days after they begin to be thrown out %.3f of the drones are there, want %.3f", after, got, want)
		}
		fit := weather.NewYard(p.View(), home).Hours(d)
		if got := p.MatingHours(home, d); fit == 0 || math.Abs(got-want*fit) > 1e-9 {
			t.Errorf("%d days after it queens can mate for %.3f h, want %.3f of %.1f h", after, got, want, fit)
		}
	}
}
