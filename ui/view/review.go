package view

import (
	"slices"

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

// reviewName is the look of names.
var reviewName = ink(state.ReviewName).bold()

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
		foot := scene.Area{X: a.X, Y: a.Bottom() - d.Foot, W: a.W, H: d.Foot}
		d.inSightOf(foot.Y)
		d.foot(foot)
	}
}

// inSightOf says below the last whole row how many there are, where there is room above
// the foot.
func (d *reviewDraw) inSightOf(foot float64) {
	const least = 22.0
	rows, seen := len(d.s.ReviewRows()), int(d.Body.H/d.Row+0.5)
	if room := foot - d.Body.Bottom(); room >= least && rows > seen {
		d.fit(d.Body.X+state.Edge, d.Body.Bottom()+room/2+4.5, thousands(seen)+" of "+plural(rows, "row", "rows")+" in sight", ink2(13), d.Columns.To)
	}
}

// allWell says that nothing needs a decision.
func (d *reviewDraw) allWell(a scene.Area) {
	x, w := a.X+state.Edge, a.W-2*state.Edge
	y := d.wrap(x, a.Y+34, "Nothing needs a decision on "+d.r.Day.Short(), ink(16).semi(), w, 2) + 4
	d.wrap(x, y, "What each nuc holds, and when it is looked at next, stands on its card in Yard.", ink2(14), w, 3)
}

// title says how many nucs need a decision, and that it is being reckoned anew.
func (d *reviewDraw) title(now bool, room float64) string {
	n := d.all.Decisions(d.s.Filled())
	end := ""
	if !now {
		end = " · reckoning …"
	}
	nucs, need := plural(n, "nuc", "nucs"), d.s.NeedVerb(n)
	all := []string{nucs + " " + need + " to decide, worst first", nucs + " to decide, worst first", nucs + " to decide"}
	switch n {
	case 0:
		all = []string{"No nuc " + d.s.NeedVerb(1) + " to decide"}
	case 1:
		all = []string{"1 nuc " + need + " to decide", "1 nuc to decide"}
	}
	for _, said := range all {
		if d.width(said+end, reviewTitle) <= room {
			return said + end
		}
	}
	return all[len(all)-1] + end
}

// reviewTitle is the look of the title, orderSays what "worst first" means.
var reviewTitle = ink(16).semi()

const (
	orderSays  = "worst: leaving it loses most, in queens"
	orderShort = "by queens lost if left"
	orderWhy   = "What leaving a nuc loses against its best way, in queens: one ready to be caught counts most, one who lays later less, her own less still; what it costs is taken off"
)

// order says what the order of the list is.
func (d *reviewDraw) order(x, y, to float64) {
	if len(d.s.ReviewRows()) < 2 {
		return
	}
	d.fit(x, y, d.firstFitting(to-x, orderSays, orderShort), ink2(13), to)
	d.hit(scene.Area{X: x, Y: y - 14, W: max(0, to-x), H: 18}, scene.Ref{Kind: state.PaneRef, ID: "review", Part: "order"}, orderWhy)
}

// head names the list and its columns, with the key to the strips.
func (d *reviewDraw) head(a scene.Area, now bool) {
	x, c := a.X+state.Edge, d.Columns
	d.rule(x, d.Body.Y-1, c.To, d.Body.Y-1, scene.Ink)
	switch {
	case d.Foot == 0: // no room for the names of columns
		d.fit(x, a.Y+23, d.title(now, c.To-x), reviewTitle, c.To)
	case d.Narrow:
		d.fit(x, a.Y+22, d.title(now, c.To-x), reviewTitle, c.To)
		yield := "laying by " + shortDay(d.all.By) + ", of 100"
		to := c.To - d.width(yield, ink2(13)) - 12
		d.order(x, a.Y+42, to)
		d.right(c.To, a.Y+42, yield, ink2(13))
		d.legend(d.lead(x))
	default:
		to := c.Strip.X - 12
		d.fit(x, a.Y+22, d.title(now, to-x), reviewTitle, to)
		d.order(x, a.Y+42, to)
		d.columnHeads(a.Y + 22)
		d.legend(c.Strip.X)
	}
}

// columnHeads names the columns of a wide list.
func (d *reviewDraw) columnHeads(y float64) {
	c, low := d.Columns, d.Body.Y-8
	d.fit(c.Seen, low, "last seen", ink2(13), c.Strip.X-12)
	const apart = 16.0
	d.fit(c.Strip.X, y, d.chances(c.Act-apart-c.Strip.X), ink2(13), c.Act-apart)
	end := c.To
	if c.Loses > 0 {
		d.right(c.Loses, y, "leaving it", ink2(13))
		d.right(c.Loses, low, "loses", ink2(13))
		end = c.YieldTo + 34
	}
	yield := d.firstFitting(end-c.Act-100, "laying by "+shortDay(d.all.By)+", of 100", "laying, of 100")
	d.right(end, y, yield, ink2(13))
	d.fit(c.Act, y, "best with what you have", ink2(13), end-d.width(yield, ink2(13))-12)
	for _, v := range []float64{0, 50, 100} {
		d.centre(d.yieldX(v/100), low, thousands(int(v)), ink2(12))
	}
}

