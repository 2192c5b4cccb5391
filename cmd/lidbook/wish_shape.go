package main

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// wishShape is what becomes of a wish, in JSON. Chances are shares of one.
type wishShape struct {
	Queens   int            `json:"queens"`
	By       string         `json:"by"`
	Laying   bool           `json:"layingBy"`
	Sure     float64        `json:"sure"`
	Line     string         `json:"line,omitempty"`
	Yard     string         `json:"yard"`
	Larvae   int            `json:"larvae"` // of each graft, or of the first
	Nucs     int            `json:"nucs"`
	Free     int            `json:"nucsFree"`
	Turns    int            `json:"nucsServeTimes"` // 1: all grafts share them
	InTime   bool           `json:"inTime"`
	Nearest  string         `json:"inTimeFor"`
	HandLast string         `json:"graftLast,omitempty"` // the latest in time, no day in hand; of one graft whose day nobody said
	Chance   float64        `json:"chance"`
	Expected int            `json:"expected"`
	Then     int            `json:"expectedByNearest"` // by that day; as expected, where a graft is in time
	Limit    string         `json:"limit,omitempty"`
	Most     int            `json:"mostThatCanBePromised,omitempty"`
	Enough   int            `json:"nucsEnough,omitempty"`
	With     int            `json:"larvaeEnough,omitempty"`          // with those nucs
	Insured  float64        `json:"chanceOneAndInsurance,omitempty"` // of one graft for all nucs, the others only if it fails
	For      int            `json:"larvaeOfOne,omitempty"`           // of that one
	Minds    []mindShape    `json:"minds"`
	Passed   string         `json:"graftPassedOver,omitempty"`   // in time by its days, and the weather lets too few lay
	Last     string         `json:"lastGraft,omitempty"`         // of the season, that makes sense
	After    string         `json:"afterLastGraft,omitempty"`    // why no later one does
	NoLast   string         `json:"lastGraftNotKnown,omitempty"` // why
	Promises []promiseShape `json:"promises"`
	ByLarvae []larvaeShape  `json:"byLarvae"` // none where larvae are said graft by graft
	Raises   []raiseShape   `json:"raises"`
	Dearest  *costShape     `json:"costsMost,omitempty"`
	Late     []lateGraft    `json:"graftedLate"`
	Grafts   []graftShape   `json:"grafts"`
	Cup      cupShape       `json:"cup"`                     // of bees
	Together []needShape    `json:"needsTogether,omitempty"` // of several grafts
	Assumes  []string       `json:"assumes"`                 // what is short, as if it were there
	Days     []minutesShape `json:"minutes"`
	People   []dayPartShape `json:"byPerson"` // none where nobody's hours are known

	graftBy  string       // by when to graft, with the days in hand
	orders   []string     // numbers of those it is evidently for
	hourSaid bool         // by the keeper, for the graft
	ends     practice.Key // see [plan.Planner.After]
	tooLate  string       // that it is not in time
	agesFor  int          // days of age from which a queen is ready
}

// promiseShape is how many queens may be promised with a certainty, in JSON.
type promiseShape struct {
	Sure   float64 `json:"sure"`
	Queens int     `json:"queens"`
}

// raiseShape is what could make it surer, in JSON.
type raiseShape struct {
	Change string  `json:"change"`
	Chance float64 `json:"chance"`
	Gain   float64 `json:"gain"`
}

// costShape is the misfortune that costs most, in JSON: how many could be promised as
// surely as is wished without it, and with it.
type costShape struct {
	What    string `json:"what"`
	Without int    `json:"promisedWithout"`
	With    int    `json:"promised"`
}

// lateGraft is the chance when the grafts are some days late, in JSON.
type lateGraft struct {
	Days   int     `json:"daysLate"`
	Chance float64 `json:"chance"`
}

// graftShape is one graft of a wish, in JSON.
type graftShape struct {
	Graft      string      `json:"graft"`
	Queens     int         `json:"queens"` // of those wished, its share
	Larvae     int         `json:"larvae"`
	Nucs       int         `json:"nucs"`
	MadeUp     int         `json:"nucsMadeUp"` // of them; the others are alive and keep their bees
	Steps      []stepShape `json:"steps"`
	Needs      []needShape `json:"needs"`
	Gives      []giftShape `json:"gives"` // for its nucs
	ShortCups  float64     `json:"shortCups"`
	ShortCombs float64     `json:"shortCombs"`
	Rests      []restShape `json:"rests"`      // who gives none for them
	Starters   []giftShape `json:"startersOf"` // who gives the bees of its starters
	ShortBees  float64     `json:"startersShortCups"`
	CellsLate  float64     `json:"cellsLostGivenADayLate"`
	LateAt     string      `json:"cellsGivenADayLateAt"`
	LateHard   string      `json:"cellsCagedBefore,omitempty"`
	LateQueens float64     `json:"queensFewerGivenADayLate"`
	wishDates

	lateBy, late string // how late cells are given then, and what it costs, in words
}

