package weather_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// season is a yard of 60 days: 30 told by the hour, 5 foretold, the rest of normals.
func season() (*book.View, []calendar.Day) {
	p := (&booktest.Pen{}).At("2027-05-20 18:00")
	p.Write(book.YardDescribed{Yard: hill, Name: "Hill", Lat: 50, Lon: 10, Zone: "Europe/Berlin"})
	var days []calendar.Day
	for i := range 60 {
		d := today - 30 + calendar.Day(i)
		days = append(days, d)
		switch f := hourly(d, 24, 21, 3, 0, 0.7); {
		case i <= 30:
			p.Write(f)
		case i <= 35:
			f.Forecast = true
			p.Write(f)
		}
	}
	for m := range 12 {
		p.Write(book.WeatherNormal{Yard: hill, Month: m + 1, Low: book.Said(9), High: book.Said(20), Rainy: book.Said(0.4)})
	}
	return p.View("2027-05-20 19:00"), days
}

func BenchmarkSixtyDaysCold(b *testing.B) {
	v, days := season()
	v.Yard(hill)
	for b.Loop() {
		y := weather.NewYard(v, hill)
		for _, d := range days {
			y.Day(d)
		}
	}
}

// BenchmarkSixtyDaysFloor is the sun of the same days and nothing else.
func BenchmarkSixtyDaysFloor(b *testing.B) {
	_, days := season()
	berlin := zone(b, "Europe/Berlin")
	for b.Loop() {
		for _, d := range days {
			weather.SunOn(d, berlin, weather.Place{Lat: 50, Lon: 10})
		}
	}
}

func BenchmarkDayWarm(b *testing.B) {
	v, days := season()
	y := weather.NewYard(v, hill)
	for _, d := range days {
		y.Day(d)
	}
	for b.Loop() {
		for _, d := range days {
			y.Hours(d)
		}
	}
}

// BenchmarkDayWarmFloor is a look into a map of as many days.
func BenchmarkDayWarmFloor(b *testing.B) {
	_, days := season()
	known, sum := map[calendar.Day]*weather.Flight{}, 0.0
	for _, d := range days {
		known[d] = &weather.Flight{}
	}
	for b.Loop() {
		for _, d := range days {
			sum += known[d].Hours
		}
	}
}

func TestAWarmDayAllocatesNothing(t *testing.T) {
	v, days := season()
	y := weather.NewYard(v, hill)
	y.Day(days[0])
	y.Day(days[50])
	if n := testing.AllocsPerRun(100, func() { y.Day(days[0]); y.Hours(days[50]) }); n != 0 {
		t.Errorf("%g allocations of days that are known", n)
	}
}
