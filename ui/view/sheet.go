package view

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// sheet is a scene being drawn, with what it is drawn from.
type sheet struct {
	reading    *state.Reading
	away       bool
	hoverBatch book.Subject // the batch that the pointer is over
	marks      []scene.Mark
	measure    scene.Measurer
	s          state.State
	l          state.Layout
	filterAt   scene.Area // where the field of the filter lies, where it is shown
	hollow     bool       // what nobody saw is hollow on the lids of the room, too small for a hatch
	names      []func()   // what is written over the handle of the day
}

// newSheet is an empty scene of a state. What every lid needs is asked for once.
func newSheet(s state.State, m scene.Measurer) *sheet {
	return &sheet{
		measure: m, s: s, l: s.Layout(),
		reading: s.Reading(), away: s.Away(), hoverBatch: state.SubjectOf(s.Hover.Ref),
	}
}

// font is a look of text.
type font struct {
	size   float64
	weight scene.Weight
	role   scene.Role
}

func ink(size float64) font  { return font{size, scene.Regular, scene.Ink} }
func ink2(size float64) font { return font{size, scene.Regular, scene.Ink2} }
func ink3(size float64) font { return font{size, scene.Regular, scene.Ink3} }

func (f font) medium() font            { f.weight = scene.Medium; return f }
func (f font) semi() font              { f.weight = scene.SemiBold; return f }
func (f font) bold() font              { f.weight = scene.Bold; return f }
func (f font) italic() font            { f.weight = scene.Italic; return f }
func (f font) as(role scene.Role) font { f.role = role; return f }

// stroke is a full line.
func stroke(role scene.Role, width float64) scene.Stroke {
	return scene.Stroke{Role: role, Width: width}
}

func at(x, y float64) scene.Point { return scene.Point{X: x, Y: y} }

func (p *sheet) add(marks ...scene.Mark) { p.marks = append(p.marks, marks...) }

func (p *sheet) rect(a scene.Area, fill scene.Role) { p.add(scene.Rect{Area: a, Fill: fill}) }

// rule draws a line along a pane's edge.
func (p *sheet) rule(x1, y1, x2, y2 float64, role scene.Role) {
	p.add(scene.Line{From: at(x1, y1), To: at(x2, y2), Stroke: stroke(role, 1)})
}

// width is how wide text is.
func (p *sheet) width(text string, f font) float64 {
	return p.measure.Width(p.say(text), f.size, f.weight)
}

// say is a text in the keeper's units. All that is written goes through it, so
// that no text needs to know of units but the metric ones.
func (p *sheet) say(text string) string { return p.s.Units.Say(text) }

// text writes from x on and gives where the text ends.
func (p *sheet) text(x, y float64, text string, f font) float64 {
	text = p.say(text)
	p.add(scene.Text{At: at(x, y), Text: text, Size: f.size, Weight: f.weight, Role: f.role})
	return x + p.width(text, f)
}

// right writes up to x and gives where the text begins.
func (p *sheet) right(x, y float64, text string, f font) float64 {
	text = p.say(text)
	p.add(scene.Text{At: at(x, y), Text: text, Size: f.size, Weight: f.weight, Role: f.role, Anchor: scene.Right})
	return x - p.width(text, f)
}

// centre writes about x.
func (p *sheet) centre(x, y float64, text string, f font) {
	p.add(scene.Text{At: at(x, y), Text: p.say(text), Size: f.size, Weight: f.weight, Role: f.role, Anchor: scene.Centre})
}

// fit writes from x on no further than to, shortened if need be, and gives
// where the text ends.
func (p *sheet) fit(x, y float64, text string, f font, to float64) float64 {
	if to <= x {
		return x
	}
	return p.text(x, y, scene.Shorten(p.measure, p.say(text), f.size, f.weight, to-x), f)
}

// wrap writes lines no wider than width, at most so many, and gives where the
// next line would stand.
func (p *sheet) wrap(x, y float64, text string, f font, width float64, most int) float64 {
	lines := scene.Wrap(p.measure, p.say(text), f.size, f.weight, width)
	for i, l := range lines {
		if i == most-1 && len(lines) > most {
			l += " …"
		}
		if i == most {
			break
		}
		p.fit(x, y, l, f, x+width)
		y += scene.LineHeight(f.size)
	}
	return y
}

// clipped draws into an area and cuts off what reaches beyond it.
func (p *sheet) clipped(a scene.Area, tag scene.Tag, draw func()) {
	outer := p.marks
	p.marks = nil
	draw()
	inner := p.marks
	p.marks = append(outer, scene.Pane{Clip: a, Marks: inner, Tag: tag})
}

// hit lays an area over what was drawn that stands for something.
func (p *sheet) hit(a scene.Area, ref scene.Ref, reason string) {
	p.add(scene.Rect{Area: a, Tag: scene.Tag{Ref: ref, Reason: reason}})
}

// alarm is the colour of what presses, and its tint: vermillion for what is
// true now, grey on a day that has gone or has not come.
func (p *sheet) alarm() (tone, tint scene.Role) {
	if p.s.Away() {
		return scene.Ink2, scene.Sunk
	}
	return scene.Act, scene.ActTint
}

// hovers tells whether the pointer is over what stands for ref.
func (p *sheet) hovers(ref scene.Ref) bool { return p.s.Hover.Ref == ref }

// leastTarget is the least side of what can be clicked, dp.
const leastTarget = 28.0

// target is an area at least leastTarget high about its middle.
func target(a scene.Area) scene.Area {
	if grow := leastTarget - a.H; grow > 0 {
		a.Y, a.H = a.Y-grow/2, leastTarget
	}
	return a
}

// link writes a word that runs a command; on is the one that is chosen.
func (p *sheet) link(x, y float64, word string, f font, command string, on bool) float64 {
	hover := p.hovers(state.CommandOf(command))
	if on || hover {
		f = f.as(scene.Ink)
	}
	if on {
		f = f.semi()
	}
	end := p.text(x, y, word, f)
	switch {
	case on:
		p.rect(scene.Area{X: x, Y: y + 4, W: end - x, H: 2.5}, scene.Ink)
	case hover:
		p.rule(x, y+5, end, y+5, scene.Ink2)
	}
	p.command(target(scene.Area{X: x - 4, Y: y - 14, W: end - x + 8, H: 20}), command)
	return end
}

// command lays an area that runs a command; its reason says what it does, with
// its key, or why it cannot.
func (p *sheet) command(a scene.Area, name string) {
	p.hit(a, state.CommandOf(name), p.says(name))
}

func (p *sheet) says(name string) string {
	c, ok := state.CommandNamed(name)
	switch why := c.Reason(p.s); {
	case !ok:
		return ""
	case why != "":
		return why
	case c.Keys != "":
		return c.Does + "  " + firstKey(c.Keys)
	default:
		return c.Does
	}
}
