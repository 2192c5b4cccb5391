package weather

import (
	"math"
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
	inSpell float64 // see [inSpell]

	mu     sync.RWMutex
	days   map[calendar.Day]*Flight
	spells map[calendar.Day]Spells
}

// NewYard is the weather of a yard as a view knows it; of a yard that nobody
// described, with days that are all assumed.
func NewYard(v *book.View, id book.YardID) *Yard {
	y := v.Yard(id)
	return &Yard{
		yard: y, place: PlaceOf(y),
		numbers: v.Numbers(), limits: limitsOf(v.Numbers()), inSpell: inSpell(v.Numbers()),
		days: map[calendar.Day]*Flight{}, spells: map[calendar.Day]Spells{},
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
	january, july := clocks(y)
	lat := float64(unplacedLat)
	if january > july { // their summer
		lat = -lat
	}
	return Place{lat, time.Duration(min(january, july)*int(time.Second)).Hours() * degreesAnHour}
}

// clocks are by how many seconds the clocks of a yard are ahead in January and in July.
func clocks(y *book.Yard) (january, july int) {
	_, january = time.Date(2027, 1, 1, 12, 0, 0, 0, y.Zone).Zone()
	_, july = time.Date(2027, 7, 1, 12, 0, 0, 0, y.Zone).Zone()
	return january, july
}

// tropic is the latitude up to which the sun is overhead twice a year: the tilt of the Earth's axis
// in degrees (IAU 2006, 23°26').
const tropic = 23.44

// Longest is the longest day of the year that is nearest to a day; not ok between the tropics, where
// it makes no season, and where nobody knows on which half of the Earth the yard lies: it has no
// place, and its clocks are not changed.
func (y *Yard) Longest(near calendar.Day) (longest calendar.Day, ok bool) {
	january, july := clocks(y.yard)
	unknown := y.yard.Lat == 0 && y.yard.Lon == 0 && january == july
	if unknown || math.Abs(y.place.Lat) < tropic {
		return 0, false
	}
	year, _, _ := near.Date()
	month := time.June
	if y.place.Lat < 0 {
		month = time.December
	}
	const midYear = 183 // days, about half of a year
	longest = calendar.Date(year, month, 21)
	switch away := near.Sub(longest); {
	case away > midYear:
		longest = calendar.Date(year+1, month, 21)
	case away < -midYear:
		longest = calendar.Date(year-1, month, 21)
	}
	return longest, true
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
