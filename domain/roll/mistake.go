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

// faulty is a fault in words; what the cell says is repeated as far as it is
// needed to find it.
func faulty(do, what string, args ...any) fault {
	for i, a := range args {
		if text, ok := a.(string); ok {
			args[i] = begun(text)
		}
	}
	return fault{fmt.Sprintf(what, args...), do}
}

// begun is a text, or its beginning where it is long.
func begun(text string) string {
	const most = 40
	n := 0
	for i := range text {
		if n++; n > most {
			return text[:i] + "…"
		}
	}
	return text
}
