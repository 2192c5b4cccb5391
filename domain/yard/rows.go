package yard

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"lidmark/domain/book"
)

// Rows are places in rows from north to south, each from west to east: how many rows,
// how many in each, and metres from one to the next in a row and from row to row.
type Rows struct {
	Rows, InRow int
	Along, Down float64
}

var rowsSaid = regexp.MustCompile(`^(\d{1,3})\s*[x×*]\s*(\d{1,3})\s*[,;]?\s*(\d{1,3}(?:[.,]\d+)?)\s*m?(?:\s*[,;]?\s+(\d{1,3}(?:[.,]\d+)?)\s*m?)?$`)

// ParseRows reads rows as they are typed: "4 × 4, 6 m, 5 m" are four rows of four, 6 m
// apart along a row and 5 m from row to row; with one distance both are that.
func ParseRows(text string) (r Rows, err error) {
	said := rowsSaid.FindStringSubmatch(strings.TrimSpace(strings.ReplaceAll(text, ", ", " , ")))
	if said == nil {
		return r, fmt.Errorf("%q are no rows: write rows × stands in a row, then metres apart along and down, such as 4 × 4, 6 m, 5 m", text)
	}
	metres := func(text string) float64 {
		v, _ := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
		return v
	}
	r.Rows, _ = strconv.Atoi(said[1])
	r.InRow, _ = strconv.Atoi(said[2])
	r.Along = metres(said[3])
	if r.Down = r.Along; said[4] != "" {
		r.Down = metres(said[4])
	}
	if r.Rows*r.InRow == 0 || r.Along == 0 || r.Down == 0 {
		return r, fmt.Errorf("%q are no rows: a row needs a stand and metres apart", text)
	}
	return r, nil
}

// String is how the stands are set, in words.
func (r Rows) String() string {
	return fmt.Sprintf("rows from north to south: %d, each of %d from west to east; %g m apart in a row, %g m from row to row", r.Rows, r.InRow, r.Along, r.Down)
}

// Rowed is the layout with the picked stands in rows, in the order in which it has
// them; the north-western one stands at a point. It fails where there are more stands
// than places.
func (l Layout) Rowed(p Pick, from book.Point, r Rows) (Layout, error) {
	if n := len(l.picked(p)); n > r.Rows*r.InRow {
		return l, fmt.Errorf("%d × %d are %d places, and %d stands are picked: write more rows, or pick fewer", r.Rows, r.InRow, r.Rows*r.InRow, n)
	}
	i := 0
	return l.each(p, func(s *Stand) {
		s.At = book.Point{X: from.X + float64(i%r.InRow)*r.Along, Y: from.Y - float64(i/r.InRow)*r.Down}
		i++
	}), nil
}
