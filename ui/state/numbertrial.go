package state

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// NumberMoves is something that another value of a number moves.
type NumberMoves struct{ What, From, To string }

// numberTrial is a value of a number that is tried.
type numberTrial struct {
	key   practice.Key
	value float64
}

// Measures of what is reckoned anew when a number is tried.
const (
	trialAhead = 60   // days
	trialNucs  = 2000 // in a larger book only the deadlines are compared
)

// NumberMoves is what the value typed for the chosen number would move: the
// deadlines of the days ahead, and how many nucs need the keeper.
func (s State) NumberMoves() []NumberMoves {
	if !s.NumberTried() {
		return nil
	}
	v, _ := s.numberTyped()
	return s.Present().moves(numberTrial{s.Number, v})
}

// NumberTried tells whether another value is typed for the chosen number, and one
// that may be used.
func (s State) NumberTried() bool {
	if s.Number == 0 {
		return false
	}
	v, wrong := s.numberTyped()
	word := s.moneyTyped()
	return wrong == "" && (v != s.Present().Numbers().Get(s.Number) || word != "" && word != s.Present().Numbers().Money())
}

func (r *Reading) readMoves(t numberTrial) (all []NumberMoves) {
	fact := book.NumberChanged{Number: practice.Of(t.key).Name, Value: t.value}
	now := r.View.On()
	trial := r.View.Season().With(book.Entry{ID: book.EntryID{15: 1}, At: calendar.Instantly(now), Written: now, Fact: fact}).At(now)
	if len(r.Nucs) <= trialNucs {
		all = r.needMoves(trial)
	}
	before := map[string]rules.Deadline{}
	for _, d := range rules.Deadlines(r.View, r.Day, r.Day+trialAhead) {
		before[d.ID] = d
	}
	for _, d := range rules.Deadlines(trial, r.Day, r.Day+trialAhead) {
		if b, ok := before[d.ID]; ok && (b.Day != d.Day || b.Hard && !b.At.Equal(d.At)) {
			all = append(all, NumberMoves{d.What, r.deadlineAt(b), r.deadlineAt(d)})
		}
	}
	return all
}

// needMoves is by how much it changes what needs the keeper now.
func (r *Reading) needMoves(trial *book.View) []NumberMoves {
	need := map[book.Subject]bool{}
	for _, f := range rules.Findings(trial) {
		if f.NeedsYou() {
			need[f.Of] = true
		}
	}
	n := 0
	for _, m := range r.Nucs {
		if need[m.Nuc.Nuc.Subject()] {
			n++
		}
	}
	if was := NeedYou(r.Nucs); was != n {
		return []NumberMoves{{"nucs that need you today", count(was), count(n)}}
	}
	return nil
}

// deadlineAt is when a deadline is, to the hour where it is hard.
func (r *Reading) deadlineAt(d rules.Deadline) string {
	if d.Hard {
		return d.At.In(r.View.Zone()).Format("Mon 2 Jan 15:04")
	}
	return d.Day.Short()
}
