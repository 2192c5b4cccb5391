package crew

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Hand is a person who is there, for how many minutes, from when and until when.
type Hand struct {
	Person  book.PersonID
	Name    string
	Minutes float64
	From    time.Time // zero: nobody told
	Until   time.Time // zero: nobody told
	van     int       // counted from 1
	walks   bool      // nobody drives: only what lies at home is done
	own     time.Time // From, waiting for nobody and no van
	alone   float64   // Minutes from then on; 0: he waits for nobody
	there   time.Time // when the van is there; zero: from the first
}

// byHimself is a person who does not ride, and waits for nobody who does.
func (h Hand) byHimself() Hand {
	if h.alone > 0 {
		h.From, h.Minutes = h.own, h.alone
	}
	return h
}

// after is how many minutes a person is there from an instant on, home again within.
func (h Hand) after(t time.Time) float64 {
	if h.Until.IsZero() {
		return h.Minutes
	}
	if t.Before(h.From) {
		t = h.From
	}
	return min(h.Minutes, max(0, h.Until.Sub(t).Minutes()))
}

// Over tells whether people were free on a day, and none of them is any more.
func Over(v *book.View, d calendar.Day) bool { return v.MinutesFree(d) > 0 && len(Ring(v, d)) == 0 }

// leftAt is the person with the hours that are left at an instant.
func (h Hand) leftAt(now time.Time) Hand {
	if h.From.Before(now) {
		h.From, h.Minutes = now, min(h.Minutes, max(0, h.Until.Sub(now).Minutes()))
	}
	return h
}

// setOut lets those who ride set out when all of them are free and the van is there:
// they wait for nobody who stays.
func setOut(riders []Hand) {
	var from time.Time
	for _, h := range riders {
		if h.alone == 0 {
			return
		}
		for _, t := range []time.Time{h.own, h.there} {
			if t.After(from) {
				from = t
			}
		}
	}
	for i := range riders {
		riders[i].From = from
	}
}

// Hands are who drives with whom.
type Hands [][]Hand

// HandsOf are the people who are free on a day, those with most time first, dealt
// out among so many vans, one at least: each is as full as the next, and who has like
// time rides together, since a van brings all home at once. Of a day under way they have the hours
// that are left. With hours above 0 nobody has more than that, and where nobody's free hours are told each has
// that; who is away has none.
func HandsOf(v *book.View, d calendar.Day, vans int, hours float64, away ...book.PersonID) Hands {
	var all []Hand
	told := v.HoursTold()
	for p := range v.People() {
		minutes := float64(p.FreeOn(d).Minutes())
		switch {
		case !told:
			minutes = hours * 60
		case hours > 0:
			minutes = min(minutes, hours*60)
		}
		if minutes > 0 && !slices.Contains(away, p.Person) {
			h := Hand{Person: p.Person, Name: p.Name, Minutes: minutes}
			if told {
				h.From, h.Until = p.FreeOn(d).Between(d, v.Zone())
				h = h.leftAt(v.Begun())
			}
			if h.Minutes > 0 {
				all = append(all, h)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b Hand) int { return cmp.Compare(b.Minutes, a.Minutes) })
	teams := make(Hands, min(max(1, vans), max(1, len(all))))
	for i, h := range all {
		van := i * len(teams) / len(all)
		teams[van] = append(teams[van], h)
	}
	return teams
}

// OnFoot are the same people with no van: each by himself does what can be walked to.
func (h Hands) OnFoot() (all Hands) {
	for _, team := range h {
		for _, hand := range team {
			hand.walks = true
			all = append(all, []Hand{hand})
		}
	}
	return all
}

// Minutes are the minutes all hands have together.
func (h Hands) Minutes() (sum float64) {
	for _, team := range h {
		for _, hand := range team {
			sum += hand.Minutes
		}
	}
	return sum
}

// manned are the teams with anybody in them, and who that is, those with most time
// first: of each van those who have it one after the other.
func (h Hands) manned() (teams []Team, hands Hands) {
	van := 0
	for _, people := range h {
		if len(people) == 0 {
			continue
		}
		van++
		for _, shift := range shiftsOf(people) {
			var t Team
			for i := range shift {
				if shift[i].van = van; shift[i].walks {
					shift[i].van = 0
				}
				t.Minutes = append(t.Minutes, shift[i].Minutes)
			}
			teams, hands = append(teams, t), append(hands, shift)
		}
	}
	return teams, hands
}

// last is until when anybody is there; zero where nobody told.
func (h Hands) last() (last time.Time) {
	for _, team := range h {
		for _, hand := range team {
			if hand.Until.After(last) {
				last = hand.Until
			}
		}
	}
	return last
}

// Ring are the people who are free on a day, with their hours: whom to ask when nobody
// comes.
func Ring(v *book.View, d calendar.Day) (all []Hand) {
	if !v.HoursTold() {
		return nil
	}
	for _, team := range HandsOf(v, d, 1, 0) {
		all = append(all, team...)
	}
	return all
}

// start is when a team sets out; zero where nobody told.
func start(people []Hand) time.Time { return people[0].From }
