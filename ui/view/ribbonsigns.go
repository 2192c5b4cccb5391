package view

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// sign draws a day's weather as it was typed.
func (g *strip) sign(c scene.Point, sign book.Sign) {
	const r = 3.0
	arm := stroke(scene.Ink2, 1.5)
	bar := func(x1, y1, x2, y2 float64) {
		g.add(scene.Line{From: at(c.X+x1, c.Y+y1), To: at(c.X+x2, c.Y+y2), Stroke: arm})
	}
	switch sign {
	case book.Flying:
		bar(-r, 0, r, 0)
		bar(0, -r, 0, r)
	case book.HalfFit:
		bar(-r, -1.4, r, -1.4)
		bar(0, -4.5, 0, 1.8)
		bar(-r, 3.6, r, 3.6)
	case book.NoFlight:
		bar(-r, 0, r, 0)
	}
}

// said is a day in one line: its date, hours, work and deadlines.
func (g *strip) said(d calendar.Day) string {
	var b strings.Builder
	b.WriteString(d.Short())
	f := g.r.FlightOn(g.yard(), d)
	fmt.Fprintf(&b, "; flying hours: %s", f.Why)
	if w := g.r.WorkOn(d); w.Minutes > 0 {
		fmt.Fprintf(&b, "; %s of work", minutes(w.Minutes))
		if d > g.today {
			b.WriteString(" best done then")
		}
		if d >= g.today && g.told {
			fmt.Fprintf(&b, ", %s free", minutes(w.Free))
		}
	}
	return b.String()
}

// dayFlag is the flag of the handle: where it lies, what it says, and how far
// the day looked at lies outside the ribbon: before it -1, after it 1.
type dayFlag struct {
	area    scene.Area
	word    string
	outside int
}

// flag is the flag over the day looked at. For a day out of sight it stands at
// the end of the ribbon that is nearer to it. It leaves the names of months free
// where it still reaches its day so.
func (p *sheet) flag() dayFlag {
	r, d := p.l.Ribbon, p.s.Looked()
	f := dayFlag{word: d.Short()}
	switch {
	case !p.s.Away():
		f.word += " · today"
	case p.l.Band.Empty(): // which says it else
		f.word += " · " + daysAway(d.Sub(p.s.Today()))
	}
	x := r.At(d)
	switch {
	case d < r.First:
		f.word, f.outside, x = "← "+f.word, -1, 0
	case d > r.Last():
		f.word, f.outside, x = f.word+" →", 1, r.W
	}
	w := p.width(f.word, flagFont) + 16
	f.area = scene.Area{X: min(max(x-w/2, 4), r.W-w-4), Y: r.Y + 1, W: w, H: flagHigh}
	if f.outside == 0 {
		f.area = p.besideMonths(f.area, d)
	}
	return f
}

// besideMonths is a flag over a day beside the names of months, the first one in sight, that of the day and
// the next, as far as it reaches its day there.
func (p *sheet) besideMonths(flag scene.Area, d calendar.Day) scene.Area {
	r := p.l.Ribbon
	year, m, _ := d.Date()
	for _, first := range []calendar.Day{r.First, calendar.Date(year, m, 1), calendar.Date(year, m+1, 1)} {
		word, month := p.monthPlace(first)
		if word == "" || first < r.First || first > r.Last() || month.X >= flag.Right()+4 || flag.X-4 >= month.Right() {
			continue
		}
		if month.Right()+6 <= r.Left(d) && month.Right()+6+flag.W <= r.W-4 {
			flag.X = month.Right() + 6
		} else if month.X-6 >= r.Left(d)+r.Column && month.X-6-flag.W >= 4 {
			flag.X = month.X - 6 - flag.W
		}
	}
	return flag
}

var flagFont = ink(13).semi().as(scene.Ground)

