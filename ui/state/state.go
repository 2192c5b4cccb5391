package state

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
)

// State is everything the window shows. It is a value: [Update] makes the next
// one. The zero State is a window without a book.
type State struct {
	Book *Book     // the open book; nil: none
	Now  time.Time // the instant of the clock
	Day  calendar.Day
	Then bool // a day past is shown as it was known at its end

	Room     Room
	Pane     Pane // how Yard is divided
	Part     Part // which part has the turn where there is no room for all
	Layer    Layer
	Sort     Sort
	Heads    Heads // under which heads the nucs of Yard stand
	Signs    bool  // the legend says all signs where it has one line
	AllSigns bool  // a small map tells all its signs in a list over its foot
	Menu     Menu  // the list that is open
	MenuRow  int   // which of its rows is marked
	Keys     bool  // the sheet of keys is open
	Sheet    bool  // the card lies over the pane, where it has no room beside it

	Hover   scene.Tag // what the pointer is over
	Pointer scene.Point
	Drag    Drag

	Shift int // how many days the ribbon is moved from where it starts

	BookPage BookPage
	Licences []Licence      // nil: not read yet
	Version  string         // of the program, where its build knows it
	Licence  int            // the one whose text is shown
	Group    practice.Group // the numbers shown there; none: those in front

	Busy *Busy // long work under way

	Machine Machine // what it runs on

	reviewed reviewed // what is known of the review
	planned  planned  // what is known of the answer to the wish
	ordered  ordered  // what is known of the orders
	seasoned seasoned // what is known of the season
	laidOut  laidOut  // what is known of the try-out of a layout

	then string // the command to run after the one that runs

	Width, Height float64 // of the window, dp
	Prefs
	InBook
}

// Room is one of the rooms of the window. The zero Room is Today.
type Room uint8

// The rooms.
const (
	Today Room = iota
	Yard
	Plan
	Review
	Numbers // the keeper's numbers
	About   // the book: its file, copies, what leaves and enters
	roomCount
)

// Fill is what fills a room in the place of its panes; Esc gives the room back.
// The zero Fill is nothing.
type Fill uint8

// What fills a room.
const (
	NoFill     Fill = iota
	RecordFill      // the evening's record, on Today
	LateFill        // the late day of the batch FillOf, on Today
	BatchFill       // the batch FillOf, on Yard
	StartFill       // the steps of a new book
	ListFill        // a list that is brought
	BooksFill       // what can be opened
	LayoutFill      // a try-out of how the boxes of the yard FillOf stand, on Yard
	CourseFill      // the course of the chosen nuc, or of FillOf, on Yard
)

// Pane is how the room Yard is divided. The zero Pane is map and lids.
type Pane uint8

// The divisions of the room Yard.
const (
	Split Pane = iota // map and lids
	Map
	Lids
	Wall
	Table
)

// Part is the part of a room that has the turn in a small window. The zero
// Part is the room's main one.
type Part uint8

// The parts that take turns.
const (
	MainPart Part = iota // the lids of Yard, the route of Today
	SidePart             // the map of Yard, the kit of Today
	LanePart             // the batches of Yard
)

// Layer is what the map shows besides names. The zero Layer is the condition.
type Layer uint8

// The layers of the map.
const (
	ByCondition Layer = iota
	ByDue             // every lid with its clock
	ByBatch           // every lid with the number of its batch
	ByStrength        // every lid with its bees as recorded
	BySureness        // how sure it is that a nuc holds what is shown
	ByRobbing         // every lid with how exposed it is to robbers
)

// Menu is a list that lies over the room while it is open.
type Menu uint8

// The menus. NoMenu is the zero value.
const (
	NoMenu Menu = iota
	YardMenu
	LayerMenu // where the head of the map has no room for its layers
	WriterMenu
	HeadsMenu // what the nucs of Yard stand together by
)

// Place is something that scrolls.
type Place uint8

// The places that scroll.
const (
	GridPlace Place = iota
	WallPlace
	TablePlace
	RoutePlace
	LanePlace
	CardPlace
	KeysPlace
	RecordPlace
	FillPlace // what fills the room, where it is higher than it
	NumbersPlace
	BookPlace
	ReviewPlace
	PlanPlace
	OrdersPlace
	SeasonPlace
	ClockPlace // what follows from the first batch of a new book
)

// Today is the day of the clock in the zone of the book's home yard.
func (s State) Today() calendar.Day {
	if s.Book == nil {
		return calendar.DayOf(s.Now, s.Now.Location())
	}
	if s.Walk != nil {
		return calendar.DayOf(s.Now, s.Walk.Before.View.Zone())
	}
	return calendar.DayOf(s.Now, s.Book.Zone(s.Now))
}

// Looked is the day looked at: today unless another was chosen.
func (s State) Looked() calendar.Day {
	if s.Day.IsZero() {
		return s.Today()
	}
	return s.Day
}

// Away tells whether another day than today is looked at.
func (s State) Away() bool { return s.Looked() != s.Today() }

// Ahead tells whether the day looked at has not come.
func (s State) Ahead() bool { return s.Looked() > s.Today() }

// Reading is the book read on the day looked at; an empty one without a book.
// While a walk of that day is typed in it is as it was when the walk was opened:
// a big book is not read anew after every line.
func (s State) Reading() *Reading { return s.readOn(s.Looked()) }

// Present is the book read now.
func (s State) Present() *Reading { return s.readOn(s.Today()) }

func (s State) readOn(d calendar.Day) *Reading {
	switch w := s.Walk; {
	case w != nil && w.Day == d:
		return w.Before
	case w != nil && s.Today() == d:
		return w.present
	}
	if s.Then {
		return s.Book.AsKnown(s.Now, d)
	}
	return s.Book.On(s.Now, d)
}

// AsThen tells whether what is shown is as it was known on the day looked at.
func (s State) AsThen() bool { return s.Then && s.Looked() < s.Today() }

// Size is the window in lengths of the scene.
func (s State) Size() scene.Area {
	return scene.Area{W: s.Width / s.TextSize(), H: s.Height / s.TextSize()}
}

// TextSize is how much larger than usual everything is, from 1 to 2.
func (s State) TextSize() float64 { return min(max(s.Text, 1), 2) }

// Filled is the yard shown in the room, or zero for all.
func (s State) Filled() book.YardID { return s.Yards[s.Room] }
