package rules

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// shareSpare keeps cells that no queenless nuc wants for nucs in which a look found no
// eggs and most probably nobody is, or is due and would most probably find nobody if it
// found none: her time is not over, but the cell's is.
func (p *pass) shareSpare() {
	for _, b := range p.batches {
		spare := b.left - b.ready
		for i := range p.nucs {
			n := &p.nucs[i]
			if spare <= 0 || b.over || p.now.Before(p.from(b)) {
				break
			}
			if n.spare != nil || stays(b.yard.yard, n.Yard) || !p.wanting(n) {
				continue
			}
			n.spare = b
			spare--
			if n.lookedToday() {
				b.ready++
			}
		}
	}
}

// wanting tells whether a nuc in which a queen is awaited that no look has seen
// laying wants a cell to spare, and could keep it warm.
func (p *pass) wanting(n *nucCase) bool {
	h := n.holds
	looked := !h.NoEggsOn.IsZero()
	switch {
	case !n.awaited() || !p.now.Before(h.TooLateAt), !looked && (h.LookFrom.IsZero() || p.now.Before(h.LookFrom)):
		return false
	case !h.OwnFrom.IsZero() && !p.now.Before(h.OwnFrom), n.has.TooFew(p.numbers), n.yard.shutUntil > n.yard.today, p.planStands(n.Nuc, n.yard.today):
		return false
	}
	return p.course.Held(n.Nuc).Chances().Wanting(looked)
}

// lookedToday tells whether no eggs were found on the day: another look would tell no more.
func (n *nucCase) lookedToday() bool { return n.yard.day(n.holds.NoEggsOn) == n.yard.today }

// spareCell has a cell to spare given where her next look would come when it is gone;
// after a look, where none was made today.
func (n *nucCase) spareCell(f *Finding) {
	b := n.spare
	if b == nil {
		return
	}
	give := "give a cell of " + batchWord(b.Batch)
	f.Act, f.Do = ActGiveCell, sentence(give)
	if !n.lookedToday() {
		f.Act, f.Then, f.Do = ActLookForEggs, ActGiveCell, fmt.Sprintf(plans[book.PlanLookOrGive].do, give)
	}
	f.Amount, f.Also = 1, []book.Subject{b.Batch.Batch.Subject()}
	known, why := n.holds.NoEggsOn, ": most probably no queen, and a cell is to spare"
	if known.IsZero() {
		known, why = n.holds.LookFrom, "; most probably no queen if it finds no eggs, and a cell is to spare"
	}
	f.From, f.Best, f.By, f.Hard = known, b.best, b.hard, true
	if known.After(b.hard) { // nothing is past due before it was known
		f.Best, f.By, f.Hard = known, known, false
	}
	f.Why += why
	f.Used = append(f.Used, practice.AcceptCell)
}
