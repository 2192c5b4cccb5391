package plan

import (
	"sync"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// Rung is one step of a batch with its window: first, best and last day.
type Rung struct {
	Step           Step
	From, Best, By calendar.Day
	Hard           time.Time // the hour by which it must be done or cells are lost; zero: none
	NobodyFree     bool      // in the whole window nobody has a free hour before its end, though hours were told
}

// Ladder is the steps of one batch by the day, each where the next one needs it,
// in the order of [Step].
type Ladder struct {
	Graft time.Time
	Day   calendar.Day // of the graft
	Clock bee.Clock    // of all its cells
	Laid  Laid
	Rungs []Rung
}

// Rung is the rung of a step.
func (l Ladder) Rung(s Step) Rung { return l.Rungs[s-1] }

// Planner draws ladders for one view of a book. It may be used from several
// goroutines.
type Planner struct {
	view    *book.View
	course  *course.Course
	numbers practice.Numbers
	rates   func() Rates     // the keeper's, by all that is counted
	reared  func() Rates     // as far as ripe cells
	waiting func() []Wanting // the batches of the book for which nucs wait
	inHand  func() []Wanting // and those that rear cells
	stands  func() map[book.BatchID]Left
	live    func() map[book.YardID]int // see [Planner.liveNucs]
	freed   func() map[book.NucID]calendar.Day
	combs   func() []combAt
	mu      sync.Mutex
	sizes   map[sizeKey]Size // as far as they were asked for
	ladders map[ladderKey]Ladder
	made    map[madeKey][]MakeUp
	laid    map[laidKey]Laid
	rooms   map[roomKey]int
	joint   map[int]Chances // of a row of grafts, by its number
	rows    map[row]int

	unlearnt map[unlearntKey]Chances
	without  map[book.BatchID]Rates // the keeper's, without what a batch tells
}

// New is a planner over what a course knows.
func New(c *course.Course) *Planner {
	p := &Planner{
		view: c.View(), course: c, numbers: c.View().Numbers(),
		sizes: map[sizeKey]Size{}, ladders: map[ladderKey]Ladder{}, made: map[madeKey][]MakeUp{}, laid: map[laidKey]Laid{}, rooms: map[roomKey]int{}, joint: map[int]Chances{}, rows: map[row]int{}, unlearnt: map[unlearntKey]Chances{}, without: map[book.BatchID]Rates{},
		rates:  sync.OnceValue(func() Rates { return RatesOf(c.View()) }),
		reared: sync.OnceValue(func() Rates { return RearedOf(c.View()) }),
	}
	p.waiting, p.inHand = sync.OnceValue(p.allWaiting), sync.OnceValue(p.allInHand)
	p.stands, p.live, p.combs = sync.OnceValue(p.allStanding), sync.OnceValue(p.liveNucs), sync.OnceValue(p.allCombs)
	p.freed = sync.OnceValue(p.allFreed)
	return p
}

// View is the view the planner plans on.
func (p *Planner) View() *book.View { return p.view }

// Course is what the planner knows of the nucs of its view.
func (p *Planner) Course() *course.Course { return p.course }

// zoned is a time zone with the days in it.
type zoned struct{ zone *time.Location }

func (z zoned) day(t time.Time) calendar.Day { return calendar.DayOf(t, z.zone) }

// GraftAt is the hour of a graft on a day of which only the day is known: the
// first hour at which somebody is free, else the usual one.
func (p *Planner) GraftAt(d calendar.Day) time.Time {
	zone, at := p.view.Zone(), time.Time{}
	for who := range p.view.People() {
		if free := who.FreeOn(d); free.Minutes() > 0 {
			if from, _ := free.Between(d, zone); at.IsZero() || from.Before(at) {
				at = from
			}
		}
	}
	if at.IsZero() {
		return d.At(usualGraftHour, 0, zone)
	}
	return at
}

// usualGraftHour is when a graft is set down of which nobody said the hour. It is
// a convention of the program: the clock of a batch needs one.
const usualGraftHour = 15

// Ladder is the ladder of a batch of so many larvae grafted at an instant, whose
// queens fly from a yard.
func (p *Planner) Ladder(graft time.Time, larvae int, yard book.YardID) Ladder {
	ripe := p.reared().Ripe(larvae)
	return p.ladder(graft, larvae, ripe, ripe, yard)
}

// ladder is the ladder of a batch of so many cells, of which so many are to be given, and for which so
// many nucs are made up.
func (p *Planner) ladder(graft time.Time, cells int, ripe, nucs float64, yard book.YardID) Ladder {
	z := zoned{p.course.Zone(yard)}
	l := Ladder{
		Graft: graft, Day: z.day(graft),
		Clock: bee.Batch{Graft: graft, Cells: cells}.Clock(p.numbers),
		Laid:  p.laidOf(graft, yard),
	}
	l.Rungs = make([]Rung, Ready)
	for s := range l.Rungs {
		l.Rungs[s].Step = Step(s + 1)
	}
	p.beforeGraft(&l)
	p.untilCells(&l, z, ripe, nucs)
	p.afterCells(&l, z)
	p.free(&l, z)
	return l
}

func (l *Ladder) set(s Step, from, best, by calendar.Day) {
	r := &l.Rungs[s-1]
	r.From, r.Best, r.By = min(from, best), best, max(by, best)
}

func (p *Planner) days(k practice.Key) calendar.Day { return calendar.Day(p.numbers.Days(k)) }

// beforeGraft are the steps that make ready for the graft.
func (p *Planner) beforeGraft(l *Ladder) {
	g := l.Day
	confine := g - p.days(practice.ConfineBreederBefore)
	l.set(Confine, confine, confine, confine)
	feed := g - p.days(practice.FeedStarterBefore)
	l.set(FeedStarter, feed, feed, feed)
	start := g - p.days(practice.StarterSetUpBefore)
	l.set(SetUpStarter, start-1, start, start)
	l.set(GraftLarvae, g, g, g)
}

// untilCells are the steps from the graft until its cells are given, by its own clock;
// they are best given on a day on which somebody has the minutes that giving them takes, and their
// nucs made up on the last one before on which somebody has those for that, all of them mini nucs
// that are made up anew.
func (p *Planner) untilCells(l *Ladder, z zoned, ripe, nucs float64) {
	for _, w := range l.Clock.Windows(z.zone) {
		if s := stepOf[w.Step]; s != 0 {
			l.set(s, l.Day+calendar.Day(w.From), l.Day+calendar.Day(w.Best), l.Day+calendar.Day(w.By))
		}
	}
	give := &l.Rungs[GiveCells-1]
	give.Hard = l.Clock.Hard()
	give.By = z.day(give.Hard)
	give.Best = p.whenFree(*give, z, ripe*p.numbers.Get(practice.MinutesGiveCell))
	up := Rung{From: give.Best - p.days(practice.NucsMadeUpEarliest), By: give.Best - p.days(practice.NucsMadeUpBefore)}
	up.Best = up.By
	l.set(MakeUpNucs, up.From, p.whenFree(up, z, min(ripe, nucs)*p.numbers.Get(practice.MinutesMakeUp)), up.By)
}

// stepOf is what a window of a batch's table is here.
var stepOf = map[bee.Step]Step{bee.ToFinisher: ToFinisher, bee.CountTake: CountTake, bee.CellsCapped: CountCapped, bee.CellsIn: GiveCells}

// What is likely runs from one share of a distribution to another. A convention of the program.
const (
	earliest = 0.1
	middle   = 0.5
	latest   = 0.9
)

// afterCells are the bees' own steps, and the looks and the hand-over that follow
// from them.
func (p *Planner) afterCells(l *Ladder, z zoned) {
	out := l.Laid.out
	l.set(Emerge, out.Day(earliest), out.Day(middle), out.Day(latest))
	born := out.Day(middle)
	l.set(Fly, born+p.days(practice.FirstMatingFlightFrom), born+p.days(practice.FirstMatingFlight), born+p.days(practice.FirstMatingFlightBy))
	look := max(born+p.days(practice.LookForEggsFrom), l.Laid.Day(p.numbers.Get(practice.LookForEggsChance))+1)
	l.set(LookForEggs, born+p.days(practice.LookForEggsFrom), look, look+p.days(practice.LookAgainFrom))
	l.set(Ready, l.Laid.ReadyDay(earliest), l.Laid.ReadyDay(middle), l.Laid.ReadyDay(latest))
	fly := l.Rung(Fly)
	last := fly.From - p.days(practice.DroneRipe)
	in := min(last, max(fly.From-p.days(practice.DroneCombBeforeFlights), fly.By-p.DronesOf(0).By)) // its drones last until the last flights
	l.set(DroneComb, in-p.days(practice.DroneCombAhead), in, last)
}

// free marks the keeper's steps in whose window nobody is free.
func (p *Planner) free(l *Ladder, z zoned) {
	if !p.view.HoursTold() {
		return
	}
	for i, r := range l.Rungs {
		if r.Step.Done() && r.Step != DroneComb {
			l.Rungs[i].NobodyFree = !p.someoneFree(r, z)
		}
	}
}

// whenFree is the best day of a step: the day on which people are free so many minutes, before
// its hard hour where it has one, else the last such day before it in its window from the day on
// that is looked from, else the first after it. Where there is none it is one on which somebody
// is free at all; where there is none either, or nobody told hours, it stays.
func (p *Planner) whenFree(r Rung, z zoned, minutes float64) calendar.Day {
	if !p.view.HoursTold() {
		return r.Best
	}
	from := min(r.Best, max(r.From, p.view.From()))
	for _, least := range [...]float64{minutes, 0} {
		for d := r.Best; d >= from; d-- {
			if p.freeOn(d, r.Hard, z, least) {
				return d
			}
		}
		for d := r.Best + 1; d <= r.By; d++ {
			if p.freeOn(d, r.Hard, z, least) {
				return d
			}
		}
	}
	return r.Best
}

// someoneFree tells whether somebody is free in a window, before its hard hour
// where it has one.
func (p *Planner) someoneFree(r Rung, z zoned) bool {
	for d := r.From; d <= r.By; d++ {
		if p.freeOn(d, r.Hard, z, 0) {
			return true
		}
	}
	return false
}

// freeOn tells whether people together are free so many minutes on a day, and at all,
// before a hard hour where there is one.
func (p *Planner) freeOn(d calendar.Day, hard time.Time, z zoned, minutes float64) bool {
	free := 0.0
	for who := range p.view.People() {
		hours := who.FreeOn(d)
		if hours.Minutes() == 0 {
			continue
		}
		from, until := hours.Between(d, z.zone)
		if !hard.IsZero() && hard.Before(until) {
			until = hard
		}
		free += max(0, until.Sub(from).Minutes())
	}
	return free > 0 && free >= minutes
}
