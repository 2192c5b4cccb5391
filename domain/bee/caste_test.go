package bee_test

import (
	"strconv"
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/practice"
)

// TestTimetablesLieWithinPublishedRanges checks each stage of each caste
// against testdata/published/caste-development.csv, which names the study
// behind each row. Rows of races other than the common ones, of cell parts of
// an age and of flight have no counterpart here.
func TestTimetablesLieWithinPublishedRanges(t *testing.T) {
	day := func(d time.Duration) float64 { return d.Hours() / 24 }
	q, w, d := bee.Times(bee.Queen, defaults), bee.Times(bee.Worker, defaults), bee.Times(bee.Drone, defaults)
	ours := map[string]float64{
		"queen/egg":                              day(q.Hatched),
		"queen/larva unsealed":                   day(q.Capped - q.Hatched),
		"queen/capped (day from egg)":            day(q.Capped),
		"queen/emergence (day from egg)":         day(q.Emerged),
		"worker/egg":                             day(w.Hatched),
		"worker/capped (day from egg)":           day(w.Capped),
		"worker/emergence (day from egg)":        day(w.Emerged),
		"drone/capped (day from egg)":            day(d.Capped),
		"drone/emergence (day from egg)":         day(d.Emerged),
		"drone/sexually mature (day from egg)":   day(d.Ripe),
		"queen, carnica and ligustica/emergence": day(q.Emerged),
	}
	seen := 0
	for _, row := range published(t, "caste-development.csv") {
		name := row["caste"] + "/" + row["stage"]
		got, ok := ours[name]
		if !ok {
			continue
		}
		seen++
		low, high := row["low_d"], row["high_d"]
		if low == "" { // a typical day alone: half a day is the rounding of a printed day
			mid := number(t, row["typical_d"])
			low, high = strconv.FormatFloat(mid-0.5, 'g', -1, 64), strconv.FormatFloat(mid+0.5, 'g', -1, 64)
		}
		if got < number(t, low) || got > number(t, high) {
			t.Errorf("%s: day %.2f, published %s to %s (%s)", name, got, low, high, row["source"])
		}
	}
	if seen != len(ours) {
		t.Errorf("%d of %d stages were found in the table", seen, len(ours))
	}
}

func TestDronesServeForATime(t *testing.T) {
	d := bee.Times(bee.Drone, defaults)
	if want := (24 + 28) * 24 * time.Hour; d.BestUntil != want {
		t.Errorf("BestUntil = %v, want %v: 28 days of age after 24 days of growing", d.BestUntil, want)
	}
	if w := bee.Times(bee.Worker, defaults); w.Ripe != 0 || w.BestUntil != 0 {
		t.Errorf("a worker is ripe at %v until %v", w.Ripe, w.BestUntil)
	}
}

func TestLarvaAge(t *testing.T) {
	for _, c := range []struct {
		hours int
		want  bee.Age
	}{{6, bee.AgeGood}, {24, bee.AgeGood}, {25, bee.AgeOld}, {36, bee.AgeOld}, {37, bee.AgeTooOld}} {
		if got := bee.LarvaAge(time.Duration(c.hours)*time.Hour, defaults); got != c.want {
			t.Errorf("LarvaAge(%d h) = %v, want %v", c.hours, got, c.want)
		}
	}
	young := with(t, defaults, practice.LarvaAgeRefused, 24)
	if got := bee.LarvaAge(25*time.Hour, young); got != bee.AgeTooOld {
		t.Errorf("with the keeper's limit of 24 h, LarvaAge(25 h) = %v, want too old", got)
	}
}
