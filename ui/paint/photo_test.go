package paint

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"testing"

	"lidmark/ui/scene"
)

// fourths is a photograph of 40 by 20 pixels, red left below, blue everywhere else.
func fourths(t *testing.T) []byte {
	t.Helper()
	m := image.NewRGBA(image.Rect(0, 0, 40, 20))
	for x := range 40 {
		for y := range 20 {
			c := color.RGBA{0, 0, 255, 255}
			if x < 20 && y >= 10 {
				c = color.RGBA{255, 0, 0, 255}
			}
			m.Set(x, y, c)
		}
	}
	var b bytes.Buffer
	if err := jpeg.Encode(&b, m, &jpeg.Options{Quality: 100}); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestPhotographLiesAsItIsLaid(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	photo := fourths(t)
	isRed := func(c color.RGBA) bool { return c.R > 180 && c.B < 90 }
	isBlue := func(c color.RGBA) bool { return c.B > 180 && c.R < 90 }
	paint := func(m scene.Photo) *image.RGBA {
		dst := image.NewRGBA(image.Rect(0, 0, 100, 100))
		p.Paint(dst, scene.Scene{Marks: []scene.Mark{m}}, Light, 1)
		return dst
	}
	// upright: its lower left corner at 10, 90; 80 wide, 40 high
	up := paint(scene.Photo{JPEG: photo, At: scene.Point{X: 10, Y: 90}, Side: scene.Point{X: 80}, Up: scene.Point{Y: -40}})
	if c := up.RGBAAt(20, 85); !isRed(c) {
		t.Errorf("left below it is %v, want red", c)
	}
	if c := up.RGBAAt(20, 55); !isBlue(c) {
		t.Errorf("left above it is %v, want blue", c)
	}
	if c := up.RGBAAt(80, 85); !isBlue(c) {
		t.Errorf("right below it is %v, want blue", c)
	}
	if c := up.RGBAAt(50, 20); c.A != 0 {
		t.Errorf("beside it is %v, want nothing", c)
	}
	// turned by a quarter clockwise its lower edge runs down
	turned := paint(scene.Photo{JPEG: photo, At: scene.Point{X: 10, Y: 10}, Side: scene.Point{Y: 80}, Up: scene.Point{X: 40}})
	if c := turned.RGBAAt(15, 20); !isRed(c) {
		t.Errorf("turned, its corner is %v, want red", c)
	}
	if c := turned.RGBAAt(40, 20); !isBlue(c) {
		t.Errorf("turned, beside its corner it is %v, want blue", c)
	}
	half := paint(scene.Photo{JPEG: photo, At: scene.Point{X: 10, Y: 90}, Side: scene.Point{X: 80}, Up: scene.Point{Y: -40}, Clear: 0.5})
	if c := half.RGBAAt(20, 85); c.A < 120 || c.A > 136 {
		t.Errorf("half clear it is %v", c)
	}
	for _, broken := range [][]byte{nil, []byte("no photograph")} {
		if c := paint(scene.Photo{JPEG: broken, Side: scene.Point{X: 80}, Up: scene.Point{Y: -40}, At: scene.Point{Y: 90}}).RGBAAt(20, 80); c.A != 0 {
			t.Errorf("%q paints %v", broken, c)
		}
	}
}
