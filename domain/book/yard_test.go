package book_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// Of two suspicions of one instant the same one is named every time.
func TestOneStandstillIsNamed(t *testing.T) {
	p := &booktest.Pen{Writer: "Ida"}
	one, two, yard := booktest.Nuc("1"), booktest.Nuc("2"), booktest.Yard("hill")
	p.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Hill", Home: true})
	p.Write(book.NucNamed{Nuc: one, Name: "A1"}, book.NucPlaced{Nuc: one, Yard: yard}, book.NucNamed{Nuc: two, Name: "A2"}, book.NucPlaced{Nuc: two, Yard: yard})
	p.At("2027-05-03 12:00").Write(
		book.DiseaseSuspected{Of: two.Subject(), What: "foulbrood"},
		book.DiseaseSuspected{Of: one.Subject(), What: "foulbrood"},
	)
	for range 20 {
		if s := p.View("2027-05-04 08:00").Yard(yard).Standstill; s == nil || s.Of != two.Subject() {
			t.Fatalf("named is %+v, want A2, which was written first", s)
		}
	}
}

// Of a day told more than once what was seen goes before what was foretold, and of
// two alike the later, whether it was told by the hour or not.
func TestTheLastThatWasToldOfADay(t *testing.T) {
	yard, day := booktest.Yard("hill"), calendar.Date(2027, 5, 3)
	hours := func(c float64, forecast bool) book.Fact {
		f := book.WeatherHours{Yard: yard, Day: day, Forecast: forecast}
		for i := range 24 {
			f.Celsius = append(f.Celsius, book.Said(c+float64(i%12)))
		}
		return f
	}
	sign := func(s book.Sign, forecast bool) book.Fact {
		return book.WeatherSeen{Yard: yard, Day: day, Sign: s, Forecast: forecast}
	}
	for name, c := range map[string]struct {
		told   []book.Fact
		byHour bool
		sign   book.Sign
		low    book.Amount
	}{
		"hours":                         {[]book.Fact{hours(5, false)}, true, 0, book.Said(5)},
		"hours after a sign":            {[]book.Fact{sign(book.Flying, false), hours(5, false)}, true, 0, book.Said(5)},
		"a sign after hours":            {[]book.Fact{hours(5, false), sign(book.Flying, false)}, false, book.Flying, book.Amount{}},
		"a forecast after hours seen":   {[]book.Fact{hours(5, false), sign(book.Flying, true)}, true, 0, book.Said(5)},
		"hours foretold after a sign":   {[]book.Fact{sign(book.HalfFit, false), hours(5, true)}, false, book.HalfFit, book.Amount{}},
		"a sign after hours foretold":   {[]book.Fact{hours(5, true), sign(book.HalfFit, false)}, false, book.HalfFit, book.Amount{}},
		"hours foretold twice":          {[]book.Fact{hours(5, true), hours(6, true)}, true, 0, book.Said(6)},
		"hours seen, then foretold":     {[]book.Fact{hours(5, false), hours(6, true)}, true, 0, book.Said(5)},
		"a sign foretold, hours behind": {[]book.Fact{sign(book.Flying, true), hours(6, true)}, true, 0, book.Said(6)},
	} {
		p := &booktest.Pen{}
		p.At("2027-05-02 08:00").Write(book.YardDescribed{Yard: yard, Name: "Hill", Home: true, Zone: "UTC"})
		y := p.At("2027-05-03 20:00").Write(c.told...).View("2027-05-04 08:00").Yard(yard)
		w := y.Weather[day]
		if _, byHour := y.Hours[day]; byHour != c.byHour || w.Sign != c.sign || w.Low != c.low {
			t.Errorf("%s: by the hour %v, sign %v, low %v; want %v, %v, %v", name, byHour, w.Sign, w.Low, c.byHour, c.sign, c.low)
		}
	}
}

// A day on which the clocks change has its low and high of 23 or 25 hours, and one
// with a gap has none.
func TestLowAndHighOfHours(t *testing.T) {
	f := book.WeatherHours{}
	for i := range 23 {
		f.Celsius = append(f.Celsius, book.Said(float64(i)))
	}
	if low, high := f.LowHigh(23 * time.Hour); low != book.Said(0) || high != book.Said(22) {
		t.Errorf("of 23 hours %v and %v", low, high)
	}
	if low, _ := f.LowHigh(24 * time.Hour); !low.IsZero() {
		t.Errorf("with an hour missing the low is %v", low)
	}
	f.Celsius[4] = book.Amount{}
	if low, _ := f.LowHigh(23 * time.Hour); !low.IsZero() {
		t.Errorf("with a gap the low is %v", low)
	}
}

func TestNormalsOfMonths(t *testing.T) {
	yard, p := booktest.Yard("hill"), &booktest.Pen{}
	p.At("2027-05-02 08:00").Write(book.WeatherNormal{Yard: yard, Month: 5, High: book.Said(18)}, book.WeatherNormal{Yard: yard, Month: 5, High: book.Said(19)},
		book.WeatherNormal{Yard: yard, Month: 13}, book.WeatherNormal{Yard: yard})
	y := p.View("2027-05-04 08:00").Yard(yard)
	for i, n := range y.Normals {
		if want := book.Said(19); (i == 4) != (n.High == want) || (i == 4) != (n.Yard == yard) {
			t.Errorf("month %d: %+v", i+1, n)
		}
	}
}
