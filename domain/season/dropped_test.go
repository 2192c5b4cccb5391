package season_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/season"
)

// A graft that nobody ordered holds all nucs. The search says that without it nobody would be short, as it finds
// once it is dropped; one that is begun is not to be dropped, and stopped it says nothing.
func TestWhatDroppingAGraftGives(t *testing.T) {
	by := day(t, "2027-06-20")
	pen := world{nucs: 24, starters: 2, finishers: 4}.pen().Write(
		book.BatchPlanned{Batch: booktest.Batch("1"), Day: by - 45, Larvae: 40, Nucs: 24, Yard: booktest.Yard("home")},
		book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 3, By: by})
	p := plannerOf(pen)
	f := season.Search(p, season.Wanted{Promises: promisesOf(p)}, nil)
	all := f.Dropped(p, nil)
	want := "without the graft of " + (by - 45).Short() + ", and its queens: 0 short instead of 3"
	if len(all) != 1 || all[0].Said() != want {
		t.Fatalf("%+v, want %q", all, want)
	}
	if stopped := f.Dropped(p, func(season.Progress) bool { return false }); len(stopped) != 0 {
		t.Errorf("stopped: %+v", stopped)
	}
	then := p.Without(all[0].Grafts)
	if _, short := season.Search(then, season.Wanted{Promises: promisesOf(then)}, nil).Queens(); short != all[0].Short {
		t.Errorf("%d are short without it", short)
	}
	begun := plannerOf(pen.Write(book.BatchReadied{Batch: booktest.Batch("1"), Step: book.DroneCombIn}))
	if all := season.Search(begun, season.Wanted{Promises: promisesOf(begun)}, nil).Dropped(begun, nil); len(all) != 0 {
		t.Errorf("begun: %+v", all)
	}
}

// One nuc is left beside a planned graft of 14, whose five queens are 87 of 100 sure, as one graft in ten fails. A
// graft for that nuc adds a hundredth and less than a queen, and is not proposed; one for six nucs is, with what it adds.
func TestAGraftThatHardlyHelpsIsLeftOut(t *testing.T) {
	found := func(nucs int) season.Found {
		o, by := booktest.Order("1"), day(t, "2027-06-16")
		pen := world{nucs: 14 + nucs}.pen().Write(
			book.OrderTaken{Order: o, Number: "1", Queens: 5, By: by},
			book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-04-28"), Larvae: 32, Nucs: 14, Queens: 5, By: by, Orders: []book.OrderID{o}})
		p := plannerOf(pen)
		return season.Search(p, season.Wanted{Promises: promisesOf(p)}, nil)
	}
	if f := found(1); len(f.Promises) != 1 || len(f.Batches) != 0 {
		for _, b := range f.Batches {
			t.Logf("%d larvae, %d nucs, %+v", b.Larvae, b.Nucs, b.Adds)
		}
		t.Errorf("%d promises, %+v", len(f.Promises), f.Short)
	}
	f := found(6)
	if len(f.Batches) != 1 || f.Batches[0].Adds == nil {
		t.Fatalf("%+v", f.Batches)
	}
	if a := f.Batches[0].Adds; a.With-a.Without < 0.02 {
		t.Errorf("it adds %s", a.Said())
	}
}
