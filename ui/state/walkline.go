package state

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/line"
)

// Typed is what was typed of one nuc, or of several at once, as a row of the walk
// shows it.
type Typed struct {
	Nucs  []book.NucID
	Words string // as it was typed, without the name of a single nuc
	Back  string // read back in plain words, in the order in which it was typed
}

// LineSays is what the line of the walk says so far.
type LineSays struct {
	Line  TypedLine
	Back  string
	Of    string // of whom it tells, where that is not the row it is typed in
	Next  string // what follows for the nuc
	After *Nuc   // how its lid would become; nil where nobody can tell
	Rows  string // whose rows alone Enter shows; "" where it does not
}

// walkLine reads the line that is typed into the walk.
func (s State) walkLine() TypedLine {
	w := s.Walk
	c := line.Context{
		View: w.view, Day: w.Day, Part: w.Part, Yard: w.Yard, Planned: w.Before.Sheet(),
		Named: w.named, Asked: w.asked,
	}
	row, _ := w.Row()
	for _, e := range row.entries {
		c.Instead = append(c.Instead, e.ID)
	}
	if len(row.Nucs) == 1 {
		c.Nuc = row.Nucs[0]
		c.Yard = w.view.Nuc(c.Nuc).Yard
	}
	return s.readLine(s.Typed(WalkField), c)
}

// named finds nucs by name among those that the book had when the walk was
// opened: to order all nucs anew for every line takes too long in a big book.
func (w *Walk) named(name string) []*book.Nuc {
	all := w.Before.View.NucNamed(name)
	for i, n := range all {
		all[i] = w.view.Nuc(n.Nuc)
	}
	return all
}

// typedRows are the rows that a line makes.
func typedRows(text string, l line.Line) []Typed {
	letters := []rune(strings.TrimSpace(text))
	all := make([]Typed, len(l.Sections))
	for i, section := range l.Sections {
		words := make([]string, len(section.Tokens))
		back := ""
		for j, t := range section.Tokens {
			words[j] = strings.TrimSpace(string(letters[t.From-1 : t.To-1]))
			back = listed(back, t.Words)
		}
		if back == "" || len(section.Nucs) != 1 {
			back = section.Back
		}
		all[i] = Typed{section.Nucs, strings.Join(words, " "), back}
		if len(section.Nucs) != 1 && len(l.Sections) == 1 {
			all[i].Words = string(letters)
		}
	}
	return all
}

// says is the window with the line of the walk read.
func (s State) says() State {
	if letters, narrows := s.Walk.narrowing(s.Typed(WalkField)); narrows {
		return s.withWalk(func(w *Walk) { w.Says = LineSays{Rows: w.rowsWord(letters)} })
	}
	t := s.walkLine()
	says := LineSays{Line: t}
	row, _ := s.Walk.Row()
	for i, section := range t.Sections {
		if i > 0 {
			says.Back += "; "
		}
		if len(t.Sections) > 1 {
			says.Back += section.Subject + ": "
		}
		says.Back += section.Back
	}
	if len(t.Sections) == 1 && (len(row.Nucs) != 1 || !slices.Equal(t.Sections[0].Nucs, row.Nucs)) {
		says.Of = t.Sections[0].Subject
	}
	if len(t.Sections) > 0 && len(t.Sections[0].Nucs) > 0 {
		id := t.Sections[0].Nucs[0]
		says.After = s.trial(id, t)
		says.Next = next(says.After)
	}
	return s.withWalk(func(w *Walk) { w.Says = says })
}

// trial is a nuc as it would stand with what a line says of it: a season of its
// own entries alone, so that the size of the book does not matter.
func (s State) trial(id book.NucID, t TypedLine) *Nuc {
	w := s.Walk
	row, _ := w.Row()
	entries := slices.Clone(w.ground)
	for e := range w.view.Lines(id.Subject()) {
		if !slices.ContainsFunc(row.entries, func(old book.Entry) bool { return old.ID == e.ID }) {
			entries = append(entries, e)
		}
	}
	ids := t.ids
	on := w.view.On()
	for _, e := range t.Entries(&ids, s.Now, s.Pen.Writer) {
		if nucIn(e.Fact) == id {
			entries = append(entries, e)
		}
		if e.At.Instant.After(on) {
			on = e.At.Instant
		}
	}
	view := book.NewSeason(w.zones, entries).At(on)
	n := view.Nuc(id)
	return &Nuc{Nuc: n, Presumed: course.New(view).Of(n), reading: w.Before}
}

// zones finds the time zones of the book's yards by name.
func (w *Walk) zones(name string) (*time.Location, error) {
	for y := range w.Before.View.Yards() {
		if y.Zone.String() == name {
			return y.Zone, nil
		}
	}
	return nil, fmt.Errorf("zone %q: no yard has it", name)
}

// groundOf are the entries of a book on which the clocks of all nucs rest: the
// yards, the numbers, and the batches without what was given to nucs.
func groundOf(v *book.View) (all []book.Entry) {
	keep := func(of book.Subject) {
		for e := range v.Lines(of) {
			if grounded(e.Fact) {
				all = append(all, e)
			}
		}
	}
	keep(book.Subject{})
	for y := range v.Yards() {
		keep(y.Yard.Subject())
	}
	for b := range v.Batches() {
		keep(b.Batch.Subject())
	}
	return all
}

// grounded tells whether clocks of nucs rest on a fact that is told of no nuc.
func grounded(f book.Fact) bool {
	switch f.(type) {
	case book.StandSet, book.FeatureDrawn, book.WeatherSeen:
		return false
	}
	return nucIn(f).IsZero()
}

// next is what follows for a nuc, by its clock.
func next(n *Nuc) string {
	p := n.Presumed
	v := n.reading.View
	day := func(t time.Time) string { return calendar.DayOf(t, v.Yard(n.Yard).Zone).Short() }
	switch {
	case p.Condition == book.Laying && !p.LookBest.IsZero():
		return "look for capped brood " + day(p.LookBest)
	case p.Condition == book.GoodBrood && p.ReadyAt.After(v.On()):
		return "ready to hand over from " + day(p.ReadyAt)
	case p.Condition == book.GoodBrood:
		return "ready to hand over"
	case p.Condition == book.NoQueen && !p.OwnFrom.IsZero():
		return "a virgin of its own from " + day(p.OwnFrom)
	case p.Condition == book.NoQueen:
		return "a cell, a virgin, or unite"
	case p.Condition == book.DroneLayer || p.Condition == book.LayingWorkers:
		return p.Condition.String()
	case !p.LookBest.IsZero():
		return "look for eggs " + day(p.LookBest)
	}
	return ""
}
