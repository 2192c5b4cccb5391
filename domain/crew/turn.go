package crew

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

// visits is the best that can be done in the first yards, by the steps of driving
// and work that it takes: the last of them is visited or passed over.
type visits struct {
	best  []worth
	takes []int // steps of work in the last of the yards; -1: passed over
}

// visit chooses the yards and jobs of one team. Its people have different times:
// a way that is driven takes as many steps as there are people.
func (c *chooser) visit(team int, t Team, free []bool) {
	all := c.steps(t, 0)
	tables := make([]visits, len(c.sites)+1)
	tables[0] = visits{best: make([]worth, all+1)}
	for i, g := range c.gains {
		was := tables[i].best
		next := visits{append([]worth(nil), was...), make([]int, all+1)}
		way := c.way(t, i)
		for s := range next.takes {
			next.takes[s] = -1
			for w := 0; free[i] && w < len(g.best) && s-way-w >= 0; w++ {
				if now := was[s-way-w].plus(g.best[w]); now.compare(next.best[s]) > 0 {
					next.best[s], next.takes[s] = now, w
				}
			}
		}
		tables[i+1] = next
	}
	c.walkBack(team, t, tables, free)
}

func (c *chooser) way(t Team, i int) int {
	return stepsUp(2*c.p.Sites[c.sites[i]].Far) * len(t.Minutes)
}

// walkBack reads the chosen yards off the tables.
func (c *chooser) walkBack(team int, t Team, tables []visits, free []bool) {
	s := len(tables[0].best) - 1
	for i := len(c.sites) - 1; i >= 0; i-- {
		w := tables[i+1].takes[s]
		if w < 0 {
			continue
		}
		for _, job := range c.gains[i].jobsAt(w) {
			c.choice.Team[c.sites[i]][job] = team + 1
			c.choice.Minutes[team] += c.gains[i].jobs[job].Minutes
		}
		c.choice.Driving[team] += 2 * c.p.Sites[c.sites[i]].Far * float64(len(t.Minutes))
		free[i] = false
		s -= w + c.way(t, i)
	}
}
