package view

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// picture draws what comes of a step, beside its fields.
func (d *stepDraw) picture(a scene.Area) {
	in := scene.Area{X: a.X + min(56, a.W*0.06), Y: a.Y, W: a.W - 2*min(56, a.W*0.06), H: a.H}
	switch d.s.Start.Step {
	case state.YardStep:
		d.pictureYard(in)
	case state.BoxStep:
		d.pictureBoxes(in)
	case state.PeopleStep:
		d.pictureWeek(in)
	case state.BatchStep:
		d.pictureBatch(in)
	}
}

// pictureTitle says what a picture shows, and gives where it begins.
func (d *stepDraw) pictureTitle(a scene.Area, title, text string) float64 {
	d.fit(a.X, a.Y+48, title, ink(20).semi(), a.Right())
	return d.wrap(a.X, a.Y+74, text, ink2(14), a.W, 2) + 2
}

// made is the window as it will be with the new book.
func (d *stepDraw) made() state.State {
	return state.State{Book: d.f.Book, Now: d.s.Now, Width: d.s.Width, Height: d.s.Height, Prefs: d.s.Prefs, Room: state.Yard}
}

// pictureYard draws the globe as a sheet of degrees with the yard on it, and
// what the book will know of the yard.
func (d *stepDraw) pictureYard(a scene.Area) {
	s := d.made()
	yard := s.Present().View.HomeYard()
	y := d.pictureTitle(a, yard.Name, "Where it lies, and which time it has")
	sheet := scene.Area{X: a.X, Y: y, W: min(a.W, (a.H-250)*2)}
	sheet.H = sheet.W / 2
	d.degrees(sheet, yard)
	y = sheet.Bottom() + 40
	said := func(what, is string) {
		if y < a.Bottom()-8 {
			d.text(a.X, y, what, ink2(14))
			d.fit(a.X+110, y, is, ink(15).medium(), a.Right())
		}
		y += 30
	}
	said("the time there", d.s.Now.In(yard.Zone).Format("15:04")+", "+calendar.DayOf(d.s.Now, yard.Zone).Short())
	if yard.Lat == 0 && yard.Lon == 0 {
		said("the place", "left out: no shade on the map; it can be said later")
	} else {
		said("the place", degreesWords(yard.Lat, "N", "S")+", "+degreesWords(yard.Lon, "E", "W"))
	}
	file, _ := state.FileName(d.f.Path)
	said("the book", file)
}

func degreesWords(v float64, plus, minus string) string {
	if v < 0 {
		v, plus = -v, minus
	}
	return fmt.Sprintf("%.2f° %s", v, plus)
}

// degrees draws a sheet of all degrees, 30 apart, with a yard where it lies.
func (d *stepDraw) degrees(a scene.Area, yard *book.Yard) {
	d.add(scene.Rect{Area: a, Fill: scene.Map, Stroke: stroke(scene.Ink2, 1)})
	x := func(lon float64) float64 { return a.X + a.W*(lon+180)/360 }
	y := func(lat float64) float64 { return a.Y + a.H*(90-lat)/180 }
	for lon := -150.0; lon < 180; lon += 30 {
		d.rule(x(lon), a.Y, x(lon), a.Bottom(), scene.Rule)
	}
	for lat := -60.0; lat < 90; lat += 30 {
		d.rule(a.X, y(lat), a.Right(), y(lat), scene.Rule)
	}
	d.rule(a.X, y(0), a.Right(), y(0), scene.Ink2)
	d.text(a.X+6, y(0)-6, "equator", ink2(12))
	d.text(a.X+6, a.Y+16, "N", ink(12).semi())
	if yard.Lat == 0 && yard.Lon == 0 {
		return
	}
	c := at(x(yard.Lon), y(yard.Lat))
	d.rule(c.X, a.Y, c.X, a.Bottom(), scene.Ink)
	d.rule(a.X, c.Y, a.Right(), c.Y, scene.Ink)
	d.add(scene.Circle{At: c, Radius: 6, Fill: scene.Ink, Stroke: stroke(scene.Map, 2)})
}

// pictureBoxes draws the map of the yard as its boxes will stand there.
func (d *stepDraw) pictureBoxes(a scene.Area) {
	s := d.made()
	r := s.Present()
	stands := 0
	for range r.View.Stands(r.View.HomeYard().YardDescribed.Yard) {
		stands++
	}
	title := plural(len(r.Nucs), "nuc", "nucs") + " on " + plural(stands, "stand", "stands")
	if len(r.Nucs) == 0 {
		title = "The map of the yard"
	}
	y := d.pictureTitle(a, title, "North is up, every entrance is a notch. Stands are put side by side here; later you place them as they are.")
	l := d.l
	l.Turns, l.Main = scene.Area{}, scene.Area{}
	l.Map = scene.Area{X: a.X - state.MapSide, Y: y - 4 - state.MapHead, W: a.W + 2*state.MapSide, H: a.Bottom() - y + state.MapHead + 24}
	d.inert(s, l, func(q *sheet) {
		home := r.View.HomeYard()
		yard := home.YardDescribed.Yard
		g := ground{sheet: q, frame: l.MapFrame(), yard: home, r: r, stand: r.Standing(yard)}
		g.camera = scene.Fit(r.Sight(yard), g.frame)
		const air, least = 1.2, 0.45
		if row := float64(mostPlaces(r)) * mapLid * air; row > g.frame.W {
			g.camera = g.camera.Zoom(g.frame.Centre(), max(least, g.frame.W/row)) // smaller lids
		}
		q.clipped(g.frame, scene.Tag{}, g.draw)
		q.add(scene.Rect{Area: g.frame, Stroke: stroke(scene.Ink2, 1)})
		g.margin(l.Map)
	})
}

// mostPlaces is how many places the longest stand of the home yard has.
func mostPlaces(r *state.Reading) (most int) {
	for s := range r.View.Stands(r.View.HomeYard().YardDescribed.Yard) {
		most = max(most, s.Places)
	}
	return most
}

// inert draws a part of another state's window that only is to be looked at: no
// part of it can be pointed at.
func (d *stepDraw) inert(s state.State, l state.Layout, draw func(q *sheet)) {
	q := newSheet(s, d.measure)
	q.l = l
	draw(q)
	d.add(untagged(q.marks)...)
}

// untagged are marks that stand for nothing.
func untagged(marks []scene.Mark) []scene.Mark {
	all := make([]scene.Mark, len(marks))
	for i, m := range marks {
		switch m := m.(type) {
		case scene.Rect:
			m.Tag = scene.Tag{}
			all[i] = m
		case scene.Circle:
			m.Tag = scene.Tag{}
			all[i] = m
		case scene.Poly:
			m.Tag = scene.Tag{}
			all[i] = m
		case scene.Line:
			m.Tag = scene.Tag{}
			all[i] = m
		case scene.Lid:
			m.Tag = scene.Tag{}
			all[i] = m
		case scene.Icon:
			m.Tag = scene.Tag{}
			all[i] = m
		case scene.Pane:
			m.Tag, m.Marks = scene.Tag{}, untagged(m.Marks)
			all[i] = m
		default:
			all[i] = m
		}
	}
	return all
}
