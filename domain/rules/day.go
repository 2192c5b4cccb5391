package rules

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// DayPlan is a day's work as a route.
type DayPlan struct {
	Day     calendar.Day
	At      time.Time // the instant at which the plan is made
	Next    time.Time // when somebody is free next after this day; noon of the next day where nobody is known to be
	Soon    time.Time // noon of the next day, or Next if that is later: what has a hard end before it cannot wait
	Hard    []Finding // cells and brood with a hard deadline on the day, before Soon, or past; the first one first
	Waits   []Task    // on standstills and after treatments, as they stand at the view's instant: no work, but to be known
	Stops   []Stop    // in the order they are driven and walked
	Kit     []KitLine
	Minutes float64   // of work and driving
	Driving float64   // minutes of driving among them, the way home included
	Free    float64   // minutes that all people together are free
	Told    bool      // somebody said when people are free
	Home    time.Time // when that one person is home again; zero: nobody is free
	Late    float64   // minutes by which what waits for dusk ends after all free hours, however many do it
	Last    time.Time // until when anybody is free; zero: nobody told, or nobody is free
	Taken   bool      // see [Judged.Taken]
}

// AsPlanned says that planned steps are taken as done, see [Judged.Taken].
const AsPlanned = "Taking what is planned until then as done."

// Over is by how many minutes the work is longer than the time there is, or ends after
// it; none when nobody knows how much there is.
func (p DayPlan) Over() float64 {
	if !p.Told {
		return 0
	}
	return max(0, p.Minutes-p.Free, p.Late)
}

// Stop is one place of the route: a yard, a round within it, or the desk.
type Stop struct {
	Yard  book.YardID
	Round string
	Dusk  time.Time // robbers are about and its boxes are not opened before; zero: at any hour
	Load  bool      // at home, before the way to where robbers are at work: what is kept warm and goes along
	Last  bool      // at home, behind the catch of the very queens that are handed over
	Start time.Time // when it begins if one person does it all without rest; zero: nobody is free
	Drive float64   // minutes driven to reach it
	Far   float64   // minutes its yard is away from home
	Tasks []Task
}

// AtDesk is the round of what is done at the desk: papers, and what was typed twice.
// It is in no yard.
const AtDesk = "at the desk"

// Place is where a stop is, in words: a yard with its round, or the desk.
func (s Stop) Place(v *book.View) string {
	switch name := v.Yard(s.Yard).Name; {
	case s.Yard.IsZero() && s.Round == AtDesk:
		return "At the desk"
	case s.Round != "":
		return name + ", " + s.Round
	default:
		return name
	}
}

// Task is one line of the route: like work at one or several nucs.
type Task struct {
	Act            Act
	Title          string // what to do
	Why            string
	Of             []book.Subject // nucs in walking order, or the one colony, batch or yard
	From, Best, By time.Time
	Hard           bool
	NeedsYou       bool
	Minutes        float64
	Findings       []Finding // what it answers
}

// PastDue tells whether its last day or hour has gone by.
func (t Task) PastDue(now time.Time) bool { return !t.By.IsZero() && now.After(t.By) }

// emergency tells whether robbers are at work.
func (t Task) emergency() bool { return t.Findings[0].Emergency() }

// robbed tells whether it is about the nuc itself that robbers are at.
func (t Task) robbed() bool {
	_, nuc := t.Findings[0].Of.Nuc()
	return nuc && t.emergency()
}

// Day is the work of a day as a route; see [Judged.Day].
func Day(v *book.View, d calendar.Day) DayPlan { return Judge(v).Day(d) }

