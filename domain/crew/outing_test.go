package crew_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// away are the minutes from leaving to home of everybody, reckoned from the sheets alone:
// who drives is away on all ways of the van, and in every yard as long as whoever of them
// is at work there longest.
func away(day crew.Day, roundOf func(crew.Visit) string) []float64 {
	longest := map[int]map[string]float64{}
	for _, s := range day.Sheets {
		if longest[s.Team] == nil {
			longest[s.Team] = map[string]float64{}
		}
		for _, v := range s.Visits {
			sum := 0.0
			for _, w := range v.Work {
				sum += w.Minutes
			}
			longest[s.Team][roundOf(v)] = max(longest[s.Team][roundOf(v)], sum)
		}
	}
	var all []float64
	for _, s := range day.Sheets {
		sum := s.Driving
		for _, minutes := range longest[s.Team] {
			sum += minutes
		}
		if len(s.Visits) == 0 && s.Driving == 0 {
			sum = 0
		}
		all = append(all, sum)
	}
	return all
}

// TestNobodyIsAwayLongerThanHeHasTime: whatever people and vans there are, nobody is away
// longer than he has time, and every piece of work is on one sheet or waits.
func TestNobodyIsAwayLongerThanHeHasTime(t *testing.T) {
	j, on := demoDay(t)
	pieces := 0
	for _, s := range j.Day(on).Stops {
		for _, task := range s.Tasks {
			pieces += len(task.Of)
		}
	}
	roundOf := func(v crew.Visit) string { return fmt.Sprint(v.Yard, v.Dusk) }
	midnight := on.Start(time.UTC)
	rapid.Check(t, func(t *rapid.T) {
		var hands crew.Hands
		told := rapid.Bool().Draw(t, "told")
		for van := range rapid.IntRange(1, 2).Draw(t, "vans") {
			var people []crew.Hand
			for i := range rapid.IntRange(1, 3).Draw(t, "people") {
				h := crew.Hand{Name: fmt.Sprint(van, i), Minutes: float64(rapid.IntRange(0, 300).Draw(t, "minutes"))}
				if told {
					h.From = midnight.Add(time.Duration(rapid.IntRange(8, 19).Draw(t, "from")) * time.Hour)
					h.Until = h.From.Add(time.Duration(h.Minutes+float64(rapid.IntRange(0, 60).Draw(t, "more"))) * time.Minute)
				}
				people = append(people, h)
			}
			hands = append(hands, people)
		}
		day, err := crew.Plan(j, on, hands)
		if err != nil {
			t.Fatal(err)
		}
		got, apart := len(day.Waits), map[book.Subject]bool{} // cells are collected by several, and some wait
		for _, w := range day.Waits {
			apart[w.Of] = apart[w.Of] || w.Task.Act == rules.ActCollectCells
		}
		for i, minutes := range away(day, roundOf) {
			s := day.Sheets[i]
			if minutes > s.Minutes+1e-6 {
				t.Errorf("%s is away %.1f of %.1f min: %+v", s.Name, minutes, s.Minutes, hands)
			}
			for _, v := range s.Visits {
				for _, w := range v.Work {
					if w.Task.Act != rules.ActCollectCells || !apart[w.Of] {
						got++
						apart[w.Of] = apart[w.Of] || w.Task.Act == rules.ActCollectCells
					}
				}
			}
		}
		if got != pieces {
			t.Errorf("%d pieces of work of %d", got, pieces)
		}
	})
}

// TestAnHourIsAnHour: of two with an hour each one drives to the robbers, and the other
// collects the cells at home, for which there is no time beside the way; she who is free
// at two drives then, and waits for nobody.
func TestAnHourIsAnHour(t *testing.T) {
	start := calendar.Date(2027, time.May, 11)
	v := book.NewSeason(time.LoadLocation, demo.Season(start, time.UTC)).At(start.At(7, 30, time.UTC))
	day, err := crew.Plan(rules.Judge(v), start, crew.HandsOf(v, start, 1, 1))
	if err != nil {
		t.Fatal(err)
	}
	collects, drives, shut := 0, 0, 0
	for i, minutes := range away(day, func(v crew.Visit) string { return fmt.Sprint(v.Yard, v.Dusk) }) {
		s := day.Sheets[i]
		if minutes > 60+1e-6 || math.Abs(s.Minutes-60) > 1e-9 {
			t.Errorf("%s is away %.1f of %.1f min", s.Name, minutes, s.Minutes)
		}
		hour := 17
		if s.Driving > 0 {
			drives++
			hour = 14
		}
		if s.From.Hour() != hour {
			t.Errorf("%s begins at %v, want %d", s.Name, s.From, hour)
		}
		for _, visit := range s.Visits {
			for _, w := range visit.Work {
				switch w.Task.Act {
				case rules.ActCollectCells:
					collects++
				case rules.ActNarrowEntrance:
					shut++
				}
			}
		}
	}
	if collects != 1 || drives != 1 || shut == 0 || day.Exact {
		t.Errorf("%d collect, %d drive, %d nucs are shut, proven %v", collects, drives, shut, day.Exact)
	}
}

// TestOnFoot: without a van nobody drives; what lies at home is done, and the rest waits.
func TestOnFoot(t *testing.T) {
	j, on := demoDay(t)
	day, err := crew.Plan(j, on, crew.HandsOf(j.Course().View(), on, 1, 0).OnFoot())
	if err != nil {
		t.Fatal(err)
	}
	done := 0
	for _, s := range day.Sheets {
		if s.Driving > 0 || s.Van != 0 || s.Working > s.Minutes {
			t.Errorf("%s works %v min and drives %v in van %d", s.Name, s.Working, s.Driving, s.Van)
		}
		for _, v := range s.Visits {
			if far := j.Course().View().Yard(v.Yard).Drive; far > 0 {
				t.Errorf("%s walks %v min of driving", s.Name, far)
			}
			done += len(v.Work)
		}
	}
	if done == 0 || len(day.Waits) == 0 {
		t.Errorf("%d pieces are done and %d wait", done, len(day.Waits))
	}
	for _, w := range day.Waits {
		if j.Course().View().Yard(w.Task.Findings[0].Yard).Drive == 0 {
			t.Errorf("%s waits at home, and there is time", w.Task.Title)
		}
	}
}
