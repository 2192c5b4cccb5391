package state

import "lidmark/domain/book"

// The reasons why a command cannot run; "" when it can.

func noBook(s State) string {
	if s.Book == nil {
		return "no book is open; open one with Ctrl+O"
	}
	return ""
}

func noNucs(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Room == Numbers {
		return ""
	}
	if s.Room == About || len(s.Shown()) == 0 {
		return "no nuc is shown"
	}
	return ""
}

func noneNeeds(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if NeedYou(s.Reading().In(s.Filled())) == 0 {
		return "nothing needs you"
	}
	return ""
}

func noMap(s State) string {
	tried := s.OnLayout() && !s.LayingAreas().Try.Empty()
	if s.Book == nil || !tried && s.Layout().Map.Empty() {
		return "no map is shown"
	}
	return ""
}

func noTurns(s State) string {
	if s.Book == nil || s.Layout().Turns.Empty() {
		return "all parts are shown"
	}
	return ""
}

func noFilter(s State) string {
	if s.Filter == "" {
		return "nothing is filtered"
	}
	return ""
}

func isNow(s State) string {
	if !s.Away() && s.Shift == 0 {
		return "now is what you look at"
	}
	return ""
}

func notPast(s State) string {
	switch {
	case s.Book == nil:
		return noBook(s)
	case s.Walk != nil:
		return "leave the walk first"
	case s.Looked() >= s.Today():
		return "choose a past day first"
	}
	return ""
}

func noBatch(s State) string {
	n := s.chosen()
	if n == nil {
		return "choose a nuc first"
	}
	if n.Holds.Batch.IsZero() {
		return "it holds no queen of a batch"
	}
	return ""
}

func noDue(s State) string {
	if n := s.chosen(); n == nil || n.Due == nil || s.dueDay(n) == s.Looked() {
		return "nothing is due on another day"
	}
	return ""
}

func noMain(s State) string {
	switch {
	case s.Book == nil:
		return "no book is open; open one with Ctrl+O"
	case s.Room == Review && s.Fill == NoFill:
		return "in Review this key accepts what is chosen"
	case s.filledWithWork(), s.cardHidden():
		return ""
	case s.Form != nil || s.Fill != NoFill || s.Main() == "":
		return "there is nothing to do with it now"
	}
	return ""
}

// cardHidden tells whether the card has no room and does not lie over the pane.
func (s State) cardHidden() bool { return s.Layout().Over && !s.Sheet }

// mainDone is the window with the card's main action begun: its form, or what it
// would write read back. Where the card has no room it is laid over the pane first.
func (s State) mainDone() State {
	if s.filledWithWork() {
		s.then = s.fillWork().Command
		return s
	}
	if s.cardHidden() {
		s.Sheet = true
		return s
	}
	if rec, ok := RecordNamed(s.Main()); ok && rec.Asks == nil {
		return rec.readBack(s)
	}
	s.then = s.Main()
	return s
}

// chosen is the nuc taken last, or nil.
func (s State) chosen() *Nuc {
	id, ok := s.Selection.Last().Nuc()
	if !ok {
		return nil
	}
	return s.Reading().Nuc(book.NucID(id))
}
