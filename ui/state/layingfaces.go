package state

import (
	"strings"

	"lidmark/domain/founding"
	"lidmark/domain/yard"
)

// More fields of the picked stands: which way the entrances on them face, and the rows
// in which they are set.
const (
	LayoutFaces = LayoutField + "faces"
	LayoutRows  = LayoutField + "rows"
)

// facesTyped is the window with the boxes of the picked nuc, or on the picked stands,
// turned as it was typed: one way, as many ways by turns, or out.
func (s State) facesTyped(typed string) State {
	l := s.Laying
	next := l.Try.Outwards(l.Pick)
	if !strings.HasPrefix("outwards", strings.ToLower(typed)) {
		ways, err := founding.ParseFacing(typed)
		if err != nil {
			s.Note = Note{Text: err.Error() + "; or write out"}
			return s
		}
		if next = l.Try.Facing(l.Pick, ways...); !l.Nuc.IsZero() && len(ways) > 0 {
			next = l.Try.FacingOne(l.Nuc, ways[0])
		}
	}
	return s.WithField(LayoutFaces, Field{}).facedSo(next)
}

// facedSo is the window with boxes turned on their places, or why none is.
func (s State) facedSo(next yard.Layout) State {
	if s.Laying.Try.Alike(next) {
		s.Note = Note{Text: "they face so already; what shares its box with other nucs turns with its stand"}
		return s
	}
	return s.stoodSo(next)
}

func (s State) facedOut() State { return s.facedSo(s.Laying.Try.Outwards(s.Laying.Pick)) }

// FacesSaid is which way the entrances on the first picked stand face, or that of the
// nuc that is picked: one word where all face one way.
func (s State) FacesSaid() string {
	st, _ := s.PickedStand()
	var words []string
	same := true
	for i := range st.Nucs {
		n := &st.Nucs[i]
		if s.Laying.Nuc.IsZero() || n.ID == s.Laying.Nuc {
			words = append(words, yard.Letters(st.Faces(n)))
			same = same && words[0] == words[len(words)-1]
		}
	}
	if same && len(words) > 0 {
		return words[0]
	}
	return strings.Join(words, " ")
}

// rowsTyped is the window with the picked stands in rows, from where the first of them
// stands.
func (s State) rowsTyped(typed string) State {
	first, _ := s.PickedStand()
	rows, err := yard.ParseRows(typed)
	next := s.Laying.Try
	if err == nil {
		next, err = next.Rowed(s.Laying.Pick, first.At, rows)
	}
	if err != nil {
		s.Note = Note{Text: err.Error()}
		return s
	}
	s = s.WithField(LayoutRows, Field{}).stoodSo(next)
	s.Note = Note{Text: rows.String()}
	return s
}
