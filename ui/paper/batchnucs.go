package paper

import (
	"cmp"
	"context"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// nucs draws the nucs that cells and virgins of the batch went to, each with a
// box to write into.
func (d batchSheet) nucs(ctx context.Context) error {
	given := d.given()
	if len(given) == 0 {
		return d.placing(ctx)
	}
	const row = 10.2
	title := "Went to " + plural(len(given), "nuc", "nucs")
	if err := d.section(ctx, title, "accepted, eggs seen: write it in", row); err != nil {
		return err
	}
	per := max(1, int((d.right()-d.left())/60))
	pitch := (d.right() - d.left()) / float64(per)
	for i, g := range given {
		if i%per == 0 {
			if _, err := d.need(ctx, row); err != nil {
				return err
			}
			d.row(row)
			d.rule(d.y, stroke{hair, 0.15})
		}
		d.gift(g, scene.Area{X: d.left() + float64(i%per)*pitch, Y: d.y - row, W: pitch - 3, H: row})
	}
	return nil
}

// given is what went into nucs, in walking order.
func (d batchSheet) given() []book.Gift {
	rank := map[book.NucID]int{}
	for i, n := range d.Nucs {
		rank[n.Nuc.Nuc] = i
	}
	given := slices.Clone(d.batch.Given)
	slices.SortStableFunc(given, func(a, b book.Gift) int { return cmp.Compare(rank[a.Nuc], rank[b.Nuc]) })
	return given
}

// gift draws a nuc that got a cell or a virgin.
func (d batchSheet) gift(g book.Gift, a scene.Area) {
	middle := a.Y + a.H/2
	n := d.Nuc(g.Nuc)
	if n == nil {
		return
	}
	d.lid(d.Reading, n, scene.Point{X: a.X + 3.6, Y: middle}, lidPaper)
	d.named(a.X+8, middle, 14, n.Name)
	what := "cell "
	if g.Virgin {
		what = "virgin "
	}
	x := a.X + 23
	end := d.fit(x, middle+1, what+g.At.Day(d.zone).Short()[4:], soft(7.6), a.Right()-12)
	d.blank(scene.Area{X: max(end+1.2, a.Right()-20), Y: a.Y + 1, W: min(20, a.Right()-end-1.2), H: a.H - 2})
}

// placing leaves lines to write on where the cells go.
func (d batchSheet) placing(ctx context.Context) error {
	if err := d.section(ctx, "Cells go to", "nuc, and when", 8); err != nil {
		return err
	}
	return d.empty(ctx, []string{"nuc", "when", "nuc", "when", "nuc", "when", "nuc", "when"}, 8.2, 4)
}

// log draws what the log says so far, and lines to fill in.
func (d batchSheet) log(ctx context.Context) error {
	var said []string
	const last = 6
	for _, l := range d.batch.Log[max(0, len(d.batch.Log)-last):] {
		said = append(said, d.hour(l.At)+" "+figure(l.Celsius)+" °C")
	}
	note := "nothing written so far"
	if len(said) > 0 {
		note = "last: " + strings.Join(said, ", ")
	}
	if err := d.section(ctx, "Incubator", note, 24); err != nil {
		return err
	}
	const row = 8.2
	return d.empty(ctx, []string{"day", "hour", "°C", "humidity, %", "by", "day", "hour", "°C", "humidity, %", "by"}, row, max(4, int((d.bottom()-d.y-6)/row)))
}

// empty draws a table to fill in: heads of columns and so many rows.
func (d batchSheet) empty(ctx context.Context, heads []string, row float64, rows int) error {
	w := (d.right() - d.left()) / float64(len(heads))
	for i, h := range heads {
		d.text(d.left()+float64(i)*w+1, d.y+3.6, h, soft(8))
	}
	d.y += 5
	for range rows {
		if _, err := d.need(ctx, row); err != nil {
			return err
		}
		a := d.row(row)
		for i := range heads {
			d.blank(scene.Area{X: a.X + float64(i)*w, Y: a.Y, W: w, H: row})
		}
	}
	return nil
}
