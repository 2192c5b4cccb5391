package rules

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// A plan is what the keeper decided for a nuc: what is done, and what at once
// after it if something is given.
var plans = map[book.Plan]struct {
	act Act
	do  string
}{
	book.PlanLook:        {ActLookForEggs, "Look for eggs"},
	book.PlanLookOrGive:  {ActLookForEggs, "Look; nothing found: %s"},
	book.PlanGiveCell:    {ActGiveCell, "%s"},
	book.PlanPutInVirgin: {ActGiveCell, "%s"},
	book.PlanBreakDown:   {ActBreakDownCells, "Break down own cells; %s"},
	book.PlanTakeOut:     {ActTakeOutQueen, "Take out the queen; the day after: %s"},
	book.PlanShakeOut:    {ActShakeOut, "Shake it out"},
	book.PlanMakeUp:      {ActAddBees, "Make it up; %s"},
	book.PlanGiveBrood:   {ActAddBees, "Give open brood"},
	book.PlanAddBees:     {ActAddBees, "Add a cup of bees"},
	book.PlanFeed:        {ActFeed, "Feed"},
	book.PlanNarrow:      {ActNarrowEntrance, "Narrow the entrance"},
	book.PlanUnite:       {ActUnite, "Unite with %s"},
	book.PlanCatch:       {ActCatchQueen, "Catch the queen"},
}

// PlanStands tells whether something was decided for a nuc, is not done, and has
// not lapsed on a day.
func PlanStands(n *book.Nuc, today calendar.Day, numbers practice.Numbers) bool {
	return n.Plan.What != book.PlanNone && today <= n.Plan.Day+calendar.Day(numbers.Days(practice.PlanLapses))
}

func (p *pass) planStands(n *book.Nuc, today calendar.Day) bool {
	return PlanStands(n, today, p.numbers)
}

// decided: what the keeper decided for a nuc, from its day until it lapses.
func (p *pass) decided(n *nucCase) {
	if p.planStands(n.Nuc, n.yard.today) {
		p.noteOf(n, p.pressed(n.yard, p.planned(n.Nuc, n.yard)))
	}
}

// atOdds has what was decided for a nuc and what the rules now ask of it speak with one
// voice: the decision is the task, and says what they would have done instead.
func (p *pass) atOdds(n *nucCase) {
	at := slices.IndexFunc(n.found, func(r ruled) bool { return r.Rule == Decided })
	if at < 0 {
		return
	}
	plan := n.found[at].Finding
	for _, r := range n.found {
		if r.asked == ActNone || r.asked == plan.Act || r.asked == plan.Then || r.From.After(p.now) || r.Do == plan.Do {
			continue
		}
		plan.Why += "; by the rules now: " + unsentence(r.Do)
		r.Do = "Decided otherwise: " + unsentence(plan.Do)
	}
}

// decidedEmpty is the same of nucs that are to be made up.
func (p *pass) decidedEmpty() {
	for n := range p.view.Nucs() {
		if y := p.yard(n.Yard); n.Condition() == book.Empty && n.Plan.What == book.PlanMakeUp && p.planStands(n, y.today) {
			p.add(y, p.planned(n, y))
		}
	}
}

func (p *pass) planned(n *book.Nuc, y *yardCase) Finding {
	plan := n.Plan
	row := plans[plan.What]
	f := Finding{
		Rule: Decided, Of: n.NucNamed.Nuc.Subject(), Act: row.act, Since: n.PlannedAt.Instant,
		What: "decided " + y.of(n.PlannedAt).ShortFrom(p.today), Why: plan.Why, Do: row.do,
		Sure: sureRecorded, Used: []practice.Key{practice.PlanLapses},
	}
	if f.Why == "" {
		f.Why = "you decided so"
	}
	if plan.What == book.PlanUnite {
		f.Do = fmt.Sprintf(row.do, Name(p.view, plan.With.Subject()))
	} else if gives := p.givesWord(plan); len(row.do) > 1 && row.do[len(row.do)-2:] == "%s" {
		f.Do = sentence(fmt.Sprintf(row.do, gives))
	}
	switch plan.What {
	case book.PlanAddBees, book.PlanGiveCell, book.PlanNarrow:
		f.Amount = 1
	case book.PlanFeed:
		f.Amount = p.numbers.Get(practice.SyrupPerFeed)
	}
	if plan.What != book.PlanGiveCell && plan.What != book.PlanPutInVirgin && plan.Gives() {
		f.Then = ActGiveCell
	}
	if !plan.Batch.IsZero() && !plan.Virgin {
		f.Also = []book.Subject{plan.Batch.Subject()}
	}
	if _, torn := tornSince(n); torn && plan.What == book.PlanLookOrGive {
		f.Act, f.OwnFirst, f.Do = ActLookInside, true, ownFirstWords+p.givesWord(plan)
	}
	f.From, f.Best, f.By = course.Days(plan.Day, plan.Day, plan.Day+p.days(practice.PlanLapses), y.zone)
	if b := p.caseOf(plan.Batch); b != nil && !plan.Virgin {
		p.byTheHour(b, y.of(n.PlannedAt) >= plan.Day && !n.PlannedAt.Before(calendar.Instantly(b.hard)), &f)
	}
	return f
}

// byTheHour gives what was decided about a cell the hard hour of its batch, where it can
// be done by then. Late is that the hour had gone when it was decided for the same day:
// then nothing but the hour makes it wait.
func (p *pass) byTheHour(b *batchCase, late bool, f *Finding) {
	if late && f.From.After(b.hard) {
		f.From = b.hard
	}
	if !f.From.After(b.hard) {
		f.Best, f.By, f.Hard = b.best, b.hard, true
	}
}

// givesWord is what a plan gives in the end.
func (p *pass) givesWord(plan book.Planned) string {
	b := p.view.Batch(plan.Batch)
	of := ""
	if !b.At.IsZero() {
		of = " of " + batchWord(b)
	}
	switch {
	case !plan.Queen.IsZero():
		return "put in " + queenName(p.view, p.view.Queen(plan.Queen))
	case plan.Virgin:
		return "put in a virgin" + of
	case plan.Batch.IsZero():
		return "a cell when there is one"
	default:
		return "give a cell" + of
	}
}

// settles tells whether a rule asks for what a plan has decided.
func (r Rule) settles() bool {
	switch r {
	case Queenless, LookEggs, Late, VirginsTime, OwnCells, DroneLayer, LayingWorkers:
		return true
	default:
		return false
	}
}
