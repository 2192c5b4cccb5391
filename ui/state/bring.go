package state

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/founding"
	"lidmark/domain/line"
	"lidmark/domain/roll"
)

// The fields of a list. That of a column says what it means, that of a row "yes"
// when it is left out, that of a batch when it was grafted.
const (
	ListEncoding = "list.encoding"
	ListSheet    = "list.sheet"   // its number from 0
	ListHeading  = "list.heading" // the number of the row of headings; "0": none
	ListDates    = "list.dates"
	ListYear     = "list.year"
	ListKind     = "list.kind" // of the boxes of new nucs
)

// ListColumn is the field of what a column means, counted from 1.
func ListColumn(column int) string { return fmt.Sprintf("list.column%d", column) }

// ListSkip is the field of whether the row of a number is left out.
func ListSkip(row string) string { return "list.skip" + row }

// rowChosen is the number of the row whose tick has the keys, or "".
func (s State) rowChosen() string {
	number, ok := strings.CutPrefix(s.Focus.ID, ListSkip(""))
	if !ok {
		return ""
	}
	return number
}

// ListGrafted is the field of when a batch was grafted.
func ListGrafted(batch int) string { return fmt.Sprintf("list.grafted%d", batch) }

func listField(name string) bool { return strings.HasPrefix(name, "list.") }

// Bring is a list while it is brought. It does not change; a list read otherwise
// is another Bring.
type Bring struct {
	Path string
	roll.List
	Sheet   int // which of the sheets is the list
	Options roll.Options
	Result  roll.Result
	Open    int // the column whose meanings are shown, from 1; 0: none
	First   int // the first column in sight, from 0

	facts []roll.Dated // all of the result
	ids   book.IDs     // after all that the result has
	since string       // the day from which a new book counts; "": the usual one
}

// listCommands bring a list.
var listCommands = []Command{
	{Name: "read list", Does: "", Word: "Read it so", Why: noEncodings, Do: readListSo},
	{Name: "keep list", Does: "", Word: "Keep it", Why: notKept, Do: keepList},
	{Name: "next mistake", Does: "", Word: "Next mistake", Why: noMistake, Do: pure(State.toNextMistake)},
}

func noList(s State) string {
	if s.Fill != ListFill || s.Bring == nil {
		return "no list is brought"
	}
	return ""
}

func noEncodings(s State) string {
	if why := noList(s); why != "" {
		return why
	}
	if len(s.Bring.Encodings) == 0 {
		return "it is read already"
	}
	return ""
}

func readListSo(s State) (State, []Effect) {
	s.Busy = &Busy{"the list is read", -1}
	return s, []Effect{ReadList{s.Bring.Path, s.Typed(ListEncoding)}}
}

// listRead is the window with a list that was read, or with why it was not.
func (s State) listRead(m ListRead) State {
	s.Busy = nil
	if m.Failed != "" {
		s.Note = Note{m.Failed, true}
		return s
	}
	s = s.withoutFields("list.").withoutFields("start.row").WithField(StartBatch, FieldOf("none"))
	s.Fill, s.Menu, s.Keys, s.Note, s.Selection = ListFill, NoMenu, false, Note{}, Selection{}
	s.Bring = &Bring{Path: m.Path, List: m.List}
	if len(m.List.Sheets) == 0 {
		if len(m.List.Encodings) > 0 {
			first := m.List.Encodings[0].Name
			s = s.WithField(ListEncoding, FieldOf(first)).focused(ChoiceOf(ListEncoding, first))
		}
		return s
	}
	if s.Book == nil && s.Typed(StartZone) == "" {
		s = s.WithField(StartZone, FieldOf(s.Machine.Zone))
	}
	return s.sheetTaken(0)
}

// sheetTaken is the window with a sheet of the list, its columns guessed.
func (s State) sheetTaken(i int) State {
	b := *s.Bring
	b.Sheet, b.Open, b.First, b.since = min(max(i, 0), len(b.Sheets)-1), 0, 0, ""
	s.Bring = &b
	heading := roll.Heading(b.Sheets[b.Sheet])
	s = s.withoutFields("list.column").withoutFields("list.skip").WithField(ListSheet, FieldOf(strconv.Itoa(b.Sheet)))
	s = s.WithField(ListHeading, FieldOf(strconv.Itoa(heading)))
	for i, c := range roll.Guess(b.Sheets[b.Sheet], heading) {
		s = s.WithField(ListColumn(i+1), FieldOf(c.String()))
	}
	s = s.scrolled(FillPlace, -s.Scroll[FillPlace])
	s.Focus = columnRef(1)
	return s.readAgain()
}

