package paper

import (
	"context"

	"lidmark/domain/line"
)

// letters writes the alphabet of the typed line, and what is said below it.
func (f *flow) letters(ctx context.Context, below ...string) error {
	lines := f.below(below)
	l := soft(signSize)
	if err := f.signs(ctx, "Letters", line.Letters(), 2+l.leading()*float64(len(lines))); err != nil {
		return err
	}
	f.y = f.lines(f.left(), f.y+l.leading(), lines, l) - l.leading() + 1
	return nil
}

// below is what is said below the letters, in lines.
func (f *flow) below(said []string) (lines []string) {
	for _, text := range said {
		lines = append(lines, f.wrap(text, soft(signSize), f.right()-f.left(), 3)...)
	}
	return lines
}

// lettersHigh is how much height the letters take with what is said below.
func (f *flow) lettersHigh(below ...string) float64 {
	const air = 4.2
	return air + signLead*float64(len(f.signRows(line.Letters()))) + soft(signSize).leading()*float64(len(f.below(below)))
}

// Measures of a list of signs: type in points, the rest in mm.
const (
	signSize   = 8.25
	signIndent = 15.0
	signGap    = 3.1
)

// signLead is the way from line to line of signs, mm.
var signLead = plain(signSize).leading() * 1.08

// signs writes a list of signs with their words beside its title, on a page
// that has so much room for what follows as well.
func (f *flow) signs(ctx context.Context, title string, all []line.Letter, more float64) error {
	rows := f.signRows(all)
	if _, err := f.need(ctx, 2+signLead*float64(len(rows))+more); err != nil {
		return err
	}
	f.y += 1.2
	f.text(f.left(), f.y+3.2, title, bold(9))
	for _, row := range rows {
		x := f.left() + signIndent
		for _, l := range row {
			x = f.text(x, f.y+3.2, l.Sign, bold(signSize))
			x = f.text(x+1, f.y+3.2, l.Words, plain(signSize)) + signGap
		}
		f.y += signLead
	}
	return nil
}

// signRows are signs parted into lines.
func (f *flow) signRows(all []line.Letter) (rows [][]line.Letter) {
	x := 0.0
	for _, l := range all {
		w := f.width(l.Sign, bold(signSize)) + 1 + f.width(l.Words, plain(signSize))
		if len(rows) == 0 || x+w > f.right() {
			rows, x = append(rows, nil), f.left()+signIndent
		}
		rows[len(rows)-1] = append(rows[len(rows)-1], l)
		x += w + signGap
	}
	return rows
}

// What stands at the foot of the sheets that go into a yard.
const (
	lidsRead = "Lid filled white = seen, hatched = not seen yet, foot black = queen caught, brood left."
	caution  = "Stings can kill. Phone charged and within reach; whoever comes along knows the plan."
)
