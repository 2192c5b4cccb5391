package season_test

import (
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/domain/season"
)

// That an order cannot be kept is said of what is tried; only that no graft is in time holds for all.
func TestWhatCannotBeKeptIsSaidOfWhatIsTried(t *testing.T) {
	p := plannerOf(world{nucs: 6, givers: 4}.pen())
	for ahead, tried := range map[int]bool{70: true, 30: false} {
		w := season.Wanted{Larvae: []int{48}, Window: 3, Promises: []season.Promise{{Name: "order 1", Queens: 5, By: p.View().Today()}}}
		w.Promises[0].By += calendar.Day(ahead)
		f := season.Search(p, w, nil)
		if len(f.Short) != 1 || strings.Contains(f.Short[0].Why, season.Tried) != tried {
			t.Errorf("%d days ahead: %+v", ahead, f.Short)
		}
	}
}
