package view

import (
	"regexp"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// whys are what is the matter with a nuc that needs the keeper, each in few words.
func whys(n *state.Nuc) (all []string) {
	for _, f := range n.Findings {
		if f.NeedsYou() {
			all = append(all, shortWhat(f))
		}
	}
	return all
}

// reasons are why a nuc needs the keeper, without what the columns beside them say
// already, as long as something is left.
func reasons(n *state.Nuc) []string {
	all, known := whys(n), []string{n.Presumed.Condition.String(), book.Due.String()}
	left := slices.DeleteFunc(slices.Clone(all), func(why string) bool { return slices.Contains(known, why) })
	if len(left) == 0 {
		return all
	}
	return left
}

// shortWhat is what is the matter without its day and figures.
func shortWhat(f rules.Finding) string {
	what := f.What
	if head, _, ok := strings.Cut(what, ":"); ok && head != "robbers" {
		what = head
	}
	return withoutFigures.ReplaceAllString(what, "")
}

// withoutFigures is a day in a text, with what leads to it, and an age, which has a column:
// " since Mon 3 May", "26 Apr ", "26 days old and ".
var withoutFigures = regexp.MustCompile(`( (seen|since|on))?,? (Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2} [A-Z][a-z]{2}|^\d{1,2} [A-Z][a-z]{2} |^\d+ days old and `)

// fewerWords says reasons in fewer words, where all of them have no room.
var fewerWords = strings.NewReplacer(
	"ready, combs full", "combs full", "robbing likely", "robbing", "robbing possible", "robbing",
	"no queen seen; it may have raised its own", "no queen seen", "it can raise a queen of its own", "can raise its own",
	"laying workers are to be expected", "soon laying workers",
)
