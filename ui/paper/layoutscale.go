package paper

import (
	"context"
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/unit"
	"lidmark/ui/scene"
)

// box is a stretch of ground, m.
type box struct{ low, high book.Point }

// around grows so that it holds a point with a margin.
func (b *box) around(p book.Point, margin float64) {
	b.low = book.Point{X: min(b.low.X, p.X-margin), Y: min(b.low.Y, p.Y-margin)}
	b.high = book.Point{X: max(b.high.X, p.X+margin), Y: max(b.high.Y, p.Y+margin)}
}

func (b *box) w() float64 { return b.high.X - b.low.X }
func (b *box) h() float64 { return b.high.Y - b.low.Y }

// extent is the ground that the plan shows: all stands as they stand and will, the
// boundary, the points of the tapes, and of what else is drawn what lies near, as wide as
// it is.
func (d *layoutSheet) extent() box {
	const margin, near = 0.8, 5.0 // m
	first := d.laid.Try.Stands[0].At
	b := box{first, first}
	for _, s := range d.laid.Try.Stands {
		b.around(s.At, margin)
	}
	for _, s := range d.now.Stands {
		if !d.now.Idle() { // else it was drawn there and never stood
			b.around(s.At, margin)
		}
	}
	for _, t := range d.pegs {
		b.around(t.a.At, margin)
		b.around(t.b.At, margin)
	}
	for _, f := range d.in.Features {
		for _, p := range f.Points {
			if f.What == book.Boundary {
				b.around(p, margin)
			}
		}
	}
	within := b
	within.around(b.low, near)
	within.around(b.high, near)
	for _, f := range d.in.Features {
		for _, p := range f.Points {
			if p.X > within.low.X && p.X < within.high.X && p.Y > within.low.Y && p.Y < within.high.Y {
				b.around(p, margin+f.Width/2)
			}
		}
	}
	return b
}

// roundScale is the next of the scales of rulers, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 7.5 and
// their tens, from a least scale on, at most 1:20.
func roundScale(least float64) float64 {
	for ten := 10.0; ; ten *= 10 {
		for _, k := range []float64{1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 7.5} {
			if s := k * ten; s >= max(least, leastScale) {
				return s
			}
		}
	}
}

// leastScale is the largest that plans are drawn: 1:20.
const leastScale = 20

const mmInMetre = 1000

// fitting is the largest round scale at which ground fits into an area.
func (s *sheet) fitting(b box, a scene.Area) float64 {
	return roundScale(max(b.w()/a.W, b.h()/a.H) * mmInMetre / s.zoom)
}

// perMetre is how many mm of the sheet a metre is at a scale.
func (s *sheet) perMetre(scale float64) float64 { return mmInMetre / scale / s.zoom }

// Measures of the plan, mm.
const (
	planFoot = 22.0 // for the scale bar and what signs mean
	overlap  = 10.0 // of two sheets
	tilesTop = 9.0
)

// planArea is where a plan lies on the page from y on.
func (s *sheet) planArea(y float64) scene.Area {
	return scene.Area{X: s.left(), Y: y, W: s.right() - s.left(), H: s.bottom() - y - planFoot}
}

// planHead is about how high the head over a plan is, mm.
const planHead = 16.0

// along tells whether the plan is drawn larger, or on fewer sheets, on pages that lie
// along than on upright ones.
func (d *layoutSheet) along() bool {
	b := d.extent()
	as := func(along bool) float64 {
		d.lie(along)
		a := d.planArea(d.top() + planHead)
		fits := d.fitting(b, a)
		if d.laid.Scale == 0 || fits <= d.laid.Scale {
			return max(fits, d.laid.Scale) // on one page
		}
		t := d.tiling(b, d.laid.Scale)
		return float64(t.across*t.up) * tilesApart
	}
	up, along := as(false), as(true)
	d.lie(false)
	return along < up
}

// tilesApart makes a plan on several sheets less liked than one on one, whatever its scale.
const tilesApart = 1e9

// plan draws the plan, on one page or on several.
func (d *layoutSheet) plan(ctx context.Context) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	b, a := d.extent(), d.planArea(d.y)
	fits := d.fitting(b, a)
	scale := d.laid.Scale
	if scale == 0 {
		scale = fits
	}
	k := d.perMetre(scale)
	if b.w()*k > a.W || b.h()*k > a.H {
		return d.tiles(ctx, b, a, scale, fits)
	}
	a = b.trimmed(a, k)
	d.plot(a, centred(b, a, k), scale).draw()
	d.planLegend(a.Bottom(), scale)
	return nil
}

// trimmed is an area no higher than its ground is.
func (b *box) trimmed(a scene.Area, k float64) scene.Area {
	const air, least = 8.0, 40.0 // mm
	a.H = min(a.H, max(least, b.h()*k+air))
	return a
}

// centred is the ground point at the lower left corner of an area in whose middle
// lies the ground.
func centred(b box, a scene.Area, k float64) book.Point {
	return book.Point{X: (b.low.X+b.high.X)/2 - a.W/2/k, Y: (b.low.Y+b.high.Y)/2 - a.H/2/k}
}

// tilesMost is how many sheets a plan may take.
const tilesMost = 60

// tiling is how a plan lies on several sheets.
type tiling struct {
	low        book.Point // of the ground, at the lower left corner of the lowest left sheet
	across, up int
	area       scene.Area
	k          float64
}

// at is the ground point at the lower left corner of a sheet, counted from the upper
// left one.
func (t tiling) at(i int) book.Point {
	column, row := i%t.across, t.up-1-i/t.across
	return book.Point{X: t.low.X + float64(column)*(t.area.W-overlap)/t.k, Y: t.low.Y + float64(row)*(t.area.H-overlap)/t.k}
}

