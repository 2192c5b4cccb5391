package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// backwardMost is how many days before the wished day a graft is looked for in any
// case, and backwardLeast how few: no numbers in range make a queen sooner. Conventions
// of the search.
const (
	backwardMost  = 100
	backwardLeast = 20
)

// allButNone is the part of the queens who would lay in fair weather from which on more
// are not looked for. Common practice, no source.
const allButNone = 0.98

// Back is the graft that was found for a day.
type Back struct {
	Ladder
	Passed calendar.Day // the latest graft by its days alone, where the weather lets so few of its queens lay that it is passed over; 0: none is
}

// Backward is the latest graft that is in time: of the queens who ever lay, the wished
// share are ready, or lay, by a day, and as many days before it as the keeper keeps in
// hand; and they are not much fewer than of the graft of which most are. Days on which
// nobody is free to graft, or to give its cells, are passed over. Where that leaves
// none, days are taken that have nothing in hand. Ok is false when no day from the
// first one on is in time, or the weather lets too few lay of those that are while a
// later graft makes sense; the ladder is then that of [Planner.Soonest].
func (p *Planner) Backward(by calendar.Day, laying bool, cells int, yard book.YardID, first calendar.Day) (b Back, ok bool) {
	s := backSearch{p, by - p.days(practice.PlanSlack), laying, cells, yard, first}
	if b, ok = s.find(); ok {
		return b, true
	}
	s.by = by
	if b, ok = s.find(); ok {
		return b, true
	}
	return Back{p.Ladder(p.GraftAt(p.Soonest(yard, first)), cells, yard), b.Passed}, false
}

// backSearch is what a graft is looked for.
type backSearch struct {
	p      *Planner
	by     calendar.Day
	laying bool
	cells  int
	yard   book.YardID
	first  calendar.Day
}

func (s backSearch) find() (b Back, ok bool) {
	wished := s.p.numbers.Get(practice.PlanInTime)
	from, best := s.most()
	sense := s.sense(best)
	for d := s.by - backwardLeast; d >= from; d-- {
		laid := s.p.laidOf(s.p.GraftAt(d), s.yard)
		in := laid.InTime(s.by, s.laying)
		if in < wished*laid.Ends() {
			continue
		}
		l := s.p.Ladder(s.p.GraftAt(d), s.cells, s.yard)
		switch {
		case l.nobodyFree():
		case in >= wished*best && sense:
			return Back{l, b.Passed}, true
		default:
			b.Passed = max(b.Passed, d)
		}
	}
	return b, false
}

// nobodyFree tells whether nobody is free to graft, or to give its cells.
func (l Ladder) nobodyFree() bool {
	return l.Rung(GraftLarvae).NobodyFree || l.Rung(GiveCells).NobodyFree
}

// sense tells whether a graft for the day makes sense by the weather: half of the queens can be
// had of one, or no later one makes more sense.
func (s backSearch) sense(best float64) bool {
	return best >= makesSense || s.p.lets(s.yard, s.p.Soonest(s.yard, s.first)) < makesSense
}

// GraftsFor is from which day on grafts are looked for that give queens by a day, none of
// them before the first; ok is false where the weather lets too few lay of all of them while
// a later graft makes sense: none is in time then, see [Planner.Backward].
func (p *Planner) GraftsFor(by calendar.Day, laying bool, yard book.YardID, first calendar.Day) (from calendar.Day, ok bool) {
	s := backSearch{p: p, by: by, laying: laying, yard: yard, first: first}
	from, best := s.most()
	return max(from, first), s.sense(best)
}

// most is the largest part of queens in time of a graft, by the week, and the day from
// which on grafts were asked. Further back than [backwardMost] the season is followed
// that runs then, or was last before, as long as more of its queens can be had.
func (s backSearch) most() (from calendar.Day, best float64) {
	from = s.by - backwardLeast
	for d := from; d >= s.first; d -= lastStep {
		in := s.p.laidOf(s.p.GraftAt(d), s.yard).InTime(s.by, s.laying)
		if d < s.by-backwardMost && best >= makesSense && (in < makesSense || best >= allButNone) {
			break
		}
		from, best = max(s.first, d-lastStep+1), max(best, in)
	}
	return from, best
}
