package line

import (
	"strconv"
	"strings"

	"lidmark/domain/calendar"
)

var partWords = map[string]calendar.Part{
	"am": calendar.Morning, "noon": calendar.Midday, "pm": calendar.Afternoon,
	"eve": calendar.Evening, "night": calendar.Night, "day": calendar.WholeDay,
}

// dayPart reads @pm, or a time such as @14:30.
func (p *parser) dayPart() {
	d, from := p.here(), p.at
	p.at++
	for r := p.peek(0); isDigit(r) || r == ':' || 'a' <= r && r <= 'z'; r = p.peek(0) {
		p.at++
	}
	word := p.span(from)[1:]
	if _, twice := d.slots["part"]; twice {
		p.wrong(from, "@"+word+" is a second time of day", "keep one of the two")
		return
	}
	d.slots["part"] = word
	if part, ok := partWords[word]; ok {
		d.part = part
		p.token(from, p.moment(part).Part.String())
		return
	}
	p.clockTime(d, from, word)
}

func (p *parser) clockTime(d *draft, from int, word string) {
	hour, minute, colon := strings.Cut(word, ":")
	h, err1 := strconv.Atoi(hour)
	m, err2 := strconv.Atoi(minute)
	if !colon || len(minute) != 2 || err1 != nil || err2 != nil || h > 23 || m > 59 {
		p.wrong(from, "@"+word+" is no time of day", "write @am, @noon, @pm, @eve, @night or a time like @14:30")
		return
	}
	if times, at := p.day().Wall(h, m, p.View.Zone()); times == 0 {
		p.wrong(from, "@"+word+" is skipped by the clocks that day", "write @%s where they go on", at(false).Format("15:04"))
		return
	}
	d.clock = calendar.Instantly(p.day().At(h, m, p.View.Zone()))
	if d.clock.Instant.After(p.Now) {
		p.wrong(from, "@"+word+" is still to come", "write down what has happened")
		return
	}
	p.token(from, word)
}

// quoted tells whether a note begins here.
func (p *parser) quoted() bool {
	return strings.ContainsRune(`"“”„`, p.peek(0)) && p.peek(0) != 0
}

// note reads a note in quotes. One that says exactly a known word is that word.
func (p *parser) note() {
	d, from := p.here(), p.at
	p.at++
	for !p.end() && !p.quoted() {
		p.at++
	}
	text := strings.Join(strings.Fields(string(p.text[from+1:p.at])), " ")
	if p.end() {
		p.wrong(from, "the note is not closed", "end it with \"")
		return
	}
	p.at++
	if text == "" {
		p.wrong(from, "the note is empty", "say something or leave it out")
		return
	}
	for _, c := range phrases {
		if strings.EqualFold(c.sign, text) {
			p.put(c, from, p.at-from)
			return
		}
	}
	d.deed.notes = append(d.deed.notes, text)
	p.token(from, "note: "+text)
}
