package state

import (
	"bytes"
	"slices"
	"time"

	"lidmark/domain/book"
)

// Told is a line of a walk that is in the book, as it was typed: the book holds
// what it told, not in which words and order.
type Told struct {
	Entries []book.EntryID `json:"entries"`
	Typed   []Typed        `json:"typed"`
}

// toldFor is how long a line is known as it was typed: an evening's lines are
// looked through again on the next day.
const toldFor = 48 * time.Hour

// told are the lines typed of late, for the draft.
func (s State) told() (all []Told) {
	for _, d := range slices.Concat(s.Pen.Earlier, s.Pen.Done) {
		if !d.OfWalk || len(d.Typed) == 0 || len(d.Entries) == 0 || s.Now.Sub(d.Entries[0].Written) > toldFor {
			continue
		}
		t := Told{Typed: d.Typed}
		for _, e := range d.Entries {
			t.Entries = append(t.Entries, e.ID)
		}
		all = append(all, t)
	}
	return all
}

// toldBefore is the window that knows how lines were typed before the program
// ended, those that it wrote itself left out.
func (s State) toldBefore(lines []Told) State {
	if len(lines) == 0 {
		return s
	}
	known := entriesOf(slices.Concat(s.Pen.Earlier, s.Pen.Done))
	line := map[book.EntryID]int{} // of the entries that are to be found
	for i, t := range lines {
		for _, id := range t.Entries {
			if !known[id] {
				line[id] = i
			}
		}
	}
	deeds := make([]Deed, len(lines))
	for e := range s.Book.Season.Entries() {
		if i, ok := line[e.ID]; ok {
			deeds[i].Entries = append(deeds[i].Entries, e)
		}
	}
	for i, d := range deeds {
		if len(d.Entries) > 0 {
			s.Pen.Deeds++
			d.Number, d.Typed, d.OfWalk = s.Pen.Deeds, lines[i].Typed, true
			slices.SortFunc(d.Entries, func(a, b book.Entry) int { return bytes.Compare(a.ID[:], b.ID[:]) })
			s.Pen.Earlier = append(slices.Clip(s.Pen.Earlier), d)
		}
	}
	return s
}
