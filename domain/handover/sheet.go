package handover

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Sheet is who gets which queen, as far as is known now.
type Sheet struct {
	Orders []Served // by priority, then by day
	Left   []Queen  // proven, and for nobody yet

	coming []coming // those on the way, once it was asked for them
}

// Served is what an order gets.
type Served struct {
	Order *book.Order
	Day
	Queens []Given
	Short  int  // queens that are missing
	Next   Next // when they are to be expected; zero while none are missing

	Coming  int          // of those missing, queens who stand in nucs and are to be expected in time
	Planned int          // of the others, queens that batches planned or grafted for it are meant to give it in time
	Fell    []Fell       // batches planned for it that give fewer than they were meant to, where more is missing than is planned
	Sure    float64      // the chance that all that it misses is ready by its day as things stand, where more is missing than is planned
	Look    []*book.Nuc  // nucs with eggs into which looks are due that may show all that is missing: they come before anything else
	GraftBy plan.GraftBy // by when to graft for those that are still missing; its zero value: none is missing, or none is in time
	Lost    bool         // neither what stands in nucs nor what is planned keeps it, and no graft is in time any more
	Soonest plan.Soonest // of one that is lost, the soonest day by which what it misses can be there, of nucs or of a graft

	rank  int // among the orders
	cells int // of those planned, queens of cells that are still to be given
}

// Missing is how many of the queens that an order is short of neither stand in nucs nor are
// planned.
func (s Served) Missing() int { return s.Short - s.Coming - s.Planned }

// Given is a queen who goes to an order.
type Given struct {
	Queen
	Catching
	Lacks      Lacks
	Substitute bool // she is of another line, which the order takes too
}

// New deals out the queens of a view: each order, by its priority and day, gets as
// many as can be found for it without taking one from an order before it; among
// such dealings the one that gives everybody his own line, then caged queens first,
// those longest in the cage, and of those in nucs such to the later orders as have room
// so long. An order for which others are surely ready by its day waits for those, told
// with [Served.Coming], where one after it is kept whole by it. That is exact, not a
// rule of thumb. One whose descent is doubtful goes only where any line will do.
func New(p *plan.Planner) *Sheet {
	s := Reckoned(p)
	for i := range s.Orders {
		o := &s.Orders[i]
		if o.Short > 0 {
			o.Next = s.expect(p, i)
		}
		s.Explain(p, i)
	}
	return s
}

// Explain says of the order of a place in the sheet that misses queens who neither stand in nucs nor are
// planned: why, how sure it is all the same, and what helps.
func (s *Sheet) Explain(p *plan.Planner, i int) {
	o := &s.Orders[i]
	if o.Missing() == 0 {
		return
	}
	o.Sure = s.Chance(p, i, o.On)
	o.graft(p)
	if o.Look = s.looksDue(p, i); len(o.Look) > 0 {
		o.Lost = false
		return
	}
	o.Fell = fellFor(p, *o)
	if o.Lost {
		o.Soonest = s.soonest(p, i)
	}
}

// soonest is the day by which an order can have what it misses: of what stands in nucs, else of a graft.
func (s *Sheet) soonest(p *plan.Planner, i int) plan.Soonest {
	o := s.Orders[i]
	if next := s.expect(p, i); next.Day != 0 {
		return plan.Soonest{Day: next.Day, Chance: next.Chance}
	}
	return p.Possible(plan.Wish{Queens: o.Missing(), By: o.On}).Soonest()
}

// TooLate is that the order cannot be kept any more.
func (s Served) TooLate() plan.TooLate {
	return plan.TooLate{Queens: s.Missing(), Line: s.Order.Lines(), By: s.On, Soonest: s.Soonest}
}

// Reckoned is [New] without a word on when those that are missing are to be expected, and without
// [Sheet.Explain].
func Reckoned(p *plan.Planner) *Sheet {
	s := Deal(p)
	s.plan(p)
	return s
}

// Deal is [New] without a word on when those that are missing are to be expected, or
// what is planned for them.
func Deal(p *plan.Planner) *Sheet {
	v := p.View()
	s := &Sheet{}
	for o := range v.Orders() {
		if o.Open() > 0 {
			s.Orders = append(s.Orders, Served{Order: o, Day: dayOf(v, o), rank: len(s.Orders)})
		}
	}
	s.deal(kindsOf(stock(p.Course())), p)
	s.catch(p.Course())
	return s
}

// kind is queens who will do for the same orders at the same cost.
type kind struct {
	like   likeness
	queens []Queen
}

type likeness struct {
	line, closed       string
	sure, bank         bool
	ready, caged, full calendar.Day
	shut               calendar.Day
	clipped, disc, dot bool
}

func (q Queen) likeness() likeness {
	return likeness{q.Line, q.Closed, q.Sure, q.Bank, q.Ready, q.Caged, q.full, q.Shut, q.Mark.Clipped, q.Mark.Disc != "", q.Mark.Colour != ""}
}

