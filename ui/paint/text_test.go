package paint_test

import (
	"image"
	"math"
	"testing"

	"lidmark/ui/scene"
)

// Columns of figures stand because every figure is as wide as every other.
func TestFiguresAreAllTheSameWidth(t *testing.T) {
	p := painter(t)
	for w := scene.Regular; w <= scene.Bold; w++ {
		for _, figures := range []string{"0", "1", "7", "9"} {
			if got := p.Width(figures, 20, w); math.Abs(got-12) > 1e-9 {
				t.Errorf("weight %d: Width(%q, 20) = %v, want 12", w, figures, got)
			}
		}
		if got := p.Width("111", 20, w); math.Abs(got-36) > 1e-9 {
			t.Errorf("weight %d: Width(%q, 20) = %v, want 36", w, "111", got)
		}
	}
}

func TestWidthGrowsWithSizeAndTellsWhereTextEnds(t *testing.T) {
	p := painter(t)
	one, two := p.Width("laying", 14, scene.Regular), p.Width("laying", 28, scene.Regular)
	if math.Abs(two-2*one) > 1e-9 {
		t.Errorf("Width at 28 = %v, want twice that at 14, %v", two, one)
	}
	box := ink(picture(p, 1, scene.Text{At: scene.Point{X: 20, Y: 50}, Text: "HHHH", Size: 20, Role: scene.Ink}))
	end := 20 + p.Width("HHHH", 20, scene.Regular)
	if box.Min.X < 20 || float64(box.Max.X) > end+1 || float64(box.Max.X) < end-4 {
		t.Errorf("text from 20 is painted on %v, want it to end shortly before %v", box, end)
	}
	if box.Max.Y != 50 {
		t.Errorf("capitals on the baseline 50 end at %d", box.Max.Y)
	}
}

func TestAnchors(t *testing.T) {
	p := painter(t)
	width := p.Width("HH", 20, scene.Bold)
	for anchor, want := range map[scene.Anchor]float64{scene.Left: 60, scene.Centre: 60 - width/2, scene.Right: 60 - width} {
		box := ink(picture(p, 1, scene.Text{At: scene.Point{X: 60, Y: 60}, Text: "HH", Size: 20, Weight: scene.Bold, Anchor: anchor, Role: scene.Ink}))
		if d := float64(box.Min.X) - want; d < -1 || d > 3 {
			t.Errorf("anchor %d: text begins at %d, want about %.1f", anchor, box.Min.X, want)
		}
	}
	box := ink(picture(p, 1, scene.Text{At: scene.Point{X: 20, Y: 60}, Text: "H8", Size: 40, Middle: true, Role: scene.Ink}))
	if mid := float64(box.Min.Y+box.Max.Y) / 2; math.Abs(mid-60) > 1 {
		t.Errorf("text about the middle line 60 has its middle at %v", mid)
	}
}

func TestTextInAPaneKeepsItsSize(t *testing.T) {
	p := painter(t)
	text := scene.Text{At: scene.Point{X: 1, Y: 2}, Shift: scene.Point{X: 5}, Text: "E", Size: 20, Role: scene.Ink}
	pane := scene.Pane{Clip: scene.Area{W: side, H: side}, Camera: scene.Camera{Scale: 30}, Marks: []scene.Mark{text}}
	got := ink(picture(p, 1, pane))
	text.At, text.Shift = scene.Point{X: 35, Y: 60}, scene.Point{}
	if want := ink(picture(p, 1, text)); got != want {
		t.Errorf("text in a pane is painted on %v, want %v", got, want)
	}
}

func TestSignsThatTheTypefaceLacks(t *testing.T) {
	p := painter(t)
	boxes := map[image.Rectangle]rune{}
	for _, r := range "▲▼◀▶■●☃" {
		box := ink(picture(p, 1, scene.Text{At: scene.Point{X: 20, Y: 60}, Text: string(r), Size: 60, Role: scene.Ink}))
		if box.Empty() {
			t.Errorf("%c paints nothing", r)
		}
		if box.Max.Y > 75 || box.Min.Y < 0 {
			t.Errorf("%c is painted on %v, far from its baseline", r, box)
		}
		boxes[box] = r
	}
	if len(boxes) < 5 {
		t.Errorf("only %d different shapes: %v", len(boxes), boxes)
	}
}
