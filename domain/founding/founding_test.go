package founding_test

import (
	"errors"
	"fmt"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/founding"
	"lidmark/domain/rules"
)

var now = time.Date(2027, time.May, 11, 9, 0, 0, 0, time.UTC)

func hill() founding.Book {
	mini := founding.Combs{Kind: "mini"}
	return founding.Book{
		Yard: "Home Yard", Zone: "Europe/Berlin", Lat: 48, Lon: 11,
		Rows: []founding.Row{
			{Names: "A1-A4", PerBox: 1, Combs: mini, Facing: []float64{180}},
			{Names: "B1-B4, C1", PerBox: 2, Combs: founding.Combs{Sides: 10}, Facing: []float64{90, 270}},
		},
		People: []string{"Ida Mon-Fri 18:30-20:30", "Jon"},
	}
}

// begun is the view of a book that begins so.
func begun(t testing.TB, b founding.Book) (*book.View, *book.IDs) {
	t.Helper()
	ids := book.NewIDs(now, nil, [32]byte{1})
	entries, err := b.Entries(now, time.LoadLocation, &ids)
	if err != nil {
		t.Fatal(err)
	}
	return book.NewSeason(time.LoadLocation, entries).At(now), &ids
}

// nucsOf are the nucs of a view, a line each.
func nucsOf(v *book.View) (all []string) {
	for n := range v.Nucs() {
		stand := v.Stand(n.Stand)
		all = append(all, fmt.Sprintf("%s: box %s (%s, %d), %d sides of %g, faces %g, place %d of %d on %s at %g,%g", n.Name, v.Box(n.Box).Number,
			v.Box(n.Box).Model, v.Box(n.Box).Nucs, n.Sides, n.Side, n.NucNamed.Entrance, n.Place, stand.Places, stand.Letter, stand.At.X, stand.At.Y))
	}
	return all
}

func TestBookBegins(t *testing.T) {
	v, _ := begun(t, hill())
	want := []string{
		"A1: box A1 (mini, 1), 6 sides of 2, faces 180, place 1 of 4 on A at 0,0",
		"A2: box A2 (mini, 1), 6 sides of 2, faces 180, place 2 of 4 on A at 0,0",
		"A3: box A3 (mini, 1), 6 sides of 2, faces 180, place 3 of 4 on A at 0,0",
		"A4: box A4 (mini, 1), 6 sides of 2, faces 180, place 4 of 4 on A at 0,0",
		"B1: box B1 (, 2), 10 sides of 0, faces 90, place 1 of 4 on B at 0,-3",
		"B2: box B1 (, 2), 10 sides of 0, faces 270, place 2 of 4 on B at 0,-3",
		"B3: box B3 (, 2), 10 sides of 0, faces 90, place 3 of 4 on B at 0,-3",
		"B4: box B3 (, 2), 10 sides of 0, faces 270, place 4 of 4 on B at 0,-3",
		"C1: box C1 (, 2), 10 sides of 0, faces 90, place 1 of 1 on C at 0,-6",
	}
	if diff := cmp.Diff(want, nucsOf(v)); diff != "" {
		t.Error(diff)
	}
	yard := v.HomeYard()
	if yard.Name != "Home Yard" || yard.Lat != 48 || yard.Lon != 11 || yard.Zone.String() != "Europe/Berlin" {
		t.Errorf("the home yard is %+v", yard.YardDescribed)
	}
	for e := range v.All() {
		if e.Writer != "Ida" || e.At.In(yard.Zone) != "Fri 1 Jan" {
			t.Fatalf("%s by %s, want Fri 1 Jan by Ida", e.At.In(yard.Zone), e.Writer)
		}
		if err := rules.Sense(v, now, e); err != nil {
			t.Error(err)
		}
	}
}

