package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// writing is a window on the demo season, in Yard, that makes ids of its own.
func writing(t testing.TB) *window {
	w := start(t).run("yard")
	w.Pen.IDs = book.NewIDs(now, w.Book.Season, [32]byte{7})
	return w
}

// fill opens the form of a record and answers it: "name=answer".
func (w *window) fill(record string, answers ...string) *window {
	w.t.Helper()
	w.run(record)
	if w.Form == nil {
		w.t.Fatalf("%s opens no form: %s", record, w.Note.Text)
	}
	for _, a := range answers {
		name, text, _ := strings.Cut(a, "=")
		for _, ask := range w.Form.Asks {
			if at := slices.IndexFunc(ask.Options, func(o state.Option) bool { return o.Word == text }); ask.Name == name && ask.Kind == state.Choice && at >= 0 {
				text = ask.Options[at].Value
			}
		}
		w.State = w.WithField(state.FormField+name, state.FieldOf(text))
	}
	return w
}

// kept writes the form and gives the book back with what was written.
func (w *window) kept() *window {
	w.t.Helper()
	for name, wrong := range w.FormSays().Answers.Mistakes {
		w.t.Fatalf("%s: %s", name, wrong)
	}
	w.press("Enter", state.Ctrl)
	for w.Asked != nil {
		w.press("1")
	}
	if w.Form != nil {
		w.t.Fatal("the form is still open")
	}
	return w.save()
}

func (w *window) view() *book.View { return w.Present().View }

func (w *window) take(s ...book.Subject) *window {
	w.Selection, w.Form = state.Select(s...), nil
	return w
}

func (w *window) sub(name string) book.Subject { return w.nuc(name).Nuc.Nuc.Subject() }

func (w *window) colony(name string) *book.Colony {
	w.t.Helper()
	for c := range w.view().Colonies() {
		if c.Name == name {
			return c
		}
	}
	w.t.Fatalf("no colony %s", name)
	return nil
}

