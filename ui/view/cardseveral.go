package view

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// several draws the card of several things: how many of each kind, by what
// they hold, and what they need.
func (c *cardDraw) several() {
	var nucs []*state.Nuc
	for _, n := range c.r.Nucs {
		if c.s.Selection.Has(n.Nuc.Nuc.Subject()) {
			nucs = append(nucs, n)
		}
	}
	others := c.s.Selection.Len() - len(nucs)
	title := plural(len(nucs), "nuc", "nucs") + " selected"
	if others > 0 {
		title += ", and " + thousands(others) + " more"
	}
	c.titled(title)
	need := state.NeedYou(nucs)
	c.text(c.x, c.y, thousands(need)+" of them "+c.verb(need), ink2(14))
	c.y += 16
	if done := c.s.DoneWords(); done != "" {
		c.y += 6
		c.para("Done as written: "+done, ink(14), whole)
	}
	c.conditions(nucs)
	c.wants(nucs)
	c.lids(nucs, "Selected")
	c.links("Also selected", c.otherThings())
}

// conditions counts nucs by what they hold.
func (c *cardDraw) conditions(nucs []*state.Nuc) {
	if len(nucs) == 0 {
		return
	}
	counts := map[book.Condition]int{}
	for _, n := range nucs {
		counts[n.Presumed.Condition]++
	}
	c.hair()
	for _, k := range book.Conditions() {
		if counts[k] > 0 {
			c.add(scene.Lid{At: at(c.x+10, c.y-5), Size: 20, Condition: scene.Condition(k), Seen: true, Entrance: 180, NoRim: true})
			c.text(c.x+30, c.y, k.String(), ink(14))
			c.right(c.x+c.w, c.y, thousands(counts[k]), ink(14).semi())
			c.y += 24
		}
	}
}

// otherThings are what is selected besides nucs.
func (c *cardDraw) otherThings() (all []linked) {
	for s := range c.s.Selection.All() {
		if s.Kind != book.KindNuc {
			all = append(all, c.to(s))
		}
	}
	slices.SortFunc(all, func(a, b linked) int { return cmp.Compare(a.text, b.text) })
	return all
}
