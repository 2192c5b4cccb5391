package handover

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// What comes next for an order follows from what it misses: each case, and none before the look.
func TestHowAnOrderStands(t *testing.T) {
	on := calendar.Date(2027, 6, 10)
	soon, late := Next{Day: on - 1}, Next{Day: on + 5}
	for _, c := range []struct {
		name string
		o    Served
		want Stand
	}{
		{"all there", Served{}, NoneShort},
		{"a look is due", Served{Short: 2, Lost: true, Look: []*book.Nuc{{}}}, LookFirst},
		{"planned", Served{Short: 2, Planned: 2}, Covered},
		{"in nucs and planned", Served{Short: 2, Planned: 1, Coming: 1}, Covered},
		{"one too few", Served{Short: 3, Planned: 1, Coming: 1}, GraftFor},
		{"one too few, they come late", Served{Short: 3, Planned: 1, Next: late}, GraftFor},
		{"to be expected", Served{Short: 2, Next: soon}, StillComing},
		{"to be expected, no graft in time", Served{Short: 2, Next: soon, Lost: true}, StillComing},
		{"late", Served{Short: 2, Next: late, Lost: true}, RingLater},
		{"never", Served{Short: 2, Lost: true}, RingWithout},
	} {
		c.o.On = on
		if got := c.o.Stand(); got != c.want || got.Rings() != (c.want >= RingLater) {
			t.Errorf("%s: %d, rings %v; want %d", c.name, got, got.Rings(), c.want)
		}
	}
}
