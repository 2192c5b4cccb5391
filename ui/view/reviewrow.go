package view

import (
	"fmt"
	"math"
	"strconv"
	"strings"

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
	said := whatSaid{Way: w, own: own}
	if !decided {
		said.note = d.all.Outweighs(rn, w)
	}
	said.lines = d.whatLines(said, a)
	if decided {
		said.lines = said.lines[:1]
	}
	d.who(row, n, a, said)
	d.strip(rn.Chances, d.stripArea(a, said), ref, d.evidence(n))
	switch {
	case decided:
		d.decided(plan, a)
	default:
		d.what(row, said, a, ground, ref)
	}
	switch {
	case decided:
	case d.Narrow:
		d.right(d.Columns.To, a.Y+state.ReviewFirst, percent(w.Lays), ink(14).bold())
	default:
		d.yields(rn, w, a, ground, ref)
		d.loses(rn, a, ref)
	}
}

// stripArea is where the strip of a row lies: in a narrow list under its last line.
func (d *reviewDraw) stripArea(a scene.Area, w whatSaid) scene.Area {
	s := d.Columns.Strip
	if !d.Narrow {
		s.Y += a.Y + a.H/2
		return s
	}
	last, ok := d.below(w, a)
	if !ok {
		last -= state.ReviewLine
	}
	s.Y = last + state.ReviewStrip - state.ReviewUnder - s.H
	return s
}

// rowGround draws what a row lies on, and gives its role.
func (d *reviewDraw) rowGround(row state.ReviewRow, a scene.Area, ref scene.Ref) scene.Role {
	box := scene.Rect{Area: scene.Area{X: a.X + 8, Y: a.Y + 1, W: a.W - 8 - besideBar, H: a.H - 3}, Radius: 5, Tag: scene.Tag{Ref: ref}}
	ground := scene.Panel
	switch {
	case d.s.ReviewTakes(row):
		box.Fill, box.Stroke, ground = scene.PenTint, stroke(scene.Pen, 1.5), scene.PenTint
	case d.s.Hover.Ref.Kind == ref.Kind && d.s.Hover.Ref.ID == ref.ID:
		box.Stroke = stroke(scene.Ink2, 1.5)
	}
	d.rule(a.X+state.Edge, a.Bottom()-1, d.Columns.To, a.Bottom()-1, scene.Hair)
	d.add(box)
	return ground
}

// who draws the lid, the name, and what was seen last; of like nucs their names.
func (d *reviewDraw) who(row state.ReviewRow, n *state.Nuc, a scene.Area, w whatSaid) {
	middle := a.Y + a.H/2
	if row.Fold != "" {
		d.whoAll(row, n, a, middle, w)
		return
	}
	l := d.lidOf(n, at(d.Columns.Lid, middle), 36)
	l.NeedsYou, l.Selected, l.Hover = false, false, false
	if row.Within {
		l.At.X += 6
		l.Size = 28
	}
	d.add(l)
	d.fit(d.Columns.Name, middle+6, n.Name, reviewName, d.Columns.Name+100)
	when, words := d.seenOf(n)
	ref := n.Tag().Ref
	ref.Part = "seen"
	if d.Narrow {
		if y, ok := d.below(w, a); ok {
			d.text(d.Columns.Act, y, d.phrases(when, words, d.Columns.To-d.Columns.Act), ink2(13))
			d.hit(scene.Area{X: d.Columns.Act, Y: y - 11, W: d.Columns.To - d.Columns.Act, H: 14}, ref, dotted(when, words))
		}
		return
	}
	to := d.Columns.Strip.X - 14
	d.seen(when, words, a, to)
	d.hit(scene.Area{X: d.Columns.Seen, Y: a.Y + 2, W: to - d.Columns.Seen, H: a.H - 4}, ref, when+": "+words)
}

