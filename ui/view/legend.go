package view

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// legend says what the letters of the nucs shown mean, with counts.
func (p *sheet) legend(a scene.Area) {
	counts, need := p.s.Reading().Tally(p.s.Filled())
	items := p.legendItems(counts, need)
	switch {
	case len(items) == 0:
	case a.H < 40:
		p.lineLegend(a, counts, need)
	case legendGap(a, items) < -8: // more than a word would be cut
		p.shortLegend(a, counts, need)
	default:
		fullLegend(a, items)
	}
}

// legendEntry is one thing that a legend explains.
type legendEntry struct {
	width float64
	draw  func(o scene.Point, to float64)
}

// legendItems are what a legend has to explain: in a book with nucs all there can
// be, also what there is none of, so that each keeps its place on every day.
func (p *sheet) legendItems(counts map[book.Condition]int, need int) (items []legendEntry) {
	if len(p.s.Reading().In(p.s.Filled())) == 0 {
		return nil
	}
	for _, c := range book.Conditions() {
		n := counts[c]
		items = append(items, legendEntry{p.legendWidth(c, n), func(o scene.Point, to float64) { p.legendItem(o, c, n, to) }})
	}
	return append(items,
		legendEntry{25 + p.width(p.unseenWord(), ink2(13)), p.unseenLegend},
		legendEntry{p.needWidth(need), func(o scene.Point, to float64) { p.needLegend(o, need, to+12) }})
}

func (p *sheet) unseenLegend(o scene.Point, to float64) {
	p.add(scene.Lid{At: o.Add(at(8, 0)), Size: 20, Condition: scene.Virgin, Entrance: 180, NoRim: true, Blank: true})
	p.fit(o.X+25, o.Y+4.5, p.unseenWord(), ink2(13), to)
}

// unseenWord says what a hatch is.
func (p *sheet) unseenWord() string {
	if p.s.Layer == state.BySureness {
		return "dense: less sure"
	}
	return "not seen yet"
}

// fullLegend names every condition, and the signs, in four columns: all alike where
// their words fit into a quarter each, else as wide as these.
func fullLegend(a scene.Area, items []legendEntry) {
	columns := [5]float64{0, 0.28, 0.505, 0.755, 1}
	widths := legendWidths(items)
	if slices.Max(widths[:])+6 <= a.W/4 {
		columns = [5]float64{0, 0.25, 0.5, 0.75, 1}
	} else if gap := legendGap(a, items); gap >= 6 {
		for i, w := range widths {
			columns[i+1] = columns[i] + (w+gap)/a.W
		}
	}
	for i, item := range items {
		item.draw(at(a.X+columns[i%4]*a.W, a.Y+float64(i/4)*20), a.X+columns[i%4+1]*a.W-4)
	}
}

// legendWidths are how wide the words of the four columns are.
func legendWidths(items []legendEntry) (widths [4]float64) {
	for i, item := range items {
		widths[i%4] = max(widths[i%4], item.width)
	}
	return widths
}

// legendGap is how far apart the columns lie then; below 0 they have no room.
func legendGap(a scene.Area, items []legendEntry) float64 {
	w := legendWidths(items)
	return (a.W - w[0] - w[1] - w[2] - w[3]) / 3
}

// legendWidth is how wide a condition is in the legend, needWidth the sign
// "needs you".
func (p *sheet) legendWidth(c book.Condition, n int) float64 {
	return 26 + p.width(thousands(n), ink(13).semi()) + p.width(c.String(), ink2(13))
}

func (p *sheet) needWidth(n int) float64 {
	return 26 + p.width(thousands(n), ink(13).semi()) + p.width(needVerb(n, p.s), ink2(13))
}

// legendItem writes a condition with its lid and how many there are, and gives
// where it ends.
func (p *sheet) legendItem(o scene.Point, c book.Condition, n int, to float64) float64 {
	p.add(scene.Lid{At: o.Add(at(8, 0)), Size: 16, Condition: scene.Condition(c), Seen: true, Entrance: 180, NoRim: true})
	x := p.text(o.X+21, o.Y+4.5, thousands(n), ink(13).semi())
	return p.fit(x+5, o.Y+4.5, c.String(), ink2(13), to)
}

// needLegend explains the corner and filters by it; it reaches no further than
// to.
func (p *sheet) needLegend(o scene.Point, n int, to float64) {
	p.corner(at(o.X+2, o.Y-6), 13)
	x := p.text(o.X+21, o.Y+4.5, thousands(n), ink(13).semi())
	end := x
	if word := needVerb(n, p.s); x+5+p.width(word, ink2(13)) <= to {
		end = p.text(x+5, o.Y+4.5, word, ink2(13))
	}
	p.command(target(scene.Area{X: o.X, Y: o.Y - 10, W: end - o.X, H: 20}), "needs you")
}

// shortLegend names only what there is, in two columns, where room is short.
func (p *sheet) shortLegend(a scene.Area, counts map[book.Condition]int, need int) {
	const most, gap = 5, 6.0
	var there []book.Condition
	widths := [2]float64{}
	for _, c := range book.Conditions() {
		if counts[c] > 0 && len(there) < most {
			widths[len(there)%2] = max(widths[len(there)%2], p.legendWidth(c, counts[c]))
			there = append(there, c)
		}
	}
	second := a.W * 0.52
	if widths[0]+gap+max(widths[1], p.needWidth(need)) <= a.W+8 {
		second = max(second, widths[0]+gap)
	}
	place := func(i int) scene.Point { return at(a.X+float64(i%2)*second, a.Y+float64(i/2)*20) }
	for i, c := range there {
		to := a.Right() + 8
		if i%2 == 0 {
			to = a.X + second - gap + 1
		}
		p.legendItem(place(i), c, counts[c], to)
	}
	if need > 0 {
		p.needLegend(place(len(there)), need, a.Right()+8)
	}
}

// lineLegend names in one line what there is, from what needs the keeper on, as
// much as fits.
func (p *sheet) lineLegend(a scene.Area, counts map[book.Condition]int, need int) {
	const gap = 14.0
	x := a.X
	if need > 0 {
		p.needLegend(at(x, a.Y), need, a.Right())
		x += p.needWidth(need) + gap
	}
	for _, c := range book.Conditions() {
		if counts[c] > 0 && c != book.Empty && x+p.legendWidth(c, counts[c]) <= a.Right() {
			x = p.legendItem(at(x, a.Y), c, counts[c], a.Right()) + gap
		}
	}
}

// corner draws the sign "needs you": filled for now, hollow for another day.
func (p *sheet) corner(o scene.Point, k float64) {
	poly := scene.Poly{Points: []scene.Point{o, o.Add(at(k, 0)), o.Add(at(0, k))}, Fill: scene.Act}
	if p.s.Away() {
		poly.Fill, poly.Stroke = scene.Panel, stroke(scene.Ink3, 1.3)
	}
	p.add(poly)
}
