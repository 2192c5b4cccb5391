package state

import (
	"time"

	"lidmark/domain/book"
)

// The effects of the room Book. What comes of them is a [Worked] note, and what
// else is named.
type (
	// FindCopies asks for the copies of the book; [CopiesFound] comes back.
	FindCopies struct{}
	// CopyBook makes a checked copy of the book in a file; with no name among
	// the copies beside it.
	CopyBook struct{ To string }
	// RestoreCopy makes a new book in a file out of a copy, and opens it.
	RestoreCopy struct{ Copy, To string }
	// TakeIn adds the entries of another book or of JSON Lines; [TookIn] comes
	// back.
	TakeIn struct{ Path string }
	// TakeOut writes the book, or a table of it as of an instant, in an open form.
	TakeOut struct {
		Form OpenForm
		Path string
		On   time.Time
		Yard book.YardID // whose ground it is
	}
	// CheckBook reads the whole book and tells what is wrong with it.
	CheckBook struct{}
	// ReadLicences asks for the licences; [LicencesRead] comes back.
	ReadLicences struct{}
)

func (FindCopies) effect()   {}
func (CopyBook) effect()     {}
func (RestoreCopy) effect()  {}
func (TakeIn) effect()       {}
func (TakeOut) effect()      {}
func (CheckBook) effect()    {}
func (ReadLicences) effect() {}

// CopiesFound are the copies of the book at a path, the latest first.
type CopiesFound struct {
	Path string
	All  []KeptCopy
}

// LicencesRead are the licences of all that is in the program, and the program's
// version where the build knows it.
type LicencesRead struct {
	All     []Licence
	Version string
}

// TookIn is the open book with what was taken into it. What is typed stays.
type TookIn struct {
	Book *Book
	IDs  book.IDs // makes ids above those taken in
}

func (CopiesFound) msg()  {}
func (LicencesRead) msg() {}
func (TookIn) msg()       {}

// KeptCopy is a copy of the book.
type KeptCopy struct {
	Path    string
	Made    time.Time
	Entries int
}

// Licence is under what terms a part of the program may be used.
type Licence struct{ Of, Terms, Text string }

// OpenForm is an open form in which the book leaves.
type OpenForm uint8

// The open forms: all entries as JSON Lines, tables as CSV, deadlines as a
// calendar file, and a yard's ground as GeoJSON.
const (
	AllEntries OpenForm = iota
	NucTable
	BatchTable
	LookTable
	PlanTable
	OrderTable
	CalendarFile
	GroundFile
)

// openForm is an open form: the name of its command, what it is, and how its file
// ends.
type openForm struct{ command, does, ending string }

// endings are how its file may end; a table may be a workbook as well.
func (f openForm) endings() []string {
	if f.ending == ".csv" {
		return []string{f.ending, ".xlsx"}
	}
	return []string{f.ending}
}

// openForms are the forms with the name of their command, what they are, and how
// their file ends.
var openForms = [...]openForm{
	AllEntries:   {"take out entries", "all entries, as JSON Lines", ".jsonl"},
	NucTable:     {"take out nucs", "the nucs on the day looked at, as a table (CSV or XLSX)", ".csv"},
	BatchTable:   {"take out batches", "the batches, as a table (CSV or XLSX)", ".csv"},
	LookTable:    {"take out looks", "all looks, as a table (CSV or XLSX)", ".csv"},
	PlanTable:    {"take out plans", "the planned batches, as a table (CSV or XLSX)", ".csv"},
	OrderTable:   {"take out orders", "the orders, as a table (CSV or XLSX)", ".csv"},
	CalendarFile: {"take out calendar", "deadlines with alarms, as a calendar file (iCalendar)", ".ics"},
	GroundFile:   {"take out ground", "the ground of the yard on the map and its stands, as GeoJSON", ".geojson"},
}

// BookPage is what stands beside the facts of the book.
type BookPage uint8

// The pages of the room Book.
const (
	FilePage    BookPage = iota // copies, what comes in and what leaves
	LidPage                     // how to read a lid
	LicencePage                 // the program and its licences
)
