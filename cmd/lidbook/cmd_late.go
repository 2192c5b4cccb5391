package main

import (
	"fmt"
	"math"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// lateShape is the card of a late day in JSON. Counts are expected numbers.
type lateShape struct {
	Batch   int           `json:"batch,omitempty"`
	Now     string        `json:"now"`
	Next    string        `json:"nextFree"`
	Cells   int           `json:"cells"`
	Fit     int           `json:"nucsReady"`
	Hard    string        `json:"cellsOutHard"`
	First   string        `json:"firstOut50pc"`
	Middle  string        `json:"halfOut"`
	Walking bool          `json:"virginWalks"`
	Already float64       `json:"lostAlready"` // where nobody looked whether one is out
	Losses  []lossShape   `json:"losses"`
	Ways    []wayShape    `json:"ways"`
	Triage  []triageShape `json:"triage"`
}

// lossShape is what is lost by an instant if nothing is done, in JSON.
type lossShape struct {
	By   string  `json:"by"`
	Lost float64 `json:"lost"`
}

// wayShape is a way out of a late day in JSON.
type wayShape struct {
	Way        string  `json:"way"`
	Placed     int     `json:"placed"`
	Caged      int     `json:"caged"`
	Left       int     `json:"left"`
	Lost       float64 `json:"lost"`
	Kept       float64 `json:"kept"`
	Accepted   float64 `json:"accepted"`
	Minutes    float64 `json:"minutes"`
	LastResort bool    `json:"lastResort,omitempty"`
}

// triageShape is a step after a virgin has walked, in JSON.
type triageShape struct {
	Seen  string `json:"seen"`
	Means string `json:"means"`
	Do    string `json:"do"`
}

func lateCommand(a *app) *cobra.Command {
	var g graft
	var next string
	var fit int
	c := &cobra.Command{
		Use:   "late [BATCH]",
		Short: "A late day: what waiting costs, and the ways out side by side",
		Long: "Ripe cells are together and cannot all be placed now. Tells what is expected to\nbe lost by when, and what each way out is worth: place what fits, cage, wait.\n\n" +
			"With a book, for the batch named or for all whose cells are together; with\n--graft, without any book, from the hard hour on unless --on says otherwise.",
		Example: "  lidbook late 4 --next \"mon 18:00\"\n  lidbook late --graft \"2027-05-05 18:00\" --cells 24 --zone Europe/Berlin --next \"2027-05-17 18:00\" --fit 10",
		Args:    cobra.MaximumNArgs(1),
	}
	a.reading(c, func(_ *cobra.Command, v *book.View, args []string) error { return a.lateOfBook(v, args, next) })
	ofBook := c.RunE
	c.RunE = func(c *cobra.Command, args []string) error {
		if g.at == "" {
			return ofBook(c, args)
		}
		return a.lateOfGraft(g, next, fit)
	}
	g.flags(c)
	c.Flags().StringVar(&next, "next", "", "when you can come again, as \"`DAY TIME`\" (else the next free hours in the book)")
	amount(c, &fit, "fit", 0, "with --graft: how many nucs are ready for a cell now")
	return c
}

func (a *app) lateOfBook(v *book.View, args []string, next string) error {
	at, err := parseNext(next, v.On(), v.Zone())
	if err != nil {
		return err
	}
	f := finder{View: v}
	var cards []rules.LateCard
	if len(args) == 1 {
		b, err := f.batch(args[0])
		if err != nil {
			return err
		}
		card, ok := rules.LateDay(v, b.Batch, at)
		if !ok {
			return fmt.Errorf("batch %d has no cells together or on the way: name one that has, or none for all of them", b.Number)
		}
		cards = append(cards, card)
	} else {
		cards = allLate(v, at)
	}
	shown := []lateShape{}
	for _, card := range cards {
		shown = append(shown, shapeOfLate(card, v.Zone()))
	}
	return a.show(shown, func() {
		if len(cards) == 0 {
			a.line("No ripe cells are together on %s.", v.Today().Short())
		}
		for _, card := range cards {
			a.printLate(card, v.Zone())
		}
	})
}

// parseNext reads when the keeper can come again, if that was said.
func parseNext(text string, now time.Time, zone *time.Location) (time.Time, error) {
	if text == "" {
		return time.Time{}, nil
	}
	at, err := line.ParseNext(text, now, zone)
	if err != nil {
		return at, fmt.Errorf("--next: %w", err)
	}
	return at, nil
}

// allLate are the cards of batches whose hard hour is near or past.
func allLate(v *book.View, next time.Time) []rules.LateCard {
	var all []rules.LateCard
	for b := range v.Batches() {
		best := b.Clock(v.Numbers()).Best()
		if card, ok := rules.LateDay(v, b.Batch, next); ok && !v.On().Before(best) {
			all = append(all, card)
		}
	}
	return all
}

func (a *app) lateOfGraft(g graft, next string, fit int) error {
	b, zone, err := g.batch(a)
	if err != nil {
		return err
	}
	now := b.Clock(practice.Numbers{}).Hard() // the hour from which it is late
	if a.flags.on != "" {
		w, err := line.ParseWhen(a.flags.on, calendar.DayOf(a.now, zone), zone)
		if err != nil {
			return fmt.Errorf("--on: %w", err)
		}
		now = w.Instant(a.now, zone)
	}
	at, err := parseNext(next, now, zone)
	if err != nil {
		return err
	}
	if at.IsZero() {
		return fmt.Errorf("say with --next when you can come again, like --next \"tomorrow 18:00\"")
	}
	card := rules.LateDayOf(b, now, at, fit, practice.Numbers{})
	return a.show([]lateShape{shapeOfLate(card, zone)}, func() { a.printLate(card, zone) })
}

func shapeOfLate(c rules.LateCard, zone *time.Location) lateShape {
	s := lateShape{
		Batch: c.Number, Now: stamp(c.Now, zone), Next: stamp(c.Next, zone), Cells: c.Cells, Fit: c.Fit,
		Hard: stamp(c.Hard, zone), First: stamp(c.First, zone), Middle: stamp(c.Middle, zone), Walking: c.Walking, Already: round(c.Already),
	}
	for _, l := range c.Losses {
		s.Losses = append(s.Losses, lossShape{stamp(l.By, zone), round(l.Lost)})
	}
	for _, w := range c.Ways {
		s.Ways = append(s.Ways, wayShape{w.Way.String(), w.Placed, w.Caged, w.Left, round(w.Lost), round(w.Kept), round(w.Accepted), w.Work.Minutes(), w.LastResort})
	}
	for _, t := range c.Triage {
		s.Triage = append(s.Triage, triageShape{t.Seen, t.Means, t.Do})
	}
	return s
}

// round leaves two places: an expected number is no truer than that.
func round(x float64) float64 { return math.Round(x*100) / 100 }

func (a *app) printLate(c rules.LateCard, zone *time.Location) {
	head := c.CellWords() + " not placed"
	if c.Number > 0 {
		head = fmt.Sprintf("batch %d: ", c.Number) + head
	}
	a.line("%s on %s, %s ready", head, hour(c.Now, zone), plural(c.Fit, "nuc"))
	if c.Walking {
		a.line("  A virgin is out. Box open, in this order, within the hour:")
		a.printTriage(c)
	}
	a.line("  hard by %s; first virgin, even chance, %s; half out %s", hour(c.Hard, zone), hour(c.First, zone), hour(c.Middle, zone))
	a.line("  %s", c.HardMeans())
	a.printLosses(c, zone)
	a.printLateWays(c, zone)
	if !c.Walking {
		a.line("  If a virgin has walked:")
		a.printTriage(c)
	}
}

func (a *app) printTriage(c rules.LateCard) {
	for i, t := range c.Triage {
		a.line("    %d %s: %s; %s", i+1, t.Seen, t.Means, t.Do)
	}
}

// printLosses says what is lost already, and what waiting on costs.
func (a *app) printLosses(c rules.LateCard, zone *time.Location) {
	already := c.AlreadySays()
	switch {
	case len(c.Ways) == 0:
		a.line("  lost already: %s; by now some are surely out", already)
		return
	case already != "" && !c.Walking:
		a.line("  lost already unless none is out: %s", already)
		a.line("  expected lost if none is out and nothing is done:")
	default:
		a.line("  expected lost if nothing is done:")
	}
	var rows [][]string
	for _, l := range c.Losses {
		rows = append(rows, []string{"    by " + hour(l.By, zone), fmt.Sprintf("about %.0f of %d", l.Lost, c.Cells)})
	}
	a.table(rows)
}

// printLateWays puts the ways out side by side.
func (a *app) printLateWays(c rules.LateCard, zone *time.Location) {
	if len(c.Ways) == 0 {
		return
	}
	a.line("  ways out until %s, best first; what is together and alive then is given or caged then:", hour(c.Next, zone))
	rows := [][]string{{"    way", "lost", "kept", "accepted", "minutes"}}
	for _, w := range c.Ways {
		way := w.Way.String()
		if w.LastResort {
			way += " (last resort)"
		}
		rows = append(rows, []string{"    " + way, fmt.Sprintf("%.1f", w.Lost), fmt.Sprintf("%.1f", w.Kept), fmt.Sprintf("%.1f", w.Accepted), fmt.Sprintf("%.0f", w.Work.Minutes())})
	}
	a.table(rows)
}