// sheets is how many of a length with an overlap a stretch takes.
func sheets(stretch, length float64) int {
	return max(1, int(math.Ceil((stretch-overlap)/(length-overlap))))
}

// tiling is how ground lies on sheets at a scale, without where it begins.
func (d *layoutSheet) tiling(b box, scale float64) tiling {
	a, k := d.planArea(d.top()+tilesTop), d.perMetre(scale)
	return tiling{across: sheets(b.w()*k, a.W), up: sheets(b.h()*k, a.H), area: a, k: k}
}

// tiles draws the key and the sheets of a plan that is larger than a page.
func (d *layoutSheet) tiles(ctx context.Context, b box, key scene.Area, scale, fits float64) error {
	t := d.tiling(b, scale)
	a, k := t.area, t.k
	if n := t.across * t.up; n > tilesMost {
		return fmt.Errorf("1:%g takes %d sheets: choose a smaller scale; 1:%g fits on one", scale, n, fits)
	}
	wide, high := float64(t.across)*(a.W-overlap)+overlap, float64(t.up)*(a.H-overlap)+overlap
	t.low = centred(b, scene.Area{W: wide, H: high}, k)
	whole := box{t.low, book.Point{X: t.low.X + wide/k, Y: t.low.Y + high/k}}
	d.tileKey(t, whole, key, scale)
	for i := range t.across * t.up {
		if err := ctx.Err(); err != nil {
			return err
		}
		d.begin()
		at := d.ends(d.right(), d.y+4.6, fmt.Sprintf("sheet %d of %d, 1:%g", i+1, t.across*t.up, scale), semi(10.5))
		d.fit(d.left(), d.y+4.6, d.title, semi(10.5), at-4)
		p := d.plot(a, t.at(i), scale)
		p.draw()
		p.laps(t, i)
		d.planLegend(a.Bottom(), scale)
	}
	return nil
}

// tileKey draws the whole plan small, with where each sheet lies.
func (d *layoutSheet) tileKey(t tiling, whole box, a scene.Area, scale float64) {
	small := d.fitting(whole, a)
	a = whole.trimmed(a, d.perMetre(small))
	p := d.plot(a, centred(whole, a, d.perMetre(small)), small)
	p.draw()
	for i := range t.across * t.up {
		low := t.at(i)
		from, to := p.at(low), p.at(book.Point{X: low.X + t.area.W/t.k, Y: low.Y + t.area.H/t.k})
		tile := scene.Between(from, to)
		d.rect(tile, 0, none, stroke{black, 0.45})
		c := scene.Point{X: tile.X + 5, Y: tile.Y + 5}
		d.circle(c, 3.2, white, stroke{black, 0.35})
		d.centre(c.X, c.Y+1.3, fmt.Sprint(i+1), bold(9.5))
	}
	d.planLegend(a.Bottom(), small)
	d.remark(fmt.Sprintf("How the sheets of 1:%g lie. Trim each at its frame and lay the crosses of neighbours onto each other.", scale), semi(8.6), d.right())
}

// bars are round lengths of scale bars and into how many parts they are divided.
var bars = []struct {
	long  float64
	parts int
}{{1, 5}, {2, 4}, {5, 5}, {10, 5}, {20, 4}, {50, 5}, {100, 5}, {200, 4}, {500, 5}, {1000, 5}, {2000, 4}, {5000, 5}}

const metresInFoot = 0.3048 // exact: the international foot, NIST SP 811

// planLegend draws the scale, its bar and what the signs mean below a plan.
func (d *layoutSheet) planLegend(y, scale float64) {
	one, name, long, small := 1.0, "metres", "m", "mm"
	if d.Units == unit.US {
		one, name, long, small = metresInFoot, "feet", "ft", "in"
	}
	k := d.perMetre(scale) * one
	const most = 70.0 // mm of paper
	bar := bars[0]
	for _, b := range bars {
		if b.long*k*d.zoom <= most {
			bar = b
		}
	}
	end := d.text(d.left(), y+6.4, fmt.Sprintf("1:%g", scale), bold(12))
	x, top := end+6, y+4.2
	d.barOf(x, top, bar.long, bar.parts, k, name)
	mm := bar.long * k * d.zoom
	if d.Units == unit.US {
		mm /= 25.4
	}
	x += bar.long*k + 18
	said := fmt.Sprintf("Print in full size, not fitted to the page: %g %s of the bar must measure %s %s.", bar.long, long, figure(mm), small)
	d.lines(x, y+4.2, d.wrap(said, soft(8), d.right()-x, 3), soft(8))
	d.signs(y + 15)
	if d.perMetre(scale)*d.numbers.Get(practice.BoxWide) < leastSign {
		d.text(d.left(), y+19.4, "Boxes are drawn larger than they are; the middles of stands are to scale.", soft(8))
	}
	d.y = y + planFoot - 1.4
}

// barOf draws a scale bar of parts black and white by turns.
func (d *layoutSheet) barOf(x, y, long float64, parts int, k float64, name string) {
	const high = 1.6
	step := long / float64(parts)
	for i := 0; i < parts; i += 2 {
		d.rect(scene.Area{X: x + float64(i)*step*k, Y: y, W: step * k, H: high}, 0, black, stroke{})
	}
	d.rect(scene.Area{X: x, Y: y, W: long * k, H: high}, 0, none, stroke{black, 0.2})
	for i := range parts + 1 {
		d.centre(x+float64(i)*step*k, y-1, fmt.Sprintf("%g", float64(i)*step), plain(7.4))
	}
	d.text(x+long*k+3, y+high, name, plain(8))
}
