package weather

import (
	"sync"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Yard is what the days of one yard share. It may be used from several
// goroutines, and remembers the days it was asked for.
type Yard struct {
	yard    *book.Yard
	numbers practice.Numbers

	mu   sync.RWMutex
	days map[calendar.Day]*Flight
}

// NewYard is the weather of a yard as a view knows it; of a yard that nobody
// described, with days that are all assumed.
func NewYard(v *book.View, id book.YardID) *Yard {
	return &Yard{yard: v.Yard(id), numbers: v.Numbers(), days: map[calendar.Day]*Flight{}}
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

// reckon asks the layers, the best first.
func (y *Yard) reckon(d calendar.Day) Flight {
	if w, ok := y.yard.Weather[d]; ok && w.Sign != 0 {
		return y.ofSign(w)
	}
	return y.assumed()
}
