package state

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// The fields of a try-out, for where precision matters: where the picked stand is, m
// from the yard's origin, how the picked stands are turned, degrees from north, and
// what the try-out is called. Enter takes what was typed, and leaving the field does.
const (
	LayoutField = "layout:" // all of them begin so
	LayoutEast  = LayoutField + "east"
	LayoutNorth = LayoutField + "north"
	LayoutTurn  = LayoutField + "turn"
	LayoutName  = LayoutField + "name"
)

// ofPick are the fields that say how the picked stands are.
var ofPick = []string{LayoutEast, LayoutNorth, LayoutTurn, LayoutFaces, LayoutRows}

// layingTyped is the window after a message with what was typed of the picked stands
// taken where its field was left, and thrown away where others are picked.
func (s State) layingTyped(before State) State {
	if !s.OnLayout() || !before.OnLayout() {
		return s
	}
	if s.Laying.Ground && s.Drawing.What == 0 && before.Selection.Last() != s.Selection.Last() {
		s = s.featureForgotten()
	}
	if !slices.Equal(s.Laying.Pick, before.Laying.Pick) || s.Laying.Nuc != before.Laying.Nuc {
		for _, name := range ofPick {
			if s.Field(name) != (Field{}) {
				s = s.WithField(name, Field{})
			}
		}
		return s
	}
	if left := before.InField(); left != s.InField() && (left == LayoutName || slices.Contains(ofPick, left)) {
		return s.layoutTyped(left)
	}
	return s
}

// layingNamed is the window with the name taken that is being typed, before a command
// does anything with the try-out.
func (s State) layingNamed() State {
	if s.InField() == LayoutName {
		return s.layoutTyped(LayoutName)
	}
	return s
}

// layoutTyped is the window with what was typed into a field of the try-out taken.
func (s State) layoutTyped(name string) State {
	typed := s.Typed(name)
	if !s.OnLayout() || typed == "" || noEdit(s) != "" {
		return s
	}
	switch name {
	case DrawHeight, DrawWidth, DrawLabel:
		return s // taken when the drawing is done
	case LayoutName:
		return s.laid(func(l *Laying) { l.Name = typed }).WithField(name, Field{})
	}
	if picked := noPick(s) == ""; picked && name == LayoutFaces {
		return s.facesTyped(typed)
	} else if picked && name == LayoutRows {
		return s.rowsTyped(typed)
	}
	v, ok := measureOf(typed)
	if why := noPick(s); why != "" || !ok {
		s.Note = Note{Text: layoutRefusal(name, typed, why)}
		return s
	}
	s = s.WithField(name, Field{})
	if name == LayoutTurn {
		return s.stoodSo(s.Laying.Try.Faced(s.Laying.Pick, v))
	}
	first, _ := s.PickedStand()
	at := first.At
	to := book.Point{X: v, Y: at.Y}
	if name == LayoutNorth {
		to = book.Point{X: at.X, Y: v}
	}
	return s.stoodSo(s.Laying.Try.Moved(s.Laying.Pick, to.X-at.X, to.Y-at.Y))
}

func layoutRefusal(name, typed, why string) string {
	if why != "" {
		return why
	}
	if name == LayoutTurn {
		return fmt.Sprintf("%q is no bearing: write degrees, such as 45", typed)
	}
	return fmt.Sprintf("%q is no distance: write metres from the origin, such as 12.5", typed)
}

// PickedStand is the first picked stand of the try-out, and how many are picked.
func (s State) PickedStand() (first yard.Stand, n int) {
	if !s.OnLayout() {
		return first, 0
	}
	for _, st := range s.Laying.Try.Stands {
		if s.Laying.has(st.ID) {
			if n == 0 {
				first = st
			}
			n++
		}
	}
	return first, n
}

// measureOf is a typed distance or bearing.
func measureOf(typed string) (v float64, ok bool) {
	v, err := strconv.ParseFloat(strings.NewReplacer(",", ".", "−", "-", "°", "", "m", "").Replace(typed), 64)
	return v, err == nil && v > -10_000 && v < 10_000
}

// metresOf is a typed height or width.
func metresOf(typed string) (v float64, ok bool) {
	v, ok = measureOf(typed)
	return v, ok && v >= 0 && v <= 1000
}

// degreesOf is a typed bearing, 0 up to 360.
func degreesOf(typed string) (v float64, ok bool) {
	v, ok = measureOf(typed)
	return v, ok && v >= 0 && v <= 360
}

// decimetres: nobody clicks more exactly.
func decimetres(x float64) float64 { return math.Round(10*x) / 10 }
