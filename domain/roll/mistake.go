package roll

import "fmt"

// Mistake is something in a list that cannot be taken in: where, what, and what
// to do about it. Row and Column count from 1; 0 is the whole row, or the whole
// column.
type Mistake struct {
	Row, Column int
	What, Do    string
}

// Place is where the mistake is, in words: "row 7, column C".
func (m Mistake) Place() string {
	switch {
	case m.Row == 0 && m.Column == 0:
		return "the list"
	case m.Row == 0:
		return "column " + Letters(m.Column)
	case m.Column == 0:
		return fmt.Sprintf("row %d", m.Row)
	default:
		return fmt.Sprintf("row %d, column %s", m.Row, Letters(m.Column))
	}
}

// Error is the mistake in words: "row 7, column C: 40 sides is no amount; write
// 0 to 100".
func (m Mistake) Error() string { return m.Place() + ": " + m.What + "; " + m.Do }

// fault is what is wrong with one cell, and what to do; the zero fault is none.
type fault struct{ what, do string }

func faulty(do, what string, args ...any) fault { return fault{fmt.Sprintf(what, args...), do} }
