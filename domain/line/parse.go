package line

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Line is a line that was read: what it says, nuc by nuc or row by row.
type Line struct {
	Sections []Section
}

// Section is what a line says of one nuc, or of several at once.
type Section struct {
	Subject string // "L7", "10 nucs", "A"
	Nucs    []book.NucID
	At      calendar.Moment
	Tokens  []Token
	Facts   []book.Fact       // in the order in which they can have happened
	Times   []calendar.Moment // of each of Facts; where there is none it is At
	Back    string            // the section read back in plain words, without its subject
}

// Token is a piece of the typed line and what it means. From and To are
// columns, counted in characters from 1; To is behind the last.
type Token struct {
	From, To int
	Words    string
}

// Facts are the facts of all sections, in order.
func (l Line) Facts() []book.Fact {
	var all []book.Fact
	for _, s := range l.Sections {
		all = append(all, s.Facts...)
	}
	return all
}

// String is the line read back: "A3: no queen seen, cell from batch 4 given".
func (l Line) String() string {
	all := make([]string, len(l.Sections))
	for i, s := range l.Sections {
		all[i] = s.Subject + ": " + s.Back
	}
	return strings.Join(all, "; ")
}

// Parse reads a line. Its error is [Mistakes]; the line that comes with it has
// what could be read, so that it can be read back while it is typed. A blank
// line has no sections and no mistakes.
func Parse(text string, c Context) (Line, error) {
	p := &parser{scanner: scanner{text: []rune(strings.ToValidUTF8(text, "?"))}, Context: c}
	p.blanks()
	p.oddName()
	for p.blanks(); !p.end(); p.blanks() {
		p.next()
	}
	p.close()
	if len(p.mistakes) > 0 {
		slices.SortStableFunc(p.mistakes, func(a, b Mistake) int { return cmp.Compare(a.Column, b.Column) })
		return p.line, p.mistakes
	}
	return p.line, nil
}

type parser struct {
	scanner
	Context
	line     Line
	now      *draft // the section being read; nil between sections
	mistakes Mistakes
	small    bool // the list of names being read began in small letters
}

// draft is a section while it is read.
type draft struct {
	from   int // where it begins
	row    string
	nucs   []*book.Nuc
	except map[book.NucID]bool
	part   calendar.Part
	clock  calendar.Moment // a time of day that was typed
	deed   deed
	slots  map[string]string
	tokens []Token
	counts *counts
	wrong  bool

	unwritten []string // nucs that were done as written, though nothing was
}

// next reads one piece: a subject, a note, a part of the day, a word or a code.
func (p *parser) next() {
	switch r := p.peek(0); {
	case r == ';':
		p.at++
		p.close()
	case r == ',':
		p.at++
	case p.quoted():
		p.note()
	case r == '@':
		p.dayPart()
	case p.name() > 0:
		p.small = false
		p.subject()
	case p.smallName():
		p.subject()
	case p.capitals() > 0 && p.yardNamed():
	case p.capitals() > 0 || p.word("yard") > 0:
		p.stand()
	case isDigit(r):
		p.count()
	case p.word("except") > 0:
		p.exceptions()
	default:
		p.letter()
	}
}

// oddName takes the first word of a line as a name when a nuc is called by it,
// so that nucs with names of another make can be written up as well.
func (p *parser) oddName() {
	from := p.at
	n := 0
	for p.peek(n) != 0 && p.peek(n) != ' ' && p.peek(n) != ':' {
		n++
	}
	name := string(p.text[from : from+n])
	if p.name() > 0 && p.name() == n || len(p.Context.named(name)) == 0 {
		return
	}
	p.at += n
	p.open(from)
	p.add(from, name)
	p.colon()
}

// smallName takes a name in small letters, where no code can stand: at the
// beginning of what must begin with a name.
func (p *parser) smallName() bool {
	p.small = p.now == nil && p.Nuc.IsZero() && p.raise(true)
	return p.small
}

// raise makes a name in small letters one in capitals; there must be such a
// nuc if the book is asked.
func (p *parser) raise(ask bool) bool {
	was := p.at
	typed := string(p.text[was:min(len(p.text), was+2)])
	if !p.scanner.raise() {
		return false
	}
	if n, others := p.nuc(string(p.text[was : was+p.scanner.name()])); !ask || n != nil || len(others) > 0 {
		return true
	}
	copy(p.text[was:], []rune(typed))
	return false
}

func (p *parser) colon() {
	if p.peek(0) == ':' {
		p.at++
	}
}

// open begins a section at a character.
func (p *parser) open(from int) {
	p.close()
	p.now = &draft{from: from, except: map[book.NucID]bool{}, slots: map[string]string{}}
}

// here is the section that codes go to. The first codes of a line without a
// name go to the context's nuc.
func (p *parser) here() *draft {
	if p.now != nil {
		return p.now
	}
	p.open(p.at)
	if p.Nuc.IsZero() {
		p.wrong(p.at, "nobody knows of which nuc this tells", "begin with its name, like L7")
		return p.now
	}
	p.now.nucs = []*book.Nuc{p.View.Nuc(p.Nuc)}
	return p.now
}

// wrong notes a mistake at a character and goes on.
func (p *parser) wrong(at int, what, do string, args ...any) {
	if p.now != nil {
		p.now.wrong = true
	}
	p.mistakes = append(p.mistakes, Mistake{at + 1, what, fmt.Sprintf(do, args...)})
}

func (p *parser) token(from int, words string) {
	d := p.here()
	d.tokens = append(d.tokens, Token{from + 1, p.at + 1, words})
}
