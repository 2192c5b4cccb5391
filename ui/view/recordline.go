package view

import (
	"strings"
	"unicode/utf8"

	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of the row that is typed into, dp.
const (
	lineSize  = 20.0 // of what is typed
	fieldHigh = 38.0
	wordsDown = 24.0 // from the field to the words below it
	backUp    = 29.0 // from what the line reads back as to the row's foot
	nextUp    = 10.0 // from what follows to it
)

// current draws the row that is typed into: the field with what its letters mean,
// what it reads back as, what follows, and the lid as it would become.
func (d recordDraw) current(row state.WalkRow, a scene.Area) {
	frame := scene.Rect{Area: scene.Area{X: a.X + 8, Y: a.Y + 2, W: a.W - 8 - besideBar, H: a.H - 4}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5)}
	asked, asks := d.question()
	if asks {
		frame.Fill, frame.Stroke = scene.ActTint, stroke(scene.Act, 1.5)
	}
	d.add(frame)
	d.subject(row, a.Y+state.WalkLine/2)
	field := scene.Area{X: d.Typed - 10, Y: a.Y + 6, W: d.After - 20 - d.Typed, H: fieldHigh}
	says := d.w.Says
	wrong := len(says.Line.Mistakes) > 0 && (d.w.Refused == d.s.Typed(state.WalkField) || !d.stillTyping(says.Line.Mistakes[0]) || noLetter(says.Line.Mistakes[0]))
	d.input(field, state.WalkField, fieldLook{size: lineSize, weight: scene.SemiBold, wrong: wrong})
	if says.After != nil {
		d.add(d.becomes(says.After, at(d.After, a.Y+state.WalkLine/2+6), 28))
	}
	switch {
	case asks:
		d.asked(asked, scene.Area{X: field.X + 10, Y: field.Bottom(), W: d.After - field.X - 10, H: a.Bottom() - field.Bottom()})
		return
	case len(says.Line.Mistakes) > 0:
		if d.mistake(says.Line.Mistakes[0], field, wrong) > 1 {
			return
		}
	case says.Line.Trouble != "":
		d.wrap(field.X+10, field.Bottom()+wordsDown, sentence(says.Line.Trouble), ink(13).as(scene.Act), d.After-field.X-10, 2)
	case says.Rows != "":
		d.fit(d.Typed, field.Bottom()+wordsDown, "Enter shows "+says.Rows, ink(14), d.leaderEnd())
	case d.s.Typed(state.WalkField) == "":
		one, other := lineHint(row)
		d.fit(d.Typed, field.Bottom()+wordsDown, one, ink2(14), d.leaderEnd())
		d.fit(d.Typed, a.Bottom()-backUp, other, ink2(14), d.leaderEnd())
	default:
		d.leaders(field)
	}
	d.reading(row, a)
}

// lineHint says in two lines what can be typed into a row.
func lineHint(row state.WalkRow) (one, other string) {
	switch seen := "what was seen and done, like q e b4 s6 /"; {
	case row.Any():
		return "which nuc? A3 e s5, or several: A1-A10 c4 s4, or done as written, except A3", "a letter alone, like D, shows its rows alone"
	case row.Planned == "":
		return seen, ""
	default:
		return seen, "or done: what was planned and can be ticked off"
	}
}

// reading writes what the line reads back as, what follows, and what Enter does.
func (d recordDraw) reading(row state.WalkRow, a scene.Area) {
	says := d.w.Says
	back := says.Back
	if says.Of != "" && back != "" {
		back = says.Of + ": " + back
	}
	next := ""
	ready := says.Line.Wrong() == ""
	if says.Next != "" && ready {
		next = "next: " + says.Next
	}
	end := d.After - 34
	hint := d.hint(row, a, ready) - 12
	if d.width(back, ink(14)) > end-d.Typed {
		first, rest := d.broken(back, ink(14), end-d.Typed)
		d.fit(d.Typed, a.Bottom()-backUp, first, ink(14), end)
		d.fit(d.Typed, a.Bottom()-nextUp, rest, ink(14), hint)
		if d.Planned {
			d.fit(d.Lid-14, a.Bottom()-nextUp, next, ink2(13), d.Typed-12)
		}
		return
	}
	d.fit(d.Typed, a.Bottom()-backUp, back, ink(14), end)
	d.fit(d.Typed, a.Bottom()-nextUp, next, ink2(14), hint)
}

// hint writes at the row's foot what Enter does once the line is ready, and how a
// line is struck, and gives where that begins.
func (d recordDraw) hint(row state.WalkRow, a scene.Area, ready bool) float64 {
	if !ready {
		return d.After - 34
	}
	y := a.Bottom() - nextUp
	x := d.right(d.After-34, y, d.enterWords(row), ink(13).medium().as(scene.Pen))
	const word = "strike  Alt+X"
	if from := x - 24 - d.width(word, ink(13)); !row.Open() && from > d.Typed {
		d.link(from, y, word, ink(13).as(scene.Pen), "strike row", false)
		x = from
	}
	return x
}

