package book_test

import (
	"strings"
	"testing"
	"time"
	_ "time/tzdata"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

const lookForEggsFrom = practice.LookForEggsFrom

var l7 = booktest.Nuc("L7")

func day(s string) calendar.Day {
	d, err := calendar.ParseDay(s)
	if err != nil {
		panic(err)
	}
	return d
}

func mustZone(t *testing.T, name string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

// step is what happened to nuc L7 on a day of May 2027 (past 31: of June).
type step struct {
	day  int
	fact book.Fact
}

func lived(steps ...step) *book.Nuc {
	pen := &booktest.Pen{}
	for _, s := range steps {
		at := time.Date(2027, 5, s.day, 10, 0, 0, 0, time.UTC)
		pen.At(at.Format("2006-01-02 15:04")).Write(s.fact)
	}
	return pen.View("2027-07-31 00:00").Nuc(l7)
}

func TestWhatANucHolds(t *testing.T) {
	madeUp := book.NucMadeUp{Nuc: l7, Cups: 3}
	combs := book.NucMadeUp{Nuc: l7, Cups: 3, Capped: 4, Open: 2}
	cell := book.CellGiven{Nuc: l7, Batch: booktest.Batch("4")}
	eggs := book.Looked{Nuc: l7, Eggs: book.SingleEggs}
	brood := book.Looked{Nuc: l7, Brood: book.Said(3)}
	none := book.Looked{Nuc: l7, Queen: book.NoneSeen, Eggs: book.NoEggs}
	caught := book.QueenCaught{Nuc: l7, Queen: booktest.Queen("12")}

	for name, c := range map[string]struct {
		steps []step
		want  book.Condition
	}{
		"nobody touched it":               {nil, book.Empty},
		"made up":                         {[]step{{1, madeUp}}, book.NoQueen},
		"given a cell":                    {[]step{{1, madeUp}, {2, cell}}, book.Cell},
		"cell open at the tip":            {[]step{{1, madeUp}, {2, cell}, {5, book.Looked{Nuc: l7, Cell: book.CellOpenAtTip}}}, book.Virgin},
		"cell torn at the side":           {[]step{{1, madeUp}, {2, cell}, {5, book.Looked{Nuc: l7, Cell: book.CellTornAtSide}}}, book.NoQueen},
		"eggs":                            {[]step{{1, madeUp}, {2, cell}, {18, eggs}}, book.Laying},
		"eggs, then capped brood":         {[]step{{1, madeUp}, {2, cell}, {18, eggs}, {28, brood}}, book.GoodBrood},
		"brood she could not have laid":   {[]step{{1, combs}, {2, cell}, {10, brood}}, book.Cell},
		"brood only she can have laid":    {[]step{{1, combs}, {2, cell}, {25, brood}}, book.GoodBrood},
		"eggs left by the queen before":   {[]step{{1, madeUp}, {2, cell}, {18, eggs}, {28, brood}, {29, caught}, {31, eggs}}, book.NoQueen},
		"eggs after those have hatched":   {[]step{{1, madeUp}, {2, cell}, {18, eggs}, {29, caught}, {29, cell}, {47, eggs}}, book.Laying},
		"no eggs from a virgin":           {[]step{{1, madeUp}, {2, cell}, {18, none}}, book.Cell},
		"no queen, no eggs, was laying":   {[]step{{1, madeUp}, {2, cell}, {18, eggs}, {30, none}}, book.NoQueen},
		"own cells":                       {[]step{{1, madeUp}, {2, cell}, {8, book.Looked{Nuc: l7, Queen: book.NoneSeen, OwnCells: book.Said(3)}}}, book.NoQueen},
		"many eggs a cell":                {[]step{{1, madeUp}, {25, book.Looked{Nuc: l7, Eggs: book.ManyEggs}}}, book.LayingWorkers},
		"drone brood beside worker brood": {[]step{{1, madeUp}, {2, cell}, {35, book.Looked{Nuc: l7, DroneBrood: true, Brood: book.Said(3)}}}, book.GoodBrood},
		"drone brood in worker cells":     {[]step{{1, madeUp}, {2, cell}, {35, book.Looked{Nuc: l7, DroneBrood: true}}}, book.DroneLayer},
		"caught":                          {[]step{{1, madeUp}, {2, cell}, {18, eggs}, {28, caught}}, book.NoQueen},
		"robbed":                          {[]step{{1, madeUp}, {3, book.Robbed{Nuc: l7}}}, book.BeingRobbed},
		"robbed, then eggs seen":          {[]step{{1, madeUp}, {2, cell}, {3, book.Robbed{Nuc: l7}}, {18, eggs}}, book.Laying},
		"robbed, then a queen seen":       {[]step{{1, madeUp}, {2, cell}, {3, book.Robbed{Nuc: l7}}, {9, book.Looked{Nuc: l7, Queen: book.QueenSeen}}}, book.Virgin},
		"robbed, then a virgin seen":      {[]step{{1, madeUp}, {2, cell}, {3, book.Robbed{Nuc: l7}}, {9, book.Looked{Nuc: l7, Queen: book.VirginSeen}}}, book.Virgin},
		"robbed, then no queen found":     {[]step{{1, madeUp}, {2, cell}, {3, book.Robbed{Nuc: l7}}, {9, none}}, book.BeingRobbed},
		"robbed, then no bees":            {[]step{{1, madeUp}, {2, cell}, {3, book.Robbed{Nuc: l7}}, {9, book.Looked{Nuc: l7, Sides: book.Said(0)}}}, book.BeingRobbed},
		"robbed, then bees seen":          {[]step{{1, madeUp}, {3, book.Robbed{Nuc: l7}}, {4, book.Looked{Nuc: l7, Sides: book.Said(2)}}}, book.NoQueen},
		"shaken out":                      {[]step{{1, madeUp}, {3, book.ShakenOut{Nuc: l7}}}, book.Empty},
		"united with another":             {[]step{{1, madeUp}, {3, book.United{Nuc: l7, With: booktest.Nuc("L8").Subject()}}}, book.Empty},
		"another united with it":          {[]step{{1, madeUp}, {2, cell}, {3, book.United{Nuc: booktest.Nuc("L8"), With: l7.Subject()}}}, book.Cell},
		"queen seen, no word on eggs":     {[]step{{1, madeUp}, {2, cell}, {9, book.Looked{Nuc: l7, Queen: book.QueenSeen}}}, book.Virgin},
		"good brood stays good":           {[]step{{1, madeUp}, {2, cell}, {18, eggs}, {28, brood}, {35, eggs}}, book.GoodBrood},
		"cell given over a laying queen":  {[]step{{1, madeUp}, {2, cell}, {18, eggs}, {20, cell}}, book.Cell},
	} {
		if got := lived(c.steps...).Condition(); got != c.want {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

// A laying queen was caught on 10 May, eggs left, a cell given the same hour.
// A queen raised on those eggs lays from 29 May on at the earliest: eggs before
// that are the given queen's, eggs after it are anybody's.
func TestDescentAfterACatch(t *testing.T) {
	history := func(more ...step) *book.Nuc {
		steps := []step{
			{1, book.NucMadeUp{Nuc: l7, Cups: 3}},
			{1, book.QueenPutIn{Queen: booktest.Queen("old"), To: l7.Subject()}},
			{10, book.QueenCaught{Nuc: l7, Queen: booktest.Queen("old")}},
			{10, book.CellGiven{Nuc: l7, Batch: booktest.Batch("4")}},
		}
		return lived(append(steps, more...)...)
	}
	eggs := book.Looked{Nuc: l7, Eggs: book.SingleEggs}
	for name, c := range map[string]struct {
		nuc  *book.Nuc
		want book.Descent
	}{
		"eggs on 22 May":                      {history(step{22, eggs}), book.DescentSure},
		"eggs on 3 June":                      {history(step{34, eggs}), book.DescentDoubtful},
		"own cells broken on 16 May":          {history(step{16, book.OwnCellsBroken{Nuc: l7}}, step{34, eggs}), book.DescentSure},
		"own cells broken a fortnight later":  {history(step{24, book.OwnCellsBroken{Nuc: l7}}, step{34, eggs}), book.DescentDoubtful},
		"made up without brood, eggs in June": {lived(step{1, book.NucMadeUp{Nuc: l7, Cups: 3}}, step{2, book.CellGiven{Nuc: l7}}, step{40, eggs}), book.DescentSure},
		"nothing given, eggs in June":         {lived(step{1, book.NucMadeUp{Nuc: l7, Cups: 3, Open: 2}}, step{40, eggs}), book.DescentDoubtful},
	} {
		if got := c.nuc.Holds.Descent; got != c.want {
			t.Errorf("%s: descent %v, want %v", name, got, c.want)
		}
	}
}

func TestQueenlessSinceTheCatchNotSinceTheLook(t *testing.T) {
	n := lived(
		step{1, book.NucMadeUp{Nuc: l7, Cups: 3}},
		step{2, book.QueenPutIn{Queen: booktest.Queen("old"), To: l7.Subject()}},
		step{10, book.QueenCaught{Nuc: l7, Queen: booktest.Queen("old")}},
		step{10, book.CellGiven{Nuc: l7}},
		step{15, book.Looked{Nuc: l7, Queen: book.NoneSeen, OwnCells: book.Said(2)}},
	)
	if got := n.Queenless.Instant.Day(); n.Holds.Condition != book.NoQueen || got != 10 {
		t.Errorf("%v since the %dth, want no queen since the 10th", n.Holds.Condition, got)
	}
}

func TestAContradictionAsksOnce(t *testing.T) {
	steps := []step{
		{1, book.NucMadeUp{Nuc: l7, Cups: 3}},
		{2, book.CellGiven{Nuc: l7, Batch: booktest.Batch("3")}},
		{18, book.Looked{Nuc: l7, Eggs: book.SingleEggs}},
		{20, book.CellGiven{Nuc: l7, Batch: booktest.Batch("4")}},
	}
	n := lived(steps...)
	if len(n.Gaps) != 1 || !n.Gaps[0].Asks || !strings.Contains(n.Gaps[0].What, "laying queen") {
		t.Fatalf("gaps: %+v, want one that asks", n.Gaps)
	}
	n = lived(append(steps, step{20, book.QueenGone{Nuc: l7}})...)
	if len(n.Gaps) != 1 || n.Gaps[0].Asks || n.Holds.Condition != book.Cell {
		t.Errorf("answered: gaps %+v, holds %v; want one silent gap and the cell", n.Gaps, n.Holds.Condition)
	}
}

func TestACaughtQueenKnowsWhereSheComesFrom(t *testing.T) {
	pen := &booktest.Pen{}
	four, mother, her := booktest.Batch("4"), booktest.Queen("mother"), booktest.Queen("12")
	pen.At("2027-04-20 15:00").Write(book.Grafted{Batch: four, Number: 4, Line: "Plover", Mother: mother, Larvae: 30})
	pen.At("2027-04-29 09:00").Write(book.NucMadeUp{Nuc: l7, Cups: 3})
	pen.At("2027-04-30 09:00").Write(book.CellGiven{Nuc: l7, Batch: four})
	pen.At("2027-05-16 09:00").Write(book.Looked{Nuc: l7, Eggs: book.SingleEggs})
	pen.At("2027-06-01 09:00").Write(book.QueenCaught{Nuc: l7, Queen: her, Label: "12"})
	pen.At("2027-06-01 10:00").Write(book.QueenBanked{Queen: her, Bank: booktest.Colony("bank")})

	v := pen.View("2027-06-02 00:00")
	q := v.Queen(her)
	if q.Line != "Plover" || q.Batch != four || q.Mother != mother || q.Descent != book.DescentSure {
		t.Errorf("she is %+v, want a sure Plover of batch 4", q.QueenDescribed)
	}
	if got := v.Colony(booktest.Colony("bank")).Banked; len(got) != 1 || got[0] != her {
		t.Errorf("the bank holds %v, want her", got)
	}

	pen.At("2027-06-03 10:00").Write(book.QueenHandedOver{Queen: her, To: "a neighbour"})
	v = pen.View("2027-06-04 00:00")
	if q := v.Queen(her); q.InHand() || q.HandedTo != "a neighbour" {
		t.Errorf("after the hand-over: %+v", q)
	}
	if got := v.Colony(booktest.Colony("bank")).Banked; len(got) != 0 {
		t.Errorf("the bank still holds %v", got)
	}
}

func TestCellsOfABatchAddUp(t *testing.T) {
	pen := &booktest.Pen{}
	four := booktest.Batch("4")
	pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: four, Number: 4, Larvae: 30})
	for at, f := range map[string]book.Fact{
		"2027-05-06 18:00": book.TakeCounted{Batch: four, Accepted: 26},
		"2027-05-10 18:00": book.CappedCounted{Batch: four, Capped: 24},
		"2027-05-12 18:00": book.CellsCulled{Batch: four, Cells: 2},
		"2027-05-15 09:00": book.CellGiven{Nuc: l7, Batch: four},
		"2027-05-15 10:00": book.Dropped{What: book.Cells, Batch: four, Count: 1},
		"2027-05-16 10:00": book.VirginCaged{Batch: four, Queen: booktest.Queen("1"), Label: "1"},
		"2027-05-17 10:00": book.EmergedCounted{Batch: four, Out: 3, Dead: 2},
		"2027-05-18 10:00": book.VirginPutIn{Batch: four, Nuc: l7, Queen: booktest.Queen("1")},
	} {
		pen.At(at).Write(f)
	}
	for at, want := range map[string]int{
		"2027-05-05 20:00": 30, "2027-05-07 00:00": 26, "2027-05-11 00:00": 24,
		"2027-05-15 12:00": 20, "2027-05-31 00:00": 14,
	} {
		if got := pen.View(at).Batch(four).Left(); got != want {
			t.Errorf("%s: %d cells left, want %d", at, got, want)
		}
	}
}

func TestACellNotAccountedForIsNotLeft(t *testing.T) {
	pen := &booktest.Pen{}
	four := booktest.Batch("4")
	pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: four, Number: 4, Larvae: 10})
	pen.At("2027-05-15 08:00").Write(book.TakenAlong{What: book.Cells, Batch: four, Count: 6})
	pen.At("2027-05-15 09:00").Write(book.CellGiven{Nuc: l7, Batch: four}, book.CellGiven{Nuc: booktest.Nuc("L8"), Batch: four})
	pen.At("2027-05-15 10:00").Write(book.Dropped{What: book.Cells, Batch: four, Count: 1})
	pen.At("2027-05-15 18:00").Write(book.BroughtBack{What: book.Cells, Batch: four, Count: 2})
	if got := pen.View("2027-05-16 00:00").Batch(four).Left(); got != 6 {
		t.Errorf("%d left of 10, want 6: 2 given, 1 dropped, 1 nobody knows of", got)
	}
	pen.At("2027-05-16 08:00").Write(book.RipeCounted{Batch: four, Ripe: 5})
	pen.At("2027-05-16 09:00").Write(book.CellGiven{Nuc: booktest.Nuc("L9"), Batch: four}, book.CellsCulled{Batch: four, Cells: 1})
	if got := pen.View("2027-05-17 00:00").Batch(four).Left(); got != 3 {
		t.Errorf("%d left of 5 ripe ones, want 3: 1 given, 1 culled", got)
	}
}

func TestTraceFollowsBroodFromHandToHand(t *testing.T) {
	pen := &booktest.Pen{}
	s2, low := booktest.Colony("S2"), booktest.Yard("low")
	a, b, c, early := booktest.Nuc("A"), booktest.Nuc("B"), booktest.Nuc("C"), booktest.Nuc("early")
	her := booktest.Queen("sold")
	pen.At("2027-04-01 10:00").Write(book.ColonyDescribed{Colony: s2, Name: "S2", Yard: booktest.Yard("home")})
	pen.Write(book.NucPlaced{Nuc: a, Yard: low}, book.NucPlaced{Nuc: b, Yard: low}, book.NucPlaced{Nuc: c, Yard: low})
	pen.At("2027-04-02 10:00").Write(book.BeesAdded{Nuc: early, Cups: 1, From: a.Subject()})
	pen.At("2027-04-20 10:00").Write(book.NucMadeUp{Nuc: a, From: s2, Open: 1}, book.NucMadeUp{Nuc: c, From: booktest.Colony("S3")})
	pen.At("2027-05-02 10:00").Write(book.United{Nuc: a, With: b.Subject()})
	pen.At("2027-05-20 10:00").Write(book.QueenCaught{Nuc: b, Queen: her})
	pen.At("2027-05-21 10:00").Write(book.QueenHandedOver{Queen: her, With: true})

	tr := pen.View("2027-06-03 00:00").Trace(s2.Subject(), time.Time{})
	if len(tr.Receivers) != 2 || tr.Receivers[0] != a.Subject() || tr.Receivers[1] != b.Subject() {
		t.Errorf("reached %v, want A and B", tr.Receivers)
	}
	if len(tr.Sold) != 1 || tr.Sold[0] != her {
		t.Errorf("sold %v, want the one queen", tr.Sold)
	}
	if len(tr.Yards) != 2 {
		t.Errorf("yards %v, want home and low", tr.Yards)
	}

	pen.At("2027-06-03 10:00").Write(book.YardDescribed{Yard: low, Name: "Low"}, book.YardDescribed{Yard: booktest.Yard("far"), Name: "Far"})
	pen.Write(book.DiseaseSuspected{Of: s2.Subject(), What: "foulbrood"})
	v := pen.View("2027-06-04 00:00")
	for yard, want := range map[string]bool{"home": true, "low": true, "far": false} {
		if got := v.Yard(booktest.Yard(yard)).Standstill != nil; got != want {
			t.Errorf("%s on standstill: %v, want %v", yard, got, want)
		}
	}
	pen.At("2027-06-09 10:00").Write(book.SuspicionEnded{Of: s2.Subject()})
	if pen.View("2027-06-10 00:00").Yard(low).Standstill != nil {
		t.Error("the standstill outlives the suspicion")
	}
}

func TestFreeHoursAndDaysOff(t *testing.T) {
	pen := &booktest.Pen{}
	ida := booktest.Person("Ida")
	pen.At("2027-05-01 10:00").Write(book.PersonDescribed{Person: ida, Name: "Ida"})
	if v := pen.View("2027-05-02 00:00"); v.HoursTold() {
		t.Error("nobody said when Ida is free, and the book knows")
	}
	evening := book.FreeHours{From: 18*60 + 30, Until: 20*60 + 30}
	pen.At("2027-05-02 10:00").Write(
		book.PersonDescribed{Person: ida, Name: "Ida", Free: [7]book.FreeHours{time.Monday: evening, time.Tuesday: evening, time.Wednesday: evening}},
		book.DaysOff{Person: ida, From: day("2027-05-10"), To: day("2027-05-11")},
	)
	v := pen.View("2027-05-03 00:00")
	if !v.HoursTold() {
		t.Error("Ida's hours are told, and the book knows nothing of them")
	}
	for d, want := range map[string]int{
		"2027-05-05": 120, "2027-05-06": 0, "2027-05-10": 0, "2027-05-11": 0, "2027-05-12": 120,
	} {
		if got := v.MinutesFree(day(d)); got != want {
			t.Errorf("%s: %d min free, want %d", d, got, want)
		}
	}
}

func TestAnOrderTakesItsLineAndWhatItNames(t *testing.T) {
	for line, o := range map[string]book.Order{
		"Plover":  {OrderTaken: book.OrderTaken{Line: "Plover"}},
		"Siskin":  {OrderTaken: book.OrderTaken{Line: "Plover", Substitute: []string{"Siskin"}}},
		"Anybody": {},
	} {
		if !o.Takes(line) {
			t.Errorf("an order for %q and %v refuses %s", o.Line, o.Substitute, line)
		}
	}
	if o := (book.Order{OrderTaken: book.OrderTaken{Line: "Plover"}}); o.Takes("Siskin") {
		t.Error("an order for Plover takes Siskin")
	}
}
