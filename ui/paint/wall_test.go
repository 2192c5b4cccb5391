package paint_test

import (
	"fmt"
	"image"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

// The window in which a wall is measured, in pixels.
const wallWidth, wallHeight = 1400, 900

// wall returns count lids of the given size side by side, of all conditions, seen
// and not, looking all ways, some with clocks and signs. What does not fit in the
// window starts again at the top, so that every lid costs its pixels.
func wall(count int, size float64) scene.Scene {
	var s scene.Scene
	pitch := max(size, 10)
	across, down := int(wallWidth/pitch), int(wallHeight/pitch)
	for i := range count {
		cell := i % (across * down)
		s.Add(scene.Lid{
			At:   scene.Point{X: (float64(cell%across) + .5) * pitch, Y: (float64(cell/across) + .5) * pitch},
			Size: size, Condition: scene.Condition(i % 10), Seen: i%3 == 0, Entrance: float64(i%8) * 45,
			Timed: i%2 == 0, Used: float64(i%12) / 10, NeedsYou: i%11 == 0,
			Tag: scene.Tag{Ref: scene.Ref{Kind: "nuc", ID: fmt.Sprint(i)}},
		})
	}
	return s
}

func window() *image.RGBA { return image.NewRGBA(image.Rect(0, 0, wallWidth, wallHeight)) }

// A frame of lids that were all painted before makes no garbage, whatever their
// number.
func TestWarmWallAllocatesNothing(t *testing.T) {
	for _, count := range []int{100, 10_000} {
		p, dst, s := painter(t), window(), wall(count, 16)
		p.Paint(dst, s, paint.Light, 1)
		const most = 4 // for the frame, not for its lids
		if n := testing.AllocsPerRun(3, func() { p.Paint(dst, s, paint.Light, 1) }); n > most {
			t.Errorf("painting %d warm lids allocates %v times a frame, want at most %d", count, n, most)
		}
	}
}

func TestWarmTextAllocatesNothing(t *testing.T) {
	p, dst := painter(t), window()
	var s scene.Scene
	for i := range 500 {
		s.Add(scene.Text{At: scene.Point{X: 10.3 * float64(i%40), Y: float64(20 * (i / 40))}, Text: "look for eggs", Size: 14, Anchor: scene.Centre, Role: scene.Ink})
	}
	p.Paint(dst, s, paint.Light, 1)
	const most = 4
	if n := testing.AllocsPerRun(3, func() { p.Paint(dst, s, paint.Light, 1) }); n > most {
		t.Errorf("painting 500 warm texts allocates %v times a frame, want at most %d", n, most)
	}
}

// BenchmarkPaint10000Lids paints a wall anew; BenchmarkCopyPixels is its floor.
func BenchmarkPaint10000Lids(b *testing.B) {
	for _, size := range []float64{12, 16, 24, 40} {
		b.Run(fmt.Sprint(size), func(b *testing.B) {
			p, dst, s := painter(b), window(), wall(10_000, size)
			p.Paint(dst, s, paint.Light, 1)
			b.ReportAllocs()
			for b.Loop() {
				p.Paint(dst, s, paint.Light, 1)
			}
		})
	}
}

// BenchmarkPaintVisibleLids paints as many lids as the window holds.
func BenchmarkPaintVisibleLids(b *testing.B) {
	for _, size := range []float64{12, 40} {
		b.Run(fmt.Sprint(size), func(b *testing.B) {
			p, dst := painter(b), window()
			s := wall(int(wallWidth/size)*int(wallHeight/size), size)
			p.Paint(dst, s, paint.Light, 1)
			for b.Loop() {
				p.Paint(dst, s, paint.Light, 1)
			}
		})
	}
}

// BenchmarkPaintColdLids paints every look of the wall for the first time.
func BenchmarkPaintColdLids(b *testing.B) {
	dst, s := window(), wall(1000, 24)
	for b.Loop() {
		painter(b).Paint(dst, s, paint.Light, 1)
	}
}

// BenchmarkCopyPixels copies the window's pixels once: nothing paints it faster.
func BenchmarkCopyPixels(b *testing.B) {
	dst, src := window(), window()
	b.SetBytes(int64(len(src.Pix)))
	for b.Loop() {
		copy(dst.Pix, src.Pix)
	}
}

// BenchmarkPaintText paints a table's worth of words.
func BenchmarkPaintText(b *testing.B) {
	p, dst := painter(b), window()
	var s scene.Scene
	for i := range 600 {
		s.Add(scene.Text{At: scene.Point{X: 200 * float64(i%7), Y: float64(20 + 10*(i/7))}, Text: "due for a look 17 May", Size: 14, Role: scene.Ink})
	}
	for b.Loop() {
		p.Paint(dst, s, paint.Light, 1)
	}
}
