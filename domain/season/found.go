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
	Short   []Short // promises that are not kept whole by their day, or far less surely than is wished
	Minutes float64 // the keeper's time for the batches
	Least   int     // queens that any plan is short of that serves orders in their turn, within the limits and what is tried
	Bound   float64 // no such plan that is short of no more, and as sure, takes less time; 0: not known yet
	Exact   bool    // nothing within the limits and what is tried is better
}

// Batch is one graft of a plan.
type Batch struct {
	plan.Ladder
	plan.Size
	Minutes  float64
	Promises []int        // that it serves, by their number in what was wanted
	Breeder  *book.Colony // from which it is grafted, where only one can be meant; else nil
	Adds     *Adds        // what it adds to what there is without it; nil: all of its promises hang on it
}

// Kept is a promise that batches are found for.
type Kept struct {
	Promise int
	Batches []int   // their numbers
	Queens  int     // that must be there by its day: its own, and those of the promises that its batches serve before
	Chance  float64 // that they are
	Points  int     // hundredths by which it is less sure than is wished, which is nearly kept; 0: as sure
}

// Nearly says how a promise is nearly kept; "" of one that is kept as surely as is wished.
func (f Found) Nearly(k Kept) string {
	sure := f.Promises[k.Promise].Sure
	if !plan.Unsure(k.Chance, sure) {
		return ""
	}
	return fmt.Sprintf("nearly kept: %s sure, %.0f wished", plan.OfHundred(k.Chance), 100*sure)
}

// Queens are the queens that are promised and there by their day as surely as is wished, or nearly, and the
// others, which are short.
func (f Found) Queens() (kept, short int) {
	for _, k := range f.Kept {
		kept += f.Promises[k.Promise].Queens
	}
	for _, s := range f.Short {
		kept, short = kept+f.Promises[s.Promise].Queens-s.Off, short+s.Off
	}
	return kept, short
}

// Plan is a batch of what was found as it is planned in the book.
func (f Found) Plan(batch int, id book.BatchID) book.BatchPlanned {
	b := f.Batches[batch]
	p := book.BatchPlanned{Batch: id, Day: b.Day, Line: b.Line, Yard: b.Yard, Larvae: b.Larvae, Nucs: b.Nucs}
	if b.Breeder != nil {
		p.Breeder, p.Mother = b.Breeder.Colony, b.Breeder.Queen
	}
	for _, i := range b.Promises {
		promise := f.Promises[i]
		p.Queens += f.share(i, batch)
		p.By, p.Laying, p.Sure = max(p.By, promise.By), promise.Laying, max(p.Sure, promise.Sure)
		if !promise.Order.IsZero() {
			p.Orders = append(p.Orders, promise.Order)
		}
	}
	return p
}

// share is how many of the queens of a promise are a batch's, of those that serve it.
func (f Found) share(promise, batch int) int {
	var expected []float64
	at := 0
	for i, b := range f.Batches {
		if i == batch {
			at = len(expected)
		}
		if slices.Contains(b.Promises, promise) {
			expected = append(expected, b.Queens)
		}
	}
	return plan.Shares(f.Promises[promise].short(), expected)[at]
}

// found is what is chosen now, as an answer.
func (s *search) found(exact bool) Found {
	f := Found{Wanted: s.wanted, Exact: exact}
	picks := slices.Clone(s.chosen)
	slices.SortStableFunc(picks, func(a, b pick) int {
		return cmp.Or(cmp.Compare(a.way.first(), b.way.first()), cmp.Compare(a.group, b.group))
	})
	for _, p := range picks {
		if p.given {
			f.Short = append(f.Short, s.shortOf(s.groups[p.group].promises[0]))
			continue
		}
		s.tell(&f, p)
	}
	f.sort()
	f.dealtFirst()
	if f.Least, f.Bound = s.bound(); exact {
		_, f.Least = f.Queens()
		f.Bound = f.Minutes
	}
	return f
}

// bound is how many queens any plan is short of at least that serves orders in their turn,
// and the minutes that one takes at least which is short of no more and as sure. Of turns
// after one of which it is not known that no fewer can be short nothing is known.
func (s *search) bound() (short int, minutes float64) {
	least, have := s.least.short, s.cost.short
	known := s.least.rest <= s.besides
	if !known {
		least++
	}
	for _, w := range s.weights {
		n := least / w
		short += int(n)
		if last := w == 1; n < have/w && !last {
			return short, 0
		}
		least, have = least%w, have%w
	}
	if !known {
		return short, s.leastWork(short)
	}
	return short, max(0, cost{rest: s.least.rest}.minutes()-s.gaps())
}

