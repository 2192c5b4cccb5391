package state

import (
	"cmp"
	"slices"
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/line"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
	"lidmark/domain/spread"
	"lidmark/domain/strength"
	"lidmark/domain/weather"
	"lidmark/ui/scene"
)

// Reading is a book read on one day: what every pane shows of it. It is made
// once for a day and shared; it must not be changed.
type Reading struct {
	View     *book.View
	Course   *course.Course
	Day      calendar.Day
	Ahead    bool   // the day has not come: all is only reckoned
	Then     bool   // as it was known at the end of the day
	UnderWay bool   // it is read at the instant of the clock
	Nucs     []*Nuc // in walking order
	Findings []rules.Finding

	judged   *rules.Judged
	of       map[book.NucID]*Nuc
	about    map[book.Subject][]rules.Finding
	batches  func() []*book.Batch
	planned  func() []book.BatchPlan
	banks    func() []rules.Bank // the caged queens
	planner  func() *plan.Planner
	own      func() practice.Numbers
	lane     func(plannedKey) PlannedLane
	workdays func() map[calendar.Day]Work
	dayPlan  func() rules.DayPlan
	page     func() []PageStop
	part     func(Less) rules.Part
	crew     func(Less) crewed
	heights  func(routePane) routeHeights
	sheet    func() func(book.NucID) []book.Fact
	ground   func(book.YardID) scene.Area
	sight    func(book.YardID) scene.Area
	lives    func(book.BatchID) Lives
	late     func(book.BatchID) Late
	moves    func(numberTrial) []NumberMoves
	rows     func(rowsKey) []Row
	standing func(book.YardID) []Standing
	flights  func(book.YardID) *weather.Yard
	courses  func(book.NucID) *NucCourse
	sure     func() []Sureness
	robbers  func() []strength.Exposure
	colonies func(book.YardID) []*book.Colony
	marks    func(book.BatchID) []LaneMark
	tally    func(book.YardID) tally
	offers   func(offersKey) []FilterWord
	filtered func(shownKey) []*Nuc
	sections func(sectionsKey) []Section
	listing  func(listingKey) []TableLine
}

// Nuc is a nuc as the panes show it on the day read.
type Nuc struct {
	*book.Nuc
	Presumed course.Presumption
	Findings []rules.Finding // about it, the most pressing first
	NeedsYou bool
	Due      *rules.Finding // the work that comes first, or nil
	DueDay   calendar.Day   // the day on which that is best done; the day read when at once
	Timed    bool           // there is a time by which to look
	Used     float64        // share of that time used; above 1 it is past due

	reading *Reading
	place   int // among the reading's nucs
	late    int // days by which Due is past due
	told    sync.Once
	words   string // see wordsOf
	face    face
}

// empty is the reading of no book.
var empty = read(book.NewSeason(nil, nil).At(time.Time{}), rules.Judge, 0, false)

