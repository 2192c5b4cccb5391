package review

import (
	"sync"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// reckoner is one question: a judged view, what is in hand, and the day by which
// queens are wanted.
type reckoner struct {
	judged  *rules.Judged
	view    *book.View
	course  *course.Course
	model   *course.Model
	numbers practice.Numbers
	hand    Hand
	today   calendar.Day
	by      calendar.Day

	noEggs, noOpened, nothing  *course.Figure // chances by state that a look finds nothing
	isNone, isOwn, one, reigns *course.Figure
	queen                      *course.Figure // somebody who tears down what is given
	idle                       *course.Figure // nobody who lays workers
	worthNow                   *course.Figure // what a queen is worth if caught now

	horizons map[course.Spot]*horizon
	robbed   map[book.YardID]bool // robbers are about: no box is opened to look
	asks     map[book.NucID]asks
	times    times
	mu       sync.Mutex
	out      map[outKey]course.Emerging
}

type outKey struct {
	yard  book.YardID
	batch book.BatchID
	row   calendar.Day
}

func newReckoner(j *rules.Judged, hand Hand, by calendar.Day) *reckoner {
	c := j.Course()
	v := c.View()
	r := &reckoner{
		judged: j, view: v, course: c, model: c.Model(), numbers: v.Numbers(), hand: hand, today: v.Today(), by: by,
		horizons: map[course.Spot]*horizon{}, robbed: map[book.YardID]bool{}, asks: asked(j.Findings()), times: timesOf(j, hand), out: map[outKey]course.Emerging{},
	}
	for _, f := range j.Findings() {
		if f.Rule == rules.BeingRobbed && f.Of.Kind == book.KindYard {
			r.robbed[f.Yard] = true
		}
	}
	r.sights()
	r.worthNow = atEnd(r.numbers).queens
	return r
}

// sights are what looks find, and what is there to be found.
func (r *reckoner) sights() {
	r.noEggs = r.model.Sees(course.Sight{Eggs: book.NoEggs, Queen: book.NoneSeen})
	opened, amiss := r.numbers.Get(practice.SeesCellSign), r.numbers.Get(practice.SeenAmiss)
	noOpened := func(s course.State) float64 {
		if ownQueen(s) && s.Holds != course.HoldsCell {
			return 1 - opened
		}
		return 1 - amiss
	}
	r.noOpened = course.Each(noOpened)
	r.nothing = r.noEggs.Times(r.noOpened)
	r.isNone = shareOf(func(s course.State) bool { return s.Holds == course.HoldsNone })
	r.isOwn = shareOf(func(s course.State) bool {
		return ownQueen(s) && s.Holds != course.HoldsCell && s.Holds != course.HoldsLaying
	})
	r.queen = shareOf(func(s course.State) bool {
		return s.Holds != course.HoldsNone && !(ownQueen(s) && s.Holds == course.HoldsCell)
	})
	r.idle = shareOf(func(s course.State) bool { return s.Holds != course.HoldsLaying })
	r.one = shareOf(func(course.State) bool { return true })
	late, finds := r.numbers.Days(practice.VirginLate), r.numbers.Get(practice.FindsLaying)
	r.reigns = course.Each(func(s course.State) float64 {
		if s.Holds == course.HoldsDroneLayer || s.Holds == course.HoldsVirgin && s.Days >= late {
			return finds
		}
		return 0
	})
}

func ownQueen(s course.State) bool { return s.Own }

func shareOf(is func(course.State) bool) *course.Figure {
	return course.Each(func(s course.State) float64 {
		if is(s) {
			return 1
		}
		return 0
	})
}

func (r *reckoner) horizon(at course.Spot) *horizon {
	h := r.horizons[at]
	if h == nil {
		h = newHorizon(r.course, at, r.by)
		r.horizons[at] = h
	}
	return h
}

// emerging is when a cell of a batch emerges that is given now.
func (r *reckoner) emerging(yard book.YardID, w Ware, row calendar.Day) course.Emerging {
	key := outKey{yard, w.Batch, row}
	r.mu.Lock()
	defer r.mu.Unlock()
	out, ok := r.out[key]
	if !ok {
		out = r.course.Emerging(yard, w.Batch, r.view.On(), row)
		r.out[key] = out
	}
	return out
}
