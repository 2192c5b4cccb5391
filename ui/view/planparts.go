package view

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// trialsTold is how many batches stand for all of them.
const trialsTold = 100

// trials draws a hundred such batches as dots, each where its number of queens is, and
// what may be promised, under a head.
func (d *planDraw) trials(a scene.Area, head string) {
	y := d.partHead(a, head, "with batch luck: starter, weather, drones")
	x, w := a.X+state.Edge, a.W-2*state.Edge
	foot := a.Bottom() - promisesTall
	there := max(10, d.all.Shown.Most())
	most := max(there, min(d.all.Queens, there*5/4))
	scale := w / float64(most+1)
	bin := int(math.Ceil(9 / scale))
	wanted := x + min(w, scale*float64(d.all.Queens))
	d.rect(scene.Area{X: wanted, Y: y, W: x + w - wanted, H: foot - y - 22}, scene.Sunk)
	high := map[int]int{} // by bins, of which one begins at the wish
	tallest := 1
	all := d.all.Shown.Trials(trialsTold)
	binOf := func(n int) int { return int(math.Floor(float64(n-d.all.Queens) / float64(bin))) }
	for _, n := range all {
		high[binOf(n)]++
		tallest = max(tallest, high[binOf(n)])
	}
	middle := func(k int) float64 { return x + (float64(d.all.Queens+k*bin)+float64(bin)/2)*scale }
	pitch := min(9, (foot-y-44)/float64(tallest))
	at0 := map[int]int{}
	for _, n := range all {
		k := binOf(n)
		role := scene.Bar
		if n >= d.all.Queens {
			role = scene.Good
		}
		if pitch < 3 && at0[k] > 0 && int(float64(at0[k])*pitch/3) == int(float64(at0[k]-1)*pitch/3) {
			at0[k]++
			continue // more than can be told apart
		}
		d.add(scene.Circle{At: at(middle(k), foot-28-pitch*float64(at0[k])), Radius: min(4, max(1.3, pitch*0.45)), Fill: role})
		at0[k]++
	}
	d.rule(x, foot-22, x+w, foot-22, scene.Ink3)
	d.add(scene.Line{From: at(wanted, y), To: at(wanted, foot-22), Stroke: stroke(scene.Pen, 1.6)})
	d.sureWords(x, w, y, wanted)
	d.failing(high, binOf(0), middle, foot-28, pitch, wanted)
	for n := 0; n <= most; n += tickOf(most) {
		d.centre(x+scale*float64(n), foot-8, fmt.Sprint(n), ink2(12))
	}
	d.promises(x, w, foot)
}

// failing says beside the dots at none how many grafts fail, low where no dots are, and
// not at all where there are some up to the head.
func (d *planDraw) failing(high map[int]int, none int, middle func(int) float64, y, pitch, wanted float64) {
	failed, f := high[none], ink2(12)
	says := fmt.Sprintf("%d grafts fail", failed)
	x := middle(none) + 9
	to := x + d.width(says, f) + 4
	if failed < 3 || failed >= trialsTold/2 || !d.all.InTime || to > wanted {
		return
	}
	above := 0
	for k := none + 1; middle(k)-5 < to; k++ {
		above = max(above, high[k])
	}
	if above >= failed { // it would not be told any more of which dots it speaks
		return
	}
	if above > 0 {
		y -= pitch*float64(above) + 3
	}
	d.text(x, y, says, f)
}

// tickOf is how far apart figures stand on an axis up to most.
func tickOf(most int) int {
	for _, step := range []int{2, 5, 10, 20, 50, 100, 200} {
		if most/step <= 7 {
			return step
		}
	}
	return 500
}

func (d *planDraw) sureWords(x, w, y, wanted float64) {
	enough := int(math.Round(100 * d.all.Chance))
	short, kept := fmt.Sprintf("%d fall short", 100-enough), fmt.Sprintf("%d are enough", enough)
	if wanted >= x+w {
		short += fmt.Sprintf(" of %d", d.all.Queens)
	}
	if wanted-x > d.width(short, ink2(13))+10 && enough < 100 {
		d.right(wanted-7, y+14, short, ink2(13))
	}
	f := ink(13).semi().as(scene.Pen)
	if x+w-wanted > d.width(kept, f)+10 {
		d.text(wanted+7, y+14, kept, f)
	}
}

