package state

import (
	"strings"

	"lidmark/domain/roll"
	"lidmark/domain/series"
)

// Meaning is what a column of a list, or of a series, can mean.
type Meaning struct {
	Value, Word string // as it is kept in its field, and as it is shown
	Left        bool   // the column is left out
	Many        bool   // more than one column can mean it
}

func meaningOfList(c roll.Column) Meaning {
	return Meaning{c.String(), c.Words(), c == roll.Ignored, c == roll.Ignored || c == roll.Note}
}

func meaningOfSeries(c series.Column) Meaning {
	if c.What == series.Ignored {
		return Meaning{c.String(), "left out", true, true}
	}
	word, unit, said := strings.Cut(c.String(), " ")
	switch c.What {
	case series.Time:
		word = "time, or day"
	case series.Clock:
		word = "time of day"
	}
	if said {
		word += ", " + unit
	}
	return Meaning{Value: c.String(), Word: word}
}

// Meanings are all that a column can mean.
func (b *Bring) Meanings() (all []Meaning) {
	if b.Series != nil {
		for _, c := range series.Columns() {
			all = append(all, meaningOfSeries(c))
		}
		return all
	}
	for _, c := range roll.Columns() {
		all = append(all, meaningOfList(c))
	}
	return all
}

// HeadingOf is what the file calls a column, counted from 1.
func (b *Bring) HeadingOf(column int) string {
	if b.Series != nil {
		if column > len(b.Series.File.Headings) {
			return ""
		}
		return b.Series.File.Headings[column-1]
	}
	for _, row := range b.Rows() {
		if row.Number == b.Options.Heading {
			return row.Cell(column).Text
		}
	}
	return ""
}

// Counts are the figures of what was read, in words.
func (b *Bring) Counts() string {
	if b.Series != nil {
		return b.seriesCounts()
	}
	return b.Result.Counts.String()
}
