package crew

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// bundles are a day's work with what is kept or waits together as one job of its round.
type bundles struct {
	Problem
	of [][]int // by round and piece of work: its job
}

// bundled are the jobs of a round: a planned graft and what is still to be made ready for
// it are one job, kept or waiting together. Of is the job of each piece of work.
func bundled(work []Work) (jobs []Job, of []int) {
	grafts := map[book.Subject]int{}
	for _, w := range work {
		if w.Task.Act == rules.ActGraft {
			grafts[w.Of] = -1
		}
	}
	for _, w := range work {
		i, grafted := grafts[w.Of]
		if !grafted || !beforeGraft(w) {
			i = -1
		}
		if i < 0 {
			i = len(jobs)
			jobs = append(jobs, Job{})
			if grafted && beforeGraft(w) {
				grafts[w.Of] = i
			}
		}
		jobs[i] = jobs[i].with(w)
		of = append(of, i)
	}
	return jobs, of
}

// with is a job and one piece of work more.
func (j Job) with(w Work) Job {
	minutes := float64(stepsUp(w.Minutes)) / step
	return Job{j.Minutes + minutes, j.Loss + w.Price.Queens, j.Hard || w.Hard}
}

// beforeGraft tells whether a piece of work is a graft, or has to be done before it: without larvae,
// or a starter to graft into, there is none. It is no less a graft where the starter is fed too late,
// and drones are wanted only later.
func beforeGraft(w Work) bool {
	if w.Task.Act == rules.ActGraft {
		return true
	}
	return slices.ContainsFunc(w.Task.Findings, func(f rules.Finding) bool {
		ready, ok := rules.Readies(f)
		return ok && f.Of == w.Of && (ready.Step == book.BreederConfined || ready.Step == book.StarterSetUp)
	})
}

// unbundled are the teams of all pieces of work by those of the jobs.
func unbundled(teams, of []int) []int {
	all := make([]int, len(of))
	for k, job := range of {
		all[k] = teams[job]
	}
	return all
}
