package state

// usualRain is the hour until which it rains when that is said first; it ends between
// the others, which are common practice, no source.
const usualRain, soonestRain, latestRain = 15, 8, 20

// Rains tells whether it was said that it rains first.
func (s State) Rains() bool { return s.DayPage.Less.From > 0 }

// RainUntil is the hour until which "it rains" means: as said, else three, of a day under
// way no hour that is past.
func (s State) RainUntil() int {
	if s.Rains() {
		return s.DayPage.Less.From
	}
	return max(usualRain, s.firstRain())
}

// firstRain is the first hour at which rain may end: on a day under way one to come.
func (s State) firstRain() int {
	if s.Looked() == s.Today() {
		return max(soonestRain, s.Now.In(s.Present().View.Zone()).Hour()+1)
	}
	return soonestRain
}

func noRain(s State) string {
	if why := noHands(s); why != "" {
		return why
	}
	if s.firstRain() > latestRain {
		return "the day is over"
	}
	return ""
}

func mostRain(s State) string {
	if s.RainUntil() >= latestRain {
		return "it would rain all day: choose Nobody comes"
	}
	return noRain(s)
}

func leastRain(s State) string {
	if s.RainUntil() > s.firstRain() {
		return noRain(s)
	}
	return "it cannot begin earlier"
}

func rained(until func(State) int) func(State) (State, []Effect) {
	return pure(func(s State) State {
		hour := until(s)
		return s.lessened(func(l Less, _ int) Less {
			l.From, l.Nobody = hour, false
			return l
		})
	})
}

// dried is the window in which rain that is over is not said any more.
func (s State) dried() State {
	if s.Book != nil && s.Rains() && s.DayPage.Day == s.Today() && s.DayPage.Less.From < s.firstRain() {
		s.DayPage.Less.From, s.DayPage.of = 0, nil
	}
	return s
}
