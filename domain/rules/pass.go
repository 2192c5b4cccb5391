package rules

import (
	"cmp"
	"slices"
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/spread"
	"lidmark/domain/strength"
)

// Findings are all that the rules find at the view's instant: robbers first,
// then what presses, hard deadlines before others, then by the day it is due,
// then in walking order. Windows that open later are among them, so that the
// days ahead can be seen. It is one pass over the nucs, batches, colonies and
// yards.
func Findings(v *book.View) []Finding { return Judge(v).Findings() }

// pass is one walk over a season: what the rules share, worked out once.
type pass struct {
	view    *book.View
	course  *course.Course
	numbers practice.Numbers
	now     time.Time
	zone    *time.Location // of the home yard
	today   calendar.Day
	yards   map[book.YardID]*yardCase
	nucs    []nucCase    // the living ones, in walking order
	batches []*batchCase // with cells still together, the first to emerge first
	given   []*batchCase // with cells that are taken as given, on a day ahead
	putOff  map[putOffKey]calendar.Day
	found   []*Finding
	packs   *book.Yard    // the home yard, from which bees and cells are taken along
	planner *plan.Planner // draws the ladders of batches; nil: none was asked for
	taken   bool          // a planned step is taken as done, see [plan.Planner.Taken]
	reared  func() plan.Rates

	sheet *handover.Sheet // who gets which queen; of nobody while no order is open

	presumed []course.Presumption // of all nucs, in walking order
}

// newPass prepares a pass over a view. It goes on from an earlier one, which may
// be nil.
func newPass(v *book.View, was *pass) *pass {
	p := &pass{
		view: v, course: courseAfter(v, was), numbers: v.Numbers(),
		now: v.On(), zone: v.Zone(), today: v.Today(),
		yards: map[book.YardID]*yardCase{}, sheet: &handover.Sheet{},
		reared: sync.OnceValue(func() plan.Rates { return plan.RearedOf(v) }),
	}
	p.putOff, p.packs = p.allPutOff(), p.home().yard
	p.findNucs(was)
	p.findBatches()
	p.shareGiven()
	p.shareNucs()
	p.shareSpare()
	p.shareQueens()
	return p
}

// courseAfter goes on from the course of an earlier pass, which may be nil.
func courseAfter(v *book.View, was *pass) *course.Course {
	if was == nil {
		return course.New(v)
	}
	return course.Again(v, was.course)
}

// findings runs all rules. What they find of a nuc concerns no other, so nucs are
// judged at once; what was found is put where its rule's turn is.
func (p *pass) findings() []Finding {
	rows := table()
	spread.Over(len(p.nucs), func(i int) { p.judge(&p.nucs[i], rows) })
	ofNucs := make([][]*Finding, len(rows))
	for i := range p.nucs {
		n := &p.nucs[i]
		n.was = nil // else every pass would keep all before it
		for _, f := range n.found {
			ofNucs[f.row] = append(ofNucs[f.row], f.Finding)
		}
	}
	for i, r := range rows {
		p.found = append(p.found, ofNucs[i]...)
		r.run(p)
	}
	slices.SortStableFunc(p.found, comparePress)
	found := make([]Finding, len(p.found))
	for i, f := range p.found {
		found[i] = *f
	}
	return found
}

func comparePress(a, b *Finding) int {
	return cmp.Or(book.TrueFirst(a.Emergency(), b.Emergency()), cmp.Compare(b.Severity, a.Severity), book.TrueFirst(a.Hard, b.Hard), compareDue(a.By, b.By))
}

// compareDue puts what has no last day behind what has one.
func compareDue(a, b time.Time) int {
	if a.IsZero() != b.IsZero() {
		return cmp.Compare(b.Unix(), a.Unix())
	}
	return a.Compare(b)
}

// add takes a finding in. One that does not press by itself is ahead, open or
// past its best day by its window.
func (p *pass) add(y *yardCase, f Finding) { p.note(y, p.pressed(y, f)) }

// note takes a finding in with the severity it has.
func (p *pass) note(y *yardCase, f Finding) { p.found = append(p.found, p.noted(y, f)) }

// addTo is add for a finding about a nuc.
func (p *pass) addTo(n *nucCase, f Finding) { p.noteOf(n, p.pressed(n.yard, f)) }

