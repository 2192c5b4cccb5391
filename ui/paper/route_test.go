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
}

// TestLettersStandOnTheFirstPage: whoever has page 1 in hand can read the letters,
// at its foot, below all rows; they stand once more at the end where there is room.
func TestLettersStandOnTheFirstPage(t *testing.T) {
	for name, o := range choices() {
		pages := routeOf(t, demoDay(t), o)
		lines := pages[0].lines()
		at := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(l, "Letters") })
		if at < 0 || !strings.Contains(strings.Join(lines[at:], " "), "Stings can kill") {
			t.Errorf("%s: page 1 of %d has no letters with their caution", name, len(pages))
			continue
		}
		if rest := strings.Join(lines[at:], " "); strings.Contains(rest, "by Thu") || strings.Contains(rest, "past ") {
			t.Errorf("%s: work stands below the letters:\n%s", name, rest)
		}
		if n := strings.Count(all(pages), "Stings can kill"); n > 2 {
			t.Errorf("%s: the caution stands %d times", name, n)
		}
	}
}

// TestFramesHaveRoomForAHand: what is to be written into is 8 mm high or more,
// clearly more in large print, and no frame is cut by the end of a page.
func TestFramesHaveRoomForAHand(t *testing.T) {
	r := demoDay(t)
	for name, o := range choices() {
		least, foot := 8.0, 12.0
		if o.Large {
			least = 11
		}
		for _, p := range papers()[:3] {
			if p.name == "dense" {
				continue // its squares are tested with it
			}
			for i, page := range p.pages(t, r, o) {
				for _, f := range page.frames {
					if f.h < least {
						t.Errorf("%s, %s, page %d: a frame is %.1f mm high, want %.0f", p.name, name, i+1, f.h, least)
					}
					if f.y < 0 || f.y+f.h > page.h-foot {
						t.Errorf("%s, %s, page %d: a frame from %.0f to %.0f mm is cut", p.name, name, i+1, f.y, f.y+f.h)
					}
				}
			}
		}
	}
}

// TestLikeNucsStandInABlock: what is done at three nucs or more of a stop for one
// reason is said once, and again only where the block goes on on a further page.
func TestLikeNucsStandInABlock(t *testing.T) {
	r := demoDay(t)
	want, most := map[string]int{}, 0
	for _, s := range r.Plan().Stops {
		for _, task := range s.Tasks {
			reasons := map[string]int{}
			for _, f := range task.Findings {
				if f.Act == task.Act {
					reasons[f.Why+f.By.String()]++
				}
			}
			for _, n := range reasons {
				most = max(most, n)
				if n >= 3 {
					n = 1
				}
				want[task.Title] += n
			}
		}
	}
	if most < 5 {
		t.Fatalf("no task is for five nucs of one reason, but for %d", most)
	}
	pages := routeOf(t, r, paper.Options{})
	for _, title := range []string{"Look for eggs", "Catch and cage her, marked yellow"} {
		if n := count(pages, title); n < want[title] || n > want[title]+len(pages)-1 || n == 0 {
			t.Errorf("%q is said %d times on %d pages, want %d", title, n, len(pages), want[title])
		}
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
