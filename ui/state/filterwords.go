package state

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// FilterRef is the kind of a [scene.Ref] of a word offered to the filter; ID is
// the word.
const FilterRef = "find"

// FilterWord is a word by which nucs are found, with how many are.
type FilterWord struct {
	Word string
	N    int
}

// mostFilterWords is how many words are offered.
const mostFilterWords = 8

// FilterWords are the words that the filter can go on with, while it is typed:
// those that what stands last in it begins, the most frequent first.
func (s State) FilterWords() []FilterWord {
	if !s.Typing || s.Book == nil {
		return nil
	}
	before, begun := s.filterBegun()
	return s.Reading().offers(offersKey{shownKey{s.Filled(), before}, begun})
}

// filterBegun parts the filter into what stands and the word that is being typed.
func (s State) filterBegun() (before, begun string) {
	i := strings.LastIndex(s.Filter, " ") + 1
	return s.Filter[:i], strings.ToLower(s.Filter[i:])
}

// offersKey is among which nucs words are sought, and how those begin.
type offersKey struct {
	shownKey
	begun string
}

func (r *Reading) readOffers(k offersKey) (all []FilterWord) {
	count := map[string]int{}
	for _, n := range r.readFiltered(k.shownKey) {
		for _, w := range r.finders(n) {
			count[w]++
		}
	}
	standing := " " + strings.ToLower(k.filter)
	for w, n := range count {
		if strings.Contains(" "+w, " "+k.begun) && !strings.Contains(standing, " "+w+" ") {
			all = append(all, FilterWord{w, n})
		}
	}
	slices.SortFunc(all, func(a, b FilterWord) int { return cmp.Or(cmp.Compare(b.N, a.N), cmp.Compare(a.Word, b.Word)) })
	return all[:min(len(all), mostFilterWords)]
}

// finders are the words by which a nuc is found together with others.
func (r *Reading) finders(n *Nuc) []string {
	words := []string{n.Presumed.Condition.String()}
	add := func(word string) {
		if word = strings.ToLower(word); word != "" && !slices.Contains(words, word) {
			words = append(words, word)
		}
	}
	if n.NeedsYou {
		add("needs you")
	}
	if !n.Presumed.Seen {
		add("not seen yet")
	}
	if !n.Holds.Batch.IsZero() {
		add(fmt.Sprintf("batch %d", r.View.Batch(n.Holds.Batch).Number))
	}
	add(r.lineOf(n))
	add(r.View.Yard(n.Yard).Name)
	if n.Paint != book.NoStroke {
		add(n.Paint.String())
	}
	return words
}

// filterTaken is the window with the word being typed made a whole one.
func (s State) filterTaken(word string) State {
	before, _ := s.filterBegun()
	s.Filter, s.Typing, s.Scroll = before+word+" ", true, nil
	return s
}

// filterCompleted takes the word offered first.
func (s State) filterCompleted() State {
	if words := s.FilterWords(); len(words) > 0 {
		return s.filterTaken(words[0].Word)
	}
	return s
}

func findClicked(s State, r scene.Ref, _ Mods) (State, []Effect) { return s.filterTaken(r.ID), nil }
