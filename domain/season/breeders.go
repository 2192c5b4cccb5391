package season

import (
	"slices"

	"lidmark/domain/book"
)

// larvae are where the larvae of a graft come from: the breeders of a book, and the lines
// of which it has any. A book that tells of no breeder, or of one without a line, limits none.
type larvae struct {
	breeders []*book.Colony
	lines    []string
	told     bool
}

func larvaeOf(v *book.View) (l larvae) {
	for c := range v.Colonies() {
		if c.Is(book.Breeder) {
			l.breeders, l.lines = append(l.breeders, c), append(l.lines, c.Line)
		}
	}
	l.told = len(l.breeders) > 0 && !slices.Contains(l.lines, "")
	for b := range v.Batches() {
		l.lines = append(l.lines, b.Line)
	}
	return l
}

// has tells whether there are larvae of a line; any will do for none.
func (l larvae) has(line string) bool {
	return !l.told || line == "" || slices.Contains(l.lines, line)
}

// of are the lines of some that there are larvae of; all of them where there are none.
func (l larvae) of(lines []string) []string {
	had := slices.DeleteFunc(slices.Clone(lines), func(line string) bool { return !l.has(line) })
	if len(had) == 0 {
		return lines
	}
	return had
}

// from is the line of a graft, and its breeder where only one can be meant; of a graft of
// any line the line of all breeders.
func (l larvae) from(line string) (string, *book.Colony) {
	var only *book.Colony
	for i, c := range l.breeders {
		switch {
		case line != "" && c.Line != line:
		case only == nil:
			only = l.breeders[i]
		case c.Line != only.Line:
			return line, nil
		default:
			return c.Line, nil
		}
	}
	if only == nil {
		return line, nil
	}
	return only.Line, only
}
