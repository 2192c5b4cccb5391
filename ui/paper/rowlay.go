package paper

import "cmp"

// The looks of what to do and of why.
var (
	lookDo  = semi(9.4)
	lookWhy = soft(8.25)
)

// lookBy is the look of a last day.
func lookBy(hard bool) look {
	if hard {
		return bold(9)
	}
	return plain(8.6)
}

// drawnRow is a row laid out: its lines of text, and how high it is.
type drawnRow struct {
	row
	x       float64 // where its text begins
	do, why []string
	high    float64
}

// lay lays a row out. The last day stands at its foot, in the column of last days of
// all rows: the last line of text leaves room for it.
func (s *sheet) lay(w row, t table) drawnRow {
	d := drawnRow{row: w, x: t.text}
	if w.nuc == nil && w.colony == "" {
		d.x = t.name - 7.3
	}
	room, foot := t.by-d.x, t.by-d.x
	if w.of() {
		room = t.right - d.x
	}
	if d.by != "" {
		foot -= s.width(d.by, lookBy(d.hard)) + 2
	}
	d.do = s.wrap(cmp.Or(w.do, "See to it"), lookDo, room, 4)
	d.why = s.wrap(w.why, lookWhy, room, 7)
	if len(d.why) > 1 && w.again {
		d.why = []string{"as above"}
	}
	if len(d.why) > 0 {
		d.why = s.shortLast(d.why, lookWhy, foot)
	} else {
		d.do = s.shortLast(d.do, lookDo, foot)
	}
	d.high = 2.2 + lookDo.leading()*float64(len(d.do)) + lookWhy.leading()*float64(len(d.why))
	if !w.of() {
		d.high = max(rowLeast, d.high)
	}
	return d
}

// shortLast are lines whose last one is broken in two where it is wider than w, or
// followed by an empty one where two are too few.
func (s *sheet) shortLast(lines []string, l look, w float64) []string {
	const most = 3
	last := len(lines) - 1
	if parts := s.wrap(lines[last], l, w, most); len(parts) < most {
		return append(lines[:last:last], parts...)
	}
	return append(lines, "")
}
