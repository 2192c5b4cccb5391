package paper

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of the small map, mm.
const (
	mapMost  = 60.0
	mapShape = 0.73 // its height for its width
)

// head draws the first page down to the table: title, hard deadlines, what
// waits, kit, and the map of the yard with the walk.
func (d dayRoute) head(f *flow) {
	maps := d.maps()
	to, top := f.right(), f.y
	wide := min(mapMost, 0.36*(f.right()-f.left()))
	one := len(maps) == 1
	if one {
		to -= wide + 4
	}
	if where := d.where(); where != "" {
		f.dated(where, longDay(d.Day), to)
	} else {
		f.heading(f.title, to)
	}
	d.summary(f, to)
	for _, h := range d.plan.Hard {
		f.hard(d.Reading, h, to)
	}
	d.waits(f, to)
	d.kit(f, to)
	switch {
	case one:
		a := scene.Area{X: f.right() - wide, Y: top + 0.5, W: wide, H: wide * mapShape}
		f.yardMap(d, maps[0], a)
		f.y = max(f.y, a.Bottom()+0.6)
	case len(maps) > 0:
		d.mapStrip(f, maps)
	}
	f.y += 1
}

// summary is one line: how much work, and who did it.
func (d dayRoute) summary(f *flow, to float64) {
	tasks, work := 0, 0.0
	for _, s := range d.stops {
		work += s.Drive
		for _, t := range s.Tasks {
			tasks++
			work += t.Minutes
		}
	}
	said := "Route sheet"
	if tasks > 0 {
		said += ": " + plural(tasks, "task", "tasks")
		if len(d.stops) == len(d.plan.Stops) {
			work = d.plan.Minutes // the way home included
		}
		said += ", " + minutes(work)
		if !d.plan.Home.IsZero() && len(d.stops) == len(d.plan.Stops) {
			said += ", home at " + d.plan.Home.In(f.zone).Format("15:04")
		}
	}
	if all := d.yards(); len(all) > 1 {
		var names []string
		for _, y := range all {
			names = append(names, d.View.Yard(y).Name)
		}
		said += ". " + strings.Join(names, ", ")
	}
	said += "."
	if d.plan.Taken {
		said += " " + rules.AsPlanned
	}
	y := f.y + 3.6
	lines := f.wrap(said, soft(8.6), to-f.left(), 3)
	last := f.lines(f.left(), y, lines, soft(8.6)) - soft(8.6).leading()
	x := f.left() + f.width(lines[len(lines)-1], soft(8.6)) + 3
	if x+26 > to {
		x, last = f.left(), last+5
	}
	f.writeOn(f.text(x, last, "By:", soft(8.6))+1, last, min(30, to-x-8))
	f.y = last + 2.2
}

// hard draws a hard deadline.
func (f *flow) hard(r *state.Reading, h rules.Finding, to float64) {
	word := "By "
	if h.By.Before(r.View.On()) {
		word = "Past "
	}
	lines := f.wrap(word+f.hour(h.By)+":  "+h.What, bold(10.5), to-f.left()-6, 2)
	do := f.wrap(cmp.Or(h.Do, h.Why), plain(8.6), to-f.left()-6, 2)
	a := f.row(3.4 + bold(10.5).leading()*float64(len(lines)) + plain(8.6).leading()*float64(len(do)))
	a.Y, a.H, a.W = a.Y+0.6, a.H-1.4, to-f.left()
	f.barred(a)
	y := f.lines(a.X+4.6, a.Y+4.2, lines, bold(10.5))
	f.lines(a.X+4.6, y-0.5, do, plain(8.6))
}

// waits says what is no work but to be known: what stands after a treatment.
func (d dayRoute) waits(f *flow, to float64) {
	for _, t := range d.plan.Waits {
		if !d.yard.IsZero() && !slices.ContainsFunc(t.Findings, func(h rules.Finding) bool { return h.Yard == d.yard }) {
			continue
		}
		names := nameRuns(d.Reading, t)
		said := strings.TrimSpace(names + " " + t.Title)
		if t.Why != "" {
			said += ": " + t.Why
		}
		f.remark(said, plain(8.6), to)
	}
}

// packed says what to pack, and how much.
func packed(k rules.KitLine) string {
	return strings.TrimSpace(figure(k.Amount) + " " + strings.TrimSpace(k.Unit+" "+k.Goods))
}

// kit draws what to pack for the day.
func (d dayRoute) kit(f *flow, to float64) {
	title := "Kit"
	if len(d.stops) < len(d.plan.Stops) {
		title = "Kit of the whole day"
	}
	f.kit(title, d.plan.Kit, to)
}

// kit draws what to pack, each with a box to tick, in columns; nothing where there is none.
func (f *flow) kit(title string, all []rules.KitLine, to float64) {
	if len(all) == 0 {
		return
	}
	f.text(f.left(), f.y+4.6, title, bold(9.8))
	f.y += 6.4
	const box, gap = 4.6, 1.5 // mm: before what is said, and after it
	widest := 38 - box - gap
	for _, k := range all {
		widest = max(widest, f.width(packed(k), plain(9)))
	}
	per := max(1, int((to-f.left())/(box+widest+gap)))
	pitch := (to - f.left()) / float64(per)
	for i, k := range all {
		if i%per == 0 && i > 0 {
			f.y += 5.4
		}
		x := f.left() + float64(i%per)*pitch
		f.tick(x, f.y, 3.3)
		end := f.fit(x+box, f.y+2.8, packed(k), plain(9), x+pitch-gap)
		if note := fmt.Sprint(k.Note); note != "" && end+2+f.width(note, soft(7.6)) < x+pitch-1.5 {
			f.text(end+1.4, f.y+2.8, note, soft(7.6))
		}
	}
	f.y += 5
}
