package line

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
)

// subject reads the nucs that a section is about: names and rows, parted by
// commas or blanks.
func (p *parser) subject() {
	from := p.at
	p.open(from)
	for {
		p.nameOrRow(p.add)
		if !p.another() {
			break
		}
	}
	p.colon()
	p.now.row = p.span(from)
}

// another goes on to the next name of a list. Small letters go on with a list
// that began with them, behind a comma: a bare a2 is a code.
func (p *parser) another() bool {
	was := p.at
	p.blanks()
	comma := p.peek(0) == ',' || p.word("and") > 0
	if comma {
		p.at += max(1, p.word("and"))
		p.blanks()
	}
	if p.scanner.name() > 0 || comma && p.small && p.raise(true) {
		return true
	}
	p.at = was
	return false
}

// exceptions reads the names behind except.
func (p *parser) exceptions() {
	d, from := p.here(), p.at
	p.at += p.word("except")
	p.blanks()
	p.small = p.raise(true)
	if p.scanner.name() == 0 {
		p.wrong(p.at, "except whom", "name the nucs that are left out, like except A3 A9")
		return
	}
	for {
		p.nameOrRow(p.leaveOut)
		if !p.another() {
			break
		}
	}
	words := "left out: " + strings.TrimSpace(p.span(from+len("except")))
	d.tokens = append(d.tokens, Token{from + 1, p.at + 1, words})
}

// nameOrRow reads a name, or a row such as A1-A12, and hands each name on
// with the place where it was typed.
func (p *parser) nameOrRow(each func(at int, name string)) {
	from := p.at
	first := p.take(p.scanner.name())
	if !p.dash() {
		each(from, first)
		return
	}
	at := p.at
	last := p.rowEnd(first)
	letter, a := splitName(first)
	other, b := splitName(last)
	switch {
	case letter != other:
		p.across(at, first, last, each)
	case b < a:
		p.wrong(at, "the row runs backwards", "write %s%d-%s%d", letter, b, letter, a)
	default:
		p.between(from, letter, a, b, each)
	}
}

// rowEnd reads the end of a row, whose letter may be left out.
func (p *parser) rowEnd(first string) string {
	if n := p.scanner.name(); n > 0 {
		return p.take(n)
	}
	letter, _ := splitName(first)
	from := p.at
	for isDigit(p.peek(0)) && p.at-from < 4 {
		p.at++
	}
	return letter + p.span(from)
}

// between hands on the nucs of a row that there are; a row with a gap in it
// is as good as any, one with nobody in it is none.
func (p *parser) between(from int, letter string, a, b int, each func(int, string)) {
	found := false
	for n := a; n <= b; n++ {
		name := letter + strconv.Itoa(n)
		if nuc, others := p.nuc(name); nuc != nil || len(others) > 0 {
			each(from, name)
			found = true
		}
	}
	if !found {
		p.wrong(from, fmt.Sprintf("no nuc from %s%d to %s%d", letter, a, letter, b), "mend the row, or add the nucs to the book first")
	}
}

// across hands on the nucs from one to another that has another letter, as one
// walks: letter by letter and then by number, in the yard of the first.
func (p *parser) across(at int, first, last string, each func(int, string)) {
	a, b := p.named(at, first), p.named(at, last)
	if a == nil || b == nil {
		return
	}
	inOrder := func(x, y string) int {
		letterX, x1 := splitName(x)
		letterY, y1 := splitName(y)
		return cmp.Or(cmp.Compare(letterX, letterY), cmp.Compare(x1, y1))
	}
	if a.Yard != b.Yard || inOrder(first, last) > 0 {
		p.wrong(at, last+" ends a row that begins with "+first, "write the letters in order, of nucs of one yard")
		return
	}
	for _, n := range p.inYard(a.Yard) {
		if inOrder(first, n.Name) <= 0 && inOrder(n.Name, last) <= 0 {
			each(at, n.Name)
		}
	}
}

// inYard are the nucs of a yard that have names, by letter and number.
func (p *parser) inYard(yard book.YardID) (all []*book.Nuc) {
	for n := range p.View.Nucs() {
		if n.Yard == yard && n.Name != "" {
			all = append(all, n)
		}
	}
	slices.SortFunc(all, func(a, b *book.Nuc) int {
		letterA, a1 := splitName(a.Name)
		letterB, b1 := splitName(b.Name)
		return cmp.Or(cmp.Compare(letterA, letterB), cmp.Compare(a1, b1))
	})
	return all
}

// yardNamed takes the name of a yard at the beginning of a section: what follows is
// said of all its nucs. A figure behind it is a count of the row, as behind a stand.
func (p *parser) yardNamed() bool {
	for y := range p.View.Yards() {
		n := p.word(strings.ToLower(y.Name))
		if y.Name == "" || n == 0 || p.now != nil && len(p.now.tokens) == 0 {
			continue
		}
		all := p.inYard(y.Yard)
		if len(all) == 0 {
			continue
		}
		from := p.at
		p.at += n
		p.open(from)
		p.now.nucs, p.now.row = all, y.Name
		p.colon()
		return true
	}
	return false
}

// dash takes the line between the names of a row.
func (p *parser) dash() bool {
	was := p.at
	p.blanks()
	spaced := p.at > was
	if r := p.peek(0); r == '-' || r == '–' || r == '—' {
		p.at++
		p.blanks()
		if p.small {
			p.raise(false)
		}
		if p.scanner.name() > 0 || !spaced && isDigit(p.peek(0)) {
			return true
		}
	}
	p.at = was
	return false
}

func (p *parser) add(at int, name string) {
	if n := p.named(at, name); n != nil && !slices.Contains(p.now.nucs, n) {
		p.now.nucs = append(p.now.nucs, n)
	}
}

func (p *parser) leaveOut(at int, name string) {
	n := p.named(at, name)
	if n == nil {
		return
	}
	if !slices.Contains(p.now.nucs, n) {
		p.wrong(at, name+" is not in "+p.now.row, "leave out only what is in the row")
		return
	}
	p.now.except[n.NucNamed.Nuc] = true
}

// named finds the nuc of a name, or says what is wrong with it.
func (p *parser) named(at int, name string) *book.Nuc {
	n, others := p.nuc(name)
	switch {
	case n != nil:
	case len(others) > 0:
		p.wrong(at, name+" stands in "+list(p.yardsOf(others)), "say in which yard you are")
	case strings.ContainsAny(name, "IO"):
		p.wrong(at, "no nuc is called "+name, "names have no I and no O; write 1 or 0 where you mean a figure")
	default:
		p.wrong(at, "no nuc is called "+name, "mend the name, or add the nuc to the book first")
	}
	return n
}

func (p *parser) yardsOf(nucs []*book.Nuc) []string {
	var all []string
	for _, n := range nucs {
		all = append(all, p.View.Yard(n.Yard).Name)
	}
	return all
}

func splitName(s string) (letters string, number int) {
	letters = strings.TrimRight(s, "0123456789")
	number, _ = strconv.Atoi(s[len(letters):]) // "" is 0
	return letters, number
}
