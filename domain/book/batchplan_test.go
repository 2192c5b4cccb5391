package book_test

import (
	"maps"
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// TestAPlannedBatchIsMovedDroppedAndGrafted: the last word counts, a strike takes it
// back, and the graft makes it a batch.
func TestAPlannedBatchIsMovedDroppedAndGrafted(t *testing.T) {
	day := func(s string) calendar.Day {
		d, err := calendar.ParseDay(s)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	one, two := booktest.Batch("one"), booktest.Batch("two")
	p := (&booktest.Pen{}).At("2027-03-16 20:00").Write(
		book.BatchPlanned{Batch: one, Day: day("2027-04-19"), Larvae: 96},
		book.BatchPlanned{Batch: two, Day: day("2027-04-12"), Larvae: 40},
	)
	planned := func(on string) (days []string) {
		for b := range p.View(on).Plans() {
			days = append(days, b.Day.String())
		}
		return days
	}
	if got := planned("2027-03-17 08:00"); !slices.Equal(got, []string{"2027-04-12", "2027-04-19"}) {
		t.Errorf("planned for %v", got)
	}
	p.At("2027-03-18 20:00").Write(book.BatchPlanned{Batch: one, Day: day("2027-04-10"), Larvae: 60})
	if got := planned("2027-03-19 08:00"); !slices.Equal(got, []string{"2027-04-10", "2027-04-12"}) {
		t.Errorf("moved: planned for %v", got)
	}
	p.At("2027-03-20 20:00").Write(book.BatchDropped{Batch: one})
	if got := planned("2027-03-21 08:00"); !slices.Equal(got, []string{"2027-04-12"}) {
		t.Errorf("dropped: planned for %v", got)
	}
	p.Strike()
	if got := planned("2027-03-21 08:00"); len(got) != 2 {
		t.Errorf("the drop struck: planned for %v", got)
	}
	p.At("2027-04-12 15:00").Write(book.Grafted{Batch: two, Number: 5, Larvae: 38})
	v := p.View("2027-04-13 08:00")
	if last, ok := v.BatchPlan(two); ok || last.Larvae != 40 || v.Batch(two).Larvae != 38 {
		t.Errorf("a grafted batch is still planned, %t, of %d larvae", ok, last.Larvae)
	}
	p.At("2027-04-12 19:00").Write(book.BatchPlanned{Batch: two, Day: day("2027-04-13"), Larvae: 40})
	if _, ok := p.View("2027-04-13 08:00").BatchPlan(two); ok {
		t.Error("planned again after the hour of its graft it is planned")
	}
	if p, ok := v.BatchPlan(booktest.Batch("three")); ok || !p.At.IsZero() {
		t.Error("a batch that nobody planned is planned")
	}
}

func TestHoursOfOneDay(t *testing.T) {
	ida := booktest.Person("Ida")
	free := book.FreeHours{From: 18 * 60, Until: 20 * 60}
	p := (&booktest.Pen{}).At("2027-05-01 12:00").Write(
		book.PersonDescribed{Person: ida, Name: "Ida M.", Free: [7]book.FreeHours{free, free, free, free, free, free, free}},
		book.HoursOn{Person: ida, Day: calendar.Date(2027, 5, 11), FreeHours: book.FreeHours{}},
		book.HoursOn{Person: ida, Day: calendar.Date(2027, 5, 12), FreeHours: book.FreeHours{From: 8 * 60, Until: 16 * 60}},
	)
	v := p.View("2027-05-10 08:00")
	p.At("2027-05-10 12:00").Write(book.DaysOff{Person: ida, From: calendar.Date(2027, 5, 12), To: calendar.Date(2027, 5, 13)})
	if got := p.View("2027-05-10 13:00").MinutesFree(calendar.Date(2027, 5, 12)); got != 0 {
		t.Errorf("a day off said later: %d minutes free", got)
	}
	p.Write(book.HoursOn{Person: ida, Day: calendar.Date(2027, 5, 13), FreeHours: book.FreeHours{From: 8 * 60, Until: 9 * 60}})
	if got := p.View("2027-05-10 13:00").MinutesFree(calendar.Date(2027, 5, 13)); got != 60 {
		t.Errorf("hours of a day off said later: %d minutes free", got)
	}
	for on, want := range map[calendar.Day]int{calendar.Date(2027, 5, 10): 120, calendar.Date(2027, 5, 11): 0, calendar.Date(2027, 5, 12): 480} {
		if got := v.MinutesFree(on); got != want {
			t.Errorf("%s: %d minutes free, want %d", on, got, want)
		}
	}
}

// Planned batches of one day and line are told apart by their larvae, and by their place where those
// are as many; one that is alone by nothing.
func TestPlannedBatchesAreToldApart(t *testing.T) {
	day := calendar.Date(2027, 5, 1)
	p := (&booktest.Pen{}).At("2027-03-16 20:00")
	for _, b := range []book.BatchPlanned{
		{Batch: booktest.Batch("a"), Line: "Sorrel", Larvae: 24},
		{Batch: booktest.Batch("b"), Line: "Sorrel", Larvae: 24},
		{Batch: booktest.Batch("c"), Line: "Sorrel", Larvae: 1},
		{Batch: booktest.Batch("d"), Line: "Teasel", Larvae: 24},
	} {
		b.Day = day
		p.Write(b)
	}
	v, apart := p.View("2027-03-17 08:00"), map[string]string{}
	for b := range v.Plans() {
		apart[v.Apart(b)] = b.Line
	}
	want := map[string]string{", 24 larvae, 1 of 2": "Sorrel", ", 24 larvae, 2 of 2": "Sorrel", ", 1 larva": "Sorrel", "": "Teasel"}
	if !maps.Equal(apart, want) {
		t.Errorf("told apart as %v, want %v", apart, want)
	}
	tried, _ := v.BatchPlan(booktest.Batch("d"))
	tried.Line, tried.Larvae = "Sorrel", 30
	if got := v.Apart(tried); got != ", 30 larvae" {
		t.Errorf("one that is tried otherwise is told apart by %q", got)
	}
}
