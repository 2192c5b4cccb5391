package view

import (
	"slices"
	"strings"

	"lidmark/domain/review"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// reviewDraw is the list of Review being drawn.
type reviewDraw struct {
	*sheet
	state.ReviewPane
	all *state.ReviewSheet
	r   *state.Reading
	at  reviewColumns
}

// reviewColumns say where the columns of the list lie; what has no room is 0.
type reviewColumns struct {
	lid, name, seen    float64
	strip              scene.Area // of a row: Y from the middle
	act, actTo         float64
	yield, yieldTo, to float64
}

// review draws the room Review: the nucs that need a decision, and beside them what
// is in hand, or why.
func (p *sheet) review() {
	a := p.l.Main
	p.rect(a, scene.Panel)
	sheet, now := p.s.ReviewSheet()
	if sheet == nil {
		p.reviewNone(a)
	} else {
		d := reviewDraw{sheet: p, ReviewPane: p.s.ReviewPane(p.l), all: sheet, r: p.s.Reading()}
		d.at = d.columns(a)
		d.list(a, now)
	}
	p.card()
	p.days()
}

// reviewNone says that nothing is known yet, or that there are no nucs.
func (p *sheet) reviewNone(a scene.Area) {
	x, w := a.X+state.Edge, a.W-2*state.Edge
	if len(p.s.Reading().Nucs) > 0 {
		p.wrap(x, a.Y+30, "reckoning what each nuc holds, and what is best done …", ink(15), w, 3)
		return
	}
	y := p.wrap(x, a.Y+30, "There are no nucs to review", ink(16).semi(), w, 2)
	p.hint(scene.Area{X: x, Y: y + 8, W: w, H: a.Bottom() - y})
}

func (d *reviewDraw) columns(a scene.Area) (c reviewColumns) {
	c.lid, c.name, c.to = a.X+42, a.X+70, a.Right()-state.Edge
	left := c.name + d.nameWidth() + 10
	if d.Narrow {
		c.strip = scene.Area{X: left, Y: 14, W: c.to - left, H: 14}
		c.act, c.actTo = left+24, c.to-46
		return c
	}
	free := c.to - left
	c.seen = left
	c.strip = scene.Area{X: left + free*0.235, Y: -6, W: free * 0.285, H: 22}
	c.act = c.strip.Right() + 26
	c.yield = left + free*0.815
	c.actTo = c.yield - 18
	c.yieldTo = c.to - 34
	return c
}

// nameWidth is how wide the widest name in sight is, within bounds.
func (d *reviewDraw) nameWidth() (w float64) {
	const least, most = 32.0, 96.0
	w = least
	d.inSight(func(row state.ReviewRow, _ scene.Area) {
		if row.Fold == "" {
			w = max(w, d.width(d.all.Nucs[row.Nucs[0]].NucNamed.Name, reviewName))
		}
	})
	return min(w, most)
}

// reviewName is the look of names.
var reviewName = ink(16).bold()

// inSight goes through the rows that show.
func (d *reviewDraw) inSight(draw func(state.ReviewRow, scene.Area)) {
	rows := d.s.ReviewRows()
	first := int(d.Offset / d.Row)
	for i := first; i < len(rows); i++ {
		row := scene.Area{X: d.Body.X, Y: d.Body.Y + float64(i)*d.Row - d.Offset, W: d.Body.W, H: d.Row}
		if row.Y >= d.Body.Bottom() {
			return
		}
		draw(rows[i], row)
	}
}

// list draws head, rows and foot.
func (d *reviewDraw) list(a scene.Area, now bool) {
	d.head(a, now)
	if len(d.s.ReviewRows()) == 0 {
		d.allWell(d.Body)
	}
	d.clipped(d.Body, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: "review"}}, func() {
		d.grid()
		d.inSight(d.row)
		d.scrollBar(d.Body, d.Offset, d.Row*float64(len(d.s.ReviewRows())))
	})
	if d.Foot > 0 {
		d.foot(scene.Area{X: a.X, Y: d.Body.Bottom(), W: a.W, H: d.Foot})
	}
}

// allWell says that nothing needs a decision.
func (d *reviewDraw) allWell(a scene.Area) {
	x, w := a.X+state.Edge, a.W-2*state.Edge
	y := d.wrap(x, a.Y+34, "Nothing needs a decision on "+d.r.Day.Short(), ink(16).semi(), w, 2) + 4
	d.wrap(x, y, "What each nuc holds, and when it is looked at next, stands on its card in Yard.", ink2(14), w, 3)
}

// title says how many nucs need a decision, and that it is being reckoned anew.
func (d *reviewDraw) title(now bool) string {
	n := d.all.Decisions(d.s.Filled())
	verb := "need you to decide, worst first"
	if n == 1 {
		verb = "needs you to decide"
	}
	said := plural(n, "nuc", "nucs") + " " + verb
	if n == 0 {
		said = "No nuc needs you to decide"
	}
	if !now {
		said += " · reckoning …"
	}
	return said
}

