package view

import (
	"strconv"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// seasonDraw is the page of the season being drawn.
type seasonDraw struct {
	*sheet
	state.SeasonPane
}

// season draws the page of the season: the batches in time and below them the orders,
// then what batches want at once with the ways out, and the dates for what is owed.
func (p *sheet) season() {
	d := seasonDraw{p, p.s.SeasonPane(p.l)}
	p.rect(p.l.Main, scene.Panel)
	d.strip(p.l.Strip)
	if !p.l.Banks.Empty() {
		d.banks(p.l.Banks)
	}
	d.head()
	if p.s.SeasonSheet() == nil {
		d.text(d.Body.X+state.Edge, d.Body.Y+30, "reckoning the season …", ink(15))
	} else {
		p.clipped(d.Body, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: "season"}}, func() {
			d.wholeLines(d.Body, d.lines)
			d.scrollBar(d.Body, d.Offset, d.Tall)
		})
	}
	p.card()
	p.names = append(p.names, d.clashesInTime) // over the handle
	p.days()
}

// head draws the words that turn the pages, and the papers of the season.
func (d seasonDraw) head() {
	a := d.Head
	d.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Rule)
	from, x := d.planPages(a.X+state.Edge, a.Y+30)+28, a.Right()-state.Edge
	f := ink(13.5).as(scene.Pen)
	for _, b := range [][2]string{{"Buying list", "print buying"}, {"Print the week", "print week"}, {"Turn of a nuc", "turn of a nuc"}} {
		if x -= d.width(b[0], f); x < from {
			return
		}
		d.link(x, a.Y+30, b[0], f, b[1], b[1] == "turn of a nuc" && d.s.Planning.Turn)
		x -= 18
	}
}

// lines draws the lines that are in sight: those with keys and fields whole only.
func (d seasonDraw) lines() {
	for _, l := range d.Lines {
		row := scene.Area{X: d.Body.X + state.Edge + l.X, Y: d.Body.Y + l.Y - d.Offset, W: d.Wide, H: l.H}
		cut := row.Y < d.Body.Y || row.Bottom() > d.Body.Bottom()
		if row.Bottom() > d.Body.Y && row.Y < d.Body.Bottom() && !(cut && (l.SeasonLook == state.SeasonWay || l.SeasonLook == state.SeasonAsk || l.SeasonLook == state.SeasonTurn)) {
			d.line(l, row)
		}
	}
}

func (d seasonDraw) line(l state.SeasonLine, row scene.Area) {
	f := ink(14)
	if l.Alarm {
		f = f.as(scene.Act)
	}
	switch y := row.Bottom() - 8; l.SeasonLook {
	case state.SeasonSaid:
		d.told(row.X, row.Y+18, l.Cells[0], f, row.W)
	case state.SeasonTitle:
		d.fit(row.X, row.Bottom()-12, l.Cells[0], ink(15).semi(), row.Right())
		d.rule(row.X, row.Bottom()-4, row.Right(), row.Bottom()-4, scene.Rule)
	case state.SeasonClash:
		d.chosenLine(l, row, "its batches; 1, 2, 3 take its ways out")
		d.sign(at(row.X+5, row.Y+14))
		d.told(row.X+state.ClashIndent, row.Y+18, l.Cells[0], ink(14).semi(), row.W-state.ClashIndent)
	case state.SeasonWay:
		d.way(l, row)
	case state.SeasonAsk:
		d.ask(l, row)
	case state.SeasonTurn:
		d.turn(row)
	default:
		d.columns(l, row, y)
	}
}

// told writes a sentence in the lines for which there is room, as the state reckoned them: the
// letters themselves are a little narrower, and a line less would leave one empty.
func (d seasonDraw) told(x, y float64, text string, f font, width float64) {
	for _, l := range scene.Wrap(state.Reckoner{}, d.say(text), f.size, f.weight, width) {
		d.fit(x, y, l, f, x+width)
		y += scene.LineHeight(f.size)
	}
}

// sign is that of a clash, as lanes have it.
func (d seasonDraw) sign(c scene.Point) {
	d.add(scene.Poly{Points: []scene.Point{c.Add(at(-6, 0)), c.Add(at(0, -6)), c.Add(at(6, 0)), c.Add(at(0, 6))}, Fill: scene.Panel, Stroke: stroke(scene.Act, 1.8)},
		scene.Line{From: c.Add(at(0, -3)), To: c.Add(at(0, 1)), Stroke: stroke(scene.Act, 1.6)}, scene.Circle{At: c.Add(at(0, 3)), Radius: 0.9, Fill: scene.Act})
}

// chosenLine draws the ground of a line that can be taken.
func (d seasonDraw) chosenLine(l state.SeasonLine, row scene.Area, says string) {
	if l.Ref == (scene.Ref{}) {
		return
	}
	r := scene.Rect{Area: scene.Area{X: row.X - 6, Y: row.Y + 1, W: row.W + 12, H: row.H - 2}, Radius: 4, Tag: scene.Tag{Ref: l.Ref, Reason: says}}
	switch {
	case l.Ref == d.s.Focus:
		r.Fill = scene.PenTint
	case d.hovers(l.Ref):
		r.Fill = scene.Sunk
	}
	d.add(r)
}

