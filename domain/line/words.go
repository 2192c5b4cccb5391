package line

import (
	"strings"

	"lidmark/domain/book"
)

// Words says a fact in plain words with all its names: "cell from batch 4 into
// P4", "virgin seen, bees on 5 sides". Every kind of fact has words.
func Words(f book.Fact, n Names) string { return WordsOn(f, n, book.Subject{}) }

// WordsOn says a fact on the card of a thing, whose own name goes without
// saying: on the card of P4, "cell from batch 4 given".
func WordsOn(f book.Fact, n Names, card book.Subject) string {
	t := teller{n, card}
	for _, say := range []func(book.Fact) string{t.place, t.nuc, t.care, t.end, t.people, t.batch, t.cells, t.given, t.look, t.queen, t.order, t.health, t.desk} {
		if words := say(f); words != "" {
			return words
		}
	}
	return book.KindOfFact(f)
}

// teller says facts, leaving out the name of the thing on whose card they
// stand.
type teller struct {
	names Names
	card  book.Subject
}

// at is the name behind a word, as in " into P4"; nothing for nobody, for the
// card's own and for what has no name.
func (t teller) at(word string, s book.Subject) string {
	if s.IsZero() || s == t.card {
		return ""
	}
	name := t.names.Of(s)
	if name == "" {
		return ""
	}
	if s.Kind == book.KindBatch {
		name = "batch " + name
	}
	return " " + word + " " + name
}

// called is a noun and the name behind it, as in "yard Home Yard".
func (t teller) called(what string, s book.Subject) string {
	if s == t.card || t.names.Of(s) == "" {
		return what
	}
	return what + " " + t.names.Of(s)
}

// or is words unless there are none.
func or(words, instead string) string {
	if words == "" {
		return instead
	}
	return words
}

// unless is prefix and words, or nothing where there are no words.
func unless(prefix, words string) string {
	if words == "" {
		return ""
	}
	return prefix + words
}

// ifSaid is words if it was said.
func ifSaid(said bool, words string) string {
	if said {
		return words
	}
	return ""
}

// commas joins what there is with commas.
func commas(words ...string) string {
	var all []string
	for _, w := range words {
		if w != "" {
			all = append(all, w)
		}
	}
	return strings.Join(all, ", ")
}
