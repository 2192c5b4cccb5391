package crew

import (
	"cmp"
	"fmt"
	"slices"
)

// Job is one piece of work that is done or waits.
type Job struct {
	Minutes float64 // of one person, rounded up to half a minute
	Loss    float64 // in queens, of letting it wait
	Hard    bool    // it has a hard end before somebody can come again: kept before all others
}

// Site is a yard with its jobs of one round, and how many minutes it is away from home.
// What is done there at dusk is a round of its own, and is driven to again.
type Site struct {
	Far  float64
	Jobs []Job
	Most float64 // minutes of work there, all who come together; 0: as much as they have time for
	Not  []bool  // by team: those who cannot be there at that hour; none: all can
}

// may tells whether a team can be at the site at its hour.
func (s Site) may(team int) bool { return team >= len(s.Not) || !s.Not[team] }

// Team is who drives together: the minutes each of them has, driving included.
// They work a yard side by side, and who shares a van comes home with it: all are away
// as long as the one of them who has least time.
type Team struct{ Minutes []float64 }

// riders are how many of a team ride, those with most time, and how long each of them
// works when they drive so many minutes: as many as together do most. Who has much less
// time than the others would call them home too early, and stays there.
func (t Team) riders(drive float64) (n int, each float64) {
	sorted := slices.Clone(t.Minutes)
	slices.SortFunc(sorted, func(a, b float64) int { return cmp.Compare(b, a) })
	for i, m := range sorted {
		if work := m - drive; float64(i+1)*work > float64(n)*each+1e-9 {
			n, each = i+1, work
		}
	}
	return n, each
}

// Problem is a day's work and who is there for it.
type Problem struct {
	Sites []Site
	Teams []Team
}

// Choice is the best that can be done: the team of every job, counted from 1 as the
// problem has them, and 0 for what waits; a site is visited by one team. Exact tells
// that no other choice is better; with several teams and more than [MostSites]
// sites with work one team after the other takes its best, which is exact for a
// single team.
type Choice struct {
	Team  [][]int // by site and job
	Exact bool
}

// MostSites is up to how many yards are dealt out among several teams exactly.
const MostSites = 6

// mostMinutes is the longest a team can have, all its people together: a fault of
// typing lies beyond.
const mostMinutes = 60000

func (p Problem) check() error {
	for i, t := range p.Teams {
		var sum float64
		for _, m := range t.Minutes {
			if !(m >= 0) {
				return fmt.Errorf("team %d: %v minutes, give 0 or more", i+1, m)
			}
			sum += m
		}
		if sum > mostMinutes {
			return fmt.Errorf("team %d: %v minutes in all, give at most %d", i+1, sum, mostMinutes)
		}
	}
	for i, s := range p.Sites {
		if !(s.Far >= 0) {
			return fmt.Errorf("yard %d: %v minutes away, give 0 or more", i+1, s.Far)
		}
		for j, job := range s.Jobs {
			if !(job.Minutes >= 0) || !(job.Loss >= 0) {
				return fmt.Errorf("yard %d, job %d: %v minutes, loss %v: give 0 or more", i+1, j+1, job.Minutes, job.Loss)
			}
		}
	}
	return nil
}
