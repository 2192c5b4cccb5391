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
	x        float64 // where its text begins
	do, why  []string
	high     float64
	byOnLine int // the line of text, from 0, that has room for the last day
}

// lay lays a row out.
func (s *sheet) lay(w row, t table) drawnRow {
	d := drawnRow{row: w, x: t.text}
	if w.nuc == nil && w.colony == "" {
		d.x = t.name - 7.3
	}
	room := t.by - d.x
	if w.of() {
		room = t.right - d.x
	}
	d.do = s.wrap(cmp.Or(w.do, "See to it"), lookDo, room, 3)
	d.why = s.wrap(w.why, lookWhy, room, 3)
	if len(d.why) > 1 && w.again {
		d.why = []string{"as above"}
	}
	d.placeBy(s, room)
	d.high = 2.2 + lookDo.leading()*float64(len(d.do)) + lookWhy.leading()*float64(len(d.why))
	if !w.of() {
		d.high = max(rowLeast, d.high)
	}
	return d
}

// placeBy finds the line that has room for the last day: the last one of what
// to do or of why, else one of its own.
func (d *drawnRow) placeBy(s *sheet, room float64) {
	by := s.width(d.by, lookBy(d.hard)) + 2
	last := len(d.do) - 1
	switch {
	case d.by == "" || s.width(d.do[last], lookDo)+by <= room:
		d.byOnLine = last
		return
	case len(d.why) == 0 || s.width(d.why[len(d.why)-1], lookWhy)+by > room:
		d.why = append(d.why, "")
	}
	d.byOnLine = last + len(d.why)
}
