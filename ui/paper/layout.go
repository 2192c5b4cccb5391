package paper

import (
	"context"
	"fmt"
	"io"
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
	d.begin()
	d.head()
	for _, part := range []func(context.Context) error{d.plan, d.carrying, d.fronts, d.staking, d.stands} {
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
	if carried > 0 {
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

// stands lists every box with where it faces and its mark.
func (d *layoutSheet) stands(ctx context.Context) error {
	t := list{d.flow, []column{{"stand", 14, false}, {"turned", 12, true}, {"place", 9, true}, {"nuc", 18, false}, {"entrance faces", 24, false}, {"mark on the front", 26, false}}, true, nil}
	const head, least = 16, 14 // mm
	if _, err := d.need(ctx, head+max(least, d.together(t, listLine{look: plain(9)}, len(d.laid.Try.Stands[0].Nucs)))); err != nil {
		return err
	}
	if err := t.part(ctx, "Stands and boxes", "bearings are clockwise from true north: allow for the declination of your compass"); err != nil {
		return err
	}
	for i := range d.laid.Try.Stands {
		s := &d.laid.Try.Stands[i]
		first := []string{s.Letter, fmt.Sprintf("%.0f°", yard.Bearing(s.Turn))}
		if len(s.Nucs) == 0 {
			if err := t.put(ctx, listLine{look: plain(9), cells: append(first, "", "no box", "", "")}); err != nil {
				return err
			}
		}
		for k := range s.Nucs {
			n := &s.Nucs[k]
			l := listLine{look: plain(9), cells: append(first, fmt.Sprint(n.Place), n.Name, yard.Facing(n.Bearing+s.Turn), markWords(n.Mark))}
			first = []string{"", ""}
			if k == 0 {
				l.below = d.together(t, l, len(s.Nucs)-1)
			}
			if err := t.put(ctx, l); err != nil {
				return err
			}
		}
	}
	return nil
}

// together is the room that so many more lines like one take, which stay on its page
// with it; none for a stand that would fill half a page.
func (d *layoutSheet) together(t list, l listLine, more int) float64 {
	high, _ := t.high(l)
	if rest := high * float64(more); rest < (d.bottom()-d.top())/2 {
		return rest
	}
	return 0
}

// markWords are a front mark in words.
func markWords(m yard.Mark) string {
	if m == (yard.Mark{}) {
		return "none"
	}
	return strings.TrimSpace(m.Colour + " " + m.Shape)
}
