package view

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/ui/scene"
)

// marks draws now, the hour of the first virgin, and the keeper's next free one. The
// words of the earlier stand higher, so that no line runs through those of another.
func (d lateDraw) marks(g hourPlot) {
	d.add(scene.Line{From: at(g.X, g.Y-38), To: at(g.X, g.Bottom()), Stroke: stroke(scene.Ink, 2)})
	d.right(g.X-6, g.Y-28, "now", ink(12).semi())
	tone, _ := d.alarm()
	marks := []hourMark{
		{d.First, tone, []string{"a virgin out, even chance, ", "a virgin, even chance, ", ""}},
		{d.Next, scene.Ink2, []string{"somebody is free, ", ""}},
	}
	marks = slices.DeleteFunc(marks, func(m hourMark) bool { return !m.at.After(d.Now) || m.at.Sub(d.Now).Hours() >= g.hours })
	slices.SortFunc(marks, func(a, b hourMark) int { return a.at.Compare(b.at) })
	for i, m := range marks {
		x, y := g.x(m.at.Sub(d.Now).Hours()), g.Y-28+17*float64(i)
		d.add(scene.Line{From: at(x, y-10), To: at(x, g.Bottom()), Stroke: stroke(m.role, 2)})
		d.widest(x+6, y, g.Right()+lateNames-20, ink(12).as(m.role), m.words(d.zone)...)
	}
}

// hourMark is an hour that is marked in the plot, in more words and in fewer.
type hourMark struct {
	at   time.Time
	role scene.Role
	said []string
}

func (m hourMark) words(zone *time.Location) (all []string) {
	for _, s := range m.said {
		all = append(all, s+weekdayHour(m.at, zone))
	}
	return all
}

// curveNames writes the letters and short names of the curves in the order in which
// they end, as near to their ends as the others allow, each with a line to its end.
func (d lateDraw) curveNames(g hourPlot, to float64) {
	const lead = 20.0
	order, places := d.curvePlaces(g)
	for at, i := range order {
		d.curveName(g, i, g.Right()+lead, places[at], to)
	}
}

// curvePlaces are the curves by the height of their ends, and where their names stand.
func (d lateDraw) curvePlaces(g hourPlot) (order []int, places []float64) {
	const apart = 19.0
	for i := range d.Curves {
		order = append(order, i)
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(d.curveEnd(g, a), d.curveEnd(g, b)) })
	for at, i := range order {
		y := d.curveEnd(g, i)
		if at > 0 {
			y = max(y, places[at-1]+apart)
		}
		places = append(places, y)
	}
	low := g.Bottom()
	for at := len(places) - 1; at >= 0; at-- {
		places[at] = min(places[at], low)
		low = places[at] - apart
	}
	return order, places
}

// curveName writes the name of a curve.
func (d lateDraw) curveName(g hourPlot, i int, x, y, to float64) {
	f := ink(14).bold()
	if d.Curves[i].Way == bee.Wait {
		tone, _ := d.alarm()
		f = f.as(tone)
	}
	line := d.curveStroke(i, d.Curves[i])
	line.Width = min(line.Width, 1.2)
	d.add(scene.Line{From: at(g.Right()+2, d.curveEnd(g, i)), To: at(x-3, y), Stroke: line})
	d.text(x, y+5, letter(i), f)
	d.fit(x+17, y+5, d.shortWay(d.Ways[i]), ink(13), to-4)
}

// curveEnd is how high a curve ends.
func (d lateDraw) curveEnd(g hourPlot, i int) float64 {
	return g.y(d.Curves[i].Kept[d.Hours]) + d.beside(g, i)
}

// shortWay is a way out in few words.
func (d lateDraw) shortWay(w bee.WayOut) string {
	switch w.Way {
	case bee.PlaceAndCage:
		return fmt.Sprintf("place %d, cage %d", w.Placed, w.Caged)
	case bee.Place:
		return fmt.Sprintf("place %d, leave %d", w.Placed, w.Left)
	case bee.Cage:
		return "cage all"
	case bee.Cool:
		return "cooler, and wait"
	case bee.HandOn:
		return "hand on"
	}
	return "nothing at all"
}

// whySoon says why the first virgin comes so soon.
func (d lateDraw) whySoon(a scene.Area) {
	d.rule(a.X, a.Y, a.X, a.Bottom(), scene.Hair)
	x, w, y := a.X+20, a.W-40, a.Y+12
	b := d.s.Reading().View.Batch(d.Batch)
	d.text(x, y, "Why so soon", ink(14).semi())
	y += 22
	why := []string{
		fmt.Sprintf("Grafted %s. Half are out by %s.", hour(b.At.Instant, d.zone), hour(d.Middle, d.zone)),
		sentence(d.HardMeans()) + ".",
		fmt.Sprintf("Pale band: if the clock of the whole batch is %s h off.", figure(d.Spread)),
	}
	if before := d.Middle.Sub(d.First).Hours(); d.Cells > 1 && before > 0 {
		why = append(why, fmt.Sprintf("The first comes some %.0f h before the middle. She destroys the others in her box within hours.", before))
	}
	for _, said := range why {
		lines := len(scene.Wrap(d.measure, d.say(said), 13.5, scene.Regular, w))
		if y+float64(lines-1)*scene.LineHeight(13.5) > a.Bottom() {
			return // low rooms have the first of them, whole
		}
		y = d.wrap(x, y, said, ink(13.5), w, lines) + 6
	}
}
