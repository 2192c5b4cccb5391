package rules

import (
	"slices"
	"sync"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
)

// Judged is a view as the rules judge it: one pass of them answers whatever is
// asked of it. It may be used from several goroutines.
type Judged struct {
	mu    sync.Mutex // the pass notes yards as they are asked for
	pass  *pass
	found []Finding
}

// Judge lets all rules pass over a view.
func Judge(v *book.View) *Judged { return judge(v, nil) }

// Again is [Judge] of a view of the same instant, when some lines were written
// since: it costs the nucs that these reach.
func (j *Judged) Again(v *book.View) *Judged {
	if !j.pass.now.Equal(v.On()) {
		return judge(v, j.pass) // of another instant only the course is gone on from, which may be asked meanwhile
	}
	j.mu.Lock()
	defer j.mu.Unlock()
	return judge(v, j.pass)
}

func judge(v *book.View, was *pass) *Judged {
	p := newPass(v, was)
	return &Judged{pass: p, found: p.findings()}
}

// Findings are all that the rules find; see [Findings]. They are shared and must
// not be changed.
func (j *Judged) Findings() []Finding { return j.found }

// Course is the course of the view.
func (j *Judged) Course() *course.Course { return j.pass.course }

// Presumed is what each nuc of the view holds, in walking order: the order of
// [book.View.Nucs]. It is shared and must not be changed.
func (j *Judged) Presumed() []course.Presumption { return j.pass.presumed }

// Day is the work of a day as a route. On the view's own day, and before it,
// that is all that is open; on a day ahead, what is best done on that day.
func (j *Judged) Day(d calendar.Day) DayPlan {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.pass.plan(j.found, d)
}

// BestOn is the work that is best done on a day: of the days from the view's own on each
// thing on one, while [Judged.Day] of the view's day has all that is open. What was best done before a
// first day, since the hours of the view's are over, is done on that one, unless it has a hard hour before.
func (j *Judged) BestOn(d, first calendar.Day) DayPlan {
	j.mu.Lock()
	defer j.mu.Unlock()
	p, best := j.pass, []Finding{}
	for _, f := range j.found {
		y := p.yard(f.Yard)
		if begins := first.At(noon, 0, y.zone); p.workDay(f) < first && !(f.Hard && f.By.Before(begins)) {
			f.Best = begins
		}
		if p.workDay(f) <= d {
			best = append(best, f)
		}
	}
	return p.plan(best, d)
}

// Dealt is who gets which queen of the orders that are open, see [handover.Reckoned]. It is
// shared and must not be changed.
func (j *Judged) Dealt() *handover.Sheet { return j.pass.sheet }

// Kit sums what the work of some stops of a day needs.
func (j *Judged) Kit(stops []Stop, d calendar.Day) []KitLine {
	j.mu.Lock()
	defer j.mu.Unlock()
	var work []Finding
	for _, s := range stops {
		for _, t := range s.Tasks {
			work = append(work, t.Findings...)
		}
	}
	return j.pass.kit(work, d)
}

// Kits are what each of several people packs for his part of a day's work, by the findings
// that it answers. What several need is packed by each of them.
func (j *Judged) Kits(parts [][]Finding, d calendar.Day) [][]KitLine {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.pass.kitsOf(parts, d)
}

// ToCage is how many of a batch's cells, as far as was counted, no nuc is ready for or made
// up today; 0 where there are nucs for all, or none of its cells is at hand.
func (j *Judged) ToCage(b book.BatchID) int {
	j.mu.Lock()
	defer j.mu.Unlock()
	c := j.pass.caseOf(b)
	if c == nil {
		return 0
	}
	cages, _ := j.pass.toCage(c, j.pass.today)
	return cages
}

// Taken tells whether it is of a day ahead, and steps that are planned for days before it are
// taken as done.
func (j *Judged) Taken() bool { return j.pass.taken }

// Work is the minutes of work of each day from one to another, without
// driving: everything on its best day, and what is past that today.
func (j *Judged) Work(from, to calendar.Day) map[calendar.Day]float64 {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.pass.work(j.found, from, to)
}

// Deadlines are the hard deadlines, the batch events and the days on which queens
// leave for open orders from one day to another, both included, in the order of time,
// those that are done marked so. Hard ones that are not, and days on which queens leave,
// have alarms: the last free evening before, and the morning of the day.
func (j *Judged) Deadlines(from, to calendar.Day) []Deadline {
	j.mu.Lock()
	defer j.mu.Unlock()
	return slices.DeleteFunc(j.pass.deadlines(j.found), func(d Deadline) bool { return d.Day < from || to < d.Day })
}

// Calendar are the deadlines of days as a calendar takes them in that has those of an
// earlier file: besides [Judged.Deadlines] those that were told of these days and now
// have one outside of them, and, Off, those that do not stand any more: steps of plans
// that were moved, dropped or struck, and orders for which nothing is owed.
func (j *Judged) Calendar(from, to calendar.Day) []Deadline {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.pass.calendarOf(j.pass.deadlines(j.found), from, to)
}
