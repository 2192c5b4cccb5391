package state

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/ui/scene"
)

// Kinds of a [scene.Ref] on the card.
const (
	LinkRef   = "link"   // the name of a thing; ID is the thing as files write it
	StrikeRef = "strike" // strikes a line of the book; ID is that of its entry
)

// LinkTo names a thing on the card that a click selects.
func LinkTo(s book.Subject) scene.Ref { return scene.Ref{Kind: LinkRef, ID: s.String()} }

// StrikeOf names what strikes a line of the book.
func StrikeOf(id book.EntryID) scene.Ref { return scene.Ref{Kind: StrikeRef, ID: id.String()} }

// cardCommands are what the card can do besides writing.
var cardCommands = []Command{
	{Name: "more", Does: "all that can be written of it", Word: "More …", Keys: "Alt+Down", Why: noMore, Do: pure(State.moreShown)},
	{Name: "card back", Does: "back to what the card showed before", Word: "Back", Keys: "Alt+Up", Why: noTrail, Do: pure(State.trailed)},
	{Name: "show yard", Does: "show the yard selected", Word: "Show it", Why: noYardChosen, Do: pure(func(s State) State { return s.shows(s.yardMeant(s.Selection)) })},
}

func noYardChosen(s State) string {
	if _, ok := s.Selection.Last().Yard(); !ok {
		return "no yard is selected"
	}
	return ""
}

// carded is the window after a message, with what of the card does not outlive
// it: the list of all records and the way back go with the selection they belong
// to, the caret leaves the line of another nuc, and what has the focus is shown
// once it has changed.
func (s State) carded(before State) State {
	if !s.sameCard(before) {
		s.More = false
		if len(s.Trail) == len(before.Trail) {
			s.Trail = nil
		}
	}
	s = s.lineLeft()
	if s.Focus != before.Focus {
		s.Follow = s.Focus != scene.Ref{}
	}
	return s
}

// followed is the window with what a link names, and the way back.
func (s State) followed(r scene.Ref) State {
	var sub book.Subject
	if sub.UnmarshalText([]byte(r.ID)) != nil || sub == s.Selection.Last() && s.Selection.Len() == 1 {
		return s
	}
	s.Trail = append(s.Trail[:len(s.Trail):len(s.Trail)], s.Selection)
	s.Selection, s.Focus = Select(sub), scene.Ref{}
	return s
}

// trailed is the window with what the card showed before.
func (s State) trailed() State {
	last := len(s.Trail) - 1
	s.Selection, s.Trail, s.Focus = s.Trail[last].kept(s.Reading().Known), s.Trail[:last:last], scene.Ref{}
	return s
}

func noTrail(s State) string {
	if len(s.Trail) == 0 {
		return "the card has shown nothing else"
	}
	return ""
}

// moreShown is the window with the list of all records open and the keys on the first
// of them, or shut again.
func (s State) moreShown() State {
	s.More, s.Focus = !s.More, scene.Ref{}
	if all := s.inMore(); s.More && len(all) > 0 {
		s.Focus = all[0]
	}
	return s.scrolled(CardPlace, -s.Scroll[CardPlace])
}

// inMore are the records of the list of all in its order: those that can be written,
// then the others.
func (s State) inMore() (all []scene.Ref) {
	var cannot []scene.Ref
	for _, rec := range s.Offered() {
		if rec.command().Reason(s) != "" {
			cannot = append(cannot, CommandOf(rec.Name))
			continue
		}
		all = append(all, CommandOf(rec.Name))
	}
	return append(all, cannot...)
}

// besideMore is the window with the keys on the record before or behind.
func (s State) besideMore(by int) State {
	all := s.inMore()
	at := slices.Index(all, s.Focus)
	if to := at + by; at >= 0 && to >= 0 && to < len(all) {
		s.Focus = all[to]
	}
	return s
}

func noMore(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if len(s.Offered()) == 0 {
		return "nothing can be written of what is selected"
	}
	return ""
}

// refusal is what the foot says of a command that cannot run.
func refusal(c Command, why string) Note {
	text := c.Word
	if text == "" {
		text = c.Does
	}
	return Note{Text: text + ": " + why, Bad: true}
}

// LineOf is the line of an entry in the book of what is selected; false where it
// has none.
func (s State) LineOf(id string) (line book.Line, ok bool) {
	for l := range s.Present().View.History(s.Selection.Last()) {
		if l.ID.String() == id {
			return l, true
		}
	}
	return book.Line{}, false
}

// CannotStrike says why a line of the book cannot be struck, or put back; "" when
// it can.
func (s State) CannotStrike(l book.Line) string {
	if why := noPen(s); why != "" {
		return why
	}
	if l.Struck {
		return ""
	}
	if founds, of := founded(l.Fact); founds {
		n := 0
		for range s.Present().View.Lines(of) {
			n++
		}
		if n > 1 {
			return "other lines speak of it: strike those first"
		}
	}
	return ""
}

// founded tells whether a fact brings a thing into the book, and which.
func founded(f book.Fact) (bool, book.Subject) {
	switch f := f.(type) {
	case book.YardDescribed:
		return true, f.Yard.Subject()
	case book.StandSet:
		return true, f.Stand.Subject()
	case book.BoxBuilt:
		return true, f.Box.Subject()
	case book.NucNamed:
		return true, f.Nuc.Subject()
	case book.ColonyDescribed:
		return true, f.Colony.Subject()
	case book.PersonDescribed:
		return true, f.Person.Subject()
	case book.Grafted:
		return true, f.Batch.Subject()
	case book.OrderTaken:
		return true, f.Order.Subject()
	}
	return false, book.Subject{}
}

// struckLine strikes a line of the book, or strikes what struck it: it counts
// again.
func (s State) struckLine(id string) (State, []Effect) {
	l, ok := s.LineOf(id)
	if !ok {
		return s, nil
	}
	words := line.Words(l.Fact, line.In(s.Present().View))
	if why := s.CannotStrike(l); why != "" {
		s.Note = Note{Text: fmt.Sprintf("Cannot strike %q: %s", words, why), Bad: true}
		return s, nil
	}
	if !l.Struck {
		return s.strikeOnly("struck: "+words, l.ID)
	}
	strike, ok := s.strikeOfEntry(l.ID)
	if !ok {
		return s, nil
	}
	return s.strikeOnly("counts again: "+words, strike)
}

// strikeOnly writes the strike of one entry as a deed that can be undone.
func (s State) strikeOnly(words string, id book.EntryID) (State, []Effect) {
	return s.write(words, calendar.Instantly(s.Now), book.Struck{Entry: id})
}

// strikeOfEntry is the entry that strikes another one and counts.
func (s State) strikeOfEntry(id book.EntryID) (found book.EntryID, ok bool) {
	for e := range s.Present().View.All() {
		if f, is := e.Fact.(book.Struck); is && f.Entry == id {
			found, ok = e.ID, true
		}
	}
	return found, ok
}

// unfollowed is the window whose card is scrolled by hand again, on from where it
// was drawn.
func (s State) unfollowed(at float64) State {
	if !s.Follow {
		return s
	}
	s.Follow = false
	return s.scrolled(CardPlace, at-s.Scroll[CardPlace])
}
