package state

import (
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// withAnswers are the rows of a line with what the answers to its questions
// added, read back as well; in a row of several nucs once, with those of which it
// is true.
func withAnswers(typed []Typed, all []book.Entry, asked []book.Entry, names line.Names) []Typed {
	if len(all) == len(asked) {
		return typed
	}
	typed = slices.Clone(typed)
	kinds := map[string]bool{}
	for _, e := range asked {
		kinds[book.KindOfFact(e.Fact)] = true
	}
	all = slices.DeleteFunc(slices.Clone(all), func(e book.Entry) bool { return kinds[book.KindOfFact(e.Fact)] })
	for i, t := range typed {
		for _, a := range answersTo(t.Nucs, all, names) {
			if len(t.Nucs) > 1 {
				a.words += " (" + strings.Join(a.nucs, ", ") + ")"
			}
			typed[i].Back = listed(typed[i].Back, a.words)
		}
	}
	return typed
}

// added is what an answer added to a row, and to which of its nucs.
type added struct {
	words string
	nucs  []string
}

// answersTo are what entries tell of some nucs, like words together.
func answersTo(nucs []book.NucID, entries []book.Entry, names line.Names) (all []added) {
	for _, e := range entries {
		id := nucIn(e.Fact)
		if !slices.Contains(nucs, id) {
			continue
		}
		words := line.WordsOn(e.Fact, names, id.Subject())
		i := slices.IndexFunc(all, func(a added) bool { return a.words == words })
		if i < 0 {
			i, all = len(all), append(all, added{words: words})
		}
		all[i].nucs = append(all[i].nucs, names.Of(id.Subject()))
	}
	return all
}
