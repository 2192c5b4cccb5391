package crew

import "math/bits"

// Best chooses what is done. It refuses a problem that is not well formed, with the
// place.
func Best(p Problem) (Choice, error) {
	if err := p.check(); err != nil {
		return Choice{}, err
	}
	c := chooser{p: p, choice: Choice{Exact: true}}
	for _, s := range p.Sites {
		c.choice.Team = append(c.choice.Team, make([]int, len(s.Jobs)))
	}
	c.run()
	return c.choice, nil
}

type chooser struct {
	p      Problem
	sites  []int // with work
	gains  []*yardGain
	choice Choice
	joints map[uint]*joint // of sets of sites
	most   int             // steps any team has
}

func (c *chooser) run() {
	for _, t := range c.p.Teams {
		c.most = max(c.most, c.steps(t, 0))
	}
	c.weigh()
	switch {
	case len(c.p.Teams) == 0:
	case len(c.sites) <= MostSites:
		c.joints = map[uint]*joint{0: nothing}
		c.deal()
	default:
		c.choice.Exact = len(c.p.Teams) == 1
		c.inTurn()
	}
}

// weigh reckons what can be saved in each site with work, by the steps that it takes.
func (c *chooser) weigh() {
	for i, s := range c.p.Sites {
		if len(s.Jobs) == 0 {
			continue
		}
		most := c.most
		if s.Most > 0 {
			most = min(most, stepsDown(s.Most))
		}
		c.sites, c.gains = append(c.sites, i), append(c.gains, gainOf(s.Jobs, most))
	}
}

// steps is the time a team has for work, all who ride together, when each drives so
// many minutes.
func (c *chooser) steps(t Team, drive float64) int {
	n, each := t.riders(drive)
	return stepsDown(float64(n) * each)
}

// drive is how long one person drives to a set of yards and home: to each and back.
func (c *chooser) drive(set uint) (minutes float64) {
	for rest := set; rest != 0; rest &= rest - 1 {
		minutes += 2 * c.p.Sites[c.sites[bits.TrailingZeros(rest)]].Far
	}
	return minutes
}

// joint is what the yards of a set save by the steps for all of them.
func (c *chooser) joint(set uint) *joint {
	if j := c.joints[set]; j != nil {
		return j
	}
	last := bits.Len(set) - 1
	j := c.joint(set&^(1<<last)).with(c.sites[last], c.gains[last], c.most)
	c.joints[set] = j
	return j
}

// deal gives every team a set of yards of its own, in the best of all ways: of the
// sets that are left for the teams after one, each is tried once.
func (c *chooser) deal() {
	sets := uint(1) << len(c.sites)
	best := make([]worth, sets) // what the teams so far save in the yards of a set
	took := make([][]uint, len(c.p.Teams))
	for i, t := range c.p.Teams {
		next := make([]worth, sets)
		took[i] = make([]uint, sets)
		for set := range sets {
			next[set] = best[set]
			may := set & c.mayVisit(i)
			for part := -may & may; part != 0; part = (part - may) & may { // a later team takes as few as will do
				if w := best[set&^part].plus(c.alone(t, part)); w.compare(next[set]) > 0 {
					next[set], took[i][set] = w, part
				}
			}
		}
		best = next
	}
	set := sets - 1
	for i := len(c.p.Teams) - 1; i >= 0; i-- {
		part := took[i][set]
		c.take(i, c.joint(part), c.drive(part))
		set &^= part
	}
}

// mayVisit are the yards that a team can be at at their hours.
func (c *chooser) mayVisit(team int) (set uint) {
	for i, site := range c.sites {
		if c.p.Sites[site].may(team) {
			set |= 1 << i
		}
	}
	return set
}

// alone is what a team saves that visits all yards of a set.
func (c *chooser) alone(t Team, set uint) worth {
	steps := c.steps(t, c.drive(set))
	if steps == 0 {
		return worth{}
	}
	return c.joint(set).at(steps)
}

// take writes down what a team does that drives so many minutes.
func (c *chooser) take(team int, j *joint, drive float64) {
	t := c.p.Teams[team]
	j.each(c.steps(t, drive), func(site int, g *yardGain, steps int) {
		for _, job := range g.jobsAt(steps) {
			c.choice.Team[site][job] = team + 1
		}
	})
}
