package strength

import (
	"sync"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/weather"
)

// days are the days of a yard as its bees have them: how much of a full flying
// day each was or will be, and how many bees its night asks for. Those about the
// view's day are laid out when first asked for; others are reckoned each time.
type days struct {
	yard    *book.Yard
	weather *weather.Yard
	numbers practice.Numbers
	from    calendar.Day
	laid    sync.Once
	list    []dayAt
}

type dayAt struct{ flown, need float64 }

// backAndAhead are the days laid out around the view's.
const back, ahead = 60, 30

func newDays(v *book.View, id book.YardID, today calendar.Day) *days {
	return &days{yard: v.Yard(id), weather: weather.NewYard(v, id), numbers: v.Numbers(), from: today - back}
}

func (d *days) at(day calendar.Day) dayAt {
	d.laid.Do(d.layOut)
	if i := int(day - d.from); i >= 0 && i < len(d.list) {
		return d.list[i]
	}
	return d.reckon(day)
}

func (d *days) layOut() {
	d.list = make([]dayAt, back+ahead)
	for i := range d.list {
		d.list[i] = d.reckon(d.from + calendar.Day(i))
	}
}

// reckon is a day: fliers die by its hours fit to fly as a share of those of a
// full flying day, seen, foretold or usual.
func (d *days) reckon(day calendar.Day) dayAt {
	hours := d.weather.Hours(day) / d.numbers.Get(practice.FitHoursPlus)
	return dayAt{min(1, hours), Need(NightOf(d.yard, day, d.numbers), false, d.numbers)}
}
