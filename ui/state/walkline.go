package state

import (
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// Typed is what was typed of one nuc, or of several at once, as a row of the walk
// shows it.
type Typed struct {
	Nucs  []book.NucID
	Words string // as it was typed, without the name of a single nuc
	Back  string // read back in plain words, in the order in which it was typed
}

// walkLine reads the line that is typed into the walk.
func (s State) walkLine() TypedLine {
	w := s.Walk
	c := line.Context{
		View: w.view, Day: w.Day, Part: w.Part, Yard: w.Yard, Planned: w.Before.Sheet(),
		Named: w.named, Asked: w.asked,
	}
	row, _ := w.Row()
	for _, e := range row.entries {
		c.Instead = append(c.Instead, e.ID)
	}
	if len(row.Nucs) == 1 {
		c.Nuc = row.Nucs[0]
		c.Yard = w.view.Nuc(c.Nuc).Yard
	}
	return s.readLine(s.Typed(WalkField), c)
}

// named finds nucs by name among those that the book had when the walk was
// opened: to order all nucs anew for every line takes too long in a big book.
func (w *Walk) named(name string) []*book.Nuc {
	all := w.Before.View.NucNamed(name)
	for i, n := range all {
		all[i] = w.view.Nuc(n.Nuc)
	}
	return all
}

// tellsMore tells whether a section says more than its signs do, as done does: it
// then reads back as what was planned.
func tellsMore(s line.Section) bool {
	return slices.ContainsFunc(s.Tokens, func(t line.Token) bool { return t.Words == line.DoneWords })
}

// typedRows are the rows that a line makes.
func typedRows(text string, l line.Line) []Typed {
	letters := []rune(strings.TrimSpace(text))
	all := make([]Typed, len(l.Sections))
	for i, section := range l.Sections {
		words := make([]string, len(section.Tokens))
		back := ""
		for j, t := range section.Tokens {
			words[j] = strings.TrimSpace(string(letters[t.From-1 : t.To-1]))
			back = listed(back, t.Words)
		}
		if back == "" || len(section.Nucs) != 1 || tellsMore(section) {
			back = section.Back
		}
		all[i] = Typed{section.Nucs, strings.Join(words, " "), back}
		if len(section.Nucs) != 1 && len(l.Sections) == 1 {
			all[i].Words = string(letters)
		}
	}
	return all
}
