package rules

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
)

// Part is the part of a day's work that is done when there is less time than
// it takes.
type Part struct {
	Kept    []Task  // what is done, in the order of the route
	Waits   []Task  // what waits, the one that can least first
	Minutes float64 // of what is done, with the driving that it takes
	Must    float64 // of these, what cannot wait for another day, with its driving
}

// Within is what is done of a day's work in so many minutes. Robbers at work and
// what has a hard end before noon of the next day are kept however long they
// take: nothing can make them good later. After them come other hard ends, then
// what is past its last day, then what ends first. Nothing without a hard end is
// kept while something with one is left.
func (p DayPlan) Within(minutes float64) Part {
	var all []placed
	for i, s := range p.Stops {
		for _, t := range s.Tasks {
			all = append(all, placed{t, i, p.wait(t)})
		}
	}
	byPress := slices.Clone(all)
	slices.SortStableFunc(byPress, func(a, b placed) int { return comparePlaced(p, a, b) })
	kept := make([]bool, len(p.Stops))
	in := map[int]float64{} // minutes of work kept at each stop
	var part Part
	var taken []placed
	left := false // something with a hard end waits
	for _, t := range byPress {
		was := in[t.stop]
		in[t.stop] += t.Minutes
		stood := kept[t.stop]
		kept[t.stop] = true
		long := p.long(in, kept)
		switch {
		case t.class == mustClass:
			part.Must = long
		case long > minutes || left && t.class > hardClass:
			in[t.stop], kept[t.stop] = was, stood
			left = left || t.class == hardClass
			part.Waits = append(part.Waits, t.Task)
			continue
		}
		part.Minutes = long
		taken = append(taken, t)
	}
	slices.SortStableFunc(taken, func(a, b placed) int { return cmp.Compare(a.stop, b.stop) })
	for _, t := range taken {
		part.Kept = append(part.Kept, t.Task)
	}
	return part
}

// placed is a task at its stop.
type placed struct {
	Task
	stop  int
	class waitClass
}

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

// comparePlaced puts first what can wait least.
func comparePlaced(p DayPlan, a, b placed) int {
	return cmp.Or(
		cmp.Compare(a.class, b.class), compareDue(a.By, b.By), compareTrue(a.NeedsYou, b.NeedsYou),
		cmp.Compare(a.Minutes, b.Minutes), cmp.Compare(a.stop, b.stop))
}

// long is how long the work at some of the stops takes, with the way to them and
// home.
func (p DayPlan) long(in map[int]float64, kept []bool) (minutes float64) {
	var yard book.YardID
	far := 0.0
	for i, s := range p.Stops {
		if !kept[i] {
			continue
		}
		if s.Yard != yard {
			minutes += far + s.Far
			yard, far = s.Yard, s.Far
		}
		minutes += in[i]
	}
	return minutes + far
}
