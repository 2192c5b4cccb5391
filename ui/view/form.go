package view

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// form draws the record being filled in, in the place of the card.
func (c *cardDraw) form() {
	rec, _ := state.RecordNamed(c.s.Form.Record)
	says := c.s.FormSays()
	c.y += 4
	c.y = c.wrap(c.x, c.y+8, rec.Word, ink(18).semi(), c.w, 2)
	of := c.formOf(c.s.Form.Of)
	c.y = c.wrap(c.x, c.y+2, of, ink2(14), c.w, 2) + 6
	if !c.s.Form.Of.Same(c.s.Selection) {
		c.para("The form is about "+of+"; Esc leaves it", ink(14).semi().as(scene.Pen), 3)
		c.y += 6
	}
	for _, a := range c.s.Form.Asks {
		c.ask(a, says.Answers.Mistakes[a.Name])
	}
	c.readBack(says)
	c.pairs(formButtons(rec.Name))
}

// formOf says what a form is about.
func (c *cardDraw) formOf(of state.Selection) string {
	if c.s.Walk != nil && c.s.Form.Record == "walk close" {
		return c.s.Walk.Balance()
	}
	var nucs []string
	for _, n := range c.r.Nucs {
		if of.Has(n.Nuc.Nuc.Subject()) {
			nucs = append(nucs, n.Name)
		}
	}
	if len(nucs) > 0 {
		return book.Names(book.Runs(nucs), func(text string) bool { return c.width(text, ink2(14)) < c.w*1.6 })
	}
	if last := of.Last(); !last.IsZero() {
		return sentence(nameOf(c.r.View, last))
	}
	return c.yardName()
}

// ask draws one question with its field, and what is wrong with the answer.
func (c *cardDraw) ask(a state.Ask, wrong string) {
	name := state.FormField + a.Name
	label := a.Label
	if a.Unit != "" {
		_, in := c.s.Units.Of(1, a.Unit)
		label += ", " + in
	}
	c.fit(c.x, c.y+14, label, ink2(13), c.x+c.w)
	c.y += 22
	switch a.Kind {
	case state.Choice, state.Some:
		c.y = c.choices(c.x, c.y, c.w, name, a.Options)
	case state.Yes:
		c.y = c.choices(c.x, c.y, c.w, name, state.YesOrNo)
	default:
		w := c.w
		if a.Kind == state.Figure {
			w = 120
		}
		c.input(scene.Area{X: c.x, Y: c.y, W: w, H: fieldHeight}, name, fieldLook{size: 15, weight: scene.Medium, wrong: c.tells(wrong, name, a)})
		c.y += fieldHeight + 4
		c.suggested(a, name)
	}
	switch {
	case c.tells(wrong, name, a):
		c.y = c.wrap(c.x, c.y+13, sentence(wrong), ink(13).as(scene.Act), c.w, 3) - 10
	case a.Note != "":
		c.y = c.wrap(c.x, c.y+13, a.Note, ink3(13), c.w, 3) - 10
	}
	c.y += 10
}

// tells tells whether a mistake is said: not of what is left blank, nor of what
// fits something while it is typed, before it was to be written.
func (c *cardDraw) tells(wrong, name string, a state.Ask) bool {
	fit, _ := c.s.Suggested(a)
	return wrong != "" && (c.s.Typed(name) != "" && len(fit) == 0 || c.s.Form.Tried)
}

// suggested lists the options that fit what is typed, below its field.
func (c *cardDraw) suggested(a state.Ask, name string) {
	const row = 28.0
	all, on := c.s.Suggested(a)
	for i, o := range all {
		r := scene.Rect{Area: scene.Area{X: c.x, Y: c.y, W: c.w, H: row}, Radius: 4}
		r.Tag = scene.Tag{Ref: scene.Ref{Kind: state.SuggestRef, ID: name, Part: o.Value}}
		f := ink(14)
		switch {
		case i == on:
			r.Fill, f = scene.PenTint, f.semi()
		case c.hovers(r.Ref):
			r.Fill = scene.Sunk
		}
		c.add(r)
		c.fit(c.x+10, c.y+19, o.Word, f, c.x+c.w-8)
		c.y += row
	}
	if len(all) > 0 {
		c.below = row * float64(len(all)+1)
		c.y += 4
	}
}

// readBack says at the foot of the card, where it is always in sight, what the
// form would write, when, and first what the rules have against it.
func (c *cardDraw) readBack(says state.FormSays) {
	if missing := c.missing(says); missing != "" {
		c.footWord("Still to be said", ink(14).semi(), 1)
		c.footWord(missing, ink2(14), 3)
		return
	}
	c.against(says)
	if len(says.Back) == 0 {
		return
	}
	title := "Reads back"
	if at := says.Answers.At; !at.Instant.Equal(c.s.Now) {
		title += ", for " + at.In(c.r.View.Zone())
	}
	if c.s.Form.Begun {
		title += "; Enter again writes it, Esc leaves"
	}
	c.footWord(title, ink(14).semi(), 2)
	most, lines := 4, 3
	if !c.tall() {
		most, lines = 1, 2
	}
	for i, words := range says.Back {
		if i == most {
			c.footWord("and "+thousands(len(says.Back)-most)+" more", ink2(13), 1)
			break
		}
		c.footWord(words, ink(14), lines)
	}
}

