package paper_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
	"lidmark/ui/paper"
)

// TestEveryNucHasItsLine: whoever the day's work is about stands on the sheet
// as often as the day comes to it, however tasks are gathered.
func TestEveryNucHasItsLine(t *testing.T) {
	r := demoDay(t)
	want := map[string]int{}
	for _, task := range r.Tasks() {
		for _, of := range task.Of {
			if of.Kind == book.KindNuc || of.Kind == book.KindColony {
				want[rules.Name(r.View, of)]++
			}
		}
	}
	for name, o := range choices() {
		pages := routeOf(t, r, o)
		for who, n := range want {
			if got := count(pages, who); got < n {
				t.Errorf("%s: %s stands on the sheet %d times, want %d", name, who, got, n)
			}
		}
	}
}

// TestHeadsAreRepeated: every page but the last one, which may hold only the
// letters, begins with title and heads of columns, and every page is numbered.
func TestHeadsAreRepeated(t *testing.T) {
	pages := routeOf(t, demoDay(t), paper.Options{Large: true})
	if len(pages) < 3 {
		t.Fatalf("only %d pages", len(pages))
	}
	for i, p := range pages {
		text := strings.Join(p.lines(), "\n")
		for _, want := range []string{"Tuesday 11 May 2027", "q n v", "more", "page "} {
			if !strings.Contains(text, want) {
				t.Errorf("page %d of %d lacks %q", i+1, len(pages), want)
			}
		}
	}
	if last := all(pages); strings.Count(last, "Stings can kill") != 1 || strings.Count(last, "united with D4") != 1 {
		t.Error("letters and caution do not stand once on the sheet")
	}
}

// TestHardDeadlinesComeFirst: above the kit and above every stop.
func TestHardDeadlinesComeFirst(t *testing.T) {
	r := demoDay(t)
	if len(r.Plan().Hard) == 0 {
		t.Fatal("the demo season has no hard deadline")
	}
	lines := routeOf(t, r, paper.Options{})[0].lines()
	at := func(part string) int {
		return slices.IndexFunc(lines, func(l string) bool { return strings.Contains(l, part) })
	}
	hard, kit, stop := at(r.Plan().Hard[0].What), at("Kit"), at(r.Plan().Stops[0].Start.In(zone).Format("15:04"))
	if hard < 0 || kit < hard || stop < kit {
		t.Errorf("hard deadline, kit and first stop stand in lines %d, %d, %d", hard, kit, stop)
	}
}

func TestOfOneYardOnlyThat(t *testing.T) {
	r := demoDay(t)
	for y := range r.View.Yards() {
		var out strings.Builder
		if _, err := paper.Route(t.Context(), &out, r, y.Yard, paper.Options{}); err != nil {
			t.Fatal(err)
		}
		pages := read(t, []byte(out.String()))
		for _, stop := range r.Plan().Stops {
			round := r.View.Yard(stop.Yard).Name + ", " + stop.Round
			if stop.Round != "" && count(pages, round) > 0 != (stop.Yard == y.Yard) {
				t.Errorf("the sheet of %s and the round %q", y.Name, round)
			}
		}
	}
}

// TestEmptyDays: a day without work, a book without nucs and an empty book have
// a sheet to write on that says what is so.
func TestEmptyDays(t *testing.T) {
	bare := &booktest.Pen{Zone: zone, Writer: "Ida"}
	quiet := hill()
	noNucs := (&booktest.Pen{Zone: zone, Writer: "Ida"}).At("2027-04-20 10:00").
		Write(book.YardDescribed{Yard: booktest.Yard("Hill"), Name: "Hill", Home: true, Zone: "Europe/Berlin"})
	for _, c := range []struct {
		pen  *booktest.Pen
		day  string
		want string
	}{
		{bare, "2027-05-11 06:40", "No nuc is in the book yet: write what you make up"},
		{noNucs, "2027-05-11 06:40", "No nuc is in the book yet: write what you make up"},
		{quiet, "2027-04-21 06:40", "Nothing to do on Wed 21 Apr"},
	} {
		r := reading(c.pen, c.day)
		if text := all(routeOf(t, r, paper.Options{})); !strings.Contains(text, c.want) || !strings.Contains(text, "Letters") {
			t.Errorf("want %q in\n%s", c.want, text)
		}
	}
	r := reading(hill(), "2027-05-11 06:40")
	var out strings.Builder
	if _, err := paper.Route(t.Context(), &out, r, booktest.Yard("nowhere"), paper.Options{}); err != nil {
		t.Error(err)
	}
}

// TestWaitsAreTold: what waits after a treatment stands on the sheet, that of
// another yard does not.
func TestWaitsAreTold(t *testing.T) {
	p := hill()
	p.At("2027-05-10 19:00").Write(book.Treated{Of: booktest.Nuc("A1").Subject(), With: "oxalic acid", Wait: 5})
	r := reading(p, "2027-05-11 06:40")
	if len(r.Plan().Waits) != 1 {
		t.Fatalf("%d waits", len(r.Plan().Waits))
	}
	want := "A1 " + r.Plan().Waits[0].Title
	for yard, told := range map[book.YardID]bool{every: true, booktest.Yard("Hill"): true, booktest.Yard("nowhere"): false} {
		var out strings.Builder
		if _, err := paper.Route(t.Context(), &out, r, yard, paper.Options{}); err != nil {
			t.Fatal(err)
		}
		if text := all(read(t, []byte(out.String()))); strings.Contains(text, want) != told {
			t.Errorf("%q is told: %v, in\n%s", want, !told, text)
		}
	}
}
