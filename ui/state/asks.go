package state

import (
	"fmt"
	"iter"
	"slices"
	"strconv"
	"unicode/utf8"

	"lidmark/domain/book"
)

// Questions of forms.

func askWords(name, label, first, note string) Ask {
	return Ask{Name: name, Label: label, First: first, Note: note}
}

func askFigure(name, label, unit string, first float64) Ask {
	return Ask{Name: name, Label: label, Kind: Figure, Unit: unit, First: typedFigure(first)}
}

func askYes(name, label string) Ask { return Ask{Name: name, Label: label, Kind: Yes} }

func askSome(name, label, first string, options []Option) Ask {
	return Ask{Name: name, Label: label, Kind: Some, First: first, Options: options}
}

// askOne is a question with one answer of several: all of them to be seen where
// they are few, else found by typing.
func askOne(name, label, first string, options []Option) Ask {
	const few, letters = 7, 90
	sum := 0
	for _, o := range options {
		sum += utf8.RuneCountInString(o.Word)
	}
	a := Ask{Name: name, Label: label, Kind: Choice, First: first, Options: options}
	switch {
	case len(options) > few || sum > letters:
		a.Kind = Suggest
	case len(options) == 0:
		a.Note = "there is none in the book"
	}
	return a
}

// asks are questions that do not depend on the window.
func asks(all ...Ask) func(State) []Ask { return func(State) []Ask { return all } }

// onlyWhen asks nothing but when it happened.
func onlyWhen(State) []Ask { return []Ask{} }

// typedFigure is a number as it is typed; "" for none.
func typedFigure(v float64) string {
	if v == 0 {
		return ""
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}

// vocabulary are words as options.
func vocabulary[W fmt.Stringer](all ...W) []Option {
	var options []Option
	for _, w := range all {
		options = append(options, Option{w.String(), w.String()})
	}
	return options
}

// labels are texts as options.
func labels(all ...string) []Option {
	var options []Option
	for _, w := range all {
		options = append(options, Option{w, w})
	}
	return options
}

// things are things of the book as options; those without a word are left out.
func things[T any](all iter.Seq[T], of func(T) (book.Subject, string)) (options []Option) {
	for t := range all {
		if sub, word := of(t); word != "" {
			options = append(options, Option{sub.String(), word})
		}
	}
	return options
}

// firstOf is the value of the first option; "" where there is none.
func firstOf(all []Option) string {
	if len(all) == 0 {
		return ""
	}
	return all[0].Value
}

// lastOf is what was last written of a kind; its zero where nothing was.
func lastOf[F book.Fact](s State) (last F) {
	for e := range s.Present().View.All() {
		if f, ok := e.Fact.(F); ok {
			last = f
		}
	}
	return last
}

// colonies are the full-size colonies as options, those of a role first.
func (s State) colonies(role book.Role) []Option {
	var first, rest []Option
	for c := range s.Present().View.Colonies() {
		o := Option{c.Colony.Subject().String(), c.Name}
		if c.Line != "" {
			o.Word += ", " + c.Line
		}
		if c.Is(role) {
			first = append(first, o)
			continue
		}
		rest = append(rest, o)
	}
	return append(first, rest...)
}

// units are nucs that live and colonies as options, without those selected.
func (s State) units() []Option {
	all := s.colonies(0)
	for _, n := range s.Present().Nucs {
		if n.Holds.Condition != book.Empty && !s.Selection.Has(n.Nuc.Nuc.Subject()) {
			all = append(all, Option{n.Nuc.Nuc.Subject().String(), n.Name})
		}
	}
	return slices.DeleteFunc(all, func(o Option) bool {
		var sub book.Subject
		return sub.UnmarshalText([]byte(o.Value)) == nil && s.Selection.Has(sub)
	})
}

// batches are the batches as options that have cells to give, the oldest first;
// where none has, all of them, the latest first.
func (s State) batches() []Option {
	v := s.Present().View
	options := things(v.Batches(), func(b *book.Batch) (book.Subject, string) {
		if b.Unplaced() == 0 {
			return book.Subject{}, ""
		}
		return b.Batch.Subject(), batchWord(b) + ", " + counted(b.Unplaced(), "cell")
	})
	if len(options) > 0 {
		return options
	}
	options = things(v.Batches(), func(b *book.Batch) (book.Subject, string) { return b.Batch.Subject(), batchWord(b) })
	slices.Reverse(options)
	return options
}

// batchWord is what a batch is called among others: "4, Wren 7".
func batchWord(b *book.Batch) string {
	word := strconv.Itoa(b.Number)
	if b.Line != "" {
		word += ", " + b.Line
	}
	return word
}

// counted is a number of things in words.
func counted(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return strconv.Itoa(n) + " " + thing + "s"
}

// yards are the yards as options.
func (s State) yards() []Option {
	return things(s.Present().View.Yards(), func(y *book.Yard) (book.Subject, string) { return y.Yard.Subject(), y.Name })
}

// people are the people as options.
func (s State) people() []Option {
	return things(s.Present().View.People(), func(p *book.Person) (book.Subject, string) { return p.Person.Subject(), p.Name })
}
