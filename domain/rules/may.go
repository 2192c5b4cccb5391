package rules

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// May judges a plan to be carried out now: as [Judged.Check] does, and by the robbers in
// the yards whose boxes it opens, of whom the work of the day tells with the same words.
// What is written down is done, so [Judged.Check] leaves robbers out.
func (j *Judged) May(plan Intent) Verdict {
	verdict := j.Check(plan)
	j.mu.Lock()
	defer j.mu.Unlock()
	j.ownCells(plan, &verdict)
	told := map[book.YardID]bool{}
	for _, f := range j.pass.opening(plan) {
		y := j.pass.yard(f.Yard)
		if y.today >= y.shutUntil || told[f.Yard] {
			continue
		}
		told[f.Yard] = true
		j.pass.mayAmongRobbers(f, &verdict)
	}
	return verdict
}

// ownCells minds own cells that the work of the day has broken down before: they would
// cost what is given, or the bees of two nucs a queen.
func (j *Judged) ownCells(plan Intent, verdict *Verdict) {
	for _, f := range j.found {
		if f.Rule == OwnCells && !j.pass.now.Before(f.From) && slices.Contains(filled(plan), f.Of) {
			verdict.Warned = append(verdict.Warned, Reason{Name(j.pass.view, f.Of) + ": " + f.What + ", " + f.Why, f.Do + " first", f.Used})
		}
	}
}

// filled are the nucs into which a plan puts a queen, a cell or another nuc's bees.
func filled(plan Intent) []book.Subject {
	switch i := plan.(type) {
	case GiveCell:
		return []book.Subject{i.Nuc.Subject()}
	case PutInVirgin:
		return []book.Subject{i.Nuc.Subject()}
	case Unite:
		return []book.Subject{i.Nuc.Subject(), i.With}
	default:
		return nil
	}
}

// mayAmongRobbers refuses what would open a box among robbers before dusk, and minds it
// later, or where its hard hour comes first.
func (p *pass) mayAmongRobbers(f Finding, verdict *Verdict) {
	y := p.yard(f.Yard)
	later := "Wait until " + y.shutUntil.ShortFrom(p.today) + "; what cannot wait so long is done at dusk"
	if !p.waitsForRobbers(f, y.today) {
		later = "Do it at dusk"
	}
	used := []practice.Key{practice.RobbingLasts, practice.Dusk}
	switch dusk := p.untilDusk(f, y.today); {
	case dusk.IsZero():
		verdict.Warned = append(verdict.Warned, Reason{"robbers in the yard, and it cannot wait until dusk", "Be quick, cover what is open", used})
	case p.now.Before(dusk):
		verdict.Refused = append(verdict.Refused, Reason{"robbers in the yard, open nothing before dusk, " + dusk.In(y.zone).Format("15:04"), later, used})
	default:
		verdict.Warned = append(verdict.Warned, Reason{"robbers in the yard until " + y.shutUntil.ShortFrom(p.today), "Be quick, cover what is open", used})
	}
}

// opening is what a plan does to boxes as the work of a day would have it.
func (p *pass) opening(plan Intent) []Finding {
	at := func(act Act, nucs ...book.NucID) (all []Finding) {
		for _, id := range nucs {
			all = append(all, Finding{Of: id.Subject(), Yard: p.view.Nuc(id).Yard, Act: act})
		}
		return all
	}
	switch i := plan.(type) {
	case GiveCell:
		f := at(ActGiveCell, i.Nuc)
		if b := p.caseOf(i.Batch); b != nil {
			f[0].By, f[0].Hard = b.hard, true
		}
		return f
	case PutInVirgin:
		return at(ActGiveCell, i.Nuc)
	case Catch:
		return at(ActCatchQueen, i.Nuc)
	case MakeUp:
		return at(ActAddBees, i.Nucs...)
	case AddBees:
		return at(ActAddBees, i.Nuc)
	case OpenNuc:
		return at(ActLookInside, i.Nuc)
	case Unite:
		nucs := []book.NucID{i.Nuc}
		if id, ok := i.With.Nuc(); ok {
			nucs = append(nucs, id)
		}
		return at(ActUnite, nucs...)
	case GiveFeed:
		f := at(ActFeed, i.Nuc)
		if out := p.yard(f[0].Yard).strength.Of(p.view.Nuc(i.Nuc)); out.Light(p.numbers) {
			f[0].By = (p.today + calendar.Day(out.FoodDays)).Start(p.zone)
		}
		return f
	default:
		return nil
	}
}