// TestARowJoinsWhatIsThere: it fills up a stand, or stands south of all others.
func TestARowJoinsWhatIsThere(t *testing.T) {
	v, ids := begun(t, hill())
	add := func(r founding.Row) {
		t.Helper()
		facts, err := r.Facts(ids, v.HomeYard().YardDescribed.Yard, v)
		if err != nil {
			t.Fatal(err)
		}
		v = v.Season().With(ids.Entries(calendar.Instantly(now), now, "Ida", facts...)...).At(now)
	}
	add(founding.Row{Names: "A5-A6", PerBox: 1, Combs: founding.Combs{Kind: "mini"}})
	add(founding.Row{Names: "D1, E1", PerBox: 1, At: &book.Point{X: 4, Y: -20}})
	add(founding.Row{Names: "F1", PerBox: 1})
	all := nucsOf(v)
	for at, want := range map[int]string{
		0:  "A1: box A1 (mini, 1), 6 sides of 2, faces 180, place 1 of 6 on A at 0,0",
		5:  "A6: box A6 (mini, 1), 6 sides of 2, faces 0, place 6 of 6 on A at 0,0",
		11: "D1: box D1 (, 1), 0 sides of 0, faces 0, place 1 of 1 on D at 4,-20",
		12: "E1: box E1 (, 1), 0 sides of 0, faces 0, place 1 of 1 on E at 4,-23",
		13: "F1: box F1 (, 1), 0 sides of 0, faces 0, place 1 of 1 on F at 4,-26",
	} {
		if at >= len(all) || all[at] != want {
			t.Errorf("nuc %d is not %s:\n%q", at, want, all)
		}
	}
	if facts, err := (founding.Row{Names: "A1", PerBox: 1}).Facts(ids, v.HomeYard().YardDescribed.Yard, v); err == nil || err.Error() != "A1 is there already: write another name, or leave it out" {
		t.Errorf("A1 twice = %v, %v", facts, err)
	}
	if _, err := (founding.Row{Names: "A1", PerBox: 1}).Facts(ids, book.YardID{1}, v); err != nil {
		t.Errorf("A1 of another yard: %v", err)
	}
}

// TestWrongNamesTheField: what is wrong is said of one field, with what to do.
func TestWrongNamesTheField(t *testing.T) {
	row := func(r founding.Row) func(*founding.Book) {
		return func(b *founding.Book) { b.Rows = append(b.Rows, r) }
	}
	for want, spoil := range map[string]func(*founding.Book){
		`yard " ": a yard needs a name, write one like Home`:                                                              func(b *founding.Book) { b.Yard = " " },
		`yard "a\ab": name "a\ab": U+0007 does not show, take it out`:                                                     func(b *founding.Book) { b.Yard = "a\ab" },
		`place "": 91 degrees of latitude: write -90 to 90`:                                                               func(b *founding.Book) { b.Lat = 91 },
		`zone "": no such time zone, write one like Europe/Berlin`:                                                        func(b *founding.Book) { b.Zone = "" },
		`zone "Local": no such time zone, write one like Europe/Berlin`:                                                   func(b *founding.Book) { b.Zone = "Local" },
		`since "2028-01-01": write a day gone by, like 2027-04-01`:                                                        func(b *founding.Book) { b.Since = "2028-01-01" },
		`boxes "A4-A5": A4 is there already: write another name, or leave it out`:                                         row(founding.Row{Names: "A4-A5", PerBox: 1}),
		`boxes "D1,D1": D1 is there already: write another name, or leave it out`:                                         row(founding.Row{Names: "D1,D1", PerBox: 1}),
		`boxes "O1": column 1: O1: names have no I and no O; choose another letter, they look like 1 and 0`:               row(founding.Row{Names: "O1", PerBox: 1}),
		`boxes ",": no name of a nuc, write a row like A1-A12`:                                                            row(founding.Row{Names: ",", PerBox: 1}),
		`boxes "D1": 0 nucs in a box: at least 1`:                                                                         row(founding.Row{Names: "D1"}),
		`boxes "D1": 99 nucs in a box: write 1 to 24`:                                                                     row(founding.Row{Names: "D1", PerBox: 99}),
		`person "Ida Mon": free hours of Mon: add them, like Mon 18:30-20:30`:                                             func(b *founding.Book) { b.People = []string{"Ida Mon"} },
		`person "": a person needs a name, write it like Ida`:                                                             func(b *founding.Book) { b.People = []string{""} },
		`person "Ida Mon 20:00-18:00": free hours "20:00-18:00": write them like Mon-Fri 18:30-20:30 or Sat and Sun 9-18`: func(b *founding.Book) { b.People = []string{"Ida Mon 20:00-18:00"} },
		`boxes "D1": -1 sides of comb of 0 dm²: write how many sides a nuc has, and the area of one in dm², like 6 and 2`: row(founding.Row{Names: "D1", PerBox: 1, Combs: founding.Combs{Sides: -1}}),
	} {
		b := hill()
		spoil(&b)
		ids := book.NewIDs(now, nil, [32]byte{1})
		entries, err := b.Entries(now, time.LoadLocation, &ids)
		var wrong *founding.Wrong
		if !errors.As(err, &wrong) || err.Error() != want || len(entries) > 0 {
			t.Errorf("%d entries, %v, want %s", len(entries), err, want)
		}
	}
}

