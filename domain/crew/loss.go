package crew

import (
	"fmt"
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// Price is what letting a piece of work wait is expected to cost, in queens, and why.
type Price struct {
	Queens float64
	Why    string
}

// pricer prices work that waits until somebody can come again.
type pricer struct {
	judged  *rules.Judged
	view    *book.View
	numbers practice.Numbers
	next    time.Time // when somebody can come again
	soon    time.Time // what has a hard end before it cannot wait
	days    float64
	late    map[book.BatchID]byThen // what becomes of the cells together
	given   map[book.BatchID]int    // of the cells together, those that nucs of the plan are given
	caged   map[book.BatchID]bool   // the cells together are all collected: what no nuc is given goes into a cage
	heaps   map[book.BatchID]collecting
	held    []Work // held back: it waits

	promised map[book.NucID]caught

	planner func() *plan.Planner
	own     func() practice.Numbers // the numbers with the keeper's own rates in them
}

func newPricer(j *rules.Judged, day rules.DayPlan) *pricer {
	v := j.Course().View()
	p := &pricer{judged: j, view: v, numbers: v.Numbers(), next: day.Next, soon: day.Soon, late: map[book.BatchID]byThen{}, given: map[book.BatchID]int{}, caged: map[book.BatchID]bool{}}
	for _, stop := range day.Stops {
		for _, t := range stop.Tasks {
			if t.Act == rules.ActGiveCell {
				p.given[batchOf(t)] += len(t.Of)
			}
		}
	}
	p.planner = sync.OnceValue(func() *plan.Planner { return plan.New(j.Course()) })
	p.own = sync.OnceValue(func() practice.Numbers { return p.planner().Own() })
	p.days = max(0, p.next.Sub(day.At).Hours()/24)
	p.promised = promisedBy(j, calendar.DayOf(p.next, v.Zone()))
	p.heaps = p.together(day)
	for id, c := range p.heaps {
		p.caged[id] = c.all
	}
	return p
}

// caught is a queen in a nuc, and the order that she is caught for.
type caught struct {
	handover.Given
	order handover.Served
	leave bool // she leaves before somebody comes again: a courier who takes her tomorrow is late for nobody who caught her today
}

// promisedBy are the nucs whose queens are caught for an order before a day.
func promisedBy(j *rules.Judged, next calendar.Day) map[book.NucID]caught {
	promised := map[book.NucID]caught{}
	dealt := j.Dealt()
	if dealt == nil {
		return promised
	}
	for _, o := range dealt.Orders {
		for _, g := range o.Queens {
			if g.By < next && !g.Nuc.IsZero() {
				promised[g.Nuc] = caught{g, o, o.Catch < next}
			}
		}
	}
	return promised
}

// hard tells whether a task at one of its subjects cannot wait until somebody comes
// again: so it has a hard end before or soon after, or robbers are at work, or she leaves
// before, or the food is out.
func (p *pricer) hard(t rules.Task, s book.Subject) bool {
	if t.Act == rules.ActMakeUp {
		return false // cages do for the cells: what those cost is its price
	}
	id, _ := s.Nuc()
	leaves := p.promised[book.NucID(id)].leave
	if t.Act == rules.ActFeed && p.isOut(s) {
		return true
	}
	if t.Act == rules.ActHandOver {
		return t.By.Before(p.next) // who fetches them comes today
	}
	return t.Hard && t.By.Before(p.soon) || t.Findings[0].Emergency() || t.Act == rules.ActCatchQueen && leaves
}

// of prices a task at one of its subjects. What costs nothing that is known still
// costs a little, so that it is done where there is time.
func (p *pricer) of(t rules.Task, s book.Subject) Price {
	price := p.act(t, s)
	if price.Queens < leastPrice {
		price.Queens = leastPrice
	}
	if price.Why == "" {
		price.Why = "waiting costs nothing that is known"
	}
	return price
}

// leastPrice is what work counts at least, and leastGraft a graft, which makes the batch: so it comes
// before the feed of its starters. Neither is a loss that anybody would see.
const (
	leastPrice = 1e-4
	leastGraft = 2 * leastPrice
)

func (p *pricer) act(t rules.Task, s book.Subject) Price {
	switch t.Act {
	case rules.ActCollectCells, rules.ActGiveCell:
		return p.cells(t, s)
	case rules.ActLookForEggs, rules.ActLookForBrood, rules.ActLookInside:
		return p.look(s)
	case rules.ActCatchQueen:
		return p.catch(s)
	case rules.ActBreakDownCells:
		return p.ends(t, p.numbers.Get(practice.OwnCellsDestroy)*p.queen(), "own cells walk before")
	case rules.ActSearchBrood:
		return p.ends(t, p.queen(), "a virgin may walk before, and cost the batch")
	case rules.ActAddBees, rules.ActCheckBees:
		return p.share(p.numbers.Get(practice.WeakLost), p.numbers.Get(practice.StrengthAhead), "weak: %.0f of 100 such nucs are lost in %.1f d")
	case rules.ActFeed:
		return p.food(s)
	case rules.ActNarrowEntrance:
		return p.robbers(s)
	case rules.ActTakeOutQueen, rules.ActShakeOut, rules.ActUnite:
		return p.idle(1)
	case rules.ActGraft:
		price := p.planned(t, s)
		price.Queens = max(price.Queens, leastGraft)
		return price
	case rules.ActMakeReady:
		if step := t.Findings[0].Step; step == plan.FeedStarter || step == plan.DroneComb {
			return p.beside(t)
		}
		return p.planned(t, s)
	case rules.ActMakeUp:
		caged := p.cage(batchOf(t))
		return p.ends(t, t.Findings[0].Amount*caged.Queens, caged.Why)
	case rules.ActGoOn:
		return p.goesOn(t, s)
	case rules.ActCountCells:
		return Price{Why: "nobody knows how many cells live; no queen is lost by that"}
	default:
		return Price{}
	}
}

// queen is how many laying queens a ripe cell comes to.
func (p *pricer) queen() float64 {
	return plan.OfCell(p.own())
}

// cells: what is together is lost by the batch's clock, all of it, if nobody collects it, and
// a virgin who is found loose goes to a nuc that would have had her cell. Once it is collected
// the cell that a nuc is not given goes into a cage, and the nuc stands idle besides.
func (p *pricer) cells(t rules.Task, s book.Subject) Price {
	id := batchOf(t)
	then := p.byThen(id)
	price := Price{then.loose, fmt.Sprintf("%.0f of 100 cells are lost by then", 100*then.lost)}
	_, nuc := s.Nuc()
	if nuc && p.caged[id] {
		price = p.cage(id)
	}
	if nuc {
		price.Queens += p.idle(1).Queens
		return price
	}
	if b, ok := s.Batch(); ok {
		n := then.cells
		if !p.caged[b] {
			n -= p.given[b] // they are priced at their nucs
		}
		price.Queens *= float64(max(0, n))
	}
	return price
}

// byThen is what becomes of a cell of a batch until somebody can come again, and what it costs
// in laying queens: left together with the others, or in a cage.
type byThen struct {
	cells        int     // of the batch that are still to be given
	lost, out    float64 // the chances that it is destroyed together, and out in a cage
	loose, caged float64
}

func (p *pricer) byThen(id book.BatchID) byThen {
	then, known := p.late[id]
	if known {
		return then
	}
	if card, ok := rules.LateDay(p.view, id, p.next); ok && card.Cells > 0 {
		of, c, own := float64(card.Cells), card.Clock, p.own()
		lost := c.Loose().Lost(p.next)
		then = byThen{
			cells: card.Cells,
			lost:  lost / of, out: c.Out(p.next) / of,
			loose: (lost*p.queen() + plan.OfEmerged(plan.LooseBy(c, p.next), own)) / of,
			caged: plan.OfEmerged(plan.CagedBy(c, p.next), own) / of,
		}
	}
	p.late[id] = then
	return then
}

// cage is what a cell costs that goes into a cage: if she is out when somebody comes again, a
// nuc is given the virgin, else it is given the cell. Where they may stay together until then
// next to nothing is lost either way, and no cage is worth its work.
func (p *pricer) cage(id book.BatchID) Price {
	then := p.byThen(id)
	if c, is := p.heaps[id]; is && !c.hard {
		then.caged = max(then.caged, then.loose+leastPrice)
	}
	return Price{then.caged, fmt.Sprintf("its cell is caged: %.0f of 100 are out by then, and of virgins fewer are accepted", 100*then.out)}
}

// leave takes back that the cells of a batch are collected.
func (p *pricer) leave(all []Work) {
	for _, w := range all {
		if w.Task.Act == rules.ActCollectCells {
			delete(p.caged, batchOf(w.Task))
		}
	}
}

// batchOf is the batch whose cells a task is about.
func batchOf(t rules.Task) (id book.BatchID) {
	for _, f := range t.Findings {
		for _, s := range append([]book.Subject{f.Of}, f.Also...) {
			if b, ok := s.Batch(); ok {
				return b
			}
		}
	}
	return id
}

// look: a nuc without a queen stands idle until somebody finds out.
func (p *pricer) look(s book.Subject) Price {
	id, ok := s.Nuc()
	if !ok {
		return Price{}
	}
	h := p.judged.Course().Held(p.view.Nuc(id))
	if h.From == 0 {
		return Price{}
	}
	c := h.Chances()
	empty := c.Queenless() + c.DroneLayer
	price := p.idle(empty)
	price.Why = fmt.Sprintf("no queen, or a drone layer: %.0f of 100, and stands idle for %.1f d more", 100*empty, p.days)
	return price
}

// idle is what a nuc costs that stands idle, with a chance.
func (p *pricer) idle(chance float64) Price {
	return Price{chance * p.days * p.numbers.Get(practice.WorthNucDay), fmt.Sprintf("stands idle for %.1f d more", p.days)}
}

// share is what a nuc costs that is lost with a chance over some days.
func (p *pricer) share(lost, over float64, why string) Price {
	now := min(1, p.days/max(1, over))
	return Price{lost * now, fmt.Sprintf(why, 100*lost*now, p.days)}
}

// robbers: what is robbed may be lost, and what is exposed to robbers who are about
// is as likely to be robbed as its door, bees and neighbours make it.
func (p *pricer) robbers(s book.Subject) Price {
	id, ok := s.Nuc()
	if !ok {
		return Price{}
	}
	n := p.view.Nuc(id)
	risk, why := 1.0, "robbers are at it"
	if n.RobbedAt.IsZero() {
		y := p.judged.Strength(n.Yard)
		risk = y.Exposure(n, y.Of(n)).Risk
		why = fmt.Sprintf("robbers come in %.0f of 100 such nucs", 100*risk)
	}
	lost := risk * p.numbers.Get(practice.RobbedLost)
	return Price{lost, fmt.Sprintf("%s, and %.0f of 100 robbed ones are lost", why, 100*p.numbers.Get(practice.RobbedLost))}
}

// catch: a queen who is not caught is missing at the order that she is for, if she is to
// be caught for it before somebody comes again; else she waits where she is, on small
// combs that are full with a comb or room the longer.
func (p *pricer) catch(s book.Subject) Price {
	id, _ := s.Nuc()
	o, promised := p.promised[book.NucID(id)]
	switch {
	case !promised:
		return Price{Why: "no order needs her caught before that: she waits in her nuc"}
	case !o.leave:
		return Price{Why: fmt.Sprintf("her combs are full: give her a comb or room, order %s takes her %s", o.order.Order.Number, o.order.On.Short())}
	}
	leaves := "is fetched"
	if o.order.Order.Sent {
		leaves = "is sent"
	}
	return Price{1, fmt.Sprintf("order %s %s %s", o.order.Order.Number, leaves, o.order.On.Short())}
}

// ends is a price that is due when the work's last hour is before somebody comes
// again, and nothing else.
func (p *pricer) ends(t rules.Task, queens float64, why string) Price {
	if t.By.IsZero() || !t.By.Before(p.next) {
		return Price{}
	}
	return Price{queens, why}
}
