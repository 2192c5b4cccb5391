package rules

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/book"
)

// Part is the part of a day's work that is done when there is less time than
// it takes.
type Part struct {
	Stops   []Stop    // what is done, as a route
	Waits   []Task    // what waits, the one that can least first
	Minutes float64   // of what is done, with the driving that it takes
	Must    float64   // of these, what cannot wait for another day, with its driving
	Home    time.Time // when one person is home again; zero: nobody is free
}

// Within is what is done of a day's work in so many minutes. Robbers at work and
// what has a hard end before somebody can come again are kept however long they
// take: nothing can make them good later. After them come other hard ends, then
// what is past its last day, then what ends first. Nothing without a hard end is
// kept while something with one is left.
func (p DayPlan) Within(minutes float64) Part {
	var part Part
	kept := map[placed]bool{}
	in := make([]stay, len(p.Stops))
	left := false // something with a hard end waits
	for _, t := range p.byPress() {
		was := in[t.stop]
		in[t.stop] = stay{true, was.minutes + p.task(t).Minutes}
		long := p.long(in)
		switch {
		case t.class == mustClass:
			part.Must = long
		case long > minutes || left && t.class > hardClass:
			in[t.stop], left = was, left || t.class == hardClass
			part.Waits = append(part.Waits, p.task(t))
			continue
		}
		part.Minutes, kept[t] = long, true
	}
	part.Stops, part.Home = p.route(kept)
	return part
}

// stay is whether a stop is visited, and how long.
type stay struct {
	there   bool
	minutes float64
}

// route is the plan with some of its tasks, and when one person is home again.
func (p DayPlan) route(kept map[placed]bool) (stops []Stop, home time.Time) {
	var last Stop
	for i, s := range p.Stops {
		tasks := s.Tasks
		s.Tasks = nil
		for j, t := range tasks {
			if kept[placed{i, j, p.wait(t)}] {
				s.Tasks = append(s.Tasks, t)
			}
		}
		if len(s.Tasks) == 0 {
			continue
		}
		s.Drive = 0
		if s.Yard != last.Yard {
			s.Drive = last.Far + s.Far
		}
		last = s
		stops = append(stops, s)
	}
	return stops, begin(stops, p.begins())
}

func minutesLong(m float64) time.Duration { return time.Duration(m * float64(time.Minute)) }

// after is so many minutes later; no time stays none.
func after(t time.Time, minutes float64) time.Time {
	if t.IsZero() {
		return t
	}
	return t.Add(minutesLong(minutes))
}

// placed is where a task stands in the plan, and how badly it can wait.
type placed struct {
	stop, task int
	class      waitClass
}

func (p DayPlan) task(at placed) Task { return p.Stops[at.stop].Tasks[at.task] }

// waitClass is how badly a task can wait, the worst first.
type waitClass uint8

const (
	mustClass waitClass = iota
	hardClass
	pastClass
	restClass
)

// wait is how badly a task of the plan can wait.
func (p DayPlan) wait(t Task) waitClass {
	switch {
	case t.emergency(), t.Hard && t.By.Before(p.Soon):
		return mustClass
	case t.Hard:
		return hardClass
	case t.PastDue(p.At):
		return pastClass
	default:
		return restClass
	}
}

// byPress are all tasks, those first that can wait least.
func (p DayPlan) byPress() (all []placed) {
	for i, s := range p.Stops {
		for j, t := range s.Tasks {
			all = append(all, placed{i, j, p.wait(t)})
		}
	}
	slices.SortStableFunc(all, func(x, y placed) int {
		a, b := p.task(x), p.task(y)
		return cmp.Or(
			cmp.Compare(x.class, y.class), compareDue(a.By, b.By), book.TrueFirst(a.NeedsYou, b.NeedsYou),
			cmp.Compare(a.Minutes, b.Minutes))
	})
	return all
}

// long is how long the work at some of the stops takes, with the way to them and
// home.
func (p DayPlan) long(in []stay) (minutes float64) {
	var last Stop
	for i, s := range p.Stops {
		if !in[i].there {
			continue
		}
		if s.Yard != last.Yard {
			minutes += last.Far + s.Far
		}
		last = s
		minutes += in[i].minutes
	}
	return minutes + last.Far
}
