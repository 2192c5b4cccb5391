package series

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/roll"
)

// Choice is what the columns of a file mean, from the left, and at what height in
// m the wind was measured; 0 is 10 m, as stations and forecasts have it.
type Choice struct {
	Columns []Column
	Height  float64
}

// String is the choice in words that [ParseChoice] reads back.
func (c Choice) String() string {
	var words []string
	for _, col := range c.Columns {
		words = append(words, col.String())
	}
	if c.Height != 0 {
		words = append(words, "at "+strconv.FormatFloat(c.Height, 'g', -1, 64)+" m")
	}
	return strings.Join(words, ",")
}

// ParseChoice reads columns separated by commas, and the height of the wind behind
// them where it is not 10 m: "time,temperature °F,wind mph,at 2 m".
func ParseChoice(text string) (c Choice, err error) {
	for word := range strings.SplitSeq(text, ",") {
		word = strings.TrimSpace(word)
		if height, is := strings.CutPrefix(word, "at "); is {
			figure := strings.TrimSpace(strings.TrimSuffix(height, "m"))
			c.Height, err = strconv.ParseFloat(figure, 64)
			if err != nil || !(c.Height >= leastHeight && c.Height <= mostHeight) {
				return Choice{}, fmt.Errorf("%q: write the height of the wind in metres, %g to %g, like at 2 m", word, leastHeight, mostHeight)
			}
			continue
		}
		col, err := ParseColumn(word)
		if err != nil {
			return Choice{}, err
		}
		c.Columns = append(c.Columns, col)
	}
	return c, nil
}

// At what heights in m anybody measures wind for a yard.
const leastHeight, mostHeight = 0.5, 200.0

// check tells what a choice lacks, or has twice.
func (c Choice) check() *misread {
	seen := map[Quantity]int{}
	for i, col := range c.Columns {
		if col.What == Ignored {
			continue
		}
		if units := quantities[col.What].units; len(units) > 0 && col.Unit == "" {
			return &misread{Mistake: roll.Mistake{Column: i + 1, What: fmt.Sprintf("column %s: the unit of its %s is none that is known, say it with columns: %s", roll.Letters(i+1), col.What, list(units))}}
		}
		if was, twice := seen[col.What]; twice {
			return &misread{Mistake: roll.Mistake{Column: i + 1, What: fmt.Sprintf("columns %s and %s are both %s: choose one of them, and make the other ignored", roll.Letters(was+1), roll.Letters(i+1), col.What)}}
		}
		seen[col.What] = i
	}
	if _, has := seen[Time]; !has {
		return &misread{Mistake: roll.Mistake{What: "no column is the time: say with columns which is, like time,temperature,wind"}}
	}
	if len(seen) == 1 {
		return &misread{Mistake: roll.Mistake{What: "no column is weather: say with columns which are, like time,temperature,wind km/h"}}
	}
	_, t := seen[Temperature]
	_, low := seen[Low]
	_, high := seen[High]
	if t && (low || high) {
		return &misread{Mistake: roll.Mistake{What: "there is temperature beside low or high: choose the one, for hours, or the others, for days"}}
	}
	return nil
}

// daily tells whether the rows are whole days.
func (c Choice) daily() bool { return c.Has(Low) || c.Has(High) }

// Has tells whether a column is a quantity.
func (c Choice) Has(q Quantity) bool {
	for _, col := range c.Columns {
		if col.What == q {
			return true
		}
	}
	return false
}
