package paper

import (
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// row is a line of the route sheet: what is to be done at one nuc or colony, or
// at nothing that has a name.
type row struct {
	nuc    *state.Nuc
	colony string       // its name
	each   []*state.Nuc // the many for whom the line stands: each has a box to tick
	do     string
	why    string
	by     string
	hard   bool
	cells  bool // there is a cell to write into for every letter
	again  bool // the line above gives the same reason for another nuc
}

// of tells whether the line heads a block of many.
func (w row) of() bool { return len(w.each) > 0 }

// blockLeast is how many like lines make a block of boxes to tick.
const blockLeast = 3

// rowsOf are the lines of a task: one for every nuc, but a single one that heads
// a block for all of those to whom the same happens for one reason.
func (s *sheet) rowsOf(r *state.Reading, t rules.Task) (rows []row) {
	if nucs := nucsOf(r, t); len(nucs) == len(t.Of) && len(nucs) > 0 {
		if len(nucs) > 1 && !eachHasReason(t) {
			return []row{s.row(r, t, func(w *row) { w.each, w.cells = nucs, false })}
		}
		for _, n := range nucs {
			w := s.row(r, t, func(w *row) { w.nuc = n })
			s.reason(r, &w, t, n)
			rows = append(rows, w)
		}
		return gathered(rows)
	}
	return []row{s.row(r, t, func(w *row) {
		w.cells = false
		said := nameRuns(r, t)
		if len(t.Of) == 1 && t.Of[0].Kind == book.KindColony {
			w.colony = rules.Name(r.View, t.Of[0])
		} else if said != "" && len(t.Of) > 0 {
			w.do = called(t, said) + ": " + w.do
		}
	})}
}

// gathered makes a block of lines of a task that are alike but for their nuc,
// where the first of them stood; too few for a block follow each other.
func gathered(rows []row) (all []row) {
	alike := func(a, b row) bool { return a.why == b.why && a.by == b.by && a.hard == b.hard }
	for len(rows) > 0 {
		first := rows[0]
		var same, rest []row
		for _, w := range rows {
			if alike(first, w) {
				same = append(same, w)
			} else {
				rest = append(rest, w)
			}
		}
		rows = rest
		if len(same) < blockLeast {
			for i := range same {
				same[i].again = i > 0
			}
			all = append(all, same...)
			continue
		}
		for _, w := range same {
			first.each = append(first.each, w.nuc)
		}
		first.nuc = nil
		all = append(all, first)
	}
	return all
}

// called is what a line begins with: a name as it is, a batch with a capital.
func called(t rules.Task, said string) string {
	if t.Of[0].Kind == book.KindBatch {
		return sentence(said)
	}
	return said
}

// row is a line of a task before it is said whom it is about.
func (s *sheet) row(r *state.Reading, t rules.Task, about func(*row)) row {
	w := row{do: t.Title, why: t.Why, by: s.by(r, t.By, t.Hard), hard: t.Hard, cells: t.Act != rules.ActFeed}
	about(&w)
	return w
}

// reason is why and by when at one nuc of a task.
func (s *sheet) reason(r *state.Reading, w *row, t rules.Task, n *state.Nuc) {
	of := n.Nuc.Nuc.Subject()
	for _, act := range []bool{true, false} {
		for _, f := range t.Findings {
			if f.Of == of && (!act || f.Act == t.Act) {
				w.why, w.by, w.hard = f.Why, s.by(r, f.By, f.Hard), f.Hard
				return
			}
		}
	}
}

// eachHasReason tells whether every nuc of a task is found by itself.
func eachHasReason(t rules.Task) bool {
	for _, of := range t.Of {
		if !slices.ContainsFunc(t.Findings, func(f rules.Finding) bool { return f.Of == of }) {
			return false
		}
	}
	return true
}

func nucsOf(r *state.Reading, t rules.Task) (all []*state.Nuc) {
	for _, of := range t.Of {
		id, ok := of.Nuc()
		if n := r.Nuc(id); ok && n != nil {
			all = append(all, n)
		}
	}
	return all
}

// nameRuns are the names that a task's title leaves out.
func nameRuns(r *state.Reading, t rules.Task) string {
	var words []string
	for _, run := range r.TaskNames(t) {
		words = append(words, run.Text)
	}
	return strings.Join(words, " ")
}

// by is a last day or hour in words: "by Thu", hard "by Wed 06:00", on the day itself
// "today".
func (s *sheet) by(r *state.Reading, t time.Time, hard bool) string {
	if t.IsZero() {
		return ""
	}
	day := r.DayOf(t)
	away := day.Sub(r.Day)
	when := day.Short()[:3]
	switch past := t.Before(r.View.On()); {
	case away == 0 && !past && (!hard || s.endOfDay(t)):
		return "today"
	case away == 0:
		when = t.In(s.zone).Format("15:04")
	case hard && away <= 6 && away >= -6:
		when = s.soon(t)
	case hard:
		when = s.hour(t)
	case away > 6 || away < -6:
		when = t.In(s.zone).Format("2 Jan")
	}
	if t.Before(r.View.On()) {
		return "past " + when
	}
	return "by " + when
}
