package founding_test

import (
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/founding"
	"lidmark/domain/rules"
)

func TestCombs(t *testing.T) {
	for text, want := range map[string]founding.Combs{
		"mini": {"mini", 6, 2}, "Half": {"half", 6, 4}, "full": {"full", 6, 8}, "6": {"", 6, 0}, "4 1,5": {"", 4, 1.5},
	} {
		if got, err := founding.ParseCombs(text); err != nil || got != want {
			t.Errorf("ParseCombs(%q) = %v, %v, want %v", text, got, err, want)
		}
	}
	for _, text := range []string{"", "huge", "-6", "6 x", "6 2 3", "6 NaN", "999"} {
		if got, err := founding.ParseCombs(text); err == nil {
			t.Errorf("ParseCombs(%q) = %v, want an error", text, got)
		}
	}
	if got, err := (founding.Combs{Kind: "mini", Sides: 4}).Filled(); err != nil || got != (founding.Combs{Kind: "mini", Sides: 4, Area: 2}) {
		t.Errorf("a mini box of 4 sides = %v, %v", got, err)
	}
	if got := founding.Kinds()[0].String(); got != "mini (6 sides of 2 dm²)" {
		t.Errorf("the first kind is %s", got)
	}
	founding.Kinds()[0].Sides = 99
	if founding.Kinds()[0].Sides != 6 {
		t.Error("who is given the kinds can change them")
	}
}

func TestFacing(t *testing.T) {
	for text, want := range map[string][]float64{
		"": nil, "S": {180}, "n s": {0, 180}, "SE, 225": {135, 225}, "NW": {315}, "112.5": {112.5}, "360": {360},
	} {
		if got, err := founding.ParseFacing(text); err != nil || !slices.Equal(got, want) {
			t.Errorf("ParseFacing(%q) = %v, %v, want %v", text, got, err, want)
		}
	}
	for _, text := range []string{"up", "-1", "361", "NaN", "S x"} {
		if got, err := founding.ParseFacing(text); err == nil {
			t.Errorf("ParseFacing(%q) = %v, want an error", text, got)
		}
	}
}

func TestPerson(t *testing.T) {
	id := book.PersonID{1}
	p, err := founding.Person("Ida M. Mon-Fri 18:30-20:30 Sat-Sun 08:00-24:00", id)
	if err != nil || p.Name != "Ida M." || p.Person != id {
		t.Fatalf("Person = %+v, %v", p, err)
	}
	want := book.FreeHours{From: 18*60 + 30, Until: 20*60 + 30}
	if p.Free[time.Monday] != want || p.Free[time.Friday] != want || p.Free[time.Sunday].Minutes() != 16*60 {
		t.Errorf("free hours = %v", p.Free)
	}
	for _, text := range []string{"", " , ", "Ida Mon", "Ida Mon-Fri soon", "Ida Mon 20:00-18:00", "Ida Mon 8:00-9:00 later 9:00-10:00", "-9 18:00", "Ida 18:30-20:30", "Ida 9", "9 Mon 8-9", "Ida -"} {
		if p, err := founding.Person(text, id); err == nil {
			t.Errorf("Person(%q) = %+v, want an error", text, p)
		}
	}
	if p, err := founding.Person("Mon", id); err != nil || p.Name != "Mon" {
		t.Errorf("who is called like a day = %+v, %v", p, err)
	}
	free, err := founding.FreeHours("Sat-Mon 8:00-9:00")
	if n := len(slices.DeleteFunc(free[:], func(h book.FreeHours) bool { return h.Minutes() != 60 })); err != nil || n != 3 {
		t.Errorf("%d days of free hours, %v, want 3", n, err)
	}
}

// What is typed is read or refused, and what is read can be meant.
func FuzzTyped(f *testing.F) {
	for _, s := range []string{"Ida Mon-Fri 18:30-20:30", "A1-A12, B3", "-", "Sat-Mon 0:00-24:00", "4 1,5", "mini", "SE, 225", "Home Yard"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if free, err := founding.FreeHours(text); err == nil {
			for _, h := range free {
				if h.Until < h.From || h.From < 0 || h.Until > 24*60 {
					t.Errorf("FreeHours(%q) = %v", text, free)
				}
			}
		}
		if c, err := founding.ParseCombs(text); err == nil {
			if again, err := c.Filled(); err != nil || again != c {
				t.Errorf("ParseCombs(%q) = %v, and filled again %v, %v", text, c, again, err)
			}
		}
		if facing, err := founding.ParseFacing(text); err == nil {
			for _, deg := range facing {
				if !(deg >= 0 && deg <= 360) {
					t.Errorf("ParseFacing(%q) = %v", text, facing)
				}
			}
		}
		ids := book.NewIDs(now, nil, [32]byte{1})
		b := founding.Book{Yard: text, Zone: "UTC", Rows: []founding.Row{{Names: text, PerBox: 1}}, People: []string{text}}
		facts, err := b.Facts(&ids)
		for _, fact := range facts {
			if err := rules.Plausible(fact); err != nil {
				t.Errorf("founded on %q: %v", text, err)
			}
		}
		if err == nil && len(facts) == 0 {
			t.Errorf("founded on %q: no facts and no error", text)
		}
	})
}

// TestFreeHoursAsTheyAreSaid: whole hours without their minutes, and days one by one.
func TestFreeHoursAsTheyAreSaid(t *testing.T) {
	want := book.FreeHours{From: 9 * 60, Until: 18 * 60}
	for _, text := range []string{"Sat-Sun 9-18", "Sat and Sun 9-18", "Sat, Sun 9:00-18", "Sat 9-18 Sun 09:00-18:00"} {
		free, err := founding.FreeHours(text)
		if err != nil || free[time.Saturday] != want || free[time.Sunday] != want || free[time.Monday] != (book.FreeHours{}) {
			t.Errorf("%s: %v, %v", text, free, err)
		}
	}
}
