package paint

import (
	"image"
	"image/color"
	"math"

	"lidmark/ui/scene"
)

// Upright rectangles are what most of a large yard is made of: they are painted
// without the rasteriser, some ten times as fast and with the same pixels.

// upright returns the area that a polygon's points go round, if that is an
// upright rectangle.
func upright(p []scene.Point) (scene.Area, bool) {
	if len(p) != 4 {
		return scene.Area{}, false
	}
	same := func(a, b float64) bool { return math.Abs(a-b) < 1e-6 }
	level := same(p[0].Y, p[1].Y) && same(p[1].X, p[2].X) && same(p[2].Y, p[3].Y) && same(p[3].X, p[0].X)
	plumb := same(p[0].X, p[1].X) && same(p[1].Y, p[2].Y) && same(p[2].X, p[3].X) && same(p[3].Y, p[0].Y)
	return scene.Between(p[0], p[2]), level || plumb
}

// thinnest is the width in device pixels up to which nobody sees whether the
// corners of an outline are round.
const thinnest = 1.5

// slab paints an area in device pixels, the pixels on its edge as much as they
// lie inside.
func (cv *canvas) slab(a scene.Area, c color.RGBA) {
	inside := image.Rect(int(math.Ceil(a.X)), int(math.Ceil(a.Y)), int(math.Floor(a.Right())), int(math.Floor(a.Bottom())))
	if a.Right()-a.X < 2 || a.Bottom()-a.Y < 2 {
		inside = image.Rectangle{}
	}
	cv.block(inside, c)
	cv.frame(a, areaOf(inside), c)
}

// frame paints what lies in one area and not in another within it.
func (cv *canvas) frame(a, hole scene.Area, c color.RGBA) {
	r := cv.clip.Intersect(image.Rect(int(math.Floor(a.X)), int(math.Floor(a.Y)), int(math.Ceil(a.Right())), int(math.Ceil(a.Bottom()))))
	h := image.Rectangle{ // empty where the hole is thinner than a pixel: image.Rect would turn it round
		Min: image.Pt(int(math.Ceil(hole.X)), int(math.Ceil(hole.Y))), Max: image.Pt(int(math.Floor(hole.Right())), int(math.Floor(hole.Bottom()))),
	}.Intersect(r)
	if h.Empty() {
		h = image.Rectangle{Min: r.Max, Max: r.Max}
	}
	for y := r.Min.Y; y < r.Max.Y; y++ {
		if y == h.Min.Y {
			cv.posts(r, h, a, hole, c)
			y = h.Max.Y
		}
		if y < r.Max.Y {
			mask := cv.shares(r.Min.X, r.Max.X, share(a.Y, a.Bottom(), y), share(hole.Y, hole.Bottom(), y), a, hole)
			over(cv.row(r.Min.X, r.Max.X, y), mask, c)
		}
	}
}

// posts paints the two sides of a frame beside the whole pixels h of its hole.
func (cv *canvas) posts(r, h image.Rectangle, a, hole scene.Area, c color.RGBA) {
	for _, side := range [2][2]int{{r.Min.X, h.Min.X}, {h.Max.X, r.Max.X}} {
		if side[0] >= side[1] {
			continue
		}
		mask := cv.shares(side[0], side[1], 1, 1, a, hole)
		for y := h.Min.Y; y < h.Max.Y; y++ {
			over(cv.row(side[0], side[1], y), mask, c)
		}
	}
}

// shares is how much of each pixel from x0 to x1 lies in an area and not in a
// hole, which hold the shares in and out of the pixels' height.
func (cv *canvas) shares(x0, x1 int, in, out float64, a, hole scene.Area) []uint8 {
	first, last := int(math.Ceil(hole.X)), int(math.Floor(hole.Right())) // all in the hole
	through := uint8(255*max(0, in-out) + 0.5)
	mask := cv.mask.Pix[:0]
	for x := x0; x < x1; x++ {
		if first <= x && x < last {
			mask = append(mask, through)
			continue
		}
		v := in*share(a.X, a.Right(), x) - out*share(hole.X, hole.Right(), x)
		mask = append(mask, uint8(255*max(0, v)+0.5))
	}
	cv.mask.Pix = mask
	return mask
}

// share is how much of the pixel at i lies between lo and hi.
func share(lo, hi float64, i int) float64 {
	return max(0, min(hi, float64(i+1))-max(lo, float64(i)))
}
