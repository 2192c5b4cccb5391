package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// layoutSteps is the layout that is the plan of a yard as work at its nucs: stands
// to be carried and turned after dusk, those with virgins who fly held back until
// they lay, and fronts to be painted.
func (p *pass) layoutSteps(y *yardCase) {
	plan, ok := p.view.PlannedLayout(y.id)
	if !ok {
		return
	}
	left := p.view.Left(plan)
	on := map[book.StandID][]*book.Nuc{}
	if len(left.Stands) > 0 {
		on = p.onStands(y.id)
	}
	for _, to := range left.Stands {
		if nucs := on[to.Stand]; len(nucs) > 0 {
			p.add(y, p.standMoves(y, plan, to, nucs, facesOn(p.view, left, to.Stand)))
		}
	}
	p.boxesTurn(y, plan, left)
	for _, f := range left.Fronts {
		if n := p.view.Nuc(f.Nuc); n.Yard == y.id {
			p.add(y, p.frontMarks(y, plan, n, f))
		}
	}
}

func (p *pass) onStands(in book.YardID) map[book.StandID][]*book.Nuc {
	on := map[book.StandID][]*book.Nuc{}
	for n := range p.view.Nucs() {
		if n.Yard == in && !n.Stand.IsZero() {
			on[n.Stand] = append(on[n.Stand], n)
		}
	}
	return on
}

// standMoves is a stand that is to stand elsewhere or turned. It is told at its first
// nuc, since that is where the keeper goes.
func (p *pass) standMoves(y *yardCase, plan book.Layout, to book.StandSet, nucs []*book.Nuc, faces []book.NucFaced) Finding {
	from, held := p.flown(plan.From, nucs)
	dusk := p.clock(practice.Dusk, max(from, y.today), y.zone)
	f := Finding{
		Rule: LayoutStep, Of: nucs[0].Nuc.Subject(), Act: ActCarryStand, Takes: p.numbers.Get(practice.MinutesCarryStand) * float64(len(nucs)),
		Since: plan.At.Instant, From: p.clock(practice.Dusk, from, y.zone), Best: dusk,
		What: "stand " + to.Letter + " is to stand elsewhere",
		Do:   "After dusk, entrances shut: " + yard.StandOf(p.view.Stand(to.Stand).StandSet).To(yard.StandOf(to)),
		Why:  fmt.Sprintf("the layout %q is the plan from %s", plan.Name, plan.From.ShortFrom(p.today)),
		Sure: sureCalendar, Used: []practice.Key{practice.VirginMayFlyFrom, practice.MinutesCarryStand, practice.Dusk},
	}
	for _, n := range nucs[1:] {
		f.Also = append(f.Also, n.Nuc.Subject())
	}
	if !slices.ContainsFunc(nucs, func(n *book.Nuc) bool { return !n.MadeUp.IsZero() || n.Holds.Condition != book.Empty }) {
		f.What, f.Do = "stand "+to.Letter+" is to be set up", "Set up stand "+to.Letter+" as the plan has it"
		f.From, f.Best = from.Start(y.zone), from.Start(y.zone)
	}
	if held != "" {
		f.Why += "; " + held
	}
	if len(faces) > 0 {
		f.Do += "; then " + facesSaid(p.view, to.Turn, faces)
		f.Takes += p.numbers.Get(practice.MinutesTurnNuc) * float64(len(faces))
		f.Used = append(f.Used, practice.MinutesTurnNuc)
	}
	return f
}

// FliesUntil tells whether a virgin of a nuc flies, who would fly back to where it
// stood, and the day of the look from which she is laying or will never be.
func FliesUntil(c *course.Course, n *book.Nuc) (until calendar.Day, flies bool) {
	is := c.Of(n)
	if is.Condition != book.Virgin && is.Condition != book.Due || is.Age < int(c.View().Numbers().Get(practice.VirginMayFlyFrom)) {
		return 0, false
	}
	return calendar.DayOf(is.LookBest, c.Zone(n.Yard)), true
}

// flown is the day from which no virgin of the nucs flies any more, and why that is
// later than the plan has it: carried a few metres she does not find home.
func (p *pass) flown(from calendar.Day, nucs []*book.Nuc) (calendar.Day, string) {
	why := ""
	for _, n := range nucs {
		if lays, flies := FliesUntil(p.course, n); flies && lays > from {
			from = lays
			why = fmt.Sprintf("the virgin of %s is %s old and flies: not before the look of %s", n.Name, count(p.course.Of(n).Age, "day"), lays.ShortFrom(p.today))
		}
	}
	return from, why
}

// frontMarks is a front that is to get another mark.
func (p *pass) frontMarks(y *yardCase, plan book.Layout, n *book.Nuc, to book.FrontMarked) Finding {
	from := plan.From.Start(y.zone)
	do := strings.TrimSpace("Mark the front " + strings.TrimSpace(to.Colour+" "+to.Shape))
	if to.Shape+to.Colour == "" {
		do = "Take the mark off the front"
	}
	return Finding{
		Rule: LayoutStep, Of: n.Nuc.Subject(), Act: ActPaintFront, Takes: p.numbers.Get(practice.MinutesPaintFront),
		Since: plan.At.Instant, From: from, Best: from,
		What: "front to be marked", Do: do,
		Why:  fmt.Sprintf("the layout %q is the plan from %s", plan.Name, plan.From.ShortFrom(p.today)),
		Sure: sureCalendar, Used: []practice.Key{practice.MinutesPaintFront},
	}
}

// LaidOut is what is written when a task of the planned layout is done at a nuc:
// its stand as planned and the boxes turned on it, or the mark of its front; none for
// other tasks.
func LaidOut(v *book.View, f Finding) (facts []book.Fact) {
	id, is := f.Of.Nuc()
	if f.Rule != LayoutStep || !is {
		return nil
	}
	plan, ok := v.PlannedLayout(f.Yard)
	if !ok {
		return nil
	}
	left := v.Left(plan)
	if f.Act == ActPaintFront {
		for _, front := range left.Fronts {
			if front.Nuc == id {
				facts = append(facts, front)
			}
		}
		return facts
	}
	for _, s := range left.Stands {
		if s.Stand == v.Nuc(id).Stand {
			facts = append(facts, s)
		}
	}
	for _, to := range facesOn(v, left, v.Nuc(id).Stand) {
		named := v.Nuc(to.Nuc).NucNamed
		named.Entrance = to.Entrance
		facts = append(facts, named)
	}
	return facts
}
