package practice_test

import (
	"errors"
	"maps"
	"math"
	"regexp"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/practice"
)

// frontRows is how many numbers a keeper would argue about.
const frontRows = 25

var units = map[practice.Unit]bool{
	practice.Hour: true, practice.Day: true, practice.Minute: true, practice.ClockHour: true,
	practice.Celsius: true, practice.HourPerDegree: true, practice.MetrePerSec: true,
	practice.Metre: true, practice.Degree: true, practice.Kilometre: true, practice.Share: true, practice.SharePerDay: true,
	practice.Ratio: true, practice.Score: true, practice.Bees: true, practice.Kilogram: true, practice.EggsPerDay: true, practice.CellsPerBee: true, practice.BeesPerDm2: true,
	practice.CellsPerDm2: true, practice.GramPerDm2: true, practice.Litre: true,
	practice.GramPerLitre: true, practice.GramPerDay: true, practice.Cm2: true, practice.Dm2: true, practice.Colonies: true, practice.Boxes: true, practice.Queens: true, practice.Money: true,
	practice.Cells: true, practice.Combs: true, practice.Sides: true, practice.Drones: true, practice.Alleles: true, practice.WeekdayNumber: true,
}

func TestEveryRowIsComplete(t *testing.T) {
	named := regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)
	names, titles := map[string]bool{}, map[string]bool{}
	want, front := practice.Key(1), 0
	for r := range practice.All() {
		if r.Key != want {
			t.Fatalf("row %d holds key %d: a key has no row", want, r.Key)
		}
		want++
		if r.Front {
			front++
		}
		if !named.MatchString(r.Name) || names[r.Name] {
			t.Errorf("key %d: name %q is not snake case or not unique", r.Key, r.Name)
		}
		if r.Title == "" || titles[r.Title] {
			t.Errorf("%s: title %q is empty or not unique", r.Name, r.Title)
		}
		names[r.Name], titles[r.Title] = true, true
		if strings.TrimSpace(r.Source) == "" || r.Used == "" || r.Confidence.String() == "" || r.Group.String() == "" {
			t.Errorf("%s: source, use, confidence or group is missing: %+v", r.Name, r)
		}
		if !units[r.Unit] {
			t.Errorf("%s: unit %q is unknown", r.Name, r.Unit)
		}
		if !(r.Min <= r.Default && r.Default <= r.Max && r.Min < r.Max) {
			t.Errorf("%s: default %v is not within %v to %v", r.Name, r.Default, r.Min, r.Max)
		}
		if step := r.Unit == practice.Celsius && strings.HasSuffix(r.Title, " by"); r.Step != step {
			t.Errorf("%s (%s): a difference of degrees: %v, want %v", r.Name, r.Title, r.Step, step)
		}
		if r.Unit == practice.Share && (r.Min < 0 || r.Max > 1) {
			t.Errorf("%s: a share from %v to %v", r.Name, r.Min, r.Max)
		}
	}
	if front != frontRows {
		t.Errorf("%d numbers stand in front, want %d", front, frontRows)
	}
	if want.Valid() {
		t.Errorf("key %d has no row", want)
	}
}

// TestVerifiedNamesItsLiterature: what is called verified can be looked up, so
// its source has a year; a teaching page is called one.
func TestVerifiedNamesItsLiterature(t *testing.T) {
	year := regexp.MustCompile(`\b(1[89]|20)\d\d\b`)
	verified := 0
	for r := range practice.All() {
		if r.Confidence != practice.Verified {
			continue
		}
		verified++
		if !year.MatchString(r.Source) {
			t.Errorf("%s is verified by %q, which nobody can look up", r.Name, r.Source)
		}
	}
	if verified == 0 {
		t.Error("no number is verified")
	}
}

func TestPairsKeepTheirOrder(t *testing.T) {
	// Each line rises from left to right.
	for _, line := range [][]practice.Key{
		{practice.QueenHatches, practice.QueenCapped, practice.QueenEmerges},
		{practice.WorkerHatches, practice.WorkerCapped, practice.WorkerEmerges},
		{practice.DroneHatches, practice.DroneCapped, practice.DroneEmerges},
		{practice.LarvaAgeAtGraft, practice.LarvaAgeWarned, practice.LarvaAgeRefused},
		{practice.WarmthLeast, practice.BroodWarmth, practice.WarmthMost},
		{practice.GraftToCappedFrom, practice.GraftToCapped, practice.GraftToCappedBy},
		{practice.HandsOffFrom, practice.HandsOffUntil, practice.CellsIn, practice.CellsInBy},
		{practice.CellsInFrom, practice.CellsIn, practice.CellsInBy, practice.GraftToEmerge},
		{practice.GraftToEmergeFrom, practice.GraftToEmerge, practice.GraftToEmergeBy},
		{practice.WildCellSearchFrom, practice.WildCellSearchGood, practice.WildCellSearchBy, practice.WildCellWalk},
		{practice.BreakDownOwnCellsFrom, practice.BreakDownOwnCellsBy, practice.OwnQueenEmerges},
		{practice.LookForEggsNotBefore, practice.FirstEggsHalfBy, practice.LookForEggsFrom, practice.FirstEggsNineInTenBy},
		{practice.VirginWatch, practice.VirginLate, practice.VirginTooLate},
		{practice.LayingWorkersEarliest, practice.LayingWorkersFrom, practice.LayingWorkersLatest},
		{practice.VirginBankGood, practice.VirginBankMost, practice.MatedBankMost},
		{practice.ColdNight, practice.UsualNight, practice.MildNight},
		{practice.NeedAt20C, practice.NeedAt14C, practice.NeedAt8C},
		{practice.CombSideArea, practice.FullCombSide},
		{practice.LateLossFirst, practice.LateLossSecond, practice.LateFrom},
		{practice.FlightFrom, practice.FlightPeakFrom, practice.FlightPeakUntil, practice.FlightUntil},
		{practice.FitHoursMinus, practice.FitHoursHalf, practice.FitHoursPlus},
		{practice.RobbingWatch, practice.RobbingAct},
		{practice.StrengthToldAhead, practice.LightBelow, practice.StrengthAhead, practice.LookTooOld},
		{practice.RobbingLasts, practice.RobbedLookBy},
		{practice.AlikeApart, practice.AlikeApartAdvised},
		{practice.StrongApart, practice.StrongApartDearth},
		{practice.BeeAcuity, practice.MarkSeenLight, practice.MarkSeenHue},
	} {
		for i := 1; i < len(line); i++ {
			a, b := practice.Of(line[i-1]), practice.Of(line[i])
			if a.Default >= b.Default {
				t.Errorf("%s %v is not below %s %v", a.Name, a.Default, b.Name, b.Default)
			}
		}
	}
}

