package view

import (
	"strconv"
	"time"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// daysLine is the baseline of the days' numbers, from the top of the ribbon, dp.
const daysLine = 30.0

// numberFont is the look of a day's number: bold on the first of a week, pale at its end.
func (p *sheet) numberFont(d calendar.Day) font {
	const size = 12
	switch w := d.Weekday(); {
	case w == p.s.Week.Day():
		return ink(size).medium()
	case w == time.Saturday || w == time.Sunday:
		return ink2(size)
	default:
		return ink(size)
	}
}

// numberSpan is from where to where the number of a day reaches.
func (p *sheet) numberSpan(d calendar.Day) (from, to float64) {
	_, _, number := d.Date()
	x, w := p.l.Ribbon.At(d), p.width(strconv.Itoa(number), p.numberFont(d))
	return x - w/2, x + w/2
}

// slender is the width of columns, dp, under which figures of every other day would touch.
const slender = 12.0

// numbered tells whether a day shows its number: in narrow columns only the first, third
// and fifth of a week, in slender ones only the first. The day looked at shows it always, and no other where the frame
// about that one or the line of a month would cut it.
func (g *strip) numbered(d calendar.Day) bool {
	if d == g.s.Looked() {
		return true
	}
	from, to := g.numberSpan(d)
	if left, right := g.frameSides(g.s.Looked()); from < right+2 && left-2 < to {
		return false
	}
	year, month, _ := d.Date()
	next := g.Left(calendar.Date(year, month+1, 1))
	if first := g.Left(calendar.Date(year, month, 1)); from < first+2 || to > next-2 {
		return false
	}
	if g.Column >= 18 || d == g.today {
		return true
	}
	inWeek := 7 - state.NextWeek(d, g.s.Week.Day()).Sub(d)
	if g.Column < slender {
		return inWeek == 0
	}
	away := d.Sub(g.today)
	return (inWeek == 0 || inWeek == 2 || inWeek == 4) && away != 1 && away != -1
}

// frameSides are where the frame about a day stands: about its column, and where that is
// slender about its number.
func (p *sheet) frameSides(d calendar.Day) (left, right float64) {
	const apart = 3.0
	r := p.l.Ribbon
	from, to := p.numberSpan(d)
	return min(r.Left(d), from-apart), max(r.Left(d)+r.Column, to+apart)
}

// dotted draws the dotted line at now. It is broken at the number of its day.
func (p *sheet) dotted(x, top, bottom float64) {
	const over, below = 11.0, 4.0 // the baseline of the number
	y := p.l.Ribbon.Y + daysLine
	for _, part := range [][2]float64{{top, y - over}, {y + below, bottom}} {
		p.add(scene.Line{From: at(x, part[0]), To: at(x, part[1]), Stroke: scene.Stroke{Role: scene.Ink, Width: 1.4, Dash: [2]float64{2, 3}}})
	}
}
