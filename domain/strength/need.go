package strength

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Night is the low of a night in °C and where it comes from.
type Night struct {
	Celsius float64
	Known   bool // the yard's weather has it; else the usual one is assumed
	Ahead   bool // it is the low of the morning after: a forecast
	Month   bool // it is what is usual in the month, by the yard's normals
}

// String is the night in words: "night of 8 °C forecast".
func (n Night) String() string {
	words := fmt.Sprintf("night of %.0f °C", n.Celsius)
	switch {
	case !n.Known:
		return words + " assumed"
	case n.Month:
		return words + " usual for the month"
	case n.Ahead:
		return words + " forecast"
	default:
		return words
	}
}

// NightOf is the night that follows a day at a yard: the low of the next day,
// or else of the day itself, else what is usual in the month; where nobody knows
// that, a usual one.
func NightOf(y *book.Yard, d calendar.Day, n practice.Numbers) Night {
	if low, said := y.Weather[d+1].Low.Get(); said {
		return Night{Celsius: low, Known: true, Ahead: true}
	}
	if low, said := y.Weather[d].Low.Get(); said {
		return Night{Celsius: low, Known: true}
	}
	_, month, _ := (d + 1).Date()
	if low, said := y.Normals[month-1].Low.Get(); said {
		return Night{Celsius: low, Known: true, Month: true}
	}
	return usualNight(n)
}

func usualNight(n practice.Numbers) Night { return Night{Celsius: n.Get(practice.UsualNight)} }

// Need is how many bees a nuc needs to keep warm through a night: by straight
// lines between three nights, the ends beyond them, more in thin wood.
func Need(night Night, thin bool, n practice.Numbers) float64 {
	mild, usual, cold := n.Get(practice.NeedAt20C), n.Get(practice.NeedAt14C), n.Get(practice.NeedAt8C)
	atMild, atUsual, atCold := n.Get(practice.MildNight), n.Get(practice.UsualNight), n.Get(practice.ColdNight)
	c := min(max(night.Celsius, atCold), atMild)
	need := usual + (atUsual-c)/(atUsual-atCold)*(cold-usual)
	if c > atUsual {
		need = usual + (c-atUsual)/(atMild-atUsual)*(mild-usual)
	}
	if thin {
		need *= n.Get(practice.ThinWoodFactor)
	}
	return need
}