func (p *pass) plan(found []Finding, d calendar.Day) DayPlan {
	plan := DayPlan{Day: d, At: p.now, Soon: (d + 1).At(noon, 0, p.zone), Free: float64(p.view.MinutesFree(d)), Told: p.view.HoursTold(), Taken: p.taken}
	if plan.Next = freeAfter(p.view, d); plan.Next.IsZero() {
		plan.Next = plan.Soon
	}
	if plan.Next.After(plan.Soon) {
		plan.Soon = plan.Next
	}
	due := d.Start(p.zone)
	var work []Finding
	for _, f := range found {
		if !f.PutOff.IsZero() {
			continue
		}
		if f.Hard && (f.Act == ActCollectCells || f.Act == ActSearchBrood || f.Act == ActGoOn) && f.By.Before(plan.Soon) && (!f.By.Before(due) || d <= p.today) {
			plan.Hard = append(plan.Hard, f)
		}
		if f.Act != ActNone && p.isFor(f, d) {
			work = append(work, f)
		}
	}
	slices.SortStableFunc(plan.Hard, func(a, b Finding) int { return a.By.Compare(b.By) })
	p.amongRobbers(work, d)
	p.timeToCage(work, d)
	plan.Kit = p.kit(work, d)
	plan.Waits = p.waits(found)
	plan.Stops = p.route(work, d)
	p.time(&plan)
	return plan
}

const noon = 12

// isFor tells whether a finding is work of a day.
func (p *pass) isFor(f Finding, d calendar.Day) bool {
	y := p.yard(f.Yard)
	if p.waitsForRobbers(f, d) {
		return false
	}
	if d <= y.today {
		return f.From.Before((d + 1).Start(y.zone))
	}
	return p.workDay(f) == d
}

// workDay is the day on which a finding is best worked at, today at the
// earliest.
func (p *pass) workDay(f Finding) calendar.Day {
	y := p.yard(f.Yard)
	at := f.Best
	if at.IsZero() {
		at = f.From
	}
	day := max(y.day(at), y.today)
	if p.waitsForRobbers(f, day) {
		return y.shutUntil
	}
	return day
}

func (p *pass) work(found []Finding, from, to calendar.Day) map[calendar.Day]float64 {
	minutes := map[calendar.Day]float64{}
	for _, f := range found {
		if d := p.workDay(f); f.PutOff.IsZero() && from <= d && d <= to {
			minutes[d] += p.minutes(f)
		}
	}
	return minutes
}

// minutes is what a finding takes: at each of the nucs it speaks of, or for
// each cell.
func (p *pass) minutes(f Finding) float64 {
	if f.Takes > 0 {
		return f.Takes
	}
	per := f.Act.Minutes(p.numbers, p.fullCombs(f.Of)) + f.Then.Minutes(p.numbers, false)
	switch {
	case f.Rule == VirginWalks: // she is caught, and every cell is looked at
		return p.numbers.Get(practice.MinutesCatch) + p.numbers.Get(practice.MinutesEmergenceCheck)*f.Amount + p.timeTogether(f)
	case f.Act == ActCollectCells:
		return p.timeTogether(f)
	case f.Act == ActNarrowEntrance:
		return per * float64(len(f.Subjects()))
	default:
		return per
	}
}

// timeTogether are the minutes for the cells of a batch that are together, and that no task
// gives to a nuc: each goes into a cage, or into a nuc that waits for it or is still made up.
func (p *pass) timeTogether(f Finding) float64 {
	id, _ := f.Of.Batch()
	b := p.caseOf(id)
	if b == nil {
		return 0
	}
	cages, into := p.toCage(b, p.workDay(f))
	return p.cageOrGive(cages, into+b.waits)
}

// cageOrGive are the minutes for so many cells into cages, and so many into nucs.
func (p *pass) cageOrGive(cages, into int) float64 {
	return ActCollectCells.Minutes(p.numbers, false)*float64(cages) + ActGiveCell.Minutes(p.numbers, false)*float64(into)
}

// toCage is how many of a batch's cells, as far as was counted, go into cages on a day, since
// no nuc is ready for them or made up by then, and how many into nucs that are.
func (p *pass) toCage(b *batchCase, d calendar.Day) (cages, into int) {
	into = p.intoMadeUp(b, d, true)
	return max(0, p.ripe(b)-b.ready-into), into
}

// caseOf is the case of a batch; nil where none of its cells is at hand.
func (p *pass) caseOf(id book.BatchID) *batchCase {
	for _, b := range p.batches {
		if b.Batch.Batch == id {
			return b
		}
	}
	return nil
}

func (p *pass) fullCombs(s book.Subject) bool {
	id, ok := s.Nuc()
	return ok && fullCombs(p.view.Nuc(id), p.numbers)
}

