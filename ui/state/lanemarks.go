package state

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// LaneMark is what stands on the lane of a batch at an instant: the last hour or
// day of something, or another batch that wants the same.
type LaneMark struct {
	At    time.Time
	Hard  bool // past it queens are lost
	Clash bool // another batch wants the same nucs, colony or day
	Says  string
}

// LaneMarks are the marks of a batch in the order of time.
func (r *Reading) LaneMarks(batch book.BatchID) []LaneMark { return r.marks(batch) }

func (r *Reading) readMarks(batch book.BatchID) (all []LaneMark) {
	me := batch.Subject()
	for _, f := range r.Findings {
		clash := f.Rule == rules.SameNucs || f.Rule == rules.SameFinisher || f.Rule == rules.SameDay
		if f.By.IsZero() || f.Of != me && !(clash && slices.Contains(f.Also, me)) {
			continue
		}
		all = append(all, LaneMark{At: f.By, Hard: f.Hard && !clash, Clash: clash, Says: r.markSays(f, clash)})
	}
	slices.SortStableFunc(all, func(a, b LaneMark) int { return a.At.Compare(b.At) })
	return all
}

// markSays is a mark in one line.
func (r *Reading) markSays(f rules.Finding, clash bool) string {
	if clash {
		return f.What + ": " + f.Why + ". " + f.Do
	}
	do := f.Do
	if do == "" {
		do = f.What
	}
	by := f.By.In(r.View.Zone())
	if f.Hard {
		return do + ", by " + by.Format("Mon 2 Jan 15:04")
	}
	return do + ", by " + by.Format("Mon 2 Jan")
}
