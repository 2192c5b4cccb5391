package view

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// closing draws the count at the walk's end: what went out, what became of it,
// and what is open.
func (d recordDraw) closing() {
	a := d.Foot
	d.rect(a, scene.Ground)
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Rule)
	button := a.Right() - state.Edge - d.width("Close the walk", ink(14).medium()) - 28
	d.button(button, a.Y+14, "Close the walk", "close walk", false)
	end := button - 14
	wide := !d.Narrow
	if open := d.openWords(); open != "" && (wide || len(d.w.Closing) == 0) {
		end = d.right(end, a.Y+37, open, ink2(13)) - 20
	}
	x := a.X + state.Edge
	if wide {
		d.text(x, a.Y+26, "Closing count", ink2(13))
		x += 100
	}
	if len(d.w.Closing) == 0 {
		d.fit(x, a.Y+24, "Nothing was taken along", ink(15).semi(), end)
		d.link(x, a.Y+51, "write what was", ink(13).as(scene.Pen), "walk along", false)
		return
	}
	d.count(d.firstCount(), x, end)
}

// formButtons are the buttons below a form.
func formButtons(record string) [][2]string {
	if record == "walk close" {
		return [][2]string{{"Write and close", "write"}, {"Leave it open", "leave open"}}
	}
	return [][2]string{{"Write", "write"}, {"Leave", "close form"}}
}

// firstCount is the first count that does not close, else the first.
func (d recordDraw) firstCount() rules.Closing {
	for _, c := range d.w.Closing {
		if !c.Closes() {
			return c
		}
	}
	return d.w.Closing[0]
}

// count writes one count and draws a square for each of the goods.
func (d recordDraw) count(c rules.Closing, x, end float64) {
	y := d.Foot.Y + 26
	goods := c.What.String()
	if len(d.w.Closing) > 1 {
		goods = state.Goods(d.s.Reading().View, c)
	}
	coming := d.w.Coming(c)
	said, missing := fmt.Sprintf("%d %s out: %s", c.Out, goods, becameWords(c, coming)), missingWords(c.Missing()-coming)
	if missing != "" && !strings.HasSuffix(said, ": ") {
		said += ", "
	}
	if room := end - x - d.width(missing, ink(15).bold()); d.width(said, ink(15).semi()) > room && missing != "" {
		said = fmt.Sprintf("%d out, ", c.Out)
	}
	at := d.fit(x, y, said, ink(15).semi(), end)
	d.fit(at, y, missing, ink(15).bold().as(scene.Act), end)
	at = d.squares(c, coming, x, y+11, end)
	if n := len(d.w.Closing) - 1; n > 0 {
		at = d.fit(at, y+22, fmt.Sprintf("and %s more", plural(n, "count", "counts")), ink2(13), end) + 14
	}
	words := d.likely(c)
	if d.Narrow && d.openWords() != "" {
		words = d.openWords()
	}
	d.fit(at, y+22, words, ink2(13), end)
}

// becameWords say what became of the goods, and how many are still to be typed.
func becameWords(c rules.Closing, coming int) string {
	var all []string
	for _, part := range []struct {
		n    int
		word string
	}{{c.Placed, "placed"}, {c.Caged, "caged"}, {c.Culled, "culled"}, {c.Dropped, "dropped"}, {c.Back, "back"}, {coming, goodsWord(c, coming) + " to come"}} {
		if part.n > 0 {
			all = append(all, fmt.Sprint(part.n, " ", part.word))
		}
	}
	return strings.Join(all, ", ")
}

// goodsWord is the word for so many of the goods of a count.
func goodsWord(c rules.Closing, n int) string {
	if n == 1 {
		return strings.TrimSuffix(c.What.String(), "s")
	}
	return c.What.String()
}

func missingWords(m int) string {
	switch {
	case m > 0:
		return fmt.Sprint(m, " not accounted for")
	case m < 0:
		return fmt.Sprint(-m, " more than went out")
	}
	return ""
}

// squares draws a square for each of the goods, and gives where the words behind
// them begin.
func (d recordDraw) squares(c rules.Closing, coming int, x, y, end float64) float64 {
	const pitch, least, air = 7.6, 3.0, 2.0
	n := max(c.Out, c.Out-c.Missing())
	step := min(pitch, (end-x)*0.6/float64(max(n, 1)))
	if step < least {
		return x
	}
	for i := range n {
		role := scene.Act
		switch {
		case i < c.Placed:
			role = scene.Ink2
		case i < c.Out-c.Missing():
			role = scene.Ink3
		case i < c.Out-c.Missing()+coming:
			role = scene.Off
		}
		d.rect(scene.Area{X: x + float64(i)*step, Y: y, W: step - min(air, step/3), H: 12}, role)
	}
	return x + float64(n)*step + 14
}

