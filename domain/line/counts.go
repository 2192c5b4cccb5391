package line

import (
	"fmt"

	"lidmark/domain/book"
)

// counts is a look at a row by numbers.
type counts struct {
	row    book.RowLooked
	single bool // the row is of single stands: it goes by the first of them
}

// stand begins a section about a whole row, or about the whole yard.
func (p *parser) stand() {
	from := p.at
	letter := p.take(max(p.capitals(), p.word("yard")))
	p.open(from)
	p.now.row = letter
	p.now.counts = &counts{row: book.RowLooked{Yard: p.yard()}}
	if letter[0] == 'y' || letter[0] == 'Y' && len(letter) > 2 {
		p.now.row = p.View.Yard(p.yard()).Name
		p.colon()
		return
	}
	s, single := p.Context.row(letter)
	p.now.counts.single = single
	if s == nil {
		p.wrong(from, "there is no stand "+letter, "a nuc has a number as well, like %s1, and codes are small letters", letter)
		return
	}
	p.now.counts.row.Stand, p.now.counts.row.Yard = s.Stand, s.Yard
	p.colon()
}

var countWords = []string{"looked at", "looked", "laying", "virgins", "virgin", "none", "no queen"}

// count reads a count of a row: 41 laying.
func (p *parser) count() {
	d, from := p.here(), p.at
	v, ok := p.number()
	if !ok {
		p.take(1)
	}
	p.blanks()
	for _, w := range countWords {
		n := p.word(w)
		if n == 0 {
			continue
		}
		p.at += n
		if d.counts == nil {
			p.wrong(from, "counts are for a whole row", "begin with the letter of its stand, like A 50 looked 41 laying")
			return
		}
		p.counted(d.counts, from, w, v)
		return
	}
	p.wrong(from, p.trimmed(from)+" stands alone", "put its letter close before it, like s%s", p.trimmed(from))
}

func (p *parser) trimmed(from int) string {
	to := p.at
	for to > from+1 && p.text[to-1] == ' ' {
		to--
	}
	return string(p.text[from:to])
}

func (p *parser) counted(c *counts, from int, word string, v float64) {
	into := map[string]*int{
		"looked": &c.row.Looked, "looked at": &c.row.Looked, "laying": &c.row.Laying,
		"virgin": &c.row.Virgins, "virgins": &c.row.Virgins, "none": &c.row.None, "no queen": &c.row.None,
	}[word]
	switch {
	case v != float64(int(v)):
		p.wrong(from, "nucs are whole", "write a whole number")
	case *into > 0:
		p.wrong(from, word+" is counted twice", "keep one of the two")
	default:
		*into = int(v)
		p.token(from, fmt.Sprintf("%d %s", int(v), rowWord(word)))
	}
}

func rowWord(typed string) string {
	switch typed {
	case "looked", "looked at":
		return "looked at"
	case "virgin", "virgins":
		return "with a virgin"
	case "none", "no queen":
		return "without a queen"
	default:
		return typed
	}
}

// closeCounts makes the fact of a row's counts.
func (p *parser) closeCounts(d *draft, s *Section) {
	r := d.counts.row
	if d.wrong {
		return
	}
	if extra := p.notForRows(d); extra != "" {
		p.wrong(d.from, extra+" cannot be said of a row by counts", "write it nuc by nuc, or as a row of names like A1-A12")
		return
	}
	switch sum := r.Laying + r.Virgins + r.None; {
	case r.Looked == 0:
		p.wrong(d.from, "nobody knows how many were looked at", "say it first, like 50 looked 41 laying")
		return
	case sum > r.Looked:
		p.wrong(d.from, fmt.Sprintf("%d of %d were found to be something", sum, r.Looked), "mend the counts")
		return
	}
	r.Batch = d.deed.cell
	s.Facts = []book.Fact{r}
	s.Back = Words(r, In(p.View))
	if d.counts.single {
		r.Stand = book.StandID{}
		s.Back = "row " + d.row + ": " + Words(r, In(p.View))
	}
}

// notForRows is a code that tells of single nucs; a batch may be named.
func (p *parser) notForRows(d *draft) string {
	for slot, typed := range d.slots {
		if slot != "given" && slot != "part" || d.deed.virgin != nil {
			return typed
		}
	}
	if len(d.deed.notes) > 0 {
		return "a note"
	}
	return ""
}
