package state

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

func noWind(s State) string {
	if why := noDraw(s); why != "" {
		return why
	}
	if _, ok := degreesOf(s.Typed(DrawWind)); !ok {
		return "write the bearing from which it blows, degrees from north: 240"
	}
	return ""
}

func (s State) windSaid() (State, []Effect) {
	from, _ := degreesOf(s.Typed(DrawWind))
	s = s.WithField(DrawWind, Field{})
	return s.write(fmt.Sprintf("wind mostly from %.0f°", from), calendar.Instantly(s.Now), book.WindSaid{Yard: s.Laying.Yard, From: from})
}
