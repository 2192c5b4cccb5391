package season

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Found are batches that keep promises.
type Found struct {
	Wanted  // with all that was left open
	Batches []Batch
	Kept    []Kept
	Short   []Short // promises that no batch is found for, by their day
	Minutes float64 // the keeper's time for the batches
	Least   int     // queens that any plan is short of, within the limits and what is tried
	Bound   float64 // no plan that is short of no more than these takes less time; 0: not known yet
	Exact   bool    // nothing within the limits and what is tried is better
}

// Batch is one graft of a plan.
type Batch struct {
	plan.Ladder
	plan.Size
	Minutes  float64
	Promises []int // that it serves, by their number in what was wanted
}

// Kept is a promise that batches are found for.
type Kept struct {
	Promise int
	Batches []int   // their numbers
	Queens  int     // that must be there by its day: its own, and those of the promises that its batches serve before
	Chance  float64 // that they are
}

// Queens are the queens that are promised and kept, and those that are short.
func (f Found) Queens() (kept, short int) {
	for _, k := range f.Kept {
		kept += f.Promises[k.Promise].Queens
	}
	for _, s := range f.Short {
		short += f.Promises[s.Promise].Queens
	}
	return kept, short
}

// Plan is a batch of what was found as it is planned in the book.
func (f Found) Plan(batch int, id book.BatchID) book.BatchPlanned {
	b := f.Batches[batch]
	p := book.BatchPlanned{Batch: id, Day: b.Day, Line: b.Line, Yard: b.Yard, Larvae: b.Larvae, Nucs: b.Nucs}
	for _, i := range b.Promises {
		promise := f.Promises[i]
		p.Queens += promise.Queens
		p.By, p.Laying, p.Sure = max(p.By, promise.By), promise.Laying, max(p.Sure, promise.Sure)
		if !promise.Order.IsZero() {
			p.Orders = append(p.Orders, promise.Order)
		}
	}
	return p
}

// found is what is chosen now, as an answer.
func (s *search) found(exact bool) Found {
	f := Found{Wanted: s.wanted, Exact: exact}
	picks := slices.Clone(s.chosen)
	slices.SortStableFunc(picks, func(a, b pick) int {
		return cmp.Or(cmp.Compare(a.way.days[0], b.way.days[0]), cmp.Compare(a.group, b.group))
	})
	for _, p := range picks {
		if p.given {
			f.Short = append(f.Short, s.shortOf(s.groups[p.group].promises[0]))
			continue
		}
		s.tell(&f, p)
	}
	f.sort()
	f.passedOver()
	if f.Least, f.Bound = s.bound(); exact {
		_, f.Least = f.Queens()
		f.Bound = f.Minutes
	}
	return f
}

// bound is how many queens any plan is short of at least, and the minutes that one
// takes at least which is short of no more.
func (s *search) bound() (short int, minutes float64) {
	if over := s.least - s.besides; over > 0 {
		short = int((over + queenShort - 1) / queenShort)
	}
	return short, max(0, s.least-queenShort*cost(short)).minutes()
}

// dearest is no less than what any plan costs besides the queens that are short.
func (s *search) dearest() (sum cost) {
	for p := range s.of {
		var most cost
		for _, g := range s.of[p] {
			for _, way := range s.ways(g) {
				most = max(most, way.cost)
			}
		}
		sum += most
	}
	return sum
}

// tell adds a pick to an answer.
func (s *search) tell(f *Found, p pick) {
	g := s.groups[p.group]
	var numbers []int
	var ladders []plan.Ladder
	for i, d := range p.way.grafts() {
		yard := s.ground.yards[p.way.yard]
		l := s.ground.ladder(yard, d, p.way.larvae)
		b := Batch{Ladder: l, Size: s.sizeOf(yard, g.line, size{p.way.larvae, p.way.nucs}), Minutes: float64(p.way.of[i].work) / 10, Promises: g.promises}
		numbers, ladders = append(numbers, len(f.Batches)), append(ladders, l)
		f.Batches = append(f.Batches, b)
		f.Minutes = (math.Round(10*f.Minutes) + float64(p.way.of[i].work)) / 10
	}
	queens := 0
	for _, i := range g.promises {
		queens += s.wanted.Promises[i].Queens
		f.Kept = append(f.Kept, Kept{i, numbers, queens, s.chanceOf(i, p.way, ladders, queens)})
	}
}

// chanceOf is the chance that so many queens of the grafts of a way are there for a
// promise, exactly.
func (s *search) chanceOf(promise int, way option, ladders []plan.Ladder, queens int) float64 {
	p := s.wanted.Promises[promise]
	var all []plan.Graft
	for _, l := range ladders {
		all = append(all, plan.Graft{Larvae: way.larvae, Nucs: way.nucs, Late: 1 - l.Laid.InTime(p.By, p.Laying)})
	}
	return s.odds.ratesFor(p.Laying).Queens(all...).AtLeast(queens)
}

// passedOver says of a promise that is not kept for which orders it is passed over that
// are served after it: the search weighs queens alike, whosever they are.
func (f *Found) passedOver() {
	for i := range f.Short {
		s := &f.Short[i]
		turn := f.Promises[s.Promise].Turn
		var after []string
		for _, k := range f.Kept {
			if p := f.Promises[k.Promise]; turn > 0 && p.Turn > turn {
				after = append(after, p.Title())
			}
		}
		if len(after) > 0 {
			s.Why += fmt.Sprintf(" It is served before %s all the same: what these grafts give goes to it first.", joined(after))
		}
	}
}

// sort puts batches by the day of their graft, promises by their number.
func (f *Found) sort() {
	order := make([]int, len(f.Batches))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(f.Batches[a].Day, f.Batches[b].Day) })
	sorted, now := make([]Batch, len(order)), make([]int, len(order))
	for i, was := range order {
		sorted[i], now[was] = f.Batches[was], i
	}
	f.Batches = sorted
	slices.SortFunc(f.Kept, func(a, b Kept) int { return a.Promise - b.Promise })
	for i, k := range f.Kept {
		f.Kept[i].Batches = slices.Clone(k.Batches)
		for j, was := range k.Batches {
			f.Kept[i].Batches[j] = now[was]
		}
	}
	by := func(s Short) calendar.Day { return f.Promises[s.Promise].By }
	slices.SortStableFunc(f.Short, func(a, b Short) int { return cmp.Compare(by(a), by(b)) })
}
