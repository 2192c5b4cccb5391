package weather

import (
	"math"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// How many months of a yard have to be told for the others to follow from them, and how many days
// after the longest day it is warmest. Common practice, no source.
const (
	monthsLeast  = 3
	warmestAfter = 30
)

// following is what is usual in a month that nobody told, as the told months of the yard make
// it: the year's warmth is a wave that is highest some weeks after the longest day, through the
// lows and the highs that are told as near as can be; all else is as in the month that is told
// nearest. It is not ok where too few months are told, or they do not tell summer from winter.
func (y *Yard) following(d calendar.Day) (n book.WeatherNormal, ok bool) {
	var at, lows, highs []float64
	nearest := math.Inf(1)
	here := y.season(d)
	for i, told := range y.yard.Normals {
		low, lowSaid := told.Low.Get()
		high, highSaid := told.High.Get()
		if !lowSaid || !highSaid {
			continue
		}
		year, _, _ := d.Date()
		middle := y.season(calendar.Date(year, time.Month(i+1), 15))
		at, lows, highs = append(at, middle), append(lows, low), append(highs, high)
		if away := math.Abs(middle - here); away < nearest {
			n, nearest = told, away
		}
	}
	if len(at) < monthsLeast {
		return n, false
	}
	low, ok := wave(at, lows, here)
	high, too := wave(at, highs, here)
	if !ok || !too {
		return n, false
	}
	n.Low, n.High = book.Said(min(low, high)), book.Said(high)
	return n, true
}

// season is how far a day is in the wave of the year: 1 when it is warmest, -1 when it is
// coldest.
func (y *Yard) season(d calendar.Day) float64 {
	year, _, _ := d.Date()
	longest := calendar.Date(year, time.June, 21)
	if y.place.Lat < 0 {
		longest = calendar.Date(year, time.December, 21)
	}
	return math.Cos(2 * math.Pi * float64(d.Sub(longest)-warmestAfter) / 365.25)
}

// wave is what a straight line through some values makes of a place; not ok where it falls
// towards summer or the places are all alike.
func wave(at, values []float64, here float64) (float64, bool) {
	n, meanAt, mean := float64(len(at)), 0.0, 0.0
	for i := range at {
		meanAt, mean = meanAt+at[i]/n, mean+values[i]/n
	}
	var up, square float64
	for i := range at {
		up += (at[i] - meanAt) * (values[i] - mean)
		square += (at[i] - meanAt) * (at[i] - meanAt)
	}
	if square < apartLeast || up < 0 {
		return 0, false
	}
	return mean + up/square*(here-meanAt), true
}

// apartLeast is how far the told months lie apart in the year at least, as the sum of the squares of
// their places in its wave: April to June do, June and July alone do not. Common practice, no source.
const apartLeast = 0.2
