package main

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// settle asks the questions of entries that do not fit the book, and puts the
// answers among them. Without somebody to answer, a question stays open in the
// book. It does not keep entries that were a mistake.
func (d *desk) settle(entries []book.Entry) (all []book.Entry, keep bool) {
	for _, e := range entries {
		q, asks := rules.Ask(d.season.At(e.At.Instant), e.Fact)
		if asks && len(all) > 0 { // perhaps what was typed with it answers
			q, asks = rules.Ask(d.season.With(slices.Clone(all)...).At(e.At.Instant), e.Fact)
		}
		if !asks {
			all = append(all, e)
			continue
		}
		answer := d.askOne(q)
		if answer.Leave {
			return nil, false
		}
		all = append(all, d.entries(e.At, answer.Before...)...)
		all = append(all, e)
		all = append(all, d.entries(e.At, answer.After...)...)
	}
	if len(all) > len(entries) {
		for i := range all {
			all[i].ID = book.EntryID(d.ids.Next()) // ids rise in the order in which things happened
		}
	}
	return all, true
}

// askOne asks a question that is answered with one key.
func (d *desk) askOne(q rules.Question) rules.Answer {
	d.line("  %s", q.Asks)
	if !d.asks || d.flags.yes {
		d.line("  kept as it is, the question stays open: see lidbook needs")
		return rules.Answer{}
	}
	for {
		for _, a := range q.Answers {
			fmt.Fprintf(d.out, "  %s %s", a.Key, a.Words)
		}
		fmt.Fprint(d.out, ": ")
		key, more := d.nextLine()
		for _, a := range q.Answers {
			if a.Key == key {
				return a
			}
		}
		if !more {
			return rules.Answer{}
		}
	}
}
