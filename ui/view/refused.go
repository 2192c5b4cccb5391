package view

import (
	"slices"
	"strings"

	"lidmark/ui/state"
)

// refused says in one line why buttons cannot be used now, each reason once: behind the
// words of its buttons, but alone where it holds for all of them. Where there is no room
// for what to do about it, only the reason stands.
func (p *sheet) refused(room float64, buttons ...button) string {
	var long, short, bare []string
	reasons, words, free := p.reasons(buttons)
	for i, why := range reasons {
		head := words[i] + ": "
		if len(reasons) == 1 && !free {
			head = ""
		}
		long, short, bare = append(long, head+why), append(short, head+clause(why)), append(bare, clause(why))
	}
	said := func(all []string) string { return sentence(strings.Join(all, "; ")) }
	return p.firstFitting(room, said(long), said(short), said(bare))
}

// reasons are why buttons cannot be used now, each with the words of its buttons; free
// is whether one of them can.
func (p *sheet) reasons(buttons []button) (reasons, words []string, free bool) {
	for _, b := range buttons {
		c, _ := state.CommandNamed(b.command)
		why := c.Reason(p.s)
		i := slices.Index(reasons, why)
		switch {
		case why == "":
			free = true
		case i >= 0:
			words[i] += ", " + b.word
		default:
			reasons, words = append(reasons, why), append(words, b.word)
		}
	}
	return reasons, words, free
}

// clause is the first clause of a reason, without what to do about it.
func clause(why string) string {
	why, _, _ = strings.Cut(why, ";")
	why, _, _ = strings.Cut(why, ": ")
	return why
}
