package state

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// PlanRung is a step of the ladder as it is told: what, how many, and why then.
type PlanRung struct {
	plan.Rung
	Name, Amount string
	Why          []string // clauses, the first one first: a later one is said where it has room
	Pressing     bool     // nobody is free for it before its hard hour
}

// ladderSteps are the steps that the ladder shows; the others stand in their words.
var ladderSteps = [LadderRungs]plan.Step{
	plan.Ready, plan.LookForEggs, plan.Fly, plan.Emerge, plan.GiveCells, plan.MakeUpNucs, plan.CountCapped, plan.CountTake,
	plan.GraftLarvae, plan.SetUpStarter, plan.Confine, plan.DroneComb,
}

// rungNames are the steps as a keeper would write them.
var rungNames = map[plan.Step]string{
	plan.Ready: "Ready", plan.LookForEggs: "Look for eggs", plan.Fly: "Mating flights", plan.Emerge: "Emerge", plan.GiveCells: "Give ripe cells",
	plan.MakeUpNucs: "Make up nucs", plan.CountCapped: "Capped, count", plan.CountTake: "Check takes", plan.GraftLarvae: "Graft",
	plan.SetUpStarter: "Set up starters", plan.Confine: "Confine the breeder", plan.DroneComb: "Drone comb in",
}

// PlanRungs are the steps of one graft of the answer, the last one first.
func (s State) PlanRungs(graft int) (all []PlanRung) {
	sheet, _ := s.PlanSheet()
	if sheet == nil || graft >= len(sheet.Batches) {
		return nil
	}
	t := rungTeller{s: s, sheet: sheet, b: sheet.Batches[graft], stages: sheet.Stages[graft], needs: sheet.Each[graft], madeUp: sheet.MadeUp[graft], numbers: s.Present().Numbers(), zone: s.Present().View.Zone()}
	for _, step := range ladderSteps {
		r := PlanRung{Rung: t.b.Rung(step), Name: rungNames[step]}
		amount, why := t.words(step)
		r.Amount, r.Why = amount, strings.Split(why, clauses)
		if step == plan.Emerge { // the bar begins where the words do
			r.From = min(r.From, calendar.DayOf(t.emergeFrom(), t.zone))
		}
		switch {
		case r.NobodyFree:
			r.Why, r.Pressing = []string{t.nobodyFree(r.Rung)}, true
		case step == plan.DroneComb && r.By <= s.Today():
			r.Why, r.Pressing = []string{"too late since " + s.dayMonth(r.By) + ": only drones that are there already fly on " + s.dayMonth(t.b.Rung(plan.Fly).From)}, true
		case step.Done() && r.By < s.Today():
			r.Why, r.Pressing = []string{"was due by " + s.dayMonth(r.By)}, true
		}
		all = append(all, r)
	}
	return all
}

// nobodyFree says that nobody is free for a step, before its hard hour where it has one.
func (t rungTeller) nobodyFree(r plan.Rung) string {
	if r.Hard.IsZero() {
		return "nobody is free then"
	}
	return "nobody is free before " + t.hour(r.Hard)
}

// clauses part what is said of a step.
const clauses = "; "

// dayMonth is a day without its weekday, with its year where that is not this one.
func (s State) dayMonth(d calendar.Day) string { return dayMonthFrom(d, s.Today()) }

func dayMonthFrom(d, today calendar.Day) string {
	_, said, _ := strings.Cut(d.ShortFrom(today), " ")
	return said
}

type rungTeller struct {
	s       State
	sheet   *PlanSheet
	b       plan.Batch
	stages  []plan.Stage
	needs   []plan.Need // of the graft
	madeUp  int         // nucs of it
	numbers practice.Numbers
	zone    *time.Location
}

// said is a day as it is written today, hour an instant.
func (t rungTeller) said(d calendar.Day) string { return d.ShortFrom(t.s.Today()) }

func (t rungTeller) hour(at time.Time) string {
	return calendar.Instantly(at).InFrom(t.s.Today(), t.zone)
}

func (t rungTeller) words(step plan.Step) (amount, why string) {
	switch step {
	case plan.Ready:
		return t.ready()
	case plan.LookForEggs:
		return counted(t.given(), "nuc") + ", twice", fmt.Sprintf("half lay by %s, nine in ten by %s", t.said(t.b.Laid.Day(0.5)), t.said(t.b.Laid.Day(laysBy)))
	case plan.Fly:
		return t.flights()
	case plan.Emerge:
		return strconv.Itoa(t.likely(plan.EmergedOfRipe)), "from " + strings.TrimPrefix(t.hour(t.emergeFrom()), t.emergeFrom().In(t.zone).Format("Mon "))
	case plan.GiveCells:
		return counted(t.given(), "cell"), "hard: before " + t.hour(t.b.Rung(step).Hard) + t.cellsLate()
	case plan.MakeUpNucs:
		return t.makeUp(), fmt.Sprintf("%.0f h without a queen first", t.numbers.Get(practice.QueenlessBeforeCell))
	}
	return t.rearing(step)
}

// makeUp is how many nucs are made up, of all where some are alive and keep their bees, and with how
// many cups of bees.
func (t rungTeller) makeUp() string {
	of := strconv.Itoa(t.madeUp)
	if t.madeUp < t.b.Size.Nucs {
		of = fmt.Sprintf("%d of %d", t.madeUp, t.b.Size.Nucs)
	}
	if cups := int(t.need(plan.CupsOfBees) + 0.5); cups > 0 {
		return fmt.Sprintf("%s, %s of bees", of, counted(cups, "cup"))
	}
	if t.madeUp == t.b.Size.Nucs {
		return counted(t.madeUp, "nuc")
	}
	return of + " nucs, the others are alive"
}

