package state

import (
	"errors"
	"strings"
	"unicode"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// linePrefix begins the names of the fields of the lines about nucs.
const linePrefix = "line."

// LineField is the name of the field of the line about a nuc: each has its own,
// in which what was typed waits until it is written.
func LineField(nuc book.NucID) string { return linePrefix + nuc.String() }

// CardField is the field of the line about the nuc on the card; "" where no line
// can be typed.
func (s State) CardField() string {
	n := s.chosen()
	if n == nil || s.Selection.Len() != 1 {
		return ""
	}
	return LineField(n.Nuc.Nuc)
}

// lineLeft is the window without the caret in the line of a nuc that is not on
// the card any more.
func (s State) lineLeft() State {
	if name := s.InField(); strings.HasPrefix(name, linePrefix) && name != s.CardField() {
		s.Focus = scene.Ref{}
	}
	return s
}

// TypedLine is a line that a keeper types, as it reads back.
type TypedLine struct {
	line.Line
	Mistakes line.Mistakes // where it makes no sense
	Trouble  string        // why it cannot be meant, where no place is to blame
	ids      book.IDs      // after the ids that it needed
}

// OK tells whether the line says something and makes sense.
func (t TypedLine) OK() bool {
	return len(t.Sections) > 0 && len(t.Mistakes) == 0 && t.Trouble == ""
}

// Wrong is what is wrong with the line; "" when nothing is.
func (t TypedLine) Wrong() string {
	if len(t.Mistakes) > 0 {
		return t.Mistakes[0].Error()
	}
	return t.Trouble
}

// readLine reads a line against a context, of which it fills what the window
// knows.
func (s State) readLine(text string, c line.Context) TypedLine {
	ids := s.Pen.IDs
	ids.Deed()
	c.Now, c.Units = s.Now, s.Units
	c.Mint = func() book.QueenID { return book.QueenID(ids.Next()) }
	l, err := line.Parse(text, c)
	t := TypedLine{Line: l}
	if err != nil && !errors.As(err, &t.Mistakes) {
		t.Trouble = err.Error()
	}
	for _, f := range l.Facts() {
		if err := rules.Plausible(f); err != nil && t.Trouble == "" {
			t.Trouble = err.Error()
		}
	}
	t.ids = ids
	return t
}

// CardLine reads the line of the chosen nuc.
func (s State) CardLine() TypedLine {
	r := s.Reading()
	c := line.Context{View: r.View, Day: r.Day, Yard: s.Filled(), Planned: r.Sheet()}
	if n := s.chosen(); n != nil {
		c.Nuc = n.Nuc.Nuc
	}
	if !s.Away() {
		c.At = calendar.Instantly(s.Now)
	}
	return s.readLine(s.Typed(s.CardField()), c)
}

// writeLine gives the book what a line says, once what it asks of the book is
// answered.
func (s State) writeLine(t TypedLine) (State, []Effect) {
	entries := t.Entries(&t.ids, s.Now, s.Pen.Writer)
	var back []string
	for _, section := range t.Sections {
		back = append(back, section.Subject+": "+section.Back)
	}
	s.Pen.IDs = t.ids
	return s.settled(&Asked{
		Entries: entries, Words: said(back), Field: s.CardField(),
		Typed: typedRows(s.Typed(s.CardField()), t.Line),
	})
}

// lineBegun opens the line of the chosen nuc with its first letter.
func (s State) lineBegun(r rune) State {
	name := s.CardField()
	if name == "" || noPen(s) != "" || s.Fill != NoFill || !unicode.IsLower(r) {
		return s
	}
	f := s.Field(name)
	if f.Text != "" { // goes on where it was left
		f = FieldOf(f.Text + " ")
	}
	return s.WithField(name, f.Put(string(r))).focused(FieldNamed(name))
}

// lineEntered writes the line, once what it asks of the book is answered.
func (s State) lineEntered() (State, []Effect) {
	if t := s.CardLine(); s.CardField() != "" && t.OK() {
		return s.writeLine(t)
	}
	return s, nil
}

// lineWritten is the window gone on to the next nuc when a line is on its way into
// the book.
func (s State) lineWritten(field string) State {
	s = s.WithField(field, Field{})
	s.Focus = scene.Ref{}
	if noNucs(s) != "" {
		return s
	}
	next, _ := step(+1, false)(s)
	return next
}
