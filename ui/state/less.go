package state

import (
	"fmt"
	"time"

	"lidmark/domain/rules"
)

// Less is how much less time there is on a day than was planned. The zero Less
// is as much as was planned.
type Less struct {
	Hours  int    // nobody has more; 0: not so
	Nobody bool   // nobody comes
	Away   Absent // who does not come
	Vans   int    // in how many people drive, where that was said; 0: one
	OnFoot bool   // there is none: only what can be walked to is done
	From   int    // the hour from which on there can be worked, after rain; 0: as planned
}

// On tells whether there is less time.
func (l Less) On() bool { return l != Less{} }

// vans is in how many people drive.
func (l Less) vans() int { return max(1, l.Vans) * boolInt(!l.OnFoot) }

// VansSaid is in how many people drive in words.
func (l Less) VansSaid() string {
	if l.OnFoot {
		return "no van"
	}
	return counted(l.vans(), "van")
}

// usualLess and mostLess are how many hours are left when it is said first, and
// at most.
const usualLess, mostLess = 2, 12

// HoursLeft is how many hours "I have only … hours" means: as said, else two.
func (s State) HoursLeft() int {
	if h := s.DayPage.Less.Hours; h > 0 {
		return h
	}
	return usualLess
}

// lessCommands say that there is less time today.
var lessCommands = []Command{
	{Name: "only hours", Does: "only so many hours: what must be done", Keys: "Alt+H", Why: noLess, Do: lessen(func(l Less, h int) Less { l.Hours, l.Nobody = h*boolInt(l.Hours == 0), false; return l })},
	{Name: "hour more", Does: "an hour more", Word: "An hour more", Why: mostHours, Do: lessen(func(l Less, h int) Less { l.Hours, l.Nobody = h+1, false; return l })},
	{Name: "hour less", Does: "an hour less", Word: "An hour less", Why: leastHours, Do: lessen(func(l Less, h int) Less { l.Hours, l.Nobody = h-1, false; return l })},
	{Name: "rain until", Does: "it rains first: the day begins later", Keys: "Alt+Shift+R", Why: noRain, Do: rained(func(s State) int { return s.RainUntil() * boolInt(!s.Rains()) })},
	{Name: "rain longer", Does: "it rains an hour longer", Word: "An hour longer", Why: mostRain, Do: rained(func(s State) int { return s.RainUntil() + 1 })},
	{Name: "rain shorter", Does: "it rains an hour less", Word: "An hour less", Why: leastRain, Do: rained(func(s State) int { return s.RainUntil() - 1 })},
	{Name: "nobody comes", Does: "nobody comes: what is lost, what waits", Keys: "Alt+0", Why: noLess, Do: lessen(func(l Less, _ int) Less { return Less{Nobody: !l.Nobody} })},
}

func lessen(change func(Less, int) Less) func(State) (State, []Effect) {
	return pure(func(s State) State { return s.lessened(change) })
}

// lessened is the window on Today with less time, or with as much as was planned.
func (s State) lessened(change func(Less, int) Less) State {
	if s.DayPage.Day != s.Looked() {
		s.DayPage = DayPage{Day: s.Looked()}
	}
	less, part := change(s.DayPage.Less, s.HoursLeft()), s.Part
	s = s.entered(Today)
	s.Part, s.Scroll = part, nil
	s.DayPage.Less, s.DayPage.of = less, nil
	return s.turnedPage()
}

func noLess(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if len(s.Reading().Plan().Stops) == 0 {
		return "there is nothing to do"
	}
	return ""
}

func mostHours(s State) string {
	if s.HoursLeft() >= mostLess {
		return "that is a day's work"
	}
	return noLess(s)
}

func leastHours(s State) string {
	if s.HoursLeft() <= 1 {
		return "less than an hour: choose Nobody comes"
	}
	return noLess(s)
}

// Part is the part of the day's work that is done with less time.
func (r *Reading) Part(l Less) rules.Part {
	return r.part(l)
}

// Kit is what to pack for the day's work, or for what is done of it in less time.
func (r *Reading) Kit(l Less) []rules.KitLine {
	if !l.On() {
		return r.Plan().Kit
	}
	if stops, ok := r.crewStops(l); ok {
		return r.judged.Kit(stops, r.Day)
	}
	return r.judged.Kit(r.Part(l).Stops, r.Day)
}

func (r *Reading) readPart(l Less) rules.Part {
	const hour = 60
	return r.Plan().Within(float64(l.Hours) * hour)
}

