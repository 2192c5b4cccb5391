package paint_test

import (
	"image"
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

// plates is a yard of 2,500 stands of four lids too small for letters, turned
// by an angle.
func plates(degrees float64) scene.Scene {
	s := scene.Scene{Marks: []scene.Mark{scene.Rect{Area: scene.Area{W: wallWidth, H: wallHeight}, Fill: scene.Map}}}
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	for i := range 2500 {
		c := scene.Point{X: 20.3 + 27.1*float64(i%50), Y: 12.7 + 17.3*float64(i/50)}
		var corners []scene.Point
		for _, p := range []scene.Point{{X: -12, Y: -8}, {X: 12, Y: -8}, {X: 12, Y: 8}, {X: -12, Y: 8}} {
			corners = append(corners, c.Add(scene.Point{X: p.X*cos - p.Y*sin, Y: p.X*sin + p.Y*cos}))
		}
		s.Add(scene.Poly{Points: corners, Fill: scene.Panel, Stroke: scene.Stroke{Role: scene.Rule, Width: 1}})
		for _, p := range []scene.Point{{X: -6, Y: -4}, {X: 6, Y: -4}, {X: 6, Y: 4}, {X: -6, Y: 4}} {
			s.Add(scene.Rect{Area: scene.Around(c.Add(p), 6), Fill: scene.Laying.Fill(), Stroke: scene.Stroke{Role: scene.Laying.Line(), Width: 1}})
		}
	}
	return s
}

// An upright rectangle has the pixels that the rasteriser gives the same one
// with a fifth point on its edge, but for rounding and the very corners of its
// outline.
func TestUprightRectanglesLookTheSame(t *testing.T) {
	p := painter(t)
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		a := scene.Area{X: draw("x", -5, 30), Y: draw("y", -5, 30), W: draw("w", 2, 30), H: draw("h", 2, 30)}
		corners := []scene.Point{{X: a.X, Y: a.Y}, {X: a.Right(), Y: a.Y}, {X: a.Right(), Y: a.Bottom()}, {X: a.X, Y: a.Bottom()}}
		if rapid.Bool().Draw(t, "other way round") {
			corners = []scene.Point{corners[0], corners[3], corners[2], corners[1]}
		}
		m := scene.Poly{Points: corners, Fill: scene.Act}
		if rapid.Bool().Draw(t, "outlined") {
			m.Stroke = scene.Stroke{Role: scene.Pen, Width: draw("width", 0.5, 1.5)}
		}
		scale := rapid.SampledFrom([]float64{1, 1.5, 2}).Draw(t, "scale")
		paintOne := func(m scene.Poly) *image.RGBA {
			dst := image.NewRGBA(image.Rect(0, 0, 64, 64))
			p.Paint(dst, scene.Scene{Marks: []scene.Mark{scene.Rect{Area: scene.Area{W: 64, H: 64}, Fill: scene.Ground}, m}}, paint.Light, scale)
			return dst
		}
		got := paintOne(m)
		m.Points = append(m.Points[:4:4], m.Points[3].Add(m.Points[0]).Mul(0.5))
		want := paintOne(m)
		off := 0
		for i := range got.Pix {
			if d := int(got.Pix[i]) - int(want.Pix[i]); d > 6 || d < -6 {
				off++
			}
		}
		if limit := 4 * 4 * 3; off > limit {
			t.Fatalf("%d parts of pixels differ, at most %d may", off, limit)
		}
	})
}

// The hole of an outline that is thinner than a pixel is no whole row of it.
func TestAThinHoleIsOutlined(t *testing.T) {
	p, dst := painter(t), image.NewRGBA(image.Rect(0, 0, 16, 8))
	thin := scene.Rect{Area: scene.Area{X: 1, Y: 2.5, W: 10.5, H: 2}, Fill: scene.Act, Stroke: scene.Stroke{Role: scene.Pen, Width: 1.5}}
	p.Paint(dst, scene.Scene{Marks: []scene.Mark{scene.Rect{Area: scene.Area{W: 16, H: 8}, Fill: scene.Ground}, thin}}, paint.Light, 1)
	bare := image.NewRGBA(dst.Rect)
	p.Paint(bare, scene.Scene{Marks: []scene.Mark{scene.Rect{Area: scene.Area{W: 16, H: 8}, Fill: scene.Act}}}, paint.Light, 1)
	if got := dst.RGBAAt(5, 3); got == bare.RGBAAt(5, 3) {
		t.Errorf("the middle of a thin outline is %v, all filling", got)
	}
}

// BenchmarkPaintPlates paints a yard seen from afar, level with the window and
// turned; its floor is BenchmarkCopyPixels.
func BenchmarkPaintPlates(b *testing.B) {
	for name, degrees := range map[string]float64{"level": 0, "turned": 10} {
		b.Run(name, func(b *testing.B) {
			p, dst, s := painter(b), window(), plates(degrees)
			for b.Loop() {
				p.Paint(dst, s, paint.Light, 1)
			}
		})
	}
}
