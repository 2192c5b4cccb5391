package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// wishFlags are what is wished for.
type wishFlags struct {
	plan.Wish
	by, graft string
	larvae    string // of each graft, or one by one
	percent   float64
}

func wishCommand(a *app) *cobra.Command {
	var f wishFlags
	c := a.reading(&cobra.Command{
		Use:   "wish",
		Short: "So many queens by a day: when to graft, how many larvae, what it takes, how sure it is",
		Long: "Turns a wish into dates and amounts: the latest graft in time, larvae, nucs, bees,\nfood and minutes by day, and how sure the promise is. With --graft it tells what\n" +
			"becomes of a graft. What is left out is found. Nothing is written; lidbook plan\nbatch puts it on the plan.",
		Example: "  lidbook wish --queens 40 --until 2027-05-31 --line Rook\n  lidbook wish --queens 40 --until 31.5 --nucs 64 --laying --sure 90\n" +
			"  lidbook wish --queens 20 --graft \"2027-04-19 14:00\" --larvae 48\n" +
			"  lidbook wish --queens 40 --graft 2027-05-03 --larvae 80,60 --apart 7 --nucs 72 --laying --until 30.6",
		Args: cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		w, err := f.wish(v, a.flags.yard)
		if err != nil {
			return err
		}
		j := rules.Judge(v)
		p := plan.New(j.Course())
		answer := p.Possible(w)
		s := shapeOfWish(p, answer)
		s.inHand(p, w, answer)
		s.late(v, w, answer)
		s.markOver(j)
		for _, r := range rules.Check(v, rules.PlanOf(v, book.BatchPlanned{Line: answer.Line, Yard: answer.Yard})).Warned {
			s.Minds = append(s.Minds, mindShape{r.Why, r.Do, 0}) // of kin, where the line is said
		}
		return a.show(s, func() { a.printWish(v, s) })
	})
	fl := c.Flags()
	some(c, &f.Queens, "queens", upTo(plan.MostQueens), "how many queens")
	fl.StringVar(&f.by, "until", "", "by this `DAY`")
	fl.StringVar(&f.graft, "graft", "", "grafted on this `DAY` or \"DAY TIME\", the first of several (else the latest in time)")
	fl.BoolVar(&f.Laying, "laying", false, "they only have to lay by then, not to be ready")
	fl.StringVar(&f.Line, "line", "", "mother `LINE`")
	some(c, &f.Nucs, "nucs", upTo(plan.MostNucs), "so many nucs (else all that are free)")
	fl.StringVar(&f.larvae, "larvae", "", "so many `LARVAE` a graft, or one by one: 80,60 are two grafts (else as many as it needs)")
	some(c, &f.Grafts, "grafts", upTo(plan.MostGrafts), "in so many grafts (else one)")
	some(c, &f.Apart, "apart", upTo(plan.MostApart), "grafts so many `DAYS` apart (else a week)")
	some(c, &f.percent, "sure", percent, "how sure you want to be, in per cent (else as in your numbers)")
	fl.StringVar(&a.flags.yard, "yard", "", "mated in this `YARD` (else where most nucs stand, or where it comes nearest)")
	return c
}

// wish is what the flags say, within sense.
func (f wishFlags) wish(v *book.View, yard string) (w plan.Wish, err error) {
	w = f.Wish
	for _, most := range []struct {
		flag     string
		is, most int
	}{
		{"queens", w.Queens, plan.MostQueens},
		{"nucs", w.Nucs, plan.MostNucs},
		{"grafts", w.Grafts, plan.MostGrafts},
		{"apart", w.Apart, plan.MostApart},
	} {
		if most.is > most.most {
			return w, fmt.Errorf("--%s %d: write %d at most", most.flag, most.is, most.most)
		}
	}
	switch {
	case w.Queens < 1:
		return w, fmt.Errorf("say with --queens how many queens you want, as in: lidbook wish --queens 40 --until 2027-05-31")
	case f.by == "" && f.graft == "":
		return w, fmt.Errorf("say with --until by which day you want them, or with --graft when you graft")
	case f.percent >= 100:
		return w, fmt.Errorf("--sure %g: write per cent under 100, nothing is certain", f.percent)
	}
	w.Sure = f.percent / 100
	if w, err = f.withLarvae(w); err != nil {
		return w, err
	}
	if w.By, err = wishedDay(v, "until", f.by); err != nil {
		return w, err
	}
	if w.Graft, w.Minute, err = wishedGraft(v, f.graft); err != nil {
		return w, err
	}
	if w.Line != "" {
		if w.Line, err = (finder{View: v}).breederLine(w.Line); err != nil {
			return w, err
		}
	}
	if yard != "" {
		y, err := finder{View: v}.yard(yard)
		if err != nil {
			return w, err
		}
		w.Yard = y.Yard
	}
	return w, nil
}

// withLarvae is a wish with the larvae that are said.
func (f wishFlags) withLarvae(w plan.Wish) (plan.Wish, error) {
	if f.larvae == "" {
		return w, nil
	}
	all, ok := plan.ReadLarvae(f.larvae)
	if !ok {
		return w, fmt.Errorf("--larvae %s: write how many larvae each graft has, as in 48, or one graft after the other, as in 80,60; %d grafts at most", f.larvae, plan.MostGrafts)
	}
	for _, n := range all {
		if n < 1 || n > plan.MostLarvae {
			return w, fmt.Errorf("--larvae %s: write 1 to %d a graft", f.larvae, plan.MostLarvae)
		}
	}
	if said := max(1, w.Grafts); len(all) > 1 && w.Grafts != 0 && said != len(all) {
		return w, fmt.Errorf("--larvae %s: these are %d grafts, and --grafts says %d: leave --grafts out", f.larvae, len(all), said)
	}
	return w.WithLarvae(all...), nil
}

// wishedGraft reads the day of a graft to come, or the time on it in minutes after
// midnight.
func wishedGraft(v *book.View, text string) (d calendar.Day, minute int, err error) {
	if _, wrong := line.ParseComing(text, v.Today()); text != "" && wrong != nil {
		if at, wrong := line.ParseNext(text, v.On(), v.Zone()); wrong == nil {
			at = at.In(v.Zone())
			text, minute = calendar.DayOf(at, v.Zone()).String(), at.Hour()*60+at.Minute()
		}
	}
	d, err = wishedDay(v, "graft", text)
	return d, minute, err
}

// wishedDay reads a day to come; "" is none.
func wishedDay(v *book.View, flag, text string) (d calendar.Day, err error) {
	if text == "" {
		return 0, nil
	}
	if d, err = line.ParseComing(text, v.Today()); err != nil {
		return 0, fmt.Errorf("--%s: %w", flag, err)
	}
	if d <= v.Today() || d > v.Today()+plan.MostAhead {
		return 0, fmt.Errorf("--%s %s: write a day to come, within %d days", flag, d, plan.MostAhead)
	}
	return d, nil
}
