package paint_test

import (
	"image"
	"image/color"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

// drawMark draws any mark by chance.
func drawMark(t *rapid.T, deep bool) scene.Mark {
	point := func() scene.Point {
		return scene.Point{X: rapid.Float64Range(-20, 220).Draw(t, "x"), Y: rapid.Float64Range(-20, 170).Draw(t, "y")}
	}
	role := rapid.SampledFrom([]scene.Role{scene.Ink, scene.Act, scene.Pen, scene.Panel, scene.Laying.Fill(), scene.None})
	line := scene.Stroke{Role: role.Draw(t, "stroke"), Width: rapid.SampledFrom([]float64{0.8, 1, 2.5, 7}).Draw(t, "width"), Round: rapid.Bool().Draw(t, "round")}
	area := scene.Area{X: point().X, Y: point().Y, W: rapid.Float64Range(0, 60).Draw(t, "w"), H: rapid.Float64Range(0, 60).Draw(t, "h")}
	kinds := 8
	if !deep {
		kinds = 7
	}
	switch rapid.IntRange(0, kinds-1).Draw(t, "kind") {
	case 0:
		return scene.Rect{Area: area, Radius: rapid.SampledFrom([]float64{0, 5}).Draw(t, "radius"), Fill: role.Draw(t, "fill"), Clear: rapid.SampledFrom([]float64{0, 0.5}).Draw(t, "clear"), Stroke: line}
	case 1:
		return scene.Line{From: point(), To: point(), Stroke: line}
	case 2:
		return scene.Circle{At: point(), Radius: rapid.Float64Range(0, 30).Draw(t, "radius"), Fill: role.Draw(t, "fill"), Stroke: line}
	case 3:
		p := point()
		return scene.Poly{Points: []scene.Point{p, p.Add(scene.Point{X: area.W, Y: 5}), p.Add(scene.Point{X: 10, Y: area.H})}, Open: rapid.Bool().Draw(t, "open"), Fill: role.Draw(t, "fill"), Hatch: scene.Hatch{Role: role.Draw(t, "hatch"), Pitch: 6, Weight: 1}, Stroke: line}
	case 4:
		return scene.Text{At: point(), Text: rapid.SampledFrom([]string{"look for eggs", "Åfj", "7"}).Draw(t, "text"), Size: rapid.SampledFrom([]float64{12, 28}).Draw(t, "size"), Weight: scene.Weight(rapid.IntRange(0, int(scene.Italic)).Draw(t, "weight")), Anchor: scene.Anchor(rapid.IntRange(0, 2).Draw(t, "anchor")), Middle: rapid.Bool().Draw(t, "middle"), Role: scene.Ink}
	case 5:
		return scene.Icon{At: point(), Size: rapid.SampledFrom([]float64{20, 32}).Draw(t, "size"), Symbol: scene.Symbol(rapid.IntRange(1, scene.SymbolCount-1).Draw(t, "symbol")), Role: scene.Ink}
	case 6:
		return scene.Lid{
			At: point(), Size: rapid.SampledFrom([]float64{12, 29, 64, 96}).Draw(t, "size"), Condition: rapid.SampledFrom(scene.Conditions()).Draw(t, "condition"),
			Seen: rapid.Bool().Draw(t, "seen"), Name: rapid.SampledFrom([]string{"", "A3", "oak tree 14"}).Draw(t, "name"), Entrance: 45, Robbing: rapid.Bool().Draw(t, "robbing"),
			Selected: rapid.Bool().Draw(t, "selected"), Hover: rapid.Bool().Draw(t, "hover"), Focus: rapid.Bool().Draw(t, "focus"), NeedsYou: rapid.Bool().Draw(t, "needs you"),
		}
	}
	p := scene.Pane{Clip: area, Camera: scene.Camera{Scale: 1.5, Shift: scene.Point{X: 10, Y: -5}}}
	for range rapid.IntRange(0, 3).Draw(t, "marks") {
		p.Marks = append(p.Marks, drawMark(t, false))
	}
	return p
}

// changed is marks with a few of them taken out, put in or changed, in panes too.
func changed(t *rapid.T, marks []scene.Mark, deep bool) []scene.Mark {
	marks = slices.Clone(marks)
	for range rapid.IntRange(0, 3).Draw(t, "changes") {
		i := rapid.IntRange(0, len(marks)).Draw(t, "at")
		switch how := rapid.IntRange(0, 2).Draw(t, "how"); {
		case how == 0 || i == len(marks):
			marks = slices.Insert(marks, i, drawMark(t, deep))
		case how == 1:
			marks = slices.Delete(marks, i, i+1)
		default:
			if p, ok := marks[i].(scene.Pane); ok {
				p.Marks = changed(t, p.Marks, false)
				marks[i] = p
				continue
			}
			marks[i] = drawMark(t, deep)
		}
	}
	return marks
}

var sheetOf200 = scene.Rect{Area: scene.Area{W: 200, H: 150}, Fill: scene.Ground}

// However a picture changes, painting what has changed gives what painting all
// of it would, to the last bit.
func TestRepaintIsPaint(t *testing.T) {
	p, fresh := painter(t), painter(t)
	rapid.Check(t, func(t *rapid.T) {
		scale := rapid.SampledFrom([]float64{1, 1.25, 2}).Draw(t, "scale")
		size := image.Rect(0, 0, int(200*scale), int(150*scale))
		dst, want := image.NewRGBA(size), image.NewRGBA(size)
		marks := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) scene.Mark { return drawMark(t, true) }), 0, 12).Draw(t, "marks")
		for range 3 {
			s := scene.Scene{Marks: append([]scene.Mark{sheetOf200}, marks...)}
			p.Repaint(dst, s, paint.Light, scale)
			fresh.Paint(want, s, paint.Light, scale)
			for i := range dst.Pix {
				if dst.Pix[i] != want.Pix[i] {
					at := i / 4
					t.Fatalf("pixel %d, %d is %v, want %v", at%size.Dx(), at/size.Dx(), dst.RGBAAt(at%size.Dx(), at/size.Dx()), want.RGBAAt(at%size.Dx(), at/size.Dx()))
				}
			}
			marks = changed(t, marks, true)
		}
	})
}

