package season_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/season"
)

// A search looks as far ahead as its promises; what is planned for later takes nothing from
// them, and does not end the search.
func TestWhatIsPlannedAfterTheDaysSearched(t *testing.T) {
	pen := world{nucs: 12}.pen()
	for _, in := range []calendar.Day{140, 400} {
		pen.Write(book.BatchPlanned{Batch: booktest.Batch(fmt.Sprint(in)), Day: plannerOf(pen).View().Today() + in, Larvae: 30, Nucs: 12, Yard: booktest.Yard("home")})
		if f := season.Search(plannerOf(pen), season.Wanted{}, nil); len(f.Batches) != 0 {
			t.Errorf("%d days ahead: nobody wants %+v", in, f.Batches)
		}
	}
}

// Wherever planned batches lie, before the days searched, on them, after them or over their
// ends, a search ends; and those wholly outside of what a graft of it can reach change nothing.
func TestASearchWithPlansAnywhere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pen, home := world{nucs: 8, starters: 1, finishers: 1, givers: 2, drones: 1, places: 40}.pen(), booktest.Yard("home")
		today := plannerOf(pen).View().Today()
		w := season.Wanted{Window: 1, Larvae: []int{12}, Seed: 1}
		if rapid.Bool().Draw(t, "promised") {
			w.Promises = []season.Promise{{Name: "order 1", Queens: 2, By: today + 60, Sure: 0.5}}
		}
		empty := plannerOf(pen)
		outside := true
		for i := range rapid.IntRange(1, 3).Draw(t, "plans") {
			in := rapid.IntRange(-400, 700).Draw(t, "days ahead")
			outside = outside && (in < -200 || in > 300)
			pen.Write(book.BatchPlanned{
				Batch: booktest.Batch(fmt.Sprint(i)), Day: today + calendar.Day(in), Yard: home,
				Larvae: rapid.IntRange(0, 120).Draw(t, "larvae"), Nucs: rapid.IntRange(0, 40).Draw(t, "nucs"),
			})
		}
		found := season.Search(plannerOf(pen), w, nil)
		if !outside {
			return
		}
		if alone := season.Search(empty, w, nil); !slices.Equal(days(found), days(alone)) || len(alone.Batches) != len(w.Promises) {
			t.Errorf("grafts on %v; without those planned far away on %v", days(found), days(alone))
		}
	})
}

func days(f season.Found) (all []calendar.Day) {
	for _, b := range f.Batches {
		all = append(all, b.Day)
	}
	return all
}
