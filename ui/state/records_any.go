package state

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

var (
	ofAny  = []book.Kind{book.KindNuc, book.KindBatch, book.KindQueen, book.KindColony, book.KindOrder, book.KindPerson, book.KindYard}
	ofWork = []book.Kind{book.KindNuc, book.KindBatch, book.KindColony, book.KindYard}
)

// allRecordsOf are what can be written down of anything.
var allRecordsOf = []Record{
	{Name: "put off", Word: "Put off", Of: ofWork, Many: true, Fits: found, Asks: askPutOff, Facts: putOff},
	{Name: "not needed", Word: "Not needed any more", Of: ofWork, Many: true, Fits: found, Asks: askNotNeeded, Facts: notNeeded},
	{
		Name: "note", Word: "Note", Of: ofAny, Many: true, Asks: asks(askWords("text", "Note", "", "in your own words")),
		Facts: func(_ State, a *Answers) []book.Fact {
			text := a.Needed("text")
			return eachThing(a, func(of book.Subject) book.Fact { return book.Noted{Of: of, Text: text} })
		},
	},
}

// foundNow are the findings about what is selected that are not put off, each
// rule once.
func (s State) foundNow() (all []rules.Finding) {
	r := s.Present()
	there := map[rules.Rule]bool{}
	for _, sub := range (&Answers{Of: s.Selection, s: s}).Subjects() {
		for _, f := range r.About(sub) {
			if f.PutOff.IsZero() && !there[f.Rule] {
				there[f.Rule] = true
				all = append(all, f)
			}
		}
	}
	return all
}

func found(s State) bool {
	if _, ok := s.ChosenLine(); ok {
		return true
	}
	r := s.Present()
	for sub := range s.Selection.All() {
		for _, f := range r.About(sub) {
			if f.PutOff.IsZero() {
				return true
			}
		}
	}
	return false
}

// askRule asks which of the findings is meant, unless a line of the route says it.
func askRule(s State) []Ask {
	if _, ok := s.ChosenLine(); ok {
		return nil
	}
	var options []Option
	for _, f := range s.foundNow() {
		o := Option{string(f.Rule), f.What}
		if s.Selection.Len() > 1 {
			o.Word = string(f.Rule)
		}
		options = append(options, o)
	}
	return []Ask{{Name: "rule", Label: "What", Kind: Choice, First: firstOf(options), Options: options}}
}

func askPutOff(s State) []Ask {
	return append(askRule(s),
		askWords("until", "Until", fmt.Sprintf("+%d", s.safeUntil().Sub(s.Today())), "+3 days, sat, 2027-05-20"),
		askWords("why", "Why", "", "rain, no time …"))
}

func putOff(s State, a *Answers) []book.Fact {
	until := a.NeededDay("until")
	if !until.IsZero() && until <= s.Today() {
		a.Wrong("until", "%s has come: write a day ahead", until.Short())
	}
	all := silenced(s, a, until, a.Text("why"))
	s.priced(a, all, until)
	return all
}

func askNotNeeded(s State) []Ask {
	return append(askRule(s), askWords("why", "Why", "not needed any more", ""))
}

// notNeeded puts a finding off to the end of the year: it is silent for the
// season, and the book keeps who said so and why.
func notNeeded(s State, a *Answers) []book.Fact {
	year, _, _ := s.Today().Date()
	const lastMonth, lastDay = 12, 31
	return silenced(s, a, calendar.Date(year, lastMonth, lastDay), a.Needed("why"))
}

// silenced puts a rule off for each thing about which it finds something, and
// says what that risks.
func silenced(s State, a *Answers, until calendar.Day, why string) (all []book.Fact) {
	if l, ok := s.ChosenLine(); ok {
		return s.lineSilenced(a, l, until, why)
	}
	rule := a.chosen("rule")
	if rule == "" {
		a.Wrong("rule", "choose what is meant")
	}
	for _, sub := range a.Subjects() {
		for _, f := range s.Present().About(sub) {
			if string(f.Rule) == rule && f.PutOff.IsZero() {
				all = append(all, book.PutOff{Rule: rule, Of: sub, Until: until, Why: why})
				s.minded(a, f, until)
				break
			}
		}
	}
	return all
}

// minded says what waiting until a day costs, of the first things only: they are
// alike.
func (s State) minded(a *Answers, f rules.Finding, until calendar.Day) {
	const few = 3
	r := s.Present()
	for _, c := range r.Waiting(f) {
		if r.lastBefore(c.At) >= until {
			continue
		}
		a.loses = true
		if len(a.minds) < few {
			a.Mind("%s: %s", r.DayOf(c.At).Short(), c.What)
		}
	}
}

// priced says what it is expected to cost in queens that all of it waits until a day.
func (s State) priced(a *Answers, all []book.Fact, until calendar.Day) {
	var what []book.PutOff
	for _, f := range all {
		if f, is := f.(book.PutOff); is {
			what = append(what, f)
		}
	}
	if until <= s.Today() || len(what) == 0 {
		return
	}
	if cost, ok := crew.PutOff(s.Present().Judged(), until, what...); ok {
		a.Mind("%s", plan.Sentence(cost.Said(until, s.Today())))
	}
}

// lastBefore is the last day until which work can wait without a cost: the day
// that ends with it, or where it comes at an hour the day before.
func (r *Reading) lastBefore(cost time.Time) calendar.Day {
	zone := r.View.Zone()
	d := calendar.DayOf(cost, zone)
	if end := (d + 1).Start(zone); end.Sub(cost) <= time.Minute {
		return d
	}
	return d - 1
}

// usualWait is for how many days work is put off where that costs nothing.
const usualWait = 3

// safeUntil is the last day until which what is meant can be put off without a
// loss, tomorrow at the earliest and in usualWait days at the latest.
func (s State) safeUntil() calendar.Day {
	r := s.Present()
	until := s.Today() + usualWait
	found := s.foundNow()
	if l, ok := s.ChosenLine(); ok {
		found = l.Findings
	}
	for _, f := range found {
		for _, c := range r.Waiting(f) {
			until = min(until, r.lastBefore(c.At))
		}
	}
	return max(until, s.Today()+1)
}
