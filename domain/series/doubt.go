package series

import (
	"fmt"

	"lidmark/domain/roll"
)

// Beyond these nobody looks to queens: wind of hurricane force from 32.7 m/s
// (Beaufort 12, WMO-No. 306), heat and an hour's rain by common practice, no
// source.
const hurricane, heat, cloudburst = 32.7, 45.0, 60.0

// doubt notes the first value of a quantity that is likely in another unit.
func (t *taking) doubt(row roll.Row, c Column, metric float64) {
	if _, noted := t.doubts[c.What]; noted {
		return
	}
	words := ""
	switch {
	case c.What == Wind && metric > hurricane:
		words = fmt.Sprintf("wind %.0f m/s is a hurricane: look whether its unit is right", metric)
	case (c.What == Temperature || c.What == High || c.What == Low) && metric > heat:
		words = fmt.Sprintf("%.0f °C is hotter than where bees are kept: look whether its unit is right", metric)
	case c.What == Rain && metric > cloudburst && !t.choice.daily():
		words = fmt.Sprintf("rain %.0f mm in an hour is a cloudburst: look whether its unit is right", metric)
	default:
		return
	}
	t.doubts[c.What] = t.place(row, t.column(c.What)) + ": " + words
}
