package line

import (
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/domain/unit"
)

// Context is what a line is read against.
type Context struct {
	View    *book.View                   // the book on the day of the line
	Now     time.Time                    // the instant of writing; nothing can have happened after it
	Day     calendar.Day                 // the day of which the line tells; zero: that of Now
	Part    calendar.Part                // the part of the day where the line says none
	At      calendar.Moment              // when it happened where the line says nothing of it; zero: by Part
	Instead []book.EntryID               // entries of the book that the line stands for from now on
	Yard    book.YardID                  // where a name is looked for first; zero: everywhere
	Nuc     book.NucID                   // the nuc of a line that names none; zero: it must name one
	Planned func(book.NucID) []book.Fact // what stands on the day's sheet for a nuc and can be ticked off; may be nil
	Asked   func(book.NucID) rules.Act   // what is planned at a nuc and cannot be ticked off; may be nil
	Mint    func() book.QueenID          // makes ids of new queens
	Named   func(string) []*book.Nuc     // finds nucs by name; nil: the View does
	Units   unit.System                  // of figures without a unit, and of what is read back
}

func (c Context) day() calendar.Day {
	if c.Day.IsZero() {
		return calendar.DayOf(c.Now, c.View.Zone())
	}
	return c.Day
}

// moment is when a line's doings happened. A part of today that is not over
// is taken as now, so that what was written is at once part of the book.
func (c Context) moment(p calendar.Part) calendar.Moment {
	today := c.day() == calendar.DayOf(c.Now, c.View.Zone())
	if p == calendar.Exact {
		if today {
			return calendar.Instantly(c.Now)
		}
		p = calendar.WholeDay
	}
	m := calendar.On(c.day(), p, c.View.Zone())
	if today && m.Instant.After(c.Now) {
		m.Instant = calendar.Instantly(c.Now).Instant
	}
	return m
}

// nuc finds a nuc by name: in the context's yard, else the only one there is.
// A name with zeros before its number is the name without them.
func (c Context) nuc(name string) (found *book.Nuc, others []*book.Nuc) {
	all := c.named(name)
	if len(all) == 0 {
		all = c.named(plainName(name))
	}
	for _, n := range all {
		if n.Yard == c.Yard {
			return n, nil
		}
	}
	if len(all) == 1 {
		return all[0], nil
	}
	return nil, all
}

func (c Context) named(name string) []*book.Nuc {
	if c.Named != nil {
		return c.Named(name)
	}
	return c.View.NucNamed(name)
}

func plainName(name string) string {
	word := strings.TrimRight(name, "0123456789")
	if n, err := strconv.Atoi(name[len(word):]); err == nil {
		return word + strconv.Itoa(n)
	}
	return name
}

// colony finds a full-size colony by name.
func (c Context) colony(name string) *book.Colony {
	for col := range c.View.Colonies() {
		if col.Name == name {
			return col
		}
	}
	return nil
}

// virgin finds a caged virgin by the number of her cage, or by her name.
func (c Context) virgin(label string) (found *book.Queen, all []string) {
	for q := range c.View.Queens() {
		if !q.Virgin || !q.Caged() {
			continue
		}
		if q.Label == label || q.Name == label {
			return q, nil
		}
		all = append(all, q.Label)
	}
	return nil, all
}

// row finds the stand of a letter, in the context's yard before others; of several
// single ones with that letter, like N1, N2 and so on, the first.
func (c Context) row(letter string) (first *book.Stand, several bool) {
	for y := range c.View.Yards() {
		for s := range c.View.Stands(y.Yard) {
			number, of := strings.CutPrefix(s.Letter, letter)
			if _, err := strconv.Atoi(number); !of || number != "" && err != nil {
				continue
			}
			switch {
			case first == nil, first.Yard != c.yard() && s.Yard == c.yard():
				first, several = s, number != ""
			case first.Yard == s.Yard:
				several = true
			}
		}
	}
	return first, several
}

func (c Context) yard() book.YardID {
	if !c.Yard.IsZero() {
		return c.Yard
	}
	if y := c.View.HomeYard(); y != nil {
		return y.Yard
	}
	return book.YardID{}
}

func (c Context) batches() []string {
	var all []string
	for b := range c.View.Batches() {
		all = append(all, strconv.Itoa(b.Number))
	}
	return all
}
