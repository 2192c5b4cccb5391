package main

import (
	"fmt"

	"lidmark/domain/siting"
)

func (a *app) printLayout(s layoutShape) {
	if s.Nucs == 0 && s.Better == nil {
		a.line("%s: no nuc stands there; say another yard with --yard", s.Yard)
		a.printTries(s.TryOuts)
		return
	}
	a.line("%s: %s, drift %.1f of 100, %s alike, round %.0f m", s.Yard, plural(s.Nucs, "nuc"), 100*s.Drift, plural(s.Alike, "entrance"), s.Round)
	if s.Full {
		a.line("if a virgin flew from each and each had a queen: %.1f of %.0f lost at a wrong door", s.Lost, s.Virgins)
	} else {
		a.line("%.1f virgins to fly: %.1f at a wrong door, %.1f of them lost", s.Virgins, s.Wrong, s.Lost)
	}
	a.printTries(s.TryOuts)
	if s.Better != nil {
		a.printBetter(*s.Better)
	}
	for _, t := range s.TooMany {
		a.line("too many: %s", t.Words)
	}
}

func (a *app) printBetter(b betterShape) {
	a.line("")
	if len(b.Steps) == 0 {
		a.line("%d tries found nothing that pays", b.Tries)
		return
	}
	a.line("found in %d tries:", b.Tries)
	a.table([][]string{
		{"", b.before(), "found"},
		{"virgins lost", fmt.Sprintf("%.1f", b.Was.Lost), fmt.Sprintf("%.1f", b.Now.Lost)},
		{"drift, of 100", fmt.Sprintf("%.1f", 100*b.Was.Drift), fmt.Sprintf("%.1f", 100*b.Now.Drift)},
		{"round, m", fmt.Sprintf("%.0f", b.Was.Round), fmt.Sprintf("%.0f", b.Now.Round)},
	})
	work := fmt.Sprintf("%.0f min", b.Now.Minutes)
	if b.Now.Minutes == 0 {
		work = "no more than setting it up"
	}
	a.line("work: %s carried, %d turned, %s marked, %s", plural(b.Now.Carried, "nuc"), b.Now.Turned, plural(b.Now.Painted, "front"), work)
	for _, s := range b.Steps {
		gain := ""
		if b.Lost != "" {
			gain = fmt.Sprintf("; gains %.2f queens", s.Gain)
			if s.Gain < 0 {
				gain = fmt.Sprintf("; costs %.2f queens", -s.Gain)
			}
		}
		a.line("%s: %s%s", s.Title, s.Words, gain)
	}
	if len(b.Left) > 0 {
		a.line("left as they are, too little to gain: %s", siting.Names(b.Left))
	}
	if b.Lost != "" {
		a.line("how sure: virgins lost: %s; drift: %s", b.Lost, b.Drift)
	}
}

// before is what the layout that is found is held against.
func (b betterShape) before() string {
	if b.Lost != "" {
		return "now"
	}
	return "first places"
}

// printTries lists the try-outs that are kept.
func (a *app) printTries(all []tryShape) {
	for _, t := range all {
		plan := ""
		if t.From != "" {
			plan = "; the plan from " + shortDay(t.From)
		}
		a.line("try-out %s: %s otherwise, %s marked otherwise%s", t.Name, plural(t.Stands, "stand"), plural(t.Fronts, "front"), plan)
	}
}
