package paper

import (
	"context"

	"lidmark/domain/plan"
)

// givers draws who gives the bees of the starters, and the bees and brood of the nucs,
// and who rests.
func (d planSheet) givers(ctx context.Context) error {
	heads := map[plan.Step]string{plan.SetUpStarter: "Who gives bees for starters", plan.MakeUpNucs: "Who gives bees and brood for nucs"}
	for _, g := range d.of.Given {
		t := list{d.flow, []column{{"colony", 30, false}, {"cups of bees", 20, true}, {"combs of brood", 20, true}, {"", 30, false}}, true, nil}
		if err := t.part(ctx, heads[g.For], "on "+g.Day.ShortFrom(d.Day)); err != nil {
			return err
		}
		for _, l := range d.giverLines(g) {
			if err := t.put(ctx, l); err != nil {
				return err
			}
		}
	}
	return nil
}

// giverLines are those who give on a day, those who rest, and what nobody can give.
func (d planSheet) giverLines(g plan.Given) (all []listLine) {
	given := func(v float64) string {
		if v < 0.05 {
			return ""
		}
		return figure(v)
	}
	for _, gift := range g.Gifts {
		note := ""
		if gift.OfDrones() {
			note = "drone colony, for want of others"
		}
		all = append(all, listLine{look: plain(9), cells: []string{gift.Colony.Name, given(gift.Cups), given(gift.Combs), note}})
	}
	for _, r := range g.Rest {
		all = append(all, listLine{look: soft(9), cells: []string{r.Colony.Name, "", "", "rests until " + r.Rests.ShortFrom(d.Day)}, bare: true})
	}
	if short := given(g.ShortCups) + given(g.ShortCombs); short != "" {
		all = append(all, listLine{look: semi(9), cells: []string{"nobody can give", given(g.ShortCups), given(g.ShortCombs), ""}, bare: true})
	}
	return all
}
