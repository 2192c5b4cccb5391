package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Wanting is a batch that wants bees and brood of colonies.
type Wanting struct {
	Ladder
	Size
}

// Wanting are the batches of an answer that want something of colonies.
func (a Answer) Wanting() []Wanting {
	all := make([]Wanting, len(a.Batches))
	for i, b := range a.Batches {
		all[i] = Wanting{b.Ladder, b.Size}
	}
	return all
}

// ask is what a batch asks of colonies on a day.
type ask struct {
	step             Step
	day              calendar.Day
	kilograms, combs float64
	turn             int // among those of a day: as batches are planned, then what is only wished
	of               int // which of those it is asked for; -1: of the book
}

// asks are those of some batches, and of those of the book that these are not.
func (p *Planner) asks(of []Wanting) (all []ask) {
	turn, own := 0, map[book.BatchID]int{}
	for _, w := range of {
		own[w.Not] = -1
	}
	for _, b := range p.waiting() {
		turn++
		if _, is := own[b.Not]; is {
			own[b.Not] = turn
			continue
		}
		all = append(all, p.asked(b, turn, -1)...)
	}
	for i, w := range of {
		t := own[w.Not]
		if t < 0 || w.Not.IsZero() {
			turn++
			t = turn
		}
		all = append(all, p.asked(w, t, i)...)
	}
	return all
}

// asked is what a batch asks for its starters and its nucs, as far as that is not done.
func (p *Planner) asked(w Wanting, turn, of int) (all []ask) {
	add := func(step Step, kilograms, combs float64) {
		r := w.Rung(step)
		if kilograms+combs > 0 && (of >= 0 || r.By >= p.view.Today()) {
			all = append(all, ask{step, r.Best, kilograms, combs, turn, of})
		}
	}
	add(SetUpStarter, p.BeesOfStarters(w.Size), 0)
	made := p.MadeUp(w.Ladder, w.Size)
	add(MakeUpNucs, made.Kilograms, made.Combs)
	return all
}

// starters are the starters of a batch of a size.
func (p *Planner) starters(s Size) float64 {
	return StartersFor(s.Larvae, p.numbers)
}