// stepShape is a step of a batch with its days, in JSON.
type stepShape struct {
	Step   string `json:"step"`
	From   string `json:"from"`
	Best   string `json:"best"`
	By     string `json:"by"`
	Hard   string `json:"hard,omitempty"`
	Nobody bool   `json:"nobodyFree,omitempty"`
}

// needShape is an amount that a batch needs, in JSON; have is there where the book
// knows.
type needShape struct {
	What    string      `json:"what"`
	Amount  float64     `json:"amount"`
	Unit    string      `json:"unit,omitempty"`
	From    string      `json:"from"`
	To      string      `json:"to"`
	OrderBy string      `json:"orderBy,omitempty"`
	Have    *float64    `json:"have,omitempty"`
	Short   float64     `json:"short"`
	Kinds   []kindShape `json:"kinds,omitempty"` // of nucs and of combs, where there are several

	kindsSaid string
	orderBy   calendar.Day // 0: it is not bought
}

// kindShape is so much of a kind, in JSON.
type kindShape struct {
	Kind   string  `json:"kind"`
	Amount float64 `json:"amount"`
}

// cupShape is the keeper's cup of bees, in JSON.
type cupShape struct {
	Litres float64 `json:"litres"`
	Grams  float64 `json:"grams"`
}

// giftShape is what one colony gives, in JSON.
type giftShape struct {
	Colony string  `json:"colony"`
	Cups   float64 `json:"cups"`
	Combs  float64 `json:"combs"`
	Drones bool    `json:"droneColony,omitempty"` // it gives for want of others
}

// restShape is a colony that gives nothing, as it gave within the week, in JSON.
type restShape struct {
	Colony string `json:"colony"`
	Until  string `json:"until"`
}

// minutesShape is the keeper's time for a step, in JSON, and what is told of its day.
type minutesShape struct {
	Day     string  `json:"day"`
	Step    string  `json:"step"`
	Minutes float64 `json:"minutes"`
	Book    float64 `json:"bookMinutes"` // other work of that day
	Over    float64 `json:"overMinutes"` // by how much all work of the day is longer than the time there is
}

// dayPartShape is the work of a day by person, in JSON.
type dayPartShape struct {
	Day     string      `json:"day"`
	Minutes float64     `json:"minutes"`
	People  []partShape `json:"people"`
	Over    float64     `json:"overMinutes"` // that nobody has
}

// partShape is one person's part of it, in JSON.
type partShape struct {
	Name    string  `json:"name"`
	Minutes float64 `json:"minutes"`
	Free    float64 `json:"freeMinutes"`
}

// late says that its queens are not there in time: by when they are, of a graft whose day was said.
func (s *wishShape) late(v *book.View, w plan.Wish, a plan.Answer) {
	said := func(d calendar.Day) string { return d.ShortFrom(v.Today()) }
	switch {
	case a.InTime:
	case w.Graft != 0:
		s.tooLate = "not in time: its queens are to be expected by " + said(a.Nearest)
	default:
		s.tooLate = a.TooLate().Said(said)
	}
}

func shapeOfParts(days []plan.DayParts) []dayPartShape {
	all := []dayPartShape{}
	for _, d := range days {
		s := dayPartShape{d.Day.String(), round(d.Minutes), []partShape{}, round(d.Over)}
		for _, t := range d.Parts {
			s.People = append(s.People, partShape{t.Who.Name, round(t.Minutes), t.Free})
		}
		all = append(all, s)
	}
	return all
}

