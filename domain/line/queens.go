package line

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// queenCall is a text as parts between commas, all of which must be true of her.
type queenCall struct {
	whole string
	parts []string
}

func callOf(text string) queenCall {
	c := queenCall{whole: plainCall(text)}
	for part := range strings.SplitSeq(c.whole, ",") {
		c.parts = append(c.parts, plainCall(part))
	}
	return c
}

// plainCall is a text in small letters, without the words that stand before any queen's sign.
func plainCall(text string) string {
	text = strings.ToLower(strings.Join(strings.Fields(text), " "))
	for _, word := range []string{"the ", "a ", "queen ", "virgin "} {
		text = strings.TrimPrefix(text, word)
	}
	return text
}

// none is a sign that she does not have.
const none = -1

// told is the first of the signs by which the text tells her; none where it does not.
func (c queenCall) told(q queen, nucs bool) int {
	first := none
	forms := make([][]string, len(queenSigns))
	for i, s := range queenSigns {
		s.forms(q, collect(&forms[i]))
		if (nucs || !s.nuc) && slices.Contains(forms[i], c.whole) {
			return i
		}
	}
	var more []string
	besides(q, collect(&more))
	for _, part := range c.parts {
		i := slices.IndexFunc(forms, func(all []string) bool { return slices.Contains(all, part) })
		switch {
		case i == none && !slices.Contains(more, part):
			return none
		case i != none && (first == none || i < first):
			first = i
		}
	}
	if first != none && queenSigns[first].nuc && !nucs {
		return none
	}
	return first
}

// collect gathers forms as they are compared.
func collect(all *[]string) func(string, ...any) {
	return func(form string, told ...any) {
		if form != "" {
			*all = append(*all, plainCall(fmt.Sprintf(form, told...)))
		}
	}
}

// QueensCalled are the queens whom a text names, of those who may be meant; where it names
// some in different ways, those named in the first of these: her name, her cage, her disc, with
// its colour or without, and the nuc she was caught from or is in; who is in hand before who is
// gone. Parts behind commas must be true of her too. Without nucs, the name of a nuc alone
// names nobody.
func QueensCalled(v *book.View, text string, nucs bool, may func(*book.Queen) bool) (all []*book.Queen) {
	call, best := callOf(text), none
	for q := range v.Queens() {
		sign := none
		if may(q) {
			sign = call.told(queen{q, v}, nucs)
		}
		if sign == none {
			continue
		}
		if !q.InHand() {
			sign += len(queenSigns)
		}
		if best == none || sign < best {
			best, all = sign, nil
		}
		if sign == best {
			all = append(all, q)
		}
	}
	return all
}

// Queen is the only queen whom a text names, of those who may be meant, see [QueensCalled]. Its
// error says which there are.
func Queen(v *book.View, text string, nucs bool, may func(*book.Queen) bool) (*book.Queen, error) {
	switch all := QueensCalled(v, text, nucs, may); len(all) {
	case 0:
		return nil, noQueen(v, text)
	case 1:
		return all[0], nil
	default:
		var words []string
		for _, q := range all {
			words = append(words, queen{q, v}.whole())
		}
		return nil, fmt.Errorf("%d queens are called %s: name the one that is meant, %s", len(all), strings.TrimSpace(text), fewNames(words, "; "))
	}
}

// whole is a name by which a queen is told from all others, as far as the book can.
func (q queen) whole() string {
	name := rules.Name(q.v, q.Queen.Queen.Subject())
	if catch := q.v.CatchWords(q.Queen); catch != "" && !strings.Contains(name, catch) {
		name += ", " + catch
	}
	for _, word := range []string{"handed over on", "ended on", "since"} {
		if at := q.days()[word]; !at.IsZero() && (word != "since" || q.Caught.IsZero()) {
			return name + ", " + word + " " + at.Day(q.v.Zone()).ShortFrom(q.v.Today())
		}
	}
	return name
}

// fewNames are a few of many names.
func fewNames(names []string, between string) string {
	const few = 8
	if len(names) > few {
		return strings.Join(names[:few], between) + " and more"
	}
	return strings.Join(names, between)
}

// noQueen tells which queens there are in the hand, by how they are told.
func noQueen(v *book.View, text string) error {
	var there []string
	for _, sign := range queenSigns {
		var names []string
		for q := range v.Queens() {
			if s := sign.say(v, q); s != "" && q.InHand() {
				names = append(names, s)
			}
		}
		if len(names) > 0 {
			there = append(there, sign.what+" "+fewNames(names, ", "))
		}
	}
	if len(there) == 0 {
		return fmt.Errorf("no queen %q: there is none with a name, cage or disc in the book on that day", text)
	}
	return fmt.Errorf("no queen %q: there are %s", text, strings.Join(there, "; "))
}
