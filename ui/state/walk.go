package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/rules"
)

// Walk is the walk of one day while it is typed in: its rows in walking order,
// the line being typed, and the count at its end. It is never changed, only
// replaced.
type Walk struct {
	Day     calendar.Day
	Yard    book.YardID // whose nucs are walked; zero: those of all yards
	Part    calendar.Part
	All     bool     // rows for all nucs, not only for those of the day
	Stands  []string // letters of the stands whose rows alone are shown; none: all rows
	Reader  string   // who reads aloud; "" until somebody is chosen
	Rows    []WalkRow
	At      RowName // the row that is typed into
	Says    LineSays
	Refused string // what was typed when Enter found that it makes no sense
	Passed  Passed // the question asked again of the row that is typed into
	Warned  bool   // it was said once what is typed and not written
	Closing []rules.Closing
	Twins   []rules.Twin // lines that stand twice
	Done    int          // nucs that are written
	Nucs    int          // nucs of the walk
	Asking  int          // rows that do not fit the book, and nobody has said why
	Before  *Reading     // the book as it was when the walk was opened

	behind  book.NucID          // the nuc behind which the walk goes on, once it is read anew
	hidden  []book.NucID        // open nucs of stands that are not shown
	since   int                 // the deeds written before the walk was opened
	nucs    []*Nuc              // in the order in which they are driven to and walked
	kept    map[book.NucID]bool // nucs whose rows were struck: they stay to be typed anew
	season  *book.Season        // the book with all that is on its way into it
	view    *book.View          // of the walk's day
	course  *course.Course
	present *Reading             // the same of now
	coming  map[book.BatchID]int // rows that are to get a cell, by its batch
	ids     []book.NucID         // in walking order
	places  map[book.NucID]int   // of the nucs in walking order
	plan    map[book.NucID]string
	ground  []book.Entry // of the season, what every nuc's clock rests on
}

// WalkField is the field of the line of the row that is typed into.
const WalkField = "walk.line"

// RowRef is the kind of a [scene.Ref] that names a row of the walk; its ID is
// that of [WalkRow.Ref].
const RowRef = "row"

// withWalk is the window with a changed copy of the walk.
func (s State) withWalk(change func(*Walk)) State {
	w := *s.Walk
	change(&w)
	s.Walk = &w
	return s
}

// noWalk says why no walk can be opened.
func noWalk(s State) string {
	if s.Ahead() {
		return "that day has not come: type it in when it has, or go back to now with Home"
	}
	return noPen(s)
}

// notWalking says why there is no walk to do something in.
func notWalking(s State) string {
	switch {
	case s.Walk == nil:
		return "no walk is open"
	case s.Asked != nil:
		return "answer the question first"
	}
	return ""
}
