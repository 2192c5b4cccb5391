package rules

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Deadline is a mark in the calendar: a hard hour, an event of a batch, or the day
// on which the queens of an order leave.
type Deadline struct {
	ID     string       // stable from day to day and in every copy of the book
	Of     book.Subject // the batch, colony, yard or order
	Yard   book.YardID
	Day    calendar.Day
	At     time.Time // the hour, when Hard; else the start of Day
	Hard   bool
	Done   bool // nothing of it is left to do, or its day is past
	Off    bool // it does not stand any more: a calendar that has it strikes it
	What   string
	Do     string
	Alarms []time.Time // in the order of time
}

// Title is what it is and, in a book of several yards, in which of them.
func (d Deadline) Title(v *book.View) string {
	yards, name := slices.Collect(v.Yards()), v.Yard(d.Yard).Name
	if len(yards) < 2 || name == "" {
		return d.What
	}
	return d.What + ", " + name
}

// Deadlines are those of a view; see [Judged.Deadlines].
func Deadlines(v *book.View, from, to calendar.Day) []Deadline { return Judge(v).Deadlines(from, to) }

// deadlines are all there are, in the order of time.
func (p *pass) deadlines(found []Finding) []Deadline {
	var all []Deadline
	for b := range p.view.Batches() {
		c := p.batch(b)
		all = append(all, p.events(c)...)
		all = append(all, p.cellsDeadline(c))
		all = append(all, p.stepsOn(c)...)
	}
	for _, f := range found {
		if f.Hard && f.Rule == WildCells && f.PutOff.IsZero() {
			all = append(all, p.deadline(f))
		}
	}
	all = append(all, p.unplannedMakeUps(found)...)
	all = append(all, p.plannedDeadlines()...)
	all = append(all, p.leavingDeadlines()...)
	slices.SortStableFunc(all, func(a, b Deadline) int {
		return cmp.Or(cmp.Compare(a.Day, b.Day), a.At.Compare(b.At), cmp.Compare(a.ID, b.ID))
	})
	return all
}

// cellsDeadline is the hard hour of a batch, as its clock stands.
func (p *pass) cellsDeadline(b *batchCase) Deadline {
	y, hard := b.yard, b.hard
	d := Deadline{
		ID: fmt.Sprintf("%s %s", b.Batch.Batch.Subject(), CellsOut), Of: b.Batch.Batch.Subject(), Yard: y.id, Hard: true,
		What: fmt.Sprintf("%s of %s must be out", count(b.left, "cell"), batchWord(b.Batch)), Do: "Into nucs or cages before that hour",
	}
	if b.left == 0 || b.stale || b.given {
		d.Done, d.What = true, fmt.Sprintf("cells of %s had to be out", batchWord(b.Batch))
	} else {
		d.Alarms = p.alarms(y, hard)
	}
	d.Day, d.At = y.day(hard), hard
	return d
}

func (p *pass) deadline(f Finding) Deadline {
	y := p.yard(f.Yard)
	return Deadline{
		ID: fmt.Sprintf("%s %s %s", f.Of, f.Rule, y.day(f.Since)), Of: f.Of, Yard: f.Yard,
		Day: y.day(f.By), At: f.By, Hard: true, What: f.What, Do: f.Do, Alarms: p.alarms(y, f.By),
	}
}

// events are the steps of a batch by the day.
func (p *pass) events(b *batchCase) []Deadline {
	var all []Deadline
	for _, w := range p.ladders().Windows(b.Batch, b.yard.zone) {
		day, yard := b.graft+calendar.Day(w.Best), b.yard.id
		if w.Step >= bee.CellsIn {
			yard = p.nucsOf(b)
		}
		all = append(all, Deadline{
			ID: fmt.Sprintf("%s %s", b.Batch.Batch.Subject(), w.Step), Of: b.Batch.Batch.Subject(), Yard: yard,
			Day: day, At: day.Start(b.yard.zone),
			Done: day < b.yard.today || p.settled(b, w.Step),
			What: fmt.Sprintf("%s: %s", sentence(batchWord(b.Batch)), w.Step), Do: stepDo(b, w),
		})
	}
	return all
}

// nucsOf is the yard of the nucs that take the cells of a batch; zero where no plan says it.
func (p *pass) nucsOf(b *batchCase) book.YardID {
	planned, _ := p.view.BatchPlan(b.Batch.Batch)
	return planned.Yard
}

// stepDo is the window of a step in words. Cells have no day after their hard
// hour.
func stepDo(b *batchCase, w bee.Window) string {
	today := b.yard.today
	from, by := b.graft+calendar.Day(w.From), b.graft+calendar.Day(w.By)
	if w.Step == bee.CellsIn && b.yard.day(b.hard) <= by {
		until := hour(today, b.hard, b.yard.zone)
		if b.yard.day(b.hard) <= from {
			return "by " + until
		}
		return fmt.Sprintf("from %s to %s", from.ShortFrom(today), until)
	}
	if w.Step == bee.Emergence || from == by {
		return ""
	}
	return fmt.Sprintf("from %s to %s", from.ShortFrom(today), by.ShortFrom(today))
}

// alarms ring on the last evening before the day that somebody has free, and
// on the morning of the day; where the hour comes before that morning's, on
// the morning before.
func (p *pass) alarms(y *yardCase, by time.Time) []time.Time {
	day := y.day(by)
	var alarms []time.Time
	for d := day - 1; d >= day-p.days(practice.AlarmEveningsBack); d-- {
		if at := p.clock(practice.AlarmEvening, d, y.zone); isFree(p.view, d, at, y.zone) {
			alarms = append(alarms, at)
			break
		}
	}
	morning := p.clock(practice.AlarmMorning, day, y.zone)
	if !morning.Before(by) {
		morning = p.clock(practice.AlarmMorning, day-1, y.zone)
	}
	alarms = append(alarms, morning)
	slices.SortFunc(alarms, time.Time.Compare)
	return alarms
}

// clock is the hour of a number on a day.
func (p *pass) clock(k practice.Key, d calendar.Day, zone *time.Location) time.Time {
	minutes := int(p.numbers.Get(k) * 60)
	return d.At(minutes/60, minutes%60, zone)
}

// isFree tells whether anybody is free at an instant of a day; in a book
// without people everybody is.
func isFree(v *book.View, d calendar.Day, at time.Time, zone *time.Location) bool {
	if !v.HoursTold() {
		return true
	}
	for person := range v.People() {
		from, until := person.FreeOn(d).Between(d, zone)
		if !at.Before(from) && at.Before(until) {
			return true
		}
	}
	return false
}
