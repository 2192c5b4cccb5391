package state

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// LayoutMore is the field that says for how many more boxes places are to be found.
const LayoutMore = LayoutField + "more"

// How many more boxes there are to be where nothing is typed, and at most.
const (
	moreUsual = 12
	moreMost  = 200
)

// MoreCount is for how many boxes places are to be found; false where what is typed is
// no number of boxes.
func (s State) MoreCount() (n int, ok bool) {
	text := strings.TrimSpace(s.Typed(LayoutMore))
	if text == "" {
		return moreUsual, true
	}
	n, err := strconv.Atoi(text)
	return n, err == nil && n > 0 && n <= moreMost
}

// MoreRight tells whether what stands in that field is a number of boxes.
func (s State) MoreRight() bool { _, ok := s.MoreCount(); return ok }

// moreBoxes are stands of new boxes, as many on each as most stands have, from each of which
// a virgin is to fly.
func (s State) moreBoxes() (State, []yard.Stand) {
	count, _ := s.MoreCount()
	s.Pen.IDs.Deed()
	ids, letters := s.Pen.IDs, s.Laying.freeLetters()
	more := siting.Stands(count, siting.OnAStand(s.Laying.Try), func() (book.StandID, string) { return book.StandID(ids.Next()), letters() })
	for i := range more {
		for k := range more[i].Nucs {
			more[i].Nucs[k].ID = book.NucID(ids.Next())
		}
	}
	s.Pen.IDs = ids
	return s, more
}

// SpareLayout is the effect that finds out which nuc is one too many.
type SpareLayout struct {
	key     layoutKey
	layout  yard.Layout
	numbers practice.Numbers
}

func (SpareLayout) effect() {}

// LayoutSpared brings which nucs are too many.
type LayoutSpared struct {
	key layoutKey
	all []siting.Spared
}

func (LayoutSpared) msg() {}

// sparedMost is how many nucs are named that might go, one after the other.
const sparedMost = 3

// Reckon finds out. It may run beside the window.
func (e SpareLayout) Reckon() LayoutSpared {
	return LayoutSpared{e.key, siting.Spare(e.layout, sparedMost, nil, e.numbers)}
}

func spared(s State) (State, []Effect) {
	s.laidOut.spared = nil
	return s, []Effect{SpareLayout{s.layoutKey(), s.LayoutSheet().Try.Layout, s.Present().Numbers()}}
}

// sparedTaken is the window with the nucs that are too many in the try-out as it is.
func (s State) sparedTaken(m LayoutSpared) State {
	if s.Laying != nil && m.key == s.layoutKey() {
		s.laidOut.spared = &m
	}
	return s
}

// tooMany says which nuc is one too many, where that was asked of the try-out as it is.
func (s State) tooMany() []LayoutPart {
	m := s.laidOut.spared
	if m == nil || m.key != s.layoutKey() {
		return nil
	}
	if len(m.all) == 0 {
		return []LayoutPart{{Title: "None is one too many", Lines: []string{"There is no nuc without which the others fare better."}, Ruled: true}}
	}
	part := LayoutPart{Title: "One too many: " + m.all[0].Name, Lines: []string{m.all[0].Words() + "."}, Ruled: true}
	var then []string
	for _, one := range m.all[1:] {
		then = append(then, one.Name)
	}
	if len(then) > 0 {
		part.Lines = append(part.Lines, fmt.Sprintf("After it %s. What the nuc itself yields is not weighed.", strings.Join(then, ", then ")))
	}
	return []LayoutPart{part}
}
