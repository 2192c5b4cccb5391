package main

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

func (a *app) printWish(v *book.View, s wishShape) {
	ready := "ready"
	if s.Laying {
		ready = "laying"
	}
	wanted := fmt.Sprintf("%s%s %s by %s", plural(s.Queens, "queen"), prefixed(" ", s.Line), ready, isoDay(v, s.By))
	takes := fmt.Sprintf("%s, %s in %s", larvaeWords(s.Grafts), plural(s.Nucs, "nuc"), s.Yard)
	switch {
	case s.Nucs == 0:
		a.line("%s: none, as no nuc is free for them", wanted)
		a.printMinds(s)
		return
	case !s.InTime:
		a.line("%s: %s; by %s %s most probably give %d", wanted, plan.OfHundred(s.Chance), isoDay(v, s.Nearest), takes, s.Then)
	case s.Chance < 0.5: // less likely than not
		a.line("%s: hardly, %s; %s most probably give %d", wanted, plan.OfHundred(s.Chance), takes, s.Expected)
	default:
		a.line("%s: %s; %s", wanted, takes, plan.OfHundred(s.Chance))
	}
	a.line("  of a new graft alone; who gets the queens that are ready or on the way: lidbook handover")
	if s.tooLate != "" {
		a.line("  %s", s.tooLate)
	}
	if s.graftBy != "" {
		a.line("  graft by %s", s.graftBy)
	}
	if !s.Laying && s.agesFor > 0 {
		a.line("  ready is from %d days of age on, so all queens of a graft are ready within few days: for an earlier day there is hardly one of them", s.agesFor)
	}
	a.printMinds(s)
	a.printAssumed(s)
	if s.Limit != "" {
		a.line("  %s; %d can be promised with %s%s", s.Limit, s.Most, plan.OfHundred(s.Sure), enoughNucs(v, s))
	}
	if s.Turns > 1 {
		a.line("  the %s serve %s: the queens of one graft are ready before cells of the next go in", plural(s.Nucs, "nuc"), plan.Times(s.Turns))
	}
	if s.Insured > 0 {
		a.line("  surer is one graft of %d larvae for all the nucs, and another only if the first fails, once you have counted its take: %s", s.For, plan.OfHundred(s.Insured))
	}
	for _, g := range s.Grafts {
		a.printGraft(v, g)
		switch {
		case g.Nucs > 0:
			a.line("  put it on the plan: %s", planCommandOf(s, g))
		case s.Nucs > 0:
			a.line("  no nuc is its own: graft it only if the others fail, when you have counted their take")
		}
	}
	a.printNeeds(v, "together they take", s.Together)
	a.printByLarvae(s)
	a.printSure(v, s)
	a.printWishDays(v, s)
	a.printByPerson(v, s.People)
	a.line("%s", soldCaution)
}

// planCommandOf is the command that puts a graft of a wish on the plan. The queens
// are those of all grafts, so that only a single one is told of them.
func planCommandOf(s wishShape, g graftShape) string {
	on, hour, _ := strings.Cut(g.Graft, "T")
	if s.hourSaid {
		on = fmt.Sprintf("%q", on+" "+hour[:len("15:04")])
	}
	words := []string{fmt.Sprintf("lidbook plan batch --on %s --larvae %d --nucs %d --yard %q", on, g.Larvae, g.Nucs, s.Yard)}
	if s.Line != "" {
		words = append(words, fmt.Sprintf("--line %q", s.Line))
	}
	if g.Queens > 0 {
		by := s.By
		if !s.InTime {
			by = s.Nearest
		}
		words = append(words, fmt.Sprintf("--queens %d --until %s", g.Queens, by))
		for _, number := range s.orders {
			words = append(words, fmt.Sprintf("--order %q", number))
		}
	}
	if s.Laying {
		words = append(words, "--laying")
	}
	return strings.Join(words, " ")
}

