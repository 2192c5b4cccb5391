package state

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/domain/unit"
	"lidmark/ui/scene"
)

// opened is the window with the form of a record, or what it writes when it asks
// nothing.
func (rec Record) open(s State) (State, []Effect) {
	s = s.formOpened(rec)
	if rec.Asks == nil {
		return s.submit()
	}
	f := s.Form
	return s.toAsk(f.Asks[slices.IndexFunc(f.Asks, Ask.answerable)]), nil // when it happened is always asked
}

// readBack is the window with a record that asks nothing read back before it is
// written, the keys on what writes it: Enter on a card begins, it does not write.
func (rec Record) readBack(s State) State {
	s = s.formOpened(rec)
	f := *s.Form
	f.Begun = true
	s.Form = &f
	return s.focused(CommandOf("write"))
}

// formOpened is the window with the form of a record.
func (s State) formOpened(rec Record) State {
	f := &Form{Record: rec.Name, Of: s.Selection, Asks: rec.asks(s)}
	s = s.withoutFields(FormField)
	for _, a := range f.Asks {
		s = s.WithField(FormField+a.Name, FieldOf(s.first(a)))
	}
	s.Form, s.Sheet = f, s.Layout().Over
	return s
}

// toAsk gives the keys to a question.
func (s State) toAsk(a Ask) State {
	name := FormField + a.Name
	switch a.Kind {
	case Choice, Some:
		answer := ""
		if len(a.Options) > 0 {
			answer = a.Options[0].Value
		}
		if a.has(a.First) {
			answer = a.First
		}
		return s.focused(ChoiceOf(name, answer))
	case Yes:
		return s.focused(ChoiceOf(name, "yes"))
	}
	return s.WithField(name, s.Field(name).marked()).focused(FieldNamed(name))
}

// has tells whether a value is one of the options.
func (a Ask) has(value string) bool {
	return slices.ContainsFunc(a.Options, func(o Option) bool { return o.Value == value })
}

// first is the answer that stands there when the form opens, in the keeper's
// units.
func (s State) first(a Ask) string {
	if a.Kind == Suggest {
		return a.word(a.First)
	}
	v, err := strconv.ParseFloat(a.First, 64)
	if a.Kind != Figure || err != nil || a.Unit == "" || s.Units == unit.Metric {
		return a.First
	}
	v, _ = s.Units.Of(v, a.Unit)
	return strconv.FormatFloat(unit.Short(v), 'f', -1, 64)
}

// asks are the questions of the form, the last of them when it happened.
func (rec Record) asks(s State) []Ask {
	var all []Ask
	if rec.Asks != nil {
		all = slices.Clone(rec.Asks(s))
	}
	when := Ask{Name: WhenField, Label: "When", First: "now", Note: "now, yesterday evening, 3 days ago, sat 14:00, " + s.Today().String()}
	if s.Away() && !s.Ahead() {
		when.First = s.Looked().String()
	}
	return append(all, when)
}

// FormSays is what a form says so far.
type FormSays struct {
	Answers *Answers
	Facts   []book.Fact
	Back    []string // the facts read back in plain words
	Minds   []string // what the rules have against it, where it is still a plan
	Refused bool     // one of them is a refusal
	Loses   bool     // one of them is a loss
}

// OK tells whether it can be written.
func (f FormSays) OK() bool { return len(f.Answers.Mistakes) == 0 && len(f.Facts) > 0 }

// FormSays reads the form that is open.
func (s State) FormSays() (says FormSays) {
	rec, _ := RecordNamed(s.Form.Record)
	s.Selection = s.Form.Of // whatever was selected since
	ids := s.Pen.IDs
	ids.Deed()
	a := &Answers{Of: s.Form.Of, Mistakes: map[string]string{}, s: s, ids: ids}
	a.At, a.View = s.when(a, rec.Hour)
	says.Answers = a
	says.Facts = rec.Facts(s, a)
	says.Loses = a.loses
	var against minded
	for i, f := range says.Facts {
		if err := a.sense(f); err != nil && len(a.Mistakes) == 0 {
			a.Wrong(s.asked(), "%v", err)
		}
		says.Back = append(says.Back, s.Units.Say(s.factWords(f)))
		if i < mostJudged && against.mind(a.View, f) {
			says.Refused = true
		}
	}
	if a.back != nil {
		says.Back = a.back
	}
	says.Minds = slices.Concat(a.minds, against.words())
	return says
}

