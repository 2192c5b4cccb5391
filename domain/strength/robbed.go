package strength

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// record is how often robbers came to a yard in the view's year.
type record struct {
	robbed int     // nucs of the yard at which robbers were seen
	months float64 // for how long its living nucs stood, in nuc months
}

// base is the exposure without cause, moved by what was recorded in the yard.
// The rate at which a nuc is robbed in a month gets a beta distribution whose
// mean is that of the keeper's base b0 and whose weight is w nuc months; what was
// seen is binomial; so the new mean is
//
//	p = (w·1/(1+e^−b0) + nucs robbed) / (w + nuc months)    base = ln(p/(1−p))
//
// It is simple on purpose: what drew those robbers is not taken out again, and
// nucs that are empty now count no month.
func (y *Yard) base() (base float64, robbed int) {
	y.recorded.Do(func() { y.record = y.count() })
	b0 := y.numbers.Get(practice.RobbingBase)
	return updated(b0, y.numbers.Get(practice.RobbingPriorWeight), y.record), y.record.robbed
}

// updated is a base after what was recorded, see [Yard.base].
func updated(b0, weight float64, r record) float64 {
	if r.robbed == 0 && r.months == 0 {
		return b0
	}
	p := (weight*share(b0) + float64(r.robbed)) / (weight + max(r.months, float64(r.robbed)))
	return math.Log(p / (1 - p))
}

// share is a score as a share.
func share(x float64) float64 { return 1 / (1 + math.Exp(-x)) }

// count counts the robbed nucs and the months of those that live.
func (y *Yard) count() (r record) {
	year, _, _ := y.today.Date()
	start := calendar.Date(year, 1, 1)
	month := float64(y.numbers.Days(practice.RobbingTrial))
	seen := map[book.NucID]bool{}
	for at, n := range y.view.Robberies() {
		if !seen[n] && at.Day(y.zone) >= start && y.view.Nuc(n).Yard == y.yard.Yard {
			seen[n] = true
			r.robbed++
		}
	}
	for n := range y.view.Nucs() {
		if n.Yard == y.yard.Yard && n.Holds.Condition != book.Empty && !n.MadeUp.IsZero() {
			r.months += float64(y.today.Sub(max(start, n.MadeUp.Day(y.zone)))) / month
		}
	}
	return r
}
