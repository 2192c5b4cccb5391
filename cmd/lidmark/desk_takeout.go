package main

import (
	"io"
	"path/filepath"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/storage/ics"
	"lidmark/storage/jsonl"
	"lidmark/storage/table"
	"lidmark/ui/state"
)

// calendarDays is how far ahead a calendar file tells deadlines.
const calendarDays = 60

// takeOut writes the book in an open form.
func (d *desk) takeOut(e state.TakeOut, tell func(state.Msg)) {
	o := d.opened()
	if o == nil {
		return
	}
	v := o.now().Season.At(d.clock())
	err := storage.WriteFile(e.Path, func(w io.Writer) error { return written(w, e.Form, v, d.clock()) })
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	tell(good("written: " + filepath.Base(e.Path)))
}

// written writes what a view holds in an open form.
func written(w io.Writer, form state.OpenForm, v *book.View, now time.Time) error {
	switch form {
	case state.NucTable:
		return table.Nucs(v).Write(w, table.Format{})
	case state.BatchTable:
		return table.Batches(v).Write(w, table.Format{})
	case state.LookTable:
		return table.Looks(v).Write(w, table.Format{})
	case state.CalendarFile:
		return ics.Write(w, events(v), v.Zone(), now)
	default:
		return jsonl.WriteSeason(w, v.Season())
	}
}

// events are the deadlines of the days ahead.
func events(v *book.View) (all []ics.Event) {
	for _, dl := range rules.Deadlines(v, v.Today(), v.Today()+calendar.Day(calendarDays)) {
		mark := ics.Deadline{ID: dl.ID, Day: dl.Day, At: dl.At, Hard: dl.Hard, What: dl.What, Do: dl.Do, Alarms: dl.Alarms}
		all = append(all, mark.Event(v.Zone()))
	}
	return all
}
