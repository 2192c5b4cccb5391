package plan

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// How far ahead the last graft is looked for, in days, and in which steps: a season
// is shorter, and its weather changes little in a week. Conventions of the search.
const (
	lastAhead = 300
	lastStep  = 7
)

// makesSense is the share of the queens who lay in fair weather of whom the yard's
// weather must let lay for a graft to make sense: half. Common practice, no source.
const makesSense = 0.5

// LastGraft is the last day of the season that runs on a day, or begins next, on
// which a graft makes sense in a yard: of those who would lay in fair weather its
// usual weather lets half come to lay. Ok is false where no day ahead does, and where
// all do: the book then knows of no weather that ends a season.
func (p *Planner) LastGraft(yard book.YardID, from calendar.Day) (last calendar.Day, ok bool) {
	sense := func(d calendar.Day) bool { return p.lets(yard, d) >= makesSense }
	for d := from; d <= from+lastAhead; d += lastStep - d%lastStep { // the same days from wherever it begins: they are remembered
		switch {
		case sense(d):
			last, ok = d, true
		case ok:
			for last+1 < d && sense(last+1) {
				last++
			}
			return last, true
		}
	}
	return 0, false
}

// NoLast is why [Planner.LastOf] knows of no last graft in a yard: nobody told the usual
// weather of some of the months to come, or that of none of them ends a season.
func (p *Planner) NoLast(yard book.YardID) string {
	told := p.view.Yard(yard).Normals
	_, now, _ := p.view.Today().Date()
	var untold []string
	var at []int
	for i := range told {
		if m := (int(now) - 1 + i) % len(told); told[m].Yard.IsZero() {
			untold, at = append(untold, time.Month(m+1).String()), append(at, i)
		}
	}
	n := len(untold)
	switch {
	case n == 0:
		return "the usual weather ends no season there"
	case n == 1:
		return "the usual weather of " + untold[0] + " is not told"
	case n == len(told):
		return "the usual weather is not told"
	case at[n-1]-at[0] >= n: // some between are told
		return "the usual weather of " + strings.Join(untold[:n-1], ", ") + " and " + untold[n-1] + " is not told"
	default:
		return fmt.Sprintf("the usual weather of %d months is not told, %s to %s", len(untold), untold[0], untold[len(untold)-1])
	}
}

// After says why grafts after the last one that makes sense do not: fewer than half of their queens
// lay, for want of weather, which may be assumed, or of drones, and then by which number.
func (p *Planner) After(yard book.YardID, last calendar.Day) (why string, by practice.Key) {
	at := ""
	for d, to := p.mating(last); d <= to; d++ {
		if f := p.course.Weather(yard).Day(d); f.Guess {
			at = fmt.Sprintf(" at %.3g h a day fit to fly, as no weather is told", f.Hours)
			break
		}
	}
	without, by := p.droneless(yard, last+lastStep)
	switch {
	case by != 0:
		return "after it fewer than half lay" + at + ": " + without, by
	case at != "":
		return "after it fewer than half lay" + at, 0
	default:
		return "after it the usual weather lets fewer than half lay", 0
	}
}

// Soonest is the first day from one on, on which a graft makes sense in a yard: see
// [Planner.LastGraft]. Where none does in the year ahead it is the day itself.
func (p *Planner) Soonest(yard book.YardID, from calendar.Day) calendar.Day {
	for d := from; d <= from+lastAhead; d += lastStep {
		if p.lets(yard, d) < makesSense {
			continue
		}
		for d > from && p.lets(yard, d-1) >= makesSense {
			d--
		}
		return d
	}
	return from
}

// lets is the share of those who would lay in fair weather that the weather of a
// yard lets lay, of the queens of a graft on a day.
func (p *Planner) lets(yard book.YardID, graft calendar.Day) float64 {
	return p.laidOf(p.GraftAt(graft), yard).Ends()
}
