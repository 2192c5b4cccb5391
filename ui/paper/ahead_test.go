package paper_test

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// paperCalled is a paper by its name.
func paperCalled(t *testing.T, name string) paperOf {
	t.Helper()
	i := slices.IndexFunc(papers(), func(p paperOf) bool { return p.name == name })
	if i < 0 {
		t.Fatalf("no paper %s", name)
	}
	return papers()[i]
}

// spoken is the text of a document without the places of its lines.
func spoken(pages []printed) string { return strings.Join(strings.Fields(all(pages)), " ") }

// TestTheWeekHasAllWork: each of the seven days stands there with its minutes, every
// task with its title, and no title or hour is cut.
func TestTheWeekHasAllWork(t *testing.T) {
	r := demoDay(t)
	for name, o := range choices() {
		pages := paperCalled(t, "week").pages(t, r, o)
		for d := r.Day; d < r.Day+7; d++ {
			_, month, day := d.Date()
			if count(pages, fmt.Sprintf("%s %d %s", d.Weekday(), day, month)) != 1 {
				t.Errorf("%s: %s has no head", name, d.Short())
			}
			for _, stop := range r.Judged().BestOn(d, r.Day).Stops {
				for _, task := range stop.Tasks {
					words := strings.Fields(task.Title)
					if !strings.Contains(spoken(pages), words[0]) {
						t.Errorf("%s: %s lacks %q", name, d.Short(), task.Title)
					}
				}
			}
		}
		if text := all(pages); strings.Contains(text, "…") {
			t.Errorf("%s: something is cut\n%s", name, text)
		}
	}
}

// TestEachTaskStandsOnTheWeekOnce: what is open already and best done on a later day of the
// week is the work of that day alone, and all that is open within the week is of one.
func TestEachTaskStandsOnTheWeekOnce(t *testing.T) {
	r := demoDay(t)
	days, open := map[string]int{}, 0
	for d := r.Day; d < r.Day+7; d++ {
		for _, stop := range r.Judged().BestOn(d, r.Day).Stops {
			for _, task := range stop.Tasks {
				for _, f := range task.Findings {
					days[fmt.Sprint(f.Rule, f.Of, f.Subjects(), f.By)]++
				}
			}
		}
	}
	for key, n := range days {
		if n != 1 {
			t.Errorf("%s stands there %d times", key, n)
		}
	}
	for _, stop := range r.Judged().Day(r.Day).Stops {
		for _, task := range stop.Tasks {
			for _, f := range task.Findings {
				if r.DayOf(f.Best) > r.Day && r.DayOf(f.Best) < r.Day+7 {
					open++
				}
				if r.DayOf(f.Best) < r.Day+7 && days[fmt.Sprint(f.Rule, f.Of, f.Subjects(), f.By)] == 0 {
					t.Errorf("%s of %v stands nowhere", f.Rule, f.Of)
				}
			}
		}
	}
	if open == 0 {
		t.Error("nothing is open that is best done on a later day: nothing was tested")
	}
}

