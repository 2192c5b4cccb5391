package state

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
)

// Filter tells which nucs a filter shows: those among whose words each of its
// words begins one; a number has to be one. The zero Filter shows all.
type Filter struct{ words []string }

// FilterBy is the filter of what was typed.
func FilterBy(typed string) Filter {
	f := Filter{strings.Fields(strings.ToLower(typed))}
	for i, w := range f.words {
		if strings.Trim(w, "0123456789") == "" {
			w += " "
		}
		f.words[i] = " " + w
	}
	return f
}

// Shows tells whether the filter shows n.
func (f Filter) Shows(n *Nuc) bool {
	for _, w := range f.words {
		if !strings.Contains(n.wordsOf(), w) {
			return false
		}
	}
	return true
}

// All tells whether the filter shows every nuc.
func (f Filter) All() bool { return len(f.words) == 0 }

// wordsOf are the words by which a nuc is found: its name, stand, yard, batch
// and line, what it holds by letter and word, the keeper's stroke, and what is
// the matter with it, each with a space on both sides.
func (n *Nuc) wordsOf() string {
	n.told.Do(func() { n.words = n.reading.words(n) })
	return n.words
}

func (r *Reading) words(n *Nuc) string {
	var b strings.Builder
	b.WriteByte(' ')
	add := func(words ...string) {
		for _, w := range words {
			b.WriteString(strings.ToLower(w))
			b.WriteByte(' ')
		}
	}
	add(n.Name, r.View.Yard(n.Yard).Name)
	if !n.Stand.IsZero() {
		s := r.View.Stand(n.Stand)
		add("stand", s.Letter, s.Round)
	}
	if !n.Holds.Batch.IsZero() {
		batch := r.View.Batch(n.Holds.Batch)
		add(fmt.Sprintf("batch %d", batch.Number), batch.Line)
	}
	add(n.Presumed.Condition.String())
	if n.Paint != book.NoStroke {
		add(n.Paint.String())
	}
	if !n.Presumed.Seen {
		add("not seen yet")
	}
	if n.NeedsYou {
		add("needs you")
	}
	for _, f := range n.Findings {
		if f.NeedsYou() {
			add(f.What)
		}
	}
	return b.String()
}

// Shown are the nucs of the room's yard that the filter shows, in walking
// order.
func (s State) Shown() []*Nuc { return s.Reading().filtered(shownKey{s.Filled(), s.Filter}) }

// found is the window with its filter typed, the keys on the first nuc found; a
// selection of several stays.
func (s State) found() State {
	things := s.FilterThings()
	s.Typing, s.Marked = false, false
	shown := s.walk()
	switch i := slices.IndexFunc(shown, FilterBy(s.Filter).Shows); {
	case i < 0 && len(things) > 0:
		s.Filter = ""
		return s.followed(LinkTo(things[0]))
	case i < 0 || s.Filter == "":
		return s
	case s.Selection.Len() > 1:
		s.Ring = shown[i].Nuc.Nuc.Subject()
		return s.revealed()
	default:
		return s.taken(shown[i], false)
	}
}

// Hidden is how many of the selected nucs the filter or the yard shown hides.
func (s State) Hidden() (n int) {
	if s.Selection.Len() == 0 {
		return 0
	}
	selected := 0
	for sub := range s.Selection.All() {
		selected += boolInt(sub.Kind == book.KindNuc)
	}
	for _, nuc := range s.Shown() {
		n += boolInt(s.Selection.Has(nuc.Nuc.Nuc.Subject()))
	}
	return selected - n
}

// shownKey is which nucs are shown.
type shownKey struct {
	yard   book.YardID
	filter string
}

func (r *Reading) readFiltered(k shownKey) (shown []*Nuc) {
	all := r.In(k.yard)
	f := FilterBy(k.filter)
	if f.All() {
		return all
	}
	for _, n := range all {
		if f.Shows(n) {
			shown = append(shown, n)
		}
	}
	return shown
}