// read reads a view of a day.
func read(v *book.View, judge func(*book.View) *rules.Judged, d calendar.Day, ahead bool) *Reading {
	judged := judge(v)
	r := &Reading{View: v, Course: judged.Course(), Day: d, Ahead: ahead, judged: judged}
	r.Findings = judged.Findings()
	r.about = bySubject(r.Findings)
	nucs := slices.Collect(v.Nucs())
	all := make([]Nuc, len(nucs)) // one piece of memory, however many there are
	r.of, r.Nucs = make(map[book.NucID]*Nuc, len(nucs)), make([]*Nuc, len(nucs))
	spread.Over(len(nucs), func(i int) {
		all[i].Nuc, all[i].Presumed, all[i].place = nucs[i], judged.Presumed()[i], i
		r.fill(&all[i])
	})
	for i, n := range nucs {
		r.Nucs[i], r.of[n.Nuc] = &all[i], &all[i]
	}
	r.batches = sync.OnceValue(func() []*book.Batch { return slices.Collect(v.Batches()) })
	r.planned = sync.OnceValue(r.readPlanned)
	r.banks = sync.OnceValue(r.readBanks)
	r.workdays = sync.OnceValue(r.readWork)
	r.ground, r.lives, r.rows = memo(r.readGround), memo(r.readLives), memo(r.readRows)
	r.part, r.crew, r.page = memo(r.readPart), memo(r.readCrew), sync.OnceValue(r.readPage)
	r.late, r.moves = memo(r.readLate), memo(r.readMoves)
	r.marks, r.tally = memo(r.readMarks), memo(r.readTally)
	r.standing, r.colonies, r.sight = memo(r.readStanding), memo(r.readColonies), memo(r.readSight)
	r.flights = memo(r.readFlights)
	r.courses = lately(r.readCourse)
	r.sure, r.robbers = sync.OnceValue(r.readSure), sync.OnceValue(r.readRobbers)
	r.offers, r.heights = lately(r.readOffers), lately(r.readHeights)
	r.filtered, r.sections, r.listing = lately(r.readFiltered), lately(r.readSections), lately(r.readListing)
	r.sheet = sync.OnceValue(func() func(book.NucID) []book.Fact { return line.Sheet(r.Plan()) })
	r.dayPlan = sync.OnceValue(r.readPlan)
	r.planner = sync.OnceValue(func() *plan.Planner { return plan.New(r.Course) })
	r.own = sync.OnceValue(func() practice.Numbers { return r.planner().Own() })
	r.lane = memo(r.readLane)
	return r
}

// readPlan is the work of the day; of a day under way in the hours that are left.
func (r *Reading) readPlan() rules.DayPlan {
	day := r.judged.Day(r.Day)
	if r.UnderWay {
		return day.Left(r.View)
	}
	return day
}

// HoursOver tells whether people were free on the day read, but are not any more.
func (r *Reading) HoursOver() bool {
	return r.UnderWay && r.Plan().Free == 0 && r.View.MinutesFree(r.Day) > 0
}

// bySubject files findings under what they are about, the most pressing first,
// of equals the one with the earlier end.
func bySubject(all []rules.Finding) map[book.Subject][]rules.Finding {
	count := map[book.Subject]int{}
	for i := range all {
		count[all[i].Of]++
	}
	filed := make([]rules.Finding, len(all))
	about := make(map[book.Subject][]rules.Finding, len(count))
	for i := range all {
		of := all[i].Of
		fs, ok := about[of]
		if n := count[of]; !ok {
			fs, filed = filed[:0:n], filed[n:]
		}
		about[of] = append(fs, all[i])
	}
	for _, fs := range about {
		if len(fs) > 1 {
			slices.SortStableFunc(fs, func(a, b rules.Finding) int {
				return cmp.Or(cmp.Compare(b.Severity, a.Severity), a.By.Compare(b.By))
			})
		}
	}
	return about
}

// fill reads what is found about a nuc.
func (r *Reading) fill(n *Nuc) {
	n.reading = r
	n.Findings = r.about[n.Nuc.Nuc.Subject()]
	n.NeedsYou = slices.ContainsFunc(n.Findings, rules.Finding.NeedsYou)
	if n.Due, n.DueDay = r.firstDue(n.Findings); n.Due != nil {
		n.late = r.PastDue(*n.Due)
	}
	n.Used, n.Timed = used(n.Presumed, r.View.On())
	if n.late > 0 { // whatever is past due closes the rim
		n.Used, n.Timed = max(n.Used, pastUsed), true
	}
}

// pastUsed is a share of the time for what is past due: more than all of it.
const pastUsed = 1.2

// used is the share of the time to the next look that is used at t.
func used(p course.Presumption, t time.Time) (share float64, timed bool) {
	from := p.Since
	if p.LookBy.IsZero() || from.IsZero() || !p.LookBy.After(from) {
		return 0, false
	}
	return max(0, float64(t.Sub(from))/float64(p.LookBy.Sub(from))), true
}

// Nuc is the nuc of an id, or nil.
func (r *Reading) Nuc(id book.NucID) *Nuc { return r.of[id] }

// About are the findings about a subject, the most pressing first.
func (r *Reading) About(s book.Subject) []rules.Finding { return r.about[s] }

