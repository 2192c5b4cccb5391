package paper

import (
	"context"

	"lidmark/ui/scene"
)

// flow is a sheet filled from top to bottom. What does not fit goes onto a new
// page, which begins with what over draws.
type flow struct {
	*sheet
	y    float64 // down to here it is filled
	over func()  // draws the head of every page but the first; may be nil

	kept   float64 // so much is kept free at the foot of this page
	atFoot func()  // draws there when the page is full or done; nil: nothing
}

// keep keeps so much height free at the foot of this page, for draw.
func (f *flow) keep(high float64, draw func()) { f.kept, f.atFoot = high, draw }

// close draws what was kept room for at the foot of this page.
func (f *flow) close() {
	if f.atFoot == nil {
		return
	}
	draw := f.atFoot
	f.y = f.bottom() - f.kept
	f.kept, f.atFoot = 0, nil
	draw()
}

// begin begins the first page.
func (f *flow) begin() {
	f.page()
	f.y = f.top()
}

// need makes sure that so much height is left, on a new page if need be, and
// tells whether it had to be a new one. It is an error that ctx has ended.
func (f *flow) need(ctx context.Context, high float64) (turned bool, err error) {
	if err := ctx.Err(); err != nil {
		return false, err
	}
	if f.y+high <= f.bottom()-f.kept {
		return false, nil
	}
	f.turn()
	return true, nil
}

// turn goes on to a new page.
func (f *flow) turn() {
	f.close()
	f.begin()
	if f.over != nil {
		f.over()
	}
}

// row is the area of the next high millimetres, which it uses up.
func (f *flow) row(high float64) scene.Area {
	a := scene.Area{X: f.left(), Y: f.y, W: f.right() - f.left(), H: high}
	f.y += high
	return a
}

// heading writes a title as far as to, somewhat smaller where it fits into one
// line so, else in as many lines as it takes.
func (f *flow) heading(title string, to float64) {
	h, less := bold(15.5), bold(13.2)
	if w := to - f.left(); f.width(title, h) > w && f.width(title, less) <= w {
		h = less
	}
	f.y = f.lines(f.left(), f.y+6.2, f.wrap(title, h, to-f.left(), 3), h) - h.leading() + 1.6
}

// dated writes a title of a name and a day. The day is whole whatever the name: it has a
// line of its own where the name leaves no room.
func (f *flow) dated(name, day string, to float64) {
	h, less, w := bold(15.5), bold(13.2), to-f.left()
	if title := name + ", " + day; f.width(title, h) > w && f.width(title, less) <= w {
		h = less
	}
	lines := f.wrap(name+",", h, w, 2)
	if last := len(lines) - 1; f.width(lines[last]+" "+day, h) <= w {
		lines[last] += " " + day
	} else {
		lines = append(lines, day)
	}
	f.y = f.lines(f.left(), f.y+6.2, lines, h) - h.leading() + 1.6
}

// again writes the title of the paper over a further page.
func (f *flow) again() { f.againOf(f.title, "") }

// againOf writes over a further page what it is of. The name is shortened where it is
// too long, never the rest.
func (f *flow) againOf(name, rest string) {
	l := semi(10.5)
	rest += ", continued"
	f.text(f.left(), f.y+4.6, f.shorten(name, l, f.right()-f.left()-f.width(rest, l))+rest, l)
	f.y += 7
}

// remark writes lines of explaining text.
func (f *flow) remark(text string, l look, to float64) {
	high := l.size * point
	f.y = f.lines(f.left(), f.y+high+0.6, f.wrap(text, l, to-f.left(), 4), l) - high + 0.4
}

// section begins a part of the sheet, on a page that has room for its first rows.
func (f *flow) section(ctx context.Context, title, note string, least float64) error {
	if _, err := f.need(ctx, 9+least); err != nil {
		return err
	}
	f.y += 2.4
	l := soft(8.25)
	end := f.text(f.left(), f.y+4.6, title, bold(10.5)) + 3
	fits := end+f.width(note, l) <= f.right()
	if fits {
		f.text(end, f.y+4.6, note, l)
	}
	f.y += 6
	f.rule(f.y, stroke{black, 0.35})
	if !fits {
		f.remark(note, l, f.right())
	}
	return nil
}
