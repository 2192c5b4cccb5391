package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// Work is what a day holds: minutes of work done or due, the minutes people
// are free, of a day under way those that are left, and deadlines.
type Work struct {
	Minutes   float64
	Free      float64
	Deadlines int
	Hard      bool // one of them is a deadline of nature
	Missed    bool // and what it asks for is not done
}

// Over is by how many minutes the work is longer than the time there is.
func (w Work) Over() float64 { return max(0, w.Minutes-w.Free) }

// WorkOn is the work of a day as the reading knows it: what was done on days
// past, the day's plan on the day read, and on days to come what is best done
// then, without driving and without what may be left over from before. Of days
// far from the one read only the free minutes are known.
func (r *Reading) WorkOn(d calendar.Day) Work {
	if w, ok := r.workdays()[d]; ok {
		return w
	}
	return Work{Free: r.freeOn(d)}
}

// freeOn are the minutes that people are free on a day; of a day under way those
// that are left.
func (r *Reading) freeOn(d calendar.Day) float64 {
	if r.UnderWay && d == r.Day {
		return rules.FreeLeft(r.View)
	}
	return float64(r.View.MinutesFree(d))
}

// workBack and workAhead are how many days about the day read are reckoned:
// more than the widest ribbon shows.
const (
	workBack  = 70
	workAhead = 150
)

// readWork files work and deadlines by day, from the day read on.
func (r *Reading) readWork() map[calendar.Day]Work {
	days := map[calendar.Day]Work{}
	due := r.judged.Work(r.Day, r.Day+workAhead)
	for d := r.Day - workBack; d <= r.Day+workAhead; d++ {
		w := Work{Minutes: due[d], Free: r.freeOn(d)}
		switch {
		case d < r.Day:
			w.Minutes = r.done(d)
		case d == r.Day:
			w.Minutes = r.Plan().Minutes
		}
		days[d] = w
	}
	for _, dl := range r.judged.Deadlines(r.Day-workBack, r.Day+workAhead) {
		w := days[dl.Day]
		w.Deadlines++
		w.Hard = w.Hard || dl.Hard
		w.Missed = w.Missed || dl.Hard && !dl.Done
		days[dl.Day] = w
	}
	return days
}

// done sums the minutes that the entries of a day took.
func (r *Reading) done(d calendar.Day) (minutes float64) {
	numbers := r.Numbers()
	for e := range r.View.OfDay(d) {
		if key, pieces := minutesOf(e.Fact, numbers); key != 0 {
			minutes += numbers.Get(key) * pieces
		}
	}
	return minutes
}

// minutesOf is which number says how long an entry's work took, and how often.
func minutesOf(f book.Fact, n practice.Numbers) (key practice.Key, pieces float64) {
	switch f := f.(type) {
	case book.Looked:
		return practice.MinutesLook, 1
	case book.RowLooked:
		return practice.MinutesLook, float64(f.Looked)
	case book.CellGiven:
		return practice.MinutesGiveCell, 1
	case book.VirginPutIn, book.QueenPutIn:
		return practice.MinutesPutInVirgin, 1
	case book.VirginCaged:
		return practice.MinutesCageCell, 1
	case book.NucMadeUp:
		return practice.MinutesMakeUp, 1
	case book.QueenCaught:
		return practice.MinutesCatch, 1
	case book.Grafted:
		return practice.MinutesGraftLarva, float64(f.Larvae)
	case book.CellsMoved:
		return practice.MinutesFeedRearer, 1
	case book.TakeCounted:
		return practice.MinutesCheckTake, plan.FinishersFor(float64(f.Accepted), n)
	case book.CappedCounted:
		return practice.MinutesCheckTake, plan.FinishersFor(float64(f.Capped), n)
	default:
		return careOf(f), 1
	}
}

// careOf is which number says how long the care of a nuc or colony took.
func careOf(f book.Fact) practice.Key {
	switch f.(type) {
	case book.Fed:
		return practice.MinutesFeed
	case book.BeesAdded, book.BroodGiven:
		return practice.MinutesAddBees
	case book.OwnCellsBroken:
		return practice.MinutesBreakDownCells
	case book.WildCellsSearched:
		return practice.MinutesSearchBrood
	case book.United:
		return practice.MinutesUnite
	case book.ShakenOut:
		return practice.MinutesShakeOut
	case book.EntranceSet:
		return practice.MinutesEntrance
	default:
		return 0
	}
}

// DoneMinutes are the minutes that what was written of the day read took, by the
// keeper's numbers.
func (r *Reading) DoneMinutes() float64 { return r.done(r.Day) }
