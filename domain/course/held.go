package course

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Held is what a nuc may hold at the start of a day, and how that was found.
type Held struct {
	Belief
	Row     calendar.Day // the day at whose start it is so
	From    calendar.Day // the first day of this life; 0: nothing is known of it
	Weak    bool         // too few bees were seen, and none given since
	Weighed []Weighed    // the looks, in order
}

// Weighed is one look and what it was worth.
type Weighed struct {
	Day           calendar.Day // on which it was made
	Sight         Sight
	Before, After Chances
	Amiss         bool // nothing that could be held explains it: what was known is dropped
}

// take takes an event into the belief at its row.
func (m *Model) take(h *Held, e event) {
	m.look(h, e)
	m.act(&h.Belief, e)
	h.Weak = e.bees.weak(h.Weak)
}

// act is what an event does, apart from what was seen.
func (m *Model) act(b *Belief, e event) {
	switch e.do {
	case queenless:
		*b = m.Queenless(e.young)
	case cellGiven:
		m.GiveCell(b, e.out.Emerging)
	case virginPutIn:
		m.PutInVirgin(b, e.age)
	case queenPutIn:
		m.PutInQueen(b)
	case broodGiven:
		if e.young {
			m.GiveBrood(b)
		}
	case brokenDown:
		m.BreakDown(b, e.young)
	case looked:
		if e.sight.Cell == book.CellTornAtSide {
			b.torn()
		}
	}
}

func (m *Model) look(h *Held, e event) {
	if e.sight.Empty() {
		if e.sight.Silent && h.sum(workers, workerDays) > 0 {
			m.Weigh(&h.Belief, e.sight)
		}
		return
	}
	w := Weighed{Day: e.day, Sight: e.sight, Before: h.Chances()}
	if m.Weigh(&h.Belief, e.sight) < unexplained {
		w.Amiss = true
		h.Belief = m.Unknown()
		m.Weigh(&h.Belief, e.sight)
	}
	w.After = h.Chances()
	h.Weighed = append(h.Weighed[:len(h.Weighed):len(h.Weighed)], w)
}

// begin is the belief before a life's first event: one that begins with a look
// was never told how it began.
func (m *Model) begin(first event) Held {
	h := Held{Belief: m.Queenless(false), Row: first.row, From: first.row}
	if first.do == looked || first.do == brokenDown {
		h.Belief = m.Unknown()
	}
	return h
}

// Held is what a nuc may hold at the view's instant, as far as its present life
// is in the book; an empty nuc has no From.
func (c *Course) Held(n *book.Nuc) *Held {
	a := c.ask(n)
	if events, row := a.life(); len(events) > 0 {
		return a.held(events, row)
	}
	return &Held{}
}

// life is a nuc's present life and the row of the view's instant; an empty nuc
// has none.
func (a asked) life() ([]event, calendar.Day) {
	events := a.events()
	if a.nuc.Holds.Condition == book.Empty || len(events) == 0 {
		return nil, 0
	}
	return events, max(a.rowOf(a.view.On()), events[len(events)-1].row)
}

// held goes through a life, or on from the same life a day before.
func (a asked) held(events []event, row calendar.Day) *Held {
	key := a.lifeKey(events, row)
	if h := a.lives.held.at(key); h != nil {
		return h
	}
	if last := events[len(events)-1].row; last < row {
		if was := a.lives.held.at(a.lifeKey(events, row-1)); was != nil {
			h := *was
			h.Belief, h.Row = h.After(a.step(row-1, h.Weak)), row
			return a.lives.held.keep(key, &h)
		}
	}
	var last Held
	a.replay(events, row, func(h *Held) { last = *h })
	return a.lives.held.keep(key, &last)
}

// replay goes through a life day by day, up to a row, and shows what is held at
// the start of each once its events are taken in.
func (a asked) replay(events []event, row calendar.Day, show func(*Held)) {
	h := a.lives.model.begin(events[0])
	for {
		for len(events) > 0 && events[0].row <= h.Row {
			a.lives.model.take(&h, events[0])
			events = events[1:]
		}
		show(&h)
		if h.Row >= row {
			return
		}
		h.Belief, h.Row = h.After(a.step(h.Row, h.Weak)), h.Row+1
	}
}
