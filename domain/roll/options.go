package roll

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Options are what the keeper says of a list.
type Options struct {
	Heading int      // the number of the row of headings; that row and those above it are no part of the list. 0: there is none
	Columns []Column // what the columns mean, from column A on

	Dates Order        // of dates such as 5/6/2027; Asked takes what the list itself tells
	Year  int          // of dates that say none; 0: asked
	Day   calendar.Day // the day on which all was so that has no day of its own; none: today

	Grafted map[int]calendar.Day // when batches were grafted of which no row says it, by number
	Skip    map[int]bool         // the rows that are left out, by number

	Yard  string  // of nucs that are new and have no yard; "": the home yard
	Model string  // the kind of their boxes
	Sides int     // how many sides of comb they have; 0: not said
	Side  float64 // the area of a side in dm²; 0: not said
}

// Context is what a list is read against: the book as it stands now, or none
// for a new one, the instant, the zone of its days under a name that any machine
// knows, and a source of new ids, such as Next of a copy of [book.IDs], so that
// a list can be read again and again while its options change.
type Context struct {
	View *book.View
	Now  time.Time
	Zone *time.Location
	Mint func() [16]byte
}

// view is the book, or an empty one.
func (c Context) view() *book.View {
	if c.View != nil {
		return c.View
	}
	return book.NewSeason(c.zones, nil).At(c.Now)
}

// zones knows the zone of the list alone.
func (c Context) zones(string) (*time.Location, error) { return c.Zone, nil }
