package state

import (
	"fmt"
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
	answers := answering{given: a.Given, alike: map[string]string{}}
	dropped := s.withoutFailed(a.Drops)
	entries, keep := rules.Settle(dropped.season(), a.Entries, &ids, answers.answer)
	if answers.waits != nil {
		asked := *a
		asked.Asks, asked.Answers = answers.asks(), options(*answers.waits)
		s.Asked = &asked
		return s, nil
	}
	s.Asked = nil
	if !keep {
		return s, nil
	}
	s = dropped
	s.Pen.IDs, s.Asked = ids, nil
	s = s.formDone()
	typed := withAnswers(a.Typed, entries, a.Entries, line.In(s.Present().View))
	s, effects := s.send(Deed{Words: a.Words, Entries: entries, Typed: typed})
	switch {
	case s.Walk != nil && len(typed) > 0:
		s = s.walkOn(typed)
	case a.Field != "":
		s = s.lineWritten(a.Field)
	}
	return s, effects
}

// answering gives questions the answers that were given so far.
type answering struct {
	given []string          // keys, in the order of the questions
	alike map[string]string // the keys given to questions that are answered together
	waits *rules.Question   // the first without an answer
	more  int               // those behind it that are answered with it
}

// answer is the answer to a question; none where it waits, or was left open.
func (a *answering) answer(q rules.Question) rules.Answer {
	key, said := a.alike[q.Alike]
	switch {
	case said:
	case a.waits != nil:
		if q.Alike != "" && q.Alike == a.waits.Alike {
			a.more++
		}
		return rules.Answer{}
	case len(a.given) == 0:
		a.waits = &q
		return rules.Answer{}
	default:
		key, a.given = a.given[0], a.given[1:]
		if q.Alike != "" {
			a.alike[q.Alike] = key
		}
	}
	for _, answer := range q.Answers {
		if answer.Key == key {
			return answer
		}
	}
	return rules.Answer{}
}

// asks is the question that waits, with how many are answered with it.
func (a *answering) asks() string {
	if a.more == 0 {
		return a.waits.Asks
	}
	return fmt.Sprintf("%s The same of %s", a.waits.Asks, counted(a.more, "more nuc"))
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

// has tells whether a key is printed on one of the answers.
func (a *Asked) has(key string) bool {
	return slices.ContainsFunc(a.Answers, func(o Option) bool { return o.Value == key })
}

// Asked is a question of the rules about entries that are about to be written:
// it is answered with one key, and the entries are written either way, unless
// the answer is that they were a mistake.
type Asked struct {
	Entries []book.Entry
	Words   string
	Given   []string     // keys of the answers given so far, in the order of the questions
	Asks    string       // the question that waits
	Answers []Option     // its answers: the key, and what it means
	Typed   []Typed      // what was typed, where the entries are those of a line
	Field   string       // in which it was typed, where it was the line of a nuc
	Drops   []book.Entry // what the book did not take, and these entries stand for
	Twice   string       // the words that may have been typed twice, where that is the question
}