// below is where a line below what is best done stands in a narrow list, if there is room
// for one.
func (d *reviewDraw) below(w whatSaid, a scene.Area) (y float64, ok bool) {
	lines := len(w.lines)
	return a.Y + state.ReviewFirst + state.ReviewLine*float64(lines), lines < d.rowLines(a)
}

// phrases is when a nuc was seen, and of what was seen as many phrases as have room.
func (d *reviewDraw) phrases(when, words string, room float64) string {
	for said := words; ; {
		if all := dotted(when, said); d.width(all, ink2(13)) <= room {
			return all
		}
		cut := strings.LastIndex(said, ", ")
		if cut < 0 {
			return when
		}
		said = said[:cut]
	}
}

// seen writes when a nuc was seen last, and what was seen, as many of its phrases as have
// room below.
func (d *reviewDraw) seen(when, words string, a scene.Area, to float64) {
	const pitch = 16.0
	x, most := d.Columns.Seen, max(1, int((a.H-6)/pitch)-1)
	lines := scene.Wrap(d.measure, d.say(words), 13, scene.Regular, to-x)
	for len(lines) > most {
		cut := strings.LastIndex(words, ", ")
		if cut < 0 {
			lines = lines[:most]
			lines[most-1] += " …"
			break
		}
		words = words[:cut]
		lines = scene.Wrap(d.measure, d.say(words), 13, scene.Regular, to-x)
	}
	y := a.Y + a.H/2 + 5 - pitch/2*float64(len(lines))
	d.fit(x, y, when, ink2(13), to)
	for _, l := range lines {
		y += pitch
		d.fit(x, y, l, ink(13), to)
	}
}

// whoAll draws who share a line.
func (d *reviewDraw) whoAll(row state.ReviewRow, n *state.Nuc, a scene.Area, middle float64, w whatSaid) {
	x := a.X + 22
	tip := []scene.Point{at(x, middle-5), at(x+6, middle), at(x, middle+5)}
	if d.s.ReviewOpen(row.Fold) {
		tip = []scene.Point{at(x-2, middle-3), at(x+8, middle-3), at(x+3, middle+4)}
	}
	d.add(scene.Poly{Points: tip, Fill: scene.Ink2})
	l := small(d.lidOf(n, at(d.Columns.Lid+4, middle), 26))
	l.Tag = scene.Tag{}
	d.add(l)
	if d.Narrow {
		d.togetherNarrow(row, a, middle, w)
		return
	}
	to := d.Columns.Strip.X - 14
	said := d.all.Alike(row, func(text string) bool { return d.width(text, reviewName) <= to-d.Columns.Name })
	d.fit(d.Columns.Name, middle-2, said, reviewName, to)
	d.fit(d.Columns.Name, middle+16, alike(row), ink2(13), to)
}

// alike says that a row is of like nucs.
func alike(row state.ReviewRow) string {
	return plural(len(row.Nucs), "nuc", "nucs") + " alike, as good as certain"
}

// togetherNarrow names like nucs beside their lid, and those that have no room there in
// the line below what is best done.
func (d *reviewDraw) togetherNarrow(row state.ReviewRow, a scene.Area, middle float64, w whatSaid) {
	to := d.Columns.Strip.X - 6
	beside := d.all.Together(row, func(said string) bool { return d.width(said, reviewName) <= to-d.Columns.Name })
	d.fit(d.Columns.Name, middle+6, beside, reviewName, to)
	y, ok := d.below(w, a)
	if !ok {
		return
	}
	said := alike(row)
	if beside == plural(len(row.Nucs), "nuc", "nucs") {
		said = "alike: " + d.all.Alike(row, func(text string) bool {
			return d.width("alike: "+text, ink2(13)) <= d.Columns.To-d.Columns.Act
		})
	}
	d.fit(d.Columns.Act, y, said, ink2(13), d.Columns.To)
}