// Where nothing has changed nothing is painted; another theme, scale or
// picture is painted whole.
func TestRepaintLeavesTheRestAlone(t *testing.T) {
	p := painter(t)
	dst := image.NewRGBA(image.Rect(0, 0, 200, 150))
	lid := scene.Lid{At: scene.Point{X: 40, Y: 40}, Size: 29, Condition: scene.Laying, Seen: true}
	s := scene.Scene{Marks: []scene.Mark{sheetOf200, lid}}
	p.Repaint(dst, s, paint.Light, 1)
	blot := color.RGBA{1, 2, 3, 255}
	kept := func(theme paint.Theme, scale float64, hover bool) bool {
		dst.SetRGBA(150, 100, blot)
		lid.Hover = hover
		p.Repaint(dst, scene.Scene{Marks: []scene.Mark{sheetOf200, lid}}, theme, scale)
		return dst.RGBAAt(150, 100) == blot
	}
	if !kept(paint.Light, 1, false) || !kept(paint.Light, 1, true) {
		t.Error("a far pixel is painted anew for the ring on a lid")
	}
	if kept(paint.Dark, 1, true) || kept(paint.Dark, 2, true) {
		t.Error("another theme or scale leaves pixels of the one before")
	}
	other := image.NewRGBA(dst.Rect)
	p.Repaint(other, s, paint.Dark, 2)
	if other.RGBAAt(150, 100).A != 255 {
		t.Error("another picture is not painted whole")
	}
}

// hovered is a scene with the pointer on one of its lids.
func hovered(s scene.Scene, i int) scene.Scene {
	marks := slices.Clone(s.Marks)
	l := marks[i].(scene.Lid)
	l.Hover = true
	marks[i] = l
	return scene.Scene{Marks: marks}
}

func TestRepaintAllocatesLittle(t *testing.T) {
	p, dst, s := painter(t), window(), wall(10_000, 16)
	on := [2]scene.Scene{hovered(s, 200), hovered(s, 900)}
	i := 0
	frame := func() { i++; p.Repaint(dst, on[i%2], paint.Light, 1) }
	frame()
	frame()
	const most = 12 // whatever the number of lids
	if n := testing.AllocsPerRun(5, frame); n > most {
		t.Errorf("a ring that moves allocates %v times, want at most %d", n, most)
	}
}

// BenchmarkRepaintHover moves a ring over a wall of 10,000 lids. What it saves
// is the rest of BenchmarkPaint10000Lids; its floor is BenchmarkCompareMarks.
func BenchmarkRepaintHover(b *testing.B) {
	p, dst, s := painter(b), window(), wall(10_000, 16)
	on := [2]scene.Scene{hovered(s, 200), hovered(s, 900)}
	i := 0
	for b.Loop() {
		i++
		p.Repaint(dst, on[i%2], paint.Light, 1)
	}
}

// BenchmarkCompareMarks compares the marks of a wall with themselves.
func BenchmarkCompareMarks(b *testing.B) {
	s, other := wall(10_000, 16), wall(10_000, 16)
	for b.Loop() {
		if !slices.Equal(s.Marks, other.Marks) {
			b.Fatal("they differ")
		}
	}
}
