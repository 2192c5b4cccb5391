package paint

import (
	"image"
	"image/color"
	"image/draw"
	"math"
	"slices"

	"lidmark/ui/scene"

	"golang.org/x/image/vector"
)

// canvas is where painting happens: pixels, the part of them that may be
// touched, and tools that are reused from shape to shape.
type canvas struct {
	dst   *image.RGBA
	clip  image.Rectangle
	sight image.Rectangle // the clip as it is when all is painted: shapes are cut to it, so that a part comes out as in the whole
	*tools
}

// tools are the reusable parts of a canvas.
type tools struct {
	path   path
	raster vector.Rasterizer
	mask   image.Alpha
	points []scene.Point
}

// fill paints the tools' path in c and empties it.
func (cv *canvas) fill(c color.RGBA) {
	defer cv.path.reset()
	lo, hi := cv.path.bounds()
	if !(lo.X <= hi.X) || c.A == 0 {
		return
	}
	const far = 1e6
	r := image.Rect(
		int(math.Floor(max(lo.X, -far))), int(math.Floor(max(lo.Y, -far))),
		int(math.Ceil(min(hi.X, far))), int(math.Ceil(min(hi.Y, far))),
	).Intersect(cv.sight)
	if !r.Overlaps(cv.clip) {
		return
	}
	cv.rasterise(r)
	cv.blend(r, c)
}

// rasterise puts how much of each pixel of r the path covers into the mask.
func (cv *canvas) rasterise(r image.Rectangle) {
	w, h := r.Dx(), r.Dy()
	cv.raster.Reset(w, h)
	cv.raster.DrawOp = draw.Src
	corner := scene.Point{X: float64(r.Min.X), Y: float64(r.Min.Y)}
	start := 0
	for _, end := range cv.path.ends {
		contour := cv.path.points[start:end]
		if start = end; len(contour) == 0 {
			continue
		}
		from := contour[len(contour)-1].Sub(corner)
		for _, to := range contour {
			to = to.Sub(corner)
			cv.rasteriseEdge(from, to)
			from = to
		}
	}
	if n := w * h; cap(cv.mask.Pix) < n {
		cv.mask.Pix = make([]uint8, n)
	}
	cv.mask.Pix = cv.mask.Pix[:w*h]
	cv.mask.Stride, cv.mask.Rect = w, image.Rect(0, 0, w, h)
	cv.raster.Draw(&cv.mask, cv.mask.Rect, image.Opaque, image.Point{})
}

// rasteriseEdge hands over one edge of a contour. The rasteriser's arithmetic
// has no room for far ends, so an edge that has one is moved to the border where
// it lies outside: that covers the same pixels.
func (cv *canvas) rasteriseEdge(a, b scene.Point) {
	const room = 1000
	size := cv.raster.Size()
	w, h := float64(size.X), float64(size.Y)
	near := func(p scene.Point) bool { return p.X > -room && p.X < w+room && p.Y > -room && p.Y < h+room }
	if near(a) && near(b) {
		cv.raster.MoveTo(float32(a.X), float32(a.Y))
		cv.raster.LineTo(float32(b.X), float32(b.Y))
		return
	}
	d := b.Sub(a)
	cuts := [...]float64{0, -a.X / d.X, (w - a.X) / d.X, -a.Y / d.Y, (h - a.Y) / d.Y, 1}
	for i, t := range cuts {
		if !(t >= 0 && t <= 1) { // beyond an end, or the edge never meets that border
			cuts[i] = 0
		}
	}
	slices.Sort(cuts[:])
	for i, t := range cuts {
		p := a.Add(d.Mul(t))
		x, y := float32(max(0, min(w, p.X))), float32(max(0, min(h, p.Y)))
		if i == 0 {
			cv.raster.MoveTo(x, y)
		} else {
			cv.raster.LineTo(x, y)
		}
	}
}

// blend paints c through the mask, which lies on r.
func (cv *canvas) blend(r image.Rectangle, c color.RGBA) {
	in := r.Intersect(cv.clip)
	for y := in.Min.Y; y < in.Max.Y; y++ {
		o := (y-r.Min.Y)*r.Dx() - r.Min.X
		over(cv.row(in.Min.X, in.Max.X, y), cv.mask.Pix[o+in.Min.X:o+in.Max.X], c)
	}
}

// over paints c on a row of pixels, each as much as its mask says.
func over(row, mask []uint8, c color.RGBA) {
	for i, m := range mask {
		if m == 0 {
			continue
		}
		p := row[4*i : 4*i+4 : 4*i+4]
		if m == 0xFF && c.A == 0xFF {
			p[0], p[1], p[2], p[3] = c.R, c.G, c.B, c.A
			continue
		}
		a := uint32(m)
		if c.A != 0xFF {
			a = div255(a * uint32(c.A))
		}
		b := 255 - a
		p[0] = uint8(div255(uint32(c.R)*a + uint32(p[0])*b))
		p[1] = uint8(div255(uint32(c.G)*a + uint32(p[1])*b))
		p[2] = uint8(div255(uint32(c.B)*a + uint32(p[2])*b))
		p[3] = uint8(div255(255*a + uint32(p[3])*b))
	}
}

// div255 returns v/255 to the nearest whole number, for v up to 255×255.
func div255(v uint32) uint32 { return (v + 128) * 257 >> 16 }

// block paints the whole pixels of r in c. Colours here are not premultiplied.
func (cv *canvas) block(r image.Rectangle, c color.RGBA) {
	r = r.Intersect(cv.clip)
	if r.Empty() || c.A == 0 {
		return
	}
	first := cv.row(r.Min.X, r.Max.X, r.Min.Y)
	if c.A != 0xFF {
		for y := r.Min.Y; y < r.Max.Y; y++ {
			veil(cv.row(r.Min.X, r.Max.X, y), c)
		}
		return
	}
	for i := 0; i < len(first); i += 4 {
		first[i], first[i+1], first[i+2], first[i+3] = c.R, c.G, c.B, c.A
	}
	for y := r.Min.Y + 1; y < r.Max.Y; y++ {
		copy(cv.row(r.Min.X, r.Max.X, y), first)
	}
}

// row returns the bytes of the pixels from x0 to x1 in line y.
func (cv *canvas) row(x0, x1, y int) []uint8 {
	o := cv.dst.PixOffset(x0, y)
	return cv.dst.Pix[o : o+4*(x1-x0)]
}

// veil paints a colour that shows through on a row of pixels.
func veil(row []uint8, c color.RGBA) {
	a := uint32(c.A)
	b := 255 - a
	for i := 0; i+3 < len(row); i += 4 {
		row[i] = uint8(div255(uint32(c.R)*a + uint32(row[i])*b))
		row[i+1] = uint8(div255(uint32(c.G)*a + uint32(row[i+1])*b))
		row[i+2] = uint8(div255(uint32(c.B)*a + uint32(row[i+2])*b))
		row[i+3] = uint8(div255(255*a + uint32(row[i+3])*b))
	}
}
