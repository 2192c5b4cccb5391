package state

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// Record is something that a keeper can write down of what is selected: a row
// that makes a command of the same name, a button on the card, and a form that
// asks for what it needs to know.
type Record struct {
	Name string      // stable; its command is called so
	Word string      // on its button and above its form: "Give a cell"
	Of   []book.Kind // on whose card it stands; [book.NoKind] is the yard shown
	Many bool        // it can be written of several at once
	Main bool        // it is the card's main button when it can be written
	For  []rules.Act // the work that is due when it is the main one before all others
	Hour bool        // when it happened is asked to the hour
	// Fits tells whether the card offers it at all; nil: always.
	Fits func(State) bool
	// Soon tells whether it stands before the others; nil: never.
	Soon func(State) bool
	// Why says why it must not be done now; "" when it can. Nil: always.
	Why func(State) string
	// Asks are what the form asks, with what is most likely already there. A
	// record that asks nothing is written at once.
	Asks func(State) []Ask
	// Facts are what is written, in the order in which they happened. What is
	// missing or makes no sense is told to the answers.
	Facts func(State, *Answers) []book.Fact
}

// AskKind is how an answer is given.
type AskKind uint8

// The kinds of answer.
const (
	Words   AskKind = iota // a line of text
	Figure                 // a number, in the unit of the question
	Choice                 // one of the options, which are few
	Some                   // any of the options; the field says them separated by commas
	Suggest                // one of many options: its word is typed, or taken from those that fit
	Yes                    // yes or no; the field says "yes" or nothing
	NucsOf                 // names of nucs: A1-A12, B4
)

// Ask is one question of a form.
type Ask struct {
	Name    string // of the answer; without spaces
	Label   string
	Kind    AskKind
	Unit    string // of a Figure, metric: "l", "°C"; said and read in the keeper's units
	First   string // the answer that stands there when the form opens
	Options []Option
	Note    string // one line below it, where the label does not say all
}

// Option is one of several answers.
type Option struct{ Value, Word string }

// Form is a record being filled in. Its answers are fields whose names begin
// with [FormField].
type Form struct {
	Record string
	Of     Selection // what it is about, as it was when the form opened
	Asks   []Ask
	Tried  bool   // it was to be written once: what is missing is said
	Begun  bool   // it was begun by Enter on the card and asks nothing: Enter again writes it
	Sought string // what was typed before the arrows went through what fits it
}

// FormField begins the names of the fields of a form.
const FormField = "form."

// WhenField is the answer to when it happened, which every form asks.
const WhenField = "when"

// records are all records, by what they are about.
var records = slices.Concat(yardRecords, weatherRecords, careRecords, nucRecords, batchRecords, queenRecords, orderRecords, colonyRecords, peopleRecords, tickRecords, allRecordsOf, walkRecords)

// ofPlanned are the records of a batch that is planned and not grafted yet.
var ofPlanned = []string{"graft", "note"}

// fits tells whether the card of what is selected offers a record.
func (rec Record) fits(s State) bool {
	switch kind := s.Selection.Last().Kind; {
	case !slices.Contains(rec.Of, kind):
		return false
	case s.Selection.Len() > 1 && !rec.Many:
		return false
	case kind == book.KindBatch && s.plannedChosen() && !slices.Contains(ofPlanned, rec.Name):
		return false
	}
	return rec.Fits == nil || rec.Fits(s)
}

// Offered are the records that the card of what is selected offers, the likely
// ones first, those that must not be done now among them.
func (s State) Offered() (all []Record) {
	if s.Book == nil {
		return nil
	}
	var later []Record
	for _, rec := range records {
		switch {
		case !rec.fits(s):
		case rec.Soon != nil && rec.Soon(s):
			all = append(all, rec)
		default:
			later = append(later, rec)
		}
	}
	return s.lineFirst(append(all, later...))
}

// lineFirst are records with that which puts a line of the route off before the
// others, while one is chosen: it is asked for as often as the work itself.
func (s State) lineFirst(all []Record) []Record {
	i := slices.IndexFunc(all, func(rec Record) bool { return rec.Name == "put off" })
	if _, ok := s.ChosenLine(); !ok || i < 0 {
		return all
	}
	return slices.Concat(all[i:i+1], all[:i], all[i+1:])
}

// Likely tells whether a record is one that the card is opened for: it is for the
// work that is due, or stands before the others.
func (s State) Likely(rec Record) bool {
	n := s.chosen()
	due := n != nil && n.Due != nil && slices.Contains(rec.For, n.Due.Act)
	return due || rec.Soon != nil && rec.Soon(s)
}

// Main is the record that is the main button of the card of what is selected:
// the one for the work that is due, else the first of its kind that can be
// written; "" when none can.
func (s State) Main() string {
	var due rules.Act
	if n := s.chosen(); n != nil && n.Due != nil {
		due = n.Due.Act
	}
	main := ""
	for _, rec := range s.Offered() {
		switch {
		case rec.command().Reason(s) != "":
		case rec.Name == "done", due != rules.ActNone && slices.Contains(rec.For, due):
			return rec.Name
		case rec.Main && main == "":
			main = rec.Name
		}
	}
	return main
}

// command is the record as a command.
func (rec Record) command() Command {
	return Command{Name: rec.Name, Does: rec.Word, Word: rec.Word, Do: rec.open, Why: func(s State) string {
		why := noPen(s)
		if why == "" && !rec.fits(s) {
			why = "select what it is about first"
		}
		if why == "" && rec.Why != nil {
			why = rec.Why(s)
		}
		return why
	}}
}

// noPen says why nothing can be written.
func noPen(s State) string {
	switch {
	case s.Book == nil:
		return "no book is open; open one with Ctrl+O"
	case s.Book.ReadOnly != "":
		return s.Book.ReadOnly
	}
	return s.Shut()
}

// Shut says why nothing can be written on the day looked at; "" when it can.
func (s State) Shut() string {
	if s.AsThen() {
		return "the day is shown as it was known then; Alt+J shows what is known now"
	}
	return s.notCome()
}

// notToday says why nothing can be decided or planned on the day looked at: it is ahead, or
// has gone; "" on today.
func (s State) notToday() string {
	if s.Looked() < s.Today() {
		return "that day has gone: go back to now with Home"
	}
	return s.notCome()
}

// notCome says why nothing can be done on a day that is ahead; "" on another.
func (s State) notCome() string {
	if s.Ahead() {
		return "that day has not come: go back to now with Home"
	}
	return ""
}
