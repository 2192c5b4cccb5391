package state

import (
	"cmp"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// PlanSheet is a wish with all that was found: dates, amounts, how sure, and why.
type PlanSheet struct {
	plan.Answer
	Costs    plan.Cost            // the misfortune that costs most; of no link where none costs a queen
	Needs    []plan.Need          // of all its grafts
	Each     [][]plan.Need        // of each of them
	MadeUp   []int                // nucs of each graft that are made up; the others are alive and keep their bees
	Days     []PlanDay            // minutes by day, from the first that has any but for drone combs
	Work     float64              // minutes of the wish from today on, those for drone combs too
	People   []plan.PersonMinutes // who has time for how much of that; none where no hours are known
	Over     float64              // minutes of it that nobody has time for
	Shown    plan.Chances         // of how many queens are there by the day; by the nearest, where no graft is in time
	Stages   [][]plan.Stage       // of each graft, after each link of its chain, by the same day
	Raises   []plan.Raise
	ByLarvae []plan.ByLarvae // how sure it is by larvae; none where no number says it
	Two      float64         // the chance with two grafts a week apart; 0 where the wish has two
	LayBy    calendar.Day    // nine in ten of those who ever lay do so by then
	Again    PlanAgain       // a graft so early that there is time for another if it fails
	ADay     float64         // the chance when the graft is a day late
	Young    bool            // and it is none, for nobody is old enough by the day then
	Late     plan.CellsLate  // what it costs to give the cells of the first batch a day late
	Given    [][]plan.Given  // who gives bees and brood, of each graft
	Others   []PlanOther     // other days for the graft
	Last     calendar.Day    // last graft of the season that makes sense; 0: not known
	After    string          // why no later one does
	NoLast   string          // why it would not be known
	Minds    []plan.Mind

	key planKey
}

// PlanDay is the keeper's minutes on a day: of what is in the book already, and of
// the wish.
type PlanDay struct {
	Day         calendar.Day
	Book, Wish  float64
	Free        float64
	Told, Rests bool // people's hours are known; nobody is free
}

// planSheetOf reckons the answer and what stands around it.
func planSheetOf(key planKey) *PlanSheet {
	p := key.of.planner()
	s := answered(p, key)
	var grafts []plan.Graft
	for _, b := range s.Batches {
		grafts = append(grafts, b.Graft)
	}
	late := s.Batches[len(s.Batches)-1].Late
	s.Raises = s.Rates.Raises(s.Queens, late, grafts...)
	if c, ok := s.Rates.Dearest(s.Sure, grafts...); ok {
		s.Costs = c
	}
	s.ByLarvae = s.Answer.ByLarvae()
	s.two(p)
	s.late(p)
	s.others(p)
	if s.Last, _ = p.LastOf(s.Yard, s.Batches[len(s.Batches)-1].Day); s.Last != 0 {
		s.After, _ = p.After(s.Yard, s.Last)
	}
	s.NoLast = p.NoLast(s.Yard)
	s.Minds = p.Minds(s.Answer)
	return s
}

// answered is an answer with what follows from it, without what else could be done:
// quick enough to follow a drag.
func answered(p *plan.Planner, key planKey) *PlanSheet {
	s := &PlanSheet{Answer: p.Possible(key.wish), key: key}
	first := s.Batches[0]
	for _, b := range s.Batches {
		g := b.Graft
		if s.nearest() {
			g = b.For(s.Day(), s.Laying)
		}
		s.Stages = append(s.Stages, s.Rates.Along(g))
	}
	if s.Shown = s.Chances; s.nearest() {
		s.Shown = s.Then
	}
	s.LayBy = first.Laid.Day(laysBy)
	s.days(p, key.of)
	s.Each = p.NeedsOf(s.Wanting()...)
	for _, w := range s.Wanting() {
		s.MadeUp = append(s.MadeUp, p.MadeUp(w.Ladder, w.Size).Nucs)
	}
	s.Needs = plan.Together(s.Each...)
	s.Given = p.Given(s.Wanting()...)
	return s
}

// nearest tells whether no graft is in time for the day that was said, so that the nearest is shown.
func (s *PlanSheet) nearest() bool { return !s.InTime && s.key.wish.Graft == 0 }

// laysBy is the share of queens by whose day of laying a batch is said to lay.
const laysBy = 0.9

// two is the same wish with two grafts a week apart.
func (s *PlanSheet) two(p *plan.Planner) {
	if s.Wish.Grafts > 1 {
		return
	}
	w := s.key.wish
	w.Grafts = 2
	a := p.Answer(w)
	s.Two = a.Chance
	if sure := a.Insured(); sure > s.Chance {
		s.Again = PlanAgain{a.Batches[0].Day, a.Batches[1].Day, sure}
	}
}

// PlanAgain is a graft, the day of another one that is done only if it fails, and how sure
// both are. The zero PlanAgain is none that is surer than the wish.
type PlanAgain struct {
	Day, Other calendar.Day
	Chance     float64
}

// DayLate is the chance when the graft is a day late, in words: where it is none since
// nobody is old enough by then, that.
func (s *PlanSheet) DayLate() string {
	if s.Young {
		return "too young on " + dayMonthFrom(s.By, s.key.of.Day)
	}
	return plan.OfHundred(s.ADay)
}

// fixed is the wish with its amounts as they were found, for a graft on a day.
func (s *PlanSheet) fixed(graft calendar.Day) plan.Wish {
	w := s.key.wish
	w.Graft, w.By, w.Larvae, w.Nucs, w.Sure = graft, s.By, s.Larvae, s.Nucs, s.Sure
	return w
}

// late is what a day's delay costs: of the graft, and of giving the cells.
func (s *PlanSheet) late(p *plan.Planner) {
	a := p.Answer(s.fixed(s.Batches[0].Day + 1))
	last := a.Batches[len(a.Batches)-1]
	s.ADay, s.Young = a.Chance, !s.Laying && plan.OfHundred(a.Chance) == plan.OfHundred(0) && last.Rung(plan.Ready).From > s.By
	s.Late = p.CellsLate(s.Batches[0])
}

// days are the minutes of the wish beside those of the book.
func (s *PlanSheet) days(p *plan.Planner, r *Reading) {
	wish := map[calendar.Day]float64{}
	var all []plan.Minutes
	from, to := s.By, s.By
	for _, b := range s.Batches {
		for _, m := range p.Ahead(b.Ladder, b.Size) {
			all = append(all, m)
			wish[m.Day] += m.Minutes
			s.Work += m.Minutes
			if m.Step != plan.DroneComb {
				from = min(from, m.Day)
			}
			to = max(to, m.Day)
		}
	}
	s.People, s.Over = plan.PeopleOf(p.ByPerson(all))
	own := r.judged.WorkOf(s.key.wish.Not.Subject(), from, to) // what is on the plan gives way to the wish
	for d := from; d <= to; d++ {
		w := r.WorkOn(d)
		s.Days = append(s.Days, PlanDay{Day: d, Book: max(0, w.Minutes-own[d]), Wish: wish[d], Free: w.Free, Told: r.View.HoursTold(), Rests: w.Free == 0})
	}
}

// Hours are the keeper's hours for the wish, as far as its work can still be done.
func (s *PlanSheet) Hours() float64 { return s.Work / 60 }

// OverDays is on how many days of the wish its work and that of the book is longer
// than the time there is; told is false where nobody said what time there is.
func (s *PlanSheet) OverDays() (n int, told bool) {
	for _, d := range s.Days {
		told = told || d.Told
		n += boolInt(d.Over())
	}
	return n, told
}

// Over tells whether the day is longer with the wish than the time there is.
func (d PlanDay) Over() bool { return d.Told && d.Wish > 0 && d.Book+d.Wish > d.Free }

// Peaks are the places of the longest days of the wish, three at most, each so many days
// from the next at least.
func (s *PlanSheet) Peaks(apart int) (at []int) {
	const most, share = 3, 0.4
	all := func(i int) float64 { return s.Days[i].Book + s.Days[i].Wish }
	order := make([]int, len(s.Days))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(all(b), all(a)) })
	for _, i := range order {
		near := slices.ContainsFunc(at, func(j int) bool { return max(i-j, j-i) < apart })
		if len(at) == most || all(i) < share*all(order[0]) {
			break
		}
		if !near && s.Days[i].Wish > 0 {
			at = append(at, i)
		}
	}
	return at
}

// MostMinutes is how many minutes a drawing of the days has room for: the longest day, and
// the time there is on those days on which that is not far above.
func (s *PlanSheet) MostMinutes() float64 {
	const least, far = 60, 2
	longest, free := 0.0, 0.0
	for _, d := range s.Days {
		longest = max(longest, d.Book+d.Wish)
	}
	for _, d := range s.Days {
		if d.Told && d.Free <= far*longest {
			free = max(free, d.Free)
		}
	}
	return max(least, longest, free)
}
