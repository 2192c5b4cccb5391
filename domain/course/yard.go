package course

import (
	"encoding/binary"
	"maps"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// yardDays are the hours of a yard's days as the view knows them, laid out
// once: the days around the view's are asked for thousands of times.
type yardDays struct {
	of      *book.Yard
	weather *weather.Yard
	from    calendar.Day
	hours   []float64
	raw     []byte // of hours
}

// daysBack and daysAhead of the view's day are laid out.
const (
	daysBack  = 150
	daysAhead = 120
)

func newYardDays(v *book.View, id book.YardID) *yardDays {
	y := &yardDays{of: v.Yard(id), weather: weather.NewYard(v, id), from: v.Today() - daysBack, hours: make([]float64, daysBack+daysAhead)}
	for i := range y.hours {
		y.hours[i] = y.weather.Hours(y.from + calendar.Day(i))
		y.raw = binary.LittleEndian.AppendUint64(y.raw, math.Float64bits(y.hours[i]))
	}
	return y
}

// goOn takes over the yards of an earlier course whose days are as they were.
func (c *Course) goOn(was *Course) {
	was.mu.Lock()
	defer was.mu.Unlock()
	c.laidBefore = maps.Clone(was.laid)
	for id, y := range was.yards {
		if y.from == c.view.Today()-daysBack && weather.Same(y.of, c.view.Yard(id)) {
			c.yards[id] = y
		}
	}
}

// at are the hours of a day fit to fly.
func (y *yardDays) at(d calendar.Day) float64 {
	if i := int(d - y.from); i >= 0 && i < len(y.hours) {
		return y.hours[i]
	}
	return y.weather.Hours(d)
}

// bytes are the hours of the days from one to before another, for a key.
func (y *yardDays) bytes(from, to calendar.Day) []byte {
	if from >= y.from && to <= y.from+calendar.Day(len(y.hours)) && from <= to {
		return y.raw[8*(from-y.from) : 8*(to-y.from)]
	}
	var k []byte
	for d := from; d < to; d++ {
		k = binary.LittleEndian.AppendUint64(k, math.Float64bits(y.at(d)))
	}
	return k
}

// step is the step of a day at a yard, of a nuc that may have too few bees.
func (a asked) step(d calendar.Day, weak bool) *Day {
	return a.lives.day(dayKey{a.yard.at(d), a.loss, weak})
}

// told tells whether anything is known of the weather of some of the days.
func (y *yardDays) told(from, to calendar.Day) bool {
	for d := from; d <= to; d++ {
		if l := y.weather.Day(d).Layer; l == weather.Seen || l == weather.Forecast {
			return true
		}
	}
	return false
}
