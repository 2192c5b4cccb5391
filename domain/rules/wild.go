package rules

import (
	"fmt"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

var wildKeys = []practice.Key{
	practice.WildCellSearchFrom, practice.WildCellSearchGood, practice.WildCellSearchBy, practice.WildCellWalk,
}

// wildInColonies: open brood above an excluder or in a colony without a queen.
// A search settles a comb once its cells can be seen, and needs the keeper from
// then on.
func (p *pass) wildInColonies() {
	wild := bee.WildCells(p.numbers)
	for c := range p.view.Colonies() {
		if !c.Is(book.Starter) && !c.Is(book.Finisher) && !c.Is(book.CellBuilder) && !p.rears(c.Colony) {
			continue
		}
		y := p.yard(c.Yard)
		for _, o := range p.unsearched(y, c, wild) {
			p.add(y, p.search(y, c, o, wild))
		}
	}
}

// rears tells whether cells of a batch hang in a colony, whatever it is kept for.
func (p *pass) rears(id book.ColonyID) bool {
	for _, b := range p.batches {
		if rearer(b.Batch) == id {
			return true
		}
	}
	return false
}

// unsearched is the open brood of a colony that can have wild cells still, what
// was put in on one day taken together.
func (p *pass) unsearched(y *yardCase, c *book.Colony, wild bee.Wild) []book.OpenBrood {
	var all []book.OpenBrood
	for _, o := range c.OpenBrood {
		in := y.of(o.At)
		done := !o.Searched.IsZero() && y.of(o.Searched) >= in+calendar.Day(wild.SearchFrom)
		if done || y.today > in+calendar.Day(wild.Walk) {
			continue
		}
		if last := len(all) - 1; last >= 0 && y.of(all[last].At) == in {
			all[last].Combs += o.Combs
			continue
		}
		all = append(all, o)
	}
	return all
}

func (p *pass) search(y *yardCase, c *book.Colony, o book.OpenBrood, wild bee.Wild) Finding {
	in := y.of(o.At)
	f := Finding{
		Rule: WildCells, Of: c.Colony.Subject(), Act: ActSearchBrood, Since: o.At.Instant, Hard: true,
		What: fmt.Sprintf("wild cells can be in the brood of %s", c.Name),
		Why: fmt.Sprintf("%s in %s; a queen raised there could walk from %s",
			combs(o.Combs), in.ShortFrom(p.today), (in + calendar.Day(wild.Walk)).ShortFrom(p.today)),
		Do:   fmt.Sprintf("Search the brood of %s for wild cells", c.Name),
		Sure: sureCalendar, Used: wildKeys,
	}
	f.From, f.Best, f.By = course.Days(in+calendar.Day(wild.SearchFrom), in+calendar.Day(wild.SearchWell), in+calendar.Day(wild.SearchBy), y.zone)
	if !p.now.Before(f.From) {
		f.Severity = Pressing // one visit is enough, and it can be made
	}
	for _, b := range p.batches {
		if !b.over && !b.Incubate && (b.Finisher == c.Colony || b.Finisher.IsZero() && b.Starter == c.Colony) {
			f.Also = append(f.Also, b.Batch.Batch.Subject())
			f.Why += fmt.Sprintf(" and cost all of %s", batchWord(b.Batch))
		}
	}
	return f
}

func combs(n float64) string {
	if n == 0 {
		return "open brood put"
	}
	if n == 1 {
		return "1 comb with open brood put"
	}
	return fmt.Sprintf("%g combs with open brood put", n)
}

// wildInNuc: open brood given to a nuc that holds a cell.
func (p *pass) wildInNuc(n *nucCase) {
	if n.Holds.Condition != book.Cell || !n.Holds.Given.Before(n.Brood.Open) {
		return
	}
	wild := bee.WildCells(p.numbers)
	in := n.yard.of(n.Brood.Open)
	if b := n.OwnCells.Broken; !b.IsZero() && n.yard.of(b) >= in+calendar.Day(wild.SearchFrom) {
		return
	}
	if n.yard.today > in+calendar.Day(wild.Walk) {
		return
	}
	f := Finding{
		Rule: WildCells, Of: n.subject(), Act: ActBreakDownCells, Since: n.Brood.Open.Instant,
		What: "cells can be on the brood it was given",
		Why:  fmt.Sprintf("open brood put in %s, beside a cell", in.ShortFrom(p.today)),
		Do:   "Look over the brood, break down cells on it",
		Sure: sureCalendar, Used: wildKeys,
	}
	f.From, f.Best, f.By = course.Days(in+calendar.Day(wild.SearchFrom), in+calendar.Day(wild.SearchWell), in+calendar.Day(wild.SearchBy), n.yard.zone)
	p.addTo(n, f)
}
