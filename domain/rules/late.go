package rules

import (
	"fmt"
	"math"
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// LateCard is the late day of one batch: what waiting costs, and the ways out
// side by side.
type LateCard struct {
	Batch   book.BatchID
	Number  int
	Now     time.Time
	Next    time.Time    // the next hour at which somebody is free
	Cells   int          // still together or on the way, of which a virgin will walk
	Grafted int          // so many by the graft, where nobody counted more and Cells is what the rates leave of them; 0: counted
	Fit     int          // nucs that take a cell now
	Ready   []book.NucID // those nucs, where the batch is in a book, in walking order
	Hard    time.Time    // the last instant at which the cells may be together
	Margin  float64      // hours by which that lies before the hour of Chance
	Chance  float64      // that the first has walked
	First   time.Time    // by then the first virgin has walked with an even chance
	Middle  time.Time    // half of the cells are out by then
	Already float64      // destroyed by Now, as expected where nobody looked whether one is out
	Losses  []Loss       // in the order of time, from Now on where a look finds none out
	Ways    []bee.WayOut // none once it is beyond belief that a look finds none out
	Walking bool         // a virgin was seen out: the triage comes first
	Triage  [6]bee.TriageStep
	Used    []practice.Key
	Clock   bee.Clock // of its cells where a look at Now finds none out
}

// Loss is how many cells are expected to be destroyed by an instant if nothing
// is done.
type Loss struct {
	By   time.Time
	Lost float64
}

// LateSoon tells whether the ways out of a batch are worth reckoning: cells are
// still together, and their hard hour is near or past.
func LateSoon(v *book.View, id book.BatchID, c bee.Clock) bool {
	return v.Batch(id).Unplaced() > 0 && !v.On().Add(v.Numbers().Duration(practice.LateFrom)).Before(c.Hard())
}

// LateDay is the card of a batch with cells still together; false when there
// are none. Next is when the keeper can come again; zero asks the book for the
// next free hour, and without people in it takes a day.
func LateDay(v *book.View, id book.BatchID, next time.Time) (LateCard, bool) {
	b := v.Batch(id)
	if b.At.IsZero() || b.Unplaced() == 0 {
		return LateCard{}, false
	}
	if next.IsZero() {
		next = NextFree(v)
	}
	ready, rates := readyNucs(v, id), plan.RatesOf(v)
	card := LateDayOf(b.Bee(rates.RipeOf(b)), v.On(), next, len(ready), rates.In(v.Numbers()))
	if b.Uncounted() {
		card.Grafted = b.Unplaced()
	}
	clock := b.Clock(v.Numbers())
	card.Ready, card.Hard, card.First, card.Middle = ready, clock.Hard(), clock.Even(), clock.Middle()
	card.Batch, card.Number, card.Walking = id, b.Number, !b.Walking.IsZero()
	return card, true
}

// HardMeans says what the hard hour is, which lies before any loss that shows.
func (c LateCard) HardMeans() string {
	return fmt.Sprintf("the hard hour is %g h before the chance that the first has walked is %g %%", c.Margin, 100*c.Chance)
}

// CellWords says how many cells the card reckons with: "24 cells", and where nobody
// counted "about 3 cells (10 as grafted, not counted)".
func (c LateCard) CellWords() string {
	if c.Grafted == 0 {
		return count(c.Cells, "cell")
	}
	return fmt.Sprintf("about %s (%d as grafted, not counted)", count(c.Cells, "cell"), c.Grafted)
}

// CellCount is CellWords without what was grafted.
func (c LateCard) CellCount() string {
	if c.Grafted == 0 {
		return count(c.Cells, "cell")
	}
	return "about " + count(c.Cells, "cell")
}

// LateDayOf is the card of a batch that need be in no book: what waiting from
// now until next costs when fit nucs take a cell now. It is told for a keeper who
// stands before the box and finds none out, unless one was seen out: then what
// is together now is all alive. What is lost already if he did not look is told
// besides; once nobody would believe that none is out there are no ways out, only
// the triage.
func LateDayOf(b bee.Batch, now, next time.Time, fit int, n practice.Numbers) LateCard {
	clock, looked := b.Clock(n), noneOut(b, now).Clock(n)
	card := LateCard{
		Now: now, Next: next, Cells: b.Cells, Fit: fit,
		Hard: clock.Hard(), Margin: n.Get(practice.HardMargin), Chance: n.Get(practice.HardChance), First: clock.Even(), Middle: clock.Middle(), Triage: bee.Triage(),
		Clock: looked,
		Ways:  bee.Late{Clock: looked, Now: now, Next: next, Fit: fit}.Ways(),
		Used: []practice.Key{
			practice.GraceOfFirstVirgin, practice.EmergenceSpread, practice.SharedShiftSpread,
			practice.AcceptCell, practice.AcceptVirginDaysOld, practice.AcceptVirginUnderDay, practice.PriorWeight, practice.LastResortWarmth,
		},
	}
	if !loose(b) && looked.FirstBy(now) > 0 { // the clock takes no such look for true
		card.Ways = nil
	}
	card.Already = clock.Loose().Lost(now)
	lost := looked.Loose().Lost
	for _, wait := range []time.Duration{0, n.Duration(practice.LateLossFirst), n.Duration(practice.LateLossSecond)} {
		at := now.Add(wait)
		card.Losses = append(card.Losses, Loss{at, lost(at)})
	}
	card.Losses = append(card.Losses, Loss{next, lost(next)})
	slices.SortStableFunc(card.Losses, func(a, b Loss) int { return a.By.Compare(b.By) })
	card.Losses = slices.CompactFunc(card.Losses, func(a, b Loss) bool { return sameMinute(a.By, b.By) })
	return card
}

// sameMinute tells whether two instants are written alike.
func sameMinute(a, b time.Time) bool {
	return a.Truncate(time.Minute).Equal(b.Truncate(time.Minute))
}

// noneOut is a batch of which somebody saw at an instant that none was out; one
// of which a virgin was seen out is as it was.
func noneOut(b bee.Batch, at time.Time) bee.Batch {
	if loose(b) {
		return b
	}
	b.Seen = append(slices.Clip(b.Seen), bee.Evidence{At: at, Sign: bee.NoneOut})
	return b
}

// loose tells whether somebody saw a virgin of a batch out.
func loose(b bee.Batch) bool {
	return slices.ContainsFunc(b.Seen, func(e bee.Evidence) bool { return e.Sign == bee.OneOut })
}

// AlreadySays says what is lost already where nobody looked; "" while that is
// under half a cell.
func (c LateCard) AlreadySays() string {
	if math.Round(c.Already) < 1 {
		return ""
	}
	return fmt.Sprintf("about %.0f of %d", c.Already, c.Cells)
}

// LateCurve is a way out hour by hour.
type LateCurve struct {
	Way  bee.Way
	Kept []float64 // cells and virgins alive, from the card's Now on, an hour apart
}

// LateCurves are the ways out of a card hour by hour, for so many hours.
func LateCurves(v *book.View, card LateCard, hours int) []LateCurve {
	b := noneOut(v.Batch(card.Batch).Bee(card.Cells), card.Now)
	late := bee.Late{Clock: b.Clock(v.Numbers()), Now: card.Now, Next: card.Next, Fit: card.Fit}
	curves := make([]LateCurve, len(card.Ways))
	for i, w := range card.Ways {
		keeps := late.Keeps(w)
		curves[i].Way = w.Way
		for h := range hours + 1 {
			curves[i].Kept = append(curves[i].Kept, keeps(card.Now.Add(time.Duration(h)*time.Hour)))
		}
	}
	return curves
}

// readyNucs are the nucs that take a cell of a batch now: neither kept for cells of
// another one, nor out of reach on a standstill.
func readyNucs(v *book.View, id book.BatchID) (ready []book.NucID) {
	p := newPass(v, nil)
	yard := p.where(v.Batch(id)).yard
	for i := range p.nucs {
		n := &p.nucs[i]
		other := n.cell != nil && n.cell.Batch.Batch != id || n.waits != nil && n.waits.Batch.Batch != id
		takes := p.takesCell(n) || n.spare != nil && n.spare.Batch.Batch == id && n.lookedToday()
		if takes && !other && !stays(yard, n.Yard) {
			ready = append(ready, n.Nuc.Nuc)
		}
	}
	return ready
}

// NextFree is when somebody is free again after the free hours that run now:
// the begin of the next ones. Without people in the book it is a day on.
func NextFree(v *book.View) time.Time {
	zone, now, today := v.Zone(), v.On(), v.Today()
	for d := today; d <= today+calendar.Day(v.Numbers().Days(practice.FreeHourAhead)); d++ {
		var first time.Time
		for p := range v.People() {
			h := p.FreeOn(d)
			from, _ := h.Between(d, zone)
			if h.Minutes() > 0 && from.After(now) && (first.IsZero() || from.Before(first)) {
				first = from
			}
		}
		if !first.IsZero() {
			return first
		}
	}
	return (today + 1).At(now.In(zone).Hour(), now.In(zone).Minute(), zone)
}
