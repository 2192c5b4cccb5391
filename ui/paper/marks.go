package paper

import (
	"strings"

	"lidmark/ui/scene"
)

// tick draws a box to tick off.
func (s *sheet) tick(x, y, side float64) {
	s.rect(scene.Area{X: x, Y: y, W: side, H: side}, 0.35, white, stroke{black, 0.35})
}

// ticked draws the mark of what is done into a box to tick.
func (s *sheet) ticked(x, y, side float64) {
	s.path([]scene.Point{{X: x + side*0.2, Y: y + side*0.5}, {X: x + side*0.42, Y: y + side*0.75}, {X: x + side*0.85, Y: y + side*0.2}}, stroke{black, 0.5})
}

// blank draws a frame to write into.
func (s *sheet) blank(a scene.Area) { s.rect(a, 0, white, stroke{pale, 0.25}) }

// rule draws a line across the page below a row.
func (s *sheet) rule(y float64, l stroke) { s.line(s.left(), y, s.right(), y, l) }

// writeOn draws a line to write on and gives where it ends.
func (s *sheet) writeOn(x, y, w float64) float64 {
	s.line(x, y+0.4, x+w, y+0.4, stroke{grey, 0.25})
	return x + w
}

// barred draws a frame with a thick bar at its left, for what is hard.
func (s *sheet) barred(a scene.Area) {
	s.rect(a, 0.6, white, stroke{black, 0.5})
	s.rect(scene.Area{X: a.X, Y: a.Y, W: 2.4, H: a.H}, 0, black, stroke{})
}

// colony draws the sign of a colony.
func (s *sheet) colony(c scene.Point, side float64) {
	s.rect(scene.Around(c, side), 0.3, white, stroke{black, 0.4})
	s.rect(scene.Around(c, side*0.5), 0.2, white, stroke{black, 0.25})
}

// named writes a name into a column: in full size if it fits, else smaller,
// else in two small lines. y is the middle.
func (s *sheet) named(x, y, w float64, name string) {
	for _, size := range []float64{11.25, 9, 7.5} {
		if f := bold(size); s.width(name, f) <= w {
			s.text(x, y+size*point*0.35, name, f)
			return
		}
	}
	f := bold(7)
	lines := s.broken(name, f, w, w)
	s.lines(x, y+f.size*point*0.35-float64(len(lines)-1)*f.leading()/2, lines, f)
}

// broken is a name too long for a line, parted into two of a width each. Where
// two are too few it loses its middle: ends tell names apart as beginnings do.
func (s *sheet) broken(name string, f look, first, second float64) []string {
	all := []rune(name)
	n := len(all)
	for n > 1 && s.width(string(all[:n]), f) > first {
		n--
	}
	rest := all[n:]
	if s.width(string(rest), f) <= second {
		return []string{string(all[:n]), strings.TrimSpace(string(rest))}
	}
	for len(rest) > 0 && s.width("…"+string(rest), f) > second {
		rest = rest[1:]
	}
	return []string{string(all[:n]), "…" + string(rest)}
}
