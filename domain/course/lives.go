package course

import (
	"encoding/binary"
	"math"
	"sync/atomic"

	"lidmark/domain/calendar"
)

// lives remembers what was reckoned of a life by everything it depends on
// besides the model: its events and the hours of its days. So nucs of one
// history are reckoned once, and the next day is one step from the day before.
// It changes no answer, and may be shared by the courses of several views.
type lives struct {
	model *Model
	held  recent[string, *Held]
	eggs  recent[eggsKey, *Eggs]
	days  recent[dayKey, *Day]
	out   recent[Emerging, *emergence]
	outs  atomic.Int64 // emergences numbered so far
}

// How many of each a generation has. Whoever goes on from day to day needs the
// lives of the day before: 12,000 are those of 10,000 nucs of which no two are
// alike, 2.4 kB each, so that lives take 60 MB at most. A day is 17 kB and asked
// for by its hours: 600 are the days of two yards that differ in all of them.
const (
	livesKept = 12_000
	daysKept  = 600
)

func newLives(m *Model) *lives {
	l := &lives{model: m}
	l.held.most, l.eggs.most, l.out.most, l.days.most = livesKept, livesKept, livesKept, daysKept
	return l
}

// dayKey is what a day's step depends on.
type dayKey struct {
	hours, loss float64
	weak        bool
}

// day is the step of a day.
func (l *lives) day(key dayKey) *Day {
	if d := l.days.at(key); d != nil {
		return d
	}
	of := l.model
	if key.weak {
		of = of.weak
	}
	return l.days.keep(key, of.Day(key.hours, key.loss))
}

// emergence is the one of its shares. One that was forgotten gets another number,
// and what was remembered by the old one is reckoned again.
func (l *lives) emergence(of Emerging) *emergence {
	if e := l.out.at(of); e != nil {
		return e
	}
	return l.out.keep(of, &emergence{of, l.outs.Add(1)})
}

// eggsKey is everything that the eggs to come depend on besides the model.
type eggsKey struct {
	held  *Held
	hours string
}

// lifeKey is everything that what a nuc holds at a row depends on besides the
// model.
func (a asked) lifeKey(events []event, row calendar.Day) string {
	k := make([]byte, 0, 512)
	for _, e := range events {
		k = e.key(k)
	}
	k = binary.AppendVarint(k, int64(row))
	k = binary.LittleEndian.AppendUint64(k, math.Float64bits(a.loss))
	return string(append(k, a.yard.bytes(events[0].row, row)...))
}