// seenOf is what was seen last of a nuc, or done where nobody looked since, and when.
func (d *reviewDraw) seenOf(n *state.Nuc) (when, words string) {
	age := ""
	if n.Presumed.Age > 0 && !n.Presumed.Emerged.IsZero() {
		age = fmt.Sprintf("queen %d d old", n.Presumed.Age)
	}
	look, ok := n.LastLook()
	if caught(n) && !(ok && n.Caught[len(n.Caught)-1].At.Before(look.At)) {
		return dotted(shortDay(d.r.DayOf(n.Caught[len(n.Caught)-1].At.Instant)), age), "queen caught, brood left"
	}
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

// whatSaid is what is best done with a nuc: the way, whether the keeper took it, what
// makes it worth more where that does not show, and the lines that say it.
type whatSaid struct {
	review.Way
	own  bool
	note string

	lines []state.ReviewSaid
}

// what writes what is best done and why it is worth more, about the middle of a row, or
// from its beginning where the list is narrow.
func (d *reviewDraw) what(row state.ReviewRow, w whatSaid, a scene.Area, ground scene.Role, ref scene.Ref) {
	c, f := d.Columns, ink(state.ReviewDoSize).semi()
	if w.own {
		f = f.as(scene.Pen)
	}
	lines := w.lines
	x, to := c.Act+state.ReviewAct, c.ActTo
	sign, y := at(c.Act+9, a.Y+a.H/2), a.Y+a.H/2+5-state.ReviewLine*float64(len(lines)-1)/2
	if d.Narrow {
		x, y = c.Act, a.Y+state.ReviewFirst
		sign = at(x-14, y-5)
	}
	d.waySign(w.Way, d.all.Hand, sign, 9, ground)
	for _, l := range lines {
		end := x
		if l.Do != "" {
			end = d.fit(x, y, l.Do, f, to) + state.ReviewNoteGap
		}
		if l.Note != "" {
			d.fit(end, y, l.Note, ink2(state.ReviewNoteSize), to)
		}
		y += state.ReviewLine
	}
	ref.Part = "what"
	d.hit(scene.Area{X: c.Act, Y: a.Y + 2, W: max(0, c.ActTo-c.Act), H: a.H - 4}, ref, d.reason(row, w.Way))
}

// whatLines are the lines of what is best done and why; a row has room for them but where
// the keeper's units make them longer, or the way is another than the list knows.
func (d *reviewDraw) whatLines(w whatSaid, a scene.Area) []state.ReviewSaid {
	most, below := d.rowLines(a), 0
	if d.Narrow { // what was seen stands there
		below = 1
	}
	lines := d.Said(d.measure, state.ReviewSaid{Do: d.say(d.all.Title(w.Way)), Note: d.say(w.note)}, most-below)
	if len(lines) > most {
		lines = lines[:most]
		lines[most-1].Do += " …"
	}
	return lines
}

// rowLines is for how many lines a row has room.
func (d *reviewDraw) rowLines(a scene.Area) int {
	room := a.H - 4
	if d.Narrow {
		room = a.H - state.ReviewFirst - state.ReviewStrip + state.ReviewLine
	}
	return max(1, int(room/state.ReviewLine+0.01))
}

// reason is why a way is best, for who asks.
func (d *reviewDraw) reason(row state.ReviewRow, w review.Way) string {
	n := d.all.Nucs[row.Nucs[0]]
	said := d.all.Title(w)
	if n.Why != "" {
		said += "; " + n.Why
	}
	if why := d.all.Outweighs(n, w); why != "" {
		said += "; " + why
	}
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
	x, to := d.Columns.Act, d.Columns.ActTo
	if d.Narrow {
		y := a.Y + state.ReviewFirst
		d.add(scene.Poly{Open: true, Points: []scene.Point{at(x-19, y-5), at(x-14, y), at(x-6, y-11)}, Stroke: scene.Stroke{Role: scene.Good, Width: 2, Round: true}})
		d.fit(x, y, sentence(d.decidedWords(plan))+", decided for "+plan.Day.Short(), ink2(14), to)
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
