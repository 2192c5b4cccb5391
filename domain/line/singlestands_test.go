package line_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/line"
)

// TestARowOfSingleStands: the letter of a row whose stands stand apart means all of
// them, in whichever yard they are.
func TestARowOfSingleStands(t *testing.T) {
	day := calendar.Date(2027, time.May, 11)
	v := book.NewSeason(time.LoadLocation, demo.Season(day, time.UTC)).At(day.At(19, 30, time.UTC))
	read, err := line.Parse("N 16 looked 12 laying", line.Context{View: v})
	if err != nil || len(read.Sections) != 1 {
		t.Fatalf("%+v, %v", read, err)
	}
	s := read.Sections[0]
	f, ok := s.Facts[0].(book.RowLooked)
	if !ok || f.Looked != 16 || f.Laying != 12 || f.Yard != v.NucNamed("N1")[0].Yard || !strings.HasPrefix(s.Back, "row N: 16 looked at in ") {
		t.Errorf("%+v is read back %q", s.Facts, s.Back)
	}
}