// TestEveryRecordOfANucIsWritten writes what can happen at a nuc, and folds it.
func TestEveryRecordOfANucIsWritten(t *testing.T) {
	w := writing(t)
	is := func(what string, ok bool) {
		t.Helper()
		if !ok {
			t.Errorf("%s is not in the book", what)
		}
	}
	n := func(name string) *book.Nuc { return w.nuc(name).Nuc }
	w.take(w.sub("C2"), w.sub("E2")).fill("make up", "cups=3", "food=400", "shut=yes", "from=S9").kept()
	is("two nucs made up", n("C2").Condition() == book.NoQueen && n("E2").Condition() == book.NoQueen)
	w.take(w.sub("A2")).fill("look", "queen=queen seen", "eggs=eggs", "brood=2", "sides=5", "stores=2", "also=larvae,thorough", "note=calm on the comb").kept()
	look, _ := n("A2").LastLook()
	is("a look", look.Queen == book.QueenSeen && look.Larvae && look.Thorough && look.Note == "calm on the comb" && n("A2").Holds.Condition.Queenright())
	w.take(w.sub("C3"), w.sub("F3")).fill("give cell", "batch=5, Plover, 25 cells").kept()
	is("two cells", n("C3").Condition() == book.Cell && n("F3").Condition() == book.Cell)
	w.take(w.sub("G3")).fill("put in virgin", "virgin=cage 2, Yarrow", "how=run in").kept()
	is("a virgin", n("G3").Condition() == book.Virgin)
	w.take(w.sub("A1"), w.sub("C1")).fill("catch", "cages=51-52", "bank=S11").kept()
	caught := n("A1").Caught
	is("two queens caught", n("A1").Condition() == book.NoQueen && len(caught) == 1 && caught[0].Cage == "51")
	is("one of them in the bank", w.view().Queen(caught[0].Queen).Where == w.colony("S11").Colony.Subject())
	w.take(w.sub("A1")).fill("put in queen", "how=from a cage").kept()
	is("a mated queen", n("A1").Holds.Condition.Queenright())
	w.fill("mark queen", "colour=blue", "disc=7").kept()
	is("her mark", w.view().Queen(n("A1").Holds.Queen).Mark.Disc == "7")
	w.take(w.sub("B2"), w.sub("B4")).fill("add bees", "cups=2", "from=S9").kept()
	is("bees", last(n("B2").Got).Cups == 2 && last(n("B4").Got).From == w.colony("S9").Colony.Subject())
	w.fill("feed", "litres=0.4").kept()
	is("feed", n("B2").Fed.Litres == 0.4 && n("B4").Fed.Litres == 0.4)
	w.fill("give brood", "combs=1", "open=2", "from=S9").kept()
	is("brood", last(n("B2").Got).Combs == 1)
	w.fill("entrance", "area=2").kept()
	is("the entrance", n("B2").Entrance.Value == 2)
	w.fill("front", "shape=disc", "colour=blue").kept()
	is("the mark on the front", n("B4").Front.Shape == "disc")
	w.fill("paint", "stroke=act").kept()
	is("the stroke", n("B2").Paint == book.Act)
	w.fill("own cells", "found=2").kept()
	is("own cells broken down", !n("B2").OwnCells.Broken.IsZero())
	w.fill("combs", "combs=6 4").kept()
	is("the combs", n("B4").Side == 4)
	w.fill("treat", "with=oxalic acid", "wait=3").kept()
	is("a treatment", n("B2").Treated.With == "oxalic acid" && n("B2").Treated.Wait == 3)
	w.fill("robbed").kept()
	is("robbers", n("B2").Condition() == book.BeingRobbed)
	w.take(w.sub("D1")).fill("unite", "with=D3").kept()
	is("a union", n("D1").Condition() == book.Empty)
	w.take(w.sub("H2")).fill("shake out").kept()
	is("a nuc shaken out", n("H2").Condition() == book.Empty)
	w.take(w.sub("J1")).fill("lost", "how=stolen").kept()
	is("a loss", n("J1").Condition() == book.Empty)
	w.take(w.sub("K2")).fill("move", "stand=A, Hollin Ledge", "place=4").kept()
	is("another place", n("K2").Place == 4 && w.view().Stand(n("K2").Stand).Letter == "A")
	w.fill("describe nuc", "name=K9", "sides=6", "facing=SW").kept()
	is("another name", n("K9").NucNamed.Entrance == 225)
}

func last(all []book.Transfer) book.Transfer {
	if len(all) == 0 {
		return book.Transfer{}
	}
	return all[len(all)-1]
}

// TestDoneAsWrittenTicksWhatTheSheetAsks writes what the sheet asks of many nucs
// with one stroke, which one undo takes back.
func TestDoneAsWrittenTicksWhatTheSheetAsks(t *testing.T) {
	w := writing(t)
	sheet := w.Reading().Sheet()
	var many []book.Subject
	facts := 0
	for _, n := range w.Reading().Nucs {
		if k := len(sheet(n.Nuc.Nuc)); k > 0 && n.Holds.Condition == book.NoQueen {
			many, facts = append(many, n.Nuc.Nuc.Subject()), facts+k
		}
	}
	w.take(many...).run("done")
	if len(many) < 2 || len(w.effects) != 1 {
		t.Fatalf("%d nucs, %d effects", len(many), len(w.effects))
	}
	if got := len(w.effects[0].(state.Write).Deed.Entries); got != facts {
		t.Errorf("%d entries, the sheet asks %d", got, facts)
	}
	w.save()
	words := w.Pen.Done[0].Words
	if !strings.Contains(words, "more") {
		t.Errorf("undo says %q of many", words)
	}
	w.run("undo").save()
	if got := w.nuc(w.Reading().Nuc(book.NucID(many[0].UUID)).Name).Condition(); got != book.NoQueen {
		t.Errorf("after undo it holds %v", got)
	}
}

