package line

import (
	"strings"
)

// letter reads a word or a code, the longest that fits.
func (p *parser) letter() {
	for _, c := range phrasesLongest {
		if n := p.word(c.sign); n > 0 {
			p.put(c, p.at, n)
			return
		}
	}
	for _, c := range codesLongest {
		if p.starts(c.sign) && !p.figureGoesOn(c.sign) {
			p.put(c, p.at, len([]rune(c.sign)))
			return
		}
	}
	p.here()
	at := p.at
	for p.at++; !p.end() && !strings.ContainsRune(" ,;\"@", p.peek(0)); p.at++ {
	}
	p.wrong(at, p.span(at)+" is no letter of the line", "put words of your own in quotes")
}

// figureGoesOn tells that the 0 of o0 only begins a longer figure.
func (p *parser) figureGoesOn(sign string) bool {
	if !strings.HasSuffix(sign, "0") {
		return false
	}
	r := p.peek(len(sign))
	return isDigit(r) || (r == '.' || r == ',') && isDigit(p.peek(len(sign)+1))
}

// put takes a code of n characters with what follows it.
func (p *parser) put(c code, from, n int) {
	d := p.here()
	p.at = from + n
	v, ok := p.value(c, from)
	if !ok {
		return
	}
	typed := p.span(from)
	if was, twice := d.slots[c.slot]; twice {
		p.wrong(from, typed+" stands beside "+was, "keep one of the two")
		return
	}
	d.slots[c.slot] = typed
	c.say(&d.deed, v)
	p.token(from, c.words(v))
}

// value reads what follows a code and looks it up in the book.
func (p *parser) value(c code, from int) (v value, ok bool) {
	switch c.figure {
	case alone:
		return v, true
	case named:
		return p.valueNamed(c, from)
	}
	v.n, v.has = p.number()
	switch {
	case !v.has && c.figure == may:
		return v, true
	case !v.has:
		p.wrong(from, c.sign+" wants a figure", "write it close behind, like %s", example(c))
		return v, false
	}
	if c.sign == "f" {
		v = p.measured(v)
	}
	if bad := c.outside(v.n); bad {
		p.wrong(from, p.span(from)+" is outside what "+c.sign+" can say", "write %s", c.span())
		return v, false
	}
	return p.batchOf(c, v, from)
}

func (c code) outside(n float64) bool {
	return n < c.least || c.most > 0 && n > c.most || c.whole && n != float64(int(n))
}

// span is the range of a code's figure in words.
func (c code) span() string {
	switch {
	case c.most > 0:
		return c.sign + figureOf(c.least) + " to " + c.sign + figureOf(c.most)
	case c.whole:
		return c.sign + " and a whole number from " + figureOf(c.least)
	default:
		return c.sign + " and a number from " + figureOf(c.least)
	}
}

func example(c code) string {
	switch c.sign {
	case "f":
		return "f0.3"
	case "h", "t", "a":
		return c.sign + "2"
	default:
		return c.sign + "4"
	}
}

func (p *parser) batchOf(c code, v value, from int) (value, bool) {
	if c.sign != "c" {
		return v, true
	}
	b := p.View.BatchNumbered(int(v.n))
	if b == nil {
		p.wrong(from, "there is no batch "+v.String(), "%s", oneOf("batch", p.batches()))
		return v, false
	}
	v.batch = b.Batch
	return v, true
}

// oneOf tells which there are.
func oneOf(what string, there []string) string {
	if len(there) == 0 {
		return "no " + what + " is in the book on that day; write that up first"
	}
	return "those in the book: " + list(there)
}

// valueNamed reads the name behind u and i.
func (p *parser) valueNamed(c code, from int) (v value, ok bool) {
	at := p.at
	n := p.scanner.name()
	if c.sign == "i" && n == 0 {
		for isDigit(p.peek(n)) {
			n++
		}
	}
	v.name = p.take(n)
	switch {
	case n == 0 && c.sign == "i":
		p.wrong(from, "i wants the number of a caged virgin", "write it close behind, like i2")
	case n == 0:
		p.wrong(from, "u wants the name of a nuc or colony", "write it close behind, like uD4")
	case c.sign == "i":
		return p.caged(v, from)
	default:
		return p.partner(v, at)
	}
	return v, false
}

func (p *parser) caged(v value, from int) (value, bool) {
	q, there := p.virgin(v.name)
	if q == nil {
		p.wrong(from, "no virgin "+v.name+" sits in a cage", "%s", oneOf("caged virgin", there))
		return v, false
	}
	v.queen = q
	return v, true
}

// partner is the nuc, else the colony, with which one is united. The nuc's
// own yard is asked first.
func (p *parser) partner(v value, at int) (value, bool) {
	c := p.Context
	if nucs := p.here().nucs; len(nucs) > 0 {
		c.Yard = nucs[0].Yard
	}
	if n, _ := c.nuc(v.name); n != nil {
		v.united = n.NucNamed.Nuc.Subject()
		return v, true
	}
	if col := p.colony(v.name); col != nil {
		v.united = col.Colony.Subject()
		return v, true
	}
	p.wrong(at, "no nuc or colony is called "+v.name, "mend the name, or add it to the book first")
	return v, false
}
