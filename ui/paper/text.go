package paper

import (
	"strings"

	"lidmark/ui/scene"
)

// look is the look of text.
type look struct {
	size   float64 // pt
	weight scene.Weight
	tone   tone
}

func plain(size float64) look { return look{size: size} }
func semi(size float64) look  { return look{size: size, weight: scene.SemiBold} }
func bold(size float64) look  { return look{size: size, weight: scene.Bold} }
func soft(size float64) look  { return look{size: size, tone: grey} }

// point is a point of type in millimetres.
const point = 25.4 / 72

// capital is how high a capital is, of the size of type.
const capital = 0.7

// Width is how wide a line of text is, mm; size is in points.
func (s *sheet) Width(text string, size float64, weight scene.Weight) float64 {
	f := s.face(weight)
	text = s.printable(text, weight)
	sum := 0.0
	for _, r := range text {
		sum += f.width(r)
	}
	return sum * size * point
}

func (s *sheet) width(text string, f look) float64 { return s.Width(text, f.size, f.weight) }

// face is a cut of the typeface, made ready when it is first asked for.
func (s *sheet) face(w scene.Weight) *face {
	if s.faces[w] == nil {
		f, err := newFace(w)
		if err != nil {
			s.err = err
			f = &face{widths: map[rune]float64{}}
		}
		s.faces[w] = f
		s.pdf.AddUTF8FontFromBytes(cuts[w].family, "", *cuts[w].file)
	}
	return s.faces[w]
}

func (s *sheet) printable(text string, w scene.Weight) string {
	if s.Say != nil {
		text = s.Say(text)
	}
	set, lacks := s.face(w).printable(text)
	s.lacks = s.lacks || lacks
	return set
}

// text writes a line with its baseline at y and gives where it ends.
func (s *sheet) text(x, y float64, text string, f look) float64 {
	if text == "" {
		return x
	}
	set := s.printable(text, f.weight)
	if s.now.weight != f.weight || s.now.size != f.size {
		s.pdf.SetFont(cuts[f.weight].family, "", f.size*s.zoom)
		s.now.weight, s.now.size = f.weight, f.size
	}
	c := s.colour(f.tone)
	s.pdf.SetTextColor(c.rgb())
	s.filling(c) // letters are filled
	s.pdf.Text(x*s.zoom, y*s.zoom, set)
	return x + s.width(text, f)
}

// clear writes a line on white, so that no stroke below runs through it.
func (s *sheet) clear(x, y float64, text string, f look) {
	const air = 0.3 // mm
	high := f.size * point * capital
	s.rect(scene.Area{X: x, Y: y - high, W: s.width(text, f), H: high}.Inset(-air), 0, white, stroke{})
	s.text(x, y, text, f)
}

// ends writes a line that ends at x and gives where it begins.
func (s *sheet) ends(x, y float64, text string, f look) float64 {
	x -= s.width(text, f)
	s.text(x, y, text, f)
	return x
}

// centre writes a line with its middle at x.
func (s *sheet) centre(x, y float64, text string, f look) {
	s.text(x-s.width(text, f)/2, y, text, f)
}

// fit writes as much of a line as ends before to, and gives where it ends.
func (s *sheet) fit(x, y float64, text string, f look, to float64) float64 {
	return s.text(x, y, s.shorten(text, f, to-x), f)
}

func (s *sheet) shorten(text string, f look, w float64) string {
	return scene.Shorten(s, text, f.size, f.weight, w)
}

// wrap is text in at most most lines of a width, the last one shortened where
// more would be needed.
func (s *sheet) wrap(text string, f look, w float64, most int) []string {
	lines := scene.Wrap(s, text, f.size, f.weight, w)
	if len(lines) > most {
		lines = append(lines[:most-1:most-1], strings.Join(lines[most-1:], " "))
	}
	for i := range lines { // a word can be too long for a line
		lines[i] = s.shorten(lines[i], f, w)
	}
	return lines
}

// leading is the way from baseline to baseline, mm.
func (f look) leading() float64 { return f.size * point * 1.28 }

// lines writes lines below each other, the first baseline at y, and gives the
// baseline that would follow.
func (s *sheet) lines(x, y float64, lines []string, f look) float64 {
	for _, l := range lines {
		s.text(x, y, l, f)
		y += f.leading()
	}
	return y
}
