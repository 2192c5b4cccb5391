package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// fieldLook is how a field is drawn.
type fieldLook struct {
	size   float64
	weight scene.Weight
	empty  string // stands there, pale, while nothing was typed
	wrong  bool
	reason string // hovering says it
}

// fieldHeight is the height of a field in a form, dp.
const fieldHeight = 34.0

// input draws the field of a name in an area: its text, scrolled so that the
// caret shows, what is marked, and the caret while it takes the keys.
func (p *sheet) input(a scene.Area, name string, look fieldLook) {
	f := p.s.Field(name)
	on := p.s.InField() == name
	edge := stroke(scene.Ink2, 1)
	switch {
	case look.wrong:
		edge = stroke(scene.Act, 1.5)
	case on:
		edge = stroke(scene.Pen, 2)
	}
	p.add(scene.Rect{Area: a, Radius: 4, Fill: scene.Panel, Stroke: edge, Tag: scene.Tag{Ref: state.FieldNamed(name), Reason: look.reason}})
	inner := scene.Area{X: a.X + 10, Y: a.Y + 2, W: a.W - 20, H: a.H - 4}
	p.clipped(inner, scene.Tag{}, func() { p.fieldText(inner, name, f, look, on) })
}

// fieldText draws what stands in a field.
func (p *sheet) fieldText(a scene.Area, name string, f state.Field, look fieldLook, on bool) {
	letters := []rune(f.Text)
	until := func(n int) float64 { return p.measure.Width(string(letters[:n]), look.size, look.weight) }
	caret := min(max(f.Caret, 0), len(letters))
	x := a.X
	if over := until(caret) + 2 - a.W; on && over > 0 {
		x -= over
	}
	base := a.Y + a.H/2 + look.size*0.35
	if from, to := f.Marked(); on && from != to {
		p.rect(scene.Area{X: x + until(from), Y: base - look.size, W: until(to) - until(from), H: look.size * 1.3}, scene.PenTint)
	}
	if f.Text == "" {
		p.fit(x, base, look.empty, font{look.size, scene.Regular, scene.Ink3}, a.Right())
	}
	if !on {
		p.add(scene.Text{At: at(x, base), Text: scene.Shorten(p.measure, f.Text, look.size, look.weight, a.W), Size: look.size, Weight: look.weight, Role: scene.Ink})
		return
	}
	p.add(scene.Text{At: at(x, base), Text: f.Text, Size: look.size, Weight: look.weight, Role: scene.Ink})
	p.rect(scene.Area{X: x + until(caret), Y: base - look.size*0.95, W: 1.6, H: look.size * 1.25}, scene.Pen)
	for i := range letters { // a click puts the caret before or behind the letter it is on
		left, right := x+until(i), x+until(i+1)
		middle := (left + right) / 2
		p.hit(scene.Area{X: left, Y: a.Y, W: middle - left, H: a.H}, state.CaretAt(name, i), "")
		p.hit(scene.Area{X: middle, Y: a.Y, W: right - middle, H: a.H}, state.CaretAt(name, i+1), "")
	}
}

// choices draws the answers of a question as a row of words that can be taken, on
// as many lines as they need, and gives where the next thing begins.
func (p *sheet) choices(x, y, w float64, name string, options []state.Option) float64 {
	return p.chips(x, y, w, name, options, p.s.Typed(name))
}

// chips draws the answers of a choice of which one is taken.
func (p *sheet) chips(x, y, w float64, name string, options []state.Option, taken string) float64 {
	const h, gap = 30.0, 8.0
	at := x
	for _, o := range options {
		f := ink(14)
		on := taken == o.Value || p.s.Several(name, o.Value)
		if on {
			f = f.semi().as(scene.Ground)
		}
		wide := min(p.width(o.Word, f)+24, w)
		if at+wide > x+w && at > x {
			at, y = x, y+h+gap
		}
		r := scene.Rect{Area: scene.Area{X: at, Y: y, W: wide, H: h}, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)}
		if on {
			r.Fill = scene.Ink
		}
		r.Tag = scene.Tag{Ref: state.ChoiceOf(name, o.Value)}
		p.hoverRing(r.Area, r.Ref)
		p.add(r)
		p.fit(at+12, y+h/2+5, o.Word, f, at+wide-8)
		at += wide + gap
	}
	return y + h + gap
}

// focusRing draws a ring about what has the focus, where that is no field: a
// field shows its caret.
func focusRing(s state.State, sc scene.Scene) []scene.Mark {
	if s.Focus == (scene.Ref{}) || s.Focus.Kind == state.FieldRef {
		return nil
	}
	a, ok := sc.Where(s.Focus)
	if !ok || a.Empty() {
		return nil
	}
	return []scene.Mark{scene.Rect{Area: a.Inset(-2), Radius: 5, Stroke: stroke(scene.Pen, 2)}}
}
