package plan

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
)

// Against is what takes from the chance of planned batches, grafts for the same queens: that others have
// nucs of theirs, and that nobody is free to give their cells in time; "" where nothing does.
func (p *Planner) Against(of []book.BatchPlan) string {
	var all []string
	for _, b := range of {
		nucs, cells := fmt.Sprintf("its %d nucs", b.Nucs), "its cells"
		if len(of) > 1 {
			nucs, cells = fmt.Sprintf("the %d nucs of %s", b.Nucs, p.said(b.Day)), "the cells of "+p.said(b.Day)
		}
		if few := fewNucs(p.Dealt(b), b.Nucs, nucs); few != "" {
			all = append(all, few)
		}
		if late, is := p.nobodyGives(p.LadderOf(b), p.SizeOf(b)); is {
			zone := p.course.Zone(b.Yard)
			all = append(all, fmt.Sprintf("nobody is free to give %s by %s; given on %s", cells, late.hour(p.LadderOf(b).Rung(GiveCells).Hard, zone), late.Short(zone)))
		}
	}
	return strings.Join(all, "; ")
}

// fewNucs says of how many nucs how many are free; "" where all are.
func fewNucs(has, of int, whose string) string {
	switch {
	case has == of:
		return ""
	case of == 1:
		return strings.Replace(whose, "1 nucs", "nuc", 1) + " is not free"
	case has == 0:
		return "none of " + whose + " is free"
	case has == 1:
		return "1 of " + whose + " is free"
	default:
		return fmt.Sprintf("%d of %s are free", has, whose)
	}
}

// nobodyGives tells whether nobody is free from the day on that is looked from to give the ripe cells of a
// batch by their hard hour, and what it costs that they are given late.
func (p *Planner) nobodyGives(l Ladder, s Size) (late CellsLate, is bool) {
	give := l.Rung(GiveCells)
	give.From = max(give.From, p.view.From())
	if !p.view.HoursTold() || s.Nucs == 0 || give.By < give.From || p.someoneFree(give, zoned{p.course.Zone(s.Yard)}) {
		return late, false
	}
	return p.CellsLate(Batch{Ladder: l, Size: s}), true
}

// lostLate is the share of its queens that a batch loses by that, 0 to 1.
func (p *Planner) lostLate(l Ladder, s Size) float64 {
	late, is := p.nobodyGives(l, s)
	if all := min(float64(late.Cells), float64(s.Nucs)) * OfCell(p.Own()); is && all > 0 {
		return min(1, late.Queens/all)
	}
	return 0
}

// lessPlanned is what is to be minded of an answer that is less sure once it is planned: then it has the nucs
// that it is dealt, and nobody may be free for its cells.
func (p *Planner) lessPlanned(a Answer) (m Mind, ok bool) {
	lonely := slices.ContainsFunc(a.Batches, func(b Batch) bool { return b.Rung(GiveCells).NobodyFree })
	if a.Queens == 0 || a.By == 0 || a.Nucs <= a.Free && !lonely {
		return m, false
	}
	then, of := p.planned(p.ToBook(a), a.Not)
	chance, less := then.Joint(of, a.By).AtLeast(a.Queens), then.Against(of)
	if less == "" || math.Round(100*chance) >= math.Round(100*a.Chance) {
		return m, false
	}
	return Mind{Why: fmt.Sprintf("planned so it is %s: %s", OfHundred(chance), less), Season: true}, true
}
