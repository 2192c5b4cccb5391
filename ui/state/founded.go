package state

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/founding"
)

// Founding is a new book, made of what was typed so far. What is wrong is left
// out of it.
type Founding struct {
	Path    string
	Entries []book.Entry // all that is right
	Book    *Book        // as it would stand, with an example of a batch where there is none
	Batch   book.BatchID // the batch, or the example
	Example bool
	Minds   []string // what the rules have against the graft

	first string   // who stands first and writes in the book; "" for nobody
	ids   book.IDs // after all that the entries have
	wrong []startWrong
}

// startWrong is what is wrong with a field, and what to do.
type startWrong struct {
	step        Step
	field, what string
}

// Wrong is what is wrong with a field and what to do; "" when nothing is.
func (f *Founding) Wrong(field string) string {
	for _, w := range f.wrong {
		if w.field == field {
			return w.what
		}
	}
	return ""
}

// WrongIn is the first field of a step in which something is wrong, or "".
func (f *Founding) WrongIn(step Step) string {
	for _, w := range f.wrong {
		if w.step == step {
			return w.field
		}
	}
	return ""
}

// Founding is the new book as it was typed so far.
func (s State) Founding() *Founding {
	if s.Start.made != nil {
		return s.Start.made
	}
	m := founder{s: s, f: &Founding{}, b: founding.Book{Yard: "Home", Zone: "UTC", Since: s.Bring.from()}, zone: time.UTC}
	m.yard()
	for row := range s.StartRows() {
		m.row(row)
	}
	m.people()
	m.found()
	return m.f
}

// founder makes a new book of what was typed, piece by piece: a piece that is
// wrong is left out and noted.
type founder struct {
	s    State
	f    *Founding
	b    founding.Book
	zone *time.Location
}

func (m *founder) wrong(step Step, field, format string, args ...any) {
	m.f.wrong = append(m.f.wrong, startWrong{step, field, fmt.Sprintf(format, args...)})
}

// ids make the same ids every time: nothing of it is kept before the end.
func (m *founder) ids() book.IDs { return m.s.freshIDs() }

// freshIDs make the ids of a new book.
func (s State) freshIDs() book.IDs {
	ids := s.Machine.IDs
	if ids == (book.IDs{}) {
		ids = s.Pen.IDs
	}
	ids.Deed()
	return ids
}

// try puts a piece into the book if the founding takes it, and else tells why
// not.
func (m *founder) try(piece func(*founding.Book)) error {
	next := m.b
	next.Rows, next.People = slices.Clone(m.b.Rows), slices.Clone(m.b.People)
	piece(&next)
	ids := m.ids()
	_, err := next.Entries(m.s.Now, m.s.Machine.zone, &ids)
	if w := (*founding.Wrong)(nil); errors.As(err, &w) {
		return w.Err
	}
	m.b = next
	return err
}

// put is try for one field.
func (m *founder) put(step Step, field string, piece func(*founding.Book)) {
	if err := m.try(piece); err != nil {
		m.wrong(step, field, "%v", err)
	}
}

func (m *founder) yard() {
	s := m.s
	m.put(YardStep, StartYard, func(b *founding.Book) { b.Yard = s.Typed(StartYard) })
	m.put(YardStep, StartZone, func(b *founding.Book) { b.Zone = s.Typed(StartZone) })
	if zone, err := founding.Zone(m.b.Zone, s.Machine.zone); err == nil {
		m.zone = zone
	}
	lat, lon := m.degrees(StartLat), m.degrees(StartLon)
	if lat, lon := s.Typed(StartLat) == "", s.Typed(StartLon) == ""; lat != lon {
		missing := StartLat
		if lon {
			missing = StartLon
		}
		m.wrong(YardStep, missing, "say both, or leave both out")
	}
	m.put(YardStep, StartLat, func(b *founding.Book) { b.Lat, b.Lon = lat, 0 })
	m.put(YardStep, StartLon, func(b *founding.Book) { b.Lon = lon })
	m.f.Path = s.startPath()
}

// startPath is where the new book is kept.
func (s State) startPath() string {
	path := s.Typed(StartFile)
	if path == "" {
		return s.Machine.bookFile(s.Typed(StartYard))
	}
	if !strings.ContainsAny(path, `/\`) {
		path = s.Machine.Folder + path
	}
	if !strings.HasSuffix(path, BookExtension) {
		path += BookExtension
	}
	return path
}

// degrees reads "54.6", "54,6 N", "15° W".
func (m *founder) degrees(field string) float64 {
	text := strings.ToUpper(m.s.Typed(field))
	if text == "" {
		return 0
	}
	text = strings.NewReplacer("°", "", " ", "", ",", ".").Replace(text)
	sign := 1.0
	if bare := strings.TrimRight(text, "SW"); bare != text {
		text, sign = bare, -1
	}
	v, err := strconv.ParseFloat(strings.TrimRight(text, "NE"), 64)
	if err != nil || v != v {
		m.wrong(YardStep, field, "write degrees, like 54.6")
		return 0
	}
	return sign * v
}

// row puts a row of boxes into the book. Only the first must be told of.
func (m *founder) row(i int) {
	names := m.s.Typed(rowField(i, "names"))
	if names == "" && i > 0 {
		return
	}
	before := len(m.f.wrong)
	row := founding.Row{Names: names, PerBox: m.count(BoxStep, rowField(i, "per")), Combs: m.combs(i)}
	for _, face := range m.s.Faces(i) {
		bearing, _ := founding.ParseFacing(face)
		row.Facing = append(row.Facing, bearing...)
	}
	if len(m.f.wrong) == before {
		m.put(BoxStep, rowField(i, "names"), func(b *founding.Book) { b.Rows = append(b.Rows, row) })
	}
}

func (m *founder) combs(i int) founding.Combs {
	kind := m.s.Typed(rowField(i, "kind"))
	if kind != OwnKind {
		return founding.Combs{Kind: kind}
	}
	c := founding.Combs{Sides: m.count(BoxStep, rowField(i, "sides")), Area: m.area(rowField(i, "area"))}
	if _, err := c.Filled(); err != nil {
		m.wrong(BoxStep, rowField(i, "sides"), "%v", err)
	}
	return c
}

// area is the area of a side in dm², typed in the keeper's unit; 0 is not said.
func (m *founder) area(field string) float64 {
	text := strings.ReplaceAll(m.s.Typed(field), ",", ".")
	v, err := strconv.ParseFloat(text, 64)
	if text != "" && (err != nil || !(v > 0)) {
		m.wrong(BoxStep, field, "write it as a number, like 2")
		return 0
	}
	return m.s.Units.Back(v, "dm²")
}

// count is a whole number of at least 1; 0 where it is none, which is noted.
func (m *founder) count(step Step, field string) int {
	n, err := strconv.Atoi(m.s.Typed(field))
	if err != nil || n < 1 {
		m.wrong(step, field, "write a whole number, 1 or more")
		return 0
	}
	return n
}

func (m *founder) people() {
	for i, field := range m.s.People() {
		text := m.s.Typed(field)
		switch {
		case text != "":
			m.put(PeopleStep, field, func(b *founding.Book) { b.People = append(b.People, text) })
			if who, err := founding.Person(text, book.PersonID{}); i == 0 && err == nil {
				m.f.first = who.Name
			}
		case i == 0:
			m.wrong(PeopleStep, field, "say who writes, a first name will do")
		}
	}
}
