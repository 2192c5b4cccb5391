package view_test

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/plan"
	"lidmark/ui/scene"
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

// The chain multiplies: whoever takes a figure times the rate of the next step gets the
// figure of that step; and what is drawn is named, also in a small window.
func TestTheChainMultiplies(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1440, 900, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}} {
		for _, queens := range []string{"40", "12", "70"} {
			s := wished(inPlan(t), state.WishQueens, queens)
			s.Width, s.Height, s.Text = size[0], size[1], size[2]
			part := s.PlanPane(s.Layout()).Parts[3]
			rows, said := map[float64][]string{}, ""
			for _, w := range texts(t, window(s), s.Size()) {
				if part.Contains(w.At) {
					said += w.Text.Text + "\n"
					rows[w.At.Y] = append(rows[w.At.Y], w.Text.Text)
				}
			}
			sheet, _ := s.PlanSheet()
			n, steps := float64(sheet.Larvae), 0
			for _, y := range slices.Sorted(maps.Keys(rows)) {
				figure := 0.0
				if row := rows[y]; len(row) < 2 || !strings.HasSuffix(row[len(row)-1], ")") || row[0] == "Why" {
					continue
				}
				if _, err := fmt.Sscanf(rows[y][len(rows[y])-1], "%f (", &figure); err != nil {
					continue
				}
				var rate float64
				if _, err := fmt.Sscanf(rows[y][1], "× %f %%", &rate); err == nil {
					if steps++; math.Round(n*rate/100) != figure {
						t.Errorf("%v, %s queens: %v times %v %% is not %v", size, queens, n, rate, figure)
					}
				}
				n = figure
			}
			least := 4
			if queens == "12" { // so few are rounded by more than their rates are told
				least = 2
			}
			if steps < least || !strings.Contains(said, "grafted\n") || !strings.Contains(said, "of 100 grafts fail") || !strings.Contains(said, queens+" wanted") {
				t.Errorf("%v, %s queens: %d steps are told\n%s", size, queens, steps, said)
			}
		}
	}
}

// No bar of the ladder lies before the first day that is shown, and that has its month.
func TestTheLadderLiesOnItsDays(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}} {
		s := planning(inPlan(t), state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		s = planning(s, state.Wheeled{At: s.Layout().Main.Centre(), DY: 200})
		months := 0
		for _, p := range walk(t, window(s), s.Size()) {
			switch m := p.mark.(type) {
			case scene.Rect:
				if m.Ref.Kind == state.RungRef && m.X < s.Layout().Ribbon.X-0.5 {
					t.Errorf("%v: %s begins at %.0f, its days at %.0f", size, m.Ref.ID, m.X, s.Layout().Ribbon.X)
				}
			case scene.Text:
				if m.Text == "May" && s.Layout().Ribbon.Contains(m.At) {
					months++
				}
			}
		}
		if months != 1 {
			t.Errorf("%v: May is named %d times", size, months)
		}
	}
}

// A wish for a day too near says so, says the nearest, and shows the steps of that one: none
// of them is past.
func TestAWishTooNearGetsTheNearestDay(t *testing.T) {
	for _, day := range []string{"+20", "+43"} {
		s := planning(wished(inPlan(t), state.WishDay, day), state.Resized{Width: 1280, Height: 800})
		sheet, _ := s.PlanSheet()
		var all []string
		for _, w := range texts(t, window(s), s.Size()) {
			all = append(all, w.Text.Text)
		}
		said := strings.Join(all, "\n")
		if sheet.InTime || sheet.Nearest <= sheet.By || !strings.Contains(said, "No graft is in time") || !strings.Contains(said, "by "+sheet.By.Short()+"; the soonest day is "+sheet.Nearest.Short()) || strings.Contains(said, "was due") {
			t.Errorf("by %v, nearest %v, in time %v:\n%s", sheet.By, sheet.Nearest, sheet.InTime, said)
		}
		for _, r := range s.PlanRungs(0) {
			if r.Step.Done() && r.Step != plan.DroneComb && r.By < s.Today() {
				t.Errorf("%s: %s is past", day, r.Name)
			}
		}
		s = planning(s, state.Ran{Command: "nearest day"})
		if sheet, _ := s.PlanSheet(); !sheet.InTime {
			t.Errorf("%s: the nearest day %v is not in time", day, sheet.By)
		}
	}
}
