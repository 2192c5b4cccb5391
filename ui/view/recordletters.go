package view

import (
	"strings"

	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of the list of letters, dp.
const (
	lettersHead = 34.0
	lettersFoot = 34.0
	letterSigns = 78.0 // the column of the letters
	letterLeast = 19.0 // from line to line
	letterAiry  = 20.5 // with a note below
	letterUsual = 23.0
	letterGap   = 28.0 // between two columns
)

// lettersNote stands below the letters, where there is room.
const lettersNote = "Any order, with or without spaces. A capital and a number start the next nuc. A record is never refused; where it does not fit the book, one question."

// lettersDraw is the list of the letters of the line being drawn: in one column
// beside the rows, in two on the sheet over them where it is low.
type lettersDraw struct {
	*sheet
	a, body scene.Area
	columns [][]line.Letter
	w       float64 // of a column
	pitch   float64
	all     float64 // the height of the longest column
	noted   bool
}

// lettersIn lays the letters out in an area.
func (p *sheet) lettersIn(a scene.Area) lettersDraw {
	d := lettersDraw{sheet: p, a: a, body: scene.Area{X: a.X, Y: a.Y + lettersHead, W: a.W, H: max(0, a.H-lettersHead-lettersFoot)}}
	n := 1
	if p.l.OverLetters() && a.W > state.CardWidth {
		n = 2
	}
	d.w = (a.W - 2*state.Edge - float64(n-1)*letterGap) / float64(n)
	all, rows := line.LettersIn(p.s.Units), 0
	for i := range all {
		all[i] = inShort(all[i])
		rows += d.lines(all[i])
	}
	longest, at, first := 0, 0, 0
	for i, l := range all {
		if at += d.lines(l); at*n >= rows || i == len(all)-1 {
			d.columns = append(d.columns, all[first:i+1])
			longest, at, first = max(longest, at), 0, i+1
		}
	}
	note := 26 + scene.LineHeight(13)*float64(len(scene.Wrap(p.measure, lettersNote, 13, scene.Regular, d.w)))
	room := d.body.H
	if d.noted = n == 1 && (room-note)/float64(longest+1) >= letterAiry; d.noted {
		room -= note
	}
	d.pitch = min(letterUsual, max(letterLeast, room/float64(longest+1)))
	d.all = d.pitch*float64(longest) + 8
	return d
}

// lines is how many lines a letter takes: a long sign stands on one of its own.
func (d lettersDraw) lines(l line.Letter) int {
	n := len(d.letterWords(l, d.w-letterSigns-signGap))
	if d.long(l) {
		n++
	}
	return n
}

func (d lettersDraw) long(l line.Letter) bool { return d.width(l.Sign, ink(14).semi()) > letterSigns }

// most is how far the letters can be scrolled.
func (d lettersDraw) most() float64 { return max(0, d.all-d.body.H) }

func (d lettersDraw) offset() float64 { return min(d.s.Scroll[state.CardPlace], d.most()) }

// lineLetters draws the list of the letters of the line.
func (p *sheet) lineLetters(a scene.Area) {
	d := p.lettersIn(a)
	p.rect(a, scene.Ground)
	x, to := a.X+state.Edge, a.Right()-state.Edge
	end := p.text(x, a.Y+28, "The letters", ink(16).semi())
	if said := "the same on the sheet"; end+p.width(said, ink2(13))+12 < to {
		p.right(to, a.Y+28, said, ink2(13))
	}
	offset, bottom := d.offset(), 0.0
	p.clipped(d.body, scene.Tag{}, func() {
		for i, column := range d.columns {
			bottom = d.column(column, x+float64(i)*(d.w+letterGap), d.body.Y-offset)
		}
	})
	p.scrollBar(d.body, offset, d.all)
	if d.noted {
		p.wrap(x, bottom+26, lettersNote, ink2(13), d.w, 6)
	}
	if !p.l.OverLetters() {
		p.fit(x, a.Bottom()-14, "Enter  go on     Page Down  skip     Esc  leave", ink2(13), to)
		return
	}
	p.link(x, a.Bottom()-14, "back to the rows", ink(13).as(scene.Pen), "letters", false)
	p.right(to, a.Bottom()-14, "Esc", ink2(13))
}

// column writes letters below one another, whole ones only, and gives the baseline of
// the last line.
func (d lettersDraw) column(all []line.Letter, x, y float64) float64 {
	for _, l := range all {
		top := y
		if y += d.pitch * float64(d.lines(l)); top < d.body.Y-1 || y+7 > d.body.Bottom()+1 {
			continue
		}
		d.letter(l, x, top+d.pitch)
		d.rule(x, y+6, x+d.w, y+6, scene.Hair)
	}
	return y
}

// letter writes a sign, and what it says.
func (d lettersDraw) letter(l line.Letter, x, y float64) {
	f := ink(14).semi()
	if d.long(l) {
		d.fit(x, y, l.Sign, f, x+d.w)
		y += d.pitch
	} else {
		d.right(x+letterSigns, y, l.Sign, f)
	}
	for _, said := range d.letterWords(l, d.w-letterSigns-signGap) {
		d.fit(x+letterSigns+signGap, y, said, ink(14), x+d.w)
		y += d.pitch
	}
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
