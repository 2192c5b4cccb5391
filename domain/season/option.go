package season

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// group are promises that one batch, or some, may serve: of one line, by the day.
type group struct {
	promises []int
	line     string
}

// option is one way to keep the promises of a group.
type option struct {
	level // how surely
	cost  cost
	of    []*batched // its grafts, the latest last

	clashes int  // of its grafts, see [free.clashes]
	several bool // it was tried since there is room for no one graft and for no two alike
}

// least is how many days before the day of a promise a graft is at least: no numbers in
// range make a queen sooner.
const least = 20

// size is a graft of one day that keeps some promises.
type size struct{ larvae, nucs int }

func byCost(a, b option) int { return a.cost.compare(b.cost) }

// option is some grafts with what they take, the latest last; ok is false where nobody is
// free to graft one, or to give its cells.
func (s *search) option(g group, l level, of ...batchKey) (option, bool) {
	o := option{level: l, cost: s.costAt(g, l)}
	for _, k := range of {
		b := s.batch(k)
		if !b.free {
			return o, false
		}
		o.of = append(o.of, b)
		o.clashes += b.clashes
		o.cost.rest += (b.work+int64(b.clashes)*clashMinutes*10)*tenthCost + graftCost + dayCost*int64(s.latest-k.day)
	}
	return o, true
}

// besides is what the way counts as that is no work, in minutes: certainty that is missing, and clashes.
func (o option) besides() float64 { return o.level.minutes() + float64(o.clashes*clashMinutes) }

// first is the day of its first graft; 0 of none.
func (o option) first() calendar.Day {
	if len(o.of) == 0 {
		return 0
	}
	return o.of[0].day
}

// last is the day of its last graft; 0 of none.
func (o option) last() calendar.Day {
	if len(o.of) == 0 {
		return 0
	}
	return o.of[len(o.of)-1].day
}

// batchKey is a graft of a size on a day.
type batchKey struct {
	yard int
	day  calendar.Day
	size size
}

// batched is what is known of one.
type batched struct {
	batchKey
	free  bool
	work  int64
	takes []span
	pays  float64 // tolls, while a bound is looked for

	load    *load
	clashes int // see [free.clashes]
}

func (s *search) batch(k batchKey) *batched {
	b := s.batches[k]
	if b == nil {
		yard := s.ground.yards[k.yard]
		l := s.ground.ladder(yard, k.day, k.size.larvae)
		b = &batched{batchKey: k, free: !l.Rung(plan.GraftLarvae).NobodyFree && !l.Rung(plan.GiveCells).NobodyFree}
		size := s.sizeOf(yard, "", k.size)
		b.takes = append(s.ground.takes(l, size), s.living.takes(standing{ladder: l, size: size, virgins: k.size.nucs})...)
		b.work = work(b.takes, s.ground.besides(minutes))
		b.load, b.clashes = s.free.of(l, size), s.free.clashes(l, size)
		s.batches[k] = b
	}
	return b
}

func (s *search) sizeOf(yard book.YardID, line string, z size) plan.Size {
	return s.ground.planner.SizeOf(book.BatchPlan{BatchPlanned: book.BatchPlanned{Larvae: z.larvae, Nucs: z.nucs, Line: line, Yard: yard}})
}

// fitsAlone tells whether there is room for a way with nothing else chosen.
func (s *search) fitsAlone(o option) bool {
	s.ground.left, s.have = s.have, s.ground.left
	fits := s.ground.take(o, none)
	if fits {
		s.ground.put(o, -1)
	}
	s.ground.left, s.have = s.have, s.ground.left
	return fits
}

// fitting are those of some ways that there is room for with nothing else chosen.
func (s *search) fitting(all []option) []option {
	return slices.DeleteFunc(all, func(o option) bool { return !s.fitsAlone(o) })
}
