package course

import (
	"encoding/binary"
	"sync"

	"lidmark/domain/calendar"
)

// lives remembers what was reckoned of a life by everything it depends on
// besides the model: its events and the hours of its days. So nucs of one
// history are reckoned once, and the next day is one step from the day before.
// It changes no answer, and may be shared by the courses of several views.
type lives struct {
	model *Model
	mu    sync.Mutex
	held  map[string]*Held
	eggs  map[eggsKey]*Eggs
	days  map[dayKey]*Day
	out   map[Emerging]*emergence
}

// dayKey is what a day's step depends on.
type dayKey struct{ hours, yard float64 }

// livesKept is how many lives are remembered before all are forgotten.
const livesKept = 60_000

func (l *lives) heldAt(key string) *Held {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.held[key]
}

func (l *lives) keep(key string, h *Held) *Held {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.held == nil || len(l.held) > livesKept {
		l.held = map[string]*Held{}
	}
	l.held[key] = h
	return h
}

func (l *lives) eggsAt(key eggsKey) *Eggs {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.eggs[key]
}

func (l *lives) keepEggs(key eggsKey, e *Eggs) *Eggs {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.eggs == nil || len(l.eggs) > livesKept {
		l.eggs = map[eggsKey]*Eggs{}
	}
	l.eggs[key] = e
	return e
}

// day is the step of a day.
func (l *lives) day(hours, yard float64) *Day {
	key := dayKey{hours, yard}
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.days == nil {
		l.days = map[dayKey]*Day{}
	}
	d := l.days[key]
	if d == nil {
		d = l.model.Day(hours, yard)
		l.days[key] = d
	}
	return d
}

// emergence is the one of its shares.
func (l *lives) emergence(of Emerging) *emergence {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.out == nil {
		l.out = map[Emerging]*emergence{}
	}
	e := l.out[of]
	if e == nil {
		e = &emergence{of, len(l.out)}
		l.out[of] = e
	}
	return e
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
	return string(append(k, a.yard.bytes(events[0].row, row)...))
}
