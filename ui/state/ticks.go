package state

import (
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// The kinds of a [scene.Ref] on the route besides its lines.
const (
	TickRef = "tick" // the box of a line; ID is that of its [TaskRef]
	DoneRef = "done" // a line that is done; ID is its number among all lines
)

// tickCommands are what is done with a line of the route.
var tickCommands = []Command{
	{Name: "tick", Does: "the line is done as written", Word: "Done as written", Keys: "Space", Why: noLine, Do: tickOn},
	{Name: "line record", Does: "record what was seen or done there", Word: "Record …", Keys: "Alt+C", Why: noLine, Do: func(s State) (State, []Effect) { l, _ := s.ChosenLine(); return s.lineRecord(l) }},
	{Name: "put off line", Does: "put the line off", Keys: "Alt+O", Why: noLineOff, Do: then("put off")},
	{Name: "tick except", Does: "done as written, except at some", Keys: "Alt+E", Why: noLine, Do: then("done except")},
}

// then is a command that is another one, for what is chosen.
func then(name string) func(State) (State, []Effect) {
	return pure(func(s State) State { s.then = name; return s })
}

func noLine(s State) string {
	if why := noPen(s); why != "" {
		return why
	}
	if _, ok := s.ChosenLine(); !ok {
		return "choose a line of the route first"
	}
	return ""
}

// ChosenLine is the line of the route whose subjects are selected on Today: the
// one taken last, else the first of them.
func (s State) ChosenLine() (PageLine, bool) {
	if s.Room != Today || s.Selection.Len() == 0 {
		return PageLine{}, false
	}
	var found PageLine
	ok := false
	for _, l := range s.Lines() {
		if l.Done || !s.TaskChosen(l.Task) {
			continue
		}
		if nameOf(l.Task) == s.DayPage.line {
			return l, true
		}
		if !ok {
			found, ok = l, true
		}
	}
	return found, ok
}

// lineClicked takes a line of the route, or ticks it in its box.
func (s State) lineClicked(r scene.Ref) (State, []Effect) {
	number, err := strconv.Atoi(r.ID)
	switch {
	case err != nil:
		return s, nil
	case r.Kind == TickRef:
		next, effects := s.tickNumber(number)
		name := next.then
		next.then = ""
		after, more := run(next, name)
		return after, append(effects, more...)
	case r.Kind == DoneRef:
		return s.toLine(number), nil
	}
	return s.toTask(number), nil
}

// TickWords are what the box of a line does.
type TickWords struct {
	Words  string
	Asks   bool // a tick cannot tell what was done or seen: it opens what asks
	Cannot bool // nothing can be written; the words say why
}

// NoTicks says why no box can be ticked on the day looked at; "" when they can.
func (s State) NoTicks() string { return noPen(s) }

// TickSays says what the box of a line does.
func (s State) TickSays(l PageLine) TickWords {
	if why := noPen(s); why != "" {
		return TickWords{why, false, true}
	}
	if len(line.Ticked(l.Task)) > 0 || len(s.asPlanned(l, nil)) > 0 {
		return TickWords{"done as written  Space", false, false}
	}
	return TickWords{"record what was seen or done", true, false}
}

// tickOn ticks the chosen line, and goes on to the next one.
func tickOn(s State) (State, []Effect) {
	l, _ := s.ChosenLine()
	next, effects := s.ticked(l)
	if next.Fill != NoFill || next.then != "" || next.Asked != nil {
		return next, effects
	}
	return next.stepTask(1), effects
}

// tickNumber ticks the line of a number.
func (s State) tickNumber(number int) (State, []Effect) {
	for _, l := range s.Lines() {
		if !l.Done && l.Number == number {
			s = s.toTask(number)
			if noPen(s) != "" {
				return s, nil
			}
			return s.ticked(l)
		}
	}
	return s, nil
}

// ticked writes what a line asks of each of its nucs. Where a tick cannot tell
// what was done or seen it is asked.
func (s State) ticked(l PageLine) (State, []Effect) {
	facts := s.asWritten(l, nil)
	if len(facts) == 0 {
		return s.lineRecord(l)
	}
	words := s.lineWords(l)
	if slices.ContainsFunc(s.Pen.Sent, func(d Deed) bool { return d.Words == words }) {
		return s, nil // it is on its way into the book
	}
	if slices.ContainsFunc(s.Pen.Failed, func(d Deed) bool { return d.Words == words }) {
		s.Note = Note{Text: words + " waits to be written: try again, or let it go"}
		return s, nil
	}
	ids := s.Pen.IDs
	ids.Deed()
	entries := ids.Entries(s.pageMoment(), s.Now, s.Pen.Writer, facts...)
	s.Pen.IDs = ids
	return s.settled(&Asked{Entries: entries, Words: words})
}

// asWritten is what is written of the nucs of a line, except of some.
func (s State) asWritten(l PageLine, except []book.NucID) (facts []book.Fact) {
	facts = s.asPlanned(l, except)
	of := line.Ticked(l.Task)
	for _, n := range s.Reading().Nucs {
		if id := n.Nuc.Nuc; !slices.Contains(except, id) {
			facts = append(facts, of[id]...)
		}
	}
	return facts
}

// noLineOff says why the chosen line cannot be put off: a step of a planned batch is
// moved with its plan, and it is said where.
func noLineOff(s State) string {
	if why := noLine(s); why != "" {
		return why
	}
	if l, _ := s.ChosenLine(); l.Findings[0].Rule == rules.PlannedStep {
		id, _ := l.Findings[0].Of.Batch()
		return s.stepMoves(id)
	}
	return ""
}

// asPlanned are the steps of planned batches that a line does, the cells that it moves,
// and what it carries out of a planned layout, except at some nucs.
func (s State) asPlanned(l PageLine, except []book.NucID) (facts []book.Fact) {
	for _, f := range l.Findings {
		if done, ok := rules.Readies(f); ok {
			facts = append(facts, done)
		}
		if moved, ok := rules.Moves(f); ok {
			facts = append(facts, moved)
		}
		at, _ := f.Of.Nuc()
		if !slices.Contains(except, at) {
			facts = append(facts, rules.LaidOut(s.Reading().View, f)...)
		}
	}
	return facts
}

// lineWords say what a line was, for undo.
func (s State) lineWords(l PageLine) string {
	const few = 24
	r := s.Reading()
	names := book.Names(r.TaskNames(l.Task), func(said string) bool { return len(said) <= few })
	if names == "" {
		return l.Title
	}
	return names + ": " + l.Title
}

// pageMoment is when something on the page was done: now, or on the day looked
// at.
func (s State) pageMoment() calendar.Moment {
	if !s.Away() {
		return calendar.Instantly(s.Now)
	}
	zone := s.Present().View.Zone()
	w, err := line.ParseWhen(s.Looked().String(), s.Today(), zone)
	if err != nil {
		return calendar.Instantly(s.Now)
	}
	return w.Moment(s.Now, zone)
}

// lineRecord opens what asks about a line: for what is seen in a look the line of
// its nuc, or of several nucs the rows of the walk, else the form of the record
// that is for this work.
func (s State) lineRecord(l PageLine) (State, []Effect) {
	if l.Act == rules.ActMakeUp {
		s.then = "next nucs" // the empty boxes, of which it says which were made up
		return s, nil
	}
	s.Selection = Select(l.Of...)
	if l.Act == rules.ActSeeToOrder {
		return s.toOrders(), nil
	}
	s.DayPage.line = nameOf(l.Task)
	id, isNuc := l.Of[0].Nuc()
	rec := s.recordOf(l)
	if isNuc && len(l.Of) == 1 && (rec == "look" || rec == "") && noPen(s) == "" {
		name := LineField(book.NucID(id))
		s.Sheet = s.Layout().Over
		return s.WithField(name, FieldOf(s.Field(name).Text)).focused(FieldNamed(name)), nil
	}
	if rec == "look" && isNuc {
		s = s.toWalk()
		if name := (RowName{Nuc: id}); s.Walk.has(name) {
			s = s.rowOpened(name)
		}
		return s, nil
	}
	r, ok := RecordNamed(rec)
	why := "write it down on its card"
	if ok {
		why = r.command().Reason(s)
	}
	if why != "" {
		s.Note, s.Sheet = Note{Text: why}, s.Layout().Over
		return s, nil
	}
	s.then = rec
	return s, nil
}

// recordOf is the record for the work of a line.
func (s State) recordOf(l PageLine) string {
	kind := l.Of[0].Kind
	if id, ok := l.Of[0].Batch(); ok && l.Act == rules.ActCollectCells && s.Reading().View.Batch(id).Uncounted() {
		return "count" // it comes first
	}
	for _, rec := range records {
		if slices.Contains(rec.For, l.Act) && slices.Contains(rec.Of, kind) {
			return rec.Name
		}
	}
	return ""
}

// lineSilenced puts all that a line answers off until a day, and says what that
// risks.
func (s State) lineSilenced(a *Answers, l PageLine, until calendar.Day, why string) (all []book.Fact) {
	for _, f := range l.Findings {
		all = append(all, book.PutOff{Rule: string(f.Rule), Of: f.Of, Until: until, Why: why})
		s.minded(a, f, until)
	}
	return all
}

// UndoesOff tells whether undo takes back that a line was put off.
func (s State) UndoesOff(l PageLine) bool {
	done := s.Pen.Done
	if len(done) == 0 {
		return false
	}
	return slices.ContainsFunc(done[len(done)-1].Entries, func(e book.Entry) bool {
		f, ok := e.Fact.(book.PutOff)
		return ok && slices.ContainsFunc(l.Findings, func(asked rules.Finding) bool {
			return asked.Of == f.Of && string(asked.Rule) == f.Rule
		})
	})
}

// tickRecords are the forms about a line of the route.
var tickRecords = []Record{
	{Name: "done except", Word: "Done except …", Of: ofNuc, Many: true, Fits: severalTicked, Asks: askExcept, Facts: doneExcept},
}

// severalTicked tells whether a line of several nucs is chosen of which a tick
// can tell what was done.
func severalTicked(s State) bool {
	l, ok := s.ChosenLine()
	return ok && len(l.Of) > 1 && len(s.asWritten(l, nil)) > 0
}

func askExcept(State) []Ask {
	return []Ask{{Name: "except", Label: "Not done at", Kind: NucsOf, Note: "their names, like A3 A9"}}
}

func doneExcept(s State, a *Answers) []book.Fact {
	l, _ := s.ChosenLine()
	except := a.Nucs("except")
	for _, id := range except {
		if !slices.Contains(l.Of, id.Subject()) {
			a.Wrong("except", "%s is not on this line", rules.Name(a.View, id.Subject()))
		}
	}
	facts := s.asWritten(l, except)
	if len(facts) == 0 && len(except) > 0 {
		a.Wrong("except", "that leaves none: then nothing is done")
	}
	return facts
}