// promisesTall is how high what may be promised is, dp.
const promisesTall = 62.0

// promises are how many may be promised, by how sure.
func (d *planDraw) promises(x, w, y float64) {
	d.rule(x, y, x+w, y, scene.Hair)
	d.text(x, y+24, "May promise", ink(13.5).semi())
	if says := d.costsSaid(); says != "" {
		d.hit(scene.Area{X: x, Y: y + 6, W: w, H: 42}, scene.Ref{Kind: state.FigureRef, ID: "promise"}, says)
	}
	words := []string{"at 90 %", "at 75 %", "at 50 %"}
	column := (w - 96) / 3
	for i, p := range d.all.Shown.Promises() {
		cx := x + 96 + float64(i)*column
		d.text(cx, y+25, fmt.Sprint(p.Queens), ink(18).semi())
		d.fit(cx, y+43, words[i], ink2(12.5), cx+column-2)
	}
}

// minutes draws the keeper's minutes by day: of the book below, of the plan on top,
// over the time there is in vermillion.
func (d *planDraw) minutes(a scene.Area) {
	days := d.all.Days
	if len(days) == 0 {
		return
	}
	y := d.partHead(a, "Minutes a day, "+d.shortDay(days[0].Day)+" to "+d.shortDay(days[len(days)-1].Day), d.whoBeside(d.hoursSaid(), a.W-state.Edge-8))
	x, w := a.X+state.Edge+26, a.W-2*state.Edge-26
	foot := a.Bottom() - 44
	most := d.all.MostMinutes()
	k, column := (foot-y-18)/most, w/float64(len(days))
	for i, day := range days {
		d.minuteBar(day, scene.Area{X: x + float64(i)*column, Y: foot, W: column, H: k}, y)
	}
	for m := minuteTick(most); m <= most; m += minuteTick(most) {
		d.right(x-6, foot-m*k+4, fmt.Sprintf("%.0f", m), ink2(12))
		d.rule(x-4, foot-m*k, x, foot-m*k, scene.Ink3)
	}
	d.rule(x, foot, x+w, foot, scene.Ink3)
	for i, day := range days {
		if day.Day.Weekday() == d.s.Week.Day() && (column*7 > 30 || i%14 < 7) {
			_, _, n := day.Day.Date()
			d.centre(x+(float64(i)+0.5)*column, foot+16, fmt.Sprint(n), ink2(12))
		}
	}
	first := scene.Area{X: x, Y: foot, W: column, H: k}
	d.timeThere(first, y)
	d.peaks(first)
	d.minutesLegend(scene.Area{X: a.X + state.Edge, Y: foot + 34, W: a.W - state.Edge - 8})
}

// timeThere draws the time there is as a thin dash over each day, in an area as that of
// [planDraw.minuteBar], of the first day. More than is drawn lies along the top.
func (d *planDraw) timeThere(a scene.Area, top float64) {
	for i, day := range d.all.Days {
		if day.Told {
			x, y := a.X+float64(i)*a.W, max(top+1.5, a.Y-day.Free*a.H)
			d.rule(x+0.06*a.W, y, x+0.94*a.W, y, scene.Ink)
		}
	}
}

// minutesLegend shows what line and pale bars are, as far as there are any.
func (d *planDraw) minutesLegend(a scene.Area) {
	x, f := a.X, ink2(12.5)
	if slices.ContainsFunc(d.all.Days, func(day state.PlanDay) bool { return day.Told }) {
		d.rule(x, a.Y-4, x+18, a.Y-4, scene.Ink)
		x = d.fit(x+24, a.Y, "time you have", f, a.Right()) + 16
	}
	if slices.ContainsFunc(d.all.Days, func(day state.PlanDay) bool { return day.Book > 0 }) {
		d.rect(scene.Area{X: x, Y: a.Y - 9, W: 8, H: 10}, scene.Rule)
		d.fit(x+14, a.Y, "in the book", f, a.Right())
	}
}

