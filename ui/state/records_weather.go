package state

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
)

// weatherRecords are what can be written down of a yard's weather besides signs.
var weatherRecords = []Record{
	weatherDays,
	{
		Name: "weather measured", Word: "Weather as measured", Of: fromYard,
		Asks: asks(
			askWords("day", "Day", "today", "a day to come is forecast"),
			askFigure("low", "Low", "°C", 0), askFigure("high", "High", "°C", 0), askFigure("wind", "Wind at 10 m", "m/s", 0),
			askFigure("rain", "Rain", "mm", 0), askFigure("sun", "Sun", "%", 0),
		),
		Facts: func(s State, a *Answers) []book.Fact {
			f := book.WeatherSeen{Yard: a.Yard(), Day: a.NeededDay("day"), Wind: a.Amount("wind"), Rain: a.Amount("rain"), Sky: a.share("sun")}
			f.Low, f.High = a.warmths()
			f.Forecast = book.Foretold(f.Day, s.Today())
			return fact(f)
		},
	},
	{
		Name: "usual weather", Word: "Usual weather of a month", Of: fromYard, Asks: askNormal,
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.WeatherNormal{Yard: a.Yard(), Wind: a.Amount("wind"), Rainy: a.share("rainy"), Sky: a.share("sun")}
			f.Low, f.High = a.warmths()
			f.Spread = a.spread()
			for m := time.January; m <= time.December; m++ {
				if a.chosen("month") == strings.ToLower(m.String()) {
					f.Month = int(m)
				}
			}
			return fact(f)
		},
	},
}

// askSigns asks for signs, and says what the book has of the days about today.
func askSigns(s State) []Ask {
	note := "+ flying, ± half a day, − none; h for ±, 0 for −"
	if told := s.Present().signsAbout(s.yardMeant(s.Selection)); told != "" {
		note += ". In the book " + told
	}
	return []Ask{
		askWords("signs", "A sign a day", "+", note),
		askWords("first", "From", "today", "the first sign is of this day; days to come are forecast"),
	}
}

// signsAround is how many days before and after today are told.
const signsAround = 5

// signsAbout are the signs of the days about today, a dot where the book has none;
// "" where it has none at all.
func (r *Reading) signsAbout(yard book.YardID) string {
	var b strings.Builder
	first, told := r.Day-signsAround, false
	for d := first; d <= r.Day+signsAround; d++ {
		sign := "·"
		if w := r.View.Yard(yard).Weather[d]; w.Sign != 0 {
			sign, told = w.Sign.String(), true
		}
		b.WriteString(sign)
	}
	if !told {
		return ""
	}
	return fmt.Sprintf("from %s on: %s", first.Short(), b.String())
}

// askNormal asks for what is usual in a month, this one first.
func askNormal(s State) []Ask {
	var months []Option
	for m := time.January; m <= time.December; m++ {
		months = append(months, Option{strings.ToLower(m.String()), m.String()})
	}
	_, now, _ := s.Today().Date()
	month := askOne("month", "Month", months[now-1].Value, months)
	month.Note = "for days of which nobody said anything; a station's normals do"
	spread := askFigure("spread", "Days stray by", "", 0)
	_, degrees := s.Units.Step(1, "°C")
	spread.Note = degrees + ", as a standard deviation; the chance of a fit hour is reckoned over it. Blank: as in My numbers"
	return []Ask{
		month, askFigure("low", "Mean low", "°C", 0), askFigure("high", "Mean high", "°C", 0), spread,
		askFigure("wind", "Mean wind at 10 m", "m/s", 0), askFigure("rainy", "Days with rain", "%", 0), askFigure("sun", "Sun", "%", 0),
	}
}

// warmths are the low and the high of a day, of which one is needed.
func (a *Answers) warmths() (low, high book.Amount) {
	low, high = a.Amount("low"), a.Amount("high")
	l, lowSaid := low.Get()
	h, highSaid := high.Get()
	switch {
	case !lowSaid && !highSaid:
		a.Wrong("high", "write the low or the high, or both")
	case lowSaid && highSaid && l > h:
		a.Wrong("low", "it lies above the high: turn them round")
	}
	return low, high
}

// spread is by how much days stray from the mean, a difference of temperatures.
func (a *Answers) spread() book.Amount {
	v, said := a.Amount("spread").Get()
	if !said {
		return book.Amount{}
	}
	if v < 0 {
		a.Wrong("spread", "write by how many degrees days stray from the mean, 0 or more")
	}
	return book.Said(a.s.Units.StepBack(v, "°C"))
}

// share is a share typed in per cent.
func (a *Answers) share(name string) book.Amount {
	v, said := a.Amount(name).Get()
	if !said {
		return book.Amount{}
	}
	const all = 100
	if v < 0 || v > all {
		a.Wrong(name, "write it in per cent, 0 to 100")
		return book.Amount{}
	}
	return book.Said(v / all)
}
