package plan

import (
	"cmp"
	"fmt"
	"math"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Wished is a planned batch with how sure its queens are wished by its day, and how sure
// they are.
type Wished struct {
	book.BatchPlan
	Sure   float64 // the keeper's number where the plan says none
	Chance float64
	days   [2]string // of the graft and of the wish, said
}

// Wished is how sure the queens of a planned batch are; ok is false where it is not told
// how many are wished, or by when.
func (p *Planner) Wished(b book.BatchPlan) (w Wished, ok bool) {
	if b.Queens == 0 || b.By.IsZero() {
		return w, false
	}
	return Wished{b, cmp.Or(b.Sure, p.numbers.Get(practice.PlanSure)), p.Sure(b), [2]string{p.said(b.Day), p.said(b.By)}}, true
}

// Unordered are the planned batches for which no order waits, and how sure the queens are
// that are wished of them by a day.
func (p *Planner) Unordered() (all []Wished) {
	for b := range p.view.Plans() {
		if w, ok := p.Wished(b); ok && len(b.Orders) == 0 {
			all = append(all, w)
		}
	}
	return all
}

// Unsure tells whether they are less sure than is wished, as far as a reader is told.
func (w Wished) Unsure() bool { return Unsure(w.Chance, w.Sure) }

// Unsure tells whether a chance is less than is wished, as far as a reader is told: both
// in whole hundredths.
func Unsure(chance, wished float64) bool { return math.Round(100*chance) < math.Round(100*wished) }

// Said is how sure they are, in a sentence without a full stop.
func (w Wished) Said() string {
	one := "queens"
	if w.Queens == 1 {
		one = "queen"
	}
	said := fmt.Sprintf("the graft of %s gives its %d %s by %s %s", w.days[0], w.Queens, one, w.days[1], OfHundred(w.Chance))
	if w.Unsure() {
		said += fmt.Sprintf(", %.0f wished", 100*w.Sure)
	}
	return said
}

// Short is both in few words: "wished 90 of 100, reckoned 60".
func (w Wished) Short() string {
	if w.BatchPlan.Sure == 0 {
		return "reckoned " + OfHundred(w.Chance)
	}
	reckoned := fmt.Sprintf("%.0f", 100*w.Chance)
	if w.Chance < 0.01 {
		reckoned = "under 1"
	}
	return fmt.Sprintf("wished %.0f of 100, reckoned %s", 100*w.BatchPlan.Sure, reckoned)
}

// Sentence is all of it: how sure they are, and what to do where that is not enough.
func (w Wished) Sentence() string {
	said := w.Said()
	said = strings.ToUpper(said[:1]) + said[1:] + "."
	if w.Unsure() {
		said += " " + w.Do() + "."
	}
	return said
}

// Do is what to do where they are not sure enough.
func (w Wished) Do() string { return "Graft earlier or more, or promise fewer" }
