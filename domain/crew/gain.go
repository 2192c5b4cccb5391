package crew

import (
	"cmp"
	"math"
	"slices"
)

// step is the grain of time: half a minute.
const step = 2 // steps a minute

func stepsUp(minutes float64) int   { return int(math.Ceil(minutes*step - 1e-9)) }
func stepsDown(minutes float64) int { return int(minutes*step + 1e-9) }

// worth is what is saved by doing some jobs: those with a hard end weigh before any
// others, so they are counted apart.
type worth struct{ hard, loss float64 }

func (w worth) plus(v worth) worth { return worth{w.hard + v.hard, w.loss + v.loss} }

func (w worth) compare(v worth) int {
	return cmp.Or(compareAbout(w.hard, v.hard), compareAbout(w.loss, v.loss))
}

// compareAbout takes sums that differ by rounding alone as equal.
func compareAbout(a, b float64) int {
	if math.Abs(a-b) < 1e-9 {
		return 0
	}
	return cmp.Compare(a, b)
}

func worthOf(j Job) worth {
	if j.Hard {
		return worth{hard: j.Loss + hardAtLeast}
	}
	return worth{loss: j.Loss}
}

// hardAtLeast is what keeping a hard job counts at least, so that one whose loss is
// nothing is still kept before any other.
const hardAtLeast = 1e-3

// yardGain is what the best use of so many steps in a yard saves, and which jobs
// that takes: all jobs one after the other, each done or not.
type yardGain struct {
	jobs []Job
	cost []int
	best []worth  // by steps; never falling
	took [][]bool // by job and steps
}

func gainOf(jobs []Job, most int) *yardGain {
	g := &yardGain{jobs: jobs}
	all := 0
	for _, j := range jobs {
		g.cost = append(g.cost, stepsUp(j.Minutes))
		all += g.cost[len(g.cost)-1]
	}
	g.best = make([]worth, min(all, most)+1)
	g.took = make([][]bool, len(jobs))
	for i, j := range jobs {
		g.took[i] = make([]bool, len(g.best))
		w := worthOf(j)
		for s := len(g.best) - 1; s >= g.cost[i]; s-- {
			if with := g.best[s-g.cost[i]].plus(w); with.compare(g.best[s]) > 0 {
				g.best[s], g.took[i][s] = with, true
			}
		}
	}
	return g
}

// jobsAt are the jobs of the best use of so many steps.
func (g *yardGain) jobsAt(steps int) (done []int) {
	s := min(steps, len(g.best)-1)
	for i := len(g.jobs) - 1; i >= 0; i-- {
		if g.took[i][s] {
			done = append(done, i)
			s -= g.cost[i]
		}
	}
	slices.Reverse(done)
	return done
}

// joint is what steps shared among several yards save: a yard more than another
// joint has, and how many of the steps it takes.
type joint struct {
	best  []worth
	yard  *yardGain
	site  int
	takes []int // steps of the yard, by steps
	rest  *joint
}

var nothing = &joint{best: []worth{{}}}

// with is the joint of one yard more, up to so many steps.
func (j *joint) with(site int, g *yardGain, most int) *joint {
	n := min(len(j.best)+len(g.best)-1, most+1)
	both := &joint{best: make([]worth, n), yard: g, site: site, takes: make([]int, n), rest: j}
	for s := range both.best {
		both.best[s] = j.at(s).plus(g.best[0]) // what takes no time is done by who is there
		for t := 1; t <= min(s, len(g.best)-1); t++ {
			if w := j.at(s - t).plus(g.best[t]); w.compare(both.best[s]) > 0 {
				both.best[s], both.takes[s] = w, t
			}
		}
	}
	return both
}

func (j *joint) at(steps int) worth { return j.best[min(steps, len(j.best)-1)] }

// each tells of every yard how many of so many steps it gets.
func (j *joint) each(steps int, tell func(site int, g *yardGain, steps int)) {
	for ; j.yard != nil; j = j.rest {
		s := min(steps, len(j.best)-1)
		tell(j.site, j.yard, j.takes[s])
		steps = s - j.takes[s]
	}
}
