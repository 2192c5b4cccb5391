package handover

import (
	"fmt"

	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// NearlyKept is how many hundredths less than is wished an order is still nearly kept. Common practice, no
// source.
const NearlyKept = 2

// Promised is what can be told to the customer of an order that is less sure than is wished, though all
// that it misses is to be expected, planned or grafted.
type Promised struct {
	Chance float64 // that all of it is there in time
	Queens int     // so many of those that it misses are, as surely as is wished
	Sure   float64 // as is wished
	Less   string  // what takes from the chance of those that are planned, see [plan.Planner.Against]
}

// Promised is what can be promised of the queens that the order of a place in the sheet misses, after what
// the orders before it want of the same; ok is false where all can, or nearly, or more is missing
// than is planned.
func (s *Sheet) Promised(p *plan.Planner, i int) (m Promised, ok bool) {
	o := s.Orders[i]
	if o.Short == 0 || o.Missing() > 0 || o.Planned == 0 {
		return m, false
	}
	c := s.Counted(p, i, o.On)
	of, before := c.Chances(p), c.Queens-o.Short
	m.Sure, m.Chance = p.View().Numbers().Get(practice.PlanSure), of[c.Queens]
	if m.Chance >= m.Sure-NearlyKept/100.0-rounding {
		return m, false
	}
	m.Less = p.Against(c.Planned)
	sum := 0.0
	for n := c.Queens; n > before; n-- {
		if sum += of[n]; sum >= m.Sure-rounding {
			m.Queens = n - before
			break
		}
	}
	return m, true
}

// Words say what can be promised: "5 of 8 with 90 of 100", "none of 8 so surely".
func (m Promised) Words(of int) string {
	if m.Queens == 0 {
		return fmt.Sprintf("none of %d so surely", of)
	}
	return fmt.Sprintf("%d of %d with %s", m.Queens, of, plan.OfHundred(m.Sure))
}
