package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// goesOn are the steps of a planned batch that the grafted one has too, by what they
// are called there: so each is one event from the plan to the queens.
var goesOn = map[plan.Step]string{
	plan.ToFinisher: bee.ToFinisher.String(), plan.CountTake: bee.CountTake.String(), plan.CountCapped: bee.CellsCapped.String(),
	plan.GiveCells: string(CellsOut), plan.Emerge: bee.Emergence.String(),
}

// stepID names the event of a step of a batch for good.
func stepID(of book.Subject, s plan.Step) string {
	if name := goesOn[s]; name != "" {
		return fmt.Sprintf("%s %s", of, name)
	}
	return fmt.Sprintf("%s planned %s", of, s)
}

// eventless are the steps that are no event: they are the bees' own.
func eventless(s plan.Step) bool { return s == plan.Fly }

// plannedDeadlines are the steps of the planned batches as events: those that make
// ready, the graft, and what follows it, the hour at which its cells must be out
// with alarms, beside the day on which they are best given.
func (p *pass) plannedDeadlines() (all []Deadline) {
	for b := range p.view.Plans() {
		steps := p.stepsAhead(p.ladders().LadderOf(b), b)
		if p.view.NotGrafted(b) {
			steps = p.notMade(steps, b)
		}
		all = append(all, steps...)
	}
	return all
}

// notMade are the events of a planned batch that was not grafted on its day: the graft alone, and what
// to do about it.
func (p *pass) notMade(steps []Deadline, b book.BatchPlan) []Deadline {
	graft := stepID(b.Batch.Subject(), plan.GraftLarvae)
	steps = slices.DeleteFunc(steps, func(d Deadline) bool { return d.ID != graft })
	for i := range steps {
		steps[i].What += ", not made"
		steps[i].Do = "Write it down if it was done; else move it, or drop it"
	}
	return steps
}

// ladders is the planner that draws the ladders of the pass's batches.
func (p *pass) ladders() *plan.Planner {
	if p.planner == nil {
		p.planner = plan.New(p.course)
	}
	return p.planner
}

func (p *pass) stepsAhead(l plan.Ladder, b book.BatchPlan) (all []Deadline) {
	for _, r := range l.Rungs {
		if eventless(r.Step) {
			continue
		}
		d, y := p.rungDeadline(r, b)
		d.What, d.Do = sentence(strings.TrimSpace("planned"+forLine(b.Line)+": "+r.Step.String())), "As planned"
		if !r.Hard.IsZero() {
			all = append(all, p.hardAhead(d, r, b))
			d.ID, d.Do = fmt.Sprintf("%s %s", d.Of, bee.CellsIn), "As planned, by "+hour(y.today, r.Hard, y.zone)
		}
		all = append(all, d)
	}
	return all
}

// hardAhead is the hard hour of a step, which is an event of its own beside its best day.
func (p *pass) hardAhead(d Deadline, r plan.Rung, b book.BatchPlan) Deadline {
	y := p.stepYard(b, r.Step)
	d.Yard = p.home().id // there they ripen
	d.Hard, d.At, d.Day = true, r.Hard, y.day(r.Hard)
	d.What, d.Alarms = ripeOut(b), p.alarms(y, r.Hard)
	return d
}

// rungDeadline is a step on its best day; one that is to be made ready, and was not by then, on its
// last.
func (p *pass) rungDeadline(r plan.Rung, b book.BatchPlan) (Deadline, *yardCase) {
	y, of := p.stepYard(b, r.Step), b.Batch.Subject()
	on, ready := r.Best, r.Step.Readied()
	if on < y.today && ready != 0 && !b.Made(ready) {
		on = max(on, r.By)
	}
	return Deadline{
		ID: stepID(of, r.Step), Of: of, Yard: y.id, Day: on, At: on.Start(y.zone),
		Done: on < y.today || b.Made(ready),
	}, y
}

