package state

import (
	"cmp"
	"strings"
)

// unwrittenRow is the first row in which something was typed and not written.
func (s State) unwrittenRow() (WalkRow, bool) {
	for _, row := range s.Walk.Rows {
		if s.unwritten(row) {
			return row, true
		}
	}
	return WalkRow{}, false
}

func (s State) unwritten(row WalkRow) bool {
	draft := s.RowDraft(row)
	return draft != "" && draft != row.Typed
}

// unwrittenWords names the rows in which something was typed and not written.
func (s State) unwrittenWords() string {
	var names []string
	for _, row := range s.Walk.Rows {
		if s.unwritten(row) {
			names = append(names, cmp.Or(row.Title, "any nuc"))
		}
	}
	return strings.Join(names, ", ")
}
