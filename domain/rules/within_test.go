package rules_test

import (
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/rules"

	"pgregory.net/rapid"
)

// dayPlan has tasks of a made-up day at home and in two yards.
func dayPlan(t *rapid.T) rules.DayPlan {
	day := calendar.Date(2027, time.May, 11)
	now := day.At(8, 0, time.UTC)
	p := rules.DayPlan{Day: day, At: now, Soon: (day + 1).At(12, 0, time.UTC)}
	for i := range rapid.IntRange(0, 4).Draw(t, "stops") {
		s := rules.Stop{Yard: booktest.Yard(string(rune('A' + i/2))), Far: float64(20 * (i / 2))}
		for range rapid.IntRange(1, 5).Draw(t, "tasks") {
			act := rapid.SampledFrom([]rules.Act{rules.ActFeed, rules.ActGiveCell, rules.ActNarrowEntrance}).Draw(t, "act")
			f := rules.Finding{Act: act, Severity: rules.Pressing}
			if act == rules.ActNarrowEntrance {
				f.Rule = rules.BeingRobbed
			}
			s.Tasks = append(s.Tasks, rules.Task{
				Act: act, Hard: act == rules.ActGiveCell, Minutes: float64(rapid.IntRange(1, 40).Draw(t, "minutes")),
				By:       now.Add(time.Duration(rapid.IntRange(-48, 96).Draw(t, "hours")) * time.Hour),
				NeedsYou: rapid.Bool().Draw(t, "needs"), Findings: []rules.Finding{f},
			})
		}
		p.Stops = append(p.Stops, s)
	}
	return p
}

func tasks(stops []rules.Stop) (all []rules.Task) {
	for _, s := range stops {
		all = append(all, s.Tasks...)
	}
	return all
}

// TestWithinLosesNothing: what is kept and what waits is the whole day; the
// minutes are kept unless what must be done alone takes more, and nothing soft
// is kept while something hard is left.
func TestWithinLosesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := dayPlan(t)
		minutes := float64(rapid.IntRange(0, 300).Draw(t, "minutes"))
		part := p.Within(minutes)
		kept, all := tasks(part.Stops), tasks(p.Stops)
		if len(kept)+len(part.Waits) != len(all) {
			t.Fatalf("%d kept and %d waiting of %d", len(kept), len(part.Waits), len(all))
		}
		if part.Minutes > max(minutes, part.Must) {
			t.Fatalf("%v minutes kept of %v, %v of them must be", part.Minutes, minutes, part.Must)
		}
		hard := func(t rules.Task) bool { return t.Hard }
		soft := func(t rules.Task) bool { return !t.Hard && t.Act != rules.ActNarrowEntrance }
		if slices.ContainsFunc(part.Waits, hard) && slices.ContainsFunc(kept, soft) {
			t.Fatalf("a hard end waits and %+v is kept", kept)
		}
		for _, w := range part.Waits {
			if w.Hard && w.By.Before(p.Soon) || w.Act == rules.ActNarrowEntrance {
				t.Fatalf("this cannot wait: %+v", w)
			}
		}
		if whole := p.Within(1e6); len(whole.Waits) > 0 {
			t.Fatalf("%d wait though there is time for all", len(whole.Waits))
		}
	})
}

// TestNobodyComes: without any time only what cannot be made good is kept, and
// the whole day takes as long as its plan says.
func TestNobodyComes(t *testing.T) {
	berlin, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	day := calendar.Date(2027, time.May, 11)
	v := book.NewSeason(time.LoadLocation, demo.Season(day, berlin)).At(day.At(7, 10, berlin))
	plan := rules.Day(v, day)
	none := plan.Within(0)
	kept := tasks(none.Stops)
	if len(kept) == 0 || len(none.Waits) == 0 {
		t.Fatalf("%d kept, %d waiting: the demo season has both", len(kept), len(none.Waits))
	}
	for _, k := range kept {
		if !k.Hard && k.Findings[0].Rule != rules.BeingRobbed {
			t.Errorf("%q is kept though it can wait", k.Title)
		}
	}
	all := plan.Within(1e6)
	if all.Minutes != plan.Minutes || !all.Home.Equal(plan.Home) {
		t.Errorf("all of it takes %v minutes until %v, its plan says %v until %v", all.Minutes, all.Home, plan.Minutes, plan.Home)
	}
	for i, s := range all.Stops {
		if p := plan.Stops[i]; s.Drive != p.Drive || !s.Start.Equal(p.Start) {
			t.Errorf("the stop at %v after %v min is one at %v after %v min", p.Start, p.Drive, s.Start, s.Drive)
		}
	}
}

// A shorter hard end still fits when a longer one before it has to wait.
func TestAShorterHardEndFits(t *testing.T) {
	day := calendar.Date(2027, time.May, 11)
	now := day.At(8, 0, time.UTC)
	hard := func(minutes float64, hours int) rules.Task {
		return rules.Task{
			Act: rules.ActGiveCell, Hard: true, Minutes: minutes, By: now.Add(time.Duration(hours) * time.Hour),
			Findings: []rules.Finding{{Act: rules.ActGiveCell, Severity: rules.Pressing}},
		}
	}
	p := rules.DayPlan{
		Day: day, At: now, Soon: (day + 1).At(12, 0, time.UTC),
		Stops: []rules.Stop{{Yard: booktest.Yard("A"), Tasks: []rules.Task{hard(50, 60), hard(20, 70)}}},
	}
	part := p.Within(30)
	if kept := tasks(part.Stops); len(kept) != 1 || kept[0].Minutes != 20 || len(part.Waits) != 1 {
		t.Errorf("of 50 and 20 minutes in 30 there are kept %+v", kept)
	}
}
