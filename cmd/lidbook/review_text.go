package main

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/review"
)

func (a *app) printReview(v *book.View, r *review.Review, places []int) {
	if len(places) == 0 {
		a.line("No nuc needs a decision on %s.", v.Today().Short())
	}
	rows := [][]string{{"nuc", "most probably", "best", "laying", "if left", "loses"}}
	for _, i := range places {
		n := r.Nucs[i]
		best := n.Ways[n.Best]
		title := r.Title(best)
		if why := r.Outweighs(n, best); why != "" {
			title += "; " + why
		}
		rows = append(rows, []string{n.Name, chanceWords(n.Chances), title, hundred(best.Lays), hundred(n.Ways[0].Lays), fmt.Sprintf("%.2f", n.Loses)})
	}
	if len(places) > 0 {
		a.table(rows)
		a.line("laying of 100 by %s; what leaving it loses, in queens", r.By.Short())
	}
	a.printUse(r)
}

func (a *app) printUse(r *review.Review) {
	if r.Hand.Cells()+r.Hand.Virgins() == 0 {
		a.line("")
		a.line("No cell and no virgin in hand.")
		return
	}
	a.line("")
	if r.This.Refused != "" {
		a.line("%s", r.This.Refused)
	}
	for i, w := range r.Hand.Wares {
		a.line("in hand: %d × %s; %s", w.Many, w.Name, r.MoreWords("one more", r.More(i)))
	}
	var rows [][]string
	for i, n := range r.Nucs {
		if j := r.This.Chosen[i]; j > 0 && n.Ways[j].Gives() {
			rows = append(rows, []string{"  " + n.Name, r.Title(n.Ways[j]), hundred(n.Ways[j].Lays), "if left " + hundred(n.Ways[0].Lays)})
		}
	}
	a.table(rows)
	for _, l := range r.Left() {
		a.line("%s", r.LeftWords(l))
	}
	a.line("queens by %s, laying or caught, of %s and %d empty, four times of five:", r.By.Short(), plural(r.Open, "nuc"), r.Empty)
	for _, u := range []struct {
		name string
		use  review.Use
	}{{"this use", r.This}, {"in stand order", r.Order}, {"none of them", r.None}} {
		a.line("  %-15s %g to %g, %.1f on average", u.name, u.use.Low, u.use.High, u.use.Expected)
	}
}

func (a *app) printWays(r *review.Review, places []int) {
	for _, i := range places {
		n := r.Nucs[i]
		a.line("%s  %s", n.Name, chanceWords(n.Chances))
		if spot := r.Spot(n, n.Ways[n.Best]); spot != "" {
			a.line("  %s", spot)
		}
		for j, w := range n.Ways {
			mark := ""
			if j == n.Best {
				mark = ", the best"
			}
			a.line("  %s: %s of 100 laying by %s, worth %s%s", r.Title(w), hundred(w.Lays), r.By.Short(), r.Worth(w.Worth), mark)
			for _, s := range r.Why(w) {
				if round(s.Queens) != 0 {
					a.line("    %+.2f  %s", s.Queens, s.Words)
				}
			}
			for _, reason := range w.Warned {
				a.line("    but: %s", reason.Why)
			}
		}
	}
}

func hundred(p float64) string { return fmt.Sprintf("%.0f", 100*p) }

// chanceWords are the chances of a nuc that are not small, the greatest first.
func chanceWords(c course.Chances) string {
	var said []string
	for _, k := range c.Told() {
		said = append(said, fmt.Sprintf("%s %.0f %%", k.Name, 100*k.Chance))
	}
	return strings.Join(said, ", ")
}
