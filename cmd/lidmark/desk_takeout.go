package main

import (
	"io"
	"path/filepath"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/storage/geofile"
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
	season := o.now().Season
	err := storage.WriteFile(e.Path, func(w io.Writer) error { return d.written(w, e, season) })
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	tell(good("written: " + filepath.Base(e.Path)))
}

// written writes a season in an open form: tables as of the instant looked at,
// deadlines from now on.
func (d *desk) written(w io.Writer, e state.TakeOut, season *book.Season) error {
	name, v := filepath.Base(e.Path), season.At(e.On)
	switch e.Form {
	case state.NucTable:
		return table.Nucs(v).WriteAs(name, "nucs", w)
	case state.BatchTable:
		return table.Batches(v).WriteAs(name, "batches", w)
	case state.LookTable:
		return table.Looks(v).WriteAs(name, "looks", w)
	case state.PlanTable:
		return table.Plans(v).WriteAs(name, "plans", w)
	case state.OrderTable:
		return table.Orders(v).WriteAs(name, "orders", w)
	case state.CalendarFile:
		now := season.At(d.clock())
		return ics.Write(w, events(now), now.Zone(), now.On())
	case state.GroundFile:
		origin, err := originOf(v, e.Yard)
		if err != nil {
			return err
		}
		return geofile.Write(w, geofile.SheetOf(v, e.Yard), origin, book.Exactly)
	default:
		return jsonl.WriteSeason(w, season, book.Exactly)
	}
}

// events are the deadlines of the days ahead, and what of an earlier file stands no more.
func events(v *book.View) (all []ics.Event) {
	for _, dl := range rules.Judge(v).Calendar(v.Today(), v.Today()+calendar.Day(calendarDays)) {
		mark := ics.Deadline{ID: dl.ID, Day: dl.Day, At: dl.At, Hard: dl.Hard, Off: dl.Off, What: dl.Title(v), Do: dl.Do, Alarms: dl.Alarms, Lines: v.Season().Len()}
		all = append(all, mark.Event(v.Zone()))
	}
	return all
}
