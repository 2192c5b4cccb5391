package paper

import (
	"context"
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// count is a figure of the batch, if it is known, and when it was counted.
type count struct{ what, n, when string }

// counted are the counts so far.
func (d batchSheet) counted() []count {
	b := d.batch
	on := func(day calendar.Day) string { return day.Short()[len("Mon "):] }
	of := func(what string, c book.Count) count {
		if !c.Counted() {
			return count{what: what}
		}
		return count{what, strconv.Itoa(c.N), on(c.At.Day(d.zone))}
	}
	some := func(what string, n int) count {
		if n == 0 {
			return count{what: what}
		}
		return count{what: what, n: strconv.Itoa(n)}
	}
	return []count{
		{"larvae grafted", strconv.Itoa(b.Larvae), on(b.At.Day(d.zone))},
		of("grafts accepted", b.Taken), of("cells capped", b.Capped), of("cells ripe", b.Ripe),
		some("culled", b.Culled), some("given to nucs", len(b.Given)), some("caged", len(b.Caged)),
		some("virgins out", b.Out), some("found dead", b.Dead), some("dropped", b.Lost),
		{"still together", strconv.Itoa(b.Left()), on(d.Day)},
	}
}

// counts draws what was counted so far, with room to count again.
func (d batchSheet) counts(ctx context.Context) error {
	const row, gap = 10.0, 6.0
	if err := d.section(ctx, "Counts", "so far, and to write in: how many, when, by whom", row*4); err != nil {
		return err
	}
	w := (d.right() - d.left() - gap) / 2
	for rows := range slices.Chunk(d.counted(), 2) {
		if _, err := d.need(ctx, row); err != nil {
			return err
		}
		a := d.row(row)
		for j, c := range rows {
			x := a.X + float64(j)*(w+gap)
			n := d.ends(x+w*0.44, a.Y+6.2, c.n, bold(10))
			d.fit(x, a.Y+6.2, c.what, plain(9), n-0.6)
			d.fit(x+w*0.46, a.Y+6.2, c.when, soft(7.6), x+w*0.63)
			d.blank(scene.Area{X: x + w*0.63, Y: a.Y + 0.9, W: w * 0.13, H: row - 1.8})
			d.blank(scene.Area{X: x + w*0.77, Y: a.Y + 0.9, W: w * 0.23, H: row - 1.8})
		}
		d.rule(a.Bottom(), stroke{hair, 0.15})
	}
	return nil
}
