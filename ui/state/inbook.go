package state

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
)

// InBook is what the window holds of one book: where the keeper is in it, and what
// is typed and written. With another book it is begun anew, as the zero InBook.
type InBook struct {
	Fill   Fill                   // what fills the room in the place of its panes
	FillOf book.Subject           // what that is about
	Way    int                    // the way out of a late day that is chosen, from 0, the best
	Yards  [roomCount]book.YardID // the yard shown in a room; zero: all
	Filter string                 // words typed into the filter
	Marked bool                   // all of them are marked: what is typed next takes their place
	Typing bool                   // the filter takes the keys
	Goto   string                 // the name of a nuc that is being typed: a capital, then figures
	Folded map[string]bool        // the sections folded, by their keys
	Number practice.Key           // chosen in My numbers
	Copies []KeptCopy             // as they were found

	Selection Selection
	Ring      book.Subject                 // the nuc the keys stand on, where that is not the one taken last
	Map       map[book.YardID]scene.Camera // where a yard was zoomed; none: the whole yard
	Scroll    map[Place]float64            // how far a pane is scrolled, dp

	Pen     Pen
	Fields  map[string]Field // what was typed, by the name of the field
	Focus   scene.Ref        // what the keys go to; none: the nucs, or what they lie over
	Form    *Form            // the record being filled in, in the place of the card
	More    bool             // the card lists all that can be written of what is selected
	Trail   []Selection      // what links of the card were followed from, the latest last
	Follow  bool             // the card shows what has the focus, however it was scrolled
	Asked   *Asked           // the question that waits for one key
	Walk    *Walk            // the walk being typed in, where RecordFill fills the room
	DayPage DayPage          // the route of the day as it is worked off
	Note    Note             // what was done or went wrong, for the foot

	Reviewing Reviewing // what is set in Review
	Planning  Planning  // what is set in Plan

	Laying *Laying                 // the try-out of a layout that is worked at, or was; nil: none
	Laid   map[book.YardID]*Laying // those that were worked at in other yards

	Drawing Drawing     // what is being drawn on its ground
	Brought *GroundRead // what a file has of it, looked at before it is kept; nil: none

	Start Start  // a new book while it is begun
	Bring *Bring // the list that is brought; nil: none
}

// opened is the window with another book, or with the same one read anew: then
// what it no longer knows drops out.
func (s State) opened(m Opened) State {
	first := s.Book == nil
	if !m.Again {
		s.reviewed, s.planned, s.seasoned, s.laidOut = reviewed{}, planned{}, seasoned{}, laidOut{}
	}
	page := s.paged()
	s.Book, s.Busy = m.Book, nil
	s.Hover, s.Drag, s.Menu, s.Keys, s.Sheet, s.then = scene.Tag{}, Drag{}, NoMenu, false, false, ""
	if m.Again {
		s = s.unwalked().reread(m.IDs)
	} else {
		s.InBook = InBook{Pen: Pen{IDs: m.IDs}}
		if page {
			s.Room, s.Pane, s.Part = Yard, Split, MainPart
		}
		s = s.withPen()
	}
	if first && s.Away() {
		s = s.on(s.Day) // so that the ribbon shows it
	}
	return s.drafted(m.Draft)
}

// reread is the window with its book read anew, without what that does not know.
func (s State) reread(ids book.IDs) State {
	s.Pen.IDs = ids
	known := s.Reading().Known
	s.Selection = s.Selection.kept(known)
	for room, yard := range s.Yards {
		if !yard.IsZero() && !known(yard.Subject()) {
			s.Yards[room] = book.YardID{}
		}
	}
	if s.Fill == RecordFill || !s.FillOf.IsZero() && !known(s.FillOf) {
		s = s.givenBack()
	}
	return s
}

// withPen is the window with who writes in its book: who did so last, or the only
// person of the book.
func (s State) withPen() State {
	if s.Book == nil {
		return s
	}
	s.Pen.Writer = s.Writers[s.Book.Path]
	if s.Pen.Writer == "" {
		s.Pen.Writer = s.Present().View.OnlyPerson()
	}
	s.Prefs = s.recalled(s.Book.Path, s.Pen.Writer)
	return s
}
