package season

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// group are promises that one batch, or two, may serve: of one line, by the day.
type group struct {
	promises []int
	line     string
}

// option is one way to keep the promises of a group: a graft, or two of one size.
type option struct {
	yard   int
	days   [2]calendar.Day // of the grafts; the second is 0 where one is enough
	larvae int
	nucs   int
	level  // how surely
	cost   cost
	of     [2]*batched // what is known of each
}

// apart is how many days lie between two grafts for the same promises: a habit of
// the week.
const apart = 7

// least is how many days before the day of a promise a graft is at least: no numbers in
// range make a queen sooner.
const least = 20

// size is a graft of one day that keeps some promises.
type size struct{ larvae, nucs int }

// options are the ways to keep the promises of a group at a level, the least cost first.
func (s *search) options(g group, l level) []option {
	var all []option
	if !s.larvae.has(g.line) {
		return nil
	}
	for y := range s.ground.yards {
		all = append(all, s.inYard(g, y, l)...)
	}
	slices.SortStableFunc(all, byCost)
	return all
}

func byCost(a, b option) int { return a.cost.compare(b.cost) }

// inYard goes back from the last day, until so many days are found.
func (s *search) inYard(g group, yard int, l level) (all []option) {
	first := s.wanted.Promises[g.promises[0]]
	from, ok := s.ground.planner.GraftsFor(first.By, first.Laying, s.ground.yards[yard], s.wanted.From)
	if !ok {
		return nil
	}
	found := 0
	for d := first.By - s.soonest(g.promises[0]); d >= from && found < s.wanted.Window; d-- {
		if on := s.onDay(g, yard, d, l); len(on) > 0 {
			all = append(all, on...)
			found++
		}
	}
	return all
}

// soonest is how many days a graft lies before the day of a promise at least: half
// its queens are born on the middle day at the earliest, and have to be old enough.
func (s *search) soonest(promise int) calendar.Day {
	if s.wanted.Promises[promise].Laying {
		return least
	}
	n := s.ground.numbers
	return max(least, calendar.Day(n.Days(practice.GraftToEmerge)-1+n.Days(practice.LeastAgeAtHandOver)))
}

// onDay are the ways with the last graft on a day; those that keep less than is wished have
// one graft.
func (s *search) onDay(g group, yard int, d calendar.Day, l level) (all []option) {
	laid := s.ground.ladder(s.ground.yards[yard], d, 0).Laid
	if tooLate(laid, s.wanted.Promises[g.promises[0]]) {
		return nil
	}
	demand := s.demand(g, laid, l)
	for _, size := range s.sizes(demand) {
		if o, ok := s.option(g, yard, [2]calendar.Day{d}, size, l); ok {
			all = append(all, o)
		}
	}
	slices.SortStableFunc(all, byCost)
	all = all[:min(len(all), s.wanted.Sizes)]
	if before := d - apart; before >= s.wanted.From && l == whole {
		if size, ok := s.twice(demand); ok {
			if o, ok := s.option(g, yard, [2]calendar.Day{before, d}, size, l); ok {
				all = append(all, o)
			}
		}
	}
	return all
}

// option is a graft of a size, or two of it, with what it takes; ok is false where
// nobody is free to graft, or to give the cells.
func (s *search) option(g group, yard int, days [2]calendar.Day, z size, l level) (option, bool) {
	o := option{yard: yard, days: days, larvae: z.larvae, nucs: z.nucs, level: l, cost: s.costAt(g.promises[0], l)}
	for i, d := range o.grafts() {
		b := s.batch(batchKey{yard, d, z})
		if !b.free {
			return o, false
		}
		o.of[i] = b
		o.cost.rest += b.work*tenthCost + graftCost + dayCost*int64(s.latest-d)
	}
	return o, true
}

// grafts are the days of its grafts.
func (o option) grafts() []calendar.Day {
	if o.days[1] == 0 {
		return o.days[:1]
	}
	return o.days[:]
}

// batchKey is a graft of a size on a day.
type batchKey struct {
	yard int
	day  calendar.Day
	size size
}

// batched is what is known of one.
type batched struct {
	free  bool
	work  int64
	takes []span
	pays  float64 // tolls, while a bound is looked for
}

func (s *search) batch(k batchKey) *batched {
	b := s.batches[k]
	if b == nil {
		yard := s.ground.yards[k.yard]
		l := s.ground.ladder(yard, k.day, k.size.larvae)
		b = &batched{free: !l.Rung(plan.GraftLarvae).NobodyFree && !l.Rung(plan.GiveCells).NobodyFree}
		size := s.sizeOf(yard, "", k.size)
		b.takes = append(s.ground.takes(l, size), s.living.takes(standing{ladder: l, size: size, virgins: k.size.nucs})...)
		b.work = work(b.takes, s.ground.besides(minutes))
		s.batches[k] = b
	}
	return b
}

func (s *search) sizeOf(yard book.YardID, line string, z size) plan.Size {
	return s.ground.planner.SizeOf(book.BatchPlan{BatchPlanned: book.BatchPlanned{Larvae: z.larvae, Nucs: z.nucs, Line: line, Yard: yard}})
}
