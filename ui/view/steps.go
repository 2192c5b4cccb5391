package view

import (
	"strconv"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// stepWords are the steps of a new book: the word of the step, what it asks, and
// in a sentence what it is for.
var stepWords = [state.StepCount]struct{ word, title, text string }{
	{"The yard", "The yard, and where it lies", "The place tells sun and shade on the map. It never leaves this computer."},
	{"The boxes", "Boxes and entrances", "A letter for each stand, but I and O, then its places: A1-A12 are twelve nucs on stand A, A1-R4 four on each of sixteen stands."},
	{"People", "People and free hours", "Work is laid into the hours in which somebody is free. Whoever stands first writes in the book."},
	{"First batch", "The first batch", "From the hour of the graft runs the clock that every deadline hangs on."},
}

// Measures of the steps, dp.
const (
	stepFoot  = 62.0 // the buttons below the fields
	stepLeast = 440.0
	stepLabel = 20.0  // from a label's baseline to its field
	stepAsk   = 75.0  // a label, its field and what is said below it
	stepAir   = 15.0  // between two of those, where there is room
	stepNoted = 11.0  // else below what is said there
	stepWide  = 440.0 // the width below which only the step of now has its word
	stepsHigh = 600.0 // the height below which all stands closer
)

// stepDraw is a step being drawn: its fields from the top down.
type stepDraw struct {
	*sheet
	f       *state.Founding
	x, y, w float64
	low     bool    // there is little room
	below   float64 // what is said below a field of this line is so much higher
}

// steps draws the steps of a new book: what is asked, and beside it what comes
// of it.
func (p *sheet) steps() {
	body := scene.Area{Y: p.l.Rooms.Bottom(), W: p.l.Window.W, H: p.l.Foot.Y - p.l.Rooms.Bottom()}
	left := body
	left.W = p.s.StepFields()
	right := scene.Area{X: left.Right(), Y: body.Y, W: body.W - left.W, H: body.H}
	d := &stepDraw{sheet: p, f: p.s.Founding(), x: left.X + max(24, min(64, (left.W-stepLeast)*0.35)), y: left.Y}
	d.w, d.low = min(left.Right()-d.x-24, 540), left.H < stepsHigh
	p.rect(left, scene.Panel)
	fields := scene.Area{X: left.X, Y: left.Y, W: left.W, H: left.H - stepFoot}
	d.page(fields)
	d.foot(scene.Area{X: left.X, Y: fields.Bottom(), W: left.W, H: stepFoot})
	if !right.Empty() {
		p.rule(right.X, right.Y, right.X, right.Bottom(), scene.Rule)
		p.clipped(right, scene.Tag{}, func() { d.picture(right) })
	}
}

// page draws head and fields in an area, moved up where it is too low for all
// and the wheel was turned, or the keys go to what would lie below.
func (d *stepDraw) page(a scene.Area) {
	const ahead = 110.0 // so much of what comes next is in sight, for Tab
	top, before := d.y, d.marks
	draw := func(up float64) []scene.Mark {
		d.marks, d.y = nil, top-up
		d.head()
		d.fields()
		return d.marks
	}
	marks := draw(0)
	up := 0.0
	if over := d.y - a.Bottom(); over > 0 {
		focus, _ := scene.Scene{Marks: marks}.Where(d.s.Focus)
		up = min(max(d.s.Scroll[state.FillPlace], focus.Bottom()+ahead-a.Bottom()), over)
		marks = draw(up)
	}
	in := wholeWithin(marks, a)
	d.marks = append(before, scene.Pane{Clip: in, Marks: hittable(marks, in)})
	d.scrollBar(a, up, d.y+up-top)
}

// head draws the steps as words, that of now marked, and what this one asks.
func (d *stepDraw) head() {
	x, y := d.x, d.y+34
	for i, s := range stepWords {
		step := state.Step(i)
		f := ink2(14)
		switch {
		case step == d.s.Start.Step:
			f = ink(14).semi()
		case step > d.s.Start.Step:
			f = ink3(14)
		}
		word := strconv.Itoa(i+1) + "  " + s.word
		if d.w < stepWide && step != d.s.Start.Step {
			word = strconv.Itoa(i + 1)
		}
		end := d.text(x, y, word, f)
		if step == d.s.Start.Step {
			d.rect(scene.Area{X: x, Y: y + 7, W: end - x, H: 3}, scene.Ink)
		}
		ref := scene.Ref{Kind: state.StepRef, ID: "step", Part: strconv.Itoa(i)}
		d.hit(target(scene.Area{X: x - 11, Y: y - 14, W: end - x + 22, H: 20}), ref, s.title)
		x = end + 24
	}
	s := stepWords[d.s.Start.Step]
	if d.low { // the word of the step says nearly what its title does
		d.y = d.wrap(d.x, y+32, s.text, ink2(14), d.w, 3) + 4
		return
	}
	d.y = y + 56
	d.fit(d.x, d.y, s.title, ink(26).semi(), d.x+d.w)
	d.y = d.wrap(d.x, d.y+28, s.text, ink2(15), d.w, 3) + 14
}

// fields draws what the step asks.
func (d *stepDraw) fields() {
	switch d.s.Start.Step {
	case state.YardStep:
		d.yardFields()
	case state.BoxStep:
		d.boxFields()
	case state.PeopleStep:
		d.peopleFields()
	case state.BatchStep:
		d.batchFields()
	}
}

// foot draws the way on and the way back, and what went wrong.
func (d *stepDraw) foot(a scene.Area) {
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Rule)
	on := "Go on"
	if d.s.Start.Step+1 == state.StepCount {
		on = "Start the book"
	}
	y := a.Y + 14
	word := d.width(on, ink(14).medium()) + 28
	d.button(d.x+d.w-word, y, on, "start on", true)
	x := d.button(d.x, y, "Back", "start back", false) + 18
	to, f, said := d.x+d.w-word-14, ink2(13), "Nothing is kept before the last step"
	if d.s.Note.Bad {
		f, said = ink(13).as(scene.Act), sentence(d.s.Note.Text)
	}
	lines := scene.Wrap(d.measure, d.say(said), f.size, f.weight, to-x)
	top := y + 21.5 - float64(min(len(lines), 3)-1)*9
	d.wrap(x, top, said, f, to-x, 3)
}

