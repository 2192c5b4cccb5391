package main

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// markOver says of each step how much longer its day is, with the work of the book and all
// steps of the wish, than the time there is; nothing where nobody said what time there is.
func (s *wishShape) markOver(j *rules.Judged) {
	v := j.Course().View()
	if !v.HoursTold() {
		return
	}
	wish := map[string]float64{}
	last := v.Today()
	for _, m := range s.Days {
		wish[m.Day] += m.Minutes
		if d, err := calendar.ParseDay(m.Day); err == nil {
			last = max(last, d)
		}
	}
	book := j.Work(v.Today()+1, last)
	for i := range s.Days {
		m := &s.Days[i]
		d, err := calendar.ParseDay(m.Day)
		if err != nil {
			continue
		}
		free := float64(v.MinutesFree(d))
		if m.Book = book[d]; d == v.Today() {
			today := j.Day(d)
			m.Book, free = today.Minutes, today.Free
		}
		m.Over = round(max(0, m.Book+wish[m.Day]-free))
		m.Book = round(m.Book)
	}
}

// printWishDays prints the minutes of all grafts by day, and of days that are too long by
// how much.
func (a *app) printWishDays(v *book.View, s wishShape) {
	all, rows := 0.0, [][]string{}
	for i, m := range s.Days {
		all += m.Minutes
		over := ""
		if end := i+1 == len(s.Days) || s.Days[i+1].Day != m.Day; end && m.Over >= 1 {
			over = fmt.Sprintf("%.0f min over", m.Over)
			if m.Book >= 1 {
				over += fmt.Sprintf(", with %.0f in the book", m.Book)
			}
		}
		rows = append(rows, []string{"  " + isoDay(v, m.Day), m.Step, fmt.Sprintf("%.0f min", m.Minutes), over})
	}
	a.line("%.1f h of work, without the driving:", all/60)
	a.table(rows)
}
