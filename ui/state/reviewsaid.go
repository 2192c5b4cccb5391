package state

import (
	"strings"

	"lidmark/ui/scene"
)

// ReviewSaid is what is best done with a nuc in words, and what makes it worth more where
// that does not show; or a line of these.
type ReviewSaid struct{ Do, Note string }

// Sizes of what a row of the list says.
const (
	ReviewDoSize   = 14.0
	ReviewNoteSize = 13.0
	ReviewNoteGap  = 12.0 // from what is done to the note behind it
)

// Said are the lines of what is best done: the note stands below where a row has room for
// so many lines, else behind the last of them.
func (p *ReviewPane) Said(m scene.Measurer, said ReviewSaid, room int) (lines []ReviewSaid) {
	wide := p.Columns.ActTo - p.Columns.Act
	if !p.Narrow {
		wide -= ReviewAct
	}
	do := said.Do
	if before, _, hour := strings.Cut(do, ", at dusk, "); hour && p.Narrow {
		do = before + ", at dusk" // the hour stands in the day's work
	}
	for _, l := range scene.Wrap(m, do, ReviewDoSize, scene.SemiBold, wide) {
		lines = append(lines, ReviewSaid{Do: l})
	}
	if said.Note == "" {
		return lines
	}
	if last := &lines[len(lines)-1]; len(lines) >= room && m.Width(last.Do, ReviewDoSize, scene.SemiBold)+ReviewNoteGap+m.Width(said.Note, ReviewNoteSize, scene.Regular) <= wide {
		last.Note = said.Note
		return lines
	}
	for _, l := range scene.Wrap(m, said.Note, ReviewNoteSize, scene.Regular, wide) {
		lines = append(lines, ReviewSaid{Note: l})
	}
	return lines
}
