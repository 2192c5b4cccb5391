package plan

import (
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Minutes is the keeper's time for one step of a batch, on the best day of it.
type Minutes struct {
	Step    Step
	Day     calendar.Day
	Minutes float64
}

// Minutes are the keeper's minutes for a batch of a size, step by step, without
// the driving. Nucs that are alive and keep their bees are not made up; see
// [Planner.MakeUps]. Nucs are looked at for eggs twice, as [Ladder] says when.
func (p *Planner) Minutes(l Ladder, s Size) (all []Minutes) {
	per := func(k practice.Key, times float64) float64 { return p.numbers.Get(k) * times }
	starters := p.starters(s)
	finishers := FinishersFor(s.Takes, p.numbers)
	given := min(float64(s.Nucs), s.Cells)
	add := func(step Step, minutes float64) {
		if minutes > 0 {
			all = append(all, Minutes{step, l.Rung(step).Best, minutes})
		}
	}
	add(DroneComb, per(practice.MinutesDroneComb, p.DroneCombs(s)))
	add(Confine, per(practice.MinutesConfine, 1))
	add(FeedStarter, per(practice.MinutesFeedRearer, starters))
	if !s.StartersSet {
		add(SetUpStarter, per(practice.MinutesSetUpStarter, starters))
	}
	add(GraftLarvae, per(practice.MinutesGraftLarva, float64(s.Larvae)))
	add(ToFinisher, per(practice.MinutesFeedRearer, finishers))
	add(CountTake, per(practice.MinutesCheckTake, finishers))
	add(CountCapped, per(practice.MinutesCheckTake, finishers))
	add(MakeUpNucs, p.MadeUp(l, s).Minutes)
	add(GiveCells, per(practice.MinutesGiveCell, given))
	add(LookForEggs, per(practice.MinutesLook, given))
	again := Minutes{LookForEggs, l.Rung(LookForEggs).Best + p.days(practice.LookAgainFrom), per(practice.MinutesLook, max(0, given-s.Queens))}
	if again.Minutes > 0 {
		all = append(all, again)
	}
	add(Ready, per(practice.MinutesCatch, s.Queens))
	return all
}

// Ahead are those of [Planner.Minutes] that can still be done: what was best done before
// today and still may is for today, what is past is left out.
func (p *Planner) Ahead(l Ladder, s Size) (all []Minutes) {
	today := p.view.Today()
	for _, m := range p.Minutes(l, s) {
		if r := l.Rung(m.Step); max(r.By, m.Day) >= today {
			m.Day = max(m.Day, today)
			all = append(all, m)
		}
	}
	return all
}