// TestTheWeekSaysHowMuchIsTooMuch: minutes of a day stand against those free, and a
// hard hour on its day.
func TestTheWeekSaysHowMuchIsTooMuch(t *testing.T) {
	p := kitchen()
	p.At("2027-05-10 20:30").Write(
		book.HoursOn{Person: booktest.Person("Ida"), Day: today, FreeHours: book.FreeHours{From: 8 * 60, Until: 9 * 60}},
		book.HoursOn{Person: booktest.Person("Ida"), Day: today + 1},
	)
	r := reading(p, "2027-05-11 06:40")
	text := spoken(paperCalled(t, "week").pages(t, r, paper.Options{}))
	for _, want := range []string{"90 min; free 60 min 30 min too much", "Wednesday 12 May 5 min nobody is free", "Batch of Thu 20 May"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
	v := kitchen().View("2027-05-11 06:40")
	late := (&state.Book{Season: v.Season()}).On(v.On(), today+15) // in the week of the hard hour of the first
	hard := plan.New(late.Course).Planned(planned(t, late)).Ladder.Rung(plan.GiveCells).Hard
	want := "By " + hard.In(zone).Format("15:04") + ": planned for Rook 12: ripe cells must be out"
	if text := spoken(paperCalled(t, "week").pages(t, late, paper.Options{})); !strings.Contains(text, want) {
		t.Errorf("%q is missing in\n%s", want, text)
	}
}

// TestAnEveningThatIsOverHasNoWork: once the free hours of the day read are over its work is that of the
// next day, and an event of which a task of the week speaks stands there once.
func TestAnEveningThatIsOverHasNoWork(t *testing.T) {
	for moment, over := range map[string]bool{"2027-05-11 17:30": false, "2027-05-11 20:30": true} {
		v := kitchen().View(moment)
		r := (&state.Book{Season: v.Season()}).On(v.On(), v.Today())
		text := spoken(paperCalled(t, "week").pages(t, r, paper.Options{}))
		tuesday := text[strings.Index(text, "Tuesday 11 May 20")+len("Tuesday 11 May 20"):]
		tuesday = tuesday[strings.Index(tuesday, "Tuesday 11 May"):strings.Index(tuesday, "Wednesday 12 May")]
		if r.HoursOver() != over || strings.Contains(tuesday, " min;") == over {
			t.Errorf("%s: over %v, and the day has %q", moment, r.HoursOver(), tuesday)
		}
		asked := map[string]bool{}
		for d := r.Day; d < r.Day+7; d++ {
			for _, s := range r.Judged().BestOn(d, r.Day).Stops {
				for _, task := range s.Tasks {
					asked[rules.EventOf(task.Findings[0])] = true
				}
			}
		}
		for _, m := range r.Judged().Deadlines(r.Day, r.Day+6) {
			if said := m.What; asked[m.ID] && !m.Hard && strings.Contains(text, said) {
				t.Errorf("%s: %q is a task of the week, and an event too", moment, said)
			}
		}
	}
}

func planned(t *testing.T, r *state.Reading) book.BatchPlan {
	t.Helper()
	b, ok := r.View.BatchPlan(next)
	if !ok {
		t.Fatal("the batch is not planned")
	}
	return b
}

// TestThePlanSheetHasAllOfThePlan: steps with their days, the hard hour, amounts,
// givers, minutes and promises, as the plan has them.
func TestThePlanSheetHasAllOfThePlan(t *testing.T) {
	r := demoDay(t)
	p := plan.New(r.Course).Planned(planned(t, r))
	want := []string{"By " + p.Ladder.Rung(plan.GiveCells).Hard.In(zone).Format("Mon 2 Jan 15:04"), "for order 71", "Moving bees and selling queens is regulated"}
	for _, rung := range p.Ladder.Rungs {
		want = append(want, strings.ToUpper(rung.Step.String()[:1])+rung.Step.String()[1:]+" "+rung.Best.Short())
	}
	for _, n := range p.Needs {
		want = append(want, strings.ToUpper(n.String()[:1])+n.String()[1:])
	}
	for _, given := range p.Given {
		for _, g := range given.Gifts {
			want = append(want, g.Colony.Name)
		}
		for _, g := range given.Rest {
			want = append(want, g.Colony.Name+" rests until "+g.Rests.Short())
		}
	}
	for _, m := range p.Minutes {
		want = append(want, fmt.Sprintf("%.0f min", m.Minutes))
	}
	for _, promise := range p.Chances.Promises() {
		want = append(want, fmt.Sprintf("%.0f of 100 %d queens", 100*promise.Sure, promise.Queens))
	}
	for name, o := range choices() {
		text := spoken(paperCalled(t, "plan").pages(t, r, o))
		for _, w := range want {
			if !strings.Contains(text, w) {
				t.Errorf("%s: %q is missing in\n%s", name, w, text)
			}
		}
		if strings.Contains(text, "…") {
			t.Errorf("%s: something is cut", name)
		}
	}
	if _, err := paper.Plan(t.Context(), &bytes.Buffer{}, r, booktest.Batch("none"), paper.Options{}); err == nil || !strings.Contains(err.Error(), "no such batch is planned") {
		t.Errorf("a batch that is not planned: %v", err)
	}
}

// TestThePlanSheetHasTwoPages: of a graft that wants bees and brood of many colonies; who has the time for a
// day stands beside its first minutes, once.
func TestThePlanSheetHasTwoPages(t *testing.T) {
	r := demoDay(t)
	p := plan.New(r.Course).Planned(planned(t, r))
	if pages := paperCalled(t, "plan").pages(t, r, paper.Options{}); len(pages) != 2 {
		t.Errorf("%d pages", len(pages))
	}
	text := spoken(paperCalled(t, "plan").pages(t, r, paper.Options{}))
	for _, day := range p.ByPerson {
		for _, part := range day.Parts {
			if said := fmt.Sprintf("%s %.0f", part.Who.Name, part.Minutes); !strings.Contains(text, said) {
				t.Errorf("%s: %q is missing in\n%s", day.Day, said, text)
			}
		}
		if said := fmt.Sprintf("nobody for %.0f min", day.Over); day.Over >= 1 != strings.Contains(text, said) {
			t.Errorf("%s: %q in\n%s", day.Day, said, text)
		}
	}
	if len(p.ByPerson) < 5 {
		t.Errorf("%d days", len(p.ByPerson))
	}
}

// TestWhatIsDoneIsTicked: a step that was made ready has a mark in its box.
func TestWhatIsDoneIsTicked(t *testing.T) {
	p := kitchen()
	before := paperCalled(t, "plan").bytes(t, reading(p, "2027-05-17 20:00"))
	p.At("2027-05-17 19:00").Write(book.BatchReadied{Batch: next, Step: book.BreederConfined})
	if after := paperCalled(t, "plan").bytes(t, reading(p, "2027-05-17 20:00")); bytes.Equal(before, after) {
		t.Error("the sheet is the same when the breeder is confined")
	}
}

func (p paperOf) bytes(t *testing.T, r *state.Reading) []byte {
	t.Helper()
	var out bytes.Buffer
	if _, err := p.print(t.Context(), &out, r, paper.Options{}); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// TestTheBuyingListHasAllBatches: every good with the sum, and the part of each batch and order
// with its last day to order.
func TestTheBuyingListHasAllBatches(t *testing.T) {
	r := demoDay(t)
	text := spoken(paperCalled(t, "buying").pages(t, r, paper.Options{Large: true}))
	for _, want := range []string{"Cell cups 84", "graft Thu 20 May, Rook 12 64", "graft Thu 10 Jun 20 Thu 27 May", "was due Thu 6 May", "Number discs, yellow 3", "order 71 2"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
	bare := (&booktest.Pen{}).Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	if _, err := paper.Buying(t.Context(), &bytes.Buffer{}, reading(bare, "2027-05-11 06:40"), paper.Options{}); err == nil || !strings.Contains(err.Error(), "plan a batch first") {
		t.Errorf("without plans: %v", err)
	}
}

// TestCagesReadBack: the code on each label holds the id of the queen, or of the nuc in
// which she still lays, as another library reads it; beside it stand line, mark, day
// and order.
func TestCagesReadBack(t *testing.T) {
	const skip = 1
	for where, r := range map[string]*state.Reading{"demo": demoDay(t), "hill": reading(kitchen(), "2027-05-11 06:40")} {
		for page, s := range sheets {
			var out bytes.Buffer
			if _, err := paper.Cages(t.Context(), &out, r, book.OrderID{}, skip, paper.Options{Page: page}); err != nil {
				t.Fatal(err)
			}
			first, at := read(t, out.Bytes())[0], skip
			for _, o := range handover.New(plan.New(r.Course)).Orders {
				for _, q := range o.Queens {
					a := bar{s.left + float64(at%s.columns)*s.pitch, s.top + float64(at/s.columns)*s.h, s.w, s.h}
					want := "urn:uuid:" + q.ID.String()
					if q.ID.IsZero() {
						want = "urn:uuid:" + q.Nuc.String()
					}
					if got := decode(t, first, a); got != want {
						t.Errorf("%s: label %d reads %q, want %q", where, at+1, got, want)
					}
					for _, words := range []string{q.Line, "order " + o.Order.Number, "attendants: _____"} {
						if !first.has(a, words) {
							t.Errorf("%s: label %d lacks %q", where, at+1, words)
						}
					}
					at++
				}
			}
			if at == skip {
				t.Errorf("%s: no queen is there for an order", where)
			}
		}
	}
}

// TestMarksOfCages: a mark that is on her is told, else that she is to be marked as
// the order wants it.
func TestMarksOfCages(t *testing.T) {
	r := reading(kitchen(), "2027-05-11 06:40")
	var out bytes.Buffer
	if _, err := paper.Cages(t.Context(), &out, r, book.OrderID{}, 0, paper.Options{}); err != nil {
		t.Fatal(err)
	}
	text := all(read(t, out.Bytes()))
	for _, want := range []string{"yellow disc 14", "caught 9 May, cage 3", "mark yellow, disc: ____", "catch 20 May, A3"} { // 2027 is yellow
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
	if _, err := paper.Cages(t.Context(), &out, r, booktest.Order("none"), 0, paper.Options{}); err == nil || !strings.Contains(err.Error(), "no order is open") {
		t.Errorf("an order that there is not: %v", err)
	}
}

// columnOf is what stands below a heading, flush with it, on the pages of a title.
func columnOf(pages []printed, title, heading string) (column printed) {
	for _, p := range pages {
		if !strings.HasPrefix(p.texts[0].text, title) {
			continue
		}
		i := slices.IndexFunc(p.texts, func(w word) bool { return w.text == heading })
		for _, w := range p.texts {
			if i >= 0 && math.Abs(w.x-p.texts[i].x) < 1 {
				column.texts = append(column.texts, w)
			}
		}
	}
	return column
}

// TestEachNucIsOnOneSheet: what is done stands on one person's sheet, what waits on
// the last page, with the day until which it can.
func TestEachNucIsOnOneSheet(t *testing.T) {
	r := demoDay(t)
	day, err := crew.Plan(r.Judged(), r.Day, crew.HandsOf(r.View, r.Day, 2, 1.5))
	if err != nil || len(day.Sheets) < 2 || len(day.Waits) == 0 {
		t.Fatalf("%d sheets, %d wait, %v", len(day.Sheets), len(day.Waits), err)
	}
	var out bytes.Buffer
	if _, err := paper.Crew(t.Context(), &out, r, day, paper.Options{}); err != nil {
		t.Fatal(err)
	}
	pages := read(t, out.Bytes())
	under := func(title string) string { // what stands on the pages of a title
		return spoken(slices.DeleteFunc(slices.Clone(pages), func(p printed) bool { return !strings.HasPrefix(p.texts[0].text, title) }))
	}
	for _, sheet := range day.Sheets {
		for _, v := range sheet.Visits {
			if name := r.View.Yard(v.Yard).Name; !strings.Contains(under(sheet.Name), name) {
				t.Errorf("the sheet of %s lacks %s", sheet.Name, name)
			}
		}
	}
	last := under("What waits")
	costs := spoken([]printed{columnOf(pages, "What waits", "what waiting costs")})
	for _, w := range day.Waits {
		if !strings.Contains(last, strings.Fields(w.Task.Title)[0]) || !strings.Contains(costs, w.Price.Why) {
			t.Errorf("%q is not told to wait:\n%s", w.Task.Title, last)
		}
		if by := calendar.DayOf(w.Task.By, zone); !w.Task.By.IsZero() && by > r.Day && !strings.Contains(last, by.Short()[:3]) {
			t.Errorf("%q waits until %s, which is not told", w.Task.Title, by.Short())
		}
	}
	if _, err := paper.Crew(t.Context(), &out, r, crew.Day{On: r.Day}, paper.Options{}); err == nil || !strings.Contains(err.Error(), "nobody is there") {
		t.Errorf("without people: %v", err)
	}
}

// TestSheetsOfPeopleTakeAlong: a sheet has what its person takes along, whoever has nothing
// to do has none and is named on those of the others; where nobody has anything to do, and
// nothing waits, one page says so.
func TestSheetsOfPeopleTakeAlong(t *testing.T) {
	r := demoDay(t)
	day, err := crew.Plan(r.Judged(), r.Day, crew.HandsOf(r.View, r.Day, 2, 1.5))
	if err != nil {
		t.Fatal(err)
	}
	working, kits := len(day.Sheets), day.Kits(r.Judged())
	day.Sheets = append(day.Sheets, crew.Sheet{Hand: crew.Hand{Name: "Zoe K."}})
	sheets := func(day crew.Day) []printed {
		var out bytes.Buffer
		if _, err := paper.Crew(t.Context(), &out, r, day, paper.Options{}); err != nil {
			t.Fatal(err)
		}
		return read(t, out.Bytes())
	}
	packed := 0
	pages := sheets(day)
	for i, sheet := range day.Sheets[:working] {
		said := spoken(slices.DeleteFunc(slices.Clone(pages), func(p printed) bool { return !strings.HasPrefix(p.texts[0].text, sheet.Name) }))
		for _, k := range kits[i] {
			packed++
			if !strings.Contains(said, k.Goods) {
				t.Errorf("the sheet of %s lacks %s", sheet.Name, k.Goods)
			}
		}
		if !strings.Contains(said, "Zoe K. is free") {
			t.Errorf("the sheet of %s does not say who is free:\n%s", sheet.Name, said)
		}
	}
	if packed == 0 {
		t.Error("nothing is taken along on any sheet")
	}
	for _, p := range pages {
		if strings.HasPrefix(p.texts[0].text, "Zoe K.") {
			t.Error("a sheet for who has nothing to do")
		}
	}
	idle := sheets(crew.Day{On: r.Day, Sheets: day.Sheets[working:], Exact: true})
	if said := spoken(idle); len(idle) != 1 || !strings.Contains(said, "Zoe K. is free") || !strings.Contains(said, "Nothing waits") {
		t.Errorf("nobody has anything to do: %d pages\n%s", len(idle), said)
	}
}
