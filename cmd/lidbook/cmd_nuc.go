package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// nucRow is a nuc in a list, in JSON.
type nucRow struct {
	thing
	Yard      string   `json:"yard,omitempty"`
	Stand     string   `json:"stand,omitempty"`
	Place     int      `json:"place,omitempty"`
	Letter    string   `json:"letter"`
	Condition string   `json:"condition"`
	Seen      bool     `json:"seen"`
	Since     string   `json:"since,omitempty"`
	Batch     int      `json:"batch,omitempty"`
	Age       int      `json:"ageDays,omitempty"`
	Sides     *float64 `json:"sides,omitempty"`
	Stores    *float64 `json:"stores,omitempty"`
	NeedsYou  bool     `json:"needsYou"`
}

// nucShape is a nuc's card in JSON.
type nucShape struct {
	nucRow
	Why           string         `json:"why"`
	QueenlessFrom string         `json:"queenlessFrom,omitempty"`
	Emerged       string         `json:"emerged,omitempty"`
	FirstEggs     string         `json:"firstEggs,omitempty"`
	Descent       string         `json:"descent,omitempty"`
	LookFrom      string         `json:"lookFrom,omitempty"`
	LookBest      string         `json:"lookBest,omitempty"`
	LookBy        string         `json:"lookBy,omitempty"`
	TooLate       string         `json:"tooLateToMate,omitempty"`
	Ready         string         `json:"readyFrom,omitempty"`
	Stroke        string         `json:"stroke,omitempty"`
	Needs         []findingShape `json:"needs"`
	History       []lineShape    `json:"history"`
	Gaps          []string       `json:"gaps,omitempty"`
}

// lineShape is a line of a history in JSON.
type lineShape struct {
	ID      string `json:"entry"`
	At      string `json:"at"`
	Part    string `json:"part,omitempty"`
	Written string `json:"written"`
	Writer  string `json:"writer,omitempty"`
	Kind    string `json:"kind"`
	Words   string `json:"words"`
	Codes   string `json:"codes,omitempty"`
	Struck  bool   `json:"struck,omitempty"`
}

func nucCommand(a *app) *cobra.Command {
	c := a.completes(a.reading(&cobra.Command{
		Use:     "nuc NAME",
		Short:   "A nuc's card and history",
		Example: "  lidbook nuc A3\n  lidbook nuc A3 --on +14     what is to be expected in two weeks\n  lidbook nuc A1 --yard \"Far Hill\"",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		f, err := a.finder(v)
		if err != nil {
			return err
		}
		n, err := f.nuc(args[0])
		if err != nil {
			return err
		}
		found := about(rules.Findings(v), n.NucNamed.Nuc.Subject())
		p := course.ByCalendar(v, n)
		return a.show(nucCard(v, n, p, found), func() { a.printNuc(v, n, p, found) })
	}), nucNames)
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for the name in this `YARD` first")
	return c
}

func rowOfNuc(v *book.View, n *book.Nuc, p course.Presumption, needs bool) nucRow {
	r := nucRow{
		thing: thing{"nuc", n.Name, n.NucNamed.Nuc.String()},
		Yard:  v.Yard(n.Yard).Name, Stand: v.Stand(n.Stand).Letter, Place: n.Place,
		Letter: p.Condition.Letter(), Condition: p.Condition.String(), Seen: p.Seen, Since: stamp(p.Since, v.Zone()),
		Age: p.Age, NeedsYou: needs,
	}
	if !n.Holds.Batch.IsZero() {
		r.Batch = v.Batch(n.Holds.Batch).Number
	}
	if n.Bees.Said() {
		r.Sides = &n.Bees.Value
	}
	if n.Stores.Said() {
		r.Stores = &n.Stores.Value
	}
	return r
}

func nucCard(v *book.View, n *book.Nuc, p course.Presumption, found []rules.Finding) nucShape {
	zone := v.Zone()
	s := nucShape{
		nucRow: rowOfNuc(v, n, p, anyNeeds(found)), Why: p.Why, QueenlessFrom: stamp(n.Queenless.Instant, zone), Emerged: stamp(p.Emerged, zone),
		FirstEggs: stamp(n.Holds.FirstEggs.Instant, zone), Descent: n.Holds.Descent.String(),
		LookFrom: stamp(p.LookFrom, zone), LookBest: stamp(p.LookBest, zone), LookBy: stamp(p.LookBy, zone),
		TooLate: stamp(p.TooLateAt, zone), Ready: stamp(p.ReadyAt, zone), Stroke: strokeWord(n.Paint),
		Needs: []findingShape{}, History: history(v, n.NucNamed.Nuc.Subject()),
	}
	for _, f := range found {
		s.Needs = append(s.Needs, shapeOf(v, f))
	}
	for _, g := range n.Gaps {
		s.Gaps = append(s.Gaps, g.What)
	}
	return s
}

func strokeWord(s book.Stroke) string {
	if s == book.NoStroke {
		return ""
	}
	return s.String()
}

func anyNeeds(found []rules.Finding) bool {
	for _, f := range found {
		if f.NeedsYou() {
			return true
		}
	}
	return false
}

