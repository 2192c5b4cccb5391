package state

import (
	"cmp"
	"fmt"
)

// rowOpened is the walk with a row taken to be typed into: with what stands there
// unwritten, else with what was written.
func (s State) rowOpened(name RowName) State {
	if s.Walk.At != name {
		s.Asked = nil // nothing was written yet
	}
	s = s.withWalk(func(w *Walk) { w.At, w.Passed, w.Refused, w.Warned = name, Passed{}, "", false })
	if row, ok := s.Walk.Row(); ok {
		s = s.withWalk(func(w *Walk) { w.Passed = row.Passed })
		s = s.WithField(WalkField, FieldOf(cmp.Or(s.RowDraft(row), row.Typed)))
	}
	return s.focused(FieldNamed(WalkField)).says().rowShown()
}

// rowStep goes to the next row, or to the one before.
func rowStep(by int) func(State) (State, []Effect) {
	return pure(func(s State) State {
		rows := s.Walk.Rows
		if len(rows) == 0 {
			return s
		}
		at := s.Walk.index(s.Walk.At)
		if at < 0 && by < 0 {
			at = len(rows)
		}
		return s.rowOpened(rows[min(max(at+by, 0), len(rows)-1)].RowName)
	})
}

// lineDrafted is the window with the line of the walk kept for its row, so that
// it is there again after another row was looked at, or the program ended.
func (s State) lineDrafted() State {
	row, ok := s.Walk.Row()
	if text := s.Typed(WalkField); ok && text != "" && text != row.Typed {
		return s.WithField(s.Walk.draft(row.RowName), FieldOf(text))
	}
	return s.withoutFields(s.Walk.draft(row.RowName))
}

// RowDraft is what stands unwritten in a row.
func (s State) RowDraft(row WalkRow) string { return s.Typed(s.Walk.draft(row.RowName)) }

// draft is the name of the field that keeps what stands unwritten in a row of the
// walk's day.
func (w *Walk) draft(r RowName) string {
	if r.Nuc.IsZero() {
		return fmt.Sprintf("%s.%v.%d.%d.", WalkField, w.Day, r.Deed, r.Part)
	}
	return fmt.Sprintf("%s.%v.%v", WalkField, w.Day, r.Nuc)
}