// TestEveryRecordOfABatchIsWritten begins a batch and follows its cells.
func TestEveryRecordOfABatchIsWritten(t *testing.T) {
	w := writing(t)
	w.take().fill("graft", "larvae=30", "age=20", "breeder=S3, Yarrow", "number=9").kept()
	b := func() *book.Batch { return w.view().BatchNumbered(9) }
	if b() == nil || b().Line != "Yarrow" || b().Larvae != 30 {
		t.Fatalf("batch 9 is %+v", b())
	}
	w.take(b().Batch.Subject())
	w.fill("count", "taken=26", "capped=24", "ripe=23", "culled=1", "why=crooked").kept()
	w.fill("sign", "sign=capped").kept()
	w.fill("move cells", "to=the incubator", "celsius=34.4").kept()
	w.fill("read incubator", "celsius=34.9", "humidity=70").kept()
	w.fill("along", "what=cells", "count=10").kept()
	w.fill("back", "what=cells", "count=2").kept()
	w.fill("dropped", "what=cells", "count=1").kept()
	w.fill("cage", "cages=61-63,70", "what=virgins", "bank=S11").kept()
	w.fill("count", "out=2", "dead=1").kept()
	got := b()
	if got.Taken.N != 26 || got.Capped.N != 24 || got.Ripe.N != 23 || got.Culled != 1 || len(got.Signs) != 1 || !got.Incubate ||
		len(got.Log) != 2 || got.Along != 8 || got.Lost != 1 || len(got.Caged) != 4 || got.Out != 2 || got.Dead != 1 {
		t.Errorf("the batch is %+v", got)
	}
	if q := w.view().Queen(got.Caged[3]); q.Label != "70" || q.Where != w.colony("S11").Colony.Subject() {
		t.Errorf("the fourth virgin is %+v", q)
	}
}

// TestAPlannedBatchIsGrafted: the form has it there on its day, with what was
// planned; what is grafted beside it leaves it planned.
func TestAPlannedBatchIsGrafted(t *testing.T) {
	w := writing(t)
	pen := &booktest.Pen{Zone: zone}
	batch := booktest.Batch("planned")
	pen.At("2027-05-10 08:00").Write(book.BatchPlanned{Batch: batch, Day: today, Line: "Linnet", Larvae: 33, Breeder: w.colony("S3").Colony})
	w.Book = w.Book.With(pen.Entries...)
	w.take().fill("graft", "plan=", "larvae=12", "number=90").kept()
	if b := w.view().BatchNumbered(90); b == nil || b.Batch == batch {
		t.Errorf("a graft beside the plan is %+v", b)
	}
	w.take().fill("graft", "number=91").kept()
	if b := w.view().Batch(batch); b.Number != 91 || b.Larvae != 33 || b.Line != "Linnet" || b.Breeder != w.colony("S3").Colony {
		t.Errorf("the planned batch is %+v", b)
	}
	if left := w.PlannedBatches(); len(left) != 0 {
		t.Errorf("still planned: %+v", left)
	}
}

// TestEveryRecordOfAQueenIsWritten follows queens to their ends.
func TestEveryRecordOfAQueenIsWritten(t *testing.T) {
	w := writing(t)
	w.take().fill("new queen", "name=Rook 1", "line=Rook", "born=2026-06-10", "descent=sure").kept()
	var rook, mated, other book.Subject
	for q := range w.view().Queens() {
		switch {
		case q.Name == "Rook 1":
			rook = q.Queen.Subject()
		case q.Caged() && !q.Virgin && mated.IsZero():
			mated = q.Queen.Subject()
		case q.Caged() && !q.Virgin:
			other = q.Queen.Subject()
		}
	}
	q := func(s book.Subject) *book.Queen { return w.view().Queen(book.QueenID(s.UUID)) }
	w.take(rook).fill("test", "what=gentleness", "score=3.5").kept().fill("mark", "colour=white", "clipped=yes").kept()
	w.fill("describe queen", "name=Rook 2", "line=Rook").kept()
	w.fill("queen in", "to=F3, no queen").kept()
	if r := q(rook); r.Name != "Rook 2" || len(r.Tests) != 1 || r.Tests[0].Score != 3.5 || r.Mark.Colour != "white" || !r.Mark.Clipped || r.Where != w.sub("F3") {
		t.Errorf("the queen is %+v", r)
	}
	w.take(mated).fill("bank", "bank=S11").kept().fill("hand over", "to=a neighbour", "with=yes").kept()
	if m := q(mated); m.Handed.IsZero() || m.HandedTo != "a neighbour" {
		t.Errorf("the queen handed over is %+v", m)
	}
	w.take(other).fill("queen ended", "how=died").kept()
	if q(other).How != book.QueenDied {
		t.Error("the end of a queen is not in the book")
	}
}

