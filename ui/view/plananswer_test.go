package view_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// saidIn is all that stands in the window, a text a line.
func saidIn(t testing.TB, s state.State) string {
	var all []string
	for _, w := range texts(t, window(s), s.Size()) {
		all = append(all, w.Text.Text)
	}
	return strings.Join(all, "\n")
}

// Two batches that share few nucs say that one and another if it fails is surer, and how
// sure; to one batch that is offered, and batches said one by one say nothing of it.
func TestInsuranceIsToldOfTwoBatches(t *testing.T) {
	few := wished(inPlan(t), state.WishQueens, "22", state.WishNucs, "40") // as many as are free for the first of two
	two := wished(inPlan(t, "two grafts"), state.WishQueens, "22", state.WishNucs, "40")
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}, {1920, 1080, 1.5}, {800, 560, 1}} {
		s := planning(two, state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		sheet, _ := s.PlanSheet()
		sure := fmt.Sprintf("%.0f of 100", 100*sheet.Insured())
		if said := saidIn(t, s); sheet.Insured() <= sheet.Chance || !strings.Contains(said, "if it fails: "+sure) || !strings.Contains(said, "surer") {
			t.Errorf("%v: insured %.3f, as it is %.3f:\n%s", size, sheet.Insured(), sheet.Chance, said)
		}
	}
	if said := saidIn(t, two); !strings.Contains(said, "Why the first ") || strings.Contains(said, "wanted") {
		t.Errorf("the chain of one of two batches is told as that of the wish:\n%s", said)
	}
	if said := saidIn(t, wished(inPlan(t), state.WishLarvae, "80 + 60")); strings.Contains(said, "if it fails") {
		t.Errorf("one by one: insurance is told:\n%s", said)
	}
	one, _ := few.PlanSheet()
	offer := fmt.Sprintf("graft %s, again if it fails: %.0f", strings.SplitN(one.Again.Day.Short(), " ", 2)[1], 100*one.Again.Chance)
	if said := saidIn(t, few); one.Again.Chance <= one.Chance || !strings.Contains(said, offer) || !strings.Contains(said, "keep beside") {
		t.Errorf("one: %q is not offered, or takes the place of what keeps it beside:\n%s", offer, said)
	}
}

// What costs most stands under what would raise it where there is room, and is said of
// the promise by the pointer in every window.
func TestWhatCostsMostIsSaid(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}} {
		s := planning(inPlan(t), state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		sheet, _ := s.PlanSheet()
		want := fmt.Sprintf("Costs most: %s; without that %d at 90 %%, not %d", sheet.Costs, sheet.Costs.Without, sheet.Costs.With)
		reason := reasonOf(t, s, "promise")
		if sheet.Costs.With != sheet.Chances.Promise(0.9) || reason != want {
			t.Errorf("%v: the promise says %q, want %q", size, reason, want)
		}
		if said := saidIn(t, s); size[0] == 1920 && size[2] == 1 && !strings.Contains(said, "Costs most: ") {
			t.Errorf("%v: what costs most is not told:\n%s", size, said)
		}
	}
}

// What a wish counts on that is not there is said beside how sure it is, and all of it by the
// pointer; where nothing is short nothing is.
func TestWhatAWishCountsOnIsSaidBesideItsCertainty(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}, {1920, 1080, 1.5}, {800, 560, 1}} {
		s := planning(inPlan(t), state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		sheet, _ := s.PlanSheet()
		few := strings.Join(plan.Assumed(sheet.Needs), ", ")
		if said, reason := saidIn(t, s), reasonOf(t, s, "assumed"); few == "" || !strings.Contains(said, "as if nothing were short") || !strings.HasSuffix(reason, "too few "+few) {
			t.Errorf("%v: of %q the pointer says %q:\n%s", size, few, reason, said)
		}
	}
	few := wished(inPlan(t), state.WishQueens, "1", state.WishNucs, "2", state.WishLarvae, "4")
	sheet, _ := few.PlanSheet()
	if said := strings.Contains(saidIn(t, few), "nothing were short"); said != (len(plan.Assumed(sheet.Needs)) > 0) {
		t.Errorf("short of %q, said: %v", plan.Assumed(sheet.Needs), said)
	}
}

// reasonOf is what the pointer says of a figure.
func reasonOf(t testing.TB, s state.State, figure string) (reason string) {
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && r.Ref.ID == figure {
			reason = r.Reason
		}
	}
	return reason
}

// Grafts so far apart that the queens of one are ready before the next nuc is made up say that
// each nuc serves twice, in the wish and below the answer; grafts a week apart do not.
func TestNucsThatServeTwiceAreSaid(t *testing.T) {
	for apart, want := range map[string]bool{"7": false, "60": true} {
		far := wished(inPlan(t, "forwards", "two grafts"), state.WishApart, apart)
		for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}, {1920, 1080, 1.5}, {800, 560, 1}} {
			s := planning(far, state.Resized{Width: size[0], Height: size[1]})
			s.Text = size[2]
			if said := saidIn(t, s); strings.Contains(said, "each twice") != want || strings.Contains(said, "nucs serve twice") != want {
				t.Errorf("%v, %s days apart: told should be %v:\n%s", size, apart, want, said)
			}
		}
	}
}

// The day of "ready" is the one by which they are, not the one that is wished for; the yard in which
// they are mated stands beside, with how many of its nucs are free where these are too few.
func TestTheAnswerSaysWhenWhereAndOfHowManyNucs(t *testing.T) {
	s := wished(inPlan(t), state.WishQueens, "4", state.WishSure, "80")
	sheet, _ := s.PlanSheet()
	said := saidIn(t, s)
	if !sheet.InTime || sheet.Nearest >= sheet.By || !strings.Contains(said, "ready by 8 Jul") || strings.Contains(said, "ready by 10 Jul") {
		t.Errorf("ready by %s, wished for %s:\n%s", sheet.Nearest, sheet.By, said)
	}
	if len(sheet.Minds) == 0 && !strings.Contains(said, "mated in Hollin Ledge") {
		t.Errorf("the yard is not told:\n%s", said)
	}
	many := inPlan(t)
	sheet, _ = many.PlanSheet()
	if want := fmt.Sprintf("too few nucs, %d", sheet.Free); !strings.Contains(saidIn(t, many), want) {
		t.Errorf("%q is not told:\n%s", want, saidIn(t, many))
	}
}
