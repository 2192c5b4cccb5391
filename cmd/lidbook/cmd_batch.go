package main

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// batchRow is a batch in a list, in JSON.
type batchRow struct {
	Number  int    `json:"number"`
	ID      string `json:"id"`
	Grafted string `json:"grafted"`
	Line    string `json:"line,omitempty"`
	Larvae  int    `json:"larvae"`
	Taken   *int   `json:"taken,omitempty"`
	Capped  *int   `json:"capped,omitempty"`
	Ripe    *int   `json:"ripe,omitempty"`
	Given   int    `json:"given"`
	PutIn   int    `json:"virginsPutIn"`
	Caged   int    `json:"caged"`
	Culled  int    `json:"culled"`
	Out     int    `json:"emerged"`
	Dead    int    `json:"dead"`
	Left    int    `json:"left"`
}

// batchShape is a batch's card in JSON.
type batchShape struct {
	batchRow
	Clock   clockShape     `json:"clock"`
	Nucs    []string       `json:"nucs"`
	Needs   []findingShape `json:"needs"`
	History []lineShape    `json:"history"`
}

// clockShape is a batch's clock in JSON.
type clockShape struct {
	Steps    []windowShape `json:"steps"`
	Best     string        `json:"cellsOutBest"`
	Hard     string        `json:"cellsOutHard"`
	FirstOne string        `json:"firstOut1pc"`
	FirstTen string        `json:"firstOut10pc"`
	FirstMid string        `json:"firstOut50pc"`
	Middle   string        `json:"halfOut"`
	Doubted  bool          `json:"doubted,omitempty"`
}

// windowShape is a step of a batch by the day, in JSON.
type windowShape struct {
	Step string `json:"step"`
	From string `json:"from"`
	Best string `json:"best"`
	By   string `json:"by"`
}

func rowOfBatch(v *book.View, b *book.Batch) batchRow {
	return batchRow{
		Number: b.Number, ID: b.Batch.String(), Grafted: stamp(b.At.Instant, v.Zone()), Line: b.Line, Larvae: b.Larvae,
		Taken: counted(b.Taken), Capped: counted(b.Capped), Ripe: counted(b.Ripe), Given: given(b, false), PutIn: given(b, true), Caged: len(b.Caged),
		Culled: b.Culled, Out: b.Out, Dead: b.Dead, Left: b.Left(),
	}
}

// given counts the cells of a batch that went into nucs, or the virgins.
func given(b *book.Batch, virgins bool) (n int) {
	for _, g := range b.Given {
		if g.Virgin == virgins {
			n++
		}
	}
	return n
}

func counted(c book.Count) *int {
	if !c.Counted() {
		return nil
	}
	return &c.N
}

func clockOf(b bee.Batch, n practice.Numbers, zone *time.Location) clockShape {
	c := b.Clock(n)
	s := clockShape{
		Best: stamp(c.Best(), zone), Hard: stamp(c.Hard(), zone), FirstOne: stamp(c.FirstOut(0.01), zone),
		FirstTen: stamp(c.FirstOut(0.1), zone), FirstMid: stamp(c.FirstOut(0.5), zone), Middle: stamp(c.Middle(), zone), Doubted: c.Doubted(),
	}
	graft := calendar.DayOf(b.Graft, zone)
	for _, w := range windows(b, n, zone) {
		s.Steps = append(s.Steps, windowShape{
			w.Step.String(), (graft + calendar.Day(w.From)).String(), (graft + calendar.Day(w.Best)).String(), (graft + calendar.Day(w.By)).String(),
		})
	}
	return s
}

// windows are the steps of a batch by the day as its own clock bounds them:
// its cells go into nucs no later than on the day of the hard line, and half of
// them emerge on one day.
func windows(b bee.Batch, n practice.Numbers, zone *time.Location) []bee.Window {
	c, graft := b.Clock(n), calendar.DayOf(b.Graft, zone)
	all := bee.Windows(n)
	for i, w := range all {
		switch w.Step {
		case bee.CellsIn:
			w.By = min(w.By, calendar.DayOf(c.Hard(), zone).Sub(graft))
			w.Best = min(w.Best, w.By)
			w.From = min(w.From, w.Best)
		case bee.Emergence:
			w.Best = calendar.DayOf(c.Middle(), zone).Sub(graft)
			w.From, w.By = min(w.From, w.Best), max(w.By, w.Best)
		}
		all[i] = w
	}
	return all
}

