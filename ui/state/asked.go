package state

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// settled is the window after entries were asked what they ask of the book: with
// the question that waits, or with the entries and what the answers add on their
// way into the book.
func (s State) settled(a *Asked) (State, []Effect) {
	ids := s.Pen.IDs
	ids.Deed()
	var waits *rules.Question
	given := a.Given
	entries, keep := rules.Settle(s.season(), a.Entries, &ids, func(q rules.Question) rules.Answer {
		if len(given) == 0 {
			if waits == nil {
				waits = &q
			}
			return rules.Answer{}
		}
		key := given[0]
		given = given[1:]
		for _, answer := range q.Answers {
			if answer.Key == key {
				return answer
			}
		}
		return rules.Answer{} // left open in the book
	})
	if waits != nil {
		asked := *a
		asked.Asks, asked.Answers = waits.Asks, options(*waits)
		s.Asked = &asked
		return s, nil
	}
	s.Asked = nil
	if !keep {
		return s, nil
	}
	s.Pen.IDs = ids
	s = s.formDone()
	typed := withAnswers(a.Typed, entries, a.Entries, line.In(s.Present().View))
	s, effects := s.send(Deed{Words: a.Words, Entries: entries, Typed: typed})
	if s.Walk != nil && len(typed) > 0 {
		s = s.walkOn(typed)
	}
	return s, effects
}

// options are the answers to a question.
func options(q rules.Question) (all []Option) {
	for _, a := range q.Answers {
		all = append(all, Option{a.Key, a.Words})
	}
	return all
}

// answered answers the question that waits; another key than those printed
// leaves it open in the book.
func (s State) answered(key string) (State, []Effect) {
	a := *s.Asked
	if a.Twice != "" {
		return s.twiceAnswered(key)
	}
	a.Given = append(slices.Clip(a.Given), key)
	return s.settled(&a)
}

// Asked is a question of the rules about entries that are about to be written:
// it is answered with one key, and the entries are written either way, unless
// the answer is that they were a mistake.
type Asked struct {
	Entries []book.Entry
	Words   string
	Given   []string // keys of the answers given so far, in the order of the questions
	Asks    string   // the question that waits
	Answers []Option // its answers: the key, and what it means
	Typed   []Typed  // what was typed, where the entries are those of a line
	Twice   string   // the words that may have been typed twice, where that is the question
}
