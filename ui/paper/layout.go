package paper

import (
	"context"
	"fmt"
	"io"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
	"lidmark/ui/state"
)

// Layout prints a layout: its plan to scale, what is carried and turned and marked,
// how stands are found with two tapes, and the list of stands. The plan lies on one
// page, or on as many as its scale takes, with a page before them that shows how they
// lie. It tells how many pages it has.
func Layout(ctx context.Context, w io.Writer, r *state.Reading, laid state.Laid, o Options) (pages int, err error) {
	in := r.View.Yard(laid.Yard)
	if len(laid.Try.Stands) == 0 {
		return 0, fmt.Errorf("no stand is in %s: nothing to print; set up boxes first, or find places for them with a try-out", in.Name)
	}
	s := newSheet(layoutTitle(laid, in.Name), r, o)
	d := layoutSheet{Reading: r, flow: &flow{sheet: s}, laid: laid, in: in, now: yard.Of(r.View, laid.Yard), ground: yard.GroundOf(in), numbers: r.View.Numbers()}
	d.changes = yard.ChangesOf(d.now, laid.Try, nil, nil)
	if d.pegs, err = d.pegged(); err != nil {
		return 0, err
	}
	d.over = d.again
	along := d.along()
	d.lie(along)
	d.begin()
	d.head()
	if err := d.plan(ctx); err != nil {
		return 0, err
	}
	if along { // lists stand on upright pages
		d.lie(false)
		d.y = d.bottom()
	}
	for _, part := range []func(context.Context) error{d.carrying, d.fronts, d.staking, d.stands} {
		if err := part(ctx); err != nil {
			return 0, err
		}
	}
	s.foot()
	return s.finish(w)
}

// layoutSheet is the sheet of a layout being drawn.
type layoutSheet struct {
	*state.Reading
	*flow
	laid    state.Laid
	in      *book.Yard
	now     yard.Layout
	ground  yard.Ground
	changes []yard.Change
	pegs    []tapes
	numbers practice.Numbers
	marked  bool // the plan last drawn is large enough for the marks of fronts
}

func layoutTitle(laid state.Laid, in string) string {
	if laid.Name == "" {
		return "Layout of " + in
	}
	if laid.From.IsZero() {
		return fmt.Sprintf("Try-out “%s” of %s", laid.Name, in)
	}
	return fmt.Sprintf("Layout “%s” of %s", laid.Name, in)
}

// head says what is planned.
func (d *layoutSheet) head() {
	d.heading(d.title, d.right())
	said := []string{plural(len(d.laid.Try.Stands), "stand", "stands") + ", " + plural(d.laid.Try.Nucs(), "nuc", "nucs")}
	carried, turned, fronts := 0, 0, 0
	for _, c := range d.changes {
		fronts += c.Fronts
		if c.Carried() {
			carried++
		} else {
			turned += c.Turned
		}
	}
	switch {
	case d.anew():
		said = append(said, "all to set up")
	case carried > 0:
		said = append(said, plural(carried, "stand", "stands")+" to carry, turn or set up")
	}
	if turned > 0 {
		said = append(said, plural(turned, "box", "boxes")+" to turn in place")
	}
	if fronts > 0 {
		said = append(said, plural(fronts, "front", "fronts")+" to mark")
	}
	as := "As of " + longDay(d.Day)
	if !d.laid.From.IsZero() {
		as += "; the plan from " + d.laid.From.Short()
	}
	d.remark(as+". "+sentence(strings.Join(said, "; "))+".", soft(8.6), d.right())
	d.y += 1.6
}

// anew tells whether all stands are to be set up: the yard is a new one.
func (d *layoutSheet) anew() bool {
	return len(d.changes) == len(d.laid.Try.Stands) && !slices.ContainsFunc(d.changes, func(c yard.Change) bool { return c.Was != nil })
}

// stands lists every stand with its boxes, where they face and their marks.
func (d *layoutSheet) stands(ctx context.Context) error {
	t := list{d.flow, []column{{"stand", 11, false}, {"turned", 13, true}, {"boxes, and where their entrances face", 50, false}, {"mark on the front", 38, false}}, true, nil}
	var lines []listLine
	for i := range d.laid.Try.Stands {
		s := &d.laid.Try.Stands[i]
		first := []string{s.Letter, fmt.Sprintf("%.0f°", yard.Bearing(s.Turn))}
		if len(s.Nucs) == 0 {
			lines = append(lines, listLine{look: plain(9), cells: append(first, "no box", "")})
		}
		for nucs := range slices.Chunk(s.Nucs, rowOfNucs) {
			marks := each(nucs, func(n *yard.Nuc) string { return markWords(n.Mark) })
			lines = append(lines, listLine{look: plain(9), cells: append(first, facesOf(s, nucs), marks)})
			first = []string{"", ""}
		}
	}
	const head = 16 // mm
	first, _ := t.high(lines[0])
	if _, err := d.need(ctx, head+first); err != nil {
		return err
	}
	if err := t.part(ctx, "Stands and boxes", "bearings are clockwise from true north: allow for the declination of your compass"); err != nil {
		return err
	}
	for _, l := range lines {
		if err := t.put(ctx, l); err != nil {
			return err
		}
	}
	return nil
}

// facesOf are boxes on a stand and which way they face.
func facesOf(s *yard.Stand, nucs []yard.Nuc) string {
	if facing := func(n *yard.Nuc) string { return yard.Facing(s.Faces(n)) }; sameOf(nucs, facing) {
		return names(nucs) + ": " + facing(&nucs[0])
	}
	return each(nucs, func(n *yard.Nuc) string { return yard.Letters(s.Faces(n)) })
}

// rowOfNucs is of how many nucs a line tells at most: of a stand that has more there are
// several.
const rowOfNucs = 16

// each says something of each nuc, once of those that have it alike: "A1, A2 blue disc;
// A3 none"; where all have, that alone.
func each(nucs []yard.Nuc, say func(*yard.Nuc) string) string {
	if sameOf(nucs, say) {
		return say(&nucs[0])
	}
	var words []string
	of := map[string][]string{}
	for i := range nucs {
		word := say(&nucs[i])
		if of[word] == nil {
			words = append(words, word)
		}
		of[word] = append(of[word], nucs[i].Name)
	}
	for i, word := range words {
		words[i] = strings.Join(of[word], ", ") + " " + word
	}
	return strings.Join(words, "; ")
}

// sameOf tells whether the same is said of all nucs.
func sameOf(nucs []yard.Nuc, say func(*yard.Nuc) string) bool {
	return !slices.ContainsFunc(nucs, func(n yard.Nuc) bool { return say(&n) != say(&nucs[0]) })
}

// markWords are a front mark in words.
func markWords(m yard.Mark) string {
	if m == (yard.Mark{}) {
		return "none"
	}
	return strings.TrimSpace(m.Colour + " " + m.Shape)
}
