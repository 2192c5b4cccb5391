package crew

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// roundsDrawn are rounds of work, of which some is a graft and what is made ready for it.
func roundsDrawn(t *rapid.T) outings {
	var o outings
	far := rapid.IntRange(0, 6).Draw(t, "far")
	for i := range rapid.IntRange(1, 2).Draw(t, "rounds") {
		var work []Work
		var jobs []Job
		for k := range rapid.IntRange(0, 5).Draw(t, "pieces") {
			w := Work{
				Task: rules.Task{Act: rules.ActLookForEggs, Findings: []rules.Finding{{}}}, Of: booktest.Nuc(fmt.Sprint(i, k)).Subject(),
				Minutes: float64(rapid.IntRange(1, 20).Draw(t, "halves")) / 2, Price: Price{Queens: float64(rapid.IntRange(0, 9).Draw(t, "loss")) / 10},
				Hard: rapid.IntRange(0, 4).Draw(t, "hard") == 0,
			}
			if b := rapid.IntRange(0, 2).Draw(t, "graft"); b > 0 {
				w.Of, w.Task.Act = booktest.Batch(fmt.Sprint(i, b)).Subject(), rules.ActGraft
			}
			work, jobs = append(work, w), append(jobs, Job{w.Minutes, w.Price.Queens, w.Hard})
		}
		site := Site{Far: float64(i * far)}
		site.Jobs = jobs
		o.sites, o.rounds, o.work = append(o.sites, site), append(o.rounds, round{yard: booktest.Yard(fmt.Sprint(i))}), append(o.work, work)
		bundled, of := bundled(work)
		site.Jobs = bundled
		o.jobs.Sites, o.jobs.of = append(o.jobs.Sites, site), append(o.jobs.of, of)
	}
	return o
}

// dealt is who does what of some rounds, by round and piece, and what that saves.
func dealt(t *rapid.T, o outings, hands Hands) (outs []outing, saved worth) {
	var teams []Team
	teams, hands = hands.manned()
	o.jobs.Teams = teams
	choice, err := Best(o.jobs.Problem)
	if err != nil {
		t.Fatal(err)
	}
	o.chosen = nil
	for i, of := range o.jobs.of {
		o.chosen = append(o.chosen, unbundled(choice.Team[i], of))
	}
	outs, _ = deal(hands, o)
	for _, out := range outs {
		saved = saved.plus(out.saved)
	}
	return outs, saved
}

// However little time there is by the clock: what belongs together is done or waits together.
func TestWhatBelongsTogetherIsDoneOrWaitsTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := roundsDrawn(t)
		var hands Hands
		for range rapid.IntRange(1, 2).Draw(t, "vans") {
			var people []Hand
			for range rapid.IntRange(1, 3).Draw(t, "people") {
				people = append(people, Hand{Minutes: float64(rapid.IntRange(0, 60).Draw(t, "halves")) / 2})
			}
			hands = append(hands, people)
		}
		outs, _ := dealt(t, o, hands)
		for r, of := range o.jobs.of {
			done, all := map[int]int{}, map[int]int{}
			for k, job := range of {
				all[job]++
				for _, out := range outs {
					if out.by[r][k] > 0 {
						done[job]++
					}
				}
			}
			for job, n := range done {
				if n != all[job] {
					t.Fatalf("%d of %d pieces of job %d of round %d are done", n, all[job], job, r)
				}
			}
		}
	})
}

// Of one person's day no other choice saves more, of all in which what belongs together stays so.
func TestBundlesAgainstEveryChoice(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o, minutes := roundsDrawn(t), float64(rapid.IntRange(0, 80).Draw(t, "halves"))/2
		_, is := dealt(t, o, Hands{{{Minutes: minutes}}})
		var jobs []piece
		for r, site := range o.jobs.Sites {
			for k := range site.Jobs {
				jobs = append(jobs, piece{r, k})
			}
		}
		var best worth
		for set := range 1 << len(jobs) {
			var saves worth
			visited, takes := map[int]bool{}, 0.0
			for i, p := range jobs {
				if set>>i&1 == 0 {
					continue
				}
				site := o.jobs.Sites[p.round]
				if !visited[p.round] {
					visited[p.round], takes = true, takes+2*site.Far
				}
				takes += site.Jobs[p.at].Minutes
				saves = saves.plus(worthOf(site.Jobs[p.at]))
			}
			if takes <= minutes+1e-9 && saves.compare(best) > 0 {
				best = saves
			}
		}
		if is.compare(best) != 0 {
			t.Fatalf("saves %+v, the best of all %+v", is, best)
		}
	})
}
