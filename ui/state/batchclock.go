package state

import (
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// ClockStep is a step in the life of a batch: how many hours after the graft it
// comes, when that is, and what was seen of it.
type ClockStep struct {
	Word     string
	At, Till time.Time // by the calendar; Till is zero where it is one hour
	Spread   float64   // ± hours; 0 where none is told
	By       bool      // it is a last hour: "by"
	Hard     bool      // past it queens are lost
	Now      bool      // not a step, but the hour of the clock
	ByDay    bool      // it happens by daylight, on that day or later: no hour is told
	Seen     string    // what was counted or seen, and when
	Key      practice.Key
}

// Hours are those from the graft to a step.
func (c ClockStep) Hours(graft time.Time) float64 { return c.At.Sub(graft).Hours() }

// ClockOf are the steps of a batch in the order of time, with the hour of the
// clock among them.
func (r *Reading) ClockOf(b *book.Batch) []ClockStep {
	graft, emerges := b.At.Instant, r.Course.Emerges(b.Batch)
	clock, n := r.Course.Clock(b.Batch), r.Numbers()
	after := func(t time.Time, k practice.Key) time.Time { return t.Add(n.Duration(k)) }
	eggs := after(emerges, practice.FirstEggsNineInTenBy)
	steps := []ClockStep{
		{Word: "Graft", At: graft, Seen: r.grafted(b)},
		{Word: "Take", At: after(graft, practice.AcceptedCheck), Key: practice.AcceptedCheck, Seen: r.counted(b.Taken, "taken")},
		{Word: "Capped", At: after(graft, practice.GraftToCapped), Key: practice.GraftToCapped, Seen: r.counted(b.Capped, "capped")},
	}
	from, till := r.handsOff(b)
	steps = append(steps,
		ClockStep{Word: "Leave alone", At: from, Till: till},
		ClockStep{Word: "Given to nucs", At: clock.Hard(), By: true, Hard: b.Unplaced() > 0, Seen: r.given(b)},
		ClockStep{Word: "Emerge", At: emerges, Spread: n.Duration(practice.EmergenceSpread).Hours(), Key: practice.EmergenceSpread, Seen: r.emerged(b)},
		ClockStep{Word: "First mating flights", At: after(emerges, practice.FirstMatingFlightFrom), Key: practice.FirstMatingFlightFrom},
		ClockStep{Word: "Look for eggs from", At: after(emerges, practice.LookForEggsFrom), Key: practice.LookForEggsFrom},
		ClockStep{Word: "First eggs, nine in ten", At: eggs, Key: practice.FirstEggsNineInTenBy, Seen: r.laid(b)},
		ClockStep{Word: "Good brood", At: after(eggs, practice.EggToCappedWorkerBrood), Key: practice.EggToCappedWorkerBrood},
		ClockStep{Word: "Ready to hand over", At: after(eggs, practice.ReadyAfterFirstEgg), Key: practice.ReadyAfterFirstEgg},
		ClockStep{Word: "Too late if no eggs yet", At: after(emerges, practice.VirginTooLate), Key: practice.VirginTooLate},
	)
	for i := range steps { // from the flights on
		steps[i].ByDay = steps[i].At.After(emerges)
	}
	return withNow(steps, ClockStep{Word: r.nowWord(), At: r.View.On(), Now: true})
}

// nowWord names the hour that is read: now, or the day looked at.
func (r *Reading) nowWord() string {
	if r.UnderWay {
		return "Now"
	}
	return r.Day.Short()
}

// withNow are the steps by time, with one more. Which of them comes first is a
// matter of the keeper's numbers.
func withNow(steps []ClockStep, now ClockStep) []ClockStep {
	slices.SortStableFunc(steps, func(a, b ClockStep) int { return a.At.Compare(b.At) })
	at := len(steps)
	for i, c := range steps {
		if c.At.After(now.At) {
			at = i
			break
		}
	}
	all := append([]ClockStep{}, steps[:at]...)
	return append(append(all, now), steps[at:]...)
}

// Windows are the days of a batch, which agree with each other and with the hours of the
// people.
func (r *Reading) Windows(b *book.Batch) []bee.Window { return r.planner().Windows(b, r.View.Zone()) }

// BestOut is the instant by which the cells of a batch are best out.
func (r *Reading) BestOut(b *book.Batch) time.Time { return r.planner().BestOut(b, r.View.Zone()) }

// handsOff is the window in which the cells are left alone.
func (r *Reading) handsOff(b *book.Batch) (from, till time.Time) {
	zone := r.View.Zone()
	day, w := b.At.Day(zone), r.Windows(b)[bee.HandsOff-1]
	return (day + calendar.Day(w.From)).Start(zone), (day + calendar.Day(w.By+1)).Start(zone).Add(-time.Second)
}
