package state_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// TestLossesAreRounded: the cells that waiting costs are said to the nearest whole
// one, and a loss under half a cell is none.
func TestLossesAreRounded(t *testing.T) {
	w := start(t)
	up, down, none := 0, 0, 0
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
				n := math.Round(l.Lost)
				if n == 0 {
					none++
					continue
				}
				if n > l.Lost {
					up++
				} else {
					down++
				}
				want = append(want, fmt.Sprintf("%.0f cell", n))
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
	if up == 0 || down == 0 || none == 0 {
		t.Errorf("%d losses rounded up, %d down, %d to none: want some of each", up, down, none)
	}
}
