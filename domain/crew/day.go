package crew

import (
	"cmp"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Work is a task at one of its nucs, its colony or its batch.
type Work struct {
	Task    rules.Task
	Of      book.Subject
	Minutes float64
	Price   Price // of letting it wait
	Hard    bool  // it has a hard end before noon of the next day, or before somebody can come again if that is later; or the food is out
	first   bool  // it is done before others though it has no hard end: others can be done only then
}

// Visit is what one person does in a yard on one round, in walking order.
type Visit struct {
	Yard book.YardID
	Dusk time.Time // robbers are about and it is driven to for dusk; zero: at any hour
	Work []Work
}

// Sheet is a person's day.
type Sheet struct {
	Hand
	Van     int // counted from 1
	Team    int // who drives together: of a van those who have it one after the other are several
	Visits  []Visit
	Working float64 // minutes
	Driving float64 // minutes
}

// Day is a day's work with the hands there are.
type Day struct {
	On     calendar.Day
	Next   time.Time // when somebody can come again
	Sheets []Sheet
	Waits  []Work    // what waits, dearest first
	Loss   float64   // in queens, of all that waits
	Must   float64   // minutes of what has a hard end, without the ways
	Exact  bool      // no other choice costs less
	Over   float64   // minutes of what is done at dusk and waits, since nobody is free long enough then
	Last   time.Time // until when anybody who is there is free; zero: nobody told
}

// Plan chooses what is done on a day with some hands, and deals it out to them.
func Plan(j *rules.Judged, d calendar.Day, hands Hands) (Day, error) {
	plan := j.Day(d)
	p := newPricer(j, plan)
	best, err := p.plan(plan, hands, nil)
	if err != nil {
		return Day{}, err
	}
	away := p.stayAway(plan)
	if len(away) == 0 {
		return best, nil
	}
	left, err := newPricer(j, plan).plan(plan, hands, away)
	if err != nil {
		return Day{}, err
	}
	if left.hardWaits() < best.hardWaits() || left.hardWaits() == best.hardWaits() && left.Loss < best.Loss {
		best = left
	}
	best.Exact = len(best.Waits) == 0
	return best, nil
}

// plan is the best day on which some work is held back. What is dealt out and cannot be so
// is held back too, and the day chosen anew.
func (p *pricer) plan(plan rules.DayPlan, hands Hands, held []asked) (Day, error) {
	for {
		work, rounds := p.workOf(plan, held)
		outs, exact, err := p.choose(work, rounds, hands)
		if err != nil {
			return Day{}, err
		}
		if more := p.tied(outs, work, rounds); len(more) > 0 {
			held = slices.Concat(held, more)
			continue
		}
		day := Day{On: plan.Day, Next: plan.Next, Exact: exact, Last: hands.last()}
		day.Sheets = sheets(outs, work, rounds)
		p.wait(&day, outs, work, rounds)
		return day, nil
	}
}

// choose chooses what is done of some work, and deals it out.
func (p *pricer) choose(work [][]Work, rounds []round, hands Hands) (outs []outing, exact bool, err error) {
	o := outings{rounds: rounds, work: work}
	o.jobs.Teams, hands = hands.manned()
	o.jobs.of = make([][]int, len(rounds))
	for i, r := range rounds {
		s := hands.at(r, p.view.Yard(r.yard).Drive)
		if r.load || slices.ContainsFunc(work[i], func(w Work) bool { return w.Task.Findings[0].Emergency() }) {
			s.Not = hands.later(o.jobs.Teams, s.Far)
		}
		for _, w := range work[i] {
			s.Jobs = append(s.Jobs, Job{w.Minutes, w.Price.Queens, w.Hard || w.first})
		}
		o.sites = append(o.sites, s)
		s.Jobs, o.jobs.of[i] = bundled(work[i])
		o.jobs.Sites = append(o.jobs.Sites, s)
	}
	choice, err := Best(o.jobs.Problem)
	if err != nil {
		return nil, false, err
	}
	for i, teams := range choice.Team {
		choice.Team[i] = unbundled(teams, o.jobs.of[i])
	}
	o.chosen = choice.Team
	outs, whole := deal(hands, o)
	return outs, choice.Exact && whole, nil
}

// hardWaits is how much with a hard end waits.
func (d Day) hardWaits() (n int) {
	for _, w := range d.Waits {
		if w.Hard {
			n++
		}
	}
	return n
}

// wait sums what waits of a day's work, dearest first.
func (p *pricer) wait(day *Day, outs []outing, work [][]Work, rounds []round) {
	for i, r := range rounds {
		for k, w := range work[i] {
			if w.Hard {
				day.Must += w.Minutes
			}
			if teamAt(outs, i, k) == 0 {
				day.Waits = append(day.Waits, w)
				if !r.dusk.IsZero() && !day.Last.IsZero() {
					day.Over += w.Minutes
				}
			}
		}
	}
	for _, w := range p.held {
		if w.Hard {
			day.Must += w.Minutes
		}
		day.Waits = append(day.Waits, w)
	}
	day.Exact = day.Exact || len(day.Waits) == 0
	p.asGiven(day)
	p.leave(day.Waits)
	for i := range day.Waits {
		w := &day.Waits[i]
		w.Price = p.of(w.Task, w.Of)
		day.Loss += w.Price.Queens
	}
	slices.SortStableFunc(day.Waits, func(a, b Work) int { return cmp.Compare(b.Price.Queens, a.Price.Queens) })
}

// round is one way to a yard and back: what waits for dusk there takes a second one.
type round struct {
	yard book.YardID
	dusk time.Time
	load bool // at home, before the way to robbers
	last bool // at home, behind the catch of what is handed over
}

// at is the site of a round: what waits for dusk is done by those who are free so late,
// the way home within their time. Where several could go, it is as much work as those
// have time for who have most of it.
func (h Hands) at(r round, far float64) Site {
	s := Site{Far: far}
	if r.dusk.IsZero() {
		for i := range h {
			s.Not = append(s.Not, h.tooFar(i, far))
		}
		return s
	}
	left := make([]float64, len(h)) // minutes of work at the site, by team
	for i, team := range h {
		least := math.Inf(1) // who shares a van comes home with it
		for _, hand := range team {
			least = min(least, hand.after(r.dusk)-far)
		}
		left[i] = max(0, least) * float64(len(team))
		s.Most = max(s.Most, left[i])
	}
	for i, minutes := range left {
		s.Not = append(s.Not, minutes == 0 || minutes < s.Most || h.tooFar(i, far))
	}
	return s
}

// tooFar tells whether a team has no van for a way.
func (h Hands) tooFar(team int, far float64) bool { return far > 0 && h[team][0].walks }

// later are the teams that do not go where robbers are: they set out when another one
// that has time for the way is there already.
func (h Hands) later(teams []Team, far float64) []bool {
	var first time.Time
	may := func(i int) bool {
		_, each := teams[i].riders(2 * far)
		return each > 0 && !h.tooFar(i, far)
	}
	for i := range h {
		if at := start(h[i]); may(i) && (first.IsZero() || at.Before(first)) {
			first = at
		}
	}
	not := make([]bool, len(h))
	for i := range h {
		not[i] = h.tooFar(i, far) || may(i) && start(h[i]).After(first)
	}
	return not
}

// workOf is the work of a plan, a piece for every nuc, by round in the order of the
// route; what is held back waits.
func (p *pricer) workOf(plan rules.DayPlan, held []asked) (work [][]Work, rounds []round) {
	p.held = nil
	for _, stop := range plan.Stops {
		r := round{stop.Yard, stop.Dusk, stop.Load, stop.Last}
		i := slices.Index(rounds, r)
		if i < 0 {
			i = len(rounds)
			rounds, work = append(rounds, r), append(work, nil)
		}
		for _, t := range stop.Tasks {
			for _, s := range t.Of {
				w := Work{Task: t, Of: s, Minutes: t.Minutes / float64(len(t.Of)), Price: p.of(t, s), Hard: p.hard(t, s)}
				w.first = t.Act == rules.ActCollectCells && p.heaps[batchOf(t)].far
				if slices.Contains(held, w.asked()) {
					p.held = append(p.held, w)
				} else {
					work[i] = append(work[i], w)
				}
			}
		}
	}
	return work, rounds
}

// deal says who of each team does what, by the clock, and whether nothing better can be
// done; of those who walk each by himself nobody knows. What a team has no time for waits;
// chosen says so then.
func deal(hands Hands, o outings) (all []outing, whole bool) {
	whole = true
	for i, people := range hands {
		o.people, o.team = people, i+1
		out := o.best()
		for r, by := range out.by {
			for k, who := range by {
				switch {
				case who > 0:
					o.chosen[r][k] = i + 1
				case o.chosen[r][k] == i+1:
					o.chosen[r][k] = 0
				}
			}
		}
		whole = whole && out.whole && (len(hands) == 1 || !people[0].walks)
		all = append(all, out)
	}
	return all, whole
}

// sheets are the days of all people, those of a team who do not ride as teams of their own.
func sheets(outs []outing, work [][]Work, rounds []round) (all []Sheet) {
	alone := len(outs)
	for team, out := range outs {
		setOut(out.people[:out.ride])
		for i, h := range out.people {
			if i >= out.ride || out.drive == 0 {
				h = h.byHimself()
			}
			s := Sheet{Hand: h, Van: h.van, Team: team + 1}
			if i < out.ride {
				s.Driving = out.drive
			} else {
				alone++
				s.Team = alone
			}
			for r, by := range out.by {
				s.visit(rounds[r], doneBy(work[r], by, i+1))
			}
			all = append(all, s)
		}
	}
	return all
}

func doneBy(work []Work, by []int, who int) (done []Work) {
	for i, w := range work {
		if by[i] == who {
			done = append(done, w)
		}
	}
	return done
}

// visit writes down what somebody does in a round.
func (s *Sheet) visit(r round, done []Work) {
	if len(done) == 0 {
		return
	}
	s.Visits = append(s.Visits, Visit{Yard: r.yard, Dusk: r.dusk, Work: done})
	for _, w := range done {
		s.Working += w.Minutes
	}
}
