package course

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Eggs is when a nuc's queen laid or will lay her first egg, as far as is known:
// the chance by day. It sums to the chance that one ever lays within the time
// that is looked ahead. A queen raised after one who laid counts no more.
type Eggs struct {
	from calendar.Day
	on   []float64 // by day
}

// eggsAhead is how many days are looked ahead.
const eggsAhead = 45

// eggs follows a belief ahead without a look.
func (a asked) eggs(h *Held) *Eggs {
	e := &Eggs{from: h.Row - layDays, on: make([]float64, layDays, layDays+eggsAhead)}
	for day := range layDays {
		e.on[layDays-1-day] = h.p[given.lays+day] + h.p[own.lays+day]
	}
	b := h.Belief
	for d := h.Row; d < h.Row+eggsAhead; d++ {
		b.move(given.lays, layDays, 1)
		b.move(own.lays, layDays, 1)
		b = b.After(a.step(d, h.Weak))
		e.on = append(e.on, b.p[given.lays]+b.p[own.lays])
	}
	return e
}

// Eggs is when the queen of a nuc laid or will lay her first egg.
func (c *Course) Eggs(n *book.Nuc) *Eggs {
	if h := c.Held(n); h.From != 0 {
		return c.ask(n).eggsOf(h)
	}
	return &Eggs{}
}

func (a asked) eggsOf(h *Held) *Eggs {
	key := eggsKey{h, string(a.yard.bytes(h.Row, h.Row+eggsAhead))}
	if e := a.lives.eggs.at(key); e != nil {
		return e
	}
	return a.lives.eggs.keep(key, a.eggs(h))
}

// Ever is the chance that she has laid or will lay within the time looked ahead.
func (e *Eggs) Ever() (sum float64) {
	for _, p := range e.on {
		sum += p
	}
	return sum
}

// By is the chance that she has laid by the end of a day.
func (e *Eggs) By(d calendar.Day) (sum float64) {
	for i := 0; i < len(e.on) && e.from+calendar.Day(i) <= d; i++ {
		sum += e.on[i]
	}
	return sum
}

// Day is the day by which a share of those who ever lay have laid; 0 when none do.
func (e *Eggs) Day(share float64) calendar.Day {
	want := share * e.Ever()
	var sum float64
	for i, p := range e.on {
		if sum += p; sum > 0 && sum >= want {
			return e.from + calendar.Day(i)
		}
	}
	return 0
}

// NotWorth is the first day from which waiting for another day never brings as
// much as a nuc's day is worth, a share of a queen; the day after the last one
// looked at when it always does.
func (e *Eggs) NotWorth(since calendar.Day, day float64) calendar.Day {
	left := 1 - e.By(since-1)
	not := since
	for d := since; d < e.from+calendar.Day(len(e.on)); d++ {
		on := e.on[d-e.from]
		if left > hardlyAny && on/left >= day {
			not = d + 1
		}
		left -= on
	}
	return not
}
