package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

func needsCommand(a *app) *cobra.Command {
	var all, why bool
	c := a.completes(a.reading(&cobra.Command{
		Use:   "needs [NAME]",
		Short: "What needs you, what first",
		Long:  "Lists what needs you, and what is due by the end of today: since when, by when,\nwhy, and what to do. With a name, only what is about that nuc, batch, colony or\nyard.",
		Example: "  lidbook needs\n  lidbook needs --all             windows that open later as well\n" +
			"  lidbook needs \"batch 4\" --why   with the numbers that were used",
		Args: cobra.MaximumNArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		found := rules.Findings(v)
		if len(args) == 1 {
			f, err := a.finder(v)
			if err != nil {
				return err
			}
			of, err := f.anything(args[0])
			if err != nil {
				return err
			}
			found, all = about(found, of), true
		}
		return a.showFindings(v, found, all, why)
	}), thingNames)
	c.Flags().BoolVar(&all, "all", false, "also what is only ahead, open or put off")
	c.Flags().BoolVar(&why, "why", false, "name the numbers that were used")
	return c
}

func about(found []rules.Finding, of book.Subject) []rules.Finding {
	var all []rules.Finding
	for _, f := range found {
		is := f.Of == of || f.Yard.Subject() == of
		for _, s := range f.Also {
			is = is || s == of
		}
		if is {
			all = append(all, f)
		}
	}
	return all
}

// findingShape is a finding in JSON.
type findingShape struct {
	Rule     string   `json:"rule"`
	Severity string   `json:"severity"`
	NeedsYou bool     `json:"needsYou"`
	Of       thing    `json:"of"`
	Also     []thing  `json:"also,omitempty"`
	Yard     string   `json:"yard,omitempty"`
	What     string   `json:"what"`
	Why      string   `json:"why"`
	Do       string   `json:"do"`
	Sure     string   `json:"sure"`
	Amount   float64  `json:"amount,omitempty"`
	Since    string   `json:"since,omitempty"`
	From     string   `json:"from,omitempty"`
	Best     string   `json:"best,omitempty"`
	By       string   `json:"by,omitempty"`
	Hard     bool     `json:"hard"`
	PutOff   string   `json:"putOffUntil,omitempty"`
	Numbers  []string `json:"numbers,omitempty"`
}

func shapeOf(v *book.View, f rules.Finding) findingShape {
	zone := v.Zone()
	s := findingShape{
		Rule: string(f.Rule), Severity: f.Severity.String(), NeedsYou: f.NeedsYou(),
		Of: thingOf(v, f.Of), Also: things(v, f.Also), What: f.What, Why: f.Why, Do: f.Do, Sure: f.Sure, Amount: f.Amount,
		Since: stamp(f.Since, zone), From: stamp(f.From, zone), Best: stamp(f.Best, zone), By: stamp(f.By, zone),
		Hard: f.Hard, PutOff: f.PutOff.String(),
	}
	if !f.Yard.IsZero() {
		s.Yard = v.Yard(f.Yard).Name
	}
	for _, k := range f.Used {
		s.Numbers = append(s.Numbers, k.String())
	}
	return s
}

func (a *app) showFindings(v *book.View, found []rules.Finding, all, why bool) error {
	shown := []findingShape{}
	var texts, ahead []rules.Finding
	for _, f := range found {
		if !all && !f.NeedsYou() && !dueToday(f, v) {
			ahead = append(ahead, f)
			continue
		}
		shown = append(shown, shapeOf(v, f))
		texts = append(texts, f)
	}
	return a.show(shown, func() {
		if len(texts) == 0 {
			a.line("Nothing needs you on %s.", v.Today().Short())
		}
		a.findings(v, texts, why)
		if len(ahead) > 0 {
			a.line("%s", aheadWords(ahead, v))
		}
	})
}

// dueToday tells whether the last day of a finding is today, or gone by.
func dueToday(f rules.Finding, v *book.View) bool {
	return f.PutOff.IsZero() && !f.By.IsZero() && f.By.Before((v.Today() + 1).Start(v.Zone()))
}

// aheadWords say how much is only ahead, open or put off, and by when the first of it is due.
func aheadWords(ahead []rules.Finding, v *book.View) string {
	first, next := "", time.Time{}
	for _, f := range ahead {
		if f.By.After(v.On()) && (next.IsZero() || f.By.Before(next)) {
			first, next = ", the first by "+due(f, v.Zone()), f.By
		}
	}
	return fmt.Sprintf("Ahead, open or put off: %d%s; lidbook needs --all", len(ahead), first)
}

// findings prints findings, those that differ in nothing but their subject as
// one.
func (a *app) findings(v *book.View, all []rules.Finding, why bool) {
	type text struct {
		rule          rules.Rule
		what, why, do string
		by            time.Time
	}
	textOf := func(f rules.Finding) text { return text{f.Rule, f.What, f.Why, f.Do, f.By} }
	alike := map[text][]string{}
	for _, f := range all {
		alike[textOf(f)] = append(alike[textOf(f)], headOfFinding(v, f))
	}
	for _, f := range all {
		if heads := alike[textOf(f)]; heads != nil {
			a.finding(v, f, strings.Join(heads, " "), why)
		}
		alike[textOf(f)] = nil
	}
}

func headOfFinding(v *book.View, f rules.Finding) string {
	if f.Of.IsZero() {
		return string(f.Rule)
	}
	return rules.Name(v, f.Of)
}

// finding prints a finding in a few lines.
func (a *app) finding(v *book.View, f rules.Finding, head string, why bool) {
	a.line("%s: %s%s", head, f.What, byWords(f, v.On(), v.Zone()))
	a.line("    %s", f.Do)
	a.line("    why: %s (%s)", f.Why, f.Sure)
	if !f.PutOff.IsZero() {
		a.line("    put off until %s", f.PutOff.Short())
	}
	if !why {
		return
	}
	for _, k := range f.Used {
		n := practice.Of(k)
		a.line("    number: %s %v %s (%s)", n.Title, v.Numbers().Get(k), n.Unit, n.Source)
	}
}

// byWords tells until when: to the hour if it is hard, else by the day.
func byWords(f rules.Finding, now time.Time, zone *time.Location) string {
	switch {
	case f.By.IsZero():
		return ""
	case f.PastDue(now):
		return ", past due since " + due(f, zone)
	case now.Before(f.From) && !f.Hard:
		return fmt.Sprintf(", from %s, by %s", f.From.In(zone).Format("Mon 2 Jan"), due(f, zone))
	default:
		return ", by " + due(f, zone)
	}
}

func due(f rules.Finding, zone *time.Location) string {
	if f.Hard {
		return hour(f.By, zone)
	}
	return f.By.In(zone).Format("Mon 2 Jan")
}
