package view

import (
	"fmt"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// planDraw is the room Plan being drawn.
type planDraw struct {
	*sheet
	state.PlanPane
	all *state.PlanSheet
	now bool // the answer is that of what stands in the fields
}

// plan draws the room Plan: the wish as a sentence, the ladder of its steps on the
// days of the ribbon, and below it amounts, how sure, minutes and why.
func (p *sheet) plan() {
	switch {
	case p.s.OnOrders():
		p.orders()
		return
	case p.s.OnSeason():
		p.season()
		return
	}
	d := planDraw{sheet: p, PlanPane: p.s.PlanPane(p.l)}
	d.all, d.now = p.s.PlanSheet()
	p.rect(p.l.Main, scene.Panel)
	p.wholeTexts(d.Body, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: "plan"}}, func() {
		if d.Body.Y == p.l.Main.Y {
			d.wish()
		}
		if d.all == nil {
			d.noAnswer()
			return
		}
		d.ladder()
		d.amounts(d.Parts[0])
		d.sure(d.Parts[1])
		if !d.triesWide() {
			d.minutes(d.Parts[2])
		}
		d.why(d.Parts[3])
		d.stale()
		d.scrollBar(d.Body, d.Offset, d.Tall)
	})
	if d.Body.Y > p.l.Main.Y {
		d.wish()
	}
	p.days()
}

// stale lays paper over an answer that is not that of what stands in the fields, since that
// cannot be read.
func (d *planDraw) stale() {
	const through = 0.42
	if _, wrong := d.s.Wish(); wrong.Field != "" {
		below := d.Body
		below.Y = max(below.Y, d.Wish.Bottom())
		below.H = d.Body.Bottom() - below.Y
		d.add(scene.Rect{Area: below, Fill: scene.Panel, Clear: through})
	}
}

// noAnswer says why there is no answer: it is on its way, or the wish cannot be read;
// then the button stands in its place, dashed.
func (d *planDraw) noAnswer() {
	x, w := d.Body.X+state.Edge, d.Body.W-2*state.Edge
	_, wrong := d.s.Wish()
	if wrong.Field == "" {
		d.wrap(x, d.Ladder.Y+30, "reckoning dates and amounts …", ink(15), w, 2)
		return
	}
	d.wrap(x, d.Ladder.Y+30, "Dates and amounts stand here as soon as the wish can be read: "+wrong.Why, ink(15), w, 4)
	if !d.stacks() {
		d.planButtons(d.Parts[3])
	}
}

// partHead writes the head of a part, with a line about it below, and gives where
// its body begins.
func (d *planDraw) partHead(a scene.Area, head, says string) float64 {
	d.fit(a.X+state.Edge, a.Y+24, head, ink(15).semi(), a.Right()-8)
	if says == "" {
		return a.Y + 36
	}
	d.fit(a.X+state.Edge, a.Y+42, says, ink2(13), a.Right()-8)
	return a.Y + partHeads
}

// partHeads is how high the head of a part and the line about it are, dp.
const partHeads = 54.0

// amounts lists what the wish eats, and what of it is there. What leads to the others stands in one
// place on all pages.
func (d *planDraw) amounts(a scene.Area) {
	y := d.partHead(a, "Amounts", "")
	const least, most = 24.0, 28.0
	lines := int((a.Bottom() - y - 8) / least)
	page := d.s.PlanAmountsIn(lines)
	row := min(most, max(least, (a.Bottom()-y-8)/float64(max(1, min(lines, len(page.Told)+1)))))
	turns := page.More > 0 || page.Last
	if turns {
		row = max(least, (a.Bottom()-y-8)/float64(max(1, lines)))
	}
	x, to := a.X+state.Edge, a.Right()-14
	value, link := x+min(200, (to-x)*0.56), y+row*float64(lines-1)
	for _, n := range page.Told {
		d.amountLine(n, scene.Area{X: x, Y: y, W: to - x, H: row}, value)
		y += row
	}
	word := plural(page.More, "more amount", "more amounts")
	if page.Last {
		word = "back to the first amounts"
	}
	if turns {
		d.link(x, link+row/2+5, word, ink(13.5).as(scene.Pen), "more amounts", false)
	} else {
		link = a.Bottom() - 8
	}
	if y+15 < link && page.More == 0 {
		d.givers(x, y+15, to, link)
	}
}

func (d *planDraw) amountLine(n state.PlanAmount, a scene.Area, value float64) {
	y := a.Y + a.H/2 + 4
	const size = 14
	begins := d.right(value, y, n.Value, ink(size).semi())
	d.fit(a.X, y, n.Name, ink(size), begins-8)
	f := ink2(13)
	if n.Short {
		f = f.as(scene.Act)
	}
	d.fit(value+12, y, d.wholeClauses(a.Right()-value-12, n.Have), f, a.Right())
	d.rule(a.X, a.Bottom()-0.5, a.Right(), a.Bottom()-0.5, scene.Hair)
	d.hit(a, scene.Ref{Kind: state.FigureRef, ID: n.Name}, n.Name+"  "+n.Have+"  "+d.numbersSaid(n.Used))
}

// givers names the colonies that give the bees of the nucs, graft by graft, and who rests, each whole
// as far as it has room.
func (d *planDraw) givers(x, y, to, bottom float64) {
	f := ink2(13)
	for i, given := range d.all.Given {
		on := ""
		if len(d.all.Given) > 1 {
			on = " of graft " + d.all.Batches[i].Day.ShortFrom(d.s.Today())
		}
		for _, g := range given {
			says := givenSaid(g, on, d.s.Today())
			lines := len(scene.Wrap(d.measure, d.say(says), f.size, f.weight, to-x))
			if y+4+float64(lines-1)*scene.LineHeight(f.size) > bottom {
				return
			}
			y = d.wrap(x, y+4, says, f, to-x, lines)
		}
	}
}

// givenSaid says, as read today, who gives the bees for starters or nucs.
func givenSaid(g plan.Given, on string, today calendar.Day) string {
	of := map[plan.Step]string{plan.SetUpStarter: "starters", plan.MakeUpNucs: "nucs"}
	var names, rest []string
	for _, gift := range g.Gifts {
		name := fmt.Sprintf("%s %.0f", gift.Colony.Name, gift.Cups)
		if gift.OfDrones() {
			name += " (drone colony)"
		}
		names = append(names, name)
	}
	says := "Cups of bees for " + of[g.For] + on + " from " + strings.Join(names, ", ")
	if len(names) == 0 {
		says = "Nobody can give bees for " + of[g.For] + on
	}
	if len(names) > 0 && g.ShortCups >= 1 {
		says += fmt.Sprintf("; %.0f nobody can give", g.ShortCups)
	}
	for _, r := range g.Rest {
		rest = append(rest, r.Colony.Name+" rests until "+r.Rests.ShortFrom(today))
	}
	return strings.Join(append([]string{says}, rest...), "; ")
}
