package photofile_test

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"strings"
	"testing"

	"lidmark/storage/photofile"
)

func picture(w, h int) image.Image {
	m := image.NewRGBA(image.Rect(0, 0, w, h))
	for x := range w {
		for y := range h {
			m.Set(x, y, color.RGBA{uint8(x * 255 / w), uint8(y * 255 / h), 0, 255})
		}
	}
	return m
}

func pngOf(t testing.TB, w, h int) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, picture(w, h)); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestALargePictureIsMadeSmall(t *testing.T) {
	p, err := photofile.Read("yard.png", bytes.NewReader(pngOf(t, 3200, 800)))
	if err != nil {
		t.Fatal(err)
	}
	m, err := jpeg.Decode(bytes.NewReader(p.JPEG))
	if err != nil || p.Wide != 1600 || p.High != 400 || m.Bounds().Dx() != 1600 {
		t.Fatalf("%d by %d, %v", p.Wide, p.High, err)
	}
	if r, g, _, _ := m.At(1590, 390).RGBA(); r < 0xe000 || g < 0xe000 {
		t.Errorf("its corner is %x %x", r, g)
	}
	if small, err := photofile.Read("a", bytes.NewReader(pngOf(t, 30, 20))); err != nil || small.Wide != 30 || small.High != 20 {
		t.Errorf("a small one %d by %d, %v", small.Wide, small.High, err)
	}
}

func TestWhatIsNoPictureIsSaid(t *testing.T) {
	whole := pngOf(t, 300, 200)
	huge := bytes.Clone(whole)
	copy(huge[16:24], []byte{0, 0xff, 0xff, 0xff, 0, 0xff, 0xff, 0xff}) // its head says 16 million by 16 million
	for name, tt := range map[string]struct {
		bytes []byte
		want  string
	}{
		"no picture": {[]byte("trees"), "yard.jpg is neither JPEG nor PNG"},
		"nothing":    {nil, "yard.jpg is neither JPEG nor PNG"},
		"cut off":    {whole[:len(whole)/2], "yard.jpg is damaged"},
		"too large":  {huge, "save it"},
	} {
		if _, err := photofile.Read("yard.jpg", bytes.NewReader(tt.bytes)); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: %v, want %q", name, err, tt.want)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add(pngOf(f, 3, 2))
	f.Add([]byte("\xff\xd8\xff"))
	f.Fuzz(func(t *testing.T, b []byte) {
		if len(b) > 1<<16 {
			return
		}
		p, err := photofile.Read("f", bytes.NewReader(b))
		if err != nil {
			return
		}
		if c, err := jpeg.DecodeConfig(bytes.NewReader(p.JPEG)); err != nil || c.Width != p.Wide || c.Height != p.High || max(p.Wide, p.High) > 1600 {
			t.Errorf("%d by %d: %v", p.Wide, p.High, err)
		}
	})
}
