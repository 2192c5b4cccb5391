package view

import (
	"fmt"
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// evidence draws what is known of the batch: flying hours since her queens were
// old enough, what they most probably are, the links so far, the incubator.
func (d batchDraw) evidence(a scene.Area) {
	d.wholeLines(a, func() { d.evidenceIn(a) })
}

func (d batchDraw) evidenceIn(a scene.Area) {
	x, w, y := a.X+state.Edge, a.W-2*state.Edge, a.Y+28
	d.text(x, y, "Evidence", ink(14).semi())
	y = d.flying(x, y+22, w)
	y = d.holds(x, y, w)
	y = d.links(x, y, w)
	if rows := int((a.Bottom() - y - 70) / 20); rows >= 1 {
		d.incubator(x, y, w, rows)
	} else {
		d.addReading(x+w, a.Y+28, "add an incubator reading")
	}
}

// addReading leads to the form of an incubator's reading.
func (d batchDraw) addReading(to, y float64, word string) {
	if c, _ := state.CommandNamed("read incubator"); c.Reason(d.s) == "" {
		d.link(to-d.width(word, ink(13)), y, word, ink(13).as(scene.Pen), "read incubator", false)
	}
}

// section begins a part of the evidence.
func (d batchDraw) section(x, y, w float64, title, right string) float64 {
	d.whole(scene.Area{X: x, Y: y, W: w, H: 54}) // with the line below it
	d.rule(x, y, x+w, y, scene.Hair)
	d.text(x, y+24, title, ink(14).semi())
	d.right(x+w, y+24, right, ink2(13))
	return y + 36
}

// lowBatch is the height of the room, dp, below which the flying hours are drawn low.
const lowBatch = 640.0

// flying draws the flying hours of the days since the queens emerged.
func (d batchDraw) flying(x, y, w float64) float64 {
	const days = 17
	high := 52.0
	if d.l.Main.H < lowBatch {
		high = 30
	}
	emerged := d.r.DayOf(d.r.Course.Emerges(d.b.Batch))
	old := emerged + calendar.Day(math.Ceil(d.r.Numbers().Duration(practice.FirstMatingFlightFrom).Hours()/24))
	since := []string{"Flying hours a day since they emerged"}
	if emerges := d.r.Course.Emerges(d.b.Batch); emerges.After(d.r.View.On()) {
		day := d.r.DayOf(emerges).Short()
		since = []string{"Flying hours a day; they emerge about " + day, "Flying hours; they emerge " + day}
	}
	d.widest(x, y, x+w, ink2(13), append(since, "Flying hours a day")...)
	base, k := y+high+24, w/days
	c := cardDraw{sheet: d.sheet, r: d.r}
	yard := d.yard()
	sum, fit := 0.0, 0
	for i := range days {
		day := emerged + calendar.Day(i)
		f := d.r.FlightOn(yard, day)
		c.flight(yard, day, old, scene.Area{X: x + float64(i)*k, Y: base, W: k - 3})
		if i%2 == 0 {
			_, _, n := day.Date()
			d.centre(x+float64(i)*k+k/2-1.5, base+16, strconv.Itoa(n), ink2(12))
		}
		if day >= old && day <= d.r.Day && !f.Usual() {
			sum += f.Hours
			if f.Hours > 0 {
				fit++
			}
		}
	}
	d.rule(x, base, x+w, base, scene.Ink2)
	if at := x + float64(old-emerged)*k; at < x+w {
		d.rule(at-1, base-high-8, at-1, base, scene.Ink3)
		d.fit(at+3, base-high, "old enough", ink2(12), x+w)
	}
	said := "none of them was old enough to fly yet"
	switch {
	case d.r.Course.Emerges(d.b.Batch).After(d.r.View.On()):
		said = "none has emerged yet"
	case d.r.Day >= old:
		said = fmt.Sprintf("%.0f h on %s since they were old enough", sum, plural(fit, "day", "days"))
	}
	d.fit(x, base+38, said, ink(13), x+w)
	return base + 52
}

// yard is where most of its nucs stand.
func (d batchDraw) yard() (most book.YardID) {
	count := map[book.YardID]int{}
	for _, n := range d.r.NucsOf(d.b.Batch) {
		count[n.Yard]++
		if count[n.Yard] > count[most] {
			most = n.Yard
		}
	}
	if most.IsZero() {
		return d.r.View.HomeYard().Yard
	}
	return most
}

// holds draws what its nucs hold by the calendar, as counted and expected: a bar
// of its conditions.
func (d batchDraw) holds(x, y, w float64) float64 {
	nucs := d.r.NucsOf(d.b.Batch)
	if len(nucs) == 0 {
		return y
	}
	y = d.section(x, y, w, "Most probably", plural(len(nucs), "nuc", "nucs")+", by the calendar")
	count := map[book.Condition]int{}
	for _, n := range nucs {
		count[n.Presumed.Condition]++
	}
	at := x
	for _, c := range book.Conditions() {
		if n := count[c]; n > 0 {
			wide := w * float64(n) / float64(len(nucs))
			look := scene.Condition(c)
			d.add(scene.Rect{Area: scene.Area{X: at, Y: y, W: wide, H: 22}, Fill: look.Fill(), Stroke: stroke(scene.Ink, 1)})
			at += wide
		}
	}
	y += 42
	for _, c := range book.Conditions() {
		if n := count[c]; n > 0 {
			d.add(scene.Rect{Area: scene.Area{X: x + 1, Y: y - 12, W: 15, H: 14}, Fill: scene.Condition(c).Fill(), Stroke: stroke(scene.Ink, 1)})
			d.fit(x+28, y, c.String(), ink(14), x+w-40)
			d.right(x+w, y, thousands(n), ink(14).semi())
			y += 22
		}
	}
	return y - 6
}

// links draws what came through of what went in, beside the usual rate.
func (d batchDraw) links(x, y, w float64) float64 {
	links := d.r.LinksOf(d.b)
	if len(links) == 0 {
		return y
	}
	y = d.section(x, y, w, "Links so far", "this, usual")
	for _, l := range links {
		usual := d.r.Numbers().Get(l.Usual)
		bar := scene.Area{X: x + 118, Y: y + 10, W: max(40, w-118-92)}
		d.fit(x, y+15, l.Word, ink(14), bar.X-8)
		d.rule(bar.X, bar.Y, bar.Right(), bar.Y, scene.Rule)
		d.rect(scene.Area{X: bar.X + bar.W*usual - 1.5, Y: bar.Y - 8, W: 3, H: 16}, scene.Ink3)
		d.add(scene.Circle{At: at(bar.X+bar.W*l.Share(), bar.Y), Radius: 4.6, Fill: scene.Panel, Stroke: stroke(scene.Ink, 2)})
		d.right(x+w, y+15, fmt.Sprintf("%.0f, %.0f %%", 100*l.Share(), 100*usual), ink(13))
		d.hit(scene.Area{X: x, Y: y, W: w, H: 22}, scene.Ref{Kind: "note"}, fmt.Sprintf("%d of %d; usual: %s", l.N, l.Of, practice.Of(l.Usual).Source))
		y += 24
	}
	return y + 6
}

// incubator draws the last readings of the incubator, so many at most, and gives
// where they end.
func (d batchDraw) incubator(x, y, w float64, rows int) float64 {
	top := y
	y = d.section(x, y, w, "Incubator log", "")
	d.addReading(x+w, top+24, "add a reading")
	if len(d.b.Log) == 0 {
		return d.wrap(x, y+12, "nothing was read; the clock runs as in a brood nest", ink2(13), w, 2)
	}
	for _, r := range d.b.Log[max(0, len(d.b.Log)-rows):] {
		d.fit(x, y+12, hour(r.At, d.r.View.Zone()), ink2(13), x+w-80)
		d.right(x+w, y+12, fmt.Sprintf("%.1f °C", r.Celsius), ink(13).semi())
		y += 20
	}
	return y
}
