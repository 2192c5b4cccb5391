package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/rules"
)

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
	ReadyOnce     string         `json:"readyOnce,omitempty"` // what has to be seen before
	Stroke        string         `json:"stroke,omitempty"`
	Needs         []findingShape `json:"needs"`
	History       []lineShape    `json:"history"`
	Gaps          []string       `json:"gaps,omitempty"`
}

func nucCommand(a *app) *cobra.Command {
	return a.ofNuc(&cobra.Command{
		Use:     "nuc NAME",
		Short:   "A nuc's card and history",
		Example: "  lidbook nuc A3\n  lidbook nuc A3 --on +14     what is to be expected in two weeks\n  lidbook nuc A1 --yard \"Far Hill\"",
		Args:    cobra.ExactArgs(1),
	}, a.showNuc)
}

// showNuc shows a nuc's card.
func (a *app) showNuc(v *book.View, n *book.Nuc) error {
	found := about(rules.Findings(v), n.NucNamed.Nuc.Subject())
	p := course.ByCalendar(v, n)
	return a.show(nucCard(v, n, p, found), func() { a.printNuc(v, n, p, found) })
}

// ofNuc is a command that reads the book and tells of one nuc, by its name.
func (a *app) ofNuc(c *cobra.Command, tell func(*book.View, *book.Nuc) error) *cobra.Command {
	c = a.completes(a.reading(c, func(_ *cobra.Command, v *book.View, args []string) error {
		f, err := a.finder(v)
		if err != nil {
			return err
		}
		n, err := f.nuc(args[0])
		if err != nil {
			return err
		}
		return tell(v, n)
	}), nucNames)
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for the name in this `YARD` first")
	return c
}

func nucCard(v *book.View, n *book.Nuc, p course.Presumption, found []rules.Finding) nucShape {
	zone := v.Zone()
	s := nucShape{
		nucRow: rowOfNuc(v, n, p, anyNeeds(found)), Why: p.Why, QueenlessFrom: stamp(n.Queenless.Instant, zone), Emerged: stamp(p.Emerged, zone),
		FirstEggs: stamp(n.Holds.FirstEggs.Instant, zone), Descent: v.DescentIn(n).String(),
		LookFrom: stamp(p.LookFrom, zone), LookBest: stamp(p.LookBest, zone), LookBy: stamp(p.LookBy, zone),
		TooLate: stamp(p.TooLateAt, zone), Ready: stamp(p.ReadyAt, zone), ReadyOnce: p.ReadyOnce(), Stroke: strokeWord(n.Paint),
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

// descentWords say what a doubtful descent keeps a queen from.
func descentWords(d book.Descent) string {
	if d == book.DescentDoubtful {
		return "doubtful, for no order that asks for a line"
	}
	return d.String()
}

func strokeWord(s book.Stroke) string {
	if s == book.NoStroke {
		return ""
	}
	return s.String()
}

func (a *app) printNuc(v *book.View, n *book.Nuc, p course.Presumption, found []rules.Finding) {
	zone := v.Zone()
	a.line("%s  %s  %s", n.Name, p.Condition.Letter(), p.Condition)
	a.line("  %s", placeWords(v, n))
	a.line("  %s", headOf(p))
	a.facts(
		emergeWord(v, p), hour(p.Emerged, zone), "look", span(v, p.LookFrom, p.LookBest, p.LookBy), "too late to mate", dayOf(v, p.TooLateAt),
		"first eggs", dayOf(v, n.Holds.FirstEggs.Instant), "descent", descentWords(v.DescentIn(n)), "ready to hand over from", dayOf(v, p.ReadyAt)+prefixed(", ", p.ReadyOnce()),
		"bees", readingWords(v, n.Bees, "on "+sidesWord(n.Bees.Value)), "stores", readingWords(v, n.Stores, "%v of 3"), "lid", strokeWord(n.Paint),
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

func headOf(p course.Presumption) string {
	if p.Seen {
		return "seen: " + p.Why
	}
	return "most probably: " + strings.TrimPrefix(p.Why, "most probably ")
}

func placeWords(v *book.View, n *book.Nuc) string {
	words := v.Yard(n.Yard).Name
	if letter := v.Stand(n.Stand).Letter; letter != "" {
		words += fmt.Sprintf(", stand %s, place %d", letter, n.Place)
	}
	return strings.TrimPrefix(words, ", ")
}

// sidesWord is the format of so many sides of comb.
func sidesWord(n float64) string {
	if n == 1 {
		return "%v side"
	}
	return "%v sides"
}

func readingWords(v *book.View, r book.Reading, format string) string {
	if !r.Said() {
		return ""
	}
	return fmt.Sprintf(format, r.Value) + " (" + momentOf(v, r.At) + ")"
}
