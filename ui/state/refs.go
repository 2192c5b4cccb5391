package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// The kinds of a [scene.Ref] that are no subject of the book.
const (
	DayRef     = "day"     // a column of the ribbon; ID is the date
	CommandRef = "command" // what runs a command; ID is its name
	SortRef    = "sort"    // the head of a column of the table; ID is its name
	YardRef    = "show"    // a yard of the menu; ID is its id, or "" for all
	CopyRef    = "copy"    // a copy of the book; ID is its file
	LicenceRef = "licence" // a licence; ID is its place among them, from 1
	WriterRef  = "writer"  // a person of the menu of writers; ID is the name
	TaskRef    = "task"    // a line of the route; ID is its number from 0
	WayRef     = "way"     // a way out of a late day; ID is its number from 0
	PaneRef    = "pane"    // the empty ground of a pane; ID is one of the grounds
)

// The grounds of panes, the IDs of a [PaneRef].
const (
	MapGround  = "map"
	GridGround = "grid"
	WallGround = "wall"
)

// RefOf names a subject of the book in a scene.
func RefOf(s book.Subject) scene.Ref {
	return scene.Ref{Kind: s.Kind.String(), ID: s.UUID.String()}
}

// SubjectOf is the subject a scene names, or none.
func SubjectOf(r scene.Ref) (s book.Subject) {
	if s.UnmarshalText([]byte(r.Kind+":"+r.ID)) != nil {
		return book.Subject{}
	}
	return s
}

// dayOf is the day a scene names, or none.
func dayOf(r scene.Ref) calendar.Day {
	if r.Kind != DayRef {
		return 0
	}
	d, err := calendar.ParseDay(r.ID)
	if err != nil {
		return 0
	}
	return d
}

// CommandOf names a command in a scene.
func CommandOf(name string) scene.Ref { return scene.Ref{Kind: CommandRef, ID: name} }
