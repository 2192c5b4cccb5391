package rules_test

import (
	"reflect"
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// lines draws what may be written into the demo season: at nucs, and at all that
// nucs are judged by.
func lines(t *rapid.T, v *book.View, entries []book.Entry) book.Fact {
	nucs, yards := slices.Collect(v.Nucs()), slices.Collect(v.Yards())
	n, m := rapid.SampledFrom(nucs).Draw(t, "nuc"), rapid.SampledFrom(nucs).Draw(t, "other nuc")
	y := rapid.SampledFrom(yards).Draw(t, "yard")
	b := rapid.SampledFrom(slices.Collect(v.Batches())).Draw(t, "batch")
	c := rapid.SampledFrom(slices.Collect(v.Colonies())).Draw(t, "colony")
	q := rapid.SampledFrom(slices.Collect(v.Queens())).Draw(t, "queen")
	moved := c.ColonyDescribed
	moved.Yard = y.Yard
	renumbered := b.Grafted
	renumbered.Number += 40
	far := y.YardDescribed
	far.Lat++
	carried := v.Stand(n.Stand).StandSet
	carried.At.X += 3
	return rapid.SampledFrom([]book.Fact{
		book.Looked{Nuc: n.Nuc, Eggs: book.SingleEggs, Sides: book.Said(4)},
		book.Looked{Nuc: n.Nuc, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(1), Stores: book.Said(0)},
		book.CellGiven{Nuc: n.Nuc, Batch: b.Batch},
		book.VirginPutIn{Nuc: n.Nuc, Queen: q.Queen},
		book.QueenCaught{Nuc: n.Nuc, Queen: q.Queen},
		book.QueenDescribed{Queen: q.Queen, Batch: b.Batch},
		book.QueenEnded{Queen: q.Queen, How: book.QueenDied},
		book.NucMadeUp{Nuc: n.Nuc, Cups: 2, From: c.Colony},
		book.NucPlaced{Nuc: n.Nuc, Yard: y.Yard, Stand: m.Stand, Place: m.Place},
		book.NucNamed{Nuc: n.Nuc, Name: "Z9", Box: n.Box, Sides: 4},
		book.BoxBuilt{Box: n.Box, Number: "90", Thin: true},
		book.BeesAdded{Nuc: n.Nuc, Cups: 1, From: m.Nuc.Subject()},
		book.Robbed{Nuc: n.Nuc},
		book.ShakenOut{Nuc: n.Nuc},
		book.Treated{Of: y.Yard.Subject(), With: "formic acid", Wait: 20},
		book.DiseaseSuspected{Of: n.Nuc.Subject(), What: "foulbrood"},
		book.PutOff{Rule: string(rules.Queenless), Of: n.Nuc.Subject(), Until: v.Today() + 3},
		book.ForageSeen{Yard: y.Yard, Forage: book.InFlow},
		book.WeatherSeen{Yard: y.Yard, Day: v.Today() - 2, Sign: book.NoFlight},
		book.WeatherSeen{Yard: y.Yard, Day: v.Today() + 1, Low: book.Said(3), Forecast: true},
		book.WeatherNormal{Yard: y.Yard, Month: 6, Low: book.Said(2), High: book.Said(12)},
		book.BroodGiven{To: n.Nuc.Subject(), Capped: 2, Open: 1},
		book.ClockSeen{Batch: b.Batch, Sign: book.SeenWalking},
		book.RipeCounted{Batch: b.Batch, Ripe: 20},
		renumbered, moved, far, carried,
		book.FrontMarked{Nuc: n.Nuc, Shape: "disc", Colour: "yellow"},
		book.OrderTaken{Order: booktest.Order("90"), Number: "90", Queens: 60},
		book.OrderClosed{Order: booktest.Order("90")},
		book.Looked{Nuc: n.Nuc, Queen: book.QueenSeen, Brood: book.Said(4), Sides: book.Said(5)},
		book.NumberChanged{Number: "look_for_eggs_from", Value: 15},
		book.NumberChanged{Number: "bees_per_cup", Value: 700},
		book.Struck{Entry: rapid.SampledFrom(entries).Draw(t, "struck").ID},
	}).Draw(t, "fact")
}

// TestAgain: whatever is written, now or late, judging again what was judged
// before says what a pass says of a season that nobody asked before.
func TestAgain(t *testing.T) {
	today := calendar.Date(2027, time.June, 9)
	base := demo.Season(today, time.UTC)
	rapid.Check(t, func(t *rapid.T) {
		on := (today + calendar.Day(rapid.IntRange(-6, 3).Draw(t, "days"))).At(7, 0, time.UTC)
		pen := &booktest.Pen{Writer: "Ida M.", Entries: slices.Clone(base)}
		season := book.NewSeason(booktest.Zones, base)
		j := rules.Judge(season.At(on))
		for range rapid.IntRange(1, 4).Draw(t, "deeds") {
			at := on.Add(-time.Duration(rapid.SampledFrom([]int{1, 2, 60, 400}).Draw(t, "hours ago")) * time.Hour)
			pen.At(at.Format("2006-01-02 15:04"))
			from := len(pen.Entries)
			for range rapid.IntRange(1, 3).Draw(t, "lines") {
				pen.Write(lines(t, season.At(on), pen.Entries))
			}
			season = season.With(pen.Entries[from:]...)
			j = j.Again(season.At(on))
			v := book.NewSeason(booktest.Zones, slices.Clone(pen.Entries)).At(on)
			compareJudged(t, rules.Judge(v), j, v.Today())
		}
	})
}

func compareJudged(t *rapid.T, want, got *rules.Judged, d calendar.Day) {
	t.Helper()
	if !reflect.DeepEqual(want.Findings(), got.Findings()) {
		t.Fatalf("what is found:\n%s", cmp.Diff(want.Findings(), got.Findings()))
	}
	if !slices.Equal(want.Presumed(), got.Presumed()) {
		t.Fatalf("what is presumed:\n%s", cmp.Diff(want.Presumed(), got.Presumed()))
	}
	if w, g := want.Day(d), got.Day(d); !reflect.DeepEqual(w, g) {
		t.Fatalf("the plan:\n%s", cmp.Diff(w, g))
	}
}

// TestAgainElsewhere: a line about something else changes what is found of a nuc
// that has no new line itself.
func TestAgainElsewhere(t *testing.T) {
	giver, taker, laying := booktest.Nuc("A1"), booktest.Nuc("A2"), booktest.Nuc("A3")
	marked := booktest.Nuc("A4")
	near, far := booktest.Yard("near"), booktest.Yard("far")
	pen := &booktest.Pen{}
	pen.At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: near, Name: "Near", Home: true, Lat: 50, Lon: 8, Zone: "UTC"},
		book.YardDescribed{Yard: far, Name: "Far", Lat: 51, Lon: 8, Zone: "UTC"},
		book.NucPlaced{Nuc: giver, Yard: near}, book.NucPlaced{Nuc: taker, Yard: near}, book.NucPlaced{Nuc: laying, Yard: near},
		book.NucMadeUp{Nuc: giver, Cups: 3}, book.NucMadeUp{Nuc: taker, Cups: 0.5},
		book.QueenPutIn{To: laying.Subject()},
		book.NucPlaced{Nuc: marked, Yard: near}, book.NucMadeUp{Nuc: marked, Cups: 3}, book.QueenPutIn{To: marked.Subject(), Queen: booktest.Queen("marked")})
	pen.At("2027-05-20 08:00").Write(
		book.BeesAdded{Nuc: taker, Cups: 0.5, From: giver.Subject()},
		book.Looked{Nuc: laying, Brood: book.Said(3)}, book.Looked{Nuc: marked, Brood: book.Said(3)})
	season := book.NewSeason(booktest.Zones, pen.Entries)
	on := time.Date(2027, time.May, 21, 8, 0, 0, 0, time.UTC)
	was := rules.Judge(season.At(on))
	for _, row := range []struct {
		name string
		nuc  book.NucID
		fact book.Fact
	}{
		{"the nuc that gave it bees stands far away", taker, book.NucPlaced{Nuc: giver, Yard: far}},
		{"an order wants its queen", laying, book.OrderTaken{Order: booktest.Order("1"), Queens: 2}},
		{"her descent is told to be doubtful", marked, book.QueenDescribed{Queen: booktest.Queen("marked"), Descent: book.DescentDoubtful}},
		{"its yard was treated", laying, book.Treated{Of: near.Subject(), With: "formic acid", Wait: 40}},
		{"its yard is on a standstill", laying, book.DiseaseSuspected{Of: giver.Subject(), What: "foulbrood"}},
	} {
		more := &booktest.Pen{Writer: "Ida M."}
		more.At("2027-05-01 09:00").Write(row.fact)
		v := season.With(more.Entries...).At(on)
		again, anew := foundOf(was.Again(v), row.nuc), foundOf(rules.Judge(v), row.nuc)
		if diff := cmp.Diff(anew, again); diff != "" {
			t.Errorf("%s:\n%s", row.name, diff)
		}
		if cmp.Equal(foundOf(was, row.nuc), anew) {
			t.Errorf("%s: it makes no difference, so nothing was tested", row.name)
		}
	}
}

func foundOf(j *rules.Judged, id book.NucID) (all []rules.Finding) {
	for _, f := range j.Findings() {
		if f.Of == id.Subject() {
			all = append(all, f)
		}
	}
	return all
}
