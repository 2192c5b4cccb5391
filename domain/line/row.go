package line

import (
	"strconv"
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
		p.wrong(p.at, "after the names something else follows", "write names parted by commas, like A3, A1-A12")
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
// not: "A1-A3, B4" is A1, A2, A3 and B4. Its error is [Mistakes].
func Row(text string) ([]string, error) {
	p := &parser{scanner: scanner{text: capitals([]rune(text))}}
	p.now = &draft{}
	var names []string
	for p.blanks(); !p.end(); p.blanks() {
		switch {
		case p.peek(0) == ',':
			p.at++
		case p.scanner.name() == 0:
			p.wrong(p.at, "no name of a nuc", "write a name or a row, like A3 or A1-A12")
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
	switch {
	case letter == "I" || letter == "O":
		p.wrong(from, "names have no I and no O", "choose another letter, they look like 1 and 0")
	case letter != other || b < a:
		p.wrong(from, "a row goes up and has one letter", "write it like A1-A12")
	}
	for n := a; n <= b && len(p.mistakes) == 0; n++ {
		names = append(names, letter+strconv.Itoa(n))
	}
	return names
}
