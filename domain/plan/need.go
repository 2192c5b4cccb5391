package plan

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Size is how big a batch is meant to be. Takes, Cells and Queens are what is to
// be expected of its larvae: grafts accepted by the builder and ripe cells, where the
// graft does not fail outright; queens to hand over, by whatever day.
type Size struct {
	Larvae, Nucs         int
	Takes, Cells, Queens float64
	Caged                int  // queens for whom there is a cage, whenever they come; 0: Queens
	Incubated            int  // capped cells that ripen in the keeper's incubator; 0: in their finisher
	Virgins              bool // the nucs are given virgins, who emerge in cages
	Line                 string
	Yard                 book.YardID
	Not                  book.BatchID // the batch of the book it is: what that wants is its own
	StartersSet          bool         // its starters are set up: they want no bees any more
	Fed                  bool         // its starters are fed: the syrup is there
	NucsMade             bool         // its nucs are made up: they want none, nor brood, food and time
}

// without is the size once the steps are done that are done of a plan.
func (s Size) without(done book.BatchPlan) Size {
	s.Fed, s.StartersSet, s.NucsMade = done.Made(book.StarterFed), done.Made(book.StarterSetUp), done.Made(book.NucsReady)
	return s
}

// Need is an amount of a good that a batch needs from one day to another.
type Need struct {
	Good
	Amount   float64
	From, To calendar.Day
	OrderBy  calendar.Day // last day to order it; zero: it is not bought
	Have     float64      // what the book knows of; meaningless unless Known
	Known    bool
	Kinds    []OfKind // of nucs and of combs of brood, where there are several kinds
}

// Short is how much is missing of what is needed; none where nobody knows.
func (n Need) Short() float64 {
	if !n.Known {
		return 0
	}
	return max(0, n.Amount-n.Have)
}

// Needs are all that a batch of a size on a ladder eats, in the order of [Good].
// What is needed of nothing is left out.
func (p *Planner) Needs(l Ladder, s Size) []Need { return p.NeedsOf(Wanting{l, s})[0] }

// NeedsOf are those of several batches, each beside the others of them.
func (p *Planner) NeedsOf(of ...Wanting) [][]Need {
	all := make([][]Need, len(of))
	for i, given := range p.Given(of...) {
		all[i] = p.needs(want{Planner: p, l: of[i].Ladder, s: of[i].Size, given: given})
	}
	return all
}

func (p *Planner) needs(w want) []Need {
	w.rearing()
	w.mating()
	slices.SortStableFunc(w.all, func(a, b Need) int { return int(a.Good) - int(b.Good) })
	return slices.DeleteFunc(w.all, func(n Need) bool { return n.Amount <= 0 })
}

// BeesOfStarters are the kilograms of bees with which the starters of a batch of a size are
// still to be set up.
func (p *Planner) BeesOfStarters(s Size) float64 {
	if s.StartersSet {
		return 0
	}
	return p.starters(s) * p.numbers.Get(practice.StarterBees)
}

type want struct {
	*Planner
	l   Ladder
	s   Size
	all []Need

	given []Given
}

// from is what colonies give for one of its steps.
func (w *want) from(step Step) (g Given) {
	for _, g := range w.given {
		if g.For == step {
			return g
		}
	}
	return g
}

func (w *want) add(g Good, amount float64, from, to Step) *Need {
	n := Need{Good: g, Amount: amount, From: w.l.Rung(from).Best, To: w.l.Rung(to).Best}
	if g.Bought() {
		n.OrderBy = n.From - w.days(practice.BuyAhead)
	}
	w.all = append(w.all, n)
	return &w.all[len(w.all)-1]
}

func (n *Need) have(amount float64) { n.Have, n.Known = amount, true }

// rearing is what it takes until there are ripe cells.
func (w *want) rearing() {
	n := w.numbers
	starting, finishing := w.Rearing(w.l, w.s)
	starters, finishers := starting.Amount, finishing.Amount
	w.add(BreederOfLine, 1, Confine, GraftLarvae).have(w.breeders())
	w.add(CellCups, float64(w.s.Larvae), GraftLarvae, CountCapped)
	w.add(Starters, starters, SetUpStarter, ToFinisher).have(w.idle(book.Starter, starting))
	bees := w.from(SetUpStarter)
	w.add(StarterBees, w.BeesOfStarters(w.s), SetUpStarter, SetUpStarter).have(bees.Kilograms)
	rear := w.add(Finishers, finishers, ToFinisher, CountCapped)
	rear.To = finishing.To + 1
	rear.have(w.idle(book.Finisher, finishing))
	w.add(NursesOfCells, w.s.Takes*n.Get(practice.NursesPerCell)/n.Get(practice.BeesPerKilogram), ToFinisher, CountCapped)
	w.incubator()
	start, capped := w.l.Rung(FeedStarter).Best, w.l.Rung(CountCapped).Best
	perDay := n.Get(practice.FeedPerRearer)
	litres := perDay * (starters*float64(w.l.Rung(ToFinisher).Best-start) + finishers*float64(capped-w.l.Rung(ToFinisher).Best))
	if !w.s.Fed {
		w.add(RearerFeed, litres, FeedStarter, CountCapped)
	}
	w.add(DroneColonies, DroneColoniesFor(w.s.Nucs, n), DroneComb, Fly).have(w.drones())
}

// mating is what it takes from the nucs on.
func (w *want) mating() {
	in := w.l.InNucs(w.s)
	nucs := w.add(Nucs, in.Amount, MakeUpNucs, Ready)
	nucs.To = in.To + 1
	nucs.have(float64(w.Free(w.s.Yard, in.From, in.To, w.s.Not)))
	made := w.MadeUp(w.l, w.s)
	nucs.Kinds = kindsOf(made.All)
	given := w.from(MakeUpNucs)
	w.add(CupsOfBees, made.Cups, MakeUpNucs, MakeUpNucs)
	w.add(KilogramsOfBees, made.Kilograms, MakeUpNucs, MakeUpNucs).have(given.Kilograms)
	combs := w.add(BroodCombs, made.Combs, MakeUpNucs, MakeUpNucs)
	combs.have(given.Combs)
	combs.Kinds = made.combsByKind()
	w.add(FoodForNucs, float64(made.Nucs)*w.numbers.Get(practice.FoodPerNuc), MakeUpNucs, LookForEggs)
	w.add(Cages, max(math.Ceil(w.s.Queens), float64(w.s.Caged)), Ready, Ready)
}
