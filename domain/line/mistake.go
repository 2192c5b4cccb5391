package line

import (
	"fmt"
	"strings"
)

// Mistake is something in a line that makes no sense: where, what, and what
// to do about it. Columns count characters from 1.
type Mistake struct {
	Column int
	What   string
	Do     string
}

// Error is the mistake in words: "column 9: s has at most 6 sides in A3;
// write s0 to s6".
func (m Mistake) Error() string { return fmt.Sprintf("column %d: %s; %s", m.Column, m.What, m.Do) }

// Mistakes are all mistakes of a line, by column. There is at least one.
type Mistakes []Mistake

// Error is every mistake on a line of its own.
func (m Mistakes) Error() string {
	all := make([]string, len(m))
	for i, one := range m {
		all[i] = one.Error()
	}
	return strings.Join(all, "\n")
}
