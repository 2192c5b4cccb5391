package review

import (
	"lidmark/domain/practice"
)

// parts are what the worth of a way is made of, in queens.
type parts struct {
	queens, bees, found  float64 // what is had
	again                float64 // by the next look
	ware, goods, minutes float64 // what it costs
	lost                 float64 // share of what is had that is lost for other reasons
	cups                 float64
	weak, light, exposed bool
}

// add takes a way in with what it comes to, less what its goods cost.
func (k *nucCase) add(w Way, goods float64) {
	key := wayKey{w.Kind, w.Ware}
	switch {
	case w.Kind == PutInVirgin:
		key.kind = GiveCell
	case w.Kind == ShakeOut && w.Ware > 0:
		key.kind = MakeUp
	case w.Kind == ShakeOut && w.Unsure:
		key.ware = unlaid
	case w.Kind == AddBees, w.Kind == Feed, w.Kind == Narrow:
		key.kind = Leave
	}
	w.Dusk = k.duskOf(w)
	k.ways = append(k.ways, k.weighed(w, k.held.figures[key], goods))
}

// weighed puts the worth of a way together.
func (k *nucCase) weighed(w Way, f figure, goods float64) Way {
	p := &w.parts
	p.lost = k.lostWith(w, p)
	keeps := 1 - p.lost
	w.Given, w.Lays, w.Ready, w.Doubtful, w.Meets = f.given, f.lays*keeps, f.ready*keeps, f.own*keeps, f.meets
	w.Caught, w.Minutes = f.caught, k.minutes(w)
	p.cups = k.cups
	if w.Kind == AddBees {
		p.cups++
	}
	p.queens, p.bees = f.queens, p.cups*f.kept*k.numbers.Get(practice.PriceCup)
	if w.Kind == ShakeOut && w.Ware == 0 && !w.Unsure {
		p.bees = p.cups * k.numbers.Get(practice.PriceCup) // they go to the neighbours
	}
	if w.Kind == Unite || w.Kind == ShakeOut && w.Ware == 0 && !w.Unsure {
		f.found = 1 // its box is free
	}
	p.found = f.found * k.numbers.Get(practice.LookAgainFrom) * k.numbers.Get(practice.WorthNucDay)
	if w.Kind == ShakeOut && w.Unsure { // its bees go to the neighbours
		p.found += f.found * p.cups * k.numbers.Get(practice.PriceCup)
	}
	p.again = keeps * k.again(w, f)
	p.goods, p.minutes = goods, w.Minutes*k.numbers.Get(practice.WorthMinute)
	if w.Gives() {
		p.ware = f.given * k.price(w.Ware)
	}
	w.Worth = keeps*(p.queens+p.bees) + p.found + p.again - p.ware - p.goods - p.minutes
	return w
}

func (k *nucCase) price(ware int) float64 {
	if k.hand.Wares[ware-1].Virgin {
		return k.numbers.Get(practice.PriceVirgin)
	}
	w, falls := k.hand.Wares[ware-1], 0.0
	for _, other := range k.hand.Wares { // a cell that emerges sooner is worth less
		if !other.Virgin && other.Many > 0 && !w.Emerges.IsZero() {
			falls = max(falls, other.Emerges.Sub(w.Emerges).Hours()/24)
		}
	}
	return k.numbers.Get(practice.PriceCell) * max(0, 1-falls*k.numbers.Get(practice.PriceCellFalls))
}

// lostWith is the share of such nucs lost for want of bees or food, or to
// robbers. What leaves the box or fills it anew is not.
func (k *nucCase) lostWith(w Way, p *parts) float64 {
	if w.Kind == ShakeOut && !w.Unsure || w.Kind == MakeUp || w.Kind == Unite {
		return 0
	}
	keeps := 1.0
	if k.weak && w.Care&WithBees == 0 {
		p.weak = true
		keeps *= 1 - k.numbers.Get(practice.WeakLost)
	}
	if k.light && w.Care&WithFeed == 0 {
		p.light = true
		keeps *= 1 - k.starves*k.numbers.Get(practice.LightLost)
	}
	if risk := k.risk; risk > 0 {
		p.exposed = true
		if w.Care&WithNarrow != 0 {
			risk *= 1 - k.numbers.Get(practice.NarrowHelps)
		}
		keeps *= 1 - risk
	}
	return 1 - keeps
}

// tasks are the minutes of a kind of way.
var tasks = [...]practice.Key{
	LookFirst: practice.MinutesLook, GiveCell: practice.MinutesGiveCell, PutInVirgin: practice.MinutesPutInVirgin,
	BreakDown: practice.MinutesBreakDownCells, TakeOut: practice.MinutesCatch, ShakeOut: practice.MinutesShakeOut, MakeUp: practice.MinutesMakeUp,
	GiveBrood: practice.MinutesAddBees, AddBees: practice.MinutesAddBees, Feed: practice.MinutesFeed, Narrow: practice.MinutesEntrance,
	Unite: practice.MinutesUnite, Catch: practice.MinutesCatch,
}

func (k *nucCase) minutes(w Way) (sum float64) {
	for _, key := range k.work(w) {
		sum += k.numbers.Get(key)
	}
	return sum
}

// work are the tasks of a way, each by its minutes.
func (k *nucCase) work(w Way) (keys []practice.Key) {
	switch key := tasks[w.Kind]; {
	case key == practice.MinutesLook && k.full:
		keys = append(keys, practice.MinutesLookFrameNuc)
	case key == practice.MinutesMakeUp && k.full:
		keys = append(keys, practice.MinutesMakeUpFrameNuc)
	case key != 0:
		keys = append(keys, key)
	}
	if w.Kind == ShakeOut && w.Gives() {
		keys = append(keys, practice.MinutesMakeUp)
	}
	if w.Gives() && w.Kind != GiveCell && w.Kind != PutInVirgin {
		keys = append(keys, tasks[k.gives(w.Ware)])
	}
	if w.Care&WithFeed != 0 && w.Kind != Feed {
		keys = append(keys, practice.MinutesFeed)
	}
	if w.Care&WithNarrow != 0 && w.Kind != Narrow {
		keys = append(keys, practice.MinutesEntrance)
	}
	return keys
}
