package view

import (
	"fmt"
	"time"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// lateDraw is the late day being drawn.
type lateDraw struct {
	*sheet
	state.Late
	zone *time.Location
}

// Measures of the late day, dp.
const (
	lateWhy   = 260.0 // the words beside the curves
	lateNames = 200.0 // the names of the curves
	lateHigh  = 700.0 // and one as high as this a line below its title
)

// late draws the late day: what is lost by the hour, the ways out side by side,
// and what to do once a virgin has walked.
func (p *sheet) late() {
	l, ok := p.s.FilledLate()
	d := lateDraw{sheet: p, Late: l, zone: p.s.Reading().View.Zone()}
	a := p.l.Main
	p.rect(a, scene.Panel)
	if !ok {
		p.wrap(a.X+state.Edge, a.Y+48, "The cells of this batch are together no more, or their hard hour is far. Esc gives the room back.", ink(15), a.W-2*state.Edge, 3)
	} else {
		head, rest := scene.Area{X: a.X, Y: a.Y, W: a.W, H: state.LateHead}, scene.Area{X: a.X, Y: a.Y + state.LateHead, W: a.W, H: a.H - state.LateHead}
		d.strip(head)
		d.scrolling(rest)
	}
	switch {
	case p.s.Form != nil:
		p.card()
	case !p.l.Card.Empty():
		p.clipped(p.l.Card, scene.Tag{Ref: scene.Ref{Kind: "card"}}, func() { d.triage(p.l.Card, ok) })
		p.rule(p.l.Card.X, p.l.Card.Y, p.l.Card.X, p.l.Card.Bottom(), scene.Rule)
	}
	p.days()
}

// strip says how late it is.
func (d lateDraw) strip(a scene.Area) {
	tone, tint := d.alarm()
	d.rect(a, tint)
	d.rect(scene.Area{X: a.X, Y: a.Y, W: 6, H: a.H}, tone)
	x, to := a.X+state.Edge, a.Right()-state.Edge
	said, hours := d.mustBeOut(d.CellWords()), d.stripHours()
	if y := a.Y + 28; x+d.width(said, ink(16).bold())+16+d.width(hours[0], ink(14)) <= to {
		d.text(d.text(x, y, said, ink(16).bold().as(tone))+16, y, hours[0], ink(14))
		return
	}
	if x+d.width(said, ink(16).bold()) > to {
		said = d.mustBeOut(d.CellCount())
	}
	d.fit(x, a.Y+19, said, ink(16).bold().as(tone), to)
	d.widest(x, a.Y+37, to, ink(13), hours...)
}

// mustBeOut says what must be out, at which hour it is.
func (d lateDraw) mustBeOut(cells string) string {
	return fmt.Sprintf("It is %s and %s of batch %d must be out", d.Now.In(d.zone).Format("15:04"), cells, d.Number)
}

// stripHours say the hours of the batch, what is lost already and how many nucs are
// ready, the longest first.
func (d lateDraw) stripHours() []string {
	hard := "hard by "
	if d.Hard.Before(d.Now) {
		hard = "the hard hour was "
	}
	hard += weekdayHour(d.Hard, d.zone)
	hours := fmt.Sprintf("%s, half out by %s", hard, weekdayHour(d.Middle, d.zone))
	all := []string{hours + ". " + readyWords(d.Fit) + ".", fmt.Sprintf("%s; ready: %s", hours, plural(d.Fit, "nuc", "nucs")), hours}
	if already := d.AlreadySays(); already != "" {
		lost := "; " + already + " lost already unless none is out"
		all = []string{hours + lost + ". " + readyWords(d.Fit) + ".", hours + lost, hard + lost, already + " lost already unless none is out", hours}
	}
	return all
}

// readyWords says how many nucs take a cell now.
func readyWords(n int) string {
	switch n {
	case 0:
		return "No nuc is ready for a cell"
	case 1:
		return "1 nuc is ready for a cell"
	default:
		return thousands(n) + " nucs are ready for a cell"
	}
}

// scrolling draws curves and ways, which scroll where the room is low.
func (d lateDraw) scrolling(a scene.Area) {
	all, _ := d.s.FillHeight(d.l)
	offset := d.s.FillOffset(d.l)
	d.wholeLines(a, func() {
		y := a.Y - offset
		d.curves(scene.Area{X: a.X, Y: y, W: a.W, H: d.l.LateChart()})
		d.ways(scene.Area{X: a.X, Y: y + d.l.LateChart(), W: a.W, H: all - d.l.LateChart()})
	})
	d.scrollBar(a, offset, all)
}
