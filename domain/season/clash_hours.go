package season

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// hours are the graft and the cells of a batch where nobody is free for them.
func (a *account) hours(l *load) (found []Clash) {
	graft, give := l.ladder.Rung(plan.GraftLarvae), l.ladder.Rung(plan.GiveCells)
	if graft.NobodyFree && !l.grafted {
		found = append(found, Clash{Kind: NobodyFree, Batches: only(l.id), From: graft.From, To: graft.By})
	}
	if give.NobodyFree && l.size.Nucs > 0 {
		found = append(found, Clash{Kind: NobodyFree, Batches: only(l.id), From: give.From, To: give.By, hard: give.Hard})
	}
	return found
}

// job is work that can be done on some days, best on one.
type job struct {
	batch          book.BatchID
	from, best, by calendar.Day
	minutes        float64
}

// over are the days whose work is more than people have time for, besides clashes of hours. Where
// nobody is free for the cells of a batch, its other work on these days is part of that clash: it is
// one helper who is missing.
func (a *account) over(all []*load, hours []Clash) (found []Clash) {
	if !a.told {
		return nil
	}
	short := map[calendar.Day][]job{}
	for d, jobs := range a.place(a.jobs(all), map[calendar.Day]float64{}) {
		for _, j := range jobs {
			if !a.joins(j, hours) {
				short[d] = append(short[d], j)
			}
		}
	}
	for d, jobs := range short {
		found = append(found, a.overOn(d, jobs))
	}
	return found
}

// place puts jobs down beside what is used of each day already. What has other days to be done on is moved to
// those that have time left, the nearest first; work with the fewest days is put down first. What has no time
// is returned, by its best day.
func (a *account) place(jobs []job, used map[calendar.Day]float64) (short map[calendar.Day][]job) {
	slices.SortStableFunc(jobs, func(x, y job) int {
		return cmp.Or(cmp.Compare(x.by-x.from, y.by-y.from), cmp.Compare(x.best, y.best))
	})
	short = map[calendar.Day][]job{}
	for _, j := range jobs {
		for _, d := range j.nearest() {
			part := min(j.minutes, max(0, a.freeOn(d)-used[d]))
			used[d], j.minutes = used[d]+part, j.minutes-part
		}
		if j.minutes > 0.5 {
			short[j.best] = append(short[j.best], j)
		}
	}
	return short
}

// joins puts work down to a clash of hours of its batch, if it is on a day of that on which
// nobody is free.
func (a *account) joins(j job, hours []Clash) bool {
	for i := range hours {
		c := &hours[i]
		if c.has(j.batch) && c.From <= j.best && j.best <= c.To && a.freeOn(j.best) == 0 {
			c.minutes += j.minutes
			return true
		}
	}
	return false
}

func (a *account) overOn(d calendar.Day, jobs []job) Clash {
	c := Clash{Kind: MinutesOver, From: d, To: d, Have: a.freeOn(d), Want: a.freeOn(d)}
	for _, j := range jobs {
		c.Want += j.minutes
		if !slices.Contains(c.Batches, j.batch) {
			c.Batches = append(c.Batches, j.batch)
		}
	}
	return c
}

// jobs are the steps of batches from today on.
func (a *account) jobs(all []*load) (jobs []job) {
	for _, l := range all {
		for _, m := range a.planner.Minutes(l.ladder, l.size) {
			r := l.ladder.Rung(m.Step)
			later := m.Day - r.Best
			if j := (job{l.id, max(a.today, r.From+later), m.Day, r.By + later, m.Minutes}); m.Day >= a.today {
				jobs = append(jobs, j)
			}
		}
	}
	return jobs
}

// nearest are the days of a job, the best first and then the nearest to it.
func (j job) nearest() []calendar.Day {
	var days []calendar.Day
	for d := j.from; d <= j.by; d++ {
		days = append(days, d)
	}
	off := func(d calendar.Day) calendar.Day { return max(d-j.best, j.best-d) }
	slices.SortStableFunc(days, func(x, y calendar.Day) int { return cmp.Compare(off(x), off(y)) })
	return days
}
