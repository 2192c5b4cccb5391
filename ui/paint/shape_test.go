package paint_test

import (
	"image"
	"image/color"
	"math"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/scene"

	"pgregory.net/rapid"
)

const side = 120 // of the pictures in which shapes are tried, pixels

// picture paints marks alone on a small transparent picture.
func picture(p *paint.Painter, scale float64, marks ...scene.Mark) *image.RGBA {
	dst := image.NewRGBA(image.Rect(0, 0, side, side))
	p.Paint(dst, scene.Scene{Marks: marks}, paint.Light, scale)
	return dst
}

func place(t *rapid.T, name string) scene.Point {
	in := rapid.Float64Range(10, side-10)
	return scene.Point{X: in.Draw(t, name+" x"), Y: in.Draw(t, name+" y")}
}

// distance returns how far p is from the nearest point of the line.
func distance(p scene.Point, line []scene.Point) float64 {
	best := math.Inf(1)
	for i := 1; i < len(line); i++ {
		a, d := line[i-1], line[i].Sub(line[i-1])
		w := p.Sub(a)
		t := 0.0
		if n := d.X*d.X + d.Y*d.Y; n > 0 {
			t = max(0, min(1, (w.X*d.X+w.Y*d.Y)/n))
		}
		best = min(best, math.Hypot(w.X-t*d.X, w.Y-t*d.Y))
	}
	return best
}

// A line with round ends covers exactly the pixels within half its width.
func TestLineCoversWhatLiesWithinHalfItsWidth(t *testing.T) {
	p := painter(t)
	rapid.Check(t, func(t *rapid.T) {
		line := make([]scene.Point, rapid.IntRange(2, 6).Draw(t, "points"))
		for i := range line {
			line[i] = place(t, "p")
		}
		width := rapid.Float64Range(3, 15).Draw(t, "width")
		s := scene.Stroke{Role: scene.Act, Width: width, Round: true}
		got := picture(p, 1, scene.Poly{Points: line, Open: true, Stroke: s})
		covers(t, got, line, width)
	})
}

// A line that turns back on itself is round where it turns.
func TestALineThereAndBackHasARoundTurn(t *testing.T) {
	p := painter(t)
	for _, turn := range []scene.Point{{X: 60, Y: 90}, {X: 90, Y: 60}, {X: 30, Y: 40}, {X: 85, Y: 95}} {
		from := scene.Point{X: 60, Y: 60}
		line := []scene.Point{from, turn, from}
		s := scene.Stroke{Role: scene.Act, Width: 12, Round: true}
		covers(t, picture(p, 1, scene.Poly{Points: line, Open: true, Stroke: s}), line, s.Width)
	}
}

// covers fails unless just the pixels within half the width of the line are
// covered; a pixel more or less is the edge.
func covers(t interface{ Fatalf(string, ...any) }, got *image.RGBA, line []scene.Point, width float64) {
	for y := range side {
		for x := range side {
			d := distance(scene.Point{X: float64(x) + .5, Y: float64(y) + .5}, line)
			a := got.RGBAAt(x, y).A
			if d < width/2-1 && a < 250 || d > width/2+1 && a > 5 {
				t.Fatalf("pixel %d, %d, %.2f from the line %v of width %.2f, is covered by %d", x, y, d, line, width, a)
			}
		}
	}
}

func TestRectOnWholePixels(t *testing.T) {
	ink := paint.Light.Colour(scene.Ink)
	got := picture(painter(t), 1, scene.Rect{Area: scene.Area{X: 10, Y: 20, W: 30, H: 5}, Fill: scene.Ink})
	for y := range side {
		for x := range side {
			want := color.RGBA{}
			if image.Pt(x, y).In(image.Rect(10, 20, 40, 25)) {
				want = ink
			}
			if got.RGBAAt(x, y) != want {
				t.Fatalf("pixel %d, %d = %v, want %v", x, y, got.RGBAAt(x, y), want)
			}
		}
	}
}

// Hairlines are sharp at every scale: all their pixels are full, and as many
// side by side as the scale rounds to.
func TestHairlinesAreSharp(t *testing.T) {
	p := painter(t)
	for _, scale := range []float64{1, 1.25, 1.5, 2} {
		hair := scene.Stroke{Role: scene.Ink, Width: 1}
		got := picture(p, scale,
			scene.Line{From: scene.Point{X: 5.3, Y: 0}, To: scene.Point{X: 5.3, Y: 50}, Stroke: hair},
			scene.Rect{Area: scene.Area{X: 20, Y: 3, W: 25.4, H: 30}, Stroke: hair})
		counts := map[uint8]int{}
		for x := range side {
			counts[got.RGBAAt(x, 20).A]++
		}
		if want := 3 * int(math.Round(scale)); counts[0xFF] != want || len(counts) != 2 {
			t.Errorf("scale %v: opacities across three hairlines %v, want %d full and the others none", scale, counts, want)
		}
	}
}

