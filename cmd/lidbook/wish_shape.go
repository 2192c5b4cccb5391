package main

import (
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
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
	InTime   bool           `json:"inTime"`
	Nearest  string         `json:"inTimeFor"`
	Chance   float64        `json:"chance"`
	Expected int            `json:"expected"`
	Limit    string         `json:"limit,omitempty"`
	Most     int            `json:"mostThatCanBePromised,omitempty"`
	Enough   int            `json:"nucsEnough,omitempty"`
	Insured  float64        `json:"chanceOneAndInsurance,omitempty"` // of one graft for all nucs, the others only if it fails
	For      int            `json:"larvaeOfOne,omitempty"`           // of that one
	Minds    []mindShape    `json:"minds"`
	Passed   string         `json:"graftPassedOver,omitempty"` // in time by its days, and the weather lets too few lay
	Last     string         `json:"lastGraft,omitempty"`       // of the season, that makes sense
	Promises []promiseShape `json:"promises"`
	Raises   []raiseShape   `json:"raises"`
	Dearest  *costShape     `json:"costsMost,omitempty"`
	Late     []lateGraft    `json:"graftedLate"`
	Grafts   []graftShape   `json:"grafts"`
	Days     []minutesShape `json:"minutes"`
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
	Larvae     int         `json:"larvae"`
	Nucs       int         `json:"nucs"`
	MadeUp     int         `json:"nucsMadeUp"` // of them; the others are alive and keep their bees
	Steps      []stepShape `json:"steps"`
	Needs      []needShape `json:"needs"`
	Gives      []giftShape `json:"gives"`
	ShortCups  float64     `json:"shortCups"`
	ShortCombs float64     `json:"shortCombs"`
	CellsLate  float64     `json:"cellsLostGivenADayLate"`
	wishDates
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
	What    string   `json:"what"`
	Amount  float64  `json:"amount"`
	Unit    string   `json:"unit,omitempty"`
	From    string   `json:"from"`
	To      string   `json:"to"`
	OrderBy string   `json:"orderBy,omitempty"`
	Have    *float64 `json:"have,omitempty"`
	Short   float64  `json:"short"`
}

// giftShape is what one colony gives, in JSON.
type giftShape struct {
	Colony string  `json:"colony"`
	Cups   float64 `json:"cups"`
	Combs  float64 `json:"combs"`
}

// minutesShape is the keeper's time for a step, in JSON.
type minutesShape struct {
	Day     string  `json:"day"`
	Step    string  `json:"step"`
	Minutes float64 `json:"minutes"`
}

func shapeOfWish(p *plan.Planner, a plan.Answer) wishShape {
	s := wishShape{
		Queens: a.Queens, By: a.By.String(), Laying: a.Laying, Sure: a.Sure, Line: a.Line, Yard: p.View().Yard(a.Yard).Name, Larvae: a.Larvae, Nucs: a.Nucs,
		Free: a.Free, InTime: a.InTime, Nearest: a.Nearest.String(), Chance: thousandth(a.Chance), Expected: a.Chances.Quantile(0.5),
		Passed: a.Passed.String(), Minds: []mindShape{}, Promises: []promiseShape{}, Raises: []raiseShape{}, Late: []lateGraft{}, Grafts: []graftShape{}, Days: []minutesShape{},
	}
	if a.Sizing.Limit != plan.NoLimit {
		s.Limit, s.Most, s.Enough = a.Sizing.Limit.String(), a.Sizing.Most, a.Sizing.Nucs
	}
	if insured := a.Insured(); insured > 0 {
		s.Insured, s.For = thousandth(insured), a.Sizing.Larvae
	}
	for _, one := range a.Chances.Promises() {
		s.Promises = append(s.Promises, promiseShape{one.Sure, one.Queens})
	}
	var grafts []plan.Graft
	for _, b := range a.Batches {
		grafts = append(grafts, b.Graft)
		s.Grafts = append(s.Grafts, shapeOfGraft(p, b))
		s.Grafts[len(s.Grafts)-1].wishDates = datesOf(p, b, a.Yard)
		for _, m := range p.Ahead(b.Ladder, b.Size) {
			s.Days = append(s.Days, minutesShape{m.Day.String(), m.Step.String(), round(m.Minutes)})
		}
	}
	last := a.Batches[len(a.Batches)-1]
	if day, ok := p.LastOf(a.Yard, last.Day); ok {
		s.Last = day.String()
	}
	for _, m := range p.Minds(a) {
		s.Minds = append(s.Minds, mindShape{m.Why, m.Do})
	}
	for _, r := range a.Rates.Raises(a.Queens, last.Late, grafts...) {
		s.Raises = append(s.Raises, raiseShape{r.Change.String(), thousandth(r.Chance), thousandth(r.Gain)})
	}
	if c, ok := a.Rates.Dearest(a.Sure, grafts...); ok {
		s.Dearest = &costShape{c.String(), c.Without, c.With}
	}
	const lateDays = 3
	for late := 1; late <= lateDays; late++ {
		w := a.Wish
		w.Graft = a.Batches[0].Day + calendar.Day(late)
		s.Late = append(s.Late, lateGraft{late, thousandth(p.Answer(w).Chance)})
	}
	return s
}

func shapeOfGraft(p *plan.Planner, b plan.Batch) graftShape {
	zone := p.View().Zone()
	s := graftShape{Graft: stamp(b.Ladder.Graft, zone), Larvae: b.Graft.Larvae, Nucs: b.Size.Nucs, MadeUp: p.MadeUp(b.Ladder, b.Size).Nucs, Steps: []stepShape{}, Needs: []needShape{}, Gives: []giftShape{}}
	for _, r := range b.Rungs {
		s.Steps = append(s.Steps, stepShape{r.Step.String(), r.From.String(), r.Best.String(), r.By.String(), stamp(r.Hard, zone), r.NobodyFree})
	}
	var cups, combs float64
	for _, n := range p.Needs(b.Ladder, b.Size) {
		one := needShape{
			What: n.String(), Amount: round(n.Amount), Unit: n.Unit(), From: n.From.String(), To: n.To.String(), OrderBy: n.OrderBy.String(), Short: round(n.Short()),
		}
		if n.Known {
			have := round(n.Have)
			one.Have = &have
		}
		s.Needs = append(s.Needs, one)
		switch n.Good {
		case plan.CupsOfBees:
			cups = n.Amount
		case plan.BroodCombs:
			combs = n.Amount
		}
	}
	all, shortCups, shortCombs := p.Gifts(b.Rung(plan.MakeUpNucs).Best, cups, combs)
	for _, g := range all {
		s.Gives = append(s.Gives, giftShape{g.Colony.Name, round(g.Cups), round(g.Combs)})
	}
	s.ShortCups, s.ShortCombs = round(shortCups), round(shortCombs)
	s.CellsLate = round(b.Clock.Loose().Lost(p.GraftAt(b.Rung(plan.GiveCells).Best + 1)))
	return s
}
