package view

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// The hours of a day that the picture of a week shows.
const weekFrom, weekTill = 6, 22

// pictureWeek draws the week as bars: when each of the people is free.
func (d *stepDraw) pictureWeek(a scene.Area) {
	var people []*book.Person
	for p := range d.made().Present().View.People() {
		people = append(people, p)
	}
	y := d.pictureTitle(a, "A week", d.weekSays(people))
	const names = 44.0
	grid := scene.Area{X: a.X + names, Y: y + 26, W: a.W - names, H: min(a.Bottom()-y-26-40-24*float64(len(people)), 480)}
	hour := grid.H / (weekTill - weekFrom)
	wide := grid.W / 7
	days := make([]scene.Area, 7)
	d.rect(grid, scene.Panel)
	for i := range days {
		days[i] = scene.Area{X: grid.X + float64(i)*wide, Y: grid.Y, W: wide, H: grid.H}
		if day := d.weekday(i); day == time.Saturday || day == time.Sunday {
			d.rect(days[i], scene.Ground)
		}
	}
	for h := weekFrom; h <= weekTill; h += 2 {
		at := grid.Y + float64(h-weekFrom)*hour
		d.rule(grid.X, at, grid.Right(), at, scene.Hair)
		d.right(grid.X-8, at+4, fmt.Sprintf("%d:00", h), ink2(12))
	}
	d.add(scene.Rect{Area: grid, Stroke: stroke(scene.Rule, 1)})
	for i, column := range days {
		day := d.weekday(i)
		d.rule(column.X, grid.Y, column.X, grid.Bottom(), scene.Rule)
		d.centre(column.Centre().X, grid.Y-9, day.String()[:3], ink(13).medium())
		d.freeOn(column, people, day, hour)
	}
	d.weekNames(scene.Area{X: grid.X, Y: grid.Bottom() + 28, W: grid.W}, people)
}

// weekday is the day in a column of the week.
func (d *stepDraw) weekday(i int) time.Weekday { return (d.s.Week.Day() + time.Weekday(i)) % 7 }

// freeOn draws the free hours of a day of the week, a bar for each person.
func (d *stepDraw) freeOn(column scene.Area, people []*book.Person, day time.Weekday, hour float64) {
	wide := (column.W - 10) / float64(max(1, len(people)))
	for i, p := range people {
		free := p.Free[day]
		from, until := max(float64(free.From)/60, weekFrom), min(float64(free.Until)/60, weekTill)
		if until <= from {
			continue
		}
		bar := scene.Rect{Area: scene.Area{
			X: column.X + 5 + float64(i)*wide, Y: column.Y + (from-weekFrom)*hour, W: wide - 2, H: (until - from) * hour,
		}, Radius: 3}
		d.add(weekBar(bar, i))
		if bar.W >= 28 && bar.H >= 22 {
			d.centre(bar.Centre().X, bar.Centre().Y+4.5, fmt.Sprintf("%g h", float64(free.Until-free.From)/60), weekFont(i))
		}
	}
}

// weekBar gives a bar the look of the person of a number: the looks differ
// without colour.
func weekBar(r scene.Rect, i int) scene.Rect {
	switch i {
	case 0:
		r.Fill = scene.Ink2
	case 1:
		r.Fill, r.Stroke = scene.Off, stroke(scene.Ink2, 1)
	case 2:
		r.Fill, r.Stroke = scene.Panel, stroke(scene.Ink, 2)
	default:
		r.Fill, r.Stroke = scene.Panel, stroke(scene.Ink2, 1)
		r.Hatch = scene.Hatch{Role: scene.Ink3, Pitch: 5, Weight: 1.3}
	}
	return r
}

// weekFont is the hours on such a bar.
func weekFont(i int) font {
	if i == 0 {
		return ink(13).medium().as(scene.Ground)
	}
	return ink(13).medium()
}

// weekNames writes whose bars they are.
func (d *stepDraw) weekNames(a scene.Area, people []*book.Person) {
	for i, p := range people {
		y := a.Y + float64(i)*24
		d.add(weekBar(scene.Rect{Area: scene.Area{X: a.X, Y: y - 13, W: 22, H: 16}, Radius: 3}, i))
		said := p.Name
		if i == 0 {
			said += ", who writes"
		}
		if minutes := weekMinutes(p); minutes > 0 {
			said += fmt.Sprintf(", %g h a week", float64(minutes)/60)
		} else {
			said += ", hours not told"
		}
		d.fit(a.X+32, y, said, ink(14), a.Right())
	}
}

func weekMinutes(p *book.Person) (sum int) {
	for _, f := range p.Free {
		sum += max(0, f.Until-f.From)
	}
	return sum
}

// weekSays is what the hours of a week are for.
func (d *stepDraw) weekSays(people []*book.Person) string {
	sum := 0
	for _, p := range people {
		sum += weekMinutes(p)
	}
	if sum == 0 {
		return "While no hours are told, every day counts as free."
	}
	return fmt.Sprintf("%g h in all. Days on which nobody is free are hatched above the rooms.", float64(sum)/60)
}
