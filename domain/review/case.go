package review

import (
	"math"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
	"lidmark/domain/strength"
)

// nucCase is a nuc while its ways are gathered.
type nucCase struct {
	*reckoner
	nuc   *book.Nuc
	holds *course.Presumption
	held  *held

	cups        float64 // of bees in it, or of those that would fill it
	weak, light bool
	few         bool    // so few bees, seen or reckoned, that some are added before anything is given
	need        float64 // bees for the night
	starves     float64 // share of those lost that are without food until somebody comes again
	risk        float64 // of being lost to robbers; 0 while a narrow entrance would not help
	full        bool    // on full combs
	ways        []Way

	ask      asks
	verdicts []rules.Verdict // by ware
}

func (r *reckoner) caseOf(n *book.Nuc, p *course.Presumption, h *held) *nucCase {
	k := &nucCase{reckoner: r, nuc: n, holds: p, held: h, ask: r.asks[n.NucNamed.Nuc], full: n.Side >= r.numbers.Get(practice.FullCombSide)}
	y := r.judged.Strength(n.Yard)
	s := y.Of(n)
	a := r.numbers.Get(practice.BeesPerCup)
	k.cups = math.Ceil(strength.Need(y.Night(), r.view.Box(n.Box).Thin, r.numbers) / a)
	if h.From == 0 {
		return k
	}
	if s.BeesKnown {
		k.cups, k.need = s.Bees/a, s.Need
		k.few = s.TooFew(r.numbers)
	}
	k.weak = s.WeakThen() || k.few
	k.starves = k.hunger(s)
	k.light = k.starves > 0
	if e := y.Exposure(n, s); e.Level >= strength.Watch && e.Remedy == strength.NarrowDoor {
		k.risk = e.Risk * r.numbers.Get(practice.RobbedLost)
	}
	return k
}

// gather lists the ways that are legal now.
func (k *nucCase) gather() {
	if k.held.From == 0 {
		k.ways = append(k.ways, Way{On: 0})
		k.fill(MakeUp)
		return
	}
	k.add(k.leave(), 0)
	if k.nuc.Holds.Condition.Queenright() {
		k.care()
		k.catch()
		return
	}
	k.judge()
	k.looks()
	for i := range k.hand.Wares {
		if k.holds.Calendar == book.Cell || k.holds.Calendar == book.LayingWorkers {
			break // one is in it, or it would be killed
		}
		if warned, ok := k.legal(i + 1); ok {
			k.add(Way{Kind: k.gives(i + 1), Ware: i + 1, On: k.today, Warned: warned, Care: k.besides()}, 0)
		}
	}
	k.prepared()
	k.queenless()
	k.care()
}

// leave is to leave a nuc until its next look. Where that may be made already the rules
// say what is looked for.
func (k *nucCase) leave() Way {
	w := Way{Kind: Leave, On: k.nextLook()}
	if f := k.ask.queen; f != nil && f.Rule == rules.LookEggs && w.On != 0 && !k.view.On().Before(f.From) {
		w.Do = f.Do
	}
	return w
}

func (k *nucCase) catch() {
	if k.mayCatch() {
		k.add(Way{Kind: Catch, On: k.today}, 0)
	}
}

// gives is the kind of giving a ware.
func (k *nucCase) gives(ware int) Kind {
	if k.hand.Wares[ware-1].Virgin {
		return PutInVirgin
	}
	return GiveCell
}

// legal is what the rules say of giving a ware to what is there. Virgins whom they have
// culled for their age are not given.
func (k *nucCase) legal(ware int) ([]rules.Reason, bool) {
	v, w := k.verdicts[ware-1], k.hand.Wares[ware-1]
	return v.Warned, v.OK() && !(w.Virgin && rules.TooOld(time.Duration(w.Age)*day, k.numbers))
}

// judge asks the rules about every ware, once.
func (k *nucCase) judge() {
	k.verdicts = make([]rules.Verdict, len(k.hand.Wares))
	for i, w := range k.hand.Wares {
		k.verdicts[i] = k.judged.Check(k.intent(w))
	}
}

func (k *nucCase) intent(w Ware) rules.Intent {
	if !w.Virgin {
		return rules.GiveCell{Nuc: k.nuc.Nuc, Batch: w.Batch}
	}
	i := rules.PutInVirgin{Nuc: k.nuc.Nuc, Batch: w.Batch}
	if len(w.Queens) > 0 {
		i.Queen = w.Queens[0]
	}
	return i
}

// looks are for nucs whose queen, or an own one, nobody has seen laying, and for those
// in which the rules have a virgin of their own looked for.
func (k *nucCase) looks() {
	c := k.holds.Calendar
	own := k.held.ownLook
	if k.ask.ownFirst() {
		k.lookFirst(Way{Own: own, OwnFirst: true})
		return
	}
	if k.robbed[k.nuc.Yard] {
		return
	}
	if c != book.Virgin && c != book.Due && (c != book.NoQueen || !own) || !own && !k.eggsMayBe() {
		return
	}
	k.lookFirst(Way{Own: own})
}

// lookFirst adds a look, and one for each ware that is given where it finds nothing.
func (k *nucCase) lookFirst(w Way) {
	w.Kind, w.On, w.Care = LookFirst, k.today, k.besides()
	k.add(w, 0)
	for i := range k.hand.Wares {
		if _, ok := k.legal(i + 1); ok {
			w.Ware = i + 1
			k.add(w, 0)
		}
	}
}

