package state

import (
	"bytes"
	"encoding"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

// chosen is the value of the option that a question was answered with; "" where
// nothing was said.
func (a *Answers) chosen(name string) string {
	text := a.Text(name)
	ask, ok := a.s.askIn(FormField + name)
	if !ok || ask.Kind != Suggest || text == "" {
		return text
	}
	o, ok := ask.taken(text)
	switch fit := len(ask.fitting(text)); {
	case ok:
		return o.Value
	case fit > 1:
		a.Wrong(name, "%d fit: write more of it, or take one with the arrows", fit)
	default:
		a.Wrong(name, "none is called so: write less of it, or choose with the arrows")
	}
	return ""
}

// Thing is the thing of the book that a question was answered with, or none.
func (a *Answers) Thing(name string) (sub book.Subject) {
	if sub.UnmarshalText([]byte(a.chosen(name))) != nil {
		return book.Subject{}
	}
	return sub
}

// NeededThing is one that must not be left out.
func (a *Answers) NeededThing(name string) book.Subject {
	sub := a.Thing(name)
	if sub.IsZero() {
		a.Wrong(name, "needed: choose one")
	}
	return sub
}

// Batch is the batch that a question was answered with.
func (a *Answers) Batch(name string) book.BatchID { id, _ := a.Thing(name).Batch(); return id }

// Colony is the colony that a question was answered with.
func (a *Answers) Colony(name string) book.ColonyID { id, _ := a.Thing(name).Colony(); return id }

// Word reads an answer that is one of the words of a vocabulary.
func (a *Answers) Word(name string, into encoding.TextUnmarshaler) {
	if err := into.UnmarshalText([]byte(a.chosen(name))); err != nil {
		a.Wrong(name, "%v", err)
	}
}

// NeededWord is one that must not be left out.
func (a *Answers) NeededWord(name string, into encoding.TextUnmarshaler) {
	if !a.Said(name) {
		a.Wrong(name, "needed: choose one")
		return
	}
	a.Word(name, into)
}

// All are the answers to a question that takes several.
func (a *Answers) All(name string) []string {
	return slices.DeleteFunc(strings.Split(a.Text(name), ","), func(w string) bool { return w == "" })
}

// Day is the day that was said; none when nothing was.
func (a *Answers) Day(name string) calendar.Day {
	text := a.Text(name)
	if text == "" {
		return 0
	}
	d, err := line.ParseDay(text, a.s.Today())
	if err != nil {
		a.Wrong(name, "%v", err)
	}
	return d
}

// NeededDay is a day that must not be left out.
func (a *Answers) NeededDay(name string) calendar.Day {
	a.Needed(name)
	return a.Day(name)
}

// ComingDay is a day that must not be left out; the name of a weekday is the next
// one.
func (a *Answers) ComingDay(name string) calendar.Day {
	d, err := line.ParseComing(a.Needed(name), a.s.Today())
	if err != nil {
		a.Wrong(name, "%v", err)
	}
	return d
}

// NeededCount is a whole number of at least 1.
func (a *Answers) NeededCount(name string) int {
	n := a.Count(name)
	if n < 1 {
		a.Wrong(name, "write how many, 1 or more")
	}
	return n
}

// Cages are the numbers of cages, for so many queens; none when nothing was
// said. For 0 queens any number will do.
func (a *Answers) Cages(name string, queens int) []string {
	text := a.Text(name)
	if text == "" {
		return nil
	}
	labels, err := line.Cages(text)
	if err != nil {
		a.Wrong(name, "%v", err)
	} else if queens > 0 && len(labels) != queens {
		a.Wrong(name, "%s for %s: write as many", counted(len(labels), "cage"), counted(queens, "queen"))
	}
	return labels
}

// labelled is the i-th of some labels, or none.
func labelled(labels []string, i int) string {
	if i >= len(labels) {
		return ""
	}
	return labels[i]
}

// Subjects are what the form is about: nucs in walking order, then all else.
func (a *Answers) Subjects() (all []book.Subject) {
	for _, id := range a.SelectedNucs() {
		all = append(all, id.Subject())
	}
	nucs := len(all)
	for sub := range a.Of.All() {
		if sub.Kind != book.KindNuc {
			all = append(all, sub)
		}
	}
	slices.SortFunc(all[nucs:], func(x, y book.Subject) int { return bytes.Compare(x.UUID[:], y.UUID[:]) })
	return all
}

// Yard is the yard that the form is about: the one selected, else the one shown,
// else the home yard.
func (a *Answers) Yard() book.YardID { return a.s.yardMeant(a.Of) }

// yardMeant is the yard that a selection means.
func (s State) yardMeant(of Selection) book.YardID {
	if id, ok := of.Last().Yard(); ok {
		return id
	}
	if id := s.Filled(); !id.IsZero() {
		return id
	}
	if y := s.Present().View.HomeYard(); y != nil {
		return y.Yard
	}
	return book.YardID{}
}

// eachNuc is one fact for each of the nucs.
func eachNuc(a *Answers, fact func(book.NucID) book.Fact) (all []book.Fact) {
	for _, id := range a.SelectedNucs() {
		all = append(all, fact(id))
	}
	return all
}

// eachThing is one fact for each thing that the form is about.
func eachThing(a *Answers, fact func(book.Subject) book.Fact) (all []book.Fact) {
	for _, sub := range a.Subjects() {
		all = append(all, fact(sub))
	}
	return all
}

// fact is one fact alone.
func fact(f book.Fact) []book.Fact { return []book.Fact{f} }
