package line

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"lidmark/domain/book"
)

// Nucs are the nucs that a text names: "A3", "A1-A12, B4", in capitals or small
// letters. Its error is [Mistakes].
func Nucs(text string, c Context) ([]book.NucID, error) {
	p := &parser{scanner: scanner{text: []rune(text)}, Context: c}
	p.blanks()
	p.oddName()
	if p.now == nil {
		p.text = capitals(p.text)
		if p.scanner.name() == 0 {
			return nil, Mistakes{{p.at + 1, "no name of a nuc", "write a name or a row, like A3 or A1-A12"}}
		}
		p.subject()
	}
	if p.blanks(); !p.end() {
		p.wrong(p.at, "after the names something else follows", "write names separated by commas, like A3, A1-A12")
	}
	if len(p.mistakes) > 0 {
		return nil, p.mistakes
	}
	all := make([]book.NucID, len(p.now.nucs))
	for i, n := range p.now.nucs {
		all[i] = n.NucNamed.Nuc
	}
	return all, nil
}

// Row are the names that a text lists, whether there are such nucs yet or
// not: "A1-A3, B4" is A1, A2, A3 and B4, "A1-R4" the places 1 to 4 of the stands A
// to R, which are sixteen, since no stand is called I or O. Its error is [Mistakes].
func Row(text string) ([]string, error) {
	p := &parser{scanner: scanner{text: capitals([]rune(text))}}
	p.now = &draft{}
	var names []string
	for p.blanks(); !p.end(); p.blanks() {
		switch {
		case p.peek(0) == ',':
			p.at++
		case p.scanner.name() == 0:
			p.wrong(p.at, "no name of a nuc", "write the letter of its stand, then its place, like A3 or A1-A12")
			return nil, p.mistakes
		default:
			names = append(names, p.rowOfNew()...)
		}
		if len(p.mistakes) > 0 {
			return nil, p.mistakes
		}
	}
	return names, nil
}

// capitals are names in capitals: where no code can stand small letters do as
// well.
func capitals(text []rune) []rune {
	for i, r := range text {
		text[i] = unicode.ToUpper(r)
	}
	return text
}

// mostNew is how many names a row has at most; more is a slip of the finger.
const mostNew = 9999

// rowOfNew reads a row of nucs that are not in the book yet.
func (p *parser) rowOfNew() (names []string) {
	from := p.at
	first := p.take(p.scanner.name())
	last := first
	if p.dash() {
		last = p.rowEnd(first)
	}
	letter, a := splitName(first)
	other, b := splitName(last)
	stands := standsFrom(letter, other)
	switch {
	case !isStand(letter) || !isStand(other):
		p.wrong(from, p.span(from)+": names have no I and no O", "choose another letter, they look like 1 and 0")
	case len(stands) == 0 || b < a:
		p.wrong(from, p.span(from)+" does not go up", "write it like A1-A12, or A1-R4 for four places on each stand")
	case len(stands)*(b-a+1) > mostNew:
		p.wrong(from, p.span(from)+fmt.Sprintf(" are more than %d names", mostNew), "write fewer")
	default:
		for _, stand := range stands {
			for n := a; n <= b; n++ {
				names = append(names, stand+strconv.Itoa(n))
			}
		}
	}
	return names
}

// isStand tells whether a stand can be called so.
func isStand(letters string) bool { return !strings.ContainsAny(letters, "IO") }

// standsFrom are the letters of the stands from one to another, both with as many
// letters; none where they do not go up.
func standsFrom(first, last string) (all []string) {
	if len(first) != len(last) {
		return nil
	}
	for letters := first; letters <= last; letters = nextLetters(letters) {
		if isStand(letters) {
			all = append(all, letters)
		}
		if letters == strings.Repeat("Z", len(letters)) {
			break
		}
	}
	return all
}

// nextLetters are the letters that follow: B after A, BA after AZ.
func nextLetters(letters string) string {
	next := []byte(letters)
	for i := len(next) - 1; i >= 0; i-- {
		if next[i] < 'Z' {
			next[i]++
			break
		}
		next[i] = 'A'
	}
	return string(next)
}
