package line

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// close ends the section being read and makes its facts.
func (p *parser) close() {
	d := p.now
	p.now = nil
	if d == nil {
		return
	}
	s := Section{Subject: d.row, Tokens: d.tokens, At: p.momentOf(d)}
	if p.tooEarly() {
		p.wrong(d.from, p.day().Short()+" is still to come", "write down what has happened")
		return
	}
	if d.counts != nil {
		p.closeCounts(d, &s)
	} else {
		p.closeNucs(d, &s)
	}
	p.line.Sections = append(p.line.Sections, s)
}

func (p *parser) tooEarly() bool { return p.day() > calendar.DayOf(p.Now, p.View.Zone()) }

func (p *parser) momentOf(d *draft) calendar.Moment {
	switch {
	case !d.clock.IsZero():
		return d.clock
	case d.part != calendar.Exact:
		return p.moment(d.part)
	case !p.At.IsZero():
		return p.At
	default:
		return p.moment(p.Part)
	}
}

// behind is when a section happened at one of its nucs. Where nobody said when,
// it is after what the book has of the nuc on that day already: the hour that
// stands for a part of the day tells no order.
func (p *parser) behind(d *draft, n *book.Nuc, m calendar.Moment) calendar.Moment {
	if !d.clock.IsZero() || d.part != calendar.Exact || !p.At.IsZero() {
		return m
	}
	end := (p.day() + 1).Start(p.View.Zone()).Add(-time.Second)
	if p.Now.Before(end) {
		end = p.Now
	}
	for _, e := range p.View.LinesSince(n.NucNamed.Nuc.Subject(), m.Instant.Add(time.Second)) {
		if e.At.Instant.After(end) {
			break
		}
		if !describes(e.Fact) && !slices.Contains(p.Instead, e.ID) {
			m = calendar.Instantly(e.At.Instant.Add(time.Second))
		}
	}
	if m.Instant.After(end) {
		m = calendar.Instantly(end)
	}
	return m
}

// describes tells whether a fact says what a nuc is, and nothing that was done.
func describes(f book.Fact) bool {
	switch f.(type) {
	case book.NucNamed, book.NucPlaced:
		return true
	}
	return false
}

func (p *parser) closeNucs(d *draft, s *Section) {
	nucs := slices.DeleteFunc(d.nucs, func(n *book.Nuc) bool { return d.except[n.NucNamed.Nuc] })
	switch {
	case len(nucs) == 1:
		s.Subject = nucs[0].Name
	default:
		s.Subject = fmt.Sprintf("%d nucs", len(nucs))
	}
	if d.wrong {
		s.Back = d.tokensBack() // what is right in it is read back all the same
		return
	}
	if d.silent() {
		p.wrong(d.from, "nothing is said of "+s.Subject, "say what was seen or done, like q e s5")
		return
	}
	var back []said
	for _, n := range nucs {
		s.Nucs = append(s.Nucs, n.NucNamed.Nuc)
		facts := p.factsOf(d, n)
		s.Facts = append(s.Facts, facts...)
		s.Times = append(s.Times, slices.Repeat([]calendar.Moment{p.behind(d, n, s.At)}, len(facts))...)
		back = append(back, said{n, facts})
	}
	if len(d.unwritten) > 0 {
		p.noTick(d, nucs)
	}
	s.Back = p.readBack(d, back)
}

// silent tells that a section names its nucs and says nothing of them.
func (d *draft) silent() bool {
	codes := len(d.slots)
	if _, said := d.slots["part"]; said {
		codes--
	}
	return codes == 0 && len(d.deed.notes) == 0
}

type said struct {
	nuc   *book.Nuc
	facts []book.Fact
}

// factsOf are the facts of a section for one of its nucs: what was written on
// the sheet, unless the codes say otherwise, and what the codes say.
func (p *parser) factsOf(d *draft, n *book.Nuc) []book.Fact {
	p.possible(d, n)
	facts := d.deed.facts(p.Context, n)
	if !d.deed.done {
		return facts
	}
	var written []book.Fact
	if p.Planned != nil {
		written = p.Planned(n.NucNamed.Nuc)
	}
	if len(written) == 0 {
		d.unwritten = append(d.unwritten, n.Name)
	}
	for _, f := range written {
		if !mentions(facts, book.KindOfFact(f)) {
			facts = append(facts, f)
		}
	}
	slices.SortStableFunc(facts, func(a, b book.Fact) int { return cmp.Compare(rank(a), rank(b)) })
	return facts
}

// doings are the kinds of fact that a line can tell, in the order in which
// they can have happened: seen, queen out, cells down, queen in, cared for,
// painted, ended.
var doings = []string{
	"looked", "queen gone", "queen caught", "own cells broken down", "cell given", "virgin put in",
	"bees added", "fed", "lid painted", "robbed", "united", "shaken out", "nuc lost", "dropped", "noted",
}

func rank(f book.Fact) int { return slices.Index(doings, book.KindOfFact(f)) }

// possible says what cannot be, whatever the book says of the nuc.
func (p *parser) possible(d *draft, n *book.Nuc) {
	if sides, said := d.deed.look.Sides.Get(); said && n.Sides > 0 && int(sides) > n.Sides {
		p.wrong(d.column("bees on", "no bees"), fmt.Sprintf("s has at most %d sides in %s", n.Sides, n.Name), "write s0 to s%d", n.Sides)
	}
	if d.deed.united == n.NucNamed.Nuc.Subject() {
		p.wrong(d.column("united"), n.Name+" cannot be united with itself", "name the other nuc or colony")
	}
	if d.deed.drop == book.Cells && p.droppedFrom(book.Cells, n.NucNamed.Nuc).IsZero() {
		p.wrong(d.column("cell dropped"), "nobody knows of which batch the cell was", "write down first what was taken along, or the drop by itself with its batch")
	}
	if d.deed.virgin != nil && len(d.nucs)-len(d.except) > 1 {
		p.wrong(d.column("virgin"), "one virgin cannot go into several nucs", "write a line for each nuc")
	}
}

// column is where the token stands whose words begin with one of starts.
func (d *draft) column(starts ...string) int {
	for _, t := range d.tokens {
		for _, s := range starts {
			if strings.HasPrefix(t.Words, s) {
				return t.From - 1
			}
		}
	}
	return d.from
}

// readBack says a section in words. A row is said once if all of it is alike.
func (p *parser) readBack(d *draft, all []said) string {
	if !d.deed.done {
		return d.tokensBack()
	}
	return p.groups(all)
}

// tokensBack are the words of the signs, in the order in which they were typed.
func (d *draft) tokensBack() string {
	words := make([]string, 0, len(d.tokens))
	for _, t := range d.tokens {
		words = append(words, t.Words)
	}
	return strings.Join(words, ", ")
}

func (p *parser) groups(all []said) string {
	names := In(p.View)
	var order []string
	of := map[string][]string{}
	for _, s := range all {
		var words []string
		for _, f := range s.facts {
			words = append(words, p.said(f, WordsOn(f, names, s.nuc.NucNamed.Nuc.Subject())))
		}
		w := strings.Join(words, ", ")
		if of[w] == nil {
			order = append(order, w)
		}
		of[w] = append(of[w], s.nuc.Name)
	}
	if len(order) == 1 {
		return order[0]
	}
	for i, w := range order {
		order[i] = list(of[w]) + ": " + w
	}
	return strings.Join(order, "; ")
}

func mentions(facts []book.Fact, kind string) bool {
	for _, f := range facts {
		if book.KindOfFact(f) == kind {
			return true
		}
	}
	return false
}
