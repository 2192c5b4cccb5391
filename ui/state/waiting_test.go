package state_test

import (
	"math"
	"strings"
	"testing"
	"time"

	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// TestLossesAreRanges: the cells that waiting costs are said as on the late day, from
// how many to how many if the clock of the batch is off, and a loss under half a cell
// is none.
func TestLossesAreRanges(t *testing.T) {
	w := start(t)
	ranges := 0
	for h := range 30 {
		w.send(state.Ticked{Now: now.Add(time.Duration(h) * time.Hour)})
		r := w.Reading()
		for _, f := range r.Findings {
			id, ok := f.Of.Batch()
			late, isLate := r.Late(id)
			if !ok || !isLate || f.Rule != rules.CellsOut {
				continue
			}
			var want []string
			for _, l := range late.Losses {
				if !l.By.After(r.View.On()) {
					continue
				}
				lost := late.Lost(l.By)
				if lost.Low > l.Lost+1e-6 || l.Lost > lost.High+1e-6 {
					t.Errorf("%v lost is not within %v", l.Lost, lost)
				}
				if lost.High < 0.5 {
					continue
				}
				if math.Round(lost.Low) < math.Round(lost.High) {
					ranges++
				}
				want = append(want, lost.String()+" of ")
			}
			var got []string
			for _, c := range r.Waiting(f) {
				if strings.HasSuffix(c.What, " lost") {
					got = append(got, c.What)
				}
			}
			if len(got) != len(want) {
				t.Fatalf("%v, want %v", got, want)
			}
			for i := range want {
				if !strings.HasPrefix(got[i], want[i]) {
					t.Errorf("%d hours on %q, want %s", h, got[i], want[i])
				}
			}
		}
	}
	if ranges == 0 {
		t.Error("no loss is a range")
	}
}
