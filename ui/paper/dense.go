package paper

import (
	"context"
	"fmt"
	"io"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Dense prints the yard sheet of the day read, a square of 10 mm a nuc: of one
// yard, or of each that has nucs for the zero yard. It tells how many pages it
// has.
func Dense(ctx context.Context, w io.Writer, r *state.Reading, yard book.YardID, o Options) (pages int, err error) {
	yards := yardsWithNucs(r, yard)
	if len(yards) == 0 {
		return 0, noNucs(r, yard)
	}
	d := yardSheet{Reading: r, flow: &flow{sheet: newSheet("Yard sheet, "+longDay(r.Day), r, o)}, due: onRoute(r)}
	d.over = func() { d.head(true) }
	for _, y := range yards {
		d.yard = r.View.Yard(y)
		d.begin()
		d.head(false)
		if err := d.squares(ctx); err != nil {
			return 0, err
		}
		if err := d.below(ctx); err != nil {
			return 0, err
		}
	}
	d.foot()
	return d.finish(w)
}

// yardsWithNucs are the yards to print.
func yardsWithNucs(r *state.Reading, yard book.YardID) (all []book.YardID) {
	for y := range r.View.Yards() {
		if (yard.IsZero() || y.Yard == yard) && len(r.In(y.Yard)) > 0 {
			all = append(all, y.Yard)
		}
	}
	return all
}

// noNucs is that there is nothing to print.
func noNucs(r *state.Reading, yard book.YardID) error {
	where := "the book"
	if name := r.View.Yard(yard).Name; name != "" {
		where = name
	}
	return fmt.Errorf("no nuc is in %s on %s: nothing to print; set up nucs first, or take another yard or day", where, r.Day.Short())
}

// yardSheet is a yard sheet being drawn.
type yardSheet struct {
	*state.Reading
	*flow
	yard *book.Yard
	due  map[book.NucID]bool // nucs of the route sheet
}

// onRoute are the nucs that the day's route leads to.
func onRoute(r *state.Reading) map[book.NucID]bool {
	due := map[book.NucID]bool{}
	for _, t := range r.Tasks() {
		for _, n := range nucsOf(r, t) {
			due[n.Nuc.Nuc] = true
		}
	}
	return due
}

// side is the side of a square, mm.
const side = 10.0

// head draws the head of a page: yard and day, who writes when, how to read a
// square.
func (d yardSheet) head(more bool) {
	const writes = "By: ______________   morning   midday   afternoon"
	day, to := longDay(d.Day), d.right()-d.width(writes, soft(8.6))-4
	if more {
		day += ", continued"
	}
	if d.left()+d.width(d.yard.Name+", "+day, bold(15.5)) > to {
		d.ends(d.right(), d.top()+2.6, writes, soft(8.6))
		d.y += 3.4
		to = d.right()
	} else {
		d.ends(d.right(), d.y+5.4, writes, soft(8.6))
	}
	d.dated(d.yard.Name, day, to)
	n := len(d.In(d.yard.Yard))
	d.remark(fmt.Sprintf("Yard sheet: %s, a square of %.0f mm each, stands as they stand. Write only what differs.", plural(n, "nuc", "nucs"), side*d.zoom), soft(8.6), d.right())
	d.y += 1.6
	d.key()
}

// key draws how a square is read.
func (d yardSheet) key() {
	const box = 4.0
	x, y := d.left(), d.y+3
	x = d.text(x, y, "In the corner: number and what the book says.", plain(8.6)) + 5
	for _, k := range []struct {
		words string
		q     square
	}{
		{"seen", square{letter: "E", seen: true}},
		{"not seen yet", square{letter: "?"}},
		{"trouble", square{seen: true, trouble: true}},
		{"on the route sheet", square{due: true}},
	} {
		w := box + 1.4 + d.width(k.words, plain(8.6))
		if x+w > d.right() {
			x, y = d.left(), y+5.4
		}
		d.square(scene.Area{X: x, Y: y - 3, W: box, H: box}, k.q)
		x = d.text(x+box+1.4, y, k.words, plain(8.6)) + 4
	}
	d.y = y + 3.4
}

// below writes what stands under the squares: the letters, those of the corner,
// and the counts to close the day with.
func (d yardSheet) below(ctx context.Context) error {
	d.y += 2
	if err := d.letters(ctx); err != nil {
		return err
	}
	var corner []line.Letter
	for _, c := range book.Conditions() {
		corner = append(corner, line.Letter{Sign: c.Letter(), Words: c.String()})
	}
	if err := d.signs(ctx, "Corner", corner, 22); err != nil {
		return err
	}
	d.y += 0.6
	d.remark("Write a letter into the square, or nothing where it is as the book says. “A1–A12 done as written, except …” is enough for a whole stand.", soft(8.25), d.right())
	d.counts()
	return nil
}

// counts are the figures to close the day with.
func (d yardSheet) counts() {
	x, y := d.left(), d.y+7
	for _, c := range []string{"Cells out", "placed", "dropped", "back", "Virgins out", "put in", "back"} {
		w := d.width(c, plain(9.4)) + 13
		if x+w > d.right() {
			x, y = d.left(), y+7
		}
		x = d.writeOn(d.text(x, y, c, plain(9.4))+1.2, y, 10) + 2.6
	}
	d.y = y + 2
}
