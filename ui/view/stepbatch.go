package view

import (
	"fmt"
	"time"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// pictureBatch draws the batch as its lane will show it, and its clock in words.
func (d *stepDraw) pictureBatch(a scene.Area) {
	s := d.made()
	r := s.Present()
	b := r.View.Batch(d.f.Batch)
	title := fmt.Sprintf("Batch %d", b.Number)
	if d.f.Example {
		title = "An example of a batch"
	}
	y := d.pictureTitle(a, title, "How many are alive, day by day: solid as counted, hatched as to be expected.")
	zone := r.View.Zone()
	l := d.l
	const days = 44
	first := calendar.DayOf(b.At.Instant, zone) - 2
	l.Ribbon = state.Ribbon{Area: scene.Area{X: a.X, Y: y, W: a.W, H: state.RibbonLow}, X: a.X, Column: a.W / days, First: first, Days: days}
	l.Lanes = scene.Area{Y: y + 34, W: a.Right(), H: laneTall} // a lane begins at the window's side
	d.inert(s, l, func(q *sheet) {
		q.rect(scene.Area{X: a.X, Y: y, W: a.W, H: 34 + laneTall}, scene.Panel)
		q.laneDays(l.Ribbon, y, 34+laneTall)
		q.clipped(scene.Area{X: a.X, Y: y, W: a.W, H: 34 + laneTall}, scene.Tag{}, func() {
			q.lane(b, l.Lanes)
			for _, write := range q.names {
				write()
			}
		})
		q.add(scene.Rect{Area: scene.Area{X: a.X, Y: y, W: a.W, H: 34 + laneTall}, Stroke: stroke(scene.Rule, 1)})
	})
	d.clock(scene.Area{X: a.X, Y: l.Lanes.Bottom() + 18, W: a.W, H: a.Bottom() - l.Lanes.Bottom() - 18}, zone)
}

const laneTall = 96.0

// laneDays draws the days above a lane: today, months, Mondays. No line crosses the
// row of dates, where days are narrower than their numbers.
func (p *sheet) laneDays(r state.Ribbon, y, high float64) {
	const dates, below = 18.0, 34.0
	today := scene.Area{X: r.Left(p.s.Today()), Y: y + below, W: r.Column, H: high - below}
	p.rect(today, scene.Sunk)
	for day := r.First; day <= r.Last(); day++ {
		_, month, number := day.Date()
		x := r.Left(day)
		if number == 1 {
			p.rule(x, y, x, y+dates, scene.Rule)
			p.rule(x, y+below, x, y+high, scene.Rule)
		}
		if (number == 1 || day == r.First && number <= 24) && r.Last().Sub(day) > 6 {
			p.text(x+4, y+14, month.String(), ink(12).semi())
		}
		if half := 8.0; day.Weekday() == time.Monday && r.At(day)-half >= r.Left(r.First) {
			p.centre(r.At(day), y+29, fmt.Sprint(number), ink2(12))
		}
	}
}

// clock writes the steps of a batch that a keeper plans by, the hard hour so
// that it is not missed. Where not all have room they scroll, each of them whole.
func (d *stepDraw) clock(a scene.Area, zone *time.Location) {
	d.text(a.X, a.Y+18, "What follows from it", ink(16).semi())
	body := scene.Area{X: a.X, Y: a.Y + 28, W: a.W, H: a.H - 28 - 6}
	steps := d.s.FirstClock()
	tops := []float64{0}
	for _, c := range steps {
		_, words := d.clockWords(c, a.W)
		tops = append(tops, tops[len(tops)-1]+state.ClockRow+scene.LineHeight(14)*float64(len(words)-1))
	}
	all := tops[len(steps)]
	from := 0
	for up := min(d.s.Scroll[state.ClockPlace], all-body.H); from < len(steps)-1 && tops[from] < up; {
		from++
	}
	for i := from; i < len(steps) && tops[i+1]-tops[from] <= body.H; i++ {
		d.clockRow(steps[i], zone, scene.Area{X: a.X, Y: body.Y + tops[i] - tops[from], W: a.W, H: tops[i+1] - tops[i]})
	}
	body.W += 20
	d.scrollBar(body, tops[from], all)
}

// clockDays is how wide the days of a clock are, dp.
const clockDays = 158.0

// clockWords are what a step of a clock says, in lines, and how that is written.
func (d *stepDraw) clockWords(c state.ClockStep, w float64) (font, []string) {
	f, word := ink(14), state.WithinSentence(c.Word)
	if c.Hard {
		f, word = f.semi().as(scene.Act), "cells out of the builder, before the first virgin walks"
	}
	return f, scene.Wrap(d.measure, word, f.size, f.weight, w-clockDays)
}

// clockRow writes a step of a clock.
func (d *stepDraw) clockRow(c state.ClockStep, zone *time.Location, a scene.Area) {
	at := calendar.DayOf(c.At, zone).Short()
	if c.By {
		at = "by " + calendar.Instantly(c.At).In(zone)
	}
	f, words := d.clockWords(c, a.W)
	y := a.Y + state.ClockRow
	d.fit(a.X, y-9, at, f, a.X+clockDays-8)
	for i, line := range words {
		d.text(a.X+clockDays, y-9+float64(i)*scene.LineHeight(14), line, f)
	}
	d.rule(a.X, a.Bottom(), a.Right(), a.Bottom(), scene.Hair)
}
