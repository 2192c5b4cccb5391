package course

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// DayChances are what a nuc may hold on a day: at its start in [Course.Known] and
// [Course.Was], at its end in [Course.Evenings] and [Course.Hindsight].
type DayChances struct {
	Day calendar.Day `json:"day"`
	Chances
}

// Known is what was known of a nuc on each day of its present life, from its
// first to the view's, and on so many days ahead if nobody looks or does
// anything. Each day has what was seen until then and nothing later.
func (c *Course) Known(n *book.Nuc, ahead int) (days []DayChances) {
	a := c.ask(n)
	events, row := a.life()
	if len(events) > 0 {
		a.replay(events, row+calendar.Day(ahead), func(h *Held) {
			days = append(days, DayChances{h.Row, h.Chances()})
		})
	}
	return days
}

// Was is what a nuc held on each day of its present life, by all that is known
// at the view's instant: what was seen later speaks of earlier days too.
func (c *Course) Was(n *book.Nuc) (days []DayChances) {
	a := c.ask(n)
	events, row := a.life()
	if len(events) == 0 {
		return nil
	}
	var forward []Held
	a.replay(events, row, func(h *Held) { forward = append(forward, *h) })
	back := hindsight{model: a.lives.model, events: events, looks: forward[len(forward)-1].Weighed}
	back.weights = back.model.alike()
	for i := len(forward) - 1; i >= 0; i-- {
		h := forward[i]
		if i < len(forward)-1 {
			back.weights = a.step(h.Row, h.Weak).before(&back.weights)
		}
		h.weigh(back.weights)
		back.scale(h.scale())
		days = append(days, DayChances{h.Row, h.Chances()})
		back.before(h.Row)
	}
	slices.Reverse(days)
	return days
}

// hindsight is what the events after a row say of the states at its start, and
// the events and looks before.
type hindsight struct {
	model   *Model
	weights [states]float64
	events  []event
	looks   []Weighed
}

// scale keeps weights from becoming too small to tell apart.
func (b *hindsight) scale(sum float64) {
	for i := range b.weights {
		b.weights[i] /= sum
	}
}

// before goes back behind the events of a row. One look that nothing explained
// dropped what was known before; so what came after says nothing of that.
func (b *hindsight) before(row calendar.Day) {
	for len(b.events) > 0 && b.events[len(b.events)-1].row == row {
		e := b.events[len(b.events)-1]
		b.events = b.events[:len(b.events)-1]
		b.weights = b.model.beforeEvent(e, &b.weights)
		if e.sight.Empty() {
			continue
		}
		if b.looks[len(b.looks)-1].Amiss {
			b.weights = b.model.alike()
		}
		b.looks = b.looks[:len(b.looks)-1]
	}
}

// alike are weights that tell no state from another.
func (m *Model) alike() (w [states]float64) {
	for i := range w {
		w[i] = 1
	}
	return w
}

// beforeEvent carries weights of the states after an event back to those before.
func (m *Model) beforeEvent(e event, after *[states]float64) (w [states]float64) {
	seen := m.alike()
	if !e.sight.Empty() || e.sight.Silent {
		seen = m.saw.weights(e.sight)
	}
	for i := range w {
		h := Held{}
		h.p[i] = 1
		m.act(&h.Belief, e)
		for j, p := range h.p {
			w[i] += p * after[j]
		}
		w[i] *= seen[i]
	}
	return w
}