// stepField is a field of a step and what stands with it.
type stepField struct {
	label, name string
	empty       string // what stands there, pale, while nothing is typed
	note        string // below it, while nothing is wrong
	w           float64
}

// ask draws a field at x below the place reached, without moving that, and gives
// where the next thing beside it begins.
func (d *stepDraw) ask(x float64, a stepField) float64 {
	d.add(scene.Rect{Area: scene.Area{X: x, Y: d.y, W: a.w, H: stepLabel + fieldHeight}, Radius: 4, Tag: scene.Tag{Ref: state.FieldNamed(a.name)}})
	d.fit(x, d.y+12, a.label, ink2(14), x+a.w+40)
	wrong := d.wrongShown(a.name)
	d.input(scene.Area{X: x, Y: d.y + stepLabel, W: a.w, H: fieldHeight}, a.name, fieldLook{size: 16, weight: scene.Medium, empty: a.empty, wrong: wrong != ""})
	y, f, said := d.y+stepLabel+fieldHeight+14, ink2(13), a.note
	if wrong != "" {
		f, said = ink(13).as(scene.Act), sentence(wrong)
	}
	d.said(x, y, said, f, a.w)
	return x + a.w + 20
}

// said writes below a field, on as many lines as it needs.
func (d *stepDraw) said(x, y float64, said string, f font, w float64) {
	if said == "" {
		return
	}
	more := d.wrap(x, y, said, f, w, whole) - y - scene.LineHeight(f.size)
	if d.low {
		more += stepNoted
	}
	d.below = max(d.below, more)
}

func boolFloat(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

// next goes on below a line of fields.
func (d *stepDraw) next() {
	d.y += stepAsk + d.below
	if !d.low {
		d.y += stepAir
	}
	d.below = 0
}

// wrongShown is what is wrong with a field, once it was left or was to be taken:
// while it is typed nothing is held against it.
func (d *stepDraw) wrongShown(name string) string {
	if !d.s.Start.Tried && (d.s.Typed(name) == "" || d.s.InField() == name) {
		return ""
	}
	return d.f.Wrong(name)
}
