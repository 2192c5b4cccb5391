package state

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

func noWind(s State) string {
	if why := noDraw(s); why != "" {
		return why
	}
	if _, ok := windOf(s.Typed(DrawWind)); !ok {
		return "write from where it blows, such as W, SSW or 240"
	}
	return ""
}

// windRose are the sixteen ways from which wind blows, clockwise from north.
var windRose = []string{"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"}

// windOf is a typed way from which wind blows, degrees from north: "W", "ssw" or "240".
func windOf(typed string) (from float64, ok bool) {
	if i := slices.Index(windRose, strings.ToUpper(typed)); i >= 0 {
		return float64(i) * 360 / float64(len(windRose)), true
	}
	return degreesOf(typed)
}

// windWords are degrees by the name of the nearest of the sixteen ways.
func windWords(from float64) string {
	n := float64(len(windRose))
	return fmt.Sprintf("%s, %.0f°", windRose[int(math.Round(from*n/360))%len(windRose)], from)
}

func (s State) windSaid() (State, []Effect) {
	from, _ := windOf(s.Typed(DrawWind))
	s = s.WithField(DrawWind, Field{})
	return s.write("wind mostly from "+windWords(from), calendar.Instantly(s.Now), book.WindSaid{Yard: s.Laying.Yard, From: from})
}
