package state

import (
	"fmt"

	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// waits is what to wait for before the try-out is carried out.
func (s State) waits(t *LayoutSheet) []LayoutPart {
	if t.Carried == 0 {
		return nil
	}
	if len(t.Flying) == 0 {
		return []LayoutPart{{Title: "No need to wait", Lines: []string{"No virgin of a moved nuc flies " + s.flightDay() + ". Move after dusk, when all bees are in, and never over midday."}}}
	}
	who := "1 virgin of a moved nuc flies"
	them := "her"
	if n := len(t.Flying); n > 1 {
		who, them = fmt.Sprintf("%d virgins of moved nucs fly", n), "them"
	}
	return []LayoutPart{{Title: "Wait with it", Alarm: true, Lines: []string{fmt.Sprintf(
		"%s %s: a move of less than %g km loses %s. Safe from %s. Until then turn nothing and carry nothing, least of all over midday.", who, s.flightDay(), s.Present().Numbers().Get(practice.MoveDistanceLeast), them, t.Safe.Short(),
	)}}}
}

// flightDay is the day on which virgins are counted that fly: what is carried is carried
// now, whatever day is looked at.
func (s State) flightDay() string {
	if !s.Away() {
		return "now"
	}
	return "on " + s.Today().Short()
}

// sureness says whether the try-out differs by more than is known.
func sureness(t *LayoutSheet) []LayoutPart {
	if len(t.Changes) == 0 || t.Now.Layout.Nucs() == 0 {
		return nil
	}
	part := LayoutPart{Title: "How sure"}
	switch c := t.Compared; {
	case c == nil:
		part.Lines = []string{"being compared, a moment"}
	default:
		part.Lines = []string{"Drift: " + differs(c.Drift), "Virgins lost: " + differs(c.Lost), "Drift is from distance, facing, marks and bees, with published rates; how much each counts is little known."}
	}
	return []LayoutPart{part}
}

// differs says whether a difference is larger than its error.
func differs(d yard.Difference) string {
	share := max(d.Better, d.Worse)
	switch d.Said() {
	case 1:
		return fmt.Sprintf("less in %.0f of 100 trials.", 100*share)
	case -1:
		return fmt.Sprintf("more in %.0f of 100 trials.", 100*share)
	}
	return "no difference; what there is is smaller than its error."
}

// faults is what is wrong with how the try-out stands, gathered.
func faults(t *LayoutSheet) []LayoutPart {
	if !t.Whole {
		return nil
	}
	part := LayoutPart{Title: "Nothing is wrong with the places"}
	for _, g := range yard.Gathered(t.Try.Findings) {
		part.Title = "Faults of the places"
		part.Lines = append(part.Lines, "• "+g.Words())
	}
	part.Lines = append(part.Lines, "Sun and shade are those of "+t.SunDay.Short()+".")
	return []LayoutPart{part}
}

// CarryCaution is what hurts whoever carries boxes; practice, no source.
const CarryCaution = "Stands are lifted by two. Bees sting more after dusk: veil and gloves. No vehicle moves while somebody carries."

// LayoutCautions are what hurts whoever carries the boxes out.
func (s State) LayoutCautions() []string {
	t := s.LayoutSheet()
	if t == nil || t.Carried == 0 {
		return nil
	}
	return []string{CarryCaution}
}

// LayoutPlanWord is what is on the button that makes the try-out the plan.
func (s State) LayoutPlanWord() string {
	t := s.LayoutSheet()
	if t == nil || len(t.Changes) == 0 {
		return "Make it the plan"
	}
	if s.unchanged() && t.InBook.Planned() && t.InBook.From >= t.Safe {
		return "The plan from " + t.InBook.From.Short()
	}
	return "Make it the plan for " + t.Safe.Short()
}

// ToolOn tells whether a tool of the try-out is on.
func (s State) ToolOn(command string) bool {
	if s.Drawing.What != 0 && command == "draw "+toolOf(s.Drawing.What).word {
		return true
	}
	return command == "grid" && s.OnLayout() && s.Laying.Grid > 0 || command == "measure" && s.Measuring()
}