func shapeOfWish(p *plan.Planner, a plan.Answer) wishShape {
	s := wishShape{
		Queens: a.Queens, By: a.By.String(), Laying: a.Laying, Sure: a.Sure, Line: a.Line, Yard: p.View().Yard(a.Yard).Name, Larvae: a.Larvae, Nucs: a.Nucs,
		Free: a.Free, Turns: a.Turns(), InTime: a.InTime, Nearest: a.Nearest.String(), Chance: thousandth(a.Chance), Expected: a.Chances.Quantile(0.5), Then: a.Then.Quantile(0.5),
		Passed: a.Passed.String(), Minds: []mindShape{}, Promises: []promiseShape{}, Raises: []raiseShape{}, Grafts: []graftShape{}, Days: []minutesShape{},
	}
	s.ByLarvae = shapeByLarvae(a)
	for _, o := range handover.OrdersFor(p, a.Queens, a.Line, a.By) {
		s.orders = append(s.orders, o.Number)
	}
	s.hourSaid, s.agesFor = a.Minute > 0, p.View().Numbers().Days(practice.LeastAgeAtHandOver)
	if a.Sizing.Limit != plan.NoLimit {
		s.Limit, s.Most, s.Enough, s.With = a.Sizing.Limit.String(), a.Sizing.Most, a.Sizing.Nucs, a.Sizing.With
	}
	if insured := a.Insured(); insured > 0 {
		s.Insured, s.For = thousandth(insured), a.Sizing.Larvae
	}
	for _, one := range a.Chances.Promises() {
		s.Promises = append(s.Promises, promiseShape{one.Sure, one.Queens})
	}
	var grafts []plan.Graft
	needs, given := p.NeedsOf(a.Wanting()...), p.Given(a.Wanting()...)
	var ahead []plan.Minutes
	for i, b := range a.Batches {
		grafts = append(grafts, b.Graft)
		s.Grafts = append(s.Grafts, shapeOfGraft(p, b, needs[i], given[i]))
		s.Grafts[len(s.Grafts)-1].wishDates = datesOf(p, b, a.Yard)
		ahead = append(ahead, p.Ahead(b.Ladder, b.Size)...)
	}
	slices.SortStableFunc(ahead, func(a, b plan.Minutes) int { return cmp.Compare(a.Day, b.Day) })
	for _, m := range ahead {
		s.Days = append(s.Days, minutesShape{Day: m.Day.String(), Step: m.Step.String(), Minutes: round(m.Minutes)})
	}
	for i, b := range p.ToBook(a) {
		s.Grafts[i].Queens = b.Queens
	}
	cup := plan.CupOf(p.View().Numbers())
	s.Cup = cupShape{thousandth(cup.Litres), round(cup.Grams)}
	s.People = shapeOfParts(p.ByPerson(ahead))
	if len(a.Batches) > 1 {
		s.Together = shapeOfNeeds(plan.Together(needs...))
	}
	s.Assumes = append([]string{}, plan.Assumed(plan.Together(needs...))...)
	last := a.Batches[len(a.Batches)-1]
	s.last(p, a.Yard, last.Day)
	for _, m := range p.Minds(a) {
		s.Minds = append(s.Minds, mindShape{m.Why, m.Do, m.By})
	}
	for _, r := range a.Rates.Raises(a.Queens, last.Late, grafts...) {
		s.Raises = append(s.Raises, raiseShape{r.Change.String(), thousandth(r.Chance), thousandth(r.Gain)})
	}
	if c, ok := a.Rates.Dearest(a.Sure, grafts...); ok {
		s.Dearest = &costShape{c.String(), c.Without, c.With}
	}
	s.Late = graftedLate(p, a)
	return s
}

// graftedLate is how sure a wish is when its first graft is a day late, and more.
func graftedLate(p *plan.Planner, a plan.Answer) (all []lateGraft) {
	const lateDays = 3
	for late := 1; late <= lateDays; late++ {
		w := a.Wish
		w.Graft = a.Batches[0].Day + calendar.Day(late)
		all = append(all, lateGraft{late, thousandth(p.Answer(w).Chance)})
	}
	return all
}

func shapeOfGraft(p *plan.Planner, b plan.Batch, needs []plan.Need, given []plan.Given) graftShape {
	zone := p.View().Zone()
	s := graftShape{Graft: stamp(b.Ladder.Graft, zone), Larvae: b.Graft.Larvae, Nucs: b.Size.Nucs, MadeUp: p.MadeUp(b.Ladder, b.Size).Nucs, Steps: []stepShape{}}
	for _, r := range b.Rungs {
		s.Steps = append(s.Steps, stepShape{r.Step.String(), r.From.String(), r.Best.String(), r.By.String(), stamp(r.Hard, zone), r.NobodyFree})
	}
	s.Needs = shapeOfNeeds(needs)
	s.gives(given)
	late := p.CellsLate(b)
	s.CellsLate, s.LateAt, s.LateHard, s.LateQueens = round(late.Lost), stamp(late.At, zone), stamp(late.Hard, zone), round(late.Queens)
	s.lateBy, s.late = late.Late(), late.Words(zone)
	return s
}

func shapeOfNeeds(needs []plan.Need) []needShape {
	all := []needShape{}
	for _, n := range needs {
		one := needShape{
			What: n.String(), Amount: round(n.Amount), Unit: n.Unit(), From: n.From.String(), To: n.To.String(), OrderBy: n.OrderBy.String(), Short: round(n.Short()),
			kindsSaid: n.KindsSaid(), orderBy: n.OrderBy,
		}
		for _, k := range n.Kinds {
			one.Kinds = append(one.Kinds, kindShape{k.Kind, round(k.Amount)})
		}
		if n.Known {
			have := round(n.Have)
			one.Have = &have
		}
		all = append(all, one)
	}
	return all
}

// gives tells who gives for its starters and its nucs.
func (s *graftShape) gives(given []plan.Given) {
	s.Gives, s.Rests, s.Starters = []giftShape{}, []restShape{}, []giftShape{}
	for _, g := range given {
		all := []giftShape{}
		for _, one := range g.Gifts {
			all = append(all, giftShape{one.Colony.Name, round(one.Cups), round(one.Combs), one.OfDrones()})
		}
		if g.For == plan.SetUpStarter {
			s.Starters, s.ShortBees = all, round(g.ShortCups)
			continue
		}
		s.Gives, s.ShortCups, s.ShortCombs = all, round(g.ShortCups), round(g.ShortCombs)
		for _, r := range g.Rest {
			s.Rests = append(s.Rests, restShape{r.Colony.Name, r.Rests.String()})
		}
	}
}