// likely names the nucs that probably got one.
func (d recordDraw) likely(c rules.Closing) string {
	if d.w.Done < d.w.Nucs && d.s.Form == nil {
		return "" // most of them come with the rows that are open
	}
	var names []string
	for _, id := range c.Likely {
		names = append(names, d.s.Reading().View.Nuc(id).Name)
	}
	switch n := len(names); {
	case n == 0:
		return ""
	case n > 6:
		return fmt.Sprintf("in one of %d nucs", n)
	case n > 1:
		return "probably " + strings.Join(names[:n-1], ", ") + " or " + names[n-1]
	}
	return "probably " + names[0]
}

// openWords say what is open: rows, questions, goods, lines typed twice.
func (d recordDraw) openWords() string {
	var said []string
	add := func(n int, one, many string) {
		if n > 0 {
			said = append(said, plural(n, one, many))
		}
	}
	add(d.w.Nucs-d.w.Done, "row", "rows")
	add(d.w.Asking, "question", "questions")
	for _, what := range []book.Goods{book.Cells, book.Virgins, book.Queens, book.Cages} {
		missing := 0
		for _, c := range d.w.Closing {
			if c.What == what {
				missing += max(0, c.Missing()-d.w.Coming(c))
			}
		}
		add(missing, strings.TrimSuffix(what.String(), "s"), what.String())
	}
	if len(said) > 0 {
		said[len(said)-1] += " open"
	}
	add(state.TwinNucs(d.w.Twins), "nuc typed twice", "nucs typed twice")
	return strings.Join(said, ", ")
}

// lineLetters draws the list of the letters of the line.
func (p *sheet) lineLetters(a scene.Area) {
	const signs, least, airy, usual, foot = 78.0, 19.0, 20.5, 23.0, 34.0
	p.rect(a, scene.Ground)
	x, w := a.X+state.Edge, a.W-2*state.Edge
	end := p.text(x, a.Y+28, "The letters", ink(16).semi())
	if said := "the same on the sheet"; end+p.width(said, ink2(13))+12 < x+w {
		p.right(x+w, a.Y+28, said, ink2(13))
	}
	const said = "Any order, with or without spaces. A capital and a number start the next nuc. A record is never refused; where it does not fit the book, one question."
	note := 26 + scene.LineHeight(13)*float64(len(scene.Wrap(p.measure, said, 13, scene.Regular, w)))
	all, rows := line.LettersIn(p.s.Units), 1
	for i := range all {
		all[i] = inShort(all[i])
		rows += len(p.letterWords(all[i], w-signs-signGap))
	}
	room := a.H - 34 - foot
	noted := (room-note)/float64(rows) >= airy
	if noted {
		room -= note
	}
	pitch := min(usual, max(least, room/float64(rows)))
	y := a.Y + 34
	for _, l := range all {
		if y += pitch; y > a.Bottom()-foot {
			return
		}
		y = p.lineLetter(l, x, y, w, signs, pitch)
		p.rule(x, y+6, x+w, y+6, scene.Hair)
	}
	if noted {
		p.wrap(x, y+26, said, ink2(13), w, 6)
	}
	p.fit(x, a.Bottom()-14, "Enter  go on     Page Down  skip     Esc  leave", ink2(13), x+w)
}

// inShort is a row of the list as it stands in a narrow column: signs that run on
// as "h0–h3", and what may stand behind an @ among its words.
func inShort(l line.Letter) line.Letter {
	signs := strings.Fields(l.Sign)
	last := len(signs) - 1
	switch {
	case last > 1 && strings.HasPrefix(l.Sign, "@"):
		return line.Letter{Sign: "@", Words: strings.ReplaceAll(strings.Join(signs, " "), "@", "")}
	case last > 1 && len(signs[0]) == 2 && len(signs[last]) == 2 && int(signs[last][1]-signs[0][1]) == last:
		l.Sign = signs[0] + "–" + signs[last]
	}
	return l
}

// signGap is from a letter of the line to what it says, dp.
const signGap = 14.0

// letterWords are what a letter says, in lines no wider than room: parted between the
// things that it says.
func (p *sheet) letterWords(l line.Letter, room float64) (lines []string) {
	if p.width(l.Words, ink(14)) <= room {
		return []string{l.Words}
	}
	for i, said := range strings.Split(l.Words, "; ") {
		if i == 0 {
			lines = append(lines, said)
			continue
		}
		last := &lines[len(lines)-1]
		if longer := *last + "; " + said; p.width(longer, ink(14)) <= room {
			*last = longer
			continue
		}
		*last += ";"
		lines = append(lines, said)
	}
	return lines
}

// lineLetter writes a sign and what it says, and gives the baseline of its last line;
// a long sign stands on a line of its own.
func (p *sheet) lineLetter(l line.Letter, x, y, w, signs, pitch float64) float64 {
	f := ink(14).semi()
	if p.width(l.Sign, f) > signs {
		p.fit(x, y, l.Sign, f, x+w)
		y += pitch
	} else {
		p.right(x+signs, y, l.Sign, f)
	}
	for i, said := range p.letterWords(l, w-signs-signGap) {
		if i > 0 {
			y += pitch
		}
		p.fit(x+signs+signGap, y, said, ink(14), x+w)
	}
	return y
}
