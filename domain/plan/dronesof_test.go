package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
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

// mildWinter is a book whose colonies could raise drones all winter, by its usual weather.
func mildWinter(t *testing.T, now string) (*booktest.Pen, func() *plan.Planner) {
	t.Helper()
	home, pen := booktest.Yard("home"), yardOf(4)
	pen.Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"})
	for m, high := range []float64{17, 18, 20, 22, 26, 29, 32, 32, 29, 25, 20, 18} {
		pen.Write(book.WeatherNormal{Yard: home, Month: m + 1, Low: book.Said(high - 8), High: book.Said(high), Rainy: book.Said(0.1)})
	}
	return pen, func() *plan.Planner { return plannerOf(pen, now) }
}

// A comb that only could be hung in gives no drones in winter, however mild it is: it counts from the
// shortest day on. One that hangs counts from the day on which it was hung.
func TestNoDronesInWinterOfACombThatDoesNotHang(t *testing.T) {
	home := booktest.Yard("home")
	for _, now := range []string{"2027-05-11 08:00", "2027-10-20 08:00", "2027-12-18 08:00"} {
		pen, planner := mildWinter(t, now)
		p := planner()
		ripe := calendar.Day(p.View().Numbers().Days(practice.DroneRipe))
		over := day(t, "2027-06-21") + 70 + calendar.Day(p.View().Numbers().Days(practice.DronesThrownOut)) // by the defaults
		first := day(t, "2027-12-21") + ripe
		for d := over; d < first; d++ {
			if got := p.DronesOn(home, d); got != 0 {
				t.Fatalf("at %s: on %s there are %.2f of the drones", now, d, got)
			}
		}
		if got := p.DronesOn(home, first); got != 1 {
			t.Errorf("at %s: on %s, ripe of a comb hung on the shortest day, there are %.2f of the drones", now, first, got)
		}
		if now != "2027-12-18 08:00" {
			continue
		}
		pen.Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2028-01-15"), Larvae: 10, Yard: home})
		pen.At("2027-11-25 10:00").Write(book.BatchReadied{Batch: booktest.Batch("b"), Step: book.DroneCombIn})
		p = planner()
		hung := day(t, "2027-11-25") + ripe
		if before, then := p.DronesOn(home, hung-1), p.DronesOn(home, hung); before != 0 || then != 1 {
			t.Errorf("of a comb that hangs since 25 November there are %.2f of the drones on %s, %.2f a day later", before, hung-1, then)
		}
	}
	// Later than the shortest day it can be hung in today.
	_, planner := mildWinter(t, "2028-01-10 08:00")
	p := planner()
	ripe := calendar.Day(p.View().Numbers().Days(practice.DroneRipe))
	if before, then := p.DronesOn(home, day(t, "2028-01-09")+ripe), p.DronesOn(home, day(t, "2028-01-10")+ripe); before != 0 || then != 1 {
		t.Errorf("of a comb hung today there are %.2f, %.2f of the drones when it is ripe", before, then)
	}
}

// Where nobody tells how warm it is no comb is believed in before drones are there by themselves: in
// the same winter whose weather is told there are some of a comb.
func TestNoDronesOfACombInWeatherThatNobodyTells(t *testing.T) {
	home, now := booktest.Yard("home"), "2027-05-11 08:00"
	pen := yardOf(4)
	pen.Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"})
	untold := plannerOf(pen, now)
	_, mild := mildWinter(t, now)
	told := mild()
	n := untold.View().Numbers()
	from := day(t, "2028-06-21") - calendar.Day(n.Days(practice.DronesFrom))
	for d := day(t, "2027-12-21") + calendar.Day(n.Days(practice.DroneRipe)); d < from; d++ {
		if no, some := untold.DronesOn(home, d), told.DronesOn(home, d); no != 0 || some != 1 {
			t.Fatalf("on %s there are %.2f of the drones, %.2f where the weather is told", d, no, some)
		}
	}
	if got := untold.DronesOn(home, from); got != 1 {
		t.Errorf("on %s there are %.2f of the drones", from, got)
	}
}