// noteOf is note for a finding about a nuc.
func (p *pass) noteOf(n *nucCase, f Finding) {
	n.apart(&f)
	asked := ActNone
	if f.Rule.settles() && p.planStands(n.Nuc, n.yard.today) {
		asked, f.Act, f.Amount = f.Act, ActNone, 0 // the plan is the task
	}
	n.found = append(n.found, ruled{n.row, p.noted(n.yard, f), asked})
}

func (p *pass) pressed(y *yardCase, f Finding) Finding {
	if f.Severity == Ahead {
		f.Severity = p.press(f, y.zone)
	}
	return f
}

func (p *pass) noted(y *yardCase, f Finding) *Finding {
	f.Yard = y.id
	if !f.Hard && !f.By.IsZero() {
		f.By = p.endOfDay(y, f.By) // a day is past when it is over
	}
	if until := p.offUntil(f); until > y.today {
		f.PutOff = until
		f.Why += "; put off until " + until.ShortFrom(p.today)
	}
	return &f
}

// press is by its window. What has a hard hour presses once its best one is past, and so
// long ahead of the hard one as cells are well out.
func (p *pass) press(f Finding, zone *time.Location) Severity {
	last := f.By
	switch {
	case f.Best.IsZero():
	case f.Hard:
		last = earlier(f.Best, f.By.Add(-p.numbers.Duration(practice.BestAheadOfHard)))
	default:
		last = (calendar.DayOf(f.Best, zone) + 1).Start(zone)
	}
	switch {
	case p.now.Before(f.From):
		return Ahead
	case !last.IsZero() && !p.now.Before(last):
		return Pressing
	default:
		return Open
	}
}

// open is Ahead before a window opens, then Open for good: for what need not
// be done at all.
func (p *pass) open(from time.Time) Severity {
	if p.now.Before(from) {
		return Ahead
	}
	return Open
}

// pressing is Ahead before a window opens, then Pressing for good: for what needs
// the keeper as soon as it can be done.
func (p *pass) pressing(from time.Time) Severity {
	if p.now.Before(from) {
		return Ahead
	}
	return Pressing
}

type putOffKey struct {
	rule Rule
	of   book.Subject
}

// offUntil is until when a finding was put off. Who puts the cells of a batch off
// puts off giving them.
func (p *pass) offUntil(f Finding) calendar.Day {
	until := p.putOff[putOffKey{f.Rule, f.Of}]
	if f.Act == ActGiveCell && len(f.Also) > 0 {
		until = max(until, p.putOff[putOffKey{CellsOut, f.Also[0]}])
	}
	return until
}

// allPutOff are the days until which findings were put off, the last word on
// each.
func (p *pass) allPutOff() map[putOffKey]calendar.Day {
	all := map[putOffKey]calendar.Day{}
	for f := range p.view.PutOffs() {
		all[putOffKey{Rule(f.Rule), f.Of}] = f.Until
	}
	return all
}

// yardCase is a yard as the rules see it. One without id stands for what
// stands nowhere and counts days as the home yard does.
type yardCase struct {
	id        book.YardID
	yard      *book.Yard
	zone      *time.Location
	today     calendar.Day
	strength  *strength.Yard
	night     string       // the night to come, in words
	shutUntil calendar.Day // until then robbers keep it shut; 0: none
}

func (p *pass) yard(id book.YardID) *yardCase {
	if y, ok := p.yards[id]; ok {
		return y
	}
	zone := p.course.Zone(id)
	y := &yardCase{id: id, yard: p.view.Yard(id), zone: zone, today: calendar.DayOf(p.now, zone), strength: strength.NewYard(p.view, id, zone)}
	y.night = y.strength.Night().String()
	p.yards[id] = y
	return y
}

// home is the home yard's case.
func (p *pass) home() *yardCase {
	if y := p.view.HomeYard(); y != nil {
		return p.yard(y.Yard)
	}
	return p.yard(book.YardID{})
}

func (y *yardCase) day(t time.Time) calendar.Day { return calendar.DayOf(t, y.zone) }

func (y *yardCase) of(m calendar.Moment) calendar.Day { return m.Day(y.zone) }

func (p *pass) days(k practice.Key) calendar.Day { return calendar.Day(p.numbers.Days(k)) }
