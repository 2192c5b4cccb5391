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

// Fronts prints a label for the front of every nuc of a yard that has a mark, of all
// for the zero yard: its shape as an outline with its colour in a word, since few print
// in colour, the nuc's name and the code that its lid has. Others are marks that fronts
// are to get; they stand for those the book has. Labels lie on the sheets that [Labels]
// has. It tells how many pages it has.
func Fronts(ctx context.Context, w io.Writer, r *state.Reading, yard book.YardID, others []book.FrontMarked, skip int, o Options) (pages int, err error) {
	marked := frontsOf(r, yard, others)
	switch {
	case len(r.In(yard)) == 0:
		return 0, noNucs(r, yard)
	case len(marked) == 0:
		return 0, fmt.Errorf("no front has a mark: mark some first, or name a layout that marks them")
	}
	o.Large = false
	s := newSheet("Front labels", r, o)
	err = s.labels(ctx, len(marked), skip, func(i int, a scene.Area) error { return s.frontLabel(r, marked[i], a) })
	if err != nil {
		return 0, err
	}
	return s.finish(w)
}

// frontsOf are the marks of a yard's fronts in walking order, with others in place of
// those the book has.
func frontsOf(r *state.Reading, yard book.YardID, others []book.FrontMarked) (marked []book.FrontMarked) {
	other := map[book.NucID]book.FrontMarked{}
	for _, f := range others {
		other[f.Nuc] = f
	}
	for _, n := range r.In(yard) {
		f, changed := other[n.Nuc.Nuc]
		if !changed {
			f = n.Front
			f.Nuc = n.Nuc.Nuc
		}
		if f.Shape+f.Colour != "" {
			marked = append(marked, f)
		}
	}
	return marked
}

// frontLabel draws the label of a front: its mark over the words and the nuc's name,
// beside the code.
func (s *sheet) frontLabel(r *state.Reading, f book.FrontMarked, a scene.Area) error {
	l, n := labelled[s.Page], r.Nuc(f.Nuc)
	code := a.H - 2*l.codeTop
	if _, err := s.qrCode("urn:uuid:"+f.Nuc.String(), a.Right()-l.margin-code, a.Y+l.codeTop, code); err != nil {
		return err
	}
	x, to := a.X+l.margin, a.Right()-l.margin-code-1
	const air, words, name = 0.06, 0.15, 0.24 // of the code's height
	high := code * (1 - 2*air - words - name)
	c := scene.Point{X: x + high/2, Y: a.Y + l.codeTop + code*air + high/2}
	if !s.outlined(f, c, high/2.2) {
		s.fit(x, c.Y+1.2, f.Shape, bold(9), to)
	}
	line := c.Y + high/2 + code*(air+words)
	s.fit(x, line-code*0.03, strings.TrimSpace(f.Colour+" "+f.Shape), semi(code*words*0.78/point), to)
	size := s.largest(n.Name, to-x, code*name*0.74)
	if s.width(n.Name, bold(size)) <= to-x {
		s.text(x, line+code*name*0.85, n.Name, bold(size))
		return nil
	}
	short := bold(7)
	s.lines(x, line+code*name*0.42, s.broken(n.Name, short, to-x, to-x), short)
	return nil
}

// outlined draws a mark as an outline, whatever its colour, and tells whether it knows
// the shape.
func (s *sheet) outlined(f book.FrontMarked, c scene.Point, r float64) bool {
	f.Colour = ""
	return s.front(f, c, r)
}
