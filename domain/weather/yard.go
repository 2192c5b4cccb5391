package weather

import (
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Yard is what the days of one yard share. It may be used from several
// goroutines, and remembers the days it was asked for.
type Yard struct {
	yard    *book.Yard
	place   Place
	numbers practice.Numbers
	limits  limits

	mu   sync.RWMutex
	days map[calendar.Day]*Flight
}

// NewYard is the weather of a yard as a view knows it; of a yard that nobody
// described, with days that are all assumed.
func NewYard(v *book.View, id book.YardID) *Yard {
	y := v.Yard(id)
	return &Yard{
		yard: y, place: PlaceOf(y),
		numbers: v.Numbers(), limits: limitsOf(v.Numbers()), days: map[calendar.Day]*Flight{},
	}
}

// unplacedLat is at what latitude a yard lies that has no place: half way from
// the equator to the pole.
const unplacedLat = 45

// PlaceOf is where a yard lies; one without a place lies where the clocks of its
// zone go with the sun.
func PlaceOf(y *book.Yard) Place {
	if y.Lat != 0 || y.Lon != 0 {
		return Place{y.Lat, y.Lon}
	}
	_, winter := time.Date(2027, 1, 1, 12, 0, 0, 0, y.Zone).Zone()
	_, summer := time.Date(2027, 7, 1, 12, 0, 0, 0, y.Zone).Zone()
	return Place{unplacedLat, time.Duration(min(winter, summer)*int(time.Second)).Hours() * degreesAnHour}
}

// Hours are the expected hours of a day fit to fly.
func (y *Yard) Hours(d calendar.Day) float64 { return y.of(d).Hours }

// Day is the flight of a day. The second time it is asked for a day it costs a
// look into a map.
func (y *Yard) Day(d calendar.Day) Flight { return *y.of(d) }

func (y *Yard) of(d calendar.Day) *Flight {
	y.mu.RLock()
	f := y.days[d]
	y.mu.RUnlock()
	if f != nil {
		return f
	}
	reckoned := y.reckon(d)
	y.mu.Lock()
	defer y.mu.Unlock()
	if first := y.days[d]; first != nil {
		return first
	}
	y.days[d] = &reckoned
	return &reckoned
}

// reckon asks what is told of a day, the closest first, then the month.
func (y *Yard) reckon(d calendar.Day) Flight {
	if h, ok := y.yard.Hours[d]; ok {
		if f, ok := y.byHour(h); ok {
			return f
		}
	}
	if w, ok := y.yard.Weather[d]; ok {
		if w.Sign != 0 {
			return y.ofSign(w)
		}
		if f, ok := y.ofRow(w); ok {
			return f
		}
	}
	if f, ok := y.ofNormal(d, y.normal(d)); ok {
		return f
	}
	if n, ok := y.following(d); ok {
		if f, ok := y.ofNormal(d, n); ok {
			f.Layer, f.Why = Assumed, "the month is not told; as those that are make it, "+f.Why
			return f
		}
	}
	return y.assumed()
}
