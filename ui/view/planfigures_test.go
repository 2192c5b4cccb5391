package view_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/plan"
	"lidmark/ui/state"
)

// One thing has one figure: ladder, chain, lane and promises say the same of how many
// emerge and how many are ready.
func TestAPlanSaysOneFigureOfOneThing(t *testing.T) {
	s := planning(inPlan(t, "plan it"), state.Resized{Width: 1920, Height: 1080})
	sheet, _ := s.PlanSheet()
	chain := sheet.Stages[0]
	emerged := chain[slices.IndexFunc(chain, func(st plan.Stage) bool { return st.Link == plan.EmergedOfRipe })]
	ready := chain[len(chain)-1]
	var said []string
	for _, w := range texts(t, window(s), s.Size()) {
		said = append(said, w.Text.Text)
	}
	for _, want := range []string{
		fmt.Sprintf("%d emerge", emerged.Likely()), fmt.Sprint(emerged.Likely()), fmt.Sprintf("%d (%d–%d)", emerged.Likely(), emerged.Low(), emerged.High()),
		fmt.Sprintf("%d ready", ready.Likely()), fmt.Sprintf("most probably %d (%d–%d)", ready.Likely(), ready.Low(), ready.High()),
		fmt.Sprintf("%d (%d–%d)", ready.Likely(), ready.Low(), ready.High()), fmt.Sprint(ready.Likely()),
	} {
		if !slices.Contains(said, want) {
			t.Errorf("%q is not said in %s", want, strings.Join(said, " | "))
		}
	}
}
