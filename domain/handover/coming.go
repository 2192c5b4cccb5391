package handover

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// coming is a nuc whose queen has not proven herself yet, or has and is not ready; or all of
// a batch of whom nobody knows more than the keeper's rates, who share its luck.
type coming struct {
	line  string
	nuc   *book.Nuc // nil: several, or a queen who is proven
	one   plan.Prospect
	shut  calendar.Day // until then robbers keep its yard shut
	share *share       // nil: one nuc
}

// share is the queens of a batch of whom nobody knows more than the keeper's rates.
type share struct {
	planner *plan.Planner
	left    plan.Left
	nucs    []unseen
	cells   bool // those that are still to be given are among them
}

// unseen is a nuc that nobody has looked into since it was given a cell or virgin.
type unseen struct {
	from     calendar.Day // not caught before: a wait after a treatment, or robbers
	doubtful bool         // it is not known whose daughter its queen will be
}

// by are the chances of how many are ready by a day, and of their line if that matters.
func (k coming) by(d calendar.Day, named bool) plan.Chances {
	if k.share != nil {
		return k.share.by(d, named)
	}
	if d < k.shut {
		return plan.Chances{}
	}
	return plan.One(k.one.By(d, false, named))
}

func (k *share) by(d calendar.Day, named bool) plan.Chances {
	n := 0
	for _, u := range k.nucs {
		if u.from <= d && !(named && u.doubtful) {
			n++
		}
	}
	return k.planner.Unlearnt(k.left, n, k.cells, d, false)
}

// queensOf is how many some are at most.
func queensOf(all []coming) (n int) {
	for _, k := range all {
		if k.share != nil {
			n += len(k.share.nucs)
		} else {
			n++
		}
	}
	return n
}

// comings are the queens on the way who are not proven.
func comings(p *plan.Planner) []coming {
	v, of, shut := p.View(), map[book.BatchID]*share{}, shutUntil(p.Course())
	all := []coming{}
	for nuc := range v.Nucs() {
		if _, proven := laying(p.Course(), nuc); proven || closed(v, nuc.Yard) != "" {
			continue
		}
		line, from := v.LineIn(nuc), shut[nuc.Yard]
		if b := nuc.Holds.Batch; !b.IsZero() && plan.Unseen(nuc) {
			s := of[b]
			if s == nil {
				s = &share{planner: p, left: p.Left(v.Batch(b))}
				of[b], all = s, append(all, coming{line: line, share: s})
			}
			s.nucs = append(s.nucs, unseen{max(from, p.Waits(nuc)), v.DescentIn(nuc) == book.DescentDoubtful})
		} else if k, ok := p.Prospect(nuc); ok {
			all = append(all, coming{line: line, nuc: nuc, one: k, shut: from})
		}
	}
	return all
}

// comings are those of the sheet's day, reckoned once.
func (s *Sheet) comings(p *plan.Planner) []coming {
	if s.coming == nil {
		s.coming = comings(p)
	}
	return s.coming
}

// withCells are the queens on the way, those of some batches with the cells that are still to be
// given of them.
func withCells(all []coming, p *plan.Planner, of []plan.Left) (with []coming) {
	cells := map[book.BatchID]*share{}
	for _, l := range of {
		cells[l.Batch.Batch] = &share{planner: p, left: l, cells: true}
	}
	for _, k := range all {
		if k.share != nil {
			if s := cells[k.share.left.Batch.Batch]; s != nil {
				s.nucs = k.share.nucs
				continue
			}
		}
		with = append(with, k)
	}
	for _, l := range of {
		with = append(with, coming{line: l.Batch.Line, share: cells[l.Batch.Batch]})
	}
	return with
}

// atLeast is the chance that so many of the coming queens that will do for an order
// are ready by a day: each batch, and each nuc that was looked at, goes its own way.
func atLeast(wanted int, all []coming, o *book.Order, d calendar.Day) float64 {
	return chances(wanted, all, o, d)[wanted]
}

// rounding is what sums of chances may be off by.
const rounding = 1e-9

// most is how many of them, of so many, are ready by a day with a chance.
func most(wanted int, all []coming, o *book.Order, d calendar.Day, sure float64) int {
	p, chance := chances(wanted, all, o, d), 0.0
	for n := wanted; n > 0; n-- {
		if chance += p[n]; chance >= sure-rounding {
			return n
		}
	}
	return 0
}

// chances are those that 0, 1 … and so many or more of them are ready by a day.
func chances(wanted int, all []coming, o *book.Order, d calendar.Day) []float64 {
	p := make([]float64, wanted+1)
	p[0] = 1
	for _, k := range all {
		if o.Takes(k.line) {
			with(p, k.by(d, o.Line != ""))
		}
	}
	return p
}

// with adds others to the chances of 0, 1 … and so many or more.
func with(p []float64, c plan.Chances) {
	wanted := len(p) - 1
	if c.Most() == 0 {
		return
	}
	for n := wanted; n >= 0; n-- {
		sum := 0.0
		for m := 0; m <= min(n, c.Most()); m++ {
			if n == wanted {
				sum += p[n-m] * c.AtLeast(m)
			} else {
				sum += p[n-m] * c.Exactly(m)
			}
		}
		p[n] = sum
	}
}

// waiting are those who are proven, in nucs and for nobody yet, and would do for an order
// but for their day: each is ready from it on.
func (s *Sheet) waiting(o Served, v *book.View) (all []coming) {
	for _, q := range s.Left {
		ready := q
		ready.Ready, ready.Shut = 0, 0
		if !q.Nuc.IsZero() && !math.IsInf(costOf(ready, o, v.Today(), v.Numbers()), 1) {
			all = append(all, coming{line: q.Line, one: plan.Prospect{Proven: true, Sure: 1, From: max(q.Ready, q.Shut)}}) // where it matters that she is of her line, costOf asks it
		}
	}
	return all
}
