package state

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

// Answers are what a form was answered, read one by one. What makes no sense is
// noted as a mistake of its field, and read as nothing.
type Answers struct {
	Of       Selection
	At       calendar.Moment
	View     *book.View        // of the moment of which the form tells
	Mistakes map[string]string // by the name of the answer: what is wrong and what to do

	s     State
	ids   book.IDs
	minds []string
	back  []string // what is read back in place of the facts, where they are too many to be read
	loses bool     // one of them is a loss
}

// Mind notes what the keeper should know before it is written; it does not keep
// it from being written.
func (a *Answers) Mind(format string, args ...any) {
	if said := fmt.Sprintf(format, args...); !slices.Contains(a.minds, said) {
		a.minds = append(a.minds, said)
	}
}

// Wrong notes what is wrong with an answer.
func (a *Answers) Wrong(name, format string, args ...any) {
	if _, there := a.Mistakes[name]; !there {
		a.Mistakes[name] = fmt.Sprintf(format, args...)
	}
}

// Text is an answer as it was typed.
func (a *Answers) Text(name string) string { return a.s.Typed(FormField + name) }

// Needed is an answer that must not be blank.
func (a *Answers) Needed(name string) string {
	text := a.Text(name)
	if text == "" {
		a.Wrong(name, "needed: say it")
	}
	return text
}

// Said tells whether something was answered.
func (a *Answers) Said(name string) bool { return a.Text(name) != "" }

// Yes tells whether an answer is yes.
func (a *Answers) Yes(name string) bool { return a.Text(name) == "yes" }

// Figure is a number in the metric unit of its question; 0 when nothing was
// said.
func (a *Answers) Figure(name string) float64 {
	text := strings.ReplaceAll(strings.ReplaceAll(a.Text(name), ",", "."), " ", "")
	if text == "" {
		return 0
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || v != v || v > 1e9 || v < -1e9 {
		a.Wrong(name, "write it as a number, like 3 or 0.5")
		return 0
	}
	return a.s.Units.Back(v, a.unit(name))
}

// unit is the metric unit of a question.
func (a *Answers) unit(name string) string {
	i := slices.IndexFunc(a.s.Form.Asks, func(ask Ask) bool { return ask.Name == name })
	if i < 0 {
		return ""
	}
	return a.s.Form.Asks[i].Unit
}

// Amount is a number that may be left unsaid.
func (a *Answers) Amount(name string) book.Amount {
	if !a.Said(name) {
		return book.Amount{}
	}
	return book.Said(a.Figure(name))
}

// Count is a whole number; 0 when nothing was said.
func (a *Answers) Count(name string) int {
	v := a.Figure(name)
	if v != float64(int(v)) || v < 0 {
		a.Wrong(name, "write it as a whole number, like 12")
		return 0
	}
	return int(v)
}

// Nucs are the nucs that an answer names.
func (a *Answers) Nucs(name string) []book.NucID {
	text := a.Needed(name)
	if text == "" {
		return nil
	}
	ids, err := line.Nucs(text, line.Context{View: a.View, Now: a.s.Now, Yard: a.s.Filled()})
	if err != nil {
		a.Wrong(name, "%v", err)
	}
	return ids
}

// Mint makes the id of something new.
func (a *Answers) Mint() [16]byte { return a.ids.Next() }

// SelectedNucs are the nucs that the form is about, in walking order.
func (a *Answers) SelectedNucs() (all []book.NucID) {
	for _, n := range a.s.Reading().Nucs {
		if a.Of.Has(n.Nuc.Nuc.Subject()) {
			all = append(all, n.Nuc.Nuc)
		}
	}
	return all
}
