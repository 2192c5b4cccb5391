package paper

import (
	"context"
	"fmt"
	"io"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// labelled are the sheets of labels, mm: for A4 three by eight of 70 by 37, for
// letter three by ten of 2.625 by 1 inch.
var labelled = [...]struct {
	columns, rows   int
	w, h            float64
	left, top       float64
	pitch           float64 // from one column to the next
	margin, codeTop float64 // kept free inside
}{
	A4:     {3, 8, 70, 37, 0, 0.5, 70, 5, 3.5},
	Letter: {3, 10, 66.675, 25.4, 4.7625, 12.7, 69.85, 2, 1},
}

// LabelsPerPage is how many labels a sheet of a format has.
func LabelsPerPage(p Page) int { return labelled[p].columns * labelled[p].rows }

// Labels prints a label for the lid and box of every nuc of a yard, of all for
// the zero yard, on sheets of labels whose first skip labels are used up. Its
// QR code holds the nuc's id as a URN (RFC 9562). Labels are of one size: large
// print changes nothing. It tells how many pages it has.
func Labels(ctx context.Context, w io.Writer, r *state.Reading, yard book.YardID, skip int, o Options) (pages int, err error) {
	nucs := r.In(yard)
	if len(nucs) == 0 {
		return 0, noNucs(r, yard)
	}
	o.Large = false
	s := newSheet("Labels", r, o)
	err = s.labels(ctx, len(nucs), skip, func(i int, a scene.Area) error { return s.label(r, nucs[i], a) })
	if err != nil {
		return 0, err
	}
	return s.finish(w)
}

// labels draws so many labels on as many pages as they need, behind those of the first
// page that are used up.
func (s *sheet) labels(ctx context.Context, n, skip int, draw func(i int, a scene.Area) error) error {
	per := LabelsPerPage(s.Page)
	if skip < 0 || skip >= per {
		return fmt.Errorf("skip %d labels: a page has %d, skip 0 to %d", skip, per, per-1)
	}
	for i := range n {
		at := skip + i
		if at%per == 0 || i == 0 {
			if err := ctx.Err(); err != nil {
				return err
			}
			s.page()
		}
		if err := draw(i, s.place(at%per)); err != nil {
			return err
		}
	}
	return nil
}

// place is where a label lies.
func (s *sheet) place(i int) scene.Area {
	l := labelled[s.Page]
	return scene.Area{
		X: l.left + float64(i%l.columns)*l.pitch, Y: l.top + float64(i/l.columns)*l.h,
		W: l.w, H: l.h,
	}
}

// label draws the label of a nuc.
func (s *sheet) label(r *state.Reading, n *state.Nuc, a scene.Area) error {
	l := labelled[s.Page]
	code := a.H - 2*l.codeTop
	ink, err := s.qrCode("urn:uuid:"+n.Nuc.Nuc.String(), a.X+l.margin, a.Y+l.codeTop, code)
	if err != nil {
		return err
	}
	x, to, line := a.X+l.margin+code+1, a.Right()-l.margin, a.H*0.125
	said := plain(min(9, line*0.78/point))
	const lines = 3                                                 // box, front, yard
	room := ink.H - lines*line - said.size*point*capital - line*0.2 // the last for the tail of a Q
	if size := s.largest(n.Name, to-x, room); s.width(n.Name, bold(size)) <= to-x {
		s.text(x, ink.Y+size*point*capital, n.Name, bold(size))
	} else {
		s.lines(x, ink.Y+size*point*capital, s.broken(n.Name, bold(size), to-x, to-x), bold(size))
	}
	y := ink.Bottom()
	s.fit(x, y, r.View.Yard(n.Yard).Name, look{size: said.size, tone: grey}, to)
	y = s.frontLine(n, x, y-line, to, line, said)
	if box := r.View.Box(n.Box).Number; !n.Box.IsZero() && box != "" {
		s.fit(x, y, "box "+box, semi(said.size), to)
	}
	return nil
}

// frontLine draws the mark on the nuc's front, if there is one, with its words, and
// gives where the line above it stands.
func (s *sheet) frontLine(n *state.Nuc, x, y, to, line float64, said look) float64 {
	mark := n.Front
	if mark.Shape == "" {
		return y
	}
	at := x
	if r := line * 0.36; s.front(mark, scene.Point{X: x + r*1.2, Y: y - said.size*point*0.33}, r) {
		at += r*2.4 + 1.2
	}
	s.fit(at, y, strings.TrimSpace(mark.Colour+" "+mark.Shape), said, to)
	return y - line
}

// largest is the size in which a name fits into a width and a height, pt; the
// least there is where none does.
func (s *sheet) largest(name string, w, h float64) float64 {
	const least = 9
	size := h / 0.72 / point
	if wide := s.width(name, bold(size)); wide > w {
		size *= w / wide * 0.995 // what is rounded must not be too wide
	}
	return max(size, least)
}
