package rules

import (
	"fmt"

	"lidmark/domain/book"
)

func (p *pass) treatedNuc(n *nucCase) {
	if f, waits := p.afterTreatment(n.yard, n.subject(), n.Treated); waits {
		p.noteOf(n, f)
	}
}

func (p *pass) treatedYard(y *yardCase) {
	if f, waits := p.afterTreatment(y, y.id.Subject(), y.yard.Treated); waits {
		p.note(y, f)
	}
}

func (p *pass) treatedColonies() {
	for c := range p.view.Colonies() {
		y := p.yard(c.Yard)
		if f, waits := p.afterTreatment(y, c.Colony.Subject(), c.Treated); waits {
			p.note(y, f)
		}
	}
}

// afterTreatment: the label asks to wait. What that forbids the label says, not
// the book.
func (p *pass) afterTreatment(y *yardCase, of book.Subject, t book.Treatment) (f Finding, waits bool) {
	if !t.Waits(y.today, y.zone) {
		return f, false
	}
	return Finding{
		Rule: AfterTreatment, Severity: Open, Of: of, Since: t.At.Instant, From: t.At.Instant,
		What: "wait after treatment until " + p.date(t.Until(y.zone)),
		Why:  fmt.Sprintf("treated with %s on %s; its label asks for %s", t.With, y.of(t.At).ShortFrom(p.today), count(t.Wait, "day")),
		Do:   "Catch and hand over only as the label allows",
		Sure: sureRecorded,
	}, true
}

// waits are the yards on standstill, and the waits after treatments, a line for
// like ones of nucs.
func (p *pass) waits(found []Finding) []Task {
	var all []Task
	for _, f := range found {
		if (f.Rule == Standstill || f.Rule == AfterTreatment) && f.PutOff.IsZero() {
			all = append(all, Task{Title: f.What, Why: f.Why, Of: []book.Subject{f.Of}, From: f.From, Findings: []Finding{f}})
		}
	}
	r := router{pass: p, rank: p.ranks()}
	return r.fold(all)
}

// treated is the treatment of a nuc or its yard that is waited for, the one
// that ends last.
func (n *nucCase) treated() (book.Treatment, bool) {
	t, y := n.Treated, n.yard
	if !t.Waits(y.today, y.zone) || y.yard.Treated.Until(y.zone) > t.Until(y.zone) {
		t = y.yard.Treated
	}
	return t, t.Waits(y.today, y.zone)
}

// treated warns of the wait after a treatment.
func (c *checker) treated(of book.Subject, yard book.YardID, t book.Treatment) {
	if !t.Waits(c.day(c.now, yard), c.course.Zone(yard)) {
		return
	}
	c.warn(fmt.Sprintf("%s was treated with %s on %s; its label asks to wait %s", Name(c.view, of), t.With, c.day(t.At.Instant, yard).ShortFrom(c.view.Today()), count(t.Wait, "day")),
		fmt.Sprintf("Wait until %s, unless the label allows it", t.Until(c.course.Zone(yard)).ShortFrom(c.view.Today())))
}

// treatedIn warns of the wait of a nuc and of its yard.
func (c *checker) treatedIn(n *book.Nuc) {
	c.treated(n.Nuc.Subject(), n.Yard, n.Treated)
	if !n.Yard.IsZero() {
		c.treated(n.Yard.Subject(), n.Yard, c.view.Yard(n.Yard).Treated)
	}
}
