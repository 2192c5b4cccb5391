package season_test

import (
	"testing"

	"lidmark/domain/season"
)

// One of two promises is kept by no one graft and no two of those tried first, but by two that are
// alike and a week apart, of the sizes that are tried of several: so several are tried for both
// together too, and keep both.
func TestSeveralThatAreAlikeAreSeveral(t *testing.T) {
	from := day(t, "2027-04-02")
	w := world{nucs: 50, starters: 2, finishers: 3, givers: 2, drones: 1}
	wanted := season.Wanted{Window: 3, Larvae: []int{12, 24, 36}, Sizes: 100, Near: 60, Minutes: 149, From: from, Promises: []season.Promise{
		{Queens: 2, By: from + 55, Lines: []string{"Rook"}, Sure: 0.8, Priority: 2},
		{Queens: 2, By: from + 56, Lines: []string{"Rook"}, Sure: 0.95, Priority: 1},
	}}
	p := plannerOf(w.pen())
	f := season.Search(p, wanted, nil)
	if want := bruteForce(p, w, wanted); worthOf(p, w, f) != want || len(f.Kept) != 2 {
		t.Errorf("found %+v, there is %+v", worthOf(p, w, f), want)
	}
}
