package state

import (
	"sort"
	"strings"

	"lidmark/domain/roll"
	"lidmark/ui/scene"
)

// ListLine is how high a line of what is wrong with a row is, below its cells, dp.
const ListLine = 20.0

// Measures of the tick beside what is wrong with a row, dp.
const (
	listTick    = 116.0
	listTextAir = 8.0
)

// tallRow is a row of a list that is higher than others: what is wrong with it
// stands below its cells.
type tallRow struct {
	row, lines int // more than other rows have
	above      int // lines of all such rows before it
}

// stretch makes room for what is wrong with rows where it does not fit beside
// their cells, and finds the first row in sight.
func (l *ListLayout) stretch(s State) {
	l.rows = len(s.Bring.Result.Rows)
	beside := l.Table.Right() - listTick - l.Words
	below := l.Table.W - ListNumber - 2*listTextAir
	above := 0
	for _, i := range s.Bring.wrong {
		said := s.Units.Say(MistakesOf(s.Bring.Result.Rows[i]))
		if !l.Below && (Reckoner{}).Width(said, 14, scene.Regular) <= beside {
			continue
		}
		if n := linesOf(said, 14, below) - boolInt(l.Below); n > 0 {
			l.tall = append(l.tall, tallRow{i, n, above})
			above += n
		}
	}
	l.FirstRow = max(0, min(l.rows-1, sort.Search(l.rows, func(i int) bool { return l.Top(i) >= s.Scroll[FillPlace] })))
	l.Offset = l.Top(l.FirstRow)
}

// Top is where a row begins, from the top of the first; of the row behind the
// last, where the last ends.
func (l ListLayout) Top(row int) float64 {
	at := float64(row) * (ListRow + ListLine*float64(boolInt(l.Below)))
	if i := sort.Search(len(l.tall), func(i int) bool { return l.tall[i].row >= row }); i > 0 {
		at += ListLine * float64(l.tall[i-1].above+l.tall[i-1].lines)
	}
	return at
}

// Behind is the first row below those in sight, which all are whole; the first one is
// in sight even where it is not.
func (l ListLayout) Behind() int {
	fits := func(i int) bool { return l.Top(i+1)-l.Offset <= l.Table.H }
	row := min(l.FirstRow+1, l.rows)
	for row < l.rows && fits(row) {
		row++
	}
	return row
}

// Lines is how many lines stand below the cells of a row.
func (l ListLayout) Lines(row int) int {
	below := boolInt(l.Below)
	i := sort.Search(len(l.tall), func(i int) bool { return l.tall[i].row >= row })
	if i == len(l.tall) || l.tall[i].row != row {
		return below
	}
	return l.tall[i].lines + below
}

// wrongRows are the places of the rows with a mistake that are not left out.
func wrongRows(rows []roll.RowRead) (all []int) {
	for i, row := range rows {
		if len(row.Mistakes) > 0 && !row.Skipped {
			all = append(all, i)
		}
	}
	return all
}

// MistakesOf are the mistakes of a row in words, one behind the other, each with
// its column and what to do.
func MistakesOf(row roll.RowRead) string {
	var all []string
	for _, m := range row.Mistakes {
		place := ""
		if m.Column > 0 {
			place = "column " + roll.Letters(m.Column) + ": "
		}
		all = append(all, place+WhatDo(m, "; "))
	}
	return strings.Join(all, ". ")
}

// WhatDo is a mistake with what to do about it, where that is no part of it.
func WhatDo(m roll.Mistake, parted string) string {
	if m.Do == "" {
		return m.What
	}
	return m.What + parted + m.Do
}

// firstRunes are as many letters of a cell as may say how wide its column is.
func firstRunes(text string) string {
	const enough = 40
	n := 0
	for i := range text {
		if n++; n > enough {
			return text[:i]
		}
	}
	return text
}
