package state

import (
	"bytes"
	"cmp"
	"maps"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Draft is what is typed and not written, of one book, and where it was typed; and
// how the lines of a walk were typed that the book holds already.
// The zero Draft is nothing.
type Draft struct {
	Path   string            `json:"path"` // of the book
	Fields map[string]string `json:"fields,omitzero"`
	Focus  string            `json:"focus,omitzero"` // the field that took the keys
	Form   string            `json:"form,omitzero"`  // the record that is open
	Of     []book.Subject    `json:"of,omitzero"`    // what it is about, or what is selected, or the nuc of the row of a walk
	Day    calendar.Day      `json:"day,omitzero"`   // of the walk
	Room   Room              `json:"room,omitzero"`
	Fill   Fill              `json:"fill,omitzero"`
	Number string            `json:"number,omitzero"` // the name of the one chosen in My numbers
	FillOf book.Subject      `json:"fillOf,omitzero"`
	Unsaid []Unsaid          `json:"unwritten,omitzero"` // what the book has not taken
	Told   []Told            `json:"told,omitzero"`

	Tries []book.LayoutTried `json:"tryOuts,omitzero"` // of layouts, as they are and the book does not have them
}

// Unsaid is a deed that the book has not taken.
type Unsaid struct {
	Words   string       `json:"words"`
	Turns   bool         `json:"turns,omitzero"` // it undoes or redoes another one
	Typed   []Typed      `json:"typed,omitzero"` // where it was a line
	OfWalk  bool         `json:"walk,omitzero"`
	Entries []book.Entry `json:"entries"`
}

// IsZero tells whether there is nothing to keep.
func (d Draft) IsZero() bool { return !d.waits() && len(d.Told) == 0 && len(d.Tries) == 0 }

// waits tells whether something was not written.
func (d Draft) waits() bool { return len(d.Fields) > 0 || d.Form != "" || len(d.Unsaid) > 0 }

// Without is the draft without the deeds whose entries are all in the book
// already, which has tells; of lines it stays known how they were typed.
func (d Draft) Without(has func(book.EntryID) bool) Draft {
	var unsaid []Unsaid
	d.Told = slices.Clone(d.Told)
	for _, u := range d.Unsaid {
		told := Told{Typed: u.Typed}
		for _, e := range u.Entries {
			if has(e.ID) {
				told.Entries = append(told.Entries, e.ID)
			}
		}
		if len(told.Entries) < len(u.Entries) {
			unsaid = append(unsaid, u)
		} else if len(u.Typed) > 0 && u.OfWalk {
			d.Told = append(d.Told, told)
		}
	}
	d.Unsaid = unsaid
	return d
}

// Draft is what is typed and not written.
func (s State) Draft() Draft {
	d := Draft{Path: s.Book.Path, Focus: s.InField(), Of: subjects(s.Selection), Room: s.Room, Fill: s.Fill, FillOf: s.FillOf, Told: s.told(), Tries: s.triesUnkept()}
	if s.paged() {
		d.Fill = NoFill // it is about another book
	}
	for name, f := range s.Fields {
		if f.Text == "" || startField(name) || listField(name) {
			continue
		}
		if d.Fields == nil {
			d.Fields = map[string]string{}
		}
		d.Fields[name] = f.Text
	}
	if s.Number != 0 {
		d.Number = s.Number.String()
	}
	switch {
	case s.Form != nil:
		d.Form, d.Of = s.Form.Record, subjects(s.Form.Of)
	case s.Walk != nil:
		d.Day, d.Of = s.Walk.Day, []book.Subject{s.Walk.At.Nuc.Subject()}
	}
	for _, deed := range slices.Concat(s.Pen.Failed, s.Pen.Sent) {
		d.Unsaid = append(d.Unsaid, Unsaid{deed.Words, deed.Turns, deed.Typed, deed.OfWalk, deed.Entries})
	}
	return d
}

// typedSince tells whether the draft of the book is another one than before.
func (s State) typedSince(before State) bool {
	if s.Book == nil || s.Book.Path == "" || s.Book.ReadOnly != "" || before.Book == nil || before.Book.Path != s.Book.Path {
		return false
	}
	sameText := func(f, g Field) bool { return f.Text == g.Text }
	return !maps.EqualFunc(s.Fields, before.Fields, sameText) || !s.Form.same(before.Form) || s.triedSince(before) ||
		!slices.EqualFunc(s.Pen.Failed, before.Pen.Failed, sameDeed) || !slices.EqualFunc(s.Pen.Sent, before.Pen.Sent, sameDeed)
}

func sameDeed(d, e Deed) bool { return d.Number == e.Number }

// same tells whether two forms are of one record about the same things.
func (f *Form) same(g *Form) bool {
	if f == nil || g == nil {
		return f == g
	}
	return f.Record == g.Record && slices.Equal(subjects(f.Of), subjects(g.Of))
}

func (s State) formName() string {
	if s.Form == nil {
		return ""
	}
	return s.Form.Record
}

// drafted is the window with a draft back in it: where it was typed, its fields
// filled, its form open, and what the book has not taken waiting to be tried
// again.
func (s State) drafted(d Draft) State {
	if d.IsZero() {
		return s
	}
	s, tried := s.toldBefore(d.Told).triedBefore(d.Tries)
	if s.Note.Text = cmp.Or(tried, s.Note.Text); !d.waits() {
		return s
	}
	known := s.Reading().Known
	s.Selection = Select(d.Of...).kept(known)
	s.Room = min(d.Room, roomCount-1)
	if filled := d.Fill == LateFill || d.Fill == BatchFill; filled && known(d.FillOf) {
		s.Fill, s.FillOf = d.Fill, d.FillOf
	}
	if k, ok := practice.ByName(d.Number); ok {
		s.Number = k
	}
	for name, text := range d.Fields {
		s = s.WithField(name, FieldOf(text))
	}
	if d.Fields[d.Focus] != "" {
		s = s.focused(FieldNamed(d.Focus))
	}
	for _, u := range d.Unsaid {
		s.Pen.Deeds++
		s.Pen.Failed = append(slices.Clip(s.Pen.Failed), Deed{Words: u.Words, Entries: u.Entries, Turns: u.Turns, Typed: u.Typed, OfWalk: u.OfWalk, Number: s.Pen.Deeds})
		s.Pen.Why = "the program ended before the book had it"
	}
	s.Note = Note{Text: "what was typed and not written is here again"}
	if tried != "" {
		s.Note.Text += "; " + tried
	}
	if selected := s.Selection; d.Fill == RecordFill && d.Room == Today {
		s = s.walkBack(d)
		s.Selection = selected
	}
	return s.formBack(d.Form)
}

// walkBack is the window with the walk open again, at the row that was typed in.
func (s State) walkBack(d Draft) State {
	if s.Day = d.Day; d.Day == s.Today() {
		s.Day = 0
	}
	if noWalk(s) != "" {
		return s.now()
	}
	text := s.Field(WalkField)
	s = s.toWalk()
	for _, row := range s.Walk.Rows {
		if len(d.Of) == 1 && row.Nuc.Subject() == d.Of[0] && row.Open() {
			s = s.rowOpened(row.RowName).WithField(WalkField, text).says()
		}
	}
	return s
}

// formBack is the window with the form of a record open again, its answers in
// their fields; without both where it does not fit what is selected.
func (s State) formBack(name string) State {
	rec, ok := RecordNamed(name)
	if !ok || !rec.fits(s) || rec.Asks == nil {
		return s.withoutFields(FormField)
	}
	s.Form, s.Sheet = &Form{Record: name, Of: s.Selection, Asks: rec.asks(s)}, s.Layout().Over
	first := s.Form.Asks[0]
	if first.Kind == Choice || first.Kind == Yes {
		return s.focused(ChoiceOf(FormField+first.Name, s.Typed(FormField+first.Name)))
	}
	return s.focused(FieldNamed(FormField + first.Name))
}

// subjects are what is selected in an order of their own, the one taken last at
// the end.
func subjects(sel Selection) []book.Subject {
	return slices.SortedFunc(sel.All(), func(a, b book.Subject) int {
		switch {
		case a == b:
			return 0
		case a == sel.last:
			return 1
		case b == sel.last:
			return -1
		}
		return bytes.Compare(a.UUID[:], b.UUID[:])
	})
}