// head names the list and its columns, with the key to the strips.
func (d *reviewDraw) head(a scene.Area, now bool) {
	c := d.at
	if d.Narrow {
		d.fit(a.X+state.Edge, a.Y+24, d.title(now), ink(16).semi(), c.to)
		if d.Foot > 0 {
			d.legend(a.X+state.Edge, a.Y+46, c.to)
		}
		d.rule(a.X+state.Edge, d.Body.Y-1, c.to, d.Body.Y-1, scene.Ink)
		return
	}
	title := d.title(now)
	if d.Foot == 0 { // no room for the names of columns
		d.fit(a.X+state.Edge, a.Y+23, title, ink(16).semi(), c.to)
		d.rule(a.X+state.Edge, d.Body.Y-1, c.to, d.Body.Y-1, scene.Ink)
		return
	}
	if d.width(title, ink(16).semi()) > c.strip.X-12-a.X-state.Edge {
		title = strings.Replace(title, "need you to decide", "to decide", 1)
	}
	d.fit(a.X+state.Edge, a.Y+26, title, ink(16).semi(), c.strip.X-12)
	d.text(c.seen, a.Y+54, "last seen", ink2(13))
	d.fit(c.strip.X, a.Y+26, "what it holds "+d.when()+", chance in %", ink2(13), c.act-8)
	d.fit(c.act, a.Y+26, "best with what you have", ink2(13), c.actTo)
	d.right(c.to, a.Y+26, "laying by "+shortDay(d.all.By)+", of 100, if", ink2(13))
	d.legend(c.strip.X, a.Y+54, c.yield-16)
	for _, v := range []float64{0, 50, 100} {
		d.centre(d.yieldX(v/100), a.Y+54, thousands(int(v)), ink2(12))
	}
	d.rule(a.X+state.Edge, d.Body.Y-1, c.to, d.Body.Y-1, scene.Ink)
}

func (d *reviewDraw) when() string {
	if d.s.Away() {
		return "on " + shortDay(d.r.Day)
	}
	return "today"
}

// legend is the key to the strips.
func (d *reviewDraw) legend(x, y, to float64) {
	box, gap := 14.0, 8.0
	if d.Narrow {
		box, gap = 12, 6
	}
	for _, part := range d.all.Legend() {
		if x+box+3+d.width(part.Word, ink(12)) > to {
			return
		}
		d.part(part.Look, scene.Area{X: x, Y: y - 11, W: box, H: 13})
		x = d.text(x+box+3, y, part.Word, ink(12)) + gap
	}
}

// grid draws the lines of the scale through all rows.
func (d *reviewDraw) grid() {
	if d.Narrow {
		return
	}
	for _, v := range []float64{0, 0.25, 0.5, 0.75, 1} {
		d.rule(d.yieldX(v), d.Body.Y, d.yieldX(v), d.Body.Bottom(), scene.Hair)
	}
}

// yieldX is where a chance lies on the scale.
func (d *reviewDraw) yieldX(p float64) float64 {
	return d.at.yield + p*(d.at.yieldTo-d.at.yield)
}

// foot says what the signs mean, and has the buttons.
func (d *reviewDraw) foot(a scene.Area) {
	middle := a.Y + a.H/2
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Rule)
	x := a.Right() - state.Edge + 10
	for i, b := range d.footButtons() {
		w := d.width(b.word, ink(14).medium()) + 28
		x -= w + 10
		d.wideButton(scene.Area{X: x, Y: middle - 17, W: w, H: 34}, b.word, b.command, i == 0)
	}
	d.signs(a.X+state.Edge, middle, x-12)
}

// footButtons are the foot's, from the right, the main one first: of several
// chosen nucs it takes these, else all.
func (d *reviewDraw) footButtons() []footButton {
	all := footButton{"Accept all", "accept all"}
	if n := d.all.Decisions(d.s.Filled()); n > 0 {
		all.word += " " + thousands(n)
	}
	if marked := d.s.ReviewMarked(); marked > 1 {
		return []footButton{{"Accept " + thousands(marked), "accept"}, all}
	}
	return []footButton{all, {"One by one", "one by one"}}
}

type footButton struct{ word, command string }

// signs is the key to the signs of the list.
func (d *reviewDraw) signs(x, y, to float64) {
	for _, s := range d.signWords() {
		if x+22+d.width(s.word, ink2(13)) > to {
			return
		}
		d.waySign(s.way, d.all.Hand, at(x+9, y), 8, scene.Panel)
		x = d.text(x+22, y+5, s.word, ink2(13)) + 14
	}
	if more := "large: best with what you have"; x+10+d.width(more, ink2(13)) <= to {
		d.text(x+10, y+5, more, ink2(13))
	}
}

type signWord struct {
	way  review.Way
	word string
}

// signWords are the signs of the scale, then those of what else is done in the list.
func (d *reviewDraw) signWords() []signWord {
	all := []signWord{{review.Way{}, "leave"}}
	for _, virgin := range []bool{false, true} {
		word := map[bool]string{false: "cell", true: "virgin"}[virgin]
		if at := slices.IndexFunc(d.all.Hand.Wares, func(w review.Ware) bool { return w.Virgin == virgin }); at >= 0 {
			all = append(all, signWord{review.Way{Kind: review.GiveCell, Ware: at + 1}, word})
		}
	}
	all = append(all, signWord{review.Way{Kind: review.LookFirst}, "look first"})
	for _, s := range []signWord{
		{review.Way{Kind: review.Feed}, "feed"},
		{review.Way{Kind: review.Narrow}, "narrow entrance"},
		{review.Way{Kind: review.AddBees}, "add bees"},
		{review.Way{Kind: review.ShakeOut}, "shake out"},
		{review.Way{Kind: review.Unite}, "unite"},
		{review.Way{Kind: review.GiveBrood}, "give brood"},
	} {
		if d.all.Does(s.way.Kind) {
			all = append(all, s)
		}
	}
	return all
}
