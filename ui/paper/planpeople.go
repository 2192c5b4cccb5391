package paper

import (
	"context"
	"fmt"
	"strings"
)

// byPerson draws who has time for the minutes of each day; nothing where nobody's hours
// are known.
func (d planSheet) byPerson(ctx context.Context) error {
	if len(d.of.ByPerson) == 0 {
		return nil
	}
	t := list{d.flow, []column{{"day", 20, false}, {"minutes", 14, true}, {"who", 42, false}, {"nobody has time", 24, true}}, true, nil}
	if err := t.part(ctx, "Minutes by person", "whoever has most time that day first"); err != nil {
		return err
	}
	for _, day := range d.of.ByPerson {
		var who []string
		for _, p := range day.Parts {
			who = append(who, fmt.Sprintf("%s %.0f", p.Who.Name, p.Minutes))
		}
		l := listLine{look: plain(9), cells: []string{day.Day.ShortFrom(d.Day), minutes(day.Minutes), strings.Join(who, ", "), ""}, bare: true}
		if day.Over >= 1 {
			l.cells[3], l.look = minutes(day.Over), semi(9)
		}
		if err := t.put(ctx, l); err != nil {
			return err
		}
	}
	return nil
}
