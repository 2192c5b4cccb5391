package rules

import (
	"cmp"
	"fmt"
	"maps"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/spread"
	"lidmark/domain/strength"
)

var robbingKeys = []practice.Key{
	practice.RobbingBase, practice.RobbingDearth, practice.RobbingDoor, practice.RobbingQueenless, practice.RobbingSyrup,
	practice.RobbingNeighbour, practice.RobbingWasps, practice.RobbingOpened, practice.RobbingWatch, practice.RobbingAct, practice.RobbingPriorWeight,
}

// exposed is a nuc to watch or to act at.
type exposed struct {
	nuc *nucCase
	strength.Exposure
}

// robbers tells of each exposed nuc, or of the yard in one line when most of
// its nucs are exposed for one and the same cause.
func (p *pass) robbers() {
	byYard := map[*yardCase][]exposed{}
	living := map[*yardCase]int{}
	var order []*yardCase
	exposures := p.exposures()
	for i := range p.nucs {
		n := &p.nucs[i]
		if living[n.yard]++; living[n.yard] == 1 {
			order = append(order, n.yard)
		}
		if exposures[i].Level > strength.Quiet {
			byYard[n.yard] = append(byYard[n.yard], exposed{n, exposures[i]})
		}
	}
	for _, y := range order {
		all := byYard[y]
		if oneCause(all) && len(all) > 1 && 2*len(all) > living[y] {
			p.yardExposed(y, all)
			continue
		}
		for _, e := range all {
			p.nucExposed(e)
		}
	}
}

// exposures are how exposed the nucs are; one whose bees are given up is quiet.
func (p *pass) exposures() []strength.Exposure {
	all := make([]strength.Exposure, len(p.nucs))
	spread.Over(len(p.nucs), func(i int) {
		if n := &p.nucs[i]; n.kept(p.now) {
			all[i] = n.yard.strength.Exposure(n.Nuc, n.has)
		}
	})
	return all
}

func oneCause(all []exposed) bool {
	for _, e := range all {
		if e.Heaviest != all[0].Heaviest {
			return false
		}
	}
	return true
}

func (p *pass) nucExposed(e exposed) {
	f := p.exposure(e.nuc.yard, e)
	f.Of, f.Severity, f.Sure = e.nuc.subject(), Pressing, sureReckoned
	p.add(e.nuc.yard, f)
}

// yardExposed tells of a yard in one line: where entrances are wider than their bees guard
// they are narrowed, else what helps is said of the nuc most exposed.
func (p *pass) yardExposed(y *yardCase, all []exposed) {
	wide := slices.DeleteFunc(slices.Clone(all), func(e exposed) bool { return e.Remedy != strength.NarrowDoor })
	about := all
	if len(wide) > 0 {
		about = wide
	}
	f := p.exposure(y, slices.MaxFunc(about, func(a, b exposed) int { return cmp.Compare(a.Risk, b.Risk) }))
	f.Of, f.Severity, f.Sure = y.id.Subject(), Pressing, sureReckoned
	f.Why += fmt.Sprintf(", at %s", count(len(all), "nuc"))
	if len(wide) > 0 && len(wide) < len(all) {
		f.Why += fmt.Sprintf("; %d of them wider than their bees guard", len(wide))
	}
	f.Each = map[book.NucID]float64{}
	for _, e := range about {
		f.Also = append(f.Also, e.nuc.subject())
		f.Each[e.nuc.Nuc.Nuc] = p.door(e.nuc.doorBees())
	}
	if len(wide) > 1 {
		f.Do = "Narrow each entrance to what its bees guard" + between(f.Each)
	}
	p.add(y, f)
}

// between says of how many cm² the entrances of several nucs are.
func between(doors map[book.NucID]float64) string {
	all := slices.Sorted(maps.Values(doors))
	least, most := fmt.Sprintf("%.1f", all[0]), fmt.Sprintf("%.1f cm²", all[len(all)-1])
	if least+" cm²" == most {
		return ": " + most
	}
	return ": " + least + " to " + most
}

func (p *pass) exposure(y *yardCase, e exposed) Finding {
	f := Finding{
		Rule: Robbers,
		What: e.Level.String(),
		Why:  e.Reason,
		Do:   sentence(e.Remedy.String()),
		Used: robbingKeys,
	}
	if e.Remedy == strength.NarrowDoor {
		if y.today >= y.shutUntil {
			f.Act = ActNarrowEntrance // else it is done for the whole yard
		}
		f.Amount = p.door(e.nuc.doorBees())
		f.Do += fmt.Sprintf(" to %.1f cm²", f.Amount)
	}
	f.Why += helps(e.Exposure)
	if e.Robbed > 0 {
		f.Why += fmt.Sprintf("; %s robbed here this year", count(e.Robbed, "nuc"))
	}
	by := y.today
	if e.Level == strength.Watch {
		by += p.days(practice.SettlingTime)
	}
	f.From, f.Best, f.By = course.Days(y.today, by, by, y.zone)
	return f
}

// helps says what a remedy does to the risk, which is practice and not measured.
func helps(e strength.Exposure) string {
	if !e.Helps() {
		return fmt.Sprintf("; risk by our numbers %.0f %%", 100*e.Risk)
	}
	return fmt.Sprintf("; risk by our numbers %.0f %%, %.0f %% once done", 100*e.Risk, 100*e.After)
}

// Subjects are the nucs at which the work of a finding is done: those of a yard's
// line, or those written twice, else the one thing that it is about.
func (f Finding) Subjects() []book.Subject {
	if f.Of.Kind == book.KindYard && f.Act == ActNarrowEntrance || f.Rule == Twice {
		return f.Also
	}
	return []book.Subject{f.Of}
}

// FindingsOf are the findings about some subjects, those about several narrowed to them.
func FindingsOf(all []Finding, in map[book.Subject]bool) (kept []Finding) {
	for _, f := range all {
		subjects := f.Subjects()
		about := slices.DeleteFunc(slices.Clone(subjects), func(s book.Subject) bool { return !in[s] })
		if len(about) == 0 {
			continue
		}
		if len(subjects) > 1 {
			f.Also = about
		}
		kept = append(kept, f)
	}
	return kept
}

// doorBees are the bees who guard a nuc's entrance, as last seen; where nobody
// knows, as many as guard one of the usual size.
func (n *nucCase) doorBees() float64 {
	if n.has.BeesKnown {
		return n.has.BeesThen
	}
	return usualGuard
}

// usualGuard are the bees for whom the usual entrance is given.
const usualGuard = 1000
