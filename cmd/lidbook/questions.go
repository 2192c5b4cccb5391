package main

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// settle asks the questions of entries that do not fit the book, and puts the
// answers among them. Without somebody to answer, a question stays open in the
// book. It does not keep entries that were a mistake.
func (d *desk) settle(entries []book.Entry) (all []book.Entry, keep bool) {
	return rules.Settle(d.season, entries, &d.ids, d.askOne)
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