// emergeFrom is the hour by which the first is out in one of ten such batches.
func (t rungTeller) emergeFrom() time.Time { return t.b.Clock.FirstOut(0.1) }

// rearing are the words of the steps until the cells are ripe.
func (t rungTeller) rearing(step plan.Step) (amount, why string) {
	switch step {
	case plan.CountCapped:
		capped := t.likely(plan.RipeOfTaken)
		if t.b.Size.Nucs > 0 && capped > t.b.Size.Nucs {
			return strconv.Itoa(capped), fmt.Sprintf("choose the best %d", t.b.Size.Nucs)
		}
		return strconv.Itoa(capped), "hands off from the next day"
	case plan.CountTake:
		if low := t.after(plan.Taken).Low(); low > 1 {
			why = fmt.Sprintf("graft again if under %d", low)
		}
		return fmt.Sprintf("%d of %d", t.likely(plan.Taken), t.b.Graft.Larvae), why
	case plan.GraftLarvae:
		return fmt.Sprintf("%s, %s", book.LarvaeSaid(t.b.Graft.Larvae), counted(int(t.need(plan.Finishers)), "finisher")), t.hour(t.b.Ladder.Graft) + t.dayLate()
	case plan.SetUpStarter:
		return fmt.Sprintf("%d, with %.1f kg of bees each", int(t.need(plan.Starters)), t.numbers.Get(practice.StarterBees)), "feed from " + t.said(t.b.Rung(plan.FeedStarter).Best)
	case plan.Confine:
		return "on an empty comb", fmt.Sprintf("larvae about %.0f h old on %s", t.numbers.Get(practice.LarvaAgeAtGraft), t.said(t.b.Day))
	case plan.DroneComb:
		return fmt.Sprintf("%.0f drone colonies", t.need(plan.DroneColonies)), fmt.Sprintf("by %s: %.0f d to ripe drones on %s", t.said(t.b.Rung(step).By), t.numbers.Get(practice.DroneRipe), t.said(t.b.Rung(plan.Fly).From))
	}
	return "", ""
}

// dayLate is what a graft a day later costs, and the last one of the season that still
// makes sense, as far as they are known.
func (t rungTeller) dayLate() (says string) {
	if t.sheet.ADay > 0 || t.sheet.Young {
		says = "; a day later " + t.sheet.DayLate()
	}
	if t.sheet.Last != 0 {
		says += "; last about " + t.s.dayMonth(t.sheet.Last)
	}
	return says
}

// cellsLate is what giving the cells a day late costs, where that is told.
func (t rungTeller) cellsLate() string {
	if t.sheet.Late.Queens < 0.5 { // half a queen is told as none
		return ""
	}
	return "; " + t.sheet.Late.Late() + ", " + t.sheet.Late.Short(t.zone)
}

func (t rungTeller) ready() (amount, why string) {
	c := t.sheet.Shown
	if !t.sheet.InTime && !t.s.Planning.Forwards {
		return fmt.Sprintf("most probably %d, by %s", c.Quantile(0.5), t.sheet.Nearest.ShortFrom(t.s.Today())), t.readyWhy()
	}
	amount = fmt.Sprintf("most probably %d (%d–%d)", c.Quantile(0.5), c.Quantile(0.1), c.Quantile(0.9))
	return amount, t.readyWhy()
}

func (t rungTeller) readyWhy() string {
	return fmt.Sprintf("%.0f d old by choice, %.0f d after first eggs", t.numbers.Get(practice.LeastAgeAtHandOver), t.numbers.Get(practice.ReadyAfterFirstEgg))
}

// flights tell of the days on which the queens can fly, by the yard's weather.
func (t rungTeller) flights() (amount, why string) {
	f := t.s.Present().planner().Flown(t.b.Ladder, t.sheet.Yard)
	return fmt.Sprintf("about %.0f fit hours in %d days", f.Hours, f.Days()), f.String()
}

// given is how many cells are given: one a nuc.
func (t rungTeller) given() int { return t.likely(plan.Placed) }

// likely is how many most probably come through a link of the chain.
func (t rungTeller) likely(l plan.Link) int { return t.after(l).Likely() }

// after is what is left after a link of the chain.
func (t rungTeller) after(l plan.Link) plan.Stage {
	i := slices.IndexFunc(t.stages, func(st plan.Stage) bool { return st.Link == l })
	if i < 0 {
		return plan.Stage{}
	}
	return t.stages[i]
}

func (t rungTeller) need(g plan.Good) float64 {
	for _, n := range t.needs {
		if n.Good == g {
			return n.Amount
		}
	}
	return 0
}

// figure is an amount with one decimal where it is small and not whole, and in
// hundreds where it is a great many.
func figure(v float64) string {
	const many = 10000
	if v >= many {
		v = math.Round(v/100) * 100
		return fmt.Sprintf("%d %03d", int(v)/1000, int(v)%1000)
	}
	if v == math.Round(v) || v >= 100 {
		return fmt.Sprintf("%.0f", v)
	}
	return fmt.Sprintf("%.1f", v)
}