// listChanged is the window after something about the list was said.
func (s State) listChanged(name string) State {
	switch {
	case name == ListEncoding || len(s.Bring.Sheets) == 0:
		return s
	case name == ListSheet:
		i, _ := strconv.Atoi(s.Typed(ListSheet))
		return s.sheetTaken(i).focused(ChoiceOf(ListSheet, s.Typed(ListSheet)))
	}
	return s.readAgain()
}

// readAgain is the window with the list read as it is said now.
func (s State) readAgain() State {
	b := *s.Bring
	b.Options = s.listOptions(&b)
	b.read(s)
	if since := b.begins(s); since != b.since && s.Book == nil {
		b.since = since
		b.read(s)
	}
	s.Bring = &b
	return s
}

// read reads the list against the book, or the one that it founds.
func (b *Bring) read(s State) {
	view, ids := (*book.View)(nil), s.Pen.IDs
	if s.Book != nil {
		view = s.Present().View
		ids.Deed()
	} else {
		s.Bring, s.Start.made = b, nil
		f := s.Founding()
		view, ids = book.NewSeason(s.Machine.zone, f.Entries).At(s.Now), f.ids
	}
	b.Result = roll.Read(b.Sheets[b.Sheet], b.Options, roll.Context{View: view, Now: s.Now, Zone: view.Zone(), Mint: ids.Next})
	b.ids, b.facts = ids, b.Result.Facts()
}

// begins is the day from which a new book counts so that all of the list is in
// it; "" where that is the usual one.
func (b *Bring) begins(s State) string {
	first := s.Now
	if len(b.facts) > 0 && b.facts[0].At.Instant.Before(first) {
		first = b.facts[0].At.Instant
	}
	usual, err := founding.Book{}.Begins(s.Now, time.UTC)
	if err != nil || !first.Before(usual.Instant) {
		return ""
	}
	return (calendar.DayOf(first, time.UTC) - 1).String()
}

// from is the day from which a new book counts; "" is the usual one.
func (b *Bring) from() string {
	if b == nil {
		return ""
	}
	return b.since
}

// listOptions are what the fields say of the list.
func (s State) listOptions(b *Bring) roll.Options {
	o := roll.Options{Skip: map[int]bool{}, Grafted: map[int]calendar.Day{}}
	o.Heading, _ = strconv.Atoi(s.Typed(ListHeading))
	o.Dates, _ = roll.ParseOrder(s.Typed(ListDates))
	o.Year, _ = strconv.Atoi(s.Typed(ListYear))
	for i := range b.width() {
		c, _ := roll.ParseColumn(s.Typed(ListColumn(i + 1))) // what is not said is left out
		o.Columns = append(o.Columns, c)
	}
	combs, _ := founding.Combs{Kind: s.Typed(ListKind)}.Filled()
	o.Model, o.Sides, o.Side = combs.Kind, combs.Sides, combs.Area
	for name := range s.Fields {
		s.rowOption(o, name)
	}
	return o
}

// rowOption notes what a field says of a row or of a batch.
func (s State) rowOption(o roll.Options, name string) {
	if number, ok := strings.CutPrefix(name, ListSkip("")); ok && s.Typed(name) == "yes" {
		row, _ := strconv.Atoi(number)
		o.Skip[row] = true
	}
	if number, ok := strings.CutPrefix(name, "list.grafted"); ok {
		batch, _ := strconv.Atoi(number)
		if day, err := line.ParseDay(s.Typed(name), s.Today()); err == nil {
			o.Grafted[batch] = day
		}
	}
}

// Headings are the rows that can hold the headings: the one that looks like it,
// else the first, or none.
func (b *Bring) Headings() []Option {
	row := roll.Heading(b.Sheets[b.Sheet])
	if rows := b.Rows(); row == 0 && len(rows) > 0 {
		row = rows[0].Number
	}
	number := strconv.Itoa(row)
	return []Option{{number, "in row " + number}, {"0", "none"}}
}

// width is how many columns the list has.
func (b *Bring) width() int {
	n := 0
	for _, row := range b.Rows() {
		n = max(n, len(row.Cells))
	}
	return n
}

// Rows are those of the sheet that is the list; none while nothing was read.
func (b *Bring) Rows() []roll.Row {
	if len(b.Sheets) == 0 {
		return nil
	}
	return b.Sheets[b.Sheet].Rows
}
