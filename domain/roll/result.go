package roll

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Dated is a fact and its moment, an entry to be, and the fact in words.
type Dated struct {
	At    calendar.Moment
	Fact  book.Fact
	Words string
}

// Result is what was understood of a list.
type Result struct {
	Rows    []RowRead
	Ground  []Dated   // what the rows share: yards, stands, boxes, batches
	Columns []Mistake // what is wrong with the columns

	Dates     Order   // how dates such as 5/6/2027 were read
	DatesBy   Mistake // the place in the list that tells it and, as What, its text; none if the keeper said it
	AsksDates bool    // dates can be read in two ways: say Options.Dates
	AsksYear  bool    // dates have no year: say Options.Year
	Ungrafted []int   // batches of which nobody says when they were grafted: say Options.Grafted

	Counts Counts
}

// RowRead is what was understood of a row: its words and facts, or its
// mistakes. A row that is left out has neither.
type RowRead struct {
	Row      Row
	Nuc      string // its name, if that could be read
	New      bool   // the nuc is not in the book yet
	Words    string
	Facts    []Dated
	Mistakes []Mistake
	Skipped  bool
}

// Counts are the figures of a result.
type Counts struct {
	Nucs, New, Batches, Queens int // New nucs are among the Nucs
	Mistaken, Skipped          int // rows
}

// String are the counts in words: "64 nucs, 3 batches, 41 queens, 5 rows with
// mistakes".
func (c Counts) String() string {
	words := []string{counted(c.Nucs, "nuc", "nucs"), counted(c.Batches, "batch", "batches"), counted(c.Queens, "queen", "queens")}
	if c.Mistaken > 0 {
		words = append(words, counted(c.Mistaken, "row with mistakes", "rows with mistakes"))
	}
	if c.Skipped > 0 {
		words = append(words, counted(c.Skipped, "row left out", "rows left out"))
	}
	return strings.Join(words, ", ")
}

func counted(n int, one, more string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, more)
}

// Ready tells whether the list can be kept: nothing in it is a mistake, but for
// the rows that are left out, and there is something to keep.
func (r Result) Ready() bool {
	return len(r.Columns) == 0 && r.Counts.Mistaken == 0 && len(r.Facts()) > 0
}

// Mistakes are all mistakes, those of columns first, then by row.
func (r Result) Mistakes() []Mistake {
	all := slices.Clone(r.Columns)
	for _, row := range r.Rows {
		all = append(all, row.Mistakes...)
	}
	return all
}

// Facts are all facts in the order in which they happened; what the rows share
// comes first on its day.
func (r Result) Facts() []Dated {
	all := slices.Clone(r.Ground)
	for _, row := range r.Rows {
		all = append(all, row.Facts...)
	}
	slices.SortStableFunc(all, byTime)
	return all
}

func byTime(a, b Dated) int { return a.At.Instant.Compare(b.At.Instant) }

// Entries are all facts as entries written down at an instant by somebody; their
// ids rise in the order in which things happened.
func (r Result) Entries(written time.Time, writer string, mint func() [16]byte) []book.Entry {
	facts := r.Facts()
	all := make([]book.Entry, len(facts))
	for i, d := range facts {
		all[i] = book.Entry{ID: book.EntryID(mint()), At: d.At, Written: written.UTC().Truncate(time.Second), Writer: writer, Fact: d.Fact}
	}
	return all
}
