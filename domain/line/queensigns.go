package line

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// queenSign is one way in which queens are told apart.
type queenSign struct {
	what  string                                      // as a list of those there is headed
	say   func(*book.View, *book.Queen) string        // how the list says it; "": she has no such sign
	forms func(queen, func(form string, told ...any)) // all ways in which it is written
	nuc   bool                                        // it is a nuc's name
}

// queenSigns are the ways in the order in which they are asked.
var queenSigns = []queenSign{
	{what: "named", say: func(_ *book.View, q *book.Queen) string { return q.Name }, forms: nameForms},
	{what: "in cage", say: func(_ *book.View, q *book.Queen) string { return q.Label }, forms: cageForms},
	{what: "with disc", say: func(_ *book.View, q *book.Queen) string { return q.Mark.Disc }, forms: discForms},
	{what: "caged from", say: bareCage, forms: bareForms, nuc: true},
	{what: "in", say: func(*book.View, *book.Queen) string { return "" }, forms: homeForms},
	{what: "caught from", say: func(*book.View, *book.Queen) string { return "" }, forms: catchForms},
}

// queen is a queen of a view who may be meant.
type queen struct {
	*book.Queen
	v *book.View
}

// days are when she went, ended, and came to where she is.
func (q queen) days() map[string]calendar.Moment {
	return map[string]calendar.Moment{"handed over on": q.Handed, "ended on": q.Ended, "since": q.Since}
}

func nameForms(q queen, add func(string, ...any)) { addSaid(add, "%s", q.Name) }

func cageForms(q queen, add func(string, ...any)) {
	for _, form := range []string{"%s", "cage %s", "in cage %s"} {
		addSaid(add, form, q.Label)
	}
	if !q.InHand() {
		addSaid(add, "once in cage %s", q.Label)
	}
}

func discForms(q queen, add func(string, ...any)) {
	addSaid(add, "%s", q.Mark.Disc)
	addSaid(add, "disc %s", q.Mark.Disc)
	if q.Mark.Disc != "" && q.Mark.Colour != "" {
		for _, form := range []string{"%s %s", "%s disc %s", "disc %s %s"} {
			add(form, q.Mark.Colour, q.Mark.Disc)
		}
	}
}

// bareCage is the nuc from which a queen was caught whose cage has no number, and who is in
// no nuc again.
func bareCage(v *book.View, q *book.Queen) string {
	if q.Label != "" || q.InHand() && !q.Caged() {
		return ""
	}
	return v.Nuc(q.From).Name
}

func bareForms(q queen, add func(string, ...any)) {
	for _, form := range []string{"%s", "from %s", "caught from %s"} {
		addSaid(add, form, bareCage(q.v, q.Queen))
	}
}

func homeForms(q queen, add func(string, ...any)) {
	if home := In(q.v).Of(q.Where); q.InHand() && home != "" {
		add("in %s", home)
		add("of %s", home)
	}
	if id, is := q.Where.Nuc(); is && q.InHand() {
		if n := q.v.Nuc(id); !n.Yard.IsZero() {
			add("%s in %s", n.Name, q.v.Yard(n.Yard).Name)
		}
	}
}

func catchForms(q queen, add func(string, ...any)) {
	if from := q.v.Nuc(q.From).Name; !q.Caught.IsZero() && from != "" {
		on := q.Caught.Day(q.v.Zone())
		for _, day := range []string{on.Short(), on.ShortFrom(0), on.String()} {
			add("from %s on %s", from, day)
			add("caught from %s on %s", from, day)
		}
		add("from %s", from)
		add("caught from %s", from)
	}
}

// besides is what else may be said of her behind a comma: her marks, her line, when she went.
func besides(q queen, add func(string, ...any)) {
	addSaid(add, "%s", q.Mark.Colour)
	addSaid(add, "%s", q.Line)
	for _, form := range []string{"clipped", "wing clipped", "a wing clipped"} {
		if q.Mark.Clipped {
			add(form)
		}
	}
	o := q.v.Order(q.Order)
	addSaid(add, "order %s", o.Number)
	addSaid(add, "%s", o.Customer)
	for word, at := range q.days() {
		on := at.Day(q.v.Zone())
		for _, day := range []string{on.Short(), on.ShortFrom(0), on.String()} {
			if !at.IsZero() {
				add(word+" %s", day)
			}
		}
	}
}

func addSaid(add func(string, ...any), form, said string) {
	if said != "" {
		add(form, said)
	}
}
