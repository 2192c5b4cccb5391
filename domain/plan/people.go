package plan

import (
	"cmp"
	"maps"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Part is one person's part of the minutes of a day.
type Part struct {
	Who           *book.Person
	Minutes, Free float64
}

// DayParts are the minutes of a day shared out to those who are free on it, whoever has
// most time first. Over is what nobody has time for.
type DayParts struct {
	Day           calendar.Day
	Minutes, Over float64
	Parts         []Part // of those who have some
}

// ByPerson shares minutes out by day, the first day first; none where nobody said when
// people are free.
func (p *Planner) ByPerson(all []Minutes) (days []DayParts) {
	if !p.view.HoursTold() {
		return nil
	}
	sum := map[calendar.Day]float64{}
	for _, m := range all {
		sum[m.Day] += m.Minutes
	}
	for _, d := range slices.Sorted(maps.Keys(sum)) {
		days = append(days, p.dayParts(d, sum[d]))
	}
	return days
}

func (p *Planner) dayParts(d calendar.Day, minutes float64) DayParts {
	day := DayParts{Day: d, Minutes: minutes, Over: minutes}
	for who := range p.view.People() {
		if free := who.FreeOn(d).Minutes(); free > 0 {
			day.Parts = append(day.Parts, Part{Who: who, Free: float64(free)})
		}
	}
	slices.SortStableFunc(day.Parts, func(a, b Part) int { return cmp.Compare(b.Free, a.Free) })
	for i := range day.Parts {
		day.Parts[i].Minutes = min(day.Over, day.Parts[i].Free)
		day.Over -= day.Parts[i].Minutes
	}
	day.Parts = slices.DeleteFunc(day.Parts, func(t Part) bool { return t.Minutes <= 0 })
	return day
}

// PersonMinutes are the minutes of one person on all days.
type PersonMinutes struct {
	Name    string
	Minutes float64

	who book.PersonID // two of one name are two
}

// PeopleOf adds up what each person has of some days, whoever has most first, and what
// nobody has time for.
func PeopleOf(days []DayParts) (all []PersonMinutes, over float64) {
	for _, d := range days {
		over += d.Over
		for _, t := range d.Parts {
			i := slices.IndexFunc(all, func(m PersonMinutes) bool { return m.who == t.Who.Person })
			if i < 0 {
				i, all = len(all), append(all, PersonMinutes{Name: t.Who.Name, who: t.Who.Person})
			}
			all[i].Minutes += t.Minutes
		}
	}
	slices.SortStableFunc(all, func(a, b PersonMinutes) int { return cmp.Compare(b.Minutes, a.Minutes) })
	return all, over
}