func history(v *book.View, of book.Subject) []lineShape {
	all := []lineShape{}
	for l := range v.History(of) {
		all = append(all, lineOf(v, l, of))
	}
	return all
}

func lineOf(v *book.View, l book.Line, of book.Subject) lineShape {
	names := line.In(v)
	return lineShape{
		ID: l.ID.String(), At: stamp(l.At.Instant, v.Zone()), Part: l.At.Part.String(), Written: stamp(l.Written, v.Zone()), Writer: l.Writer,
		Kind: book.KindOfFact(l.Fact), Words: line.WordsOn(l.Fact, names, of), Codes: line.Codes(l.Fact, names), Struck: l.Struck,
	}
}

// printHistory prints the lines of the book about a thing, the last one first.
func (a *app) printHistory(v *book.View, of book.Subject) {
	var rows [][]string
	for l := range v.History(of) {
		words := line.WordsOn(l.Fact, line.In(v), of)
		if l.Struck {
			words = "struck: " + words
		}
		rows = append([][]string{{"    " + momentOf(v, l.At), words, l.Writer}}, rows...)
	}
	if len(rows) > 0 {
		a.line("  the book says:")
		a.table(rows)
	}
}

func (a *app) printNuc(v *book.View, n *book.Nuc, p course.Presumption, found []rules.Finding) {
	zone := v.Zone()
	a.line("%s  %s  %s", n.Name, p.Condition.Letter(), p.Condition)
	a.line("  %s", placeWords(v, n))
	a.line("  %s", headOf(p))
	a.facts(
		emergeWord(v, p), hour(p.Emerged, zone), "look", span(v, p.LookFrom, p.LookBest, p.LookBy), "too late to mate", dayOf(v, p.TooLateAt),
		"first eggs", dayOf(v, n.Holds.FirstEggs.Instant), "descent", n.Holds.Descent.String(), "ready to hand over from", dayOf(v, p.ReadyAt),
		"bees", readingWords(v, n.Bees, "on %v sides"), "stores", readingWords(v, n.Stores, "%v of 3"), "lid", strokeWord(n.Paint),
	)
	for _, g := range n.Gaps {
		a.line("  does not fit the book: %s (%s)", g.What, momentOf(v, g.At))
	}
	a.findings(v, found, false)
	a.printHistory(v, n.NucNamed.Nuc.Subject())
}

// emergeWord says whether she has walked, and whether anybody saw it.
func emergeWord(v *book.View, p course.Presumption) string {
	switch {
	case p.Emerged.After(v.On()):
		return "emerges, most probably"
	case p.Told:
		return "emerged"
	default:
		return "emerged, most probably"
	}
}

// facts prints names and values in pairs; those without a value are left out.
func (a *app) facts(pairs ...string) {
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i+1] != "" {
			a.line("  %s: %s", pairs[i], pairs[i+1])
		}
	}
}

func headOf(p course.Presumption) string {
	if p.Seen {
		return "seen: " + p.Why
	}
	return "most probably: " + p.Why
}

func placeWords(v *book.View, n *book.Nuc) string {
	words := v.Yard(n.Yard).Name
	if letter := v.Stand(n.Stand).Letter; letter != "" {
		words += fmt.Sprintf(", stand %s, place %d", letter, n.Place)
	}
	return strings.TrimPrefix(words, ", ")
}

func span(v *book.View, from, best, by time.Time) string {
	if from.IsZero() {
		return ""
	}
	return fmt.Sprintf("from %s, best %s, by %s", dayOf(v, from), dayOf(v, best), dayOf(v, by))
}

func readingWords(v *book.View, r book.Reading, format string) string {
	if !r.Said() {
		return ""
	}
	return fmt.Sprintf(format, r.Value) + " (" + momentOf(v, r.At) + ")"
}

func nucsCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:   "nucs",
		Short: "All nucs in walking order: what they hold, seen or by the calendar",
		Args:  cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		needs := map[book.Subject]bool{}
		for _, f := range rules.Findings(v) {
			needs[f.Of] = needs[f.Of] || f.NeedsYou()
		}
		c := course.New(v)
		rows := []nucRow{}
		for n := range v.Nucs() {
			rows = append(rows, rowOfNuc(v, n, c.Of(n), needs[n.NucNamed.Nuc.Subject()]))
		}
		return a.show(rows, func() { a.printNucs(rows) })
	})
}

func (a *app) printNucs(rows []nucRow) {
	yard := ""
	var table [][]string
	for _, r := range rows {
		if r.Yard != yard {
			a.table(table)
			table, yard = nil, r.Yard
			a.line("%s", yard)
		}
		held := r.Condition
		if !r.Seen {
			held += ", by the calendar"
		}
		batch := ""
		if r.Batch > 0 {
			batch = fmt.Sprintf("batch %d", r.Batch)
		}
		mark := ""
		if r.NeedsYou {
			mark = "needs you"
		}
		table = append(table, []string{"  " + r.Name, r.Letter, held, batch, mark})
	}
	a.table(table)
}
