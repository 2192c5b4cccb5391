package demo_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
)

var someDay = calendar.Date(2027, time.May, 20)

func zone(t *testing.T, name string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

func TestSameDaySameSeason(t *testing.T) {
	berlin := zone(t, "Europe/Berlin")
	if diff := cmp.Diff(demo.Season(someDay, berlin), demo.Season(someDay, berlin), cmp.AllowUnexported(book.Amount{})); diff != "" {
		t.Errorf("a second season differs:\n%s", diff)
	}
}
