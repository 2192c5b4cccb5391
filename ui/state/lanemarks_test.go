package state_test

import (
	"slices"
	"testing"

	"lidmark/domain/rules"
)

// TestLanesSayWhatTheRulesFind: on many days of the demo season every last hour of
// a batch stands on its lane, and a clash on the lanes of both batches.
func TestLanesSayWhatTheRulesFind(t *testing.T) {
	s, hard, clashes := open(t), 0, 0
	for d := today - 40; d <= today+10; d += 2 {
		s.Day = d
		r := s.Reading()
		for _, f := range r.Findings {
			clash := f.Rule == rules.SameNucs || f.Rule == rules.SameFinisher || f.Rule == rules.SameDay
			for _, b := range r.Batches() {
				sub := b.Batch.Subject()
				if f.By.IsZero() || f.Of != sub && !(clash && slices.Contains(f.Also, sub)) {
					continue
				}
				found := false
				for _, m := range r.LaneMarks(b.Batch) {
					found = found || m.At.Equal(f.By) && m.Clash == clash && m.Says != ""
				}
				if !found {
					t.Errorf("%v, batch %d: %q does not stand on its lane", d, b.Number, f.What)
				}
				if clash {
					clashes++
				} else if f.Hard {
					hard++
				}
			}
		}
	}
	if hard == 0 || clashes == 0 {
		t.Fatalf("%d hard deadlines, %d clashes: nothing was tried", hard, clashes)
	}
}