func kindsOf(all []Queen) (kinds []kind) {
	at := map[likeness]int{}
	for _, q := range all {
		like := q.likeness()
		i, ok := at[like]
		if !ok {
			i = len(kinds)
			at[like] = i
			kinds = append(kinds, kind{like: like})
		}
		kinds[i].queens = append(kinds[i].queens, q)
	}
	return kinds
}

func (s *Sheet) deal(kinds []kind, p *plan.Planner) {
	v := p.View()
	want, now := make([]int, len(s.Orders)), goods{make([]int, len(kinds)), make([][]float64, len(s.Orders))}
	for i, k := range kinds {
		now.have[i] = len(k.queens)
	}
	for i, o := range s.Orders {
		want[i] = o.Order.Open()
		for _, k := range kinds {
			now.cost[i] = append(now.cost[i], costOf(k.queens[0], o, v.Today(), v.Numbers()))
		}
	}
	m := s.wait(want, now, p)
	for i := range s.Orders {
		o := &s.Orders[i]
		for k, n := range m.deal[i] {
			for _, q := range kinds[k].queens[:n] {
				o.Queens = append(o.Queens, Given{Queen: q, Lacks: LacksOf(o.Order, q.Mark), Substitute: o.Order.Line != "" && q.Line != o.Order.Line})
			}
			kinds[k].queens = kinds[k].queens[n:]
		}
		slices.SortStableFunc(o.Queens, func(a, b Given) int { return cmp.Compare(order(a), order(b)) })
	}
	for i := range s.Orders {
		s.Orders[i].sayStay(kinds, v)
	}
	s.sayAlone(kinds, v)
	for _, k := range kinds {
		s.Left = append(s.Left, k.queens...)
	}
}

// sayStay warns where queens are missing while some who would do stay where they are, and why.
func (s *Served) sayStay(kinds []kind, v *book.View) {
	stay, whys := map[string]int{}, []string(nil)
	for _, k := range kinds {
		for _, q := range k.queens {
			why := q.stays(s.Catch)
			q.Closed, q.Shut = "", 0
			if why == "" || math.IsInf(costOf(q, *s, v.Today(), v.Numbers()), 1) {
				continue
			}
			if stay[why]++; stay[why] == 1 {
				whys = append(whys, why)
			}
		}
	}
	for i, why := range whys {
		whys[i] = fmt.Sprintf("%d who would do may not go: %s", stay[why], why)
	}
	if s.Short > 0 && len(whys) > 0 {
		s.warn(strings.Join(whys, "; "))
	}
}

// warn adds to what speaks against the day.
func (s *Served) warn(why string) {
	if s.Warning != "" {
		s.Warning += "; "
	}
	s.Warning += why
}

// order puts the caged before the others.
func order(g Given) int {
	if g.Caged.IsZero() {
		return 1
	}
	return 0
}

// the costs by which one dealing is better than another: a queen of another line
// weighs more than any days in a cage, and one in a cage goes before one in a nuc, to
// the first order that takes her. Paint that is wished for and missing costs little, days
// on combs that are full less still.
const (
	ofSubstitute = 100000
	inNuc        = 1000
	aDayCaged    = 2
	unmarked     = 1
	aDayFull     = 0.01

	aWhole = 1 << 14 // parts of one
)

// from is the day by which a queen must be ready: one in a nuc when she is caught.
func (s Served) from(q Queen) calendar.Day {
	if q.Caged.IsZero() {
		return s.Catch
	}
	return s.On
}

// costOf is the cost of giving an order a queen; infinite where she will not do.
func costOf(q Queen, s Served, today calendar.Day, n practice.Numbers) float64 {
	o := s.Order
	switch {
	case q.stays(s.Catch) != "", q.Ready > s.from(q), q.keeps < s.On:
		return math.Inf(1)
	case !o.TakesSure(q.Line, q.Sure):
		return math.Inf(1)
	case q.Mark.Clipped && !o.Clipped, q.Mark.Disc != "" && !o.Disc && o.Marked:
		return math.Inf(1) // what is clipped is not made whole, nor a disc made paint
	}
	cost := 0.0
	if o.Line != "" && q.Line != o.Line {
		cost += ofSubstitute
	}
	cost += LacksOf(o, q.Mark).cost()
	if q.full != 0 {
		cost += aDayFull * float64(max(0, s.Catch-q.full))
	}
	if q.Caged.IsZero() {
		return exactly(cost + inNuc/float64(s.rank+1))
	}
	return exactly(cost - aDayCaged*float64(today.Sub(q.Caged))/float64(s.rank+1))
}

// exactly rounds a cost so that sums of costs are exact, and no order of adding matters.
func exactly(cost float64) float64 { return math.Round(cost*aWhole) / aWhole }