func TestCoveredArea(t *testing.T) {
	p := painter(t)
	stroke := scene.Stroke{Role: scene.Ink, Width: 4}
	for name, c := range map[string]struct {
		mark scene.Mark
		want float64 // square pixels
	}{
		"circle":          {scene.Circle{At: scene.Point{X: 60, Y: 60}, Radius: 30.5, Fill: scene.Ink}, math.Pi * 30.5 * 30.5},
		"ring":            {scene.Circle{At: scene.Point{X: 60, Y: 60}, Radius: 30, Stroke: stroke}, math.Pi * (32*32 - 28*28)},
		"rounded":         {scene.Rect{Area: scene.Area{X: 10.5, Y: 10.5, W: 60, H: 40}, Radius: 10, Fill: scene.Ink}, 2400 - (4-math.Pi)*100},
		"rounded outline": {scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 60, H: 40}, Radius: 10, Stroke: stroke}, 4 * (2*(40+20) + 2*math.Pi*10)},
		"outline":         {scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 60, H: 40}, Stroke: stroke}, 64*44 - 56*36},
		"triangle":        {scene.Poly{Points: []scene.Point{{X: 10, Y: 10}, {X: 90, Y: 20}, {X: 30, Y: 100}}, Fill: scene.Ink}, 3500},
		"cut line":        {scene.Line{From: scene.Point{X: 10, Y: 20}, To: scene.Point{X: 70, Y: 100}, Stroke: stroke}, 400},
		"dashes":          {scene.Line{From: scene.Point{X: 10, Y: 20}, To: scene.Point{X: 70, Y: 100}, Stroke: scene.Stroke{Role: scene.Ink, Width: 4, Dash: [2]float64{6, 4}}}, 240},
		"dashed rect":     {scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 60, H: 40}, Stroke: scene.Stroke{Role: scene.Ink, Width: 2, Dash: [2]float64{5, 5}}}, 200},
		"hatch":           {scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 100, H: 100}, Hatch: scene.Hatch{Role: scene.Ink, Pitch: 5, Weight: 1}}, 2000},
		"falling hatch":   {scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 100, H: 100}, Hatch: scene.Hatch{Role: scene.Ink, Pitch: 8, Weight: 2, Falling: true}}, 2500},
		"half clear":      {scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 40, H: 50}, Fill: scene.Ink, Clear: 0.5}, 1000},
	} {
		got := 0.0
		for _, a := range alphas(picture(p, 1, c.mark)) {
			got += float64(a) / 255
		}
		if math.Abs(got-c.want) > 0.02*c.want {
			t.Errorf("%s covers %.0f square pixels, want %.0f", name, got, c.want)
		}
	}
}

func alphas(m *image.RGBA) []uint8 {
	var out []uint8
	for i := 3; i < len(m.Pix); i += 4 {
		out = append(out, m.Pix[i])
	}
	return out
}

// What a pane shows is the same part of the same picture, pixel for pixel.
func TestCutPictureIsAPartOfTheWhole(t *testing.T) {
	p := painter(t)
	rapid.Check(t, func(t *rapid.T) {
		marks := []scene.Mark{
			scene.Rect{Area: scene.Between(place(t, "a"), place(t, "b")), Fill: scene.Map, Radius: 4, Stroke: scene.Stroke{Role: scene.Ink, Width: 1}},
			scene.Lid{
				At: place(t, "lid"), Size: rapid.Float64Range(12, 90).Draw(t, "size"), Condition: rapid.SampledFrom(scene.Conditions()).Draw(t, "condition"),
				Turn: rapid.Float64Range(0, 360).Draw(t, "turn"), NeedsYou: rapid.Bool().Draw(t, "needs you"), Faded: rapid.Bool().Draw(t, "faded"),
			},
			scene.Text{At: place(t, "text"), Text: "Quill brook", Size: 15, Weight: scene.Italic, Role: scene.Pen},
			scene.Line{From: place(t, "from"), To: place(t, "to"), Stroke: scene.Stroke{Role: scene.Act, Width: 2.5}},
		}
		clip := image.Rect(rapid.IntRange(0, 60).Draw(t, "x"), rapid.IntRange(0, 60).Draw(t, "y"), rapid.IntRange(61, side).Draw(t, "right"), rapid.IntRange(61, side).Draw(t, "bottom"))
		whole := picture(p, 1, marks...)
		part := picture(p, 1, scene.Pane{Clip: scene.Area{X: float64(clip.Min.X), Y: float64(clip.Min.Y), W: float64(clip.Dx()), H: float64(clip.Dy())}, Marks: marks})
		for y := range side {
			for x := range side {
				want := color.RGBA{}
				if image.Pt(x, y).In(clip) {
					want = whole.RGBAAt(x, y)
				}
				if got := part.RGBAAt(x, y); !alike(got, want) {
					t.Fatalf("pixel %d, %d of the part = %v, want %v", x, y, got, want)
				}
			}
		}
	})
}

// alike reports whether colours are the same but for rounding.
func alike(a, b color.RGBA) bool {
	near := func(x, y uint8) bool { return max(x, y)-min(x, y) <= 4 }
	return near(a.R, b.R) && near(a.G, b.G) && near(a.B, b.B) && near(a.A, b.A)
}

