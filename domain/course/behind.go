package course

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// DayChances are what a nuc may hold at the start of a day.
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
	weights := a.lives.model.alike()
	for i := len(forward) - 1; i >= 0; i-- {
		h := forward[i]
		if i < len(forward)-1 {
			weights = a.step(h.Row).before(&weights)
		}
		h.weigh(weights)
		if h.scale() == 0 {
			h = forward[i] // a look that nothing explained: what was before it says nothing of after
			weights = a.lives.model.alike()
		}
		days = append(days, DayChances{h.Row, h.Chances()})
		for len(events) > 0 && events[len(events)-1].row == h.Row {
			last := events[len(events)-1]
			weights, events = a.lives.model.beforeEvent(last, &weights), events[:len(events)-1]
		}
	}
	slices.Reverse(days)
	return days
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
	if !e.sight.Empty() {
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
