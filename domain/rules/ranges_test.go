package rules_test

import (
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// eachAmount puts a number into every amount under a field, one at a time, and
// tells the path of each. Amounts and texts are left at 1.
func eachAmount(v reflect.Value, path string, n float64, tell func(path string)) {
	if a, ok := v.Addr().Interface().(*book.Amount); ok {
		*a = book.Said(n)
		tell(path)
		*a = book.Said(1)
		return
	}
	switch v.Addr().Interface().(type) {
	case *time.Time, *calendar.Day, *book.Subject:
		return
	}
	switch v.Kind() {
	case reflect.String:
		v.SetString("1")
	case reflect.Int:
		v.SetInt(int64(n))
		tell(path)
		v.SetInt(1)
	case reflect.Float64:
		v.SetFloat(n)
		tell(path)
		v.SetFloat(1)
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).Anonymous {
				eachAmount(v.Field(i), path, n, tell)
				continue
			}
			name, _, _ := strings.Cut(v.Type().Field(i).Tag.Get("json"), ",")
			eachAmount(v.Field(i), path+"."+name, n, tell)
		}
	case reflect.Slice:
		if v.Type().Elem() == reflect.TypeFor[book.Amount]() {
			v.Set(reflect.MakeSlice(v.Type(), 1, 1))
			eachAmount(v.Index(0), path, n, tell)
		}
		if v.Type().Elem().Kind() == reflect.Struct {
			v.Set(reflect.MakeSlice(v.Type(), 1, 1))
			eachAmount(v.Index(0), path, n, tell)
		}
	case reflect.Array:
		if v.Type().Elem().Kind() == reflect.Struct {
			eachAmount(v.Index(0), path, n, tell)
		}
	}
}

// No fact has an amount that nobody thought about.
func TestEveryAmountHasARange(t *testing.T) {
	amounts := 0
	for _, kind := range book.FactKinds() {
		f, err := book.DecodeFact(kind, []byte("{}"))
		if err != nil {
			t.Fatal(err)
		}
		v := reflect.New(reflect.TypeOf(f)).Elem()
		v.Set(reflect.ValueOf(f))
		eachAmount(v, kind, 1, func(string) {})
		if err := rules.Plausible(v.Interface().(book.Fact)); err != nil {
			t.Errorf("%s, all of it 1: %v", kind, err)
		}
		eachAmount(v, kind, 1e15, func(path string) {
			amounts++
			err := rules.Plausible(v.Interface().(book.Fact))
			if err == nil || !strings.Contains(err.Error(), "1e+15") {
				t.Errorf("%s of 1e15: %v", path, err)
			}
		})
	}
	if amounts < 50 {
		t.Errorf("only %d amounts were tried", amounts)
	}
}

func TestPlausible(t *testing.T) {
	yard := book.YardDescribed{Name: "Home", Zone: "UTC"}
	named := func(name string) book.Fact { y := yard; y.Name = name; return y }
	for _, row := range []struct {
		f    book.Fact
		want string // part of the error; "" for none
	}{
		{yard, ""},
		{named("Far Hill"), ""},
		{named("Åre / Øst"), ""},
		{named(""), "name: it is empty"},
		{named("  "), "name: it is empty"},
		{named(" Hill"), "take the spaces off"},
		{named(strings.Repeat("é", 80)), ""},
		{named(strings.Repeat("é", 81)), "name of 81 characters: write 80 at most"},
		{named("Hi\x1b[31mll"), "U+001B does not show"},
		{named("Hill\u202e"), "U+202E does not show"},
		{named("Hill\u0085"), "U+0085 does not show"},
		{named("Hill\nTop"), "U+000A does not show"},
		{book.Noted{Text: "two\nlines"}, ""},
		{book.Noted{Text: "bell\a"}, "U+0007 does not show"},
		{book.Grafted{Number: 1, Larvae: 24}, ""},
		{book.Grafted{Number: -7, Larvae: 24}, "-7 as a batch's number: write 1 to"},
		{book.Grafted{Number: 1, Larvae: 1_000_000_000}, "1000000000 larvae: write 1 to 10000"},
		{book.Grafted{Number: 1, Larvae: 24, LarvaAge: math.NaN()}, "NaN hours of age"},
		{book.NucMadeUp{Cups: 1e308}, "cups of bees: write 0 to 100"},
		{book.Fed{Litres: math.Inf(1)}, "+Inf litres of syrup"},
		{book.Looked{Sides: book.Said(99)}, ""},
		{book.Looked{Sides: book.Said(101)}, "101 sides of bees"},
		{book.PaperHeld{Name: "health", Expires: calendar.Date(1, 1, 1)}, "expires in the year 1"},
		{book.PaperHeld{Name: "health", Expires: calendar.Date(2027, 6, 1)}, ""},
		{book.VirginPutIn{}, ""},
		{book.BatchPlanned{Day: calendar.Date(2027, 4, 19), Larvae: 96, Nucs: 64, Sure: 0.9}, ""},
		{book.BatchPlanned{Larvae: -1}, "-1 larvae: write 1 to"},
		{book.BatchPlanned{Larvae: 96, Nucs: -4}, "-4 nucs: write 0 to"},
		{book.BatchPlanned{Larvae: 96, Sure: 90}, "90 of certainty: write 0 to 1"},
		{book.BatchPlanned{Larvae: 96, Minute: 1440}, "1440 minutes after midnight"},
		{book.HoursOn{FreeHours: book.FreeHours{From: 480, Until: 1441}}, "1441 minutes of the day"},
		{book.OrderTaken{Number: "1", Customer: "Club", Queens: 2, Journey: -1}, "-1 days on the way"},
		{book.VirginPutIn{Emerged: time.Date(3000, 1, 1, 0, 0, 0, 0, time.UTC)}, "emerged in the year 3000"},
	} {
		err := rules.Plausible(row.f)
		switch {
		case err == nil && row.want == "":
		case err == nil || row.want == "" || !strings.Contains(err.Error(), row.want):
			t.Errorf("Plausible(%+v) = %v, want %q", row.f, err, row.want)
		}
	}
}

func TestTheDemoIsPlausible(t *testing.T) {
	entries := demo.Season(calendar.Date(2027, 5, 11), time.UTC)
	if len(entries) == 0 {
		t.Fatal("the demo has no entries")
	}
	for _, e := range entries {
		if err := rules.Plausible(e.Fact); err != nil {
			t.Errorf("%+v: %v", e.Fact, err)
		}
	}
}
