package state

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// Absent are people who do not come, though they were free. It is a value that can be
// compared; the zero Absent is nobody.
type Absent string

// Has tells whether somebody does not come.
func (a Absent) Has(id book.PersonID) bool {
	return slices.Contains(strings.Fields(string(a)), id.Subject().String())
}

// turned is with somebody among those who do not come, or not any more.
func (a Absent) turned(id book.PersonID) Absent {
	all, name := strings.Fields(string(a)), id.Subject().String()
	if a.Has(id) {
		all = slices.DeleteFunc(all, func(other string) bool { return other == name })
	} else {
		all = append(all, name)
	}
	slices.Sort(all)
	return Absent(strings.Join(all, " "))
}

// AwayRef names a person on the day's pane who comes, or does not; ID is the person.
const AwayRef = "away"

// AwayOf names a person there.
func AwayOf(id book.PersonID) scene.Ref { return scene.Ref{Kind: AwayRef, ID: id.Subject().String()} }

// Hand is a person who may come on the day, and how long.
type Hand struct {
	Person  book.PersonID
	Name    string
	Minutes int // free; 0: nobody said
	Away    bool
}

// Hands are who may come on the day looked at: who is free, or everybody where
// nobody's free hours are told.
func (s State) Hands() (all []Hand) {
	r := s.Reading()
	told := r.View.HoursTold()
	for p := range r.View.People() {
		minutes := 0
		if told {
			if minutes = p.FreeOn(r.Day).Minutes(); minutes == 0 {
				continue
			}
		}
		all = append(all, Hand{p.Person, p.Name, minutes, s.DayPage.Less.Away.Has(p.Person)})
	}
	return all
}

// crewed is a day's work with the hands there are; ok is false where nobody is known
// who could do it.
type crewed struct {
	day   crew.Day
	stops []PageStop // the day dealt out; where nobody comes all of it waits
	ok    bool
}

// Crew is the day's work with the hands that are there in less time, each with a
// sheet, and what waits at what price; false where nobody is known who could come.
func (r *Reading) Crew(l Less) (crew.Day, bool) {
	if !l.On() {
		return crew.Day{}, false
	}
	c := r.crew(l)
	return c.day, c.ok
}

func (r *Reading) readCrew(l Less) crewed {
	hands, known := r.hands(l)
	if !known {
		return crewed{}
	}
	day, err := crew.Plan(r.judged, r.Day, hands)
	if err != nil {
		return crewed{}
	}
	return crewed{day, r.dealt(day, l), true}
}

// hands are who drives with whom in less time; false where nobody is known, or free
// by what was told though somebody said how many hours there are.
func (r *Reading) hands(l Less) (crew.Hands, bool) {
	var away []book.PersonID
	people := 0
	for p := range r.View.People() {
		people++
		if l.Away.Has(p.Person) {
			away = append(away, p.Person)
		}
	}
	if people == 0 || l.Nobody {
		return nil, people > 0
	}
	hours := float64(l.Hours)
	if hours == 0 && !r.View.HoursTold() {
		hours = usualLess
	}
	hands := crew.HandsOf(r.View, r.Day, l.vans(), hours, away...)
	if l.OnFoot {
		hands = hands.OnFoot()
	}
	hands = hands.After(r.dry(l))
	return hands, hands.Minutes() > 0 || len(away) > 0
}

// dry is when the rain of the day is over; zero where there is none.
func (r *Reading) dry(l Less) time.Time {
	if l.From == 0 {
		return time.Time{}
	}
	return r.Day.At(l.From, 0, r.View.Zone())
}

// beforeRain says what has a hard end before the rain is over, the first of it: it is
// done in the rain, or lost.
func (r *Reading) beforeRain(l Less) string {
	all := crew.InRain(r.Plan(), r.View.On(), r.dry(l))
	if len(all) == 0 {
		return ""
	}
	first := slices.MinFunc(all, func(a, b rules.Task) int { return a.By.Compare(b.By) })
	return fmt.Sprintf("cannot wait for it: %s by %s; ", first.Act, r.hourOf(first.By))
}

// LessTime are the minutes of what is done in less time, those there are, and when the
// only one who does it is home again; zero where there are several, or nobody.
func (r *Reading) LessTime(l Less) (work, free float64, home time.Time) {
	day, ok := r.Crew(l)
	if !ok || l.Nobody {
		part := r.Part(l)
		if !l.Nobody {
			home = part.Home
		}
		return part.Minutes, float64(l.Hours) * 60, home
	}
	for _, sheet := range day.Sheets {
		work, free = work+sheet.Working+sheet.Driving, free+sheet.Minutes
	}
	if len(day.Sheets) == 1 {
		home = homeOf(r.crew(l).stops)
	}
	return work, free, home
}

// homeOf is when who goes along some stops is home again.
func homeOf(stops []PageStop) (home time.Time) {
	for _, stop := range stops {
		if stop.Waits() || stop.Start.IsZero() {
			continue
		}
		minutes := stop.Far
		for _, l := range stop.Lines {
			minutes += l.Minutes
		}
		home = after(stop.Start, minutes)
	}
	return home
}

// queensSaid is what waiting costs, in queens.
func queensSaid(n float64) string {
	const least = 0.05
	if n < least {
		return "next to nothing"
	}
	return fmt.Sprintf("%.1f queens", n)
}

// PriceSaid is what all that waits in less time is expected to cost; "" where that is
// not known, or nothing waits.
func (r *Reading) PriceSaid(l Less) string {
	day, ok := r.Crew(l)
	if !ok || len(day.Waits) == 0 {
		return ""
	}
	return "What waits costs " + queensSaid(day.Loss) + ", until " + r.hourOf(day.Next)
}

// WaitsSaid is what all that waits costs, and whom to ring where nobody comes.
func (r *Reading) WaitsSaid(l Less) string {
	said := r.PriceSaid(l)
	day, ok := r.Crew(l)
	if !ok || said == "" || len(day.Sheets) > 0 {
		return said
	}
	var names []string
	for _, h := range crew.Ring(r.View, r.Day) {
		names = append(names, fmt.Sprintf("%s %s–%s", h.Name, h.From.In(r.View.Zone()).Format("15:04"), h.Until.In(r.View.Zone()).Format("15:04")))
	}
	switch {
	case crew.Over(r.View, r.Day):
		return said + "; the free hours are over"
	case len(names) == 0:
		return said + "; nobody has free hours"
	}
	return said + "; ring " + strings.Join(names, ", ")
}

// crewSays says how much of the day's work is done in less time, how much waits and at
// what price.
func (r *Reading) crewSays(day crew.Day) (says, more string) {
	done, hard := 0, 0
	for _, sheet := range day.Sheets {
		for _, v := range sheet.Visits {
			done += len(v.Work)
		}
	}
	var waits []rules.Task
	for _, w := range day.Waits {
		hard += boolInt(w.Hard)
		waits = append(waits, w.Task)
	}
	switch {
	case len(waits) == 0:
		return "time for all of it", ""
	case hard > 0:
		return fmt.Sprintf("%d hard tasks wait", hard), ""
	}
	return fmt.Sprintf("%d done, %d wait", done, len(waits)), r.untilFirst(waits)
}
