package view

import (
	"cmp"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// yardShown draws the card of the yard shown, or of all: what needs the
// keeper there.
func (c *cardDraw) yardShown() {
	nucs := c.r.In(c.s.Filled())
	if len(nucs) == 0 {
		c.titled("No nuc yet")
		c.para("in "+c.yardName(), ink2(14), whole)
		c.y -= 5
		c.yardNotes(c.s.Filled())
		c.reached(c.s.Filled())
		return
	}
	need := state.NeedYou(nucs)
	c.titled(plural(need, "nuc", "nucs") + " " + c.verb(need))
	c.para(fmt.Sprintf("of %s in %s", thousands(len(nucs)), c.yardName()), ink2(14), whole)
	c.y -= 5
	c.filterLine()
	c.pastDue(nucs)
	c.wants(nucs)
	c.weather(c.s.Filled())
	c.yardNotes(c.s.Filled())
	c.reached(c.s.Filled())
	all := button{"Select all shown", "all", false}
	switch {
	case c.s.Filter != "":
		c.buttons(button{"Show all again", "clear filter", true}, button{"Select them", "all", false})
	case need > 0:
		c.buttons(button{"Show them", "needs you", true}, all)
	default:
		c.buttons(all)
	}
}

// verb says that so many need the keeper: now, on the day looked at, or then.
func (c *cardDraw) verb(n int) string {
	switch {
	case c.r.Ahead:
		return "will need you"
	case c.s.Away():
		return "needed you"
	case n == 1:
		return "needs you"
	default:
		return "need you"
	}
}

// filterLine says what the filter does to the panes.
func (c *cardDraw) filterLine() {
	if c.s.Filter == "" {
		return
	}
	shown := len(c.s.Shown())
	said := thousands(shown) + " shown by the filter"
	if shown == 0 {
		said = "Nothing matches the filter"
	}
	if c.s.Pane != state.Table && shown > 0 {
		said += ", the others pale"
	}
	c.para(said, ink(14), whole)
	c.y += 4
}

// pastDue draws how long the work of the nucs that need the keeper is past due: all
// of them, so that the lines add up to their number.
func (c *cardDraw) pastDue(nucs []*state.Nuc) {
	var days [6]int
	for _, n := range nucs {
		if n.NeedsYou {
			days[c.lateness(n)]++
		}
	}
	most := slices.Max(days[:])
	if most == 0 {
		return
	}
	c.heading("By days past due")
	for i, word := range []string{"not past due", "1 day", "2 days", "3 days", "4 to 6 days", "a week or more"} {
		role := scene.Bar
		if i == len(days)-1 && !c.s.Away() {
			role = scene.Act
		}
		c.text(c.x, c.y, word, ink(14))
		c.rect(scene.Area{X: c.x + 116, Y: c.y - 11, W: float64(days[i]) / float64(most) * (c.w - 170), H: 12}, role)
		c.right(c.x+c.w, c.y, thousands(days[i]), ink(14).semi())
		c.y += 22
	}
}

// lateness files a nuc by the days its work is past due: none, one, two, three, up
// to six, a week or more.
func (c *cardDraw) lateness(n *state.Nuc) int {
	days := 0
	if n.Due != nil {
		days = max(0, c.r.PastDue(*n.Due))
	}
	switch {
	case days <= 3:
		return days
	case days < 7:
		return 4
	default:
		return 5
	}
}

// wants writes what the nucs that need the keeper need, the most wanted first.
func (c *cardDraw) wants(nucs []*state.Nuc) {
	acts := actsOf(nucs)
	if len(acts) == 0 {
		return
	}
	c.heading("What they need")
	for _, a := range acts {
		c.count(a.act.String(), thousands(a.n), ink(14).semi())
	}
}

// wanted is an act and how many nucs need it.
type wanted struct {
	act rules.Act
	n   int
}

func actsOf(nucs []*state.Nuc) []wanted {
	n := map[rules.Act]int{}
	for _, m := range nucs {
		for _, f := range m.Findings {
			if f.NeedsYou() && f.Act != rules.ActNone {
				n[f.Act]++
			}
		}
	}
	var all []wanted
	for a, k := range n {
		all = append(all, wanted{a, k})
	}
	slices.SortFunc(all, func(a, b wanted) int { return cmp.Or(b.n-a.n, int(a.act)-int(b.act)) })
	return all
}

// yardNotes writes what holds for a whole yard: standstill, forage, papers.
func (c *cardDraw) yardNotes(id book.YardID) {
	var said []rules.Finding
	for y := range c.r.View.Yards() {
		if id.IsZero() || y.Yard == id {
			said = append(said, c.r.About(y.Yard.Subject())...)
		}
	}
	if len(said) == 0 {
		return
	}
	c.heading("The yards")
	for _, f := range said {
		c.para(c.r.View.Yard(f.Yard).Name+": "+f.What, ink(14), whole)
	}
}
