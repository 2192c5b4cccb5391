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
	Hard    bool  // it has a hard end before somebody can come again
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
	price := newPricer(j, plan)
	work, rounds := price.workOf(plan)
	var p Problem
	p.Teams, hands = hands.manned()
	for i, r := range rounds {
		s := hands.at(r, j.Course().View().Yard(r.yard).Drive)
		if r.load || slices.ContainsFunc(work[i], func(w Work) bool { return w.Task.Findings[0].Emergency() }) {
			s.Not = hands.later(p.Teams, s.Far)
		}
		for _, w := range work[i] {
			s.Jobs = append(s.Jobs, Job{w.Minutes, w.Price.Queens, w.Hard})
		}
		p.Sites = append(p.Sites, s)
	}
	choice, err := Best(p)
	if err != nil {
		return Day{}, err
	}
	day := Day{On: d, Next: plan.Soon, Exact: choice.Exact, Last: hands.last()}
	for i, r := range rounds {
		for k, w := range work[i] {
			if w.Hard {
				day.Must += w.Minutes
			}
			if choice.Team[i][k] == 0 {
				day.Waits = append(day.Waits, w)
				if !r.dusk.IsZero() && !day.Last.IsZero() {
					day.Over += w.Minutes
				}
			}
		}
	}
	price.leave(day.Waits)
	for i := range day.Waits {
		w := &day.Waits[i]
		w.Price = price.of(w.Task, w.Of)
		day.Loss += w.Price.Queens
	}
	slices.SortStableFunc(day.Waits, func(a, b Work) int { return cmp.Compare(b.Price.Queens, a.Price.Queens) })
	day.Sheets = sheets(hands, p, choice, work, rounds)
	return day, nil
}

// round is one way to a yard and back: what waits for dusk there takes a second one.
type round struct {
	yard book.YardID
	dusk time.Time
	load bool // at home, before the way to robbers
}

// at is the site of a round: what waits for dusk is done by those who are free so late,
// the way home within their time. Where several could go, it is as much work as those
// have time for who have most of it.
func (h Hands) at(r round, far float64) Site {
	s := Site{Far: far}
	if r.dusk.IsZero() {
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
	for _, minutes := range left {
		s.Not = append(s.Not, minutes == 0 || minutes < s.Most)
	}
	return s
}

// later are the teams that do not go where robbers are: they set out when another one
// that has time for the way is there already.
func (h Hands) later(teams []Team, far float64) []bool {
	var first time.Time
	may := func(i int) bool {
		_, each := teams[i].riders(2 * far)
		return each > 0
	}
	for i := range h {
		if at := start(h[i]); may(i) && (first.IsZero() || at.Before(first)) {
			first = at
		}
	}
	not := make([]bool, len(h))
	for i := range h {
		not[i] = may(i) && start(h[i]).After(first)
	}
	return not
}

// workOf is the work of a plan, a piece for every nuc, by round in the order of the
// route.
func (p *pricer) workOf(plan rules.DayPlan) (work [][]Work, rounds []round) {
	for _, stop := range plan.Stops {
		r := round{stop.Yard, stop.Dusk, stop.Load}
		i := slices.Index(rounds, r)
		if i < 0 {
			i = len(rounds)
			rounds, work = append(rounds, r), append(work, nil)
		}
		for _, t := range stop.Tasks {
			for _, s := range t.Of {
				work[i] = append(work[i], Work{
					Task: t, Of: s, Minutes: t.Minutes / float64(len(t.Of)), Price: p.of(t, s), Hard: p.hard(t, s),
				})
			}
		}
	}
	return work, rounds
}

// sheets deals the work of a team out to those of its people who ride: each walks a
// part of every yard.
func sheets(hands Hands, p Problem, choice Choice, work [][]Work, rounds []round) (all []Sheet) {
	for team, people := range hands {
		first := len(all)
		for _, h := range people {
			all = append(all, Sheet{Hand: h, Van: h.van, Team: team + 1})
		}
		drive := 0.0
		for i := range rounds {
			if len(chosen(work[i], choice.Team[i], team+1)) > 0 {
				drive += 2 * p.Sites[i].Far
			}
		}
		riders, _ := p.Teams[team].riders(drive)
		mine := all[first : first+riders]
		for i := range mine {
			mine[i].Driving = drive
		}
		for i, r := range rounds {
			share(chosen(work[i], choice.Team[i], team+1), r, mine)
		}
	}
	return all
}

func chosen(work []Work, by []int, team int) (done []Work) {
	for i, w := range work {
		if by[i] == team {
			done = append(done, w)
		}
	}
	return done
}

// share parts a round's work, in walking order, among people who are there as long as
// each other. No piece of work is cut in two, so that one may be at it half a piece
// longer.
func share(done []Work, r round, people []Sheet) {
	var all float64
	for _, w := range done {
		all += w.Minutes
	}
	i, gone := 0, 0.0
	for k := range people {
		until := all * float64(k+1) / float64(len(people))
		visit := Visit{Yard: r.yard, Dusk: r.dusk}
		for ; i < len(done) && (k == len(people)-1 || gone+done[i].Minutes/2 < until); i++ {
			visit.Work = append(visit.Work, done[i])
			gone += done[i].Minutes
			people[k].Working += done[i].Minutes
		}
		if len(visit.Work) > 0 {
			people[k].Visits = append(people[k].Visits, visit)
		}
	}
}
