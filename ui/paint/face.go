package paint

import (
	"fmt"

	"lidmark/assets"
	"lidmark/ui/scene"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// face is one cut of the typeface: outlines and widths in units of the em,
// loaded once for each character that is used.
type face struct {
	font   *sfnt.Font
	buffer sfnt.Buffer
	em     fixed.Int26_6
	glyphs map[rune]*glyph
	kerns  map[[2]rune]float64
}

// glyph is one character of a face, in ems, y downwards from the baseline.
type glyph struct {
	index    sfnt.GlyphIndex
	width    float64
	outlines []segment
}

// segment is one piece of an outline.
type segment struct {
	op   sfnt.SegmentOp
	args [3]scene.Point
}

// newFaces reads the typeface in all its weights.
func newFaces() ([scene.Italic + 1]*face, error) {
	var faces [scene.Italic + 1]*face
	for w, file := range [...][]byte{
		scene.Regular: assets.Regular, scene.Medium: assets.Medium, scene.SemiBold: assets.SemiBold,
		scene.Bold: assets.Bold, scene.Italic: assets.Italic,
	} {
		f, err := sfnt.Parse(file)
		if err != nil {
			return faces, fmt.Errorf("typeface of weight %d: %w; build the program anew", w, err)
		}
		faces[w] = &face{
			font: f, em: fixed.I(int(f.UnitsPerEm())),
			glyphs: map[rune]*glyph{}, kerns: map[[2]rune]float64{},
		}
	}
	return faces, nil
}

// glyph returns the character r. One that the typeface lacks is drawn as a plain
// shape if it is one of a few, else as the typeface's sign for what it lacks.
func (f *face) glyph(r rune) *glyph {
	g, ok := f.glyphs[r]
	if !ok {
		g = f.load(r)
		f.glyphs[r] = g
	}
	return g
}

// load reads the character r from the font.
func (f *face) load(r rune) *glyph {
	index, err := f.font.GlyphIndex(&f.buffer, r)
	if shape, ok := shapes[r]; ok && (err != nil || index == 0) {
		return &shape
	}
	g := &glyph{index: index}
	advance, err := f.font.GlyphAdvance(&f.buffer, index, f.em, font.HintingNone)
	if err == nil {
		g.width = f.ems(advance)
	}
	segments, err := f.font.LoadGlyph(&f.buffer, index, f.em, nil)
	if err != nil {
		return g // a character without an outline takes its room and shows nothing
	}
	for _, s := range segments {
		out := segment{op: s.Op}
		for i, a := range s.Args {
			out.args[i] = scene.Point{X: f.ems(a.X), Y: f.ems(a.Y)}
		}
		g.outlines = append(g.outlines, out)
	}
	return g
}

// ems returns v, a length in units of the font, in ems.
func (f *face) ems(v fixed.Int26_6) float64 { return float64(v) / float64(f.em) }

// kern returns by how much b moves when it follows a, in ems.
func (f *face) kern(a, b rune) float64 {
	if a == 0 {
		return 0
	}
	pair := [2]rune{a, b}
	k, ok := f.kerns[pair]
	if !ok {
		if v, err := f.font.Kern(&f.buffer, f.glyph(a).index, f.glyph(b).index, f.em, font.HintingNone); err == nil {
			k = f.ems(v)
		}
		f.kerns[pair] = k
	}
	return k
}

// width returns the width of one line of text in ems.
func (f *face) width(text string) float64 {
	w, last := 0.0, rune(0)
	for _, r := range text {
		w += f.kern(last, r) + f.glyph(r).width
		last = r
	}
	return w
}

// shapes stand for signs that the typeface lacks: triangles, disc and square as
// high as a small letter.
var shapes = map[rune]glyph{
	'▲': plain(0.1, 0, 0.7, 0, 0.4, -0.55),
	'▼': plain(0.1, -0.55, 0.7, -0.55, 0.4, 0),
	'◀': plain(0.65, 0, 0.65, -0.6, 0.1, -0.3),
	'▶': plain(0.1, 0, 0.1, -0.6, 0.65, -0.3),
	'■': plain(0.1, 0, 0.65, 0, 0.65, -0.55, 0.1, -0.55),
	'●': plain(0.1, -0.22, 0.1, -0.36, 0.2, -0.5, 0.3, -0.55, 0.44, -0.55, 0.56, -0.5, 0.65, -0.36, 0.65, -0.22, 0.56, -0.08, 0.44, -0.02, 0.3, -0.02, 0.2, -0.08),
}

// plain returns a polygon through the points, x and y in turn, as a character.
func plain(at ...float64) glyph {
	g := glyph{width: 0.75}
	for i := 0; i < len(at); i += 2 {
		op := sfnt.SegmentOpLineTo
		if i == 0 {
			op = sfnt.SegmentOpMoveTo
		}
		g.outlines = append(g.outlines, segment{op: op, args: [3]scene.Point{{X: at[i], Y: at[i+1]}}})
	}
	return g
}
