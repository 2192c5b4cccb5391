package book

import (
	"cmp"
	"iter"
	"slices"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Person is what the book says of somebody who works bees.
type Person struct {
	PersonDescribed
	Off []DaysOff
	On  []HoursOn
}

// FreeOn are the person's free hours on a day: as said of the very day, none on a
// day off, whichever was said last; else those of the week.
func (p *Person) FreeOn(d calendar.Day) FreeHours {
	for _, on := range slices.Backward(p.On) {
		if on.Day == d {
			return on.FreeHours
		}
	}
	for _, off := range p.Off {
		if off.From <= d && d <= off.To {
			return FreeHours{}
		}
	}
	return p.Free[d.Weekday()]
}

// Told tells whether anything was said of the person's free hours.
func (p *Person) Told() bool { return p.Free != [7]FreeHours{} || len(p.On) > 0 }

// Minutes are the minutes of the free hours.
func (f FreeHours) Minutes() int { return max(0, f.Until-f.From) }

// Between are the instants of the free hours on a day in zone.
func (f FreeHours) Between(d calendar.Day, zone *time.Location) (from, until time.Time) {
	return d.At(f.From/60, f.From%60, zone), d.At(f.Until/60, f.Until%60, zone)
}

// Person is the person of an id.
func (v *View) Person(id PersonID) *Person { return v.people.get(id, v.foldPerson) }

// People yields the people by name.
func (v *View) People() iter.Seq[*Person] {
	all := collect(v, KindPerson, v.Person)
	slices.SortFunc(all, func(a, b *Person) int {
		return cmp.Or(cmp.Compare(a.Name, b.Name), a.Person.compare(b.Person))
	})
	return slices.Values(all)
}

// MinutesFree are the minutes that all people together are free on a day; see
// [View.HoursTold] for whether that means anything.
func (v *View) MinutesFree(d calendar.Day) int {
	sum := 0
	for p := range v.People() {
		sum += p.FreeOn(d).Minutes()
	}
	return sum
}

// HoursTold tells whether the free hours of anybody are known: nobody is short
// of time that nobody knows of.
func (v *View) HoursTold() bool {
	for p := range v.People() {
		if p.Told() {
			return true
		}
	}
	return false
}

func (v *View) foldPerson(id PersonID) *Person {
	begin := Person{PersonDescribed: PersonDescribed{Person: id}}
	return v.season.folded.people.get(id, v.lines(id.Subject()), practice.Numbers{}, begin)
}

func (p *Person) again() Person {
	next := *p
	next.Off, next.On = slices.Clip(p.Off), slices.Clip(p.On)
	return next
}

func (p *Person) take(e *Entry) {
	switch f := e.Fact.(type) {
	case PersonDescribed:
		p.PersonDescribed = f
	case DaysOff:
		p.Off = append(p.Off, f)
		p.On = slices.DeleteFunc(slices.Clone(p.On), func(on HoursOn) bool { return f.From <= on.Day && on.Day <= f.To })
	case HoursOn:
		p.On = append(p.On, f)
	}
}
