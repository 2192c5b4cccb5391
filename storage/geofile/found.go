package geofile

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/simplify"

	"lidmark/domain/book"
)

// outlined are the features that are outlines however they are drawn.
var outlined = []book.FeatureKind{book.Boundary, book.Dwelling, book.ColdHollow}

// found makes features and stands of what the file has.
func (r *reader) found() (Found, error) {
	var f Found
	ids := map[string]bool{}
	for i := range r.items {
		it := &r.items[i]
		if ids[it.id] {
			it.id = "" // parts of one feature are several
		}
		ids[it.id] = true
		if it.Kind == standKind || it.Kind == "" && len(it.line) == 1 && r.Stands {
			s, err := r.stand(it)
			if err != nil {
				return Found{}, err
			}
			f.Stands = append(f.Stands, s)
			continue
		}
		d, err := r.drawing(it)
		if err != nil {
			return Found{}, err
		}
		f.Features = append(f.Features, d)
	}
	f.Notes = r.notes
	return f, nil
}

func (r *reader) stand(it *item) (book.StandSet, error) {
	if len(it.line) != 1 {
		return book.StandSet{}, fmt.Errorf("%s: a stand is a point: draw its middle", it.where)
	}
	s := book.StandSet{Letter: cmp.Or(it.Letter, it.Label), Turn: it.Turn, Places: max(it.Places, 1), Round: it.Round, At: r.point(it.line[0])}
	if strings.TrimSpace(s.Letter) == "" {
		return book.StandSet{}, fmt.Errorf("%s: the stand has no letter: name it", it.where)
	}
	if s.Stand.UnmarshalText([]byte(it.id)) != nil {
		s.Stand = book.StandID{}
	}
	return s, nil
}

func (r *reader) drawing(it *item) (book.FeatureDrawn, error) {
	kind, err := r.kind(it)
	if err != nil {
		return book.FeatureDrawn{}, err
	}
	f := book.FeatureDrawn{What: kind, Height: it.Height, Width: it.Width, Label: it.Label}
	if f.Feature.UnmarshalText([]byte(it.id)) != nil {
		f.Feature = book.FeatureID{}
	}
	f.Points, err = r.drawn(it, it.ring || slices.Contains(outlined, kind) && len(it.line) > 2)
	return f, err
}

// kind is what a thing says it is, or what all are said to be that say nothing.
func (r *reader) kind(it *item) (kind book.FeatureKind, err error) {
	if it.Kind != "" {
		if err := kind.UnmarshalText([]byte(it.Kind)); err != nil {
			return 0, fmt.Errorf("%s: %w", it.where, err)
		}
		return kind, nil
	}
	what := "line"
	if kind = r.Lines; len(it.line) == 1 {
		kind, what = r.Points, "point"
	}
	if kind == 0 {
		return 0, fmt.Errorf("%s: nobody says what this %s is: say what %ss of the file are", it.where, what, what)
	}
	return kind, nil
}

// drawn are the points of a thing in the plane.
func (r *reader) drawn(it *item, outline bool) ([]book.Point, error) {
	var line orb.LineString
	for _, o := range it.line {
		x, y := r.plane.Metres(o)
		if p := (orb.Point{x, y}); len(line) == 0 || line[len(line)-1] != p {
			line = append(line, p)
		}
	}
	if it.walked {
		const corner = 0.5 // m, less than what a receiver errs
		line = simplify.DouglasPeucker(corner).LineString(line)
	}
	if len(line) > mostOfLine {
		return nil, fmt.Errorf("%s: it has %d points, more than %d: simplify it", it.where, len(line), mostOfLine)
	}
	if outline && len(line) > 2 {
		var err error
		if line, err = r.outline(it, line); err != nil {
			return nil, err
		}
	}
	out := make([]book.Point, len(line))
	for i, p := range line {
		out[i] = book.Point{X: p[0], Y: p[1]}
	}
	return out, nil
}

func (r *reader) point(o Origin) book.Point {
	x, y := r.plane.Metres(o)
	return book.Point{X: x, Y: y}
}

// isKind tells whether a word is a kind of what is drawn.
func isKind(word string) bool {
	var k book.FeatureKind
	return word == standKind || word != "" && k.UnmarshalText([]byte(word)) == nil
}
