package strength

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// The nights in °C of which the keeper's numbers say what they need. Where no
// night is known the middle one is assumed.
const (
	mildNight  = 20.0
	usualNight = 14.0
	coldNight  = 8.0
)

// Night is the low of a night in °C and where it comes from.
type Night struct {
	Celsius float64
	Known   bool // the yard's weather has it; else the usual one is assumed
	Ahead   bool // it is the low of the morning after: a forecast
}

// String is the night in words: "night of 8 °C forecast".
func (n Night) String() string {
	words := fmt.Sprintf("night of %.0f °C", n.Celsius)
	switch {
	case !n.Known:
		return words + " assumed"
	case n.Ahead:
		return words + " forecast"
	default:
		return words
	}
}

// NightOf is the night that follows a day at a yard: the low of the next day,
// or else of the day itself.
func NightOf(y *book.Yard, d calendar.Day) Night {
	if low, said := y.Weather[d+1].Low.Get(); said {
		return Night{Celsius: low, Known: true, Ahead: true}
	}
	if low, said := y.Weather[d].Low.Get(); said {
		return Night{Celsius: low, Known: true}
	}
	return Night{Celsius: usualNight}
}

// Need is how many bees a nuc needs to keep warm through a night: by straight
// lines between three nights, the ends beyond them, more in thin wood.
func Need(night Night, thin bool, n practice.Numbers) float64 {
	mild, usual, cold := n.Get(practice.NeedAt20C), n.Get(practice.NeedAt14C), n.Get(practice.NeedAt8C)
	c := min(max(night.Celsius, coldNight), mildNight)
	need := usual + (usualNight-c)/(usualNight-coldNight)*(cold-usual)
	if c > usualNight {
		need = usual + (c-usualNight)/(mildNight-usualNight)*(mild-usual)
	}
	if thin {
		need *= n.Get(practice.ThinWoodFactor)
	}
	return need
}
