package state

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/book"
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
	ListKind     = "list.kind"   // of the boxes of new nucs
	ListYard     = "list.yard"   // of a series of weather
	ListHeight   = "list.height" // in m, at which its wind was measured
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
	Sheet   int            // which of the sheets is the list
	Series  *BroughtSeries // it is a series of weather; nil: a list
	Means   []Meaning      // of each column
	Options roll.Options
	Result  roll.Result
	Open    int // the column whose meanings are shown, from 1; 0: none
	First   int // the first column in sight, from 0

	wrong []int        // the places of the rows with a mistake
	facts []roll.Dated // all of the result
	ids   book.IDs     // after all that the result has
	since string       // the day from which a new book counts; "": the usual one
}

// listCommands bring a list.
var listCommands = []Command{
	{Name: "read list", Does: "", Word: "Read it so", Why: noEncodings, Do: readListSo},
	{Name: "list again", Does: "", Word: "Read it again", Why: noRows, Do: readListSo},
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

// noRows says why the list cannot be read again from its file.
func noRows(s State) string {
	if why := noList(s); why != "" {
		return why
	}
	if len(s.Bring.Sheets) == 0 {
		return "say first how it is written"
	}
	return ""
}

func readListSo(s State) (State, []Effect) {
	if s.Bring.Series != nil {
		s.Busy = &Busy{"the weather is read", -1}
		return s, []Effect{ReadWeather{s.Bring.Path, s.Typed(ListEncoding)}}
	}
	s.Busy = &Busy{"the list is read", -1}
	return s, []Effect{ReadList{s.Bring.Path, s.Typed(ListEncoding)}}
}

// listOrWeather is the window with what was read: of a list that turns out to be a
// series of weather that is read.
func (s State) listOrWeather(m ListRead) (State, []Effect) {
	if m.Failed == "" && s.looksLikeWeather(m.List) {
		return s.choseWeather(m.Path)
	}
	return s.listRead(m), nil
}

// askEncoding asks how the list is written.
func (s State) askEncoding() State {
	if len(s.Bring.Encodings) == 0 {
		return s
	}
	first := s.Bring.Encodings[0].Name
	return s.WithField(ListEncoding, FieldOf(first)).focused(ChoiceOf(ListEncoding, first))
}

// listRead is the window with a list that was read, or with why it was not.
func (s State) listRead(m ListRead) State {
	s.Busy = nil
	if m.Failed != "" {
		s.Note = Note{m.Failed, true}
		return s
	}
	if s.readBefore(m) {
		b := *s.Bring
		b.List = m.List
		s.Bring, s.Note = &b, Note{Text: "the list was read again"}
		return s.readAgain()
	}
	s = s.withoutFields("list.").withoutFields("start.row").WithField(StartBatch, FieldOf("none"))
	s = s.entered(s.Room)
	s.Fill, s.Note, s.Selection = ListFill, Note{}, Selection{}
	s.Bring = &Bring{Path: m.Path, List: m.List}
	if len(m.List.Sheets) == 0 {
		return s.askEncoding()
	}
	if s.Book == nil && s.Typed(StartZone) == "" {
		s = s.WithField(StartZone, FieldOf(s.Machine.Zone))
	}
	return s.sheetTaken(0)
}

// readBefore tells whether a list is the one on the page, read again from a file
// in which rows were mended: what was said of it still holds.
func (s State) readBefore(m ListRead) bool {
	if s.Fill != ListFill || s.Bring == nil || s.Bring.Series != nil || s.Bring.Path != m.Path || len(s.Bring.Sheets) == 0 || len(s.Bring.Sheets) != len(m.List.Sheets) {
		return false
	}
	again := Bring{List: m.List, Sheet: s.Bring.Sheet}
	return again.width() == s.Bring.width()
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
