package paint_test

import (
	"flag"
	"image"
	"image/draw"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

var update = flag.Bool("update", false, "write the pictures in testdata anew; look at them before committing")

func painter(t testing.TB) *paint.Painter {
	t.Helper()
	p, err := paint.New()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestSheetsLookAsKept(t *testing.T) {
	for name, s := range sheets {
		t.Run(name, func(t *testing.T) {
			dst := image.NewRGBA(image.Rect(0, 0, int(s.w*s.scale), int(s.h*s.scale)))
			painter(t).Paint(dst, s.scene, s.theme, s.scale)
			compare(t, name, dst)
		})
	}
}

// compare fails unless the picture is the kept one but for rounding: processors
// may fuse multiplications. On failure the new picture is written beside it.
func compare(t *testing.T, name string, got *image.RGBA) {
	t.Helper()
	file := filepath.Join("testdata", name+".png")
	if *update {
		write(t, file, got)
		return
	}
	want := read(t, file)
	if got.Rect != want.Rect {
		t.Fatalf("%s: picture of %v, want %v", name, got.Rect, want.Rect)
	}
	const tolerance, allowed = 3, 0.0005
	off := 0
	for i := 0; i < len(got.Pix); i += 4 {
		for j := range 4 {
			if d := int(got.Pix[i+j]) - int(want.Pix[i+j]); d > tolerance || d < -tolerance {
				off++
				break
			}
		}
	}
	if limit := int(allowed * float64(len(got.Pix)/4)); off > limit {
		failed := filepath.Join(t.ArtifactDir(), name+".png")
		write(t, failed, got)
		t.Errorf("%s: %d pixels differ from %s, at most %d may; see %s (go test -artifacts keeps it)", name, off, file, limit, failed)
	}
}

func write(t *testing.T, file string, m image.Image) {
	t.Helper()
	f, err := os.Create(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	e := png.Encoder{CompressionLevel: png.BestCompression}
	if err := e.Encode(f, m); err != nil {
		t.Fatal(err)
	}
}

func read(t *testing.T, file string) *image.RGBA {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatalf("%v; write it with go test -update", err)
	}
	defer f.Close()
	m, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	out := image.NewRGBA(m.Bounds())
	draw.Draw(out, out.Rect, m, m.Bounds().Min, draw.Src)
	return out
}

func TestPaintingTwiceGivesTheSamePicture(t *testing.T) {
	p := painter(t)
	s := lidParts()
	paintOn := func() *image.RGBA {
		dst := image.NewRGBA(image.Rect(0, 0, int(sheetWidth), int(partHeight)))
		p.Paint(dst, s, paint.Light, 1)
		return dst
	}
	first := paintOn()
	p.Paint(image.NewRGBA(image.Rect(0, 0, 500, 500)), lidRows(), paint.Dark, 1.3)
	if second := paintOn(); string(first.Pix) != string(second.Pix) {
		t.Error("the same scene painted after another one looks different")
	}
}

func TestPaneCutsOff(t *testing.T) {
	dst := image.NewRGBA(image.Rect(0, 0, 100, 100))
	lid := scene.Lid{At: scene.Point{X: 5, Y: 5}, Size: 40, Condition: scene.Laying, Seen: true, Entrance: 180, Selected: true}
	painter(t).Paint(dst, scene.Scene{Marks: []scene.Mark{scene.Pane{
		Clip:   scene.Area{X: 30, Y: 30, W: 40, H: 40},
		Camera: scene.Camera{Scale: 10, Shift: scene.Point{X: 20, Y: 20}},
		Marks: []scene.Mark{
			scene.Rect{Area: scene.Area{X: -10, Y: -10, W: 30, H: 30}, Fill: scene.Map},
			lid,
			scene.Text{At: scene.Point{X: 1, Y: 2}, Text: "overflowing words", Size: 20, Role: scene.Ink},
			scene.Line{To: scene.Point{X: 20, Y: 20}, Stroke: scene.Stroke{Role: scene.Act, Width: 3}},
		},
	}}}, paint.Light, 1)
	clip := image.Rect(30, 30, 70, 70)
	for y := range 100 {
		for x := range 100 {
			if in, painted := image.Pt(x, y).In(clip), dst.RGBAAt(x, y).A != 0; in != painted {
				t.Fatalf("pixel %d, %d: painted %v, inside the clip %v", x, y, painted, in)
			}
		}
	}
}

func TestBearingsAndTurnsGoRound(t *testing.T) {
	p := painter(t)
	lid := func(entrance, turn float64) scene.Lid {
		return scene.Lid{At: scene.Point{X: 50, Y: 50}, Size: 40, Condition: scene.Virgin, Seen: true, Entrance: entrance, Turn: turn}
	}
	for _, c := range [][2]scene.Lid{{lid(-45, 0), lid(315, 0)}, {lid(370, -80), lid(10, 10)}} {
		if a, b := picture(p, 1, c[0]), picture(p, 1, c[1]); string(a.Pix) != string(b.Pix) {
			t.Errorf("entrance %v, turn %v looks other than entrance %v, turn %v", c[0].Entrance, c[0].Turn, c[1].Entrance, c[1].Turn)
		}
	}
}

// More looks than are kept at a time still come out right.
func TestMoreLooksThanAreKept(t *testing.T) {
	p := painter(t)
	lid := scene.Lid{At: scene.Point{X: 14, Y: 14}, Size: 20, Condition: scene.Laying, Seen: true, Selected: true}
	first := picture(p, 4, lid)
	for i := range 60 {
		big := lid
		big.Size, big.Entrance = 110, float64(i*6)
		picture(p, 4, big)
	}
	if again := picture(p, 4, lid); string(again.Pix) != string(first.Pix) {
		t.Error("a lid painted again after many others looks different")
	}
}
