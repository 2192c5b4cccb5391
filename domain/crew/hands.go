package crew

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Hand is a person who is there, for how many minutes, and until when.
type Hand struct {
	Person  book.PersonID
	Name    string
	Minutes float64
	Until   time.Time // zero: nobody told
}

// after is how many minutes a person is there from an instant on, home again within.
func (h Hand) after(t time.Time) float64 {
	if h.Until.IsZero() {
		return h.Minutes
	}
	return min(h.Minutes, max(0, h.Until.Sub(t).Minutes()))
}

// Hands are who drives with whom.
type Hands [][]Hand

// HandsOf are the people who are free on a day, those with most time first, dealt
// out among so many vans, one at least: each is as full as the next, and who has like
// time rides together, since a van brings all home at once. With hours above 0 nobody has more than that, and where nobody's free hours are told each has
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
				_, h.Until = p.FreeOn(d).Between(d, v.Zone())
			}
			all = append(all, h)
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
// first.
func (h Hands) manned() (teams []Team, hands Hands) {
	for _, people := range h {
		if len(people) == 0 {
			continue
		}
		people = slices.Clone(people)
		slices.SortStableFunc(people, func(a, b Hand) int { return cmp.Compare(b.Minutes, a.Minutes) })
		var t Team
		for _, hand := range people {
			t.Minutes = append(t.Minutes, hand.Minutes)
		}
		teams, hands = append(teams, t), append(hands, people)
	}
	return teams, hands
}