// enoughNucs say with how many nucs and larvae a wish would be sure enough, one that is too late by
// the nearest day.
func enoughNucs(v *book.View, s wishShape) string {
	switch {
	case s.Enough == 0:
		return ""
	case !s.InTime:
		return fmt.Sprintf("; by %s %d nucs and %d larvae would be enough", isoDay(v, s.Nearest), s.Enough, s.With)
	default:
		return fmt.Sprintf("; with %d nucs and %d larvae it would be enough", s.Enough, s.With)
	}
}

// printGraft prints the ladder of a graft, and what it eats.
func (a *app) printGraft(v *book.View, g graftShape) {
	_, hour, _ := strings.Cut(g.Graft, "T")
	a.line("graft %s %s", stampedDay(v, g.Graft), hour[:len("15:04")])
	rows := [][]string{{"  step", "best", "from", "to", ""}}
	for _, r := range g.Steps {
		rows = append(rows, []string{"  " + r.Step, isoDay(v, r.Best), isoDay(v, r.From), isoDay(v, r.By), rungNote(v, r)})
	}
	a.table(rows)
	a.facts("nine in ten of those who lay do", fmt.Sprintf("by %s, and are ready by %s", isoDay(v, g.LayBy), isoDay(v, g.ReadyBy)), "they fly", g.Flights.words(v))
	a.printNeeds(v, "it takes", g.Needs)
	a.facts("to make up", madeUpWords(g), "bees for starters from", giftsWords(g.Starters), "bees for starters", prefixed("nobody can give ", shortGift(g.ShortBees, 0)),
		"bees and brood from", giftsWords(g.Gives), "nobody can give", shortGift(g.ShortCups, g.ShortCombs), "gives none", restWords(v, g.Rests),
		"cells given "+g.lateBy, g.late)
}

func giftsWords(all []giftShape) string {
	var words []string
	for _, g := range all {
		words = append(words, giftWords(g))
	}
	return list(words)
}

// restWords say who gives nothing, and until when.
func restWords(v *book.View, all []restShape) string {
	var words []string
	for _, r := range all {
		words = append(words, r.Colony+" rests until "+isoDay(v, r.Until))
	}
	return list(words)
}

// printNeeds prints amounts and what there is of them; nothing where there are none.
func (a *app) printNeeds(v *book.View, head string, needs []needShape) {
	if len(needs) == 0 {
		return
	}
	rows := [][]string{{"  " + head, "", "on", "there is", "", ""}}
	var cup string
	kinds := map[string]string{}
	for _, n := range needs {
		rows, kinds[n.What] = append(rows, needRow(v, n)), n.kindsSaid
		if n.What == plan.CupsOfBees.String() {
			cup = plan.CupOf(v.Numbers()).String()
		}
	}
	a.table(rows)
	a.facts("nucs by kind", kinds[plan.Nucs.String()], "combs of brood by kind", kinds[plan.BroodCombs.String()], "a cup is", cup)
}

// madeUpWords say how many nucs are made up; "" where all are.
func madeUpWords(g graftShape) string {
	if g.MadeUp == g.Nucs {
		return ""
	}
	return fmt.Sprintf("%d of %s, the others are alive and keep their bees", g.MadeUp, plural(g.Nucs, "nuc"))
}

func rungNote(v *book.View, r stepShape) string {
	note := ""
	if r.Hard != "" {
		note = "hard by " + hourOf(v, r.Hard)
	}
	if r.By != "" && r.By < v.Today().String() { // days in JSON sort as they follow
		note = strings.TrimPrefix(note+", past: not to be done any more", ", ")
	}
	if r.Nobody {
		free := ", nobody is free"
		if r.Hard != "" {
			free += " before then"
		}
		note = strings.TrimPrefix(note+free, ", ")
	}
	return note
}

// hourOf is the hour of a stamp for a reader.
func hourOf(v *book.View, s string) string {
	t, err := time.Parse(time.RFC3339, s)
	if err != nil {
		return s
	}
	return hour(t, v.Zone())
}