// TestEveryRecordOfColonyOrderPersonAndYardIsWritten writes down the rest.
func TestEveryRecordOfColonyOrderPersonAndYardIsWritten(t *testing.T) {
	w := writing(t)
	w.take().fill("new colony", "name=S99", "roles=breeder,bank", "line=Rook", "bees=30").kept()
	w.take(w.colony("S99").Colony.Subject()).fill("change colony", "name=S98", "roles=finisher").kept()
	w.fill("give brood", "combs=2", "open=8").kept().fill("search", "found=1").kept().fill("queen of colony").kept()
	w.fill("suspect", "what=foul brood").kept()
	c := w.colony("S98")
	still := w.view().Yard(c.Yard).Standstill
	if !c.Is(book.Finisher) || c.Is(book.Bank) || len(c.OpenBrood) != 1 || c.OpenBrood[0].Found != 1 || c.Queen.IsZero() || still == nil {
		t.Errorf("the colony is %+v, its yard stands still %v", c, still)
	}
	if w.fill("clear", "why=sample clean").kept(); w.view().Yard(c.Yard).Standstill != nil {
		t.Error("the suspicion has not ended")
	}

	w.take().fill("new order", "number=90", "customer=Club", "queens=4", "or=Rook, Wren", "by=+20", "queen=marked,with disc", "journey=2").kept()
	order := func() *book.Order {
		for o := range w.view().Orders() {
			if o.Number == "90" {
				return o
			}
		}
		t.Fatal("no order 90")
		return nil
	}
	w.take(order().Order.Subject()).fill("change order", "queens=5").kept().fill("serve order", "cages=21,26", "with=yes").kept()
	w.fill("claim", "queens=1", "how=dead on arrival", "cages=21").kept()
	if o := order(); o.Queens != 5 || len(o.Handed) != 2 || o.Claimed != 1 || o.Open() != 4 || len(o.Substitute) != 2 || !o.Marked || !o.Disc || o.Clipped || !o.Sent || o.Journey != 2 {
		t.Errorf("the order is %+v", o)
	}
	if w.fill("close order", "why=called off").kept(); !order().Closed {
		t.Error("the order is open")
	}

	w.take().fill("new person", "name=Jon", "hours=Mon-Fri 18:30-20:30", "phone=555").kept()
	var jon *book.Person
	for p := range w.view().People() {
		if p.Name == "Jon" {
			jon = p
		}
	}
	w.take(jon.Person.Subject()).fill("hours on", "day=+3", "hours=14-18").kept().fill("away", "from=+2", "to=+4").kept().fill("hours on", "day=+1").kept().fill("change person", "hours=Sat 08:00-12:00").kept()
	jon = w.view().Person(jon.Person)
	if len(jon.On) != 1 || jon.FreeOn(today+1).Minutes() != 0 || jon.On[0].Day != today+1 {
		t.Errorf("Jon is free on %+v", jon.On)
	}
	if len(jon.Off) != 1 || jon.Off[0].From != today+2 || jon.Free[6].Minutes() != 240 || jon.Free[1].Minutes() != 0 || jon.Phone != "555" {
		t.Errorf("Jon is %+v", jon)
	}

	w.take().fill("new yard", "name=Far Hill", "drive=25").kept()
	far := func() *book.Yard {
		for y := range w.view().Yards() {
			if strings.HasPrefix(y.Name, "Far") {
				return y
			}
		}
		t.Fatal("no such yard")
		return nil
	}
	w.take(far().Yard.Subject()).fill("change yard", "name=Far Moor", "lat=50", "lon=8").kept()
	w.fill("add boxes", "names=Z1-Z3", "combs=mini", "facing=S").kept()
	w.fill("weather", "signs=+h0", "first=today").kept().fill("forage", "forage=dearth").kept()
	w.fill("weather measured", "day=yesterday", "low=-2", "high=14", "wind=3", "rain=0", "sun=60").kept()
	w.fill("usual weather", "month=june", "low=9", "high=21", "rainy=35", "spread=4").kept()
	w.fill("weather days", "day."+(today-2).String()+"=3 12.5 - 0 60", "day."+(today+3).String()+"=- 20").kept()
	w.fill("inspected", "result=nothing found").kept().fill("paper", "name=permit", "until=2027-07-31").kept()
	y := far()
	if y.Name != "Far Moor" || y.Lat != 50 || y.Forage != book.InDearth || y.LastChecked.IsZero() || len(y.Papers) != 1 ||
		y.Papers[0].Expires != calendar.Date(2027, 7, 31) || y.Weather[today+2].Sign != book.NoFlight || w.nuc("Z2").NucNamed.Entrance != 180 {
		t.Errorf("the yard is %+v", y)
	}
	if day, june := y.Weather[today-1], y.Normals[5]; day.Low != book.Said(-2) || day.Sky != book.Said(0.6) || day.Rain != book.Said(0) || day.Forecast || june.High != book.Said(21) || june.Rainy != book.Said(0.35) || june.Spread != book.Said(4) || !june.Wind.IsZero() {
		t.Errorf("yesterday was %+v, June is %+v", day, june)
	}
	if a, b := far().Weather[today-2], far().Weather[today+3]; a.Low != book.Said(3) || a.High != book.Said(12.5) || !a.Wind.IsZero() || a.Sky != book.Said(0.6) || a.Forecast || b.High != book.Said(20) || !b.Forecast {
		t.Errorf("of the table of days is kept %+v and %+v", a, b)
	}
	w.fill("row looked", "stand=Z", "looked=3", "laying=2", "none=1").kept()
}