// enterWords say what Enter does.
func (d recordDraw) enterWords(row state.WalkRow) string {
	switch {
	case d.s.Typed(state.WalkField) == "" && d.w.Done == d.w.Nucs && row.Any():
		return "Alt+K  close the walk"
	case d.s.Typed(state.WalkField) == "" || d.s.Typed(state.WalkField) == row.Typed:
		return "Enter  go on"
	case !row.Open():
		return "Enter  strike and write anew"
	default:
		return "Enter  write and go on"
	}
}

// column is where a character of the line stands in the field; columns count from
// 1 and leave out blanks before the line.
func (d recordDraw) column(field scene.Area, n int) float64 {
	f := d.s.Field(state.WalkField)
	letters := []rune(f.Text)
	until := func(n int) float64 {
		return d.measure.Width(string(letters[:min(max(n, 0), len(letters))]), lineSize, scene.SemiBold)
	}
	blanks := utf8.RuneCountInString(f.Text) - utf8.RuneCountInString(strings.TrimLeft(f.Text, " "))
	x := field.X + 10 + until(blanks+n-1)
	if over := until(f.Caret) + 2 - (field.W - 20); over > 0 && d.s.InField() == state.WalkField {
		x -= over
	}
	return x
}

// leaders draws below the field what each sign of the line means, with a line that
// leads to it. Where not all have room it is the last ones.
func (d recordDraw) leaders(field scene.Area) {
	const gap = 11.0
	var all []line.Token
	for _, section := range d.w.Says.Line.Sections {
		all = append(all, section.Tokens...)
	}
	f, wide := ink(13), 0.0
	for _, t := range all {
		wide += d.width(t.Words, f) + gap
	}
	from, room, x := len(all), d.leaderEnd()-d.Typed, d.Typed-4
	if wide > room {
		f.size = 11.5 // smaller before one is left out
	}
	for from > 0 && room-d.width(all[from-1].Words, f)-gap >= 0 {
		from--
		room -= d.width(all[from].Words, f) + gap
	}
	top := field.Bottom() + 1
	for _, t := range all[from:] {
		middle := (d.column(field, t.From) + d.column(field, t.To)) / 2
		w := d.width(t.Words, f)
		if middle > field.X+4 {
			d.leader(at(middle, top), at(x+w/2, top+14))
		}
		d.text(x, top+wordsDown-1, t.Words, f)
		x += w + gap
	}
}

// leaderEnd is where the words below the field must end.
func (d recordDraw) leaderEnd() float64 { return d.After - 34 }

func (d recordDraw) leader(from, to scene.Point) {
	path := []scene.Point{from, at(from.X, from.Y+4), at(to.X, to.Y-4), to}
	for i := 1; i < len(path); i++ {
		d.add(scene.Line{From: path[i-1], To: path[i], Stroke: stroke(scene.Ink3, 1.1)})
	}
}

// stillTyping tells whether a mistake is only that the last sign is not typed to
// its end.
func (d recordDraw) stillTyping(m line.Mistake) bool {
	f := d.s.Field(state.WalkField)
	n := utf8.RuneCountInString(f.Text)
	return d.s.InField() == state.WalkField && f.Caret == n && m.Column >= n-1 && !strings.HasSuffix(f.Text, " ")
}

// noLetter tells whether a mistake is a sign that can begin nothing, which is told
// at once.
func noLetter(m line.Mistake) bool { return strings.HasSuffix(m.What, " is no letter of the line") }

// mistake writes below its place what is wrong and what to do, and gives how many
// lines that takes.
func (d recordDraw) mistake(m line.Mistake, field scene.Area, wrong bool) (lines int) {
	f := ink2(13)
	if wrong {
		f = ink(13).semi().as(scene.Act)
	}
	x := min(max(d.column(field, m.Column), field.X+10), field.Right()-10)
	top := field.Bottom() + 1
	d.add(scene.Line{From: at(x+5, top-9), To: at(x+5, top+13), Stroke: stroke(f.role, 1.5)})
	all := m.What + "; " + m.Do
	room := d.After - 34 - d.Typed
	if d.width(all, f) > room {
		d.wrap(d.Typed, top+wordsDown-1, all, f, room, 3)
		return 3
	}
	from := min(x, max(d.Typed, d.After-34-d.width(all, f)))
	d.fit(from, top+wordsDown-1, all, f, d.After-34)
	return 1
}

// question is the question that waits in the row that is typed into: of its line,
// or one that was passed and is asked again.
func (d recordDraw) question() (q state.Passed, waits bool) {
	if a := d.s.Asked; a != nil {
		return state.Passed{Asks: a.Asks, Answers: a.Answers}, true
	}
	return d.s.Passing()
}

// asked draws it with its keys.
func (d recordDraw) asked(q state.Passed, a scene.Area) {
	f := ink(14).bold().as(scene.Act)
	y := d.wrap(a.X, a.Y+19, sentence(q.Asks), f, a.W, 2)
	const high = 27.0
	end := d.answers(q.Answers, a.X, y-12, a.W, high)
	said := "one key; Enter leaves it open"
	if d.s.Asked != nil && d.s.Asked.Twice != "" {
		said = "the same of the same nuc"
	}
	at := end.Y + 17
	if end.X+d.width(said, ink2(13)) >= a.Right() {
		at += high
	}
	if at < a.Bottom() {
		d.right(a.Right(), at, said, ink2(13))
	}
}
