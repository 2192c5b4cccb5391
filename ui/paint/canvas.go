package paint

import (
	"image"
	"image/color"
	"image/draw"
	"math"

	"lidmark/ui/scene"

	"golang.org/x/image/vector"
)

// canvas is where painting happens: pixels, the part of them that may be
// touched, and tools that are reused from shape to shape.
type canvas struct {
	dst  *image.RGBA
	clip image.Rectangle
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
	).Intersect(cv.clip)
	if r.Empty() {
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
	start := 0
	for _, end := range cv.path.ends {
		for i, q := range cv.path.points[start:end] {
			x, y := float32(q.X-float64(r.Min.X)), float32(q.Y-float64(r.Min.Y))
			if i == 0 {
				cv.raster.MoveTo(x, y)
			} else {
				cv.raster.LineTo(x, y)
			}
		}
		cv.raster.ClosePath()
		start = end
	}
	if n := w * h; cap(cv.mask.Pix) < n {
		cv.mask.Pix = make([]uint8, n)
	}
	cv.mask.Pix = cv.mask.Pix[:w*h]
	cv.mask.Stride, cv.mask.Rect = w, image.Rect(0, 0, w, h)
	cv.raster.Draw(&cv.mask, cv.mask.Rect, image.Opaque, image.Point{})
}

// blend paints c on r through the mask.
func (cv *canvas) blend(r image.Rectangle, c color.RGBA) {
	w := r.Dx()
	for y := range r.Dy() {
		o := cv.dst.PixOffset(r.Min.X, r.Min.Y+y)
		over(cv.dst.Pix[o:o+4*w], cv.mask.Pix[y*w:(y+1)*w], c)
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