// way draws a way out, with the figure that takes it and what it does to the promise;
// where there is no room that stands below.
func (d seasonDraw) way(l state.SeasonLine, row scene.Area) {
	d.chosenLine(l, row, "write it down so")
	x, y := row.X+indent+6, row.Y+20
	if l.Digit > 0 {
		key := scene.Area{X: x, Y: row.Y + 4, W: 22, H: 22}
		d.add(scene.Rect{Area: key, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: l.Ref, Reason: "write it down so  " + strconv.Itoa(l.Digit)}})
		d.centre(key.Centre().X, y, strconv.Itoa(l.Digit), ink(13).semi())
	}
	says, f := l.Cells[1], ink2(13.5)
	if l.Ref == (scene.Ref{}) {
		d.fit(x, y, l.Cells[0], ink(14), row.Right())
		return
	}
	x += 32
	if l.Alarm {
		f = f.as(scene.Act)
	}
	to := d.right(row.Right(), y, scene.Shorten(d.measure, d.say(says), f.size, f.weight, (row.Right()-x)*0.5), f)
	d.fit(x, y, l.Cells[0], ink(14).as(scene.Pen), to-14)
	d.rule(row.X+indent, row.Bottom()-0.5, row.Right(), row.Bottom()-0.5, scene.Hair)
}

// seasonColumns are where the columns of lines begin, as shares of their width: those of
// different tables below each other stand in line where they can.
var seasonColumns = map[state.SeasonLook][]float64{
	state.SeasonGraft:   {0, 0.15, 0.42, 0.64, 0.76},
	state.SeasonKept:    {0, 0.42, 0.64},
	state.SeasonTurnAge: {0, 0.15, 0.29, 0.42, 0.64},
}

// columns writes cells side by side; the head over them is small, and what is most of its
// column lies on a ground of its own.
func (d seasonDraw) columns(l state.SeasonLine, row scene.Area, y float64) {
	const plate = 52.0
	shares, x0, w := seasonColumns[l.SeasonLook], row.X+indent, row.W-indent
	for i, cell := range l.Cells {
		x, f, to := x0+shares[i]*w, ink(14), row.Right()
		if i+1 < len(shares) {
			to = x0 + shares[i+1]*w - 8
		}
		switch {
		case l.Head:
			f = ink2(12.5)
		case i > 0 && i <= len(l.Best) && l.Best[i-1]:
			d.add(scene.Rect{Area: scene.Area{X: x - 8, Y: row.Y + 2, W: plate, H: row.H - 4}, Radius: 4, Fill: scene.PenTint})
			f = f.semi()
		case i > len(l.Best):
			f = ink2(13.5)
		}
		d.fit(x, y, cell, f, to)
	}
	d.rule(x0, row.Bottom()-0.5, row.Right(), row.Bottom()-0.5, scene.Hair)
}

// ask draws what finds dates: the most minutes a day and the button, or what stops it;
// with dates what makes them the plan; and how far it is.
func (d seasonDraw) ask(l state.SeasonLine, row scene.Area) {
	x, y := row.X, row.Y+8
	dates, said, f := d.s.SeasonDates(), l.Cells[0], ink(14)
	switch {
	case dates != nil && dates.Looking():
		x = d.button(x, y, "Stop", "stop dates", false) + 14
	case dates != nil && len(dates.Batches) > 0:
		x = d.button(x, y, "Make it the plan", "plan dates", true) + 8
		x = d.button(x, y, "Forget", "forget dates", false) + 14
		if why := d.refused(2*(row.Right()-x), button{"Make it the plan", "plan dates", true}); why != "" {
			said, f = why, f.as(scene.Act)
		}
	default:
		x = d.button(x, y, "Find dates", "find dates", true) + 14
		x = d.text(x, y+22, "at most", ink2(14)) + 8
		wrong := d.s.WrongMinutes()
		d.input(scene.Area{X: x, Y: y, W: 64, H: 34}, state.MostField, fieldLook{size: 14, empty: "any", wrong: wrong, reason: "so many minutes of work on one day at most, by these grafts; empty: no limit"})
		x = d.fit(x+72, y+22, "min a day", ink2(14), row.Right()) + 14
	}
	d.progress(dates, scene.Area{X: row.X, Y: row.Bottom() - 4, W: row.W, H: 3})
	d.wrap(x, y+lineUp(d.lines2(said, row.Right()-x)), said, f, row.Right()-x, 2)
}

// lineUp is where the first of one or two lines beside a button stands.
func lineUp(lines int) float64 {
	if lines > 1 {
		return 13
	}
	return 22
}

func (d seasonDraw) lines2(text string, w float64) int {
	return len(scene.Wrap(d.measure, d.say(text), 14, scene.Regular, w))
}

// progress draws how far the search is.
func (d seasonDraw) progress(dates *state.SeasonDates, a scene.Area) {
	if dates == nil || !dates.Looking() {
		return
	}
	d.rect(a, scene.Sunk)
	a.W *= float64(dates.Round) / float64(max(1, dates.Of))
	d.rect(a, scene.Pen)
}