// minuteTick is how far apart figures stand on an axis of minutes.
func minuteTick(most float64) float64 {
	for _, step := range []float64{30, 60, 120, 240, 480} {
		if most/step <= 4 {
			return step
		}
	}
	return 960
}

// hoursSaid is how long the plan takes, and whether there is time for it.
func (d *planDraw) hoursSaid() string {
	says := fmt.Sprintf("%.0f h for this plan", d.all.Hours())
	switch over, told := d.all.OverDays(); {
	case !told:
		return says
	case over == 0:
		return says + "; time on all its days"
	case over == 1:
		return says + "; too long on 1 day"
	default:
		return fmt.Sprintf("%s; too long on %d days", says, over)
	}
}

// whoBeside says besides who has how much of the hours, where there is room.
func (d *planDraw) whoBeside(says string, width float64) string {
	if len(d.all.People) == 0 {
		return says
	}
	var all []string
	for _, who := range d.all.People {
		all = append(all, fmt.Sprintf("%s %.0f h", who.Name, who.Minutes/60))
	}
	if d.all.Over >= 30 {
		all = append(all, fmt.Sprintf("nobody %.0f h", d.all.Over/60))
	}
	if long := says + "; " + strings.Join(all, ", "); d.width(d.say(long), ink2(13)) <= width {
		return long
	}
	return says
}

// minuteBar is one day: its place and, as its height, the dp of a minute.
func (d *planDraw) minuteBar(day state.PlanDay, a scene.Area, top float64) {
	k := a.H
	if w := day.Day.Weekday(); day.Told && day.Rests || w == time.Saturday || w == time.Sunday {
		d.rect(scene.Area{X: a.X, Y: top, W: a.W, H: a.Y - top}, scene.Sunk)
	}
	bar := func(from, to float64, role scene.Role) {
		if to > from {
			d.rect(scene.Area{X: a.X + a.W*0.18, Y: a.Y - to*k, W: a.W * 0.64, H: (to - from) * k}, role)
		}
	}
	all := day.Book + day.Wish
	bar(0, day.Book, scene.Rule)
	bar(day.Book, all, scene.Ink2)
	if day.Over() {
		bar(max(day.Free, day.Book), all, scene.Act)
	}
	reason := fmt.Sprintf("%s: %.0f min of this plan, %.0f in the book", day.Day.ShortFrom(d.s.Today()), day.Wish, day.Book)
	if day.Told {
		reason += ", " + thousands(int(math.Round(day.Free))) + " free"
	}
	d.hit(scene.Area{X: a.X, Y: top, W: a.W, H: a.Y - top}, scene.Ref{Kind: state.FigureRef, ID: day.Day.String()}, reason)
}

// peaks writes the minutes of the longest days above their bars; in an area as that of
// [planDraw.minuteBar], of the first day.
func (d *planDraw) peaks(a scene.Area) {
	for _, i := range d.all.Peaks(int(math.Ceil(30 / a.W))) {
		day, f := d.all.Days[i], ink2(12).semi()
		if day.Over() {
			f = f.as(scene.Act)
		}
		all := day.Book + day.Wish
		x, y, says := a.X+(float64(i)+0.5)*a.W, a.Y-all*a.H-4, fmt.Sprintf("%.0f", all)
		w := d.width(says, f)
		d.rect(scene.Area{X: x - w/2 - 2, Y: y - 11, W: w + 4, H: 13}, scene.Panel) // over the line of the time there is
		d.centre(x, y, says, f)
	}
}

// numbersSaid names the numbers on which something stands, each with where it comes
// from.
func (p *sheet) numbersSaid(keys []practice.Key) string {
	if len(keys) == 0 {
		return "as the book has it"
	}
	var all []string
	for _, k := range keys {
		n := practice.Of(k)
		said := strings.TrimSpace(p.s.NumberSaid(k, p.s.Present().Numbers().Get(k)) + " " + p.s.NumberUnit(k))
		all = append(all, fmt.Sprintf("%s %s, %s", n.Title, said, p.s.Sure(n)))
	}
	return strings.Join(all, "; ")
}
