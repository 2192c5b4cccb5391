package state

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"lidmark/domain/book"
)

// narrowing are the letters of stands that a line names and nothing else: Enter
// shows their rows alone. The word all names none and shows every row again.
func (w *Walk) narrowing(text string) (letters []string, narrows bool) {
	first, _ := utf8.DecodeRuneInString(strings.TrimLeft(text, " "))
	if !unicode.IsUpper(first) && first != 'r' && first != 'a' {
		return nil, false // most lines
	}
	words := strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == ',' })
	if len(words) > 1 && words[0] == "rows" {
		words = words[1:]
	}
	if len(words) == 1 && words[0] == "all" {
		return nil, len(w.Stands) > 0
	}
	for _, word := range words {
		if first, _ := utf8.DecodeRuneInString(word); !unicode.IsUpper(first) || !slices.Contains(w.letters(), word) {
			return nil, false
		}
	}
	return words, len(words) > 0
}

// rowsWord names the rows that a line narrows the walk to.
func (w *Walk) rowsWord(letters []string) string {
	if len(letters) == 0 || slices.Equal(letters, w.Stands) {
		return "all rows"
	}
	return "rows " + strings.Join(letters, ", ")
}

// letters are the letters of the stands of the walk.
func (w *Walk) letters() (all []string) {
	for _, n := range w.nucs {
		if l := w.Before.View.Stand(n.Stand).Letter; !slices.Contains(all, l) {
			all = append(all, l)
		}
	}
	return all
}

// narrowed is the walk with the rows of some stands alone; of the same again, or
// of none, with those of all.
func (s State) narrowed(letters []string) State {
	s = s.WithField(WalkField, Field{}).lineDrafted().withWalk(func(w *Walk) {
		if slices.Equal(w.Stands, letters) {
			letters = nil
		}
		w.Stands = letters
		w.Rows = w.rows(s.Pen, s.Now)
		w.counted()
	})
	return s.rowOpened(s.Walk.nextOpen(RowName{}))
}

// shows tells whether the rows of a nuc are shown.
func (w *Walk) shows(n *book.Nuc) bool {
	return len(w.Stands) == 0 || slices.Contains(w.Stands, w.Before.View.Stand(n.Stand).Letter)
}
