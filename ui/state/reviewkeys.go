package state

import (
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// keyReview gives a key to the room Review, and tells whether that took it: rows,
// sides, and what has the keys beside the rows.
func (s State) keyReview(m Keyed) (State, bool) {
	if m.Mods&^Shift != 0 {
		return s.keyReviewHeld(m)
	}
	switch s.Focus.Kind {
	case AmountRef:
		if next, took := s.keyAmount(m.Key); took {
			return next, true
		}
	case UseRef:
		if by := arrows[m.Key]; by != 0 && (m.Key == "Up" || m.Key == "Down") {
			return s.useMoved(by), true
		}
	}
	return s.keyRows(m)
}

// keyReviewHeld takes keys with another held: all rows at once.
func (s State) keyReviewHeld(m Keyed) (State, bool) {
	sheet, _ := s.ReviewSheet()
	if m.Mods != Ctrl || m.Key != "A" || sheet == nil {
		return s, false
	}
	var all []book.Subject
	for _, i := range s.reviewOpen(allOpen) {
		all = append(all, sheet.Nucs[i].Nuc.Nuc.Subject())
	}
	s.Selection, s.Ring = Select(all...), book.Subject{}
	s.reviewed.last = s.Selection.Last()
	return s, true
}

// keyRows goes through the rows, and into and out of their sides.
func (s State) keyRows(m Keyed) (State, bool) {
	page := max(1, int(s.ReviewPane(s.Layout()).Body.H/s.ReviewPane(s.Layout()).Row)-1)
	extend := m.Mods.Has(Shift)
	by := map[string]int{"Down": 1, "Up": -1, "PageDown": page, "PageUp": -page, "End": len(s.ReviewRows())}
	if d, ok := by[m.Key]; ok {
		return s.reviewStep(d, extend), true
	}
	switch {
	case extend:
		return s, false
	case m.Key == "Right":
		return s.reviewInto(), true
	case m.Key == "Left":
		return s.reviewBack(), true
	case m.Key == "Space" || m.Key == " ":
		return s.reviewMark(), true
	case m.Key == "Enter" && noAccept(s) != "":
		s.Note = Note{Text: noAccept(s)}
		return s, true
	}
	return s, false
}

// reviewInto opens the line of like nucs on which the keys stand, or says why of a
// nuc.
func (s State) reviewInto() State {
	rows := s.ReviewRows()
	at := s.reviewAt(rows)
	switch {
	case at < 0:
		return s
	case rows[at].Fold != "" && !s.ReviewOpen(rows[at].Fold):
		return s.reviewFolded(rows[at].Fold)
	}
	return s.reviewSide(WhySide)
}

// reviewBack is the other way: to what is in hand, then the line closed.
func (s State) reviewBack() State {
	if s.Reviewing.Side != HandSide {
		return s.reviewSide(HandSide)
	}
	rows := s.ReviewRows()
	at := s.reviewAt(rows)
	for ; at >= 0 && rows[at].Within; at-- {
	}
	if at >= 0 && s.ReviewOpen(rows[at].Fold) {
		sheet, _ := s.ReviewSheet()
		s.Selection = Select(sheet.subjects(rows[at])...)
		return s.reviewFolded(rows[at].Fold)
	}
	return s
}

// reviewMark chooses the row the keys stand on, or not; they stay on it.
func (s State) reviewMark() State {
	rows := s.ReviewRows()
	at := s.reviewAt(rows)
	if at < 0 {
		return s.reviewStep(1, false)
	}
	sheet, _ := s.ReviewSheet()
	all := sheet.subjects(rows[at])
	if s.ReviewTakes(rows[at]) {
		for _, sub := range all {
			s.Selection = s.Selection.Toggled(sub)
		}
	} else {
		s.Selection = s.Selection.With(all...)
	}
	s.Ring = all[len(all)-1]
	s.reviewed.last = s.Selection.Last()
	return s
}

// keyAmount changes the amount that has the keys.
func (s State) keyAmount(key string) (State, bool) {
	all := s.Amounts()
	at := slices.IndexFunc(all, func(a Amount) bool { return a.Name == s.Focus.ID })
	if at < 0 {
		return s, false
	}
	switch key {
	case "Up", "Down":
		s.Focus, s.Reviewing.typed = AmountOf(all[min(max(at+arrows[key], 0), len(all)-1)].Name), false
		return s, true
	case "Left", "-":
		return s.amountMoved(s.Focus.ID, -1), true
	case "Right", "+", "=":
		return s.amountMoved(s.Focus.ID, +1), true
	case "BackSpace":
		return s.amountCut(), true
	}
	return s, false
}

func useClicked(s State, r scene.Ref, _ Mods) (State, []Effect) {
	if i, err := strconv.Atoi(r.ID); err == nil {
		return s.useTaken(i), nil
	}
	return s, nil
}

func amountClicked(s State, r scene.Ref, _ Mods) (State, []Effect) {
	by := 1
	if r.Part == "less" {
		by = -1
	}
	return s.amountMoved(r.ID, by), nil
}

// foldedClicked opens or closes a line of like nucs, and chooses them.
func foldedClicked(s State, r scene.Ref, mods Mods) (State, []Effect) {
	sheet, _ := s.ReviewSheet()
	for _, row := range s.ReviewRows() {
		if row.Fold != r.ID {
			continue
		}
		if mods.Has(Ctrl) {
			s.Selection = s.Selection.With(sheet.subjects(row)...)
			return s, nil
		}
		s.Selection = Select(sheet.subjects(row)...)
		return s.reviewFolded(r.ID), nil
	}
	return s, nil
}