// TestNightsStayApart: whatever the keeper sets, need is reckoned by straight
// lines between three nights, and no two of them meet.
func TestNightsStayApart(t *testing.T) {
	cold, usual, mild := practice.Of(practice.ColdNight), practice.Of(practice.UsualNight), practice.Of(practice.MildNight)
	if cold.Max >= usual.Min || usual.Max >= mild.Min {
		t.Errorf("cold up to %v, usual %v to %v, mild from %v: they meet", cold.Max, usual.Min, usual.Max, mild.Min)
	}
}

func TestZeroNumbersAreTheDefaults(t *testing.T) {
	var n practice.Numbers
	for r := range practice.All() {
		if got := n.Get(r.Key); got != r.Default {
			t.Errorf("Get(%s) = %v, want the default %v", r.Key, got, r.Default)
		}
	}
	for k := range n.Changed() {
		t.Errorf("zero numbers list %s as changed", k)
	}
}

func TestNamesLeadBack(t *testing.T) {
	for r := range practice.All() {
		if k, ok := practice.ByName(r.Key.String()); !ok || k != r.Key {
			t.Errorf("ByName(%q) = %d, %v, want %d", r.Name, k, ok, r.Key)
		}
	}
	for _, s := range []string{"", "no_such_number"} {
		if k, ok := practice.ByName(s); ok {
			t.Errorf("ByName(%q) = %d, want none", s, k)
		}
	}
	for _, k := range []practice.Key{-1, 0, 1 << 30} {
		if k.Valid() || k.String() != "" {
			t.Errorf("key %d is valid or named %q", k, k)
		}
	}
}

func TestWithRefuses(t *testing.T) {
	var n practice.Numbers
	for _, v := range []float64{math.NaN(), math.Inf(1), 3.9, 16.1} {
		got, err := n.With(practice.EmergenceSpread, v)
		var bad *practice.RangeError
		if !errors.As(err, &bad) || got != n {
			t.Errorf("With(spread, %v) = %v, %v, want a range error and n unchanged", v, got, err)
		}
	}
	_, err := n.With(practice.EmergenceSpread, 40)
	const want = "emergence_spread: 40 h is outside the allowed range, give 4 to 16 h"
	if err == nil || err.Error() != want {
		t.Errorf("With(spread, 40) says %q, want %q", err, want)
	}
	if _, err := n.With(0, 1); err == nil {
		t.Error("With takes the key 0")
	}
}

func TestDurationsFollowTheUnit(t *testing.T) {
	var n practice.Numbers
	for _, c := range []struct {
		key  practice.Key
		want time.Duration
		days int
	}{
		{practice.QueenHatches, 72 * time.Hour, 3},
		{practice.VirginLate, 21 * 24 * time.Hour, 21},
		{practice.MinutesGraftLarva, 30 * time.Second, 0},
	} {
		if got := n.Duration(c.key); got != c.want {
			t.Errorf("Duration(%s) = %v, want %v", c.key, got, c.want)
		}
		if got := n.Days(c.key); got != c.days {
			t.Errorf("Days(%s) = %d, want %d", c.key, got, c.days)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("Duration(take) did not panic: a share is no length of time")
		}
	}()
	n.Duration(practice.Take)
}

// TestSetNumbers checks Numbers against a plain map: what was set is got
// back, older values stay as they were, Without undoes With.
func TestSetNumbers(t *testing.T) {
	var rows []practice.Number
	for r := range practice.All() {
		rows = append(rows, r)
	}
	rapid.Check(t, func(t *rapid.T) {
		var n practice.Numbers
		model := map[practice.Key]float64{}
		for range rapid.IntRange(1, 20).Draw(t, "steps") {
			r := rows[rapid.IntRange(0, len(rows)-1).Draw(t, "row")]
			before := n
			was := before.Get(r.Key)
			if rapid.Bool().Draw(t, "back") {
				n = n.Without(r.Key)
				delete(model, r.Key)
			} else {
				v := rapid.Float64Range(r.Min, r.Max).Draw(t, "value")
				next, err := n.With(r.Key, v)
				if err != nil {
					t.Fatalf("With(%s, %v): %v", r.Name, v, err)
				}
				n, model[r.Key] = next, v
			}
			if got := before.Get(r.Key); got != was {
				t.Fatalf("an older value changed: %s %v, was %v", r.Name, got, was)
			}
		}
		if got := maps.Collect(n.Changed()); !maps.Equal(got, model) {
			t.Fatalf("Changed() = %v, want %v", got, model)
		}
		for _, r := range rows {
			want, ok := model[r.Key]
			if !ok {
				want = r.Default
			}
			if got := n.Get(r.Key); got != want {
				t.Fatalf("Get(%s) = %v, want %v", r.Name, got, want)
			}
		}
	})
}
