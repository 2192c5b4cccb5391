package course_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
)

// TestWhenSheEmerged: by her batch's clock, but out by the time she was seen,
// and not before a cell that was still shut when it was given. The batch is
// half out on Tue 18 May at 00:34.
func TestWhenSheEmerged(t *testing.T) {
	virgin := book.Looked{Nuc: a1, Queen: book.VirginSeen}
	tip := book.Looked{Nuc: a1, Cell: book.CellOpenAtTip}
	given := book.CellGiven{Nuc: a1, Batch: batch}
	type doing struct {
		at   string
		fact book.Fact
	}
	for name, row := range map[string]struct {
		done []doing
		want string
	}{
		"a cell":                           {[]doing{{"2027-05-15 10:00", given}}, "2027-05-18 00:34"},
		"seen out before the clock":        {[]doing{{"2027-05-15 10:00", given}, {"2027-05-17 08:00", virgin}}, "2027-05-17 08:00"},
		"seen out after the clock":         {[]doing{{"2027-05-15 10:00", given}, {"2027-05-20 08:00", virgin}}, "2027-05-18 00:34"},
		"a cell given late":                {[]doing{{"2027-05-19 10:00", given}}, "2027-05-19 10:00"},
		"a cell given late, open since":    {[]doing{{"2027-05-19 10:00", given}, {"2027-05-20 08:00", tip}}, "2027-05-19 10:00"},
		"a virgin put in late":             {[]doing{{"2027-05-25 10:00", book.VirginPutIn{Nuc: a1, Batch: batch}}}, "2027-05-18 00:34"},
		"a virgin put in before the clock": {[]doing{{"2027-05-17 10:00", book.VirginPutIn{Nuc: a1, Batch: batch}}}, "2027-05-17 10:00"},
		"a virgin of a batch nobody wrote": {[]doing{{"2027-05-25 10:00", book.VirginPutIn{Nuc: a1, Batch: booktest.Batch("9")}}}, "2027-05-25 10:00"},
	} {
		p := pen(t)
		for _, d := range row.done {
			p.At(d.at).Write(d.fact)
		}
		v := p.View("2027-05-26 12:00")
		if got := course.ByCalendar(v, v.Nuc(a1)).Emerged.In(p.Zone).Truncate(time.Minute).Format("2006-01-02 15:04"); got != row.want {
			t.Errorf("%s: emerged %s, want %s", name, got, row.want)
		}
	}
}
