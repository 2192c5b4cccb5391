package roll_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/roll"
)

// reads is the day that a cell of a list is read as, in ISO 8601, or its
// mistake.
func reads(text string, o roll.Options) (string, roll.Result) {
	s := roll.Sheet{Rows: []roll.Row{{Number: 1, Cells: []roll.Cell{{Text: "A1"}, {Text: text}}}}}
	o.Columns = []roll.Column{roll.NucName, roll.EggsSeenOn}
	r := roll.Read(s, o, context(nil))
	if all := r.Mistakes(); len(all) > 0 {
		return all[0].What, r
	}
	facts := r.Rows[0].Facts
	if _, seen := facts[len(facts)-1].Fact.(book.Looked); !seen {
		return "", r
	}
	return facts[len(facts)-1].At.Day(context(nil).Zone).String(), r
}

func TestDays(t *testing.T) {
	dayFirst, monthFirst := roll.Options{Dates: roll.DayFirst}, roll.Options{Dates: roll.MonthFirst}
	for _, c := range []struct {
		text string
		o    roll.Options
		want string
	}{
		{"2027-05-02", monthFirst, "2027-05-02"},
		{"2027/5/2", monthFirst, "2027-05-02"},
		{"2027-05-02T18:00", monthFirst, "2027-05-02"},
		{"2.5.2027", monthFirst, "2027-05-02"},
		{"02.05.27", roll.Options{}, "2027-05-02"},
		{"2/5/2027", dayFirst, "2027-05-02"},
		{"2/5/2027", monthFirst, "2027-02-05"},
		{"2-5-27", dayFirst, "2027-05-02"},
		{"2/5/2027", roll.Options{}, "2/5/2027 can be two days"},
		{"5/5/2027", roll.Options{}, "2027-05-05"},
		{"22/5/2027", roll.Options{}, "2027-05-22"},
		{"5/22/2027", roll.Options{}, "2027-05-22"},
		{"5/22/2027", dayFirst, "5/22/2027 is no day of the calendar"},
		{"Sun 2 May 2027", roll.Options{}, "2027-05-02"},
		{"Sunday, May 2, 2027", roll.Options{}, "2027-05-02"},
		{"2nd May 2027", roll.Options{}, "2027-05-02"},
		{"2. May 2027", roll.Options{}, "2027-05-02"},
		{"2-May-27", roll.Options{}, "2027-05-02"},
		{"5 Sept 2026", roll.Options{}, "2026-09-05"},
		{"2.5.", roll.Options{Year: 2027}, "2027-05-02"},
		{"2.5.", roll.Options{}, "2.5. has no year"},
		{"2 May", roll.Options{}, "2 May has no year"},
		{"31.4.2027", roll.Options{}, "31.4.2027: April has 30 days"},
		{"31.4.", roll.Options{}, "31.4.: April has 30 days"},
		{"29.2.", roll.Options{}, "29.2. has no year"},
		{"29.2.", roll.Options{Year: 2027}, "29.2.: February 2027 has 28 days"},
		{"29.2.2024", roll.Options{}, "2024-02-29"},
		{"5/31", monthFirst, "5/31 has no year"},
		{"4/31", monthFirst, "4/31: April has 30 days"},
		{"0.4.2027", roll.Options{}, "0.4.2027 is no day of the calendar"},
		{"2.5.1027", roll.Options{}, "2.5.1027 in the year 1027"},
		{"46500", roll.Options{}, `"46500" is no day`},
		{"2.5.027", roll.Options{}, `"2.5.027" is no day`},
		{"May", roll.Options{}, `"May" is no day`},
		{"1.2.3.4", roll.Options{}, `"1.2.3.4" is no day`},
		{"-", roll.Options{}, `"-" is no day`},
		{"", roll.Options{}, ""},
	} {
		if got, _ := reads(c.text, c.o); got != c.want {
			t.Errorf("%q is read as %s, want %s", c.text, got, c.want)
		}
	}
}

func TestTheOrderOfDatesIsToldOrAsked(t *testing.T) {
	for _, c := range []struct {
		rows string
		want roll.Order
		by   int // the row that tells
		asks bool
	}{
		{"2/5/2027 3/5/2027", roll.Asked, 0, true},
		{"2/5/2027 13/5/2027", roll.DayFirst, 3, false},
		{"5/13/2027 2/5/2027", roll.MonthFirst, 2, false},
		{"5/13/2027 13/5/2027 2/5/2027", roll.Asked, 0, true},
		{"5/13/2027 13/5/2027", roll.Asked, 0, false},
		{"2.5.2027 2027-05-03 4/4/2027", roll.Asked, 0, false},
	} {
		s, o := sheet("nuc|eggs")
		for i, text := range strings.Fields(c.rows) {
			s.Rows = append(s.Rows, roll.Row{Number: i + 2, Cells: []roll.Cell{{Text: roll.Letters(i+1) + "1"}, {Text: text}}})
		}
		r := roll.Read(s, o, context(nil))
		if r.Dates != c.want || r.DatesBy.Row != c.by || r.AsksDates != c.asks {
			t.Errorf("%s: %s, told by row %d, asks %v; want %s, %d, %v", c.rows, r.Dates, r.DatesBy.Row, r.AsksDates, c.want, c.by, c.asks)
		}
	}
	for o := roll.DayFirst; o <= roll.MonthFirst; o++ {
		if got, err := roll.ParseOrder(o.String()); got != o || err != nil {
			t.Errorf("ParseOrder(%q) = %v, %v", o.String(), got, err)
		}
	}
	if _, err := roll.ParseOrder("year-first"); err == nil {
		t.Error("year-first is an order")
	}
}

func TestANumberIsNoDay(t *testing.T) {
	s := roll.Sheet{Rows: []roll.Row{{Number: 1, Cells: []roll.Cell{{Text: "A1"}, {Text: "46500", Kind: roll.Number}}}}}
	r := roll.Read(s, roll.Options{Columns: []roll.Column{roll.NucName, roll.EggsSeenOn}}, context(nil))
	if all := r.Mistakes(); len(all) != 1 || !strings.Contains(all[0].Do, "form of a date") {
		t.Errorf("mistakes are %v, want one that tells how a number becomes a day", all)
	}
}

func TestAYearIsAskedOnce(t *testing.T) {
	if _, r := reads("2.5.", roll.Options{}); !r.AsksYear {
		t.Error("no year, and none is asked")
	}
	if _, r := reads("31.4.", roll.Options{}); r.AsksYear {
		t.Error("the day is in no year, and its year is asked")
	}
	if _, r := reads("2.5.", roll.Options{Year: 2027}); r.AsksYear {
		t.Error("the year was said, and is asked")
	}
}

// FuzzDays: a text is no day, or one that reads back the same as it prints.
func FuzzDays(f *testing.F) {
	for _, seed := range []string{"2027-05-02", "2.5.2027", "2/5/27 18:00", "Sun 2 May 2027", "May 2, 2027", "0.0.0", "31.2.2027", "1-2-3", "٢.٥.2027", "2.5.2027 18:00:00"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, _ := reads(text, roll.Options{Dates: roll.DayFirst, Year: 2027})
		if _, err := calendar.ParseDay(got); err != nil {
			return
		}
		if again, _ := reads(got, roll.Options{Dates: roll.MonthFirst}); again != got {
			t.Errorf("%q is read as %s, and that as %s", text, got, again)
		}
	})
}