// A hatch belongs to the world: it moves along when the camera does.
func TestHatchMovesWithTheWorld(t *testing.T) {
	p := painter(t)
	at := func(x, y float64) *image.RGBA {
		return picture(p, 1, scene.Pane{
			Clip: scene.Area{W: side, H: side}, Camera: scene.Camera{Scale: 1, Shift: scene.Point{X: x, Y: y}},
			Marks: []scene.Mark{scene.Rect{Area: scene.Area{X: 20, Y: 20, W: 40, H: 40}, Hatch: scene.Hatch{Role: scene.Ink, Pitch: 7, Weight: 2}}},
		})
	}
	still, moved := at(0, 0), at(13, 5)
	for y := range 80 {
		for x := range 80 {
			if a, b := still.RGBAAt(x, y), moved.RGBAAt(x+13, y+5); !alike(a, b) {
				t.Fatalf("pixel %d, %d = %v, after moving %v", x, y, a, b)
			}
		}
	}
}

func TestEverySymbolStaysOnItsSquare(t *testing.T) {
	p := painter(t)
	for i := 1; i < scene.SymbolCount; i++ {
		got := picture(p, 2, scene.Icon{At: scene.Point{X: 30, Y: 30}, Size: 24, Symbol: scene.Symbol(i), Role: scene.Ink})
		box := ink(got)
		if box.Empty() || !box.In(image.Rect(35, 35, 85, 85)) {
			t.Errorf("symbol %d is painted on %v, want something within its square", i, box)
		}
	}
}

// ink returns the smallest rectangle around what was painted.
func ink(m *image.RGBA) image.Rectangle {
	var box image.Rectangle
	for y := range side {
		for x := range side {
			if m.RGBAAt(x, y).A != 0 {
				box = box.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	return box
}

// However near the camera, what fills the window fills it, and lines that cross
// it do.
func TestShapesThatReachFarBeyondTheWindow(t *testing.T) {
	p := painter(t)
	rapid.Check(t, func(t *rapid.T) {
		k := math.Pow(10, rapid.Float64Range(0, 7).Draw(t, "power"))
		centre := scene.Point{X: 60, Y: 60}
		corners := make([]scene.Point, 3)
		turn := rapid.Float64Range(0, 2*math.Pi).Draw(t, "turn")
		for i := range corners {
			sin, cos := math.Sincos(turn + float64(i)*2*math.Pi/3)
			corners[i] = centre.Add(scene.Point{X: cos, Y: sin}.Mul(200 * k))
		}
		got := picture(p, 1, scene.Poly{Points: corners, Fill: scene.Map})
		for i, a := range alphas(got) {
			if a != 0xFF {
				t.Fatalf("a triangle %.0f times the window leaves its pixel %d, %d at %d", k, i%side, i/side, a)
			}
		}
		line := scene.Line{From: corners[0], To: centre.Sub(corners[0].Sub(centre)), Stroke: scene.Stroke{Role: scene.Ink, Width: 6}}
		if a := picture(p, 1, line).RGBAAt(60, 60).A; a != 0xFF {
			t.Fatalf("a line %.0f times the window, across its middle, covers that by %d", k, a)
		}
	})
}

func TestMarksWithNothingToShowPaintNothing(t *testing.T) {
	p := painter(t)
	hatch := scene.Hatch{Role: scene.Ink, Pitch: 4, Weight: 1}
	stroke := scene.Stroke{Role: scene.Ink, Width: 2}
	at := scene.Point{X: 50, Y: 50}
	for name, m := range map[string]scene.Mark{
		"polygon without points":  scene.Poly{Fill: scene.Ink, Hatch: hatch, Stroke: stroke},
		"polygon of one point":    scene.Poly{Points: []scene.Point{at}, Fill: scene.Ink, Hatch: hatch, Stroke: stroke},
		"rect without colours":    scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 50, H: 50}},
		"empty rect":              scene.Rect{Area: scene.Area{X: 10, Y: 10}, Fill: scene.Ink},
		"fully clear rect":        scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 50, H: 50}, Fill: scene.Ink, Clear: 1},
		"hatch without distance":  scene.Rect{Area: scene.Area{X: 10, Y: 10, W: 50, H: 50}, Hatch: scene.Hatch{Role: scene.Ink, Weight: 1}},
		"text without characters": scene.Text{At: at, Size: 20, Role: scene.Ink},
		"lid without size":        scene.Lid{At: at},
		"no symbol":               scene.Icon{At: at, Size: 24, Role: scene.Ink},
		"pane without room":       scene.Pane{Clip: scene.Area{X: 10, Y: 10}, Marks: []scene.Mark{scene.Rect{Area: scene.Area{W: side, H: side}, Fill: scene.Ink}}},
	} {
		if box := ink(picture(p, 1, m)); !box.Empty() {
			t.Errorf("%s paints on %v", name, box)
		}
	}
}