func needRow(v *book.View, n needShape) []string {
	have, short := "", ""
	if n.Have != nil {
		have = figure(*n.Have)
	}
	if n.Short > 0 {
		short = "short by " + figure(n.Short)
	}
	return []string{"  " + n.What, howMuch(n.Amount, n.Unit), isoDay(v, n.From), have, short, orderWords(v, n.orderBy)}
}

// needed is an amount for a reader: thousands of bees need no single ones.
func needed(amount float64) string {
	if amount >= 1000 {
		return thousands(100 * int(amount/100+0.5))
	}
	return figure(amount)
}

func giftWords(g giftShape) string {
	name := g.Colony
	if g.Drones {
		name += " (drone colony, for want of others)"
	}
	words := fmt.Sprintf("%s %.1f cups", name, g.Cups)
	switch {
	case g.Cups == 0:
		return fmt.Sprintf("%s %.1f combs", name, g.Combs)
	case g.Combs > 0:
		words += fmt.Sprintf(" and %.1f combs", g.Combs)
	}
	return words
}

// shortGift is what of the bees and brood no colony can give.
func shortGift(cups, combs float64) string {
	var all []string
	if cups > 0 {
		all = append(all, fmt.Sprintf("%.1f cups", cups))
	}
	if combs > 0 {
		all = append(all, fmt.Sprintf("%.1f combs", combs))
	}
	return list(all)
}

// printSure prints what may be promised, what raises it, and what a delay costs.
func (a *app) printSure(v *book.View, s wishShape) {
	var promises, raises, late []string
	for _, p := range s.Promises {
		promises = append(promises, fmt.Sprintf("%d with %s", p.Queens, plan.OfHundred(p.Sure)))
	}
	const most = 3
	for i, r := range s.Raises {
		if i < most && r.Gain >= 0.005 {
			raises = append(raises, fmt.Sprintf("%s: %s", r.Change, plan.OfHundred(r.Chance)))
		}
	}
	for _, l := range s.Late {
		late = append(late, fmt.Sprintf("%s: %s", plural(l.Days, "day"), plan.OfHundred(l.Chance)))
	}
	a.facts("may be promised", list(promises), "most probably", plural(s.Expected, "queen"), "costs most", costWords(s), "raises it most", strings.Join(raises, ", "), "grafted late", strings.Join(late, ", "), "last graft that makes sense", lastWords(v, s))
}

// printByPerson prints who has time for the minutes of each day, and what is over.
func (a *app) printByPerson(v *book.View, days []dayPartShape) {
	if len(days) == 0 {
		return
	}
	var rows [][]string
	for _, d := range days {
		var who []string
		for _, t := range d.People {
			who = append(who, fmt.Sprintf("%s %.0f", t.Name, t.Minutes))
		}
		over := ""
		if d.Over >= 1 {
			over = fmt.Sprintf("%.0f min nobody has time for", d.Over)
		}
		rows = append(rows, []string{"  " + isoDay(v, d.Day), fmt.Sprintf("%.0f min", d.Minutes), list(who), over})
	}
	a.line("by person, whoever has most time that day first:")
	a.table(rows)
}

// larvaeWords say how many larvae are grafted: one by one where grafts differ.
func larvaeWords(grafts []graftShape) string {
	var all []int
	for _, g := range grafts {
		all = append(all, g.Larvae)
	}
	switch {
	case len(slices.Compact(slices.Clone(all))) > 1:
		return plan.LarvaeSaid(all) + " larvae"
	case len(all) > 1:
		return fmt.Sprintf("%d larvae each time", all[0])
	default:
		return plural(all[0], "larva")
	}
}

// costWords say which misfortune costs most, and how much; "" where none costs a queen.
func costWords(s wishShape) string {
	if s.Dearest == nil {
		return ""
	}
	return fmt.Sprintf("%s; without that %d with %s, not %d", s.Dearest.What, s.Dearest.Without, plan.OfHundred(s.Sure), s.Dearest.With)
}
