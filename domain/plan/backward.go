package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// backwardMost is how many days before the wished day a graft is looked for, and
// backwardLeast how few: no numbers in range make a queen sooner, and nobody
// grafts a season ahead for one order. Conventions of the search.
const (
	backwardMost  = 100
	backwardLeast = 20
)

// Backward is the ladder of the latest graft that is in time: of the queens who
// ever lay, the wished share are ready, or lay, by a day, and as many days before it
// as the keeper keeps in hand. Days on which nobody is free to graft, or to give its
// cells, are passed over. Where that leaves none, days are taken that have nothing in
// hand. Ok is false when no day from the first one on is in time; the ladder is then
// that of the first one looked at.
func (p *Planner) Backward(by calendar.Day, laying bool, cells int, yard book.YardID, first calendar.Day) (l Ladder, ok bool) {
	if l, ok = p.backward(by-p.days(practice.PlanSlack), laying, cells, yard, first); ok {
		return l, true
	}
	return p.backward(by, laying, cells, yard, first)
}

func (p *Planner) backward(by calendar.Day, laying bool, cells int, yard book.YardID, first calendar.Day) (l Ladder, ok bool) {
	wished := p.numbers.Get(practice.PlanInTime)
	for d := by - backwardLeast; d >= max(first, by-backwardMost); d-- {
		l = p.Ladder(p.GraftAt(d), cells, yard)
		in := l.Laid.Ready(by)
		if laying {
			in = l.Laid.By(by)
		}
		if in >= wished*l.Laid.Ever() && !l.Rung(GraftLarvae).NobodyFree && !l.Rung(GiveCells).NobodyFree {
			return l, true
		}
	}
	return p.Ladder(p.GraftAt(max(first, by-backwardMost)), cells, yard), false
}