// lessPage is a page with what there is time for, and behind it what waits.
func (s State) lessPage(p DayPage, page []PageStop) (less []PageStop) {
	if c := p.of.crew(p.Less); c.ok {
		return withDone(c.stops, page)
	}
	part := p.of.Part(p.Less)
	waits := map[lineName]bool{}
	for _, t := range part.Waits {
		waits[nameOf(t)] = true
	}
	later := map[lineName]PageLine{}
	at := 0
	for _, stop := range page {
		lines, kept := stop.Lines, false
		stop.Lines = nil
		for _, l := range lines {
			if name := nameOf(l.Task); !l.Done && waits[name] {
				l.Waits = true
				later[name] = l
				continue
			}
			kept = kept || !l.Done
			stop.Lines = append(stop.Lines, l)
		}
		stop.Start, stop.Drive = time.Time{}, 0
		if kept && at < len(part.Stops) {
			stop.Start, stop.Drive = part.Stops[at].Start, part.Stops[at].Drive
			at++
		}
		if len(stop.Lines) > 0 {
			less = append(less, stop)
		}
	}
	last := PageStop{}
	for _, t := range part.Waits {
		if l, ok := later[nameOf(t)]; ok {
			last.Lines = append(last.Lines, l)
		}
	}
	if len(last.Lines) > 0 {
		less = append(less, last)
	}
	return less
}

// LessSays says in one line what less time means; more is to be left out where
// there is no room for it.
func (r *Reading) LessSays(l Less) (says, more string) {
	part := r.Part(l)
	if l.Nobody {
		return r.nobodySays(part), ""
	}
	if day, ok := r.Crew(l); ok {
		says, more = r.crewSays(day)
		return r.beforeRain(l) + says, more
	}
	kept := 0
	for _, s := range part.Stops {
		kept += len(s.Tasks)
	}
	if part.Must > float64(l.Hours)*60 {
		return fmt.Sprintf("%.0f min cannot wait", part.Must), ""
	}
	if len(part.Waits) == 0 {
		return "time for all of it", ""
	}
	return fmt.Sprintf("%s fit, %d wait", counted(kept, "line"), len(part.Waits)), r.untilFirst(part.Waits)
}

// untilFirst says until when work can wait: as long as what can least, which is a
// day to come. What is due on the day itself cannot wait that long.
func (r *Reading) untilFirst(waits []rules.Task) string {
	first, today := time.Time{}, 0
	for _, t := range waits {
		switch {
		case t.PastDue(r.View.On()):
			return ", some past due"
		case !t.By.IsZero() && r.DayOf(t.By) <= r.Day:
			today++
		case !t.By.IsZero() && (first.IsZero() || t.By.Before(first)):
			first = t.By
		}
	}
	switch {
	case today > 0:
		return fmt.Sprintf(", %d due today", today)
	case first.IsZero():
		return ", no last day"
	}
	return " to " + r.DayOf(first).Short()
}

// nobodySays says what cannot wait when nobody comes, what of it has its last
// chance on the day first, and what is lost by the clock.
func (r *Reading) nobodySays(part rules.Part) string {
	last, ok := r.lastChance(part)
	if ok {
		day := "on this day"
		if !r.Ahead {
			day = "today"
			if at := r.Plan().Home; !at.IsZero() && at.In(r.View.Zone()).Hour() >= evening {
				day = "tonight"
			}
		}
		return fmt.Sprintf("%s is the last chance: %s %s, by %s", day, last.Act, rules.Name(r.View, last.Of[0]), r.hourOf(last.By))
	}
	for _, s := range part.Stops {
		for _, t := range s.Tasks {
			for _, f := range t.Findings {
				if costs := r.waitingBatchOf(f); len(costs) > 0 {
					return fmt.Sprintf("%s by %s", costs[len(costs)-1].What, r.hourOf(costs[len(costs)-1].At))
				}
			}
		}
	}
	if len(part.Stops) > 0 {
		return "cannot wait: " + part.Stops[0].Tasks[0].Act.String()
	}
	return "all of it waits" + r.untilFirst(part.Waits)
}

// evening is the hour from which on what is left of a day is its night.
const evening = 18

// lastChance is the work with a hard end ahead that nobody can do any more when
// nobody comes on the day: the one that ends first.
func (r *Reading) lastChance(part rules.Part) (last rules.Task, ok bool) {
	for _, s := range part.Stops {
		for _, t := range s.Tasks {
			if t.Hard && !t.PastDue(r.View.On()) && t.By.Before(r.Plan().Soon) && (!ok || t.By.Before(last.By)) {
				last, ok = t, true
			}
		}
	}
	return last, ok
}

func (r *Reading) waitingBatchOf(f rules.Finding) []Cost {
	id, ok := f.Of.Batch()
	if !ok {
		return nil
	}
	return r.waitingBatch(id)
}

// hourOf is an instant within a week: "Wed 06:00".
func (r *Reading) hourOf(t time.Time) string { return t.In(r.View.Zone()).Format("Mon 15:04") }
