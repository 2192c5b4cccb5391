package state

import (
	"fmt"
	"strings"

	"lidmark/domain/rules"
)

// mostRefused is how many nucs a refusal of several names.
const mostRefused = 4

// refusedPlan says why the rules refuse to do now what a record tells of: at the chosen
// nuc, or at which of several.
func refusedPlan(plan func(State, *Nuc) rules.Intent) func(State) string {
	return func(s State) string {
		var names []string
		why, nucs := "", 0
		for _, n := range s.Present().Nucs { // in walking order
			if !s.Selection.Has(n.Nuc.Nuc.Subject()) {
				continue
			}
			nucs++
			verdict := s.Present().judged.Check(plan(s, n))
			if verdict.OK() {
				continue
			}
			if names = append(names, n.Name); why == "" {
				why = because(verdict.Refused[0])
			}
			if len(names) > mostRefused {
				break
			}
		}
		if nucs < 2 || len(names) == 0 {
			return why
		}
		return refusedNames(names) + ": " + why
	}
}

// refusedNames are the names of nucs of which something is refused.
func refusedNames(names []string) string {
	if len(names) > mostRefused {
		return fmt.Sprintf("not at %s and more, of the first", strings.Join(names[:mostRefused], ", "))
	}
	if len(names) > 1 {
		return fmt.Sprintf("not at %s, of the first", strings.Join(names, ", "))
	}
	return "not at " + names[0]
}
