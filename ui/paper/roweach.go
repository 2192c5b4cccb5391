package paper

import (
	"context"
)

// drawEach draws a box to tick, a name and a line to write on for each of many,
// side by side.
func (f *flow) drawEach(ctx context.Context, names []string, head func()) error {
	widest := 0.0
	for _, n := range names {
		widest = max(widest, f.width(n, bold(10)))
	}
	const line = 18.0 // to write on
	w := f.right() - f.left()
	per := max(1, int(w/(rowTick+1.5+widest+1.5+line)))
	pitch := w / float64(per)
	for len(names) > 0 {
		turned, err := f.need(ctx, 8)
		if err != nil {
			return err
		}
		if turned {
			head()
		}
		a := f.row(7.6)
		for i := range min(per, len(names)) {
			x := a.X + float64(i)*pitch
			f.tick(x+0.5, a.Y+1.8, rowTick)
			f.fit(x+6, a.Y+5.3, names[i], bold(10), x+pitch-4)
			f.writeOn(x+7.5+min(widest, pitch-14), a.Y+5.6, max(4, pitch-widest-9.5))
		}
		names = names[min(per, len(names)):]
	}
	f.rule(f.y, stroke{hair, 0.15})
	return nil
}
