package roll

import (
	"strings"
	"time"

	"lidmark/domain/calendar"
)

// when is when something in a list happened; the zero when is not said.
type when struct {
	day calendar.Day
	at  calendar.Moment
}

func (w when) said() bool { return !w.day.IsZero() }

// takeDay reads the day of a column.
func takeDay(of Column) func(*reading, *item, Cell) fault {
	return func(r *reading, it *item, c Cell) fault {
		w, f := r.when(c)
		it.on[of] = w
		return f
	}
}

// when reads a day, with the time where it is said.
func (r *reading) when(c Cell) (when, fault) {
	d, ok := splitDate(c.Text)
	if !ok || c.Kind == Number {
		do := likeDays
		if c.Kind == Number {
			do = "give the column the form of a date in the spreadsheet, or " + likeDays
		}
		return when{}, faulty(do, "%q is no day", c.Text)
	}
	day, f := d.calendar(c.Text, r.result.Dates, r.Year)
	if f != (fault{}) {
		return when{}, f
	}
	w := when{day, calendar.On(day, calendar.WholeDay, r.Zone)}
	if d.clock != "" {
		clock, err := time.Parse("15:04", d.clock)
		if err != nil {
			clock, err = time.Parse("15:04:05", d.clock)
		}
		if err != nil {
			return when{}, faulty("write the time like 18:00, or only the day", "%s is no time of day", d.clock)
		}
		w.at = calendar.Instantly(day.At(clock.Hour(), clock.Minute(), r.Zone))
	}
	return r.past(w, c.Text)
}

// past refuses what lies ahead. A day that is not over counts up to now.
func (r *reading) past(w when, text string) (when, fault) {
	switch {
	case w.day > r.today, w.at.Part == calendar.Exact && w.at.Instant.After(r.Now):
		return when{}, faulty("write down what has happened, or leave the cell empty", "%s lies ahead", text)
	case w.at.Instant.After(r.Now):
		w.at.Instant = calendar.Instantly(r.Now).Instant
	}
	return w, fault{}
}

// orderOf is the order in which the dates of a list are written, if all that
// can tell agree, and where that is told; asks is set where it must be asked.
func (r *reading) orderOf(rows []Row) (o Order, told Mistake, asks bool) {
	var seen [MonthFirst + 1]Mistake
	for _, row := range rows {
		for i, c := range r.Columns {
			text := row.Cell(i + 1).Text
			if !c.Day() || !strings.ContainsAny(text, "/-") {
				continue
			}
			d, ok := splitDate(text)
			sure, open := d.order()
			if ok && seen[sure].Row == 0 && (sure != Asked || open) {
				seen[sure] = Mistake{Row: row.Number, Column: i + 1, What: text}
			}
		}
	}
	switch day, month := seen[DayFirst], seen[MonthFirst]; {
	case r.Options.Dates != Asked:
		return r.Options.Dates, Mistake{}, false
	case day.Row > 0 && month.Row == 0:
		return DayFirst, day, false
	case month.Row > 0 && day.Row == 0:
		return MonthFirst, month, false
	}
	return Asked, Mistake{}, seen[Asked].Row > 0
}