// prepared are ways that clear the nuc first: of its own cells, of a queen who
// is no good.
func (k *nucCase) prepared() {
	own := k.held.Chances().OwnCell >= ownPossible
	late := k.awaited() && k.nuc.Holds.Condition != book.DroneLayer && !k.holds.TooLateAt.IsZero() && !k.view.On().Before(k.holds.TooLateAt)
	takeOut := k.nuc.Holds.Condition == book.DroneLayer || late
	if takeOut {
		k.add(Way{Kind: TakeOut, On: k.today, Unsure: late}, 0)
	}
	if late && k.few && !k.robbed[k.nuc.Yard] {
		k.add(k.shakeOut(Way{Unsure: true}), 0)
	}
	for i := range k.hand.Wares {
		if takeOut {
			k.add(Way{Kind: TakeOut, Ware: i + 1, On: k.today, Unsure: late, Care: k.besides()}, 0)
		}
		if warned, ok := k.legal(i + 1); own && ok {
			k.add(Way{Kind: BreakDown, Ware: i + 1, On: k.today, Warned: warned, Care: k.besides()}, 0)
		}
	}
}

func (k *nucCase) awaited() bool {
	c := k.holds.Calendar
	return c == book.Cell || c == book.Virgin || c == book.Due
}

// queenless are ways of what has nobody to wait for.
func (k *nucCase) queenless() {
	switch k.holds.Calendar {
	case book.NoQueen:
		k.add(Way{Kind: GiveBrood, On: k.today}, k.numbers.Get(practice.PriceBroodComb))
	case book.LayingWorkers, book.DroneLayer:
	default:
		return
	}
	k.add(k.shakeOut(Way{}), 0)
	if k.holds.Calendar == book.LayingWorkers {
		k.fill(ShakeOut)
	}
}

// shakeOut is to shake a nuc out, in the words of the rules where they ask for it; where
// they ask to unite it that does as well.
func (k *nucCase) shakeOut(w Way) Way {
	w.Kind, w.On = ShakeOut, k.today
	f := k.ask.queen
	if w.Unsure && !k.holds.NoEggsOn.Before(k.holds.TooLateAt) {
		f = k.ask.late
	}
	switch {
	case f == nil:
	case f.Act == rules.ActUnite:
		w.Do = "Unite it, or shake it out"
	case f.Act == rules.ActShakeOut, f.Rule == rules.DroneLayer && k.few, w.Unsure:
		w.Do = f.Do
	}
	return w
}

// fill are ways that begin with new bees.
func (k *nucCase) fill(kind Kind) {
	need := math.Max(1, math.Ceil(k.cups))
	if float64(k.hand.Cups) < need {
		return
	}
	for i := range k.hand.Wares {
		k.add(Way{Kind: kind, Ware: i + 1, On: k.today}, need*k.numbers.Get(practice.PriceCup))
	}
}

// care are ways that keep alive what is there.
func (k *nucCase) care() {
	if k.weak && k.mended() {
		k.add(Way{Kind: AddBees, On: k.today, Care: WithBees, Warned: k.judged.Check(rules.AddBees{Nuc: k.nuc.Nuc, Cups: 1}).Warned}, k.numbers.Get(practice.PriceCup))
	}
	if k.light {
		k.add(Way{Kind: Feed, On: k.today, Care: WithFeed, Do: k.feeds(), Warned: k.judged.Check(rules.GiveFeed{Nuc: k.nuc.Nuc, Litres: k.numbers.Get(practice.SyrupPerFeed)}).Warned}, 0)
	}
	if k.risk > 0 {
		k.add(Way{Kind: Narrow, On: k.today, Care: WithNarrow}, 0)
	}
}

// mended tells whether with another cup of bees a nuc has enough to be given something.
func (k *nucCase) mended() bool {
	return (k.cups+1)*k.numbers.Get(practice.BeesPerCup) >= k.need*k.numbers.Get(practice.AddBeesUnder)
}

// feeds says how it is fed, in the words of the rules.
func (k *nucCase) feeds() string {
	if k.ask.feed == nil {
		return ""
	}
	return k.ask.feed.Do
}

// besides is what is done at a nuc that is opened anyway.
func (k *nucCase) besides() (c Care) {
	if k.light {
		c |= WithFeed
	}
	if k.risk > 0 {
		c |= WithNarrow
	}
	return c
}

// hunger is how far a nuc is on the way to starving when somebody comes next: the share
// of the days after its last food that it can bear, up to one.
func (k *nucCase) hunger(s strength.State) float64 {
	if !s.Light(k.numbers) {
		return 0
	}
	out := s.FoodOut
	if out == 0 {
		out = k.today + calendar.Day(s.FoodDays)
	}
	next := k.nextLook()
	if next == 0 {
		next = k.by
	}
	return min(max(float64(next.Sub(out))/max(k.numbers.Get(practice.StarvedAfter), 1), 0), 1)
}

func (k *nucCase) mayCatch() bool {
	if k.holds.ReadyAt.IsZero() || k.holds.ReadyAt.After(k.view.On()) {
		return false
	}
	return k.judged.Check(rules.Catch{Nuc: k.nuc.Nuc}).OK()
}

// nextLook is the day of the next look that is worth while, after today.
func (k *nucCase) nextLook() calendar.Day {
	zone := k.course.Zone(k.nuc.Yard)
	for _, t := range []time.Time{k.holds.LookFrom, k.holds.LookBest, k.holds.LookBy} {
		if d := calendar.DayOf(t, zone); !t.IsZero() && d > k.today {
			return d
		}
	}
	return 0
}
