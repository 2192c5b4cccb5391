package view

import (
	"fmt"
	"strings"
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
	d.clock(scene.Area{X: a.X, Y: l.Lanes.Bottom() + 18, W: a.W, H: a.Bottom() - l.Lanes.Bottom() - 18}, r.ClockOf(b), zone)
}

const laneTall = 96.0

// laneDays draws the days above a lane: months, Mondays, today.
func (p *sheet) laneDays(r state.Ribbon, y, high float64) {
	for day := r.First; day <= r.Last(); day++ {
		_, month, number := day.Date()
		x := r.Left(day)
		if number == 1 || day == r.First {
			if number == 1 {
				p.rule(x, y, x, y+high, scene.Rule)
			}
			if r.Last().Sub(day) > 6 && !(day == r.First && number > 24) {
				p.text(x+4, y+14, month.String(), ink(12).semi())
			}
		}
		if day.Weekday() == time.Monday {
			p.centre(r.At(day), y+29, fmt.Sprint(number), ink2(12))
		}
		if day == p.s.Today() {
			p.rect(scene.Area{X: x, Y: y + 18, W: r.Column, H: high - 18}, scene.Sunk)
		}
	}
}

// clock writes the steps of a batch that a keeper plans by, the hard hour so
// that it is not missed.
func (d *stepDraw) clock(a scene.Area, steps []state.ClockStep, zone *time.Location) {
	const row = 28.0
	y := a.Y + 18
	d.text(a.X, y, "What follows from it", ink(16).semi())
	y += 10
	for _, c := range steps {
		if c.Now || c.Word == "Graft" {
			continue
		}
		if y += row; y > a.Bottom()-6 {
			break
		}
		when, word := ink(14), strings.ToLower(c.Word[:1])+c.Word[1:]
		if c.Hard {
			when = when.semi().as(scene.Act)
			word = "cells out of the builder, before the first virgin walks"
		}
		at := calendar.DayOf(c.At, zone).Short()
		if c.By {
			at = "by " + calendar.Instantly(c.At).In(zone)
		}
		d.fit(a.X, y, at, when, a.X+150)
		y = d.wrap(a.X+158, y, word, when, a.Right()-a.X-158, 2) - scene.LineHeight(14)
		d.rule(a.X, y+9, a.Right(), y+9, scene.Hair)
	}
}
