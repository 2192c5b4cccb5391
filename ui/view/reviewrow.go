package view

import (
	"fmt"
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/review"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

func percent(p float64) string { return strconv.Itoa(int(math.Round(100 * p))) }

// row draws a row: a nuc, or the line of like nucs.
func (d *reviewDraw) row(row state.ReviewRow, a scene.Area) {
	i := row.Nucs[0]
	rn := d.all.Nucs[i]
	n := d.r.Nuc(rn.Nuc.Nuc)
	if n == nil {
		return // the book knows it no longer
	}
	ref := n.Tag().Ref
	if row.Fold != "" {
		ref = state.FoldedOf(row.Fold)
	}
	ground := d.rowGround(row, a, ref)
	w, own := d.s.ReviewWay(i)
	plan, decided := d.s.ReviewDecided(i)
	d.who(row, n, a)
	d.strip(rn.Chances, d.stripArea(a), ref, d.evidence(n))
	switch {
	case decided:
		d.decided(plan, a)
	default:
		d.what(row, w, own, a, ground, ref)
	}
	switch {
	case decided:
	case d.Narrow:
		d.right(d.at.to, a.Y+22, percent(w.Lays), ink(14).bold())
	default:
		d.yields(rn, w, a, ground, ref)
	}
}

func (d *reviewDraw) stripArea(a scene.Area) scene.Area {
	s := d.at.strip
	s.Y += a.Y + a.H/2
	if d.Narrow {
		s.Y = a.Bottom() - 8 - s.H
	}
	return s
}

// rowGround draws what a row lies on, and gives its role.
func (d *reviewDraw) rowGround(row state.ReviewRow, a scene.Area, ref scene.Ref) scene.Role {
	box := scene.Rect{Area: scene.Area{X: a.X + 8, Y: a.Y + 1, W: a.W - 20, H: a.H - 3}, Radius: 5, Tag: scene.Tag{Ref: ref}}
	ground := scene.Panel
	switch {
	case d.s.ReviewTakes(row):
		box.Fill, box.Stroke, ground = scene.PenTint, stroke(scene.Pen, 1.5), scene.PenTint
	case d.s.Hover.Ref.Kind == ref.Kind && d.s.Hover.Ref.ID == ref.ID:
		box.Stroke = stroke(scene.Ink2, 1.5)
	}
	d.rule(a.X+state.Edge, a.Bottom()-1, d.at.to, a.Bottom()-1, scene.Hair)
	d.add(box)
	return ground
}

// who draws the lid, the name, and what was seen last; of like nucs their names.
func (d *reviewDraw) who(row state.ReviewRow, n *state.Nuc, a scene.Area) {
	middle := a.Y + a.H/2
	if d.Narrow {
		middle = a.Y + a.H/2 - 6
	}
	if row.Fold != "" {
		d.whoAll(row, n, a, middle)
		return
	}
	l := d.lidOf(n, at(d.at.lid, middle), 36)
	l.NeedsYou, l.Selected, l.Hover = false, false, false
	if row.Within {
		l.At.X += 6
		l.Size = 28
	}
	d.add(l)
	d.fit(d.at.name, middle+6, n.Name, reviewName, d.at.name+100)
	when, words := d.seenOf(n)
	ref := n.Tag().Ref
	ref.Part = "seen"
	if d.Narrow {
		said := dotted(when, words)
		d.fit(d.at.act-24, a.Y+39, said, ink2(13), d.at.to)
		d.hit(scene.Area{X: d.at.act - 24, Y: a.Y + 28, W: d.at.to - d.at.act + 24, H: 14}, ref, said)
		return
	}
	to := d.at.strip.X - 14
	d.fit(d.at.seen, middle-4, when, ink2(13), to)
	f := ink(14)
	if d.width(words, f) > to-d.at.seen {
		f = ink(13)
	}
	d.fit(d.at.seen, middle+14, words, f, to)
	d.hit(scene.Area{X: d.at.seen, Y: a.Y + 2, W: to - d.at.seen, H: a.H - 4}, ref, when+": "+words)
}

// whoAll draws who share a line.
func (d *reviewDraw) whoAll(row state.ReviewRow, n *state.Nuc, a scene.Area, middle float64) {
	x := a.X + 22
	tip := []scene.Point{at(x, middle-5), at(x+6, middle), at(x, middle+5)}
	if d.s.ReviewOpen(row.Fold) {
		tip = []scene.Point{at(x-2, middle-3), at(x+8, middle-3), at(x+3, middle+4)}
	}
	d.add(scene.Poly{Points: tip, Fill: scene.Ink2})
	l := small(d.lidOf(n, at(d.at.lid+4, middle), 26))
	l.Tag = scene.Tag{}
	d.add(l)
	names := make([]string, len(row.Nucs))
	for i, k := range row.Nucs {
		names[i] = d.all.Nucs[k].NucNamed.Name
	}
	to := d.at.strip.X - 14
	if d.Narrow {
		said := state.Names(state.Runs(names), func(text string) bool { return d.width(text, ink2(13)) <= d.at.to-d.at.act-80 })
		d.fit(d.at.act-24, a.Y+39, plural(len(names), "nuc", "nucs")+" alike: "+said, ink2(13), d.at.to)
		return
	}
	said := state.Names(state.Runs(names), func(text string) bool { return d.width(text, reviewName) <= to-d.at.name })
	d.fit(d.at.name, middle-2, said, reviewName, to)
	d.fit(d.at.name, middle+16, plural(len(names), "nuc", "nucs")+" alike, as good as certain", ink2(13), to)
}

// seenOf is what was seen last of a nuc, or done where nobody looked since, and when.
func (d *reviewDraw) seenOf(n *state.Nuc) (when, words string) {
	age := ""
	if n.Presumed.Age > 0 && !n.Presumed.Emerged.IsZero() {
		age = fmt.Sprintf("queen %d d old", n.Presumed.Age)
	}
	if caught(n) {
		return dotted(shortDay(d.r.DayOf(n.Caught[len(n.Caught)-1].At.Instant)), age), "queen caught, brood left"
	}
	look, ok := n.LastLook()
	if ok && !look.At.Before(n.Holds.Given) && !look.At.Before(n.Queenless) && !look.At.Before(n.MadeUp) {
		return dotted(shortDay(d.r.DayOf(look.At.Instant)), age), wordsOn(d.r, look.Looked, n.Nuc.Nuc.Subject())
	}
	var last book.Entry
	for e := range d.r.View.Lines(n.Nuc.Nuc.Subject()) {
		if _, plan := e.Fact.(book.Planned); !plan {
			last = e
		}
	}
	if last.Fact == nil {
		return age, "not seen yet"
	}
	return dotted(shortDay(d.r.DayOf(last.At.Instant)), age), wordsOn(d.r, last.Fact, n.Nuc.Nuc.Subject())
}

// evidence is what the last look was worth, for who asks a chance why.
func (d *reviewDraw) evidence(n *state.Nuc) string {
	if d.s.Hover.Ref.ID != n.Tag().Ref.ID {
		return ""
	}
	all := d.r.Course.Evidence(n.Nuc)
	if len(all) == 0 {
		return "; " + n.Presumed.Why
	}
	return "; " + all[len(all)-1].Words
}

// what writes what is best done, in up to three lines about the middle.
func (d *reviewDraw) what(row state.ReviewRow, w review.Way, own bool, a scene.Area, ground scene.Role, ref scene.Ref) {
	f := ink(14).semi()
	if own {
		f = f.as(scene.Pen)
	}
	said := d.all.Title(w)
	middle, room := a.Y+a.H/2, d.at.actTo-d.at.act-26
	x := d.at.act + 26
	if d.Narrow {
		middle, x, room = a.Y+17, d.at.act, d.at.actTo-d.at.act
		d.waySign(w, d.all.Hand, at(x-14, middle), 9, ground)
	} else {
		d.waySign(w, d.all.Hand, at(d.at.act+9, middle), 9, ground)
	}
	lines := scene.Wrap(d.measure, d.say(said), f.size, f.weight, room)
	if len(lines) > 2 {
		f.size = 13
		lines = scene.Wrap(d.measure, d.say(said), f.size, f.weight, room)
	}
	most, pitch := 3, 17.0
	if d.Narrow { // one line: what was seen stands below
		most = 1
	}
	y := middle + 5 - pitch*float64(min(len(lines), most)-1)/2
	for i, l := range lines[:min(len(lines), most)] {
		if i == most-1 && len(lines) > most {
			l += " …"
		}
		d.fit(x, y, l, f, x+room)
		y += pitch
	}
	ref.Part = "what"
	d.hit(scene.Area{X: d.at.act, Y: a.Y + 2, W: max(0, d.at.actTo-d.at.act), H: a.H - 4}, ref, d.reason(row, w))
}

// reason is why a way is best, for who asks.
func (d *reviewDraw) reason(row state.ReviewRow, w review.Way) string {
	n := d.all.Nucs[row.Nucs[0]]
	said := d.all.Title(w)
	if len(w.Warned) > 0 {
		said += "; " + w.Warned[0].Why
	}
	if best := n.Ways[n.Best]; d.all.Worth(best.Worth) != d.all.Worth(w.Worth) {
		said += "; alone it would be best: " + d.all.Title(best) + ", but more is had of that elsewhere"
	}
	return said + "  →"
}

// decided writes what was decided, with a tick.
func (d *reviewDraw) decided(plan book.Planned, a scene.Area) {
	middle := a.Y + a.H/2
	x, to := d.at.act, d.at.actTo
	if d.Narrow {
		d.add(scene.Poly{Open: true, Points: []scene.Point{at(x-19, a.Y+17), at(x-14, a.Y+22), at(x-6, a.Y+11)}, Stroke: scene.Stroke{Role: scene.Good, Width: 2, Round: true}})
		d.fit(x, a.Y+22, sentence(d.decidedWords(plan))+", decided for "+plan.Day.Short(), ink2(14), to)
		return
	}
	d.add(scene.Poly{Open: true, Points: []scene.Point{at(x+3, middle), at(x+8, middle+5), at(x+16, middle-6)}, Stroke: scene.Stroke{Role: scene.Good, Width: 2, Round: true}})
	d.fit(x+26, middle-4, sentence(d.decidedWords(plan)), ink2(14), to)
	d.fit(x+26, middle+14, "decided for "+plan.Day.Short(), ink2(13), to)
}

func (d *reviewDraw) decidedWords(plan book.Planned) string {
	said := plan.What.String()
	if !plan.Batch.IsZero() {
		said += fmt.Sprintf(", batch %d", d.r.View.Batch(plan.Batch).Number)
	}
	return said
}

// yields draws what each way would yield on a scale: the best of each sign, and
// large the one that is taken.
func (d *reviewDraw) yields(n review.Nuc, taken review.Way, a scene.Area, ground scene.Role, ref scene.Ref) {
	middle := a.Y + a.H/2
	best := d.bestOf(n)
	best[tokenOf(taken, d.all.Hand)] = &taken
	low, high := 1.0, 0.0
	for _, w := range best {
		if w != nil {
			low, high = min(low, w.Lays), max(high, w.Lays)
		}
	}
	d.add(scene.Line{From: at(d.yieldX(low), middle), To: at(d.yieldX(high), middle), Stroke: stroke(scene.Rule, 2)})
	for t, w := range best {
		if w != nil && token(t) != tokenOf(taken, d.all.Hand) && !d.under(*w, taken) {
			if token(t) == lookToken {
				d.add(scene.Circle{At: at(d.yieldX(w.Lays), middle), Radius: 8, Fill: ground})
			}
			d.waySign(*w, d.all.Hand, at(d.yieldX(w.Lays), middle), 8, ground)
			ref.Part = "yield" + strconv.Itoa(t)
			d.hit(scene.Around(at(d.yieldX(w.Lays), middle), 20), ref, percent(w.Lays)+" of 100 laying by "+d.all.By.Short()+" if: "+d.all.Title(*w))
		}
	}
	x := d.yieldX(taken.Lays)
	if t := tokenOf(taken, d.all.Hand); t == lookToken || t == otherToken { // drawn in lines: nothing shows through
		d.add(scene.Circle{At: at(x, middle), Radius: 12, Fill: ground})
	}
	d.waySign(taken, d.all.Hand, at(x, middle), 11, ground)
	ref.Part = "taken"
	d.hit(scene.Around(at(x, middle), 24), ref, percent(taken.Lays)+" of 100 laying by "+d.all.By.Short()+": "+d.all.Title(taken))
	d.text(min(max(x, d.yieldX(high))+14, d.at.to-18), middle+5, percent(taken.Lays), ink(14).bold())
}

// under tells whether the sign of a way would stick out from under that of the
// taken one, which is drawn in lines.
func (d *reviewDraw) under(w, taken review.Way) bool {
	const near = 14
	t := tokenOf(taken, d.all.Hand)
	return (t == lookToken || t == otherToken) && math.Abs(d.yieldX(w.Lays)-d.yieldX(taken.Lays)) < near
}

// bestOf are the best ways by their signs, of what is in hand.
func (d *reviewDraw) bestOf(n review.Nuc) (best [otherToken + 1]*review.Way) {
	for i := range n.Ways {
		w := &n.Ways[i]
		t := tokenOf(*w, d.all.Hand)
		if t == otherToken || w.Gives() && d.all.Hand.Wares[w.Ware-1].Many == 0 {
			continue
		}
		if best[t] == nil || w.Worth > best[t].Worth {
			best[t] = w
		}
	}
	return best
}