// TestBegins: a year that is young begins in the one before.
func TestBegins(t *testing.T) {
	for _, c := range []struct{ now, since, want string }{
		{"2027-05-11", "", "Fri 1 Jan"}, {"2027-01-10", "", "Wed 11 Nov"}, {"2027-05-11", "2027-04-01", "Thu 1 Apr"}, {"2027-05-11", "yesterday", "Mon 10 May"},
	} {
		day, err := calendar.ParseDay(c.now)
		if err != nil {
			t.Fatal(err)
		}
		at, err := founding.Book{Since: c.since}.Begins(day.At(20, 0, time.UTC), time.UTC)
		if got := at.In(time.UTC); err != nil || got != c.want {
			t.Errorf("on %s, since %q, it begins on %s, %v, want %s", c.now, c.since, got, err, c.want)
		}
	}
}

// TestRowsFound: every nuc of a row is in the book once, on its own place, and no
// box holds more nucs than it has room for, all of one stand.
func TestRowsFound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := founding.Book{Yard: "Hill", Zone: "UTC"}
		want := 0
		for _, letter := range rapid.SliceOfNDistinct(rapid.SampledFrom([]string{"A", "B", "C", "K", "AB"}), 1, 5, rapid.ID).Draw(t, "letters") {
			n := rapid.IntRange(1, 20).Draw(t, "nucs")
			want += n
			b.Rows = append(b.Rows, founding.Row{Names: fmt.Sprintf("%s1-%s%d", letter, letter, n), PerBox: rapid.IntRange(1, 6).Draw(t, "per box")})
		}
		ids := book.NewIDs(now, nil, [32]byte{1})
		entries, err := b.Entries(now, time.LoadLocation, &ids)
		if err != nil {
			t.Fatal(err)
		}
		v := book.NewSeason(nil, entries).At(now)
		places, inBox, standOf, got := map[string]bool{}, map[book.BoxID]int{}, map[book.BoxID]book.StandID{}, 0
		for n := range v.Nucs() {
			got++
			where := fmt.Sprint(n.Stand, n.Place)
			if places[where] {
				t.Fatalf("%s stands where another does", n.Name)
			}
			places[where] = true
			if inBox[n.Box]++; inBox[n.Box] > v.Box(n.Box).Nucs {
				t.Fatalf("box %s of %d holds %d", v.Box(n.Box).Number, v.Box(n.Box).Nucs, inBox[n.Box])
			}
			if s, ok := standOf[n.Box]; ok && s != n.Stand {
				t.Fatalf("box %s stands on two stands", v.Box(n.Box).Number)
			}
			standOf[n.Box] = n.Stand
			if n.Place < 1 || n.Place > v.Stand(n.Stand).Places {
				t.Fatalf("%s on place %d of %d", n.Name, n.Place, v.Stand(n.Stand).Places)
			}
		}
		if got != want {
			t.Fatalf("%d nucs, want %d", got, want)
		}
	})
}
