package state

import (
	"slices"
	"strconv"

	"lidmark/domain/plan"
	"lidmark/ui/scene"
)

// LarvaeRef is the kind of a [scene.Ref] of an amount of larvae; ID is how many.
const LarvaeRef = "larvae"

// sureBoth is how high the part that says how sure the wish is has to be, dp, to show
// both how many queens there are of a hundred such plans and how sure it is by larvae.
const sureBoth = 420.0

// PlanSure is what the part says of how sure the wish is: how many queens there are of a
// hundred such plans, how sure it is by larvae, or both where they have room.
func (s State) PlanSure(part scene.Area) (dots, larvae bool) {
	if sheet, _ := s.PlanSheet(); sheet == nil || len(sheet.ByLarvae) == 0 {
		return true, false
	}
	if part.H >= sureBoth {
		return true, true
	}
	return !s.Planning.ByLarvae, s.Planning.ByLarvae
}

// LarvaeOf names an amount of larvae in a scene.
func LarvaeOf(n int) scene.Ref { return scene.Ref{Kind: LarvaeRef, ID: strconv.Itoa(n)} }

// larvaeClicked is the window with the wish of so many larvae, in the nucs it has.
func (s State) larvaeClicked(id string) State {
	sheet, _ := s.PlanSheet()
	n, err := strconv.Atoi(id)
	if err != nil || sheet == nil {
		return s
	}
	if s.Focus = LarvaeOf(n); n == sheet.Larvae {
		return s
	}
	return s.toWish(WishLarvae, strconv.Itoa(n)).toWish(WishNucs, openTyped(sheet.Nucs))
}

// larvaeBeside is the window with the keys on the next amount of larvae, or the one before.
func (s State) larvaeBeside(by int) State {
	sheet, _ := s.PlanSheet()
	if sheet == nil || len(sheet.ByLarvae) == 0 {
		return s
	}
	all := sheet.ByLarvae
	at := slices.IndexFunc(all, func(n plan.ByLarvae) bool { return LarvaeOf(n.Larvae) == s.Focus })
	s.Focus = LarvaeOf(all[min(max(at+by, 0), len(all)-1)].Larvae)
	return s
}

// byLarvaeShown is the window with how sure the wish is by larvae, the keys on the amount
// that is grafted, or with a hundred such plans again.
func (s State) byLarvaeShown() State {
	sheet, _ := s.PlanSheet()
	if _, larvae := s.PlanSure(s.PlanPane(s.Layout()).Parts[1]); larvae && !s.Planning.ByLarvae {
		s.Focus = LarvaeOf(sheet.Larvae) // both are shown
		return s
	}
	if s.Planning.ByLarvae = !s.Planning.ByLarvae; s.Planning.ByLarvae {
		s.Focus = LarvaeOf(sheet.Larvae)
	}
	return s
}

func noByLarvae(s State) string {
	if why := noAnswer(s); why != "" {
		return why
	}
	sheet, _ := s.PlanSheet()
	switch {
	case sheet.OneByOne():
		return "larvae are said graft by graft: say one number for all to see how sure it is by larvae"
	case len(sheet.ByLarvae) == 0:
		return "no number of larvae gives this wish a chance"
	}
	return ""
}
