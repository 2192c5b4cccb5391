package course

import "lidmark/domain/book"

// evens is the chance from which a thing is more probable than not.
const evens = 0.5

// lead lets a condition that nobody saw give way to what the chances make more
// probable than not: lid, title and table say what [Course.Held] says. The days
// of the presumption stay those of the calendar.
func (a asked) lead(p *Presumption) {
	p.Calendar = p.Condition
	if p.Seen {
		return
	}
	h := a.Held(a.nuc)
	if h.From == 0 {
		return
	}
	c := h.Chances()
	p.Condition = c.lead(p.Calendar)
	switch {
	case p.Condition == p.Calendar, p.Calendar == book.LayingWorkers && p.Condition == book.NoQueen: // it says so
	case p.Calendar == book.NoQueen && !p.Condition.Trouble():
		p.Why = "most probably queenright by now; " + p.Why
	default:
		p.Why = "most probably " + p.Condition.String() + "; " + p.Why
	}
}

// Wanting tells whether a cell to spare is kept for a nuc in which a queen is awaited: once
// a look found no eggs, where most probably nobody is. Where none was made, where no laying
// queen is more probable than not, and nobody would be if it found none.
func (c Chances) Wanting(looked bool) bool {
	if looked {
		return c.None > evens
	}
	lays := c.Lays()
	return lays <= evens && c.None > evens*(1-lays)
}

// lead is the condition that is more probable than not, where it is another than
// the calendar's.
func (c Chances) lead(calendar book.Condition) book.Condition {
	bare := c.None + c.OwnCell
	switch {
	case c.LayingWorkers > bare && c.LayingWorkers+bare > evens:
		return book.LayingWorkers
	case c.LayingWorkers+bare > evens:
		return book.NoQueen
	case c.DroneLayer > evens:
		return book.DroneLayer
	case calendar != book.NoQueen && calendar != book.LayingWorkers || c.Cell+c.Late()+c.Lays() <= evens:
		return calendar
	case c.Lays() > c.Late():
		return book.Due
	default:
		return book.Virgin
	}
}