func (d *reviewDraw) when() string {
	if d.s.Away() {
		return "on " + shortDay(d.r.Day)
	}
	return "today"
}

// chances names what the strips show, in a width.
func (d *reviewDraw) chances(room float64) string {
	return d.firstFitting(room, "chances "+d.when()+", in %", "chances in %")
}

// lead writes before the key of a narrow list what its strips show, where there is room,
// and gives where the key begins.
func (d *reviewDraw) lead(x float64) float64 {
	const apart = 16.0
	wide := 0.0
	for _, row := range d.Legend {
		end := 0.0
		for _, part := range row {
			end += state.PartBox + 3 + d.width(part.Word, ink(state.PartSize)) + state.PartGap
		}
		wide = max(wide, end)
	}
	room := d.Columns.To - x - wide - apart
	said := d.chances(room)
	if d.width(said, ink2(13)) > room {
		return x
	}
	return d.text(x, d.Body.Y-8-state.PartRow*float64(len(d.Legend)-1), said, ink2(13)) + apart
}

// legend is the key to the strips, its last row above the list.
func (d *reviewDraw) legend(left float64) {
	for i, row := range d.Legend {
		x, y := left, d.Body.Y-8-state.PartRow*float64(len(d.Legend)-1-i)
		for _, part := range row {
			d.swatch(scene.Area{X: x, Y: y - 11, W: state.PartBox, H: 13}, part.Look)
			x = d.text(x+state.PartBox+3, y, part.Word, ink(state.PartSize)) + state.PartGap
		}
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
	return d.Columns.Yield + p*(d.Columns.YieldTo-d.Columns.Yield)
}

// foot says what the signs mean, and has the buttons.
func (d *reviewDraw) foot(a scene.Area) {
	middle := a.Bottom() - state.ReviewFoot/2
	if d.s.Away() && !d.Above { // the reason stands above the buttons
		middle = a.Bottom() - 2 - 34.0/2
	}
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Rule)
	x := a.Right() - state.Edge + 10
	for i, b := range d.footButtons() {
		w := d.width(b.word, ink(14).medium()) + 28
		x -= w + 10
		d.wideButton(scene.Area{X: x, Y: middle - 17, W: w, H: 34}, b.word, b.command, i == 0)
	}
	if d.s.Away() {
		d.shut(a, middle, x-2)
	}
	for i, row := range d.Signs {
		y := middle
		if d.Above {
			y = a.Y + 6 + state.SignRow*(float64(i)+0.5)
		}
		d.signs(row, a.X+state.Edge, y, x-12)
	}
}

// shut says why the buttons cannot be used on the day looked at: above them, or where the
// key to the signs stands there beside them, on two lines at most.
func (d *reviewDraw) shut(a scene.Area, middle, to float64) {
	var all []button
	for _, b := range d.footButtons() {
		all = append(all, button{b.word, b.command, false})
	}
	reasons, _, free := d.reasons(all)
	if free || len(reasons) == 0 {
		return
	}
	said, x := sentence(reasons[0]), a.X+state.Edge
	if !d.Above {
		d.right(a.Right()-state.Edge, a.Y+13, said, ink2(13))
		return
	}
	lines := min(2, len(scene.Wrap(d.measure, d.say(said), 13, scene.Regular, to-x)))
	d.wrap(x, middle+4.5-scene.LineHeight(13)/2*float64(lines-1), said, ink2(13), to-x, lines)
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

// signs is a row of the key to the signs of the list.
func (d *reviewDraw) signs(row []state.ReviewSign, x, y, to float64) {
	for _, s := range row {
		d.waySign(d.wayOf(s), d.all.Hand, at(x+9, y), 8, scene.Panel)
		x = d.text(x+state.SignBox, y+5, s.Word(), ink2(state.SignSize)) + state.SignGap
	}
	if more := "large: best with what you have"; !d.Narrow && !d.Above && x+10+d.width(more, ink2(13)) <= to {
		d.text(x+10, y+5, more, ink2(13))
	}
}

// wayOf is a way with a sign.
func (d *reviewDraw) wayOf(s state.ReviewSign) review.Way {
	w := review.Way{Kind: s.Kind}
	if s.Kind == review.GiveCell {
		w.Ware = 1 + slices.IndexFunc(d.all.Hand.Wares, func(w review.Ware) bool { return w.Virgin == s.Virgin })
	}
	return w
}
