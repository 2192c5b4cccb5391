package paint

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"math"

	"golang.org/x/image/draw"
	"golang.org/x/image/math/f64"

	"lidmark/ui/scene"
)

// photos keeps photographs that were read, by where their bytes lie; nil is one that
// cannot be read.
type photos map[*byte]image.Image

// photosKept is how many: one for each yard looked at lately.
const photosKept = 4

// of is the picture of a photograph; nil where it cannot be read.
func (p *photos) of(jpegs []byte) image.Image {
	if len(jpegs) == 0 {
		return nil
	}
	if was, known := (*p)[&jpegs[0]]; known {
		return was
	}
	if *p == nil || len(*p) >= photosKept {
		*p = photos{}
	}
	read, err := jpeg.Decode(bytes.NewReader(jpegs))
	if err != nil {
		read = nil
	}
	(*p)[&jpegs[0]] = read
	return read
}

// sameBytes tells whether two photographs are the same bytes in memory.
func sameBytes(a, b []byte) bool {
	return len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0])
}

// photo paints a photograph.
func (g *brush) photo(m *scene.Photo) {
	from := g.painter.photos.of(m.JPEG)
	if from == nil {
		return
	}
	b := from.Bounds()
	at, side, up := g.device(g.camera.Screen(m.At)), m.Side.Mul(g.camera.Length(1)*g.scale), m.Up.Mul(g.camera.Length(1)*g.scale)
	w, h := float64(b.Dx()), float64(b.Dy())
	left, top := float64(b.Min.X), float64(b.Max.Y)
	// a pixel at x to the right and y below the upper edge lies at x/w along the side
	// and (h−y)/h up
	ax, bx := side.X/w, -up.X/h
	ay, by := side.Y/w, -up.Y/h
	to := f64.Aff3{ax, bx, at.X - ax*left - bx*top, ay, by, at.Y - ay*left - by*top}
	dst, ok := g.dst.SubImage(g.clip).(*image.RGBA)
	if !ok || dst.Rect.Empty() || math.Abs(ax*by-ay*bx) < 1e-12 {
		return
	}
	shade := image.NewUniform(color.Alpha{uint8(math.Round(255 * (1 - min(max(m.Clear, 0), 1))))})
	draw.ApproxBiLinear.Transform(dst, to, from, b, draw.Over, &draw.Options{SrcMask: shade})
}

// photoCorners are where a photograph lies, in dp.
func (g *brush) photoCorners(m *scene.Photo) []scene.Point {
	at := g.camera.Screen
	return []scene.Point{at(m.At), at(m.At.Add(m.Side)), at(m.At.Add(m.Side).Add(m.Up)), at(m.At.Add(m.Up))}
}