// Batches are the batches by the hour of the graft.
func (r *Reading) Batches() []*book.Batch { return r.batches() }

// Judged is what the rules say of the day read, for what is asked beyond it.
func (r *Reading) Judged() *rules.Judged { return r.judged }

// Plan is the day's work.
func (r *Reading) Plan() rules.DayPlan { return r.dayPlan() }

// Sheet is what stands on the day's sheet for each nuc and can be ticked off.
func (r *Reading) Sheet() func(book.NucID) []book.Fact { return r.sheet() }

// Numbers are the keeper's numbers.
func (r *Reading) Numbers() practice.Numbers { return r.View.Numbers() }

// OwnNumbers are the keeper's numbers with the shares in them that his book tells, see
// [plan.Planner.Own].
func (r *Reading) OwnNumbers() practice.Numbers { return r.own() }

// DayOf is the day of an instant in the zone of the home yard; none for the
// zero instant.
func (r *Reading) DayOf(t time.Time) calendar.Day {
	if t.IsZero() {
		return 0
	}
	return calendar.DayOf(t, r.View.Zone())
}

// In are the nucs of a yard in walking order; all of them for the zero yard.
func (r *Reading) In(yard book.YardID) []*Nuc {
	if yard.IsZero() {
		return r.Nucs
	}
	from := slices.IndexFunc(r.Nucs, func(n *Nuc) bool { return n.Yard == yard })
	if from < 0 {
		return nil
	}
	to := from
	for to < len(r.Nucs) && r.Nucs[to].Yard == yard {
		to++
	}
	return r.Nucs[from:to]
}

// NeedYou counts the nucs that need the keeper.
func NeedYou(nucs []*Nuc) (n int) {
	for _, m := range nucs {
		if m.NeedsYou {
			n++
		}
	}
	return n
}

// Known tells whether the book knows a subject on the day.
func (r *Reading) Known(s book.Subject) bool {
	for range r.View.Lines(s) {
		return true
	}
	return false
}

// firstDue is the work that comes first: what presses, then by its best day.
func (r *Reading) firstDue(findings []rules.Finding) (due *rules.Finding, on calendar.Day) {
	for i := range findings {
		f := &findings[i]
		if f.Act == rules.ActNone || !f.PutOff.IsZero() {
			continue
		}
		d := r.BestDay(*f)
		if due == nil || f.Severity == due.Severity && d < on {
			due, on = f, d
		}
	}
	return due, on
}

// BestDay is the day on which the work of a finding is best done; the day read
// for work that has no day.
func (r *Reading) BestDay(f rules.Finding) calendar.Day {
	for _, t := range []time.Time{f.Best, f.From, f.By} {
		if !t.IsZero() {
			return r.DayOf(t)
		}
	}
	return r.Day
}

// PastDue is by how many days the work of a finding is past due; 0 when it is
// not.
func (r *Reading) PastDue(f rules.Finding) int {
	if f.By.IsZero() || f.By.After(r.View.On()) {
		return 0
	}
	return max(0, r.Day.Sub(r.DayOf(f.By)))
}

// PastDue is by how many days the work that comes first at the nuc is past due;
// 0 when it is not.
func (n *Nuc) PastDue() int { return n.late }

// Days is how many days are left until the work that comes first is best done:
// 0 from then on until it is past due, then less than 0, by as many days as it
// is past due.
func (n *Nuc) Days() int {
	if late := n.PastDue(); late > 0 {
		return -late
	}
	return max(0, n.DueDay.Sub(n.reading.Day))
}

// Weak tells whether the rules find the nuc weak.
func (n *Nuc) Weak() bool { return n.has(rules.Weak) }

// Robbers tells whether the rules see robbers at the nuc, or coming.
func (n *Nuc) Robbers() bool { return n.has(rules.Robbers) || n.has(rules.BeingRobbed) }

func (n *Nuc) has(r rules.Rule) bool {
	return slices.ContainsFunc(n.Findings, func(f rules.Finding) bool { return f.Rule == r })
}