// against says what the rules have against it: what comes first at the foot, the
// rest below the questions, where it scrolls, so that these and the buttons stay in
// sight whatever there is.
func (c *cardDraw) against(says state.FormSays) {
	most, lines := 2, 4
	if !c.tall() {
		most, lines = 1, 3
	}
	f := ink2(13)
	if says.Refused || says.Loses {
		f = ink(13).as(scene.Act)
	}
	for i, m := range says.Minds {
		switch {
		case i < most:
			c.footWord(sentence(m), f, lines)
		case i == most:
			c.footWord("and "+plural(len(says.Minds)-most, "more reason", "more reasons")+", below the questions", f, 1)
			fallthrough
		default:
			c.y = c.wrap(c.x, c.y+13, sentence(m), f, c.w, 6)
		}
	}
}

// missing are the questions that wait for another answer, by their labels.
func (c *cardDraw) missing(says state.FormSays) string {
	var labels []string
	for _, a := range c.s.Form.Asks {
		if says.Answers.Mistakes[a.Name] != "" {
			labels = append(labels, state.WithinSentence(a.Label))
		}
	}
	return sentence(strings.Join(labels, ", "))
}

// askedSheet draws the question that waits, over the window's foot: it is
// answered with one key. Question and answers take as many lines as they need.
func (p *sheet) askedSheet() {
	a := p.s.Asked
	if a == nil || p.s.Walk != nil && p.s.Form == nil {
		return // the row of the walk asks
	}
	const edge, rise, pitch = 20.0, 16.0, 30.0
	f := ink(15).bold().as(scene.Act)
	w := min(p.l.Window.W-40, 760)
	box := scene.Area{X: (p.l.Window.W - w) / 2, W: w}
	room := w - 2*edge
	asks := len(scene.Wrap(p.measure, p.say(sentence(a.Asks)), f.size, f.weight, room))
	said := "one key; Enter leaves it open"
	ends, rows := p.answerRows(a.Answers, room)
	beside := ends+p.width(said, ink2(13)) < room
	if !beside {
		rows++
	}
	head := float64(asks)*scene.LineHeight(f.size) + rise
	box.H = head + float64(rows)*pitch + rise
	box.Y = p.l.Foot.Y - box.H - 16
	p.add(scene.Rect{Area: box, Radius: 5, Fill: scene.ActTint, Stroke: stroke(scene.Act, 1.5)})
	p.wrap(box.X+edge, box.Y+rise+f.size, sentence(a.Asks), f, room, asks)
	p.answers(a.Answers, box.X+edge, box.Y+head+4, room, pitch)
	p.right(box.Right()-edge, box.Bottom()-rise-7, said, ink2(13))
}

// answerGap parts an answer from the next.
const answerGap = 22.0

// answerWidth is how wide an answer is with its key.
func (p *sheet) answerWidth(o state.Option) float64 {
	return 30 + p.width(strings.TrimSpace(o.Word), ink(14))
}

// answerRows is how many lines answers take in a width, and where the last line
// ends.
func (p *sheet) answerRows(all []state.Option, room float64) (ends float64, rows int) {
	rows = 1
	for _, o := range all {
		w := p.answerWidth(o)
		if ends > 0 && ends+w > room {
			ends, rows = 0, rows+1
		}
		ends += w + answerGap
	}
	return ends, rows
}

// answers draws answers with their keys, over as many lines as they need, and
// gives where the last one ends.
func (p *sheet) answers(all []state.Option, left, y, room, pitch float64) scene.Point {
	x := left
	for _, o := range all {
		if x > left && x+p.answerWidth(o) > left+room {
			x, y = left, y+pitch
		}
		x = p.answerKey(x, y, left+room, o) + answerGap
	}
	return at(x, y)
}

// answerKey draws an answer with the key that gives it, no further than to, and gives
// where it ends; the pointer reads it whole.
func (p *sheet) answerKey(x, y, to float64, o state.Option) float64 {
	key := scene.Rect{Area: scene.Area{X: x, Y: y, W: 22, H: 24}, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Act, 1)}
	key.Tag = scene.Tag{Ref: scene.Ref{Kind: state.AnswerRef, ID: o.Value}}
	p.add(key)
	p.centre(x+11, y+17, o.Value, ink(14).bold().as(scene.Act))
	word, said := strings.TrimSpace(o.Word), ""
	if x+30+p.width(word, ink(14)) > to {
		said = word
	}
	end := p.fit(x+30, y+17, word, ink(14), to)
	p.hit(scene.Area{X: x + 22, Y: y, W: end - x - 22, H: 24}, key.Ref, said)
	return end
}
