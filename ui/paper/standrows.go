package paper

import (
	"cmp"
	"context"
	"math"
	"slices"
)

// arranged puts stands into rows from north to south, each from west to east.
func (d yardSheet) arranged(stands []block) (lines [][]block) {
	slices.SortStableFunc(stands, func(a, b block) int { return cmp.Compare(a.at.Y, b.at.Y) })
	apart := spacing(stands) * 0.45
	for len(stands) > 0 {
		n := 1
		for n < len(stands) && stands[n].at.Y-stands[0].at.Y <= apart {
			n++
		}
		line := stands[:n:n]
		stands = stands[n:]
		slices.SortStableFunc(line, func(a, b block) int { return cmp.Compare(a.at.X, b.at.X) })
		lines = append(lines, d.folded(line)...)
	}
	return lines
}

// folded parts a row that is wider than the page.
func (d yardSheet) folded(row []block) (lines [][]block) {
	for len(row) > 0 {
		n, w := 1, row[0].w()
		for n < len(row) && w+blockGap+row[n].w() <= d.right()-d.left() {
			w += blockGap + row[n].w()
			n++
		}
		lines, row = append(lines, row[:n:n]), row[n:]
	}
	if len(lines) > 1 {
		for _, line := range lines {
			for i := range line {
				line[i].folded = true
			}
		}
	}
	return lines
}

// spacing is how far stands lie from their neighbours, m: the middle of the
// first of them, which is enough to tell rows apart.
func spacing(stands []block) float64 {
	var apart []float64
	for i := range min(len(stands), 100) {
		nearest := math.Inf(1)
		for j := range stands {
			if j != i {
				v := stands[j].at.Sub(stands[i].at)
				nearest = min(nearest, math.Hypot(v.X, v.Y))
			}
		}
		apart = append(apart, nearest)
	}
	if len(apart) < 2 {
		return 0
	}
	slices.Sort(apart)
	return apart[len(apart)/2]
}

// line draws stands side by side, each as near to where it stands in the width
// of the yard as its neighbours allow.
func (d yardSheet) line(ctx context.Context, line []block) error {
	high := 0.0
	for _, b := range line {
		high = max(high, b.h())
	}
	if _, err := d.need(ctx, high); err != nil {
		return err
	}
	for i, x := range d.across(line) {
		d.block(line[i], x)
	}
	d.y += high + blockGap*0.7
	return nil
}

// across is where the blocks of a line begin.
func (d yardSheet) across(line []block) []float64 {
	ground := d.Ground(d.yard.Yard)
	xs := make([]float64, len(line))
	from := d.left()
	for i, b := range line {
		x := from
		if ground.W > 0 && !b.folded {
			share := (b.at.X - ground.X) / ground.W
			x = d.left() + share*(d.right()-d.left()) - b.w()/2
		}
		xs[i] = max(x, from)
		from = xs[i] + b.w() + blockGap
	}
	to := d.right()
	for i := len(line) - 1; i >= 0; i-- {
		xs[i] = min(xs[i], to-line[i].w())
		to = xs[i] - blockGap
	}
	return xs
}

// long draws a row of single boxes over as many lines and pages as it takes.
func (d yardSheet) long(ctx context.Context, b block) error {
	b.columns = max(1, int((d.right()-d.left())/side))
	all := b.squares
	for len(all) > 0 {
		if _, err := d.need(ctx, blockHead+side); err != nil {
			return err
		}
		rows := int((d.bottom() - d.y - blockHead) / side)
		n := min(len(all), max(1, rows)*b.columns)
		b.squares = all[:n]
		d.block(b, d.left())
		d.y += b.h() + blockGap*0.7
		all = all[n:]
	}
	return nil
}