// TestPutOffAndNotNeeded silences findings, and tells what waiting costs.
func TestPutOffAndNotNeeded(t *testing.T) {
	w := writing(t)
	w.take(w.sub("A1"), w.sub("C3")).fill("put off", "rule=ready to hand over", "until=+4", "why=rain").kept()
	f := w.Present().About(w.sub("A1"))[0]
	if f.PutOff != today+4 || f.NeedsYou() {
		t.Errorf("put off until %v", f.PutOff)
	}
	w.take(w.sub("C3")).fill("put off", "rule=no queen", "until=+20")
	if minds := w.FormSays().Minds; len(minds) == 0 || !strings.Contains(strings.Join(minds, "; "), "virgin of its own") {
		t.Errorf("putting off a nuc without a queen says %q", minds)
	}
	if minds := strings.Join(w.FormSays().Minds, "; "); !strings.Contains(minds, "is expected to cost") || !strings.Contains(minds, " queens: ") {
		t.Errorf("and of its price %q", minds)
	}
	w.run("close form").fill("not needed", "rule=no queen").kept()
	for _, f := range w.Present().About(w.sub("C3")) {
		if f.Rule == "no queen" && f.PutOff.IsZero() {
			t.Error("what is not needed any more still asks")
		}
	}
	w.fill("note", "text=wait for batch 7").kept()
}