// leastWork is the work of the graft that takes least, in minutes: no plan takes less that is not short of all.
func (s *search) leastWork(short int) float64 {
	all, least := 0, int64(math.MaxInt64)
	for _, p := range s.wanted.Promises {
		all += p.short()
	}
	for _, b := range s.batches {
		least = min(least, b.work)
	}
	if short >= all || least == math.MaxInt64 {
		return 0
	}
	return float64(least) / 10
}

// gaps is what counts as work and is none of what is chosen, in minutes: the certainty that nearly kept promises
// lack, and clashes.
func (s *search) gaps() (minutes float64) {
	for _, p := range s.chosen {
		minutes += p.way.besides()
	}
	return minutes
}

// dearest is no less than the rest of what any plan costs.
func (s *search) dearest() (sum int64) {
	for p := range s.of {
		var most int64
		for _, g := range s.of[p] {
			for _, way := range s.ways(g) {
				most = max(most, way.cost.rest)
			}
		}
		sum += most
	}
	return sum
}

// tell adds a pick to an answer.
func (s *search) tell(f *Found, p pick) {
	g := s.groups[p.group]
	line, breeder := s.larvae.from(g.line)
	var numbers []int
	for _, of := range p.way.of {
		yard := s.ground.yards[of.yard]
		l := s.ground.ladder(yard, of.day, of.size.larvae)
		b := Batch{Ladder: l, Size: s.sizeOf(yard, line, of.size), Minutes: float64(of.work) / 10, Promises: g.promises, Breeder: breeder}
		numbers = append(numbers, len(f.Batches))
		f.Batches = append(f.Batches, b)
		f.Minutes = (math.Round(10*f.Minutes) + float64(of.work)) / 10
	}
	s.added(f, p, numbers)
	before := 0
	for at, i := range g.promises {
		want, _ := p.way.level.of(s.wanted.Promises[i], at)
		if p.way.partOf(at) {
			f.Short = append(f.Short, s.lesser(p, numbers, before, want))
		} else {
			f.Kept = append(f.Kept, Kept{i, numbers, before + want, s.chanceOf(i, p.way, before+want), p.way.points})
		}
		before += want
	}
}

// chanceOf is the chance that so many queens of the grafts of a way are there for a
// promise, as the book tells it of them once they are planned.
func (s *search) chanceOf(promise int, way option, queens int) float64 {
	p := s.wanted.Promises[promise]
	var all []book.BatchPlan
	for _, b := range way.of {
		all = append(all, book.BatchPlan{BatchPlanned: book.BatchPlanned{
			Day: b.day, Yard: s.ground.yards[b.yard], Larvae: b.size.larvae, Nucs: b.size.nucs, Laying: p.Laying,
		}})
	}
	if has := s.had[promise]; has != nil {
		return has.chance(s.ground.planner, all, queens)
	}
	return s.ground.planner.Joint(all, p.By).AtLeast(queens)
}

// dealtFirst says of a promise that is not kept which orders it is served before when
// queens are dealt out: what their grafts give goes to it first.
func (f *Found) dealtFirst() {
	for i := range f.Short {
		s := &f.Short[i]
		turn := f.Promises[s.Promise].Turn
		var after []string
		for _, k := range f.Kept {
			if p := f.Promises[k.Promise]; turn > 0 && p.Turn > turn {
				after = append(after, p.Name)
			}
		}
		if len(after) > 0 {
			s.Why += fmt.Sprintf(" Until it has its queens, what the grafts for %s give is dealt out to it first.", joined(after))
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
	moved := func(batches []int) (all []int) {
		for _, was := range batches {
			all = append(all, now[was])
		}
		return all
	}
	for i, k := range f.Kept {
		f.Kept[i].Batches = moved(k.Batches)
	}
	for i, short := range f.Short {
		f.Short[i].Batches = moved(short.Batches)
	}
	by := func(s Short) calendar.Day { return f.Promises[s.Promise].By }
	slices.SortStableFunc(f.Short, func(a, b Short) int { return cmp.Compare(by(a), by(b)) })
}