// time adds up the minutes, and says when each stop begins for one person who
// starts with the day's first free hour.
func (p *pass) time(plan *DayPlan) {
	var yard book.YardID
	for i := range plan.Stops {
		s := &plan.Stops[i]
		s.Far = p.view.Yard(s.Yard).Drive
		if i == 0 || s.Yard != yard {
			s.Drive = p.view.Yard(yard).Drive + p.view.Yard(s.Yard).Drive
		}
		yard = s.Yard
		plan.Driving += s.Drive
		for _, t := range s.Tasks {
			plan.Minutes += t.Minutes
		}
	}
	plan.Driving += p.view.Yard(yard).Drive
	plan.Minutes += plan.Driving
	plan.Home = begin(plan.Stops, firstFree(p.view, plan.Day))
	p.lateAtDusk(plan)
}

// lateAtDusk says until when anybody is free, and by how many minutes what waits for dusk ends
// later: as many of those who are free so late do it side by side as are home soonest.
func (p *pass) lateAtDusk(plan *DayPlan) {
	var free []time.Time
	for who := range p.view.People() {
		if h := who.FreeOn(plan.Day); h.Minutes() > 0 {
			_, until := h.Between(plan.Day, p.zone)
			free = append(free, until)
		}
	}
	if len(free) == 0 {
		return
	}
	slices.SortFunc(free, func(a, b time.Time) int { return b.Compare(a) })
	plan.Last = free[0]
	dusk, work, way := afterDusk(plan.Stops)
	if dusk.IsZero() {
		return
	}
	over := way + work - plan.Last.Sub(dusk).Minutes()
	for i, until := range free {
		over = min(over, way+work/float64(i+1)-until.Sub(dusk).Minutes())
	}
	plan.Late = max(0, over)
}

// afterDusk is when what waits for dusk begins, how long it takes, and the ways from its
// first yard on until home.
func afterDusk(stops []Stop) (dusk time.Time, work, way float64) {
	far := 0.0
	for _, s := range stops {
		if s.Dusk.IsZero() {
			continue
		}
		if dusk.IsZero() {
			dusk = s.Dusk
		} else {
			way += s.Drive
		}
		far = s.Far
		for _, t := range s.Tasks {
			work += t.Minutes
		}
	}
	return dusk, work, way + far
}

// begin says of stops when each begins if one sets out at an instant, which may be
// none, and gives the hour at which one is home again.
func begin(stops []Stop, at time.Time) (home time.Time) {
	far := 0.0
	for i := range stops {
		s := &stops[i]
		at = after(at, s.Drive)
		if !at.IsZero() && at.Before(s.Dusk) {
			at = s.Dusk
		}
		s.Start, far = at, s.Far
		for _, t := range s.Tasks {
			at = after(at, t.Minutes)
		}
	}
	return after(at, far)
}

// route puts the work into stops: robbers first, then home, then the yards with a hard
// deadline, then the others; within a yard by rounds in walking order. What waits for
// dusk comes behind them, and the work at the desk last. Before the way to robbers only
// ripe cells that are overdue are taken along: they are lost by the hour, and lie at the
// door that one leaves by.
func (p *pass) route(work []Finding, d calendar.Day) []Stop {
	r := router{pass: p, day: d, rank: p.ranks(), stops: map[stopKey]*Stop{}}
	home := r.home().id
	r.alarm = slices.ContainsFunc(work, func(f Finding) bool { return f.Emergency() && f.Yard != home })
	r.catch = r.catches(work)
	for _, f := range work {
		r.add(f)
	}
	r.joinAll()
	keys := r.keys()
	stops := make([]Stop, len(keys))
	for i, k := range keys {
		stops[i] = *r.stops[k]
		stops[i].Tasks = r.fold(stops[i].Tasks)
	}
	return stops
}

// compareTasks puts robbers first, and of it the nuc that is robbed; hard deadlines next,
// then walking order.
func (r *router) compareTasks(a, b Task) int {
	return cmp.Or(book.TrueFirst(a.emergency(), b.emergency()), book.TrueFirst(a.robbed(), b.robbed()), book.TrueFirst(a.Hard, b.Hard), cmp.Compare(r.rank.of[a.Of[0]], r.rank.of[b.Of[0]]), cmp.Compare(a.Act, b.Act))
}
