package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// colonyShape is a colony's card in JSON.
type colonyShape struct {
	thing
	Yard      string         `json:"yard"`
	Roles     []string       `json:"roles"`
	Line      string         `json:"line,omitempty"`
	Thousands float64        `json:"beesThousands,omitempty"`
	Banked    []string       `json:"banked"`
	Needs     []findingShape `json:"needs"`
	History   []lineShape    `json:"history"`
}

func colonyCommand(a *app) *cobra.Command {
	return a.completes(a.reading(&cobra.Command{
		Use:     "colony [NAME]",
		Short:   "A full-size colony's card and history; without a name, all of them",
		Example: "  lidbook colony S2",
		Args:    cobra.MaximumNArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		if len(args) == 0 {
			return a.colonies(v)
		}
		c, err := finder{View: v}.colony(args[0])
		if err != nil {
			return err
		}
		found := about(rules.Findings(v), c.Colony.Subject())
		s := colonyCard(v, c)
		for _, f := range found {
			s.Needs = append(s.Needs, shapeOf(v, f))
		}
		return a.show(s, func() {
			a.printColony(s)
			a.findings(v, found, false)
			a.printHistory(v, c.Colony.Subject())
		})
	}), colonyNames)
}

func colonyCard(v *book.View, c *book.Colony) colonyShape {
	s := colonyShape{
		thing: thingOf(v, c.Colony.Subject()), Yard: v.Yard(c.Yard).Name, Roles: []string{}, Line: c.Line, Thousands: c.Thousands,
		Banked: []string{}, Needs: []findingShape{}, History: history(v, c.Colony.Subject()),
	}
	for _, r := range c.Roles {
		s.Roles = append(s.Roles, r.String())
	}
	for _, q := range c.Banked {
		s.Banked = append(s.Banked, rules.Name(v, q.Subject()))
	}
	return s
}

func (a *app) printColony(s colonyShape) {
	a.line("%s  %s", s.Name, list(s.Roles))
	a.facts("yard", s.Yard, "line", s.Line, "in its bank", list(s.Banked))
}

func (a *app) colonies(v *book.View) error {
	all := []colonyShape{}
	for c := range v.Colonies() {
		all = append(all, colonyCard(v, c))
	}
	return a.show(all, func() {
		for _, s := range all {
			a.printColony(s)
		}
	})
}
