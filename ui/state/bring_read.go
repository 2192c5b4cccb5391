package state

import (
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/founding"
	"lidmark/domain/line"
	"lidmark/domain/roll"
)

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
	if b.Series != nil {
		b.readWeatherAgain(s)
		s.Bring = &b
		return s
	}
	b.Options = s.listOptions(&b)
	b.Means = nil
	for _, c := range b.Options.Columns {
		b.Means = append(b.Means, meaningOfList(c))
	}
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
	b.ids, b.facts, b.wrong = ids, b.Result.Facts(), wrongRows(b.Result.Rows)
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
	o := roll.Options{Skip: s.skipped(), Grafted: map[int]calendar.Day{}}
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
		s.batchOption(o, name)
	}
	return o
}

// skipped are the rows that are left out, by their numbers.
func (s State) skipped() map[int]bool {
	all := map[int]bool{}
	for name := range s.Fields {
		if number, ok := strings.CutPrefix(name, ListSkip("")); ok && s.Typed(name) == "yes" {
			row, _ := strconv.Atoi(number)
			all[row] = true
		}
	}
	return all
}

// batchOption notes what a field says of a batch.
func (s State) batchOption(o roll.Options, name string) {
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
