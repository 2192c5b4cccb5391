package main

import (
	"cmp"
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
)

func (a *app) printCrew(v *book.View, d crew.Day, s crewShape, kits [][]rules.KitLine) {
	over := ""
	if d.Over > 0 {
		over = fmt.Sprintf(", %.0f min over%s", d.Over, afterThat(d.Last, v))
	}
	a.line("%s: %.0f min with a hard end%s; somebody can come again %s", fullDay(a.now.In(v.Zone()), d.On), s.Hard, over, hour(d.Next, v.Zone()))
	if s.Taken {
		a.line(rules.AsPlanned)
	}
	for _, work := range s.InRain {
		a.line("Cannot wait for the rain to end: %s", work)
	}
	if len(d.Sheets) == 0 {
		a.line("Nobody comes: nothing is done, all of it waits")
		a.printRing(v, s, d)
	}
	for i, sheet := range s.Sheets {
		if len(sheet.Visits) == 0 {
			a.line("%s is free: %s in %.0f min", sheet.Person, freeWord(d), sheet.Free)
			continue
		}
		a.line("%s, %s%s: %.0f min of work and %.0f of driving, of %.0f", sheet.Person, vanWord(sheet.Van), fromWord(v, d.Sheets[i].From), sheet.Working, sheet.Driving, sheet.Free)
		if p, ok := d.Sheets[i].Pressed(v.On()); ok {
			a.line("  %.0f min must be done by %s, and %.0f are there until then: begin sooner, or cage the cells", p.Work, hour(p.By, v.Zone()), p.There)
		}
		if len(kits[i]) > 0 {
			a.line("  takes along")
			var rows [][]string
			for _, row := range kitRows(kits[i]) {
				row[0] = "  " + row[0]
				rows = append(rows, row)
			}
			a.table(rows)
		}
		for _, visit := range sheet.Visits {
			a.line("  %s%s", cmp.Or(visit.Yard, "at the desk"), prefixed(", at dusk, ", hourOf(v, visit.Dusk)))
			var rows [][]string
			for _, w := range visit.Work {
				rows = append(rows, []string{"    " + workOf(w.Of), w.Title, fmt.Sprintf("%.0f min", w.Minutes), hardWord(v, d.On, w.Hard, w.by)})
			}
			a.table(rows)
		}
	}
	a.printWaits(v, d, s.Later)
	if !s.Exact {
		a.line("Another way may cost less: each van takes its best one after the other, and no piece of work is cut in two.")
	}
	a.line("Stings can kill: take a telephone along, and tell somebody where you are.")
}

// freeWord is why somebody has no work.
func freeWord(d crew.Day) string {
	if len(d.Waits) > 0 {
		return "nothing of what waits is worth doing, or can be done,"
	}
	return "nothing is left to do"
}

// vanWord is in which van somebody drives.
func vanWord(van int) string {
	if van == 0 {
		return "on foot"
	}
	return fmt.Sprintf("van %d", van)
}

// fromWord is since when somebody is there; "" where nobody told.
func fromWord(v *book.View, t time.Time) string {
	if t.IsZero() {
		return ""
	}
	return t.In(v.Zone()).Format(", from 15:04")
}

// afterThat says that nobody is free any more.
func afterThat(last time.Time, v *book.View) string {
	return ": nobody is free after " + last.In(v.Zone()).Format("15:04")
}

// printRing prints whom to ring when nobody comes.
func (a *app) printRing(v *book.View, s crewShape, d crew.Day) {
	for _, who := range s.Ring {
		a.line("  ring %s", who)
	}
	switch {
	case crew.Over(v, d.On):
		a.line("  the free hours of %s are over", d.On.Short())
	case len(s.Ring) == 0 && len(s.away) > 0:
		a.line("  away, as you say: %s; nobody else has free hours on %s", list(s.away), d.On.Short())
	case len(s.Ring) == 0:
		a.line("  nobody has free hours on %s: say otherwise with lidbook hours PERSON %s 8-12", d.On.Short(), d.On)
	}
}

// printWaits prints what waits: like work of one price and reason in one row, each with
// the minutes that there is no time for.
func (a *app) printWaits(v *book.View, d crew.Day, later float64) {
	if len(d.Waits) == 0 {
		a.line("Nothing waits.")
		return
	}
	a.line("Waits until %s, %.0f min, and is expected to cost %s:", hour(d.Next, v.Zone()), later, queensLost(d.Loss))
	var rows [][]string
	var of []book.Subject
	minutes := 0.0
	for i, w := range d.Waits {
		of, minutes = append(of, w.Of), minutes+w.Minutes
		if next := i + 1; next < len(d.Waits) && alike(w, d.Waits[next]) {
			continue
		}
		each := ""
		if len(of) > 1 {
			each = " each"
		}
		rows = append(rows, []string{"  " + names(v, of), w.Task.Title, fmt.Sprintf("%.0f min", minutes), queensLost(w.Price.Queens) + each, w.Price.Why, hardWord(v, d.On, w.Hard, w.HardBy())})
		of, minutes = nil, 0
	}
	a.table(rows)
}

// alike tells whether two that wait read the same.
func alike(a, b crew.Work) bool {
	return a.Task.Title == b.Task.Title && a.Price.Why == b.Price.Why && a.Hard == b.Hard && a.HardBy().Equal(b.HardBy()) && queensLost(a.Price.Queens) == queensLost(b.Price.Queens)
}

// hardWord says that work has a hard end, and by what hour; on another day than that of the
// work the day is said too.
func hardWord(v *book.View, on calendar.Day, hard bool, by time.Time) string {
	switch {
	case !hard:
		return ""
	case by.IsZero():
		return "hard"
	case calendar.DayOf(by, v.Zone()) == on:
		return "hard by " + by.In(v.Zone()).Format("15:04")
	default:
		return "hard by " + hour(by, v.Zone())
	}
}

// queensLost is what waiting costs, in queens.
func queensLost(n float64) string {
	if n < 0.005 {
		return "nothing"
	}
	return fmt.Sprintf("%.2f queens", n)
}

func workOf(all []thing) string {
	names := make([]string, len(all))
	for i, t := range all {
		names[i] = t.Name
	}
	return book.Together(names)
}
