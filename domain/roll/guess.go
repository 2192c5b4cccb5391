package roll

import (
	"slices"
	"strings"
	"unicode"
)

// Heading is the number of the row that holds the headings of a sheet, or 0 if
// none of the first rows does: a row of which at least two cells, and half of
// those that say anything, are called like columns.
func Heading(s Sheet) int {
	const few = 10
	for _, row := range s.Rows[:min(few, len(s.Rows))] {
		said, known := 0, 0
		for _, c := range row.Cells {
			if c.Text != "" {
				said++
			}
			if headed(c.Text) != Ignored {
				known++
			}
		}
		if known > 1 && 2*known >= said {
			return row.Number
		}
	}
	return 0
}

// Guess guesses what the columns of a sheet mean: by their headings, which are
// in the row of the number heading, 0 being none, and else by the shape of
// their cells. No meaning is guessed twice. The keeper may change them all.
func Guess(s Sheet, heading int) []Column {
	width := 0
	var heads Row
	rows := slices.DeleteFunc(slices.Clone(s.Rows), func(r Row) bool {
		if r.Number == heading {
			heads = r
		}
		width = max(width, len(r.Cells))
		return r.Number <= heading
	})
	guessed := make([]Column, width)
	taken := map[Column]bool{}
	for i := range guessed {
		if c := headed(heads.Cell(i + 1).Text); c != Ignored && !taken[c] {
			guessed[i], taken[c] = c, true
		}
	}
	for i := range guessed {
		if guessed[i] == Ignored && headed(heads.Cell(i+1).Text) == Ignored {
			if c := shaped(rows, i+1); c != Ignored && !taken[c] {
				guessed[i], taken[c] = c, true
			}
		}
	}
	return guessed
}

// headed is the column that a heading calls by a name, or Ignored.
func headed(text string) Column {
	words := plainWords(text)
	if words == "" {
		return Ignored
	}
	for c, row := range columns {
		if slices.Contains(row.headings, words) {
			return Column(c)
		}
	}
	return Ignored
}

// plainWords are the words of a heading in small letters, without signs and
// without what stands in brackets, which is a unit.
func plainWords(text string) string {
	text, _, _ = strings.Cut(text, "(")
	return strings.Join(strings.FieldsFunc(strings.ToLower(text), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	}), " ")
}

// shaped is the column that cells look like, or Ignored: only names of nucs,
// conditions and colours look like nothing else.
func shaped(rows []Row, column int) Column {
	const enough = 50
	looks := []struct {
		as Column
		is func(text string) bool
	}{
		{NucName, func(text string) bool { name, _, _ := nucName(text, ""); return name != "" }},
		{MarkColour, func(text string) bool { _, ok := colourOf(text); return ok }},
		{Holds, func(text string) bool { _, ok := conditionOf(text); return ok }},
	}
	for _, look := range looks {
		said, like := 0, 0
		for _, row := range rows[:min(enough, len(rows))] {
			if text := row.Cell(column).Text; text != "" {
				said++
				if look.is(text) {
					like++
				}
			}
		}
		if like > 0 && 4*like >= 3*said { // three of four
			return look.as
		}
	}
	return Ignored
}
