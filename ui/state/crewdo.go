package state

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// crewCommands say who comes on a day, and make it the day.
var crewCommands = []Command{
	{Name: "who comes", Does: "choose who does not come", Keys: "Alt+9", Why: noHands, Do: pure(State.toHands)},
	{Name: "van more", Does: "one van more to drive in", Keys: "Alt+Shift+Up", Word: "One van more", Why: mostVans, Do: vans(1)},
	{Name: "van less", Does: "people drive in a van less", Keys: "Alt+Shift+Down", Word: "A van less", Why: leastVans, Do: vans(-1)},
	{Name: "as planned", Does: "the day as it was planned", Word: "As planned", Why: notLess, Do: lessen(func(Less, int) Less { return Less{} })},
	{Name: "make the day", Does: "make it the day: put off what waits", Keys: "Ctrl+Enter", Word: "Make it the day", Why: noDayMade, Do: makeDay},
}

// vans is that people drive in so many vans more. The foot says so, for in a small
// window who comes is out of sight.
func vans(more int) func(State) (State, []Effect) {
	return pure(func(s State) State {
		s = s.lessened(func(l Less, _ int) Less {
			l.Vans = max(0, l.vans()+more)
			l.OnFoot = l.Vans == 0
			return l
		})
		s.Note = Note{Text: "all drive in " + s.DayPage.Less.VansSaid()}
		if s.DayPage.Less.OnFoot {
			s.Note.Text = "nobody drives: only what can be walked to"
		}
		return s
	})
}

func noHands(s State) string {
	if why := noLess(s); why != "" {
		return why
	}
	if len(s.Hands()) == 0 {
		return "nobody is known who could come: add people, and when they are free"
	}
	return ""
}

func mostVans(s State) string {
	if why := noHands(s); why != "" {
		return why
	}
	there := 0
	for _, h := range s.Hands() {
		there += boolInt(!h.Away)
	}
	if s.DayPage.Less.vans() >= max(1, there) {
		return "each has a van already"
	}
	return ""
}

func leastVans(s State) string {
	if why := noHands(s); why != "" {
		return why
	}
	if s.DayPage.Less.OnFoot {
		return "no van is used as it is"
	}
	return ""
}

func notLess(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Room != Today || s.Fill != NoFill || !s.DayPage.Less.On() {
		return "it is as it was planned"
	}
	return ""
}

// toHands is the window with the keys on the first of those who may come.
func (s State) toHands() State {
	s = s.entered(Today)
	if s.Layout().Side.Empty() {
		s.Part = SidePart
	}
	return s.focused(AwayOf(s.Hands()[0].Person))
}

// awayClicked is the window with somebody not coming, or coming after all.
func (s State) awayClicked(r scene.Ref) State {
	for _, h := range s.Hands() {
		if AwayOf(h.Person) == r {
			return s.lessened(func(l Less, _ int) Less {
				l.Away, l.Nobody = l.Away.turned(h.Person), false
				return l
			}).focused(r)
		}
	}
	return s
}

// noDayMade says why the day cannot be made as it is shown.
func noDayMade(s State) string {
	for _, why := range []func(State) string{notLess, noHands, noPen} {
		if said := why(s); said != "" {
			return said
		}
	}
	if s.Form != nil {
		return "leave the form first with Esc"
	}
	if facts, _ := s.dayMade(); len(facts) == 0 {
		return "there is time for all that can wait: nothing is to be written"
	}
	return ""
}

// makeDay writes down who is away or has less time, and puts off what waits.
func makeDay(s State) (State, []Effect) {
	facts, words := s.dayMade()
	s.DayPage.Less, s.DayPage.of = Less{}, nil
	return s.write(words, calendar.Instantly(s.Now), facts...)
}

// dayMade is what is written to make the day as it is shown, and what that is called.
func (s State) dayMade() (facts []book.Fact, words string) {
	r, l := s.Reading(), s.DayPage.Less
	hours, said := r.hoursMade(l)
	until := r.nextFree(l)
	why := "no time on " + r.Day.Short()
	off := r.putOffs(l)
	for i := range off {
		off[i].Until, off[i].Why = until, why
		facts = append(facts, off[i])
	}
	for _, h := range hours {
		facts = append(facts, h)
	}
	if n := len(off); n > 0 {
		said = append(said, fmt.Sprintf("%d put off to %s", n, until.Short()))
	}
	return facts, r.Day.Short() + ": " + strings.Join(said, ", ")
}

// hoursMade are the hours of those who do not come, or have less time, and that in
// words. Where nobody's free hours are told there are none to be less.
func (r *Reading) hoursMade(l Less) (all []book.HoursOn, said []string) {
	if !r.View.HoursTold() {
		return nil, nil
	}
	for p := range r.View.People() {
		free := p.FreeOn(r.Day)
		h := book.HoursOn{Person: p.Person, Day: r.Day}
		switch {
		case free.Minutes() == 0:
			continue
		case l.Nobody || l.Away.Has(p.Person):
			said = append(said, p.Name+" away")
		case l.From > 0 && free.From < l.From*60:
			if free.Until > l.From*60 {
				free.From = l.From * 60
				h.FreeHours = free
				said = append(said, fmt.Sprintf("%s from %d:00", p.Name, l.From))
			} else {
				said = append(said, p.Name+" away")
			}
		case l.Hours > 0 && free.Minutes() > l.Hours*60:
			h.FreeHours = r.shorter(free, l.Hours)
			said = append(said, fmt.Sprintf("%s %d h", p.Name, l.Hours))
		default:
			continue
		}
		all = append(all, h)
	}
	return all, said
}

// shorter are so many of somebody's free hours: the first of them, or from now on
// where they have begun.
func (r *Reading) shorter(free book.FreeHours, hours int) book.FreeHours {
	if r.UnderWay {
		now := r.View.On().In(r.View.Zone())
		free.From = max(free.From, now.Hour()*60+now.Minute())
	}
	free.From = max(0, min(free.From, free.Until-hours*60))
	free.Until = free.From + hours*60
	return free
}

// nextFree is the next day on which somebody is free, the day after where nobody's
// hours are told.
func (r *Reading) nextFree(l Less) calendar.Day {
	day, _ := r.Crew(l)
	return max(r.Day+1, r.DayOf(day.Next))
}

// putOffs are what waits and can: not what has a hard end, and no step of a planned
// batch, which moves with its plan. What is about several things is put off only where
// all of them wait.
func (r *Reading) putOffs(l Less) (all []book.PutOff) {
	day, _ := r.Crew(l)
	waits := make(map[lineAt]bool, len(day.Waits))
	for _, w := range day.Waits {
		waits[lineAt{nameOf(w.Task), w.Of}] = !w.Hard
	}
	told := map[book.PutOff]bool{}
	for _, w := range day.Waits {
		for _, f := range w.Task.Findings {
			off := book.PutOff{Rule: string(f.Rule), Of: f.Of}
			if f.Rule != rules.PlannedStep && !told[off] && allWait(f, w.Task, waits) {
				told[off] = true
				all = append(all, off)
			}
		}
	}
	return all
}

// lineAt is a line at one of its things.
type lineAt struct {
	lineName
	of book.Subject
}

func allWait(f rules.Finding, t rules.Task, waits map[lineAt]bool) bool {
	for _, s := range f.Subjects() {
		if !waits[lineAt{nameOf(t), s}] {
			return false
		}
	}
	return true
}
