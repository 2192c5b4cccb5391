package view

import (
	"fmt"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// strip draws the orders on the days on which they are due, each a flag that can be
// dragged, and the days of grafts that are found.
func (d seasonDraw) strip(a scene.Area) {
	r := d.l.Ribbon
	d.rect(a, scene.Ground)
	d.rule(0, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Rule)
	d.clipped(scene.Area{X: r.X, Y: a.Y, W: a.Right() - r.X, H: a.H}, scene.Tag{}, func() {
		found := d.s.FoundDays()
		free, all := r.X, d.s.OrderFlags()
		for i, f := range all {
			if i+1 < len(all) && all[i+1].Day == f.Day && !f.Moved() { // the last one of a day names them all
				d.flagPost(f, a, scene.Ink)
				d.flagHit(f, scene.Area{X: r.At(f.Day) - 9, Y: a.Y, W: 24, H: a.H})
				continue
			}
			next := a.Right()
			if i+1 < len(all) {
				next = r.At(all[i+1].Day)
				if w := d.flagLeast(all[i+1]); i+2 == len(all) && next+flagBeside+w > a.Right()-4 { // the last one is named before its post
					next -= w + 10
				}
			}
			for _, day := range found { // no figure of an order stands beside a graft
				switch x := r.At(day); {
				case x <= r.At(f.Day):
					free = max(free, x+graftReach)
				default:
					next = min(next, x-graftReach)
				}
			}
			free = d.flag(f, a, free, next, ofDay(all[:i+1]))
		}
		for _, day := range found {
			d.graftFound(day, a)
		}
	})
	if r.X >= 100 {
		d.fit(state.Edge, a.Y+22, "orders", ink2(13), r.X-6)
	}
}

// ofDay are those of some flags that stand on the day of the last one and were not moved, it among them.
func ofDay(all []state.OrderFlag) []state.OrderFlag {
	last, from := all[len(all)-1], len(all)-1
	for from > 0 && all[from-1].Day == last.Day && !all[from-1].Moved() {
		from--
	}
	return all[from:]
}

// flagPost draws the post of an order with its flag.
func (d seasonDraw) flagPost(f state.OrderFlag, a scene.Area, role scene.Role) {
	x := d.l.Ribbon.At(f.Day)
	d.add(scene.Line{From: at(x, a.Y+3), To: at(x, a.Bottom()-2), Stroke: stroke(role, 1.8)},
		scene.Poly{Points: []scene.Point{at(x, a.Y+3), at(x+10, a.Y+8), at(x, a.Y+13)}, Fill: role})
}

// flagHit makes an order answer where it is drawn.
func (d seasonDraw) flagHit(f state.OrderFlag, a scene.Area) {
	d.hit(a, state.FlagOf(f.Order.Order), "drag it to another day; "+d.flagSays(f))
}

// flagBeside is how far beside its post a flag is named, dp.
const flagBeside = 13.0

// flagLeast is how wide the name of a flag is at least, dp.
func (d seasonDraw) flagLeast(f state.OrderFlag) float64 {
	return d.width(flagNumber(f), ink(13).semi())
}

// flagNumber is what a flag is called in few letters: "31: 4".
func flagNumber(f state.OrderFlag) string { return fmt.Sprintf("%s: %d", f.Number, f.Owed) }

// graftReach is how far the sign of a graft that is found reaches to each side, dp.
const graftReach = 9.0

// graftFound draws a graft that is found on its day, a post with the sign at its foot.
func (d seasonDraw) graftFound(day calendar.Day, a scene.Area) {
	c := at(d.l.Ribbon.At(day), a.Bottom()-8)
	d.add(scene.Line{From: at(c.X, a.Y+3), To: at(c.X, c.Y-5), Stroke: scene.Stroke{Role: scene.Pen, Width: 1.4, Dash: [2]float64{3, 3}}},
		scene.Poly{Points: []scene.Point{c.Add(at(-5, 5)), c.Add(at(5, 5)), c.Add(at(0, -5))}, Fill: scene.Panel, Stroke: stroke(scene.Pen, 1.5)})
	d.hit(scene.Area{X: c.X - 7, Y: a.Y, W: 14, H: a.H}, scene.Ref{Kind: state.FigureRef, ID: "found " + day.String()}, "graft found on "+day.ShortFrom(d.s.Today()))
}

// flag draws an order on its day, what it is called where there is room up to the
// next one, and gives from where on there is room again. It stands for all of its day.
func (d seasonDraw) flag(f state.OrderFlag, a scene.Area, free, next float64, ofDay []state.OrderFlag) float64 {
	r := d.l.Ribbon
	x, role := r.At(f.Day), scene.Ink
	if slices.ContainsFunc(ofDay, func(o state.OrderFlag) bool { return o.Needs }) {
		role = scene.Act
	}
	if f.Moved() {
		was := r.At(f.By)
		d.add(scene.Line{From: at(was, a.Y+2), To: at(was, a.Bottom()-3), Stroke: scene.Stroke{Role: scene.Pen, Width: 1.4, Dash: [2]float64{3, 3}}})
		if role = scene.Pen; f.Unsure() {
			role = scene.Act
		}
	}
	d.flagPost(f, a, role)
	g := ink(13).semi().as(role)
	word, left := d.flagWord(f, ofDay, x, free, next-4, g)
	hit, w := scene.Area{X: x - 9, Y: a.Y, W: 24, H: a.H}, d.width(word, g)
	if left >= free || f.Moved() {
		if d.s.Selection.Has(f.Order.Order.Subject()) || f.Moved() {
			d.rect(scene.Area{X: left - 3, Y: a.Y + 5, W: w + 6, H: 20}, scene.PenTint)
		}
		d.text(left, a.Y+20, word, g)
		hit = scene.Area{X: min(hit.X, left-4), Y: a.Y, W: max(left+w+4, x+12) - min(hit.X, left-4), H: a.H}
		free = max(x+12, left+w+10)
	}
	d.flagHit(f, hit)
	return max(free, x+12)
}

// flagWord is what a flag at x is called and where that begins: whose it is, else its number, and how
// many are owed, behind it up to a place, or before it down to another; of several of a day how many.
func (d seasonDraw) flagWord(f state.OrderFlag, ofDay []state.OrderFlag, x, from, to float64, g font) (word string, left float64) {
	words := []string{flagNumber(f)}
	switch {
	case f.Moved():
		words = []string{d.flagSays(f)}
	case len(ofDay) > 1:
		owed := 0
		for _, o := range ofDay {
			owed += o.Owed
		}
		words = []string{fmt.Sprintf("%d orders, %d", len(ofDay), owed), fmt.Sprintf("+%d: %d", len(ofDay)-1, owed)}
	case f.Customer != "":
		words = append([]string{fmt.Sprintf("%s %d", f.Customer, f.Owed)}, words...)
	}
	for _, word = range words {
		w := d.width(word, g)
		if left = x + flagBeside; left+w <= to {
			break
		}
		if left = x - w - 6; left >= from {
			break
		}
	}
	return word, left
}

// flagSays is an order in one line, or what moving it does.
func (d seasonDraw) flagSays(f state.OrderFlag) string {
	if f.Moved() {
		says := f.By.ShortFrom(d.s.Today()) + " → " + f.Day.ShortFrom(d.s.Today())
		if gets := f.Gets(d.s.Today()); gets != "" {
			says += ": " + gets
		}
		return says
	}
	says := fmt.Sprintf("order %s, %s: %s by %s", f.Number, f.Customer, plural(f.Owed, "queen", "queens"), f.By.ShortFrom(d.s.Today()))
	switch {
	case f.Planned:
		says += "; " + f.Stands + ": " + plan.OfHundred(f.Chance)
	case f.Needs:
		says += "; needs a graft"
	}
	return says
}
