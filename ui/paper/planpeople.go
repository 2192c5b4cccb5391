package paper

import (
	"cmp"
	"context"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// minutesByDay draws the keeper's minutes, and beside the first of each day who has the time for all of
// it; of nobody where nobody's hours are known.
func (d planSheet) minutesByDay(ctx context.Context) error {
	columns, all := []column{{"day", 20, false}, {"step", 28, false}, {"minutes", 15, true}}, 0.0
	for _, m := range d.of.Minutes {
		all += m.Minutes
	}
	note, who := fmt.Sprintf("%.1f h in all, without the driving", all/60), d.whoByDay()
	if d.View.HoursTold() {
		columns, note = append(columns, column{"free that day", 20, true}, column{"who", 37, false}), note+"; whoever has most time that day first"
	}
	t := list{d.flow, columns, true, nil}
	if err := t.part(ctx, "Minutes by day", note); err != nil {
		return err
	}
	for _, m := range slices.SortedStableFunc(slices.Values(d.of.Minutes), func(a, b plan.Minutes) int { return cmp.Compare(a.Day, b.Day) }) {
		l := listLine{look: plain(9), cells: []string{m.Day.ShortFrom(d.Day), sentence(m.Step.String()), minutes(m.Minutes)}, done: d.of.Made(m.Step.Readied())}
		if d.View.HoursTold() {
			l.cells = append(l.cells, minutes(float64(d.View.MinutesFree(m.Day))), who[m.Day].said)
			if who[m.Day].over {
				l.look = semi(9)
			}
			who[m.Day] = whoOn{over: who[m.Day].over}
		}
		if err := t.put(ctx, l); err != nil {
			return err
		}
	}
	return nil
}

// whoOn is who has time for the minutes of a day, and whether they are more than there is time for.
type whoOn struct {
	said string
	over bool
}

func (d planSheet) whoByDay() map[calendar.Day]whoOn {
	all := map[calendar.Day]whoOn{}
	for _, day := range d.of.ByPerson {
		var who []string
		for _, p := range day.Parts {
			who = append(who, fmt.Sprintf("%s %.0f", p.Who.Name, p.Minutes))
		}
		over := day.Over >= 1
		if over {
			who = append(who, "nobody for "+minutes(day.Over))
		}
		all[day.Day] = whoOn{strings.Join(who, ", "), over}
	}
	return all
}