// handle draws the frame about the day looked at with its flag, and a dotted
// line at now when that is another day.
func (p *sheet) handle() {
	r, d := p.l.Ribbon, p.s.Looked()
	bottom := r.Bottom() - 2
	if !p.l.Lanes.Empty() && p.l.Turns.Empty() {
		bottom = p.l.Lanes.Bottom() - 1
	}
	if p.s.Fill == state.BatchFill {
		bottom = p.l.Main.Y + state.BatchHead + p.l.BatchStream() - 1
	}
	flag := p.flag()
	role := scene.Ink
	if p.s.Away() {
		role = scene.Pen
		p.nowLine(r.Y+1, bottom)
	}
	if flag.outside == 0 {
		left, right := p.frameSides(d)
		frame := scene.Area{X: left, Y: r.Y + 1, W: right - left, H: bottom - r.Y - 1}
		p.add(scene.Rect{Area: frame, Radius: 3, Stroke: stroke(role, 2)})
	}
	p.add(scene.Rect{Area: flag.area, Radius: 3, Fill: role, Tag: scene.Tag{
		Ref: scene.Ref{Kind: state.DayRef, ID: d.String()}, Reason: "drag it to another day",
	}})
	p.centre(flag.area.Centre().X, flag.area.Y+14.5, flag.word, flagFont)
}

// nowLine is the dotted line at now.
func (p *sheet) nowLine(top, bottom float64) {
	x := p.l.Ribbon.At(p.s.Today())
	if x < p.l.Ribbon.X || x > p.l.Ribbon.Right() {
		return
	}
	p.dotted(x, top, bottom)
	if word := p.nowWord(); !word.Empty() {
		p.text(word.X, top+14, "now", nowFont)
	}
}

var nowFont = ink(12).semi()

// nowWord is where the word at the dotted line stands; it gives way to the
// flag, and is not needed while today is looked at.
func (p *sheet) nowWord() scene.Area {
	r, word := p.l.Ribbon, p.nowPlace()
	if !p.s.Away() || word.X < 4 || word.Right() > r.Right() || word.Overlaps(p.flag().area) {
		return scene.Area{}
	}
	return word
}

// nowPlace is the place of the word "now", whether it is needed or not.
func (p *sheet) nowPlace() scene.Area {
	r, w := p.l.Ribbon, p.width("now", nowFont)
	return scene.Area{X: r.At(p.s.Today()) - 5 - w, Y: r.Y + 1, W: w, H: flagHigh}
}

// flagHigh is how high the flag is, dp.
const flagHigh = 20.0

// band says which day is looked at, and the way back to now.
func (p *sheet) band() {
	a := p.l.Band
	p.rect(a, scene.PenTint)
	y := a.Y + 20.5
	f := ink(14).semi().as(scene.Pen)
	x := p.right(a.Right()-20, y, "Home", font{12, scene.Regular, scene.Pen})
	from := p.right(x-10, y, "back to now", f)
	p.rule(from, y+3, x-10, y+3, scene.Pen)
	p.command(scene.Area{X: from - 8, Y: a.Y, W: a.Right() - from + 8, H: a.H}, "now")
	d := p.s.Looked()
	day := fmt.Sprintf("%s, %s", d.Short(), daysAway(d.Sub(p.s.Today())))
	how, short := p.bandWords()
	whole := how
	if !p.s.OnLayout() && p.s.Reading().Judged().Taken() {
		whole += " " + rules.AsPlanned
	}
	for _, said := range []string{"You are looking at " + day + ". " + whole, "You are looking at " + day + ". " + how, "You are looking at " + day + ". " + short, "You are looking at " + day, day} {
		if p.width(said, f) <= from-24-state.Edge {
			p.text(state.Edge, y, said, f)
			return
		}
	}
	p.fit(state.Edge, y, day, f, from-24)
}

// bandWords say how what is below the band is known, and the same shorter.
func (p *sheet) bandWords() (how, short string) {
	switch {
	case !p.s.Away():
		short = "as it is now."
	case p.s.OnLayout():
		return "A layout is drawn and judged as of today.", "The layout is as of today."
	case p.s.AsThen():
		short = "as it was known then, at the end of that day."
	case p.s.Ahead() && p.hollow:
		return "Everything hollow below is by the calendar, not seen yet.", "Hollow is by the calendar, not seen yet."
	case p.s.Ahead():
		return "Everything hatched below is by the calendar, not seen yet.", "Hatched is by the calendar, not seen yet."
	default:
		short = "as it was recorded by the end of that day."
	}
	return "Everything below is " + short, "All is " + short
}