// TestMistakesOfAFormWriteNothing tries what cannot be meant.
func TestMistakesOfAFormWriteNothing(t *testing.T) {
	w := writing(t)
	a1, batch := w.sub("A1"), w.view().BatchNumbered(5).Batch.Subject()
	var order, emil book.Subject
	for o := range w.view().Orders() {
		order = o.Order.Subject()
	}
	for p := range w.view().People() {
		emil = p.Person.Subject()
	}
	for _, try := range []struct {
		of           []book.Subject
		record       string
		answers      []string
		field, wants string
	}{
		{[]book.Subject{a1}, "add bees", []string{"cups=two"}, "cups", "as a number"},
		{[]book.Subject{a1}, "add bees", []string{"cups=-1"}, "cups", "more than none"},
		{[]book.Subject{a1}, "look", []string{"sides=50"}, "sides", "50 sides in A1: it has 6"},
		{[]book.Subject{a1}, "feed", []string{"litres=900"}, "litres", "write 0 to"},
		{[]book.Subject{a1}, "feed", []string{"litres="}, "litres", "how much"},
		{[]book.Subject{a1}, "unite", []string{"with=S"}, "with", "fit: write more"},
		{[]book.Subject{a1}, "unite", []string{"with=Q99"}, "with", "none is called so"},
		{[]book.Subject{a1}, "catch", []string{"cages=1-3"}, "cages", "3 cages for 1 queen"},
		{[]book.Subject{a1}, "catch", []string{"when=tomorrow"}, "when", "still to come"},
		{[]book.Subject{a1}, "move", []string{"stand=A, Hollin Ledge", "place=99"}, "place", "has places 1 to"},
		{[]book.Subject{a1}, "put off", []string{"until=yesterday"}, "until", "write a day ahead"},
		{[]book.Subject{batch}, "count", []string{"taken=999"}, "taken", "larvae: write no more"},
		{[]book.Subject{batch}, "cage", []string{"cages=21"}, "cages", "sits a queen already"},
		{[]book.Subject{batch}, "sign", []string{"sign=capped", "when=yesterday"}, "when", "say the hour"},
		{nil, "new order", []string{"number=31", "customer=x", "by=+3"}, "number", "is there already"},
		{nil, "new yard", []string{"name=x", "zone=Nowhere/At"}, "zone", "no time zone"},
		{nil, "add boxes", []string{"names=I1"}, "names", "have no I"},
		{nil, "weather", []string{"signs=+?"}, "signs", "no sign of weather"},
		{nil, "weather measured", []string{"wind=2"}, "high", "low or the high"},
		{nil, "weather measured", []string{"low=20", "high=10"}, "low", "above the high"},
		{nil, "weather measured", []string{"high=20", "sun=140"}, "sun", "0 to 100"},
		{nil, "usual weather", []string{"month=may"}, "high", "low or the high"},
		{nil, "usual weather", []string{"month=may", "low=3", "spread=-1"}, "spread", "0 or more"},
		{nil, "weather days", nil, "day." + today.String(), "one day at least"},
		{nil, "weather days", []string{"day." + today.String() + "=9 3"}, "day." + today.String(), "above the high"},
		{nil, "weather days", []string{"day." + today.String() + "=9 warm"}, "day." + today.String(), "is no number"},
		{nil, "weather days", []string{"day." + today.String() + "=1 2 3 4 140"}, "day." + today.String(), "0 to 100"},
		{nil, "weather days", []string{"day." + today.String() + "=1 2 3 4 5 6"}, "day." + today.String(), "five figures"},
		{nil, "new person", []string{"name=x", "hours=Mon 20"}, "hours", "write them like"},
		{[]book.Subject{order}, "claim", []string{"queens=1"}, "how", "choose one"},
		{[]book.Subject{order}, "claim", []string{"queens=1", "how=not accepted", "cages=9999"}, "cages", "no queen in cage 9999 went with order"},
		{[]book.Subject{emil}, "hours on", []string{"day=someday"}, "day", "write it like"},
		{[]book.Subject{emil}, "hours on", []string{"hours=18-14"}, "hours", "write them like 14:00-18:00"},
		{nil, "graft", []string{"number=4"}, "number", "is there already"},
		{nil, "row looked", []string{"looked=2", "laying=3"}, "looked", "mend one"},
	} {
		w.take(try.of...).fill(try.record, try.answers...)
		wrong := w.FormSays().Answers.Mistakes[try.field]
		if wrong == "" || !strings.Contains(wrong, try.wants) {
			t.Errorf("%s %q: %s says %q, want %q in it", try.record, try.answers, try.field, wrong, try.wants)
		}
		sent := len(w.Pen.Sent)
		if w.press("Enter", state.Ctrl); len(w.Pen.Sent) != sent || w.Form == nil {
			t.Errorf("%s %q was written", try.record, try.answers)
		}
		w.run("close form")
	}
}