// sense tells whether a fact can be meant: its amounts, and of a look whether the
// nuc has room for them.
func (a *Answers) sense(f book.Fact) error {
	if look, ok := f.(book.Looked); ok {
		return rules.Sense(a.View, a.s.Now, book.Entry{At: a.At, Fact: look})
	}
	return rules.Plausible(f)
}

// mostJudged is how many facts of a form are judged as plans: of a row that is
// written with one stroke the first ones tell, and a form answers within a
// frame.
const mostJudged = 24

// asked is the first question of the form that is no choice, where an amount
// that cannot be meant is told.
func (s State) asked() string {
	for _, a := range s.Form.Asks {
		if a.Kind != Choice && a.Kind != Yes && a.Kind != Some && s.Typed(FormField+a.Name) != "" {
			return a.Name
		}
	}
	return WhenField
}

// because is a reason of the rules with the way out.
func because(r rules.Reason) string {
	if r.Do == "" {
		return r.Why
	}
	return r.Why + ". " + r.Do
}

// when is the moment that a form tells of, and the book then.
func (s State) when(a *Answers, hour bool) (calendar.Moment, *book.View) {
	now := s.Present()
	zone := now.View.Zone()
	text := a.Text(WhenField)
	if text == "" || text == "now" {
		return calendar.Instantly(s.Now), now.View
	}
	w, err := line.ParseWhen(text, s.Today(), zone)
	if err != nil {
		a.Wrong(WhenField, "%v", err)
		return calendar.Instantly(s.Now), now.View
	}
	at := w.Moment(s.Now, zone)
	switch {
	case at.Instant.After(s.Now) && w.Day == s.Today() && at.Part != calendar.Exact:
		at.Instant = calendar.Instantly(s.Now).Instant // a part of today that is not over
	case at.Instant.After(s.Now):
		a.Wrong(WhenField, "%s is still to come: write down what has happened", text)
	case hour && at.Part == calendar.WholeDay:
		a.Wrong(WhenField, "say the hour as well, the clock runs by the hour: %s 18:00", text)
	}
	return at, s.Book.Season.At(w.Instant(s.Now, zone))
}

// submit writes what the form says, unless something is missing or one question
// is to be answered first.
func (s State) submit() (State, []Effect) {
	says := s.FormSays()
	switch {
	case s.leavesOpen(says):
		return leaveOpen(s)
	case !says.OK():
		return s.toMistake(says.Answers.Mistakes), nil
	}
	entries := says.Answers.ids.Entries(says.Answers.At, s.Now, s.Pen.Writer, says.Facts...)
	s.Pen.IDs = says.Answers.ids
	return s.settled(&Asked{Entries: entries, Words: said(says.Back)})
}

// formDone is the window after a form was written.
func (s State) formDone() State {
	if s.Form == nil {
		return s
	}
	s.Form, s.More, s.Focus = nil, false, scene.Ref{}
	return s.withoutFields(FormField)
}

// said are the words of several facts as one deed.
func said(back []string) string {
	if more := len(back) - 1; more > 0 {
		return fmt.Sprintf("%s and %d more", back[0], more)
	}
	return strings.Join(back, "")
}

// toMistake gives the keys to the first question that is answered wrong, and
// lets the form say what is missing.
func (s State) toMistake(mistakes map[string]string) State {
	f := *s.Form
	f.Tried = true
	s.Form = &f
	for _, a := range f.Asks {
		if mistakes[a.Name] != "" {
			return s.toAsk(a)
		}
	}
	return s
}

// Records are all that can be written down by a form.
func Records() []Record { return records }

// RecordNamed finds a record.
func RecordNamed(name string) (Record, bool) {
	i := slices.IndexFunc(records, func(r Record) bool { return r.Name == name })
	if i < 0 {
		return Record{}, false
	}
	return records[i], true
}
