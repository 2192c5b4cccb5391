package state

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/season"
)

// SeasonDates are grafts that keep what is owed, as far as they are found. Nothing of
// them is in the book until they are made the plan.
type SeasonDates struct {
	season.Found      // the best so far
	Round, Of    int  // of improvement
	Known        bool // something is found
	Done         bool // it was looked for to the end
	Stopped      bool

	Clashes []season.Clash // there once they are planned, when it was looked for to the end

	Dropped []season.Dropped // planned grafts without which fewer are short, likewise

	of *Reading
	no int // of the search: what an earlier one still brings is left
}

// fits tells whether they are of what the book says now.
func (d *SeasonDates) fits(now *Reading) bool { return alike(d.of, now) }

// Looking tells whether they are still being looked for.
func (d *SeasonDates) Looking() bool { return !d.Done && !d.Stopped }

// SearchSeason is the effect that looks for grafts that keep what is owed.
// [SearchSeason.Search] brings the best so far again and again.
type SearchSeason struct {
	of     *Reading
	no     int
	wanted season.Wanted
}

func (SearchSeason) effect() {}

// SeasonFound brings what is found so far.
type SeasonFound struct{ dates SeasonDates }

func (SeasonFound) msg() {}

// Search looks for grafts, long for many orders. It tells after each round, as long as it is told to go on; it may run beside the
// window.
func (e SearchSeason) Search(goOn func(SeasonFound) bool) SeasonFound {
	d := SeasonDates{of: e.of, no: e.no}
	best := season.Progress{}
	d.Found = season.Search(e.of.planner(), e.wanted, func(p season.Progress) bool {
		better := !d.Known || p.Short != best.Short || p.Minutes != best.Minutes || p.Bound != best.Bound || p.Exact
		if better {
			d.Found, best, d.Known = p.Found(), p, true
		}
		d.Round, d.Of = p.Round, p.Rounds
		d.Stopped = !goOn(SeasonFound{d}) && !p.Exact || d.Stopped
		return !d.Stopped
	})
	d.Known = true
	if !d.Stopped {
		d.Dropped = d.Found.Dropped(e.of.planner(), func(season.Progress) bool {
			d.Stopped = !goOn(SeasonFound{d})
			return !d.Stopped
		})
	}
	d.Done = !d.Stopped
	d.Clashes = d.Found.Clashes(e.of.planner())
	return SeasonFound{d}
}

// datesTaken is the window with what is found so far; of another book or day it is
// left.
func (s State) datesTaken(m SeasonFound) State {
	d := m.dates
	was := s.seasoned.dates
	if was == nil || was.no != d.no {
		return s
	}
	if !d.Looking() {
		s.Busy = nil
	} else if was.Looking() {
		s.Busy = &Busy{"finding dates", float64(d.Round) / float64(max(1, d.Of))}
	}
	if was.Stopped {
		d.Stopped, d.Done = true, false
	}
	s.seasoned.dates = &d
	return s
}

// SeasonDates are the grafts that are found, or being looked for; nil while none were
// asked for in this book as it is.
func (s State) SeasonDates() *SeasonDates {
	if d := s.seasoned.dates; s.Book != nil && d != nil && d.fits(s.Present()) {
		return d
	}
	return nil
}

// MostField is the field that says how many minutes a day grafts may take at most.
const MostField = "season.most"

// mostMinutes is what stands in it; false where that is no number.
func (s State) mostMinutes() (n int, ok bool) {
	text := strings.TrimSpace(s.Typed(MostField))
	if text == "" {
		return 0, true
	}
	n, err := strconv.Atoi(text)
	return n, err == nil && n > 0 && n <= 24*60
}

// findDates looks for grafts that keep what is owed.
func findDates(s State) (State, []Effect) {
	most, _ := s.mostMinutes()
	of := s.Present()
	s.seasoned.searches++
	s.seasoned.dates = &SeasonDates{of: of, no: s.seasoned.searches}
	s.Busy = &Busy{"finding dates", -1}
	s = s.scrolled(SeasonPlace, -s.Scroll[SeasonPlace]) // what is found stands on top
	return s, []Effect{SearchSeason{of, s.seasoned.searches, season.Wanted{Promises: s.SeasonSheet().Promises, Minutes: float64(most)}}}
}

// datesPlanned writes the grafts that were found down, as one deed.
func datesPlanned(s State) (State, []Effect) {
	d := s.SeasonDates()
	ids, facts := s.Pen.IDs, []book.Fact(nil)
	for i := range d.Batches {
		facts = append(facts, d.Plan(i, book.BatchID(ids.Next())))
	}
	s.Pen.IDs, s.seasoned.dates = ids, nil
	words := fmt.Sprintf("%s planned from %s", counted(len(facts), "graft"), d.Batches[0].Day.ShortFrom(s.Today()))
	return s.write(words, calendar.Instantly(s.Now), facts...)
}

// datesStopped is the window while what is looked for is stopped: the best so far
// stays.
func datesStopped(s State) (State, []Effect) {
	d := *s.seasoned.dates
	d.Stopped, s.seasoned.dates, s.Busy = true, &d, nil
	return s, []Effect{StopWork{}}
}

// WrongMinutes tells whether what stands in the field of the minutes a day is none.
func (s State) WrongMinutes() bool {
	_, ok := s.mostMinutes()
	return !ok
}
