package crew

import (
	"reflect"
	"testing"
	"time"

	"pgregory.net/rapid"
)

func hand(name string, from, until int) Hand {
	day := time.Date(2027, 5, 11, 0, 0, 0, 0, time.UTC)
	return Hand{Name: name, Minutes: float64(until - from), From: day.Add(time.Duration(from) * time.Minute), Until: day.Add(time.Duration(until) * time.Minute)}
}

// People ride together only while all are free: who comes at five takes the van of her
// who goes at six, and two who are there all day ride side by side.
func TestWhoHasTheVanWhen(t *testing.T) {
	for name, c := range map[string]struct {
		people []Hand
		want   [][]string
	}{
		"one after the other": {[]Hand{hand("Runa", 17*60, 20*60+30), hand("Tilda", 14*60, 18*60)}, [][]string{{"Tilda"}, {"Runa"}}},
		"side by side":        {[]Hand{hand("Ada", 480, 900), hand("Ben", 500, 900)}, [][]string{{"Ada", "Ben"}}},
		"three":               {[]Hand{hand("Ada", 480, 540), hand("Ben", 480, 1020), hand("Cay", 500, 1020)}, [][]string{{"Ben", "Cay", "Ada"}}},
	} {
		got := shiftsOf(c.people)
		if len(got) != len(c.want) {
			t.Errorf("%s: %d companies, want %v", name, len(got), c.want)
			continue
		}
		for i, shift := range got {
			for k, h := range shift {
				if h.Name != c.want[i][k] {
					t.Errorf("%s: company %d has %s, want %v", name, i+1, h.Name, c.want[i])
				}
			}
		}
	}
	if runa := shiftsOf([]Hand{hand("Runa", 17*60, 20*60+30), hand("Tilda", 14*60, 18*60)})[1][0]; runa.Minutes != 150 {
		t.Errorf("Runa has %v min when the van is back, want 150", runa.Minutes)
	}
}

// Nobody sets out before he is free, nor before the van is home, and all are in one
// company.
func TestShiftsHold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var people []Hand
		for range rapid.IntRange(1, 6).Draw(t, "people") {
			from := rapid.IntRange(6, 20).Draw(t, "from") * 60
			people = append(people, hand(rapid.StringMatching("[A-Z]").Draw(t, "name"), from, from+rapid.IntRange(1, 8).Draw(t, "hours")*60))
		}
		n, free := 0, time.Time{}
		for _, shift := range shiftsOf(people) {
			n += len(shift)
			var team Team
			for _, h := range shift {
				team.Minutes = append(team.Minutes, h.Minutes)
			}
			riders, each := team.riders(0)
			for _, h := range shift[:riders] {
				if each > 0 && (h.From.Before(free) || h.From.Add(time.Duration(each)*time.Minute).After(h.Until)) {
					t.Fatalf("%+v, the van is home at %v", h, free)
				}
			}
			for _, h := range shift[:riders] {
				free = h.From.Add(time.Duration(each) * time.Minute)
			}
		}
		if n != len(people) {
			t.Fatalf("%d of %d people", n, len(people))
		}
	})
}

// Asked again, the same people ride together at the same hours, where two ways are as good.
func TestShiftsStay(t *testing.T) {
	people := []Hand{
		hand("Ada", 540, 600), hand("Ben", 540, 720), hand("Cay", 720, 960), hand("Dov", 420, 660), hand("Eli", 420, 480),
	}
	first := shiftsOf(people)
	for range 30 {
		if again := shiftsOf(people); !reflect.DeepEqual(again, first) {
			t.Fatalf("asked again they ride %v, before %v", again, first)
		}
	}
}
