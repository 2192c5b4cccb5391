package plan

import (
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// Laid is when the queens of a planned batch lay their first eggs and are ready:
// the chance by day that one who was accepted does, driven by the hours fit to
// fly of the yard's days, as seen, foretold or usual, on which drones are there. Of usual days
// it is the mean over spells of warm and of cold weather, which all queens of a graft share.
type Laid struct {
	out   Out
	from  calendar.Day
	on    []float64   // a first egg, by day
	born  [][]float64 // the same by the day on which her cell emerged, as out has them
	fair  float64     // who ever lays where every day is a flying day
	after int         // days from the first egg to ready
	age   int         // least age of a queen who is handed over, in days
}

// laidAhead is how many days after the first emergence are followed: whoever has
// not laid by then will not.
const laidAhead = 50

// Out is when the cells of a batch emerge: the share by day.
type Out struct {
	From  calendar.Day
	Share []float64
}

// By is the share that has emerged by the end of a day.
func (o Out) By(d calendar.Day) (sum float64) {
	for i := 0; i < len(o.Share) && o.From+calendar.Day(i) <= d; i++ {
		sum += o.Share[i]
	}
	return sum
}

// Day is the day by the end of which a share has emerged.
func (o Out) Day(share float64) calendar.Day { return reaches(o.From, o.Share, share) }

// outOf is when a cell of a batch emerges, by the batch's clock.
func outOf(c bee.Clock, view zoned) Out {
	o := Out{From: view.day(c.Middle()) - outAround, Share: make([]float64, 2*outAround+1)}
	before := 0.0
	for i := range o.Share {
		out := c.Out((o.From + calendar.Day(i) + 1).Start(view.zone))
		o.Share[i], before = out-before, out
	}
	return o
}

// outAround is how many days before and after the middle cells may emerge.
const outAround = 4

// laidOf is when the queens of a graft lay, remembered: who looks for a day asks the same
// graft again.
func (p *Planner) laidOf(graft time.Time, yard book.YardID) Laid {
	key := laidKey{graft.Unix(), yard}
	p.mu.Lock()
	l, known := p.laid[key]
	p.mu.Unlock()
	if !known {
		one := bee.Batch{Graft: graft, Cells: 1}.Clock(p.numbers)
		l = p.laidBy(yard, outOf(one, zoned{p.course.Zone(yard)}))
		p.mu.Lock()
		p.laid[key] = l
		p.mu.Unlock()
	}
	return l
}

// laidKey is all on which it stands when queens lay, besides the view.
type laidKey struct {
	graft int64
	yard  book.YardID
}

// laidBy follows the queens of cells that emerge so, in a yard.
func (p *Planner) laidBy(yard book.YardID, o Out) Laid {
	n, m := p.numbers, p.course.Model()
	l := Laid{
		out: o, from: o.From, on: make([]float64, laidAhead),
		after: n.Days(practice.ReadyAfterFirstEgg), age: n.Days(practice.LeastAgeAtHandOver),
	}
	at, hours := p.course.SpotIn(yard), p.matingHours(yard, o.From, o.From+calendar.Day(len(o.Share)+laidAhead))
	for i, share := range o.Share {
		born := make([]float64, laidAhead)
		for spell, weight := range hours.weights {
			usual := func(d calendar.Day) *course.Day { return p.course.StepOf(at, hours.on[d-o.From][spell]) }
			follow(m, o.From+calendar.Day(i), weight*share, usual, func(d calendar.Day, first float64) {
				if at := int(d - l.from); at < len(l.on) {
					l.on[at] += first
					born[at] += first
				}
			})
		}
		l.born = append(l.born, born)
	}
	fine := m.Day(n.Get(practice.FitHoursPlus), 1)
	always := func(calendar.Day) *course.Day { return fine }
	follow(m, 0, 1, always, func(_ calendar.Day, first float64) { l.fair += first })
	return l
}

// follow carries a share of queens who emerge on a day through the days after,
// and tells of each day how many of them lay their first egg.
func follow(m *course.Model, out calendar.Day, share float64, day func(calendar.Day) *course.Day, tell func(calendar.Day, float64)) {
	if share == 0 {
		return
	}
	b := m.Emerged()
	for d := out + 1; d < out+laidAhead; d++ {
		b = b.After(day(d))
		tell(d, share*b.FirstEggs())
	}
}

// Out is when her cell emerges.
func (l Laid) Out() Out { return l.out }

// Ever is the chance that a queen who was accepted ever lays.
func (l Laid) Ever() float64 { return l.By(l.from + laidAhead) }

// By is the chance that she has laid by the end of a day.
func (l Laid) By(d calendar.Day) float64 { return upTo(l.on, int(d-l.from)) }

// Day is the day by which a share of those who ever lay have laid.
func (l Laid) Day(share float64) calendar.Day { return reaches(l.from, l.on, share*l.Ever()) }

// Ready is the chance that she is ready to hand over by the end of a day: so long
// after her first egg that her brood is capped and seen, and old enough. Who emerges
// early lays early too, so both are asked of those of one day together.
func (l Laid) Ready(d calendar.Day) (sum float64) {
	for i, born := range l.born {
		if out := l.out.From + calendar.Day(i); out+calendar.Day(l.age) <= d {
			sum += upTo(born, int(d-calendar.Day(l.after)-l.from))
		}
	}
	return sum
}

// upTo is the sum of chances by day up to one.
func upTo(on []float64, last int) (sum float64) {
	for _, p := range on[:min(len(on), max(0, last+1))] {
		sum += p
	}
	return sum
}

// ReadyDay is the day by which a share of those who ever lay are ready.
func (l Laid) ReadyDay(share float64) calendar.Day {
	d := l.Day(share) + calendar.Day(l.after)
	for d < l.from+laidAhead+calendar.Day(l.after+l.age) && l.Ready(d) < share*l.Ever() {
		d++
	}
	return d
}

// Ends is the part of the queens whom the keeper's rates let lay who ever do: what the
// yard's weather leaves of them.
func (l Laid) Ends() float64 { return l.InTime(l.from+laidAhead, true) }

// InTime is the part of the queens whom the keeper's rates let lay who do so, or
// are ready, by a day: one in fair weather and good time. The rates tell how many
// lay as a rule, this what the weather and the day take from it.
func (l Laid) InTime(by calendar.Day, laying bool) float64 {
	chance := l.Ready(by)
	if laying {
		chance = l.By(by)
	}
	if l.fair == 0 {
		return 0
	}
	return min(1, chance/l.fair)
}

// reaches is the day by the end of which chances by day come to a sum; the last
// one where they never do.
func reaches(from calendar.Day, on []float64, want float64) calendar.Day {
	var sum float64
	for i, p := range on {
		if sum += p; sum >= want {
			return from + calendar.Day(i)
		}
	}
	return from + calendar.Day(len(on)-1)
}
