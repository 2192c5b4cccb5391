package paper

import (
	"fmt"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/text/unicode/norm"

	"lidmark/assets"
	"lidmark/ui/scene"
)

// cuts are the cuts of the typeface that papers are set in.
var cuts = [...]struct {
	family string
	file   *[]byte
}{
	scene.Regular:  {"regular", &assets.Regular},
	scene.Medium:   {"medium", &assets.Medium},
	scene.SemiBold: {"semibold", &assets.SemiBold},
	scene.Bold:     {"bold", &assets.Bold},
}

// A face measures text in one cut.
type face struct {
	font   *sfnt.Font
	buffer sfnt.Buffer
	widths map[rune]float64 // shares of the size; 0 where the cut lacks the character
}

func newFace(w scene.Weight) (*face, error) {
	f, err := sfnt.Parse(*cuts[w].file)
	if err != nil {
		return nil, fmt.Errorf("typeface %s: %w", cuts[w].family, err)
	}
	return &face{font: f, widths: map[rune]float64{}}, nil
}

// width is how wide a character is as a share of the size, 0 where the typeface
// lacks it.
func (f *face) width(r rune) float64 {
	if w, known := f.widths[r]; known {
		return w
	}
	w := 0.0
	const last = 0xFFFF // a PDF of this kind holds no further character
	if i, err := f.font.GlyphIndex(&f.buffer, r); err == nil && i != 0 && r <= last {
		em := fixed.Int26_6(f.font.UnitsPerEm())
		if a, err := f.font.GlyphAdvance(&f.buffer, i, em<<6, font.HintingNone); err == nil {
			w = float64(a) / float64(em<<6)
		}
	}
	f.widths[r] = w
	return w
}

// missing stands for a character that the typeface lacks.
const missing = '\uFFFD'

// printable is text as it can be set: composed, without control characters, and
// with missing where the typeface lacks a character.
func (f *face) printable(text string) (set string, lacks bool) {
	plain := true
	for _, r := range text {
		plain = plain && r < 0x300 && f.width(r) > 0
	}
	if plain {
		return text, false
	}
	var out []rune
	for _, r := range norm.NFC.String(text) {
		switch {
		case r < ' ':
			r = ' '
		case f.width(r) == 0:
			r, lacks = missing, true
		}
		out = append(out, r)
	}
	return string(out), lacks
}