func stepWords(s bee.Step) string {
	if s == bee.Emergence {
		return "emerge, half of them"
	}
	return s.String()
}

func fromTo(w bee.Window) string {
	if w.From == w.By {
		return strconv.Itoa(w.From)
	}
	return fmt.Sprintf("%d to %d", w.From, w.By)
}

// printClock prints a batch's clock: the steps by the day, then the hard hours.
func (a *app) printClock(b bee.Batch, n practice.Numbers, zone *time.Location) {
	graft := calendar.DayOf(b.Graft, zone)
	rows := [][]string{{"  days from the graft", "best", "day", "from to"}}
	for _, w := range windows(b, n, zone) {
		rows = append(rows, []string{"  " + stepWords(w.Step), (graft + calendar.Day(w.Best)).Short(), strconv.Itoa(w.Best), fromTo(w)})
	}
	a.table(rows)
	c := b.Clock(n)
	a.line("  cells out, best by  %s", hour(c.Best(), zone))
	a.line("  cells out, hard by  %s", hour(c.Hard(), zone))
	a.line("  first virgin out    1 in 100 by %s, 10 in 100 by %s, even chance %s", hour(c.FirstOut(0.01), zone), hour(c.FirstOut(0.1), zone), hour(c.FirstOut(0.5), zone))
	a.line("  half of them out    %s", hour(c.Middle(), zone))
	if c.Doubted() {
		a.line("  something seen does not fit this clock: the graft, the warmth or the look is wrong")
	}
}

func batchCommand(a *app) *cobra.Command {
	return a.completes(a.reading(&cobra.Command{
		Use:     "batch NUMBER",
		Short:   "A batch's card: counts, clock, nucs, history",
		Example: "  lidbook batch 4",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		b, err := finder{View: v}.batch(args[0])
		if err != nil {
			return err
		}
		found := about(rules.Findings(v), b.Batch.Subject())
		s := batchShape{
			batchRow: rowOfBatch(v, b), Clock: clockOf(b.Bee(b.Left()), v.Numbers(), v.Zone()),
			Nucs: giftNames(v, b), Needs: []findingShape{}, History: history(v, b.Batch.Subject()),
		}
		for _, f := range found {
			s.Needs = append(s.Needs, shapeOf(v, f))
		}
		return a.show(s, func() { a.printBatch(v, b, found) })
	}), batchNumbers)
}

func giftNames(v *book.View, b *book.Batch) []string {
	all := []string{}
	for _, g := range b.Given {
		all = append(all, v.Nuc(g.Nuc).Name)
	}
	return all
}

func (a *app) printBatch(v *book.View, b *book.Batch, found []rules.Finding) {
	a.line("batch %d  grafted %s%s", b.Number, b.At.In(v.Zone()), prefixed("  line ", b.Line))
	a.line("  %s", strings.Join(countWords(b), ", "))
	a.printClock(b.Bee(b.Left()), v.Numbers(), v.Zone())
	if nucs := giftNames(v, b); len(nucs) > 0 {
		a.line("  in nucs: %s", strings.Join(nucs, " "))
	}
	a.findings(v, found, false)
	a.printHistory(v, b.Batch.Subject())
}

func prefixed(prefix, text string) string {
	if text == "" {
		return ""
	}
	return prefix + text
}

// countWords are a batch's counts, those there are.
func countWords(b *book.Batch) []string {
	words := []string{plural(b.Larvae, "graft")}
	add := func(n int, word string) {
		if n > 0 {
			words = append(words, thousands(n)+" "+word)
		}
	}
	if b.Taken.Counted() {
		words = append(words, thousands(b.Taken.N)+" taken")
	}
	if b.Capped.Counted() {
		words = append(words, thousands(b.Capped.N)+" capped")
	}
	add(b.Culled, "culled")
	add(given(b, false), "given")
	add(len(b.Caged), "caged")
	add(given(b, true), "put in as virgins")
	add(b.Out, "emerged outside nucs")
	add(b.Dead, "dead")
	add(b.Lost, "dropped")
	return append(words, thousands(b.Left())+" still together")
}

func batchesCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:   "batches",
		Short: "All batches with their counts",
		Args:  cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		rows := []batchRow{}
		var table [][]string
		for b := range v.Batches() {
			rows = append(rows, rowOfBatch(v, b))
			table = append(table, []string{fmt.Sprintf("batch %d", b.Number), b.At.In(v.Zone()), b.Line, strings.Join(countWords(b), ", ")})
		}
		return a.show(rows, func() { a.table(table) })
	})
}
