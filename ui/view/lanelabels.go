package view

import (
	"slices"

	"lidmark/ui/scene"
)

// labels writes the counts below the stream, each under its part, where they do not touch,
// and the window of the mating flights.
func (g *lane) labels() {
	y := g.area.Bottom() - 5
	for i, s := range g.stages {
		if from, to := max(g.x(s.at), g.ribbon.X), g.looksUntil(i); s.label != "" && to > g.ribbon.X+8 {
			g.label(from, to, y, s.label, i+1 == len(g.stages))
		}
	}
	g.flights(y)
}

// looksUntil is where the part of the stream that looks like a stage ends.
func (g *lane) looksUntil(i int) float64 {
	for i+1 < len(g.stages) && g.stages[i+1].label == "" && g.stages[i+1].fill == g.stages[i].fill {
		i++
	}
	return g.until(i)
}

// label writes below the stream what is said of a part of it: from where that begins, or
// behind the frame of today where all of it still stands under the part; else not at all,
// for under another part it would be read as that one's: behind the last there is none. It keeps its place whatever day
// is looked at and lies on a ground of its own over the handle.
func (g *lane) label(from, until, y float64, text string, last bool) {
	const in = 3.0
	w := g.width(text, ink2(12))
	beside := g.besideToday(from+in, w)
	x, room := slices.Min(beside), from+w/2
	if last {
		room = from
	}
	if x < from {
		x = slices.Max(beside)
		room = x + w
	}
	box := scene.Area{X: x - 4, Y: y - 10, W: w + 8, H: 12}
	if room > until || x < g.ribbon.X || box.Right() > g.area.Right() || !g.room(box) {
		return
	}
	g.rect(scene.Area{X: x - 2, Y: y - 11, W: box.W - 4, H: 14}, g.ground)
	g.text(x, y, text, ink2(12))
}

// besideToday are the places where what is so wide and would begin at x leaves the frame
// of today whole, the nearest first.
func (g *lane) besideToday(x, w float64) []float64 {
	const air = 6.0
	left, right := g.frameSides(g.s.Today())
	before, after := left-air-w, right+air
	switch {
	case x <= before || x >= after:
		return []float64{x}
	case x-before < after-x:
		return []float64{before, after}
	}
	return []float64{after, before}
}

// room takes a box unless it touches one that is taken.
func (g *lane) room(box scene.Area) bool {
	for _, t := range g.taken {
		if t.Overlaps(box) {
			return false
		}
	}
	g.taken = append(g.taken, box)
	return true
}

// flights draws the window of the mating flights between what is written.
func (g *lane) flights(y float64) {
	const air = 6.0 // to the words of the stage before
	from, to := g.x(g.flightFrom)+air, g.x(g.flightBy)
	word := "mating flights"
	w := g.width(word, ink3(12))
	at := slices.DeleteFunc(g.besideToday((from+to-w)/2, w), func(x float64) bool { return x < from+8 || x+w > to-8 })
	if from < g.ribbon.X || to > g.area.Right() || len(at) == 0 || !g.room(scene.Area{X: from - 2, Y: y - 10, W: to - from + 4, H: 12}) {
		return
	}
	x := at[0]
	g.rect(scene.Area{X: x - 2, Y: y - 11, W: w + 4, H: 14}, g.ground)
	g.text(x, y, word, ink3(12))
	for _, l := range [][4]float64{{from, y - 4, x - 6, y - 4}, {x + w + 6, y - 4, to, y - 4}, {from, y - 8, from, y}, {to, y - 8, to, y}} {
		g.rule(l[0], l[1], l[2], l[3], scene.Ink3)
	}
}
