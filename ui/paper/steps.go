package paper

import (
	"fmt"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// step is a step of a batch by the day.
type step struct {
	what, when, span string
	done             bool // the book says so
}

// batchHour is an hour of a batch.
type batchHour struct {
	what  string
	short string // for a card
	at    time.Time
	hard  bool
}

// steps are the days of a batch, and its hours.
func (s *sheet) steps(r *state.Reading, b *book.Batch) (days []step, hours []batchHour) {
	graft := calendar.DayOf(b.At.Instant, s.zone)
	for _, w := range r.Windows(b) {
		from, best, by := graft+calendar.Day(w.From), graft+calendar.Day(w.Best), graft+calendar.Day(w.By)
		d := step{w.Step.String(), best.Short(), fmt.Sprintf("day %d", w.Best), done(b, w.Step)}
		switch {
		case w.Step == bee.HandsOff:
			d.when, d.span = fromTo(from, by, r.Day), fmt.Sprintf("day %d to %d", w.From, w.By)
		case w.From != w.By:
			d.span = fmt.Sprintf("day %d, %d to %d", w.Best, w.From, w.By)
		}
		days = append(days, d)
	}
	clock := r.Course.Clock(b.Batch)
	hours = []batchHour{
		{"cells out, best by", "best by", r.BestOut(b), false},
		{"cells out, hard by", "hard by", clock.Hard(), true},
		{"a virgin walks, 1 in 100", "virgin, 1 in 100", clock.FirstOut(0.01), false},
		{"a virgin walks, even chance", "even chance", clock.Even(), false},
		{"half of them out", "half of them out", r.Course.Emerges(b.Batch), false},
	}
	return days, hours
}

// done tells whether the book says that a step is done.
func done(b *book.Batch, s bee.Step) bool {
	switch s {
	case bee.ToFinisher:
		return !b.Moved.IsZero()
	case bee.CountTake:
		return b.Taken.Counted()
	case bee.CellsCapped:
		return b.Capped.Counted()
	case bee.CellsIn:
		return b.Unplaced() == 0
	default:
		return false
	}
}

// fromTo is a span of days as it is read on another: "6 – 9 May", "30 Apr – 3 May", "3 – 9 Jan 2028".
func fromTo(from, by, today calendar.Day) string {
	const weekday, ofMonth = len("Mon "), len(" May")
	first, last := from.Short()[weekday:], by.Short()[weekday:]
	_, month, _ := from.Date()
	if _, m, _ := by.Date(); m == month {
		first = first[:len(first)-ofMonth]
	}
	if year, _, _ := by.Date(); by.ShortFrom(today) != by.Short() {
		last += fmt.Sprintf(" %d", year)
	}
	return first + " – " + last
}
