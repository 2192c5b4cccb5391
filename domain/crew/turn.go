package crew

import (
	"cmp"
	"slices"
)

// inTurn lets one team after the other take its best of what is left: for a single
// team that is the best there is.
func (c *chooser) inTurn() {
	free := make([]bool, len(c.sites))
	for i := range free {
		free[i] = true
	}
	for team, t := range c.p.Teams {
		c.visit(team, t, free)
	}
}

// company is so many people who ride together, and the steps that all of them have,
// driving included.
type company struct{ people, steps int }

// companies are those that a team can be: the one, two … of its people with most time,
// each with the time of the last of them.
func (t Team) companies() (all []company) {
	sorted := slices.Clone(t.Minutes)
	slices.SortFunc(sorted, func(a, b float64) int { return cmp.Compare(b, a) })
	for i, m := range sorted {
		all = append(all, company{i + 1, stepsDown(float64(i+1) * m)})
	}
	return all
}

// visits is the best that can be done in the first yards, by the steps of driving
// and work that it takes: the last of them is visited or passed over.
type visits struct {
	best  []worth
	takes []int // steps of work in the last of the yards; -1: passed over
}

// visit chooses the yards and jobs of one team, as the best company that it can be.
func (c *chooser) visit(team int, t Team, free []bool) {
	var best company
	var tables []visits
	for _, now := range t.companies() {
		tried := c.tables(team, now, free)
		if tables == nil || last(tried).compare(last(tables)) > 0 {
			best, tables = now, tried
		}
	}
	if tables != nil {
		c.walkBack(team, best, tables, free)
	}
}

// last is what is saved with all steps in all yards.
func last(tables []visits) worth {
	best := tables[len(tables)-1].best
	return best[len(best)-1]
}

// tables are the best visits of a company by the yards it may go to: a way that is
// driven takes as many steps as there are people.
func (c *chooser) tables(team int, who company, free []bool) []visits {
	tables := make([]visits, len(c.sites)+1)
	tables[0] = visits{best: make([]worth, who.steps+1)}
	for i, g := range c.gains {
		was := tables[i].best
		next := visits{append([]worth(nil), was...), make([]int, who.steps+1)}
		way, may := c.way(who, i), free[i] && c.p.Sites[c.sites[i]].may(team)
		for s := range next.takes {
			next.takes[s] = -1
			for w := 0; may && w < len(g.best) && s-way-w >= 0; w++ {
				if now := was[s-way-w].plus(g.best[w]); now.compare(next.best[s]) > 0 {
					next.best[s], next.takes[s] = now, w
				}
			}
		}
		tables[i+1] = next
	}
	return tables
}

func (c *chooser) way(who company, i int) int {
	return stepsUp(2*c.p.Sites[c.sites[i]].Far) * who.people
}

// walkBack reads the chosen yards off the tables.
func (c *chooser) walkBack(team int, who company, tables []visits, free []bool) {
	s := len(tables[0].best) - 1
	for i := len(c.sites) - 1; i >= 0; i-- {
		w := tables[i+1].takes[s]
		if w < 0 {
			continue
		}
		for _, job := range c.gains[i].jobsAt(w) {
			c.choice.Team[c.sites[i]][job] = team + 1
		}
		free[i] = false
		s -= w + c.way(who, i)
	}
}