// stepsOn are the steps of a grafted batch that only its plan told: they go on from the
// hour of the graft, as long as one of its cells or queens may live.
func (p *pass) stepsOn(c *batchCase) (all []Deadline) {
	b := p.asGrafted(c)
	if b.At.IsZero() || c.Living() == 0 {
		return nil
	}
	for _, r := range p.ladders().LadderOf(b).Rungs {
		if eventless(r.Step) || goesOn[r.Step] != "" {
			continue
		}
		allMade := false
		if r.Step == plan.MakeUpNucs {
			r, allMade = p.makesUp(c)
		}
		d, _ := p.rungDeadline(r, b)
		d.Done = d.Done || r.Step <= plan.GraftLarvae || allMade
		d.What = fmt.Sprintf("%s: %s", sentence(batchWord(c.Batch)), r.Step)
		all = append(all, d)
	}
	return all
}

// makesUp is when nucs are made up for the cells of a batch, as the work of it has it, and whether none
// are to be made up any more.
func (p *pass) makesUp(c *batchCase) (rung plan.Rung, all bool) {
	waits, made := p.toMakeUp(c)
	return waits.Rung(plan.MakeUpNucs), c.left == 0 || made.Nucs == 0
}

// EventOf names the event of the step of a batch that a finding asks for; "" where it asks for none.
func EventOf(f Finding) string {
	switch {
	case f.Step != 0:
		return stepID(f.Of, f.Step)
	case f.Act == ActMakeUp:
		return stepID(f.Of, plan.MakeUpNucs)
	default:
		return ""
	}
}

// unplannedMakeUps are the nucs that are made up for grafted batches which no plan told of,
// on the day of the finding and by the name that a plan's event would have.
func (p *pass) unplannedMakeUps(found []Finding) (all []Deadline) {
	for _, f := range found {
		of, is := f.Of.Batch()
		if !is || f.Act != ActMakeUp || !f.PutOff.IsZero() {
			continue
		}
		if b, _ := p.view.BatchPlan(of); !b.At.IsZero() {
			continue
		}
		y := p.yard(f.Yard)
		day := y.day(f.Best)
		all = append(all, Deadline{
			ID: stepID(f.Of, plan.MakeUpNucs), Of: f.Of, Yard: f.Yard, Day: day, At: day.Start(y.zone), Done: day < y.today,
			What: fmt.Sprintf("%s: %s", sentence(batchWord(p.view.Batch(of))), plan.MakeUpNucs), Do: f.Do,
		})
	}
	return all
}

// calendarOf are the deadlines of days and what an earlier file may have told of these
// days and is not so any more: on another day now, or off.
func (p *pass) calendarOf(all []Deadline, from, to calendar.Day) (out []Deadline) {
	within := func(d Deadline) bool { return from <= d.Day && d.Day <= to }
	now := map[string]Deadline{}
	for _, d := range all {
		now[d.ID] = d
		if within(d) {
			out = append(out, d)
		}
	}
	told := map[string]bool{}
	for _, was := range p.toldBefore() {
		d, stands := now[was.ID]
		if told[was.ID] || !within(was) || stands && within(d) {
			continue
		}
		told[was.ID] = true
		if !stands {
			d = was
			d.Hard, d.Done, d.Off, d.Alarms = false, true, true, nil
		}
		out = append(out, d)
	}
	return out
}

// toldBefore are the events of all plans of batches and the days of all orders that the
// book ever had, struck ones too, the last word on each first.
func (p *pass) toldBefore() (all []Deadline) {
	for _, kind := range []book.Kind{book.KindBatch, book.KindOrder} {
		for of := range p.view.Subjects(kind) {
			for l := range p.view.History(of) {
				all = append(all, p.toldBy(l.Fact)...)
			}
		}
	}
	slices.Reverse(all)
	return all
}

func (p *pass) toldBy(f book.Fact) []Deadline {
	switch f := f.(type) {
	case book.BatchPlanned:
		b := book.BatchPlan{BatchPlanned: f}
		return p.stepsAhead(p.ladders().LadderOf(b), b)
	case book.OrderTaken:
		of := f.Order.Subject()
		return []Deadline{{ID: leavingID(of), Of: of, Day: f.By, At: f.By.Start(p.zone), What: sentence(p.name(of))}}
	default:
		return nil
	}
}
