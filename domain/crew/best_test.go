package crew

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func drawn(t *rapid.T, teams int) Problem {
	var p Problem
	for range rapid.IntRange(1, 3).Draw(t, "sites") {
		s := Site{Far: float64(rapid.IntRange(0, 6).Draw(t, "far"))}
		for range rapid.IntRange(0, 3).Draw(t, "jobs") {
			s.Jobs = append(s.Jobs, Job{
				Minutes: float64(rapid.IntRange(1, 20).Draw(t, "halves")) / 2, Loss: float64(rapid.IntRange(0, 9).Draw(t, "loss")) / 10,
				Hard: rapid.IntRange(0, 4).Draw(t, "hard") == 0,
			})
		}
		if rapid.IntRange(0, 3).Draw(t, "at an hour") == 0 {
			s.Most = float64(rapid.IntRange(0, 20).Draw(t, "most")) / 2
			for range teams {
				s.Not = append(s.Not, rapid.Bool().Draw(t, "cannot"))
			}
		}
		p.Sites = append(p.Sites, s)
	}
	for range teams {
		p.Teams = append(p.Teams, Team{Minutes: []float64{float64(rapid.IntRange(0, 40).Draw(t, "minutes")), float64(rapid.IntRange(0, 20).Draw(t, "second"))}[:rapid.IntRange(1, 2).Draw(t, "people")]})
	}
	return p
}

// saved is what a choice saves, and whether the times hold; reckoned from the
// problem alone.
func saved(p Problem, team [][]int) (w worth, holds bool) {
	for k, t := range p.Teams {
		var work, drive float64
		for i, s := range p.Sites {
			there, here := false, 0.0
			for j, job := range s.Jobs {
				if team[i][j] == k+1 {
					there = true
					here += job.Minutes
					w = w.plus(worthOf(job))
				}
			}
			work += here
			if there && (len(s.Not) > k && s.Not[k] || s.Most > 0 && here > s.Most+1e-9) {
				return w, false
			}
			if there {
				drive += 2 * s.Far
			}
		}
		free := 0.0 // of any company of the team, all of whom are home with the first of them
		for _, least := range t.Minutes {
			n := 0.0
			for _, m := range t.Minutes {
				if m >= least {
					n++
				}
			}
			free = max(free, n*(least-drive))
		}
		if work > free+1e-9 {
			return w, false
		}
	}
	return w, true
}

// oneTeamAYard tells whether each yard is visited by one team at most.
func oneTeamAYard(team [][]int) bool {
	for _, jobs := range team {
		seen := 0
		for _, k := range jobs {
			if k > 0 && seen > 0 && k != seen {
				return false
			}
			seen = max(seen, k)
		}
	}
	return true
}

func every(p Problem, tell func([][]int)) {
	team := make([][]int, len(p.Sites))
	for i, s := range p.Sites {
		team[i] = make([]int, len(s.Jobs))
	}
	var try func(i, j int)
	try = func(i, j int) {
		if i == len(p.Sites) {
			tell(team)
			return
		}
		if j == len(p.Sites[i].Jobs) {
			try(i+1, 0)
			return
		}
		for k := 0; k <= len(p.Teams); k++ {
			team[i][j] = k
			try(i, j+1)
		}
		team[i][j] = 0
	}
	try(0, 0)
}

func checkAgainstAll(t *rapid.T, p Problem) {
	got, err := Best(p)
	if err != nil {
		t.Fatal(err)
	}
	is, holds := saved(p, got.Team)
	if !holds || !oneTeamAYard(got.Team) || !got.Exact {
		t.Fatalf("chosen %v does not hold in %+v", got.Team, p)
	}
	var best worth
	every(p, func(team [][]int) {
		if w, holds := saved(p, team); holds && oneTeamAYard(team) && w.compare(best) > 0 {
			best = w
		}
	})
	if math.Abs(is.hard-best.hard)+math.Abs(is.loss-best.loss) > 1e-6 {
		t.Fatalf("saves %+v, the best of all %+v", is, best)
	}
}

func TestBestAgainstEveryChoice(t *testing.T) {
	t.Run("one team", func(t *testing.T) {
		rapid.Check(t, func(t *rapid.T) { checkAgainstAll(t, drawn(t, 1)) })
	})
	t.Run("two teams", func(t *testing.T) {
		rapid.Check(t, func(t *rapid.T) {
			p := drawn(t, 2)
			for i := range p.Sites { // three to the ninth choices are enough
				p.Sites[i].Jobs = p.Sites[i].Jobs[:min(2, len(p.Sites[i].Jobs))]
			}
			checkAgainstAll(t, p)
		})
	})
}

// One team over many yards is exact too, by another way of reckoning, whatever time its
// people have.
func TestInTurnIsTheSameForOneTeam(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, 1)
		c := chooser{p: p}
		for _, s := range p.Sites {
			c.choice.Team = append(c.choice.Team, make([]int, len(s.Jobs)))
		}
		c.most = c.steps(p.Teams[0], 0)
		c.weigh()
		c.inTurn()
		got, holds := saved(p, c.choice.Team)
		best, err := Best(p)
		if err != nil {
			t.Fatal(err)
		}
		want, _ := saved(p, best.Team)
		if !holds || got.compare(want) != 0 {
			t.Fatalf("in turn %+v, holds %v; at once %+v", got, holds, want)
		}
	})
}

func TestBestRefusesNonsense(t *testing.T) {
	for _, p := range []Problem{
		{Teams: []Team{{Minutes: []float64{-1}}}},
		{Teams: []Team{{Minutes: []float64{math.NaN()}}}},
		{Teams: []Team{{Minutes: []float64{1e9}}}},
		{Sites: []Site{{Far: -1}}},
		{Sites: []Site{{Jobs: []Job{{Minutes: math.NaN()}}}}},
		{Sites: []Site{{Jobs: []Job{{Loss: -1}}}}},
	} {
		if _, err := Best(p); err == nil {
			t.Errorf("%+v is taken", p)
		}
	}
}
