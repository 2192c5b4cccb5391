package view

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// closing draws the count at the walk's end: what went out, what became of it,
// and what is open.
func (d recordDraw) closing() {
	a := d.Foot
	d.rect(a, scene.Ground)
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Rule)
	button := a.Right() - state.Edge - d.width("Close the walk", ink(14).medium()) - 28
	d.button(button, a.Y+14, "Close the walk", "close walk", false)
	end := button - 14
	wide := !d.Narrow
	if open := d.openWords(); open != "" && (wide || len(d.w.Closing) == 0) {
		end = d.right(end, a.Y+37, open, ink2(13)) - 20
	}
	x := a.X + state.Edge
	if wide {
		d.text(x, a.Y+26, "Closing count", ink2(13))
		x += 100
	}
	if len(d.w.Closing) == 0 {
		d.fit(x, a.Y+24, "Nothing was taken along", ink(15).semi(), end)
		d.link(x, a.Y+51, "write what was", ink(13).as(scene.Pen), "walk along", false)
		return
	}
	d.count(d.firstCount(), x, end)
}

// formButtons are the buttons below a form.
func formButtons(record string) [][2]string {
	if record == "walk close" {
		return [][2]string{{"Write and close", "write"}, {"Leave it open", "leave open"}}
	}
	return [][2]string{{"Write", "write"}, {"Leave", "close form"}}
}

// firstCount is the first count that does not close, else the first.
func (d recordDraw) firstCount() rules.Closing {
	for _, c := range d.w.Closing {
		if !c.Closes() {
			return c
		}
	}
	return d.w.Closing[0]
}

// count writes one count and draws a square for each of the goods.
func (d recordDraw) count(c rules.Closing, x, end float64) {
	y := d.Foot.Y + 26
	goods := c.What.String()
	if len(d.w.Closing) > 1 {
		goods = state.Goods(d.s.Reading().View, c)
	}
	coming := d.w.Coming(c)
	said, missing := fmt.Sprintf("%d %s out: %s", c.Out, goods, becameWords(c, coming)), missingWords(c.Missing()-coming)
	if missing != "" && !strings.HasSuffix(said, ": ") {
		said += ", "
	}
	if room := end - x - d.width(missing, ink(15).bold()); d.width(said, ink(15).semi()) > room && missing != "" {
		said = fmt.Sprintf("%d out, ", c.Out)
	}
	at := d.fit(x, y, said, ink(15).semi(), end)
	d.fit(at, y, missing, ink(15).bold().as(scene.Act), end)
	at = d.squares(c, coming, x, y+11, end)
	if n := len(d.w.Closing) - 1; n > 0 {
		at = d.fit(at, y+22, fmt.Sprintf("and %s more", plural(n, "count", "counts")), ink2(13), end) + 14
	}
	words := d.likely(c)
	if d.Narrow && d.openWords() != "" {
		words = d.openWords()
	}
	d.fit(at, y+22, words, ink2(13), end)
}

// becameWords say what became of the goods, and how many are still to be typed.
func becameWords(c rules.Closing, coming int) string {
	var all []string
	for _, part := range []struct {
		n    int
		word string
	}{{c.Placed, "placed"}, {c.Caged, "caged"}, {c.Culled, "culled"}, {c.Dropped, "dropped"}, {c.Back, "back"}, {coming, goodsWord(c, coming) + " to come"}} {
		if part.n > 0 {
			all = append(all, fmt.Sprint(part.n, " ", part.word))
		}
	}
	return strings.Join(all, ", ")
}

// goodsWord is the word for so many of the goods of a count.
func goodsWord(c rules.Closing, n int) string {
	if n == 1 {
		return strings.TrimSuffix(c.What.String(), "s")
	}
	return c.What.String()
}

func missingWords(m int) string {
	switch {
	case m > 0:
		return fmt.Sprint(m, " not accounted for")
	case m < 0:
		return fmt.Sprint(-m, " more than went out")
	}
	return ""
}

// squares draws a square for each of the goods, and gives where the words behind
// them begin.
func (d recordDraw) squares(c rules.Closing, coming int, x, y, end float64) float64 {
	const pitch, least, air = 7.6, 3.0, 2.0
	n := max(c.Out, c.Out-c.Missing())
	step := min(pitch, (end-x)*0.6/float64(max(n, 1)))
	if step < least {
		return x
	}
	for i := range n {
		role := scene.Act
		switch {
		case i < c.Placed:
			role = scene.Ink2
		case i < c.Out-c.Missing():
			role = scene.Ink3
		case i < c.Out-c.Missing()+coming:
			role = scene.Off
		}
		d.rect(scene.Area{X: x + float64(i)*step, Y: y, W: step - min(air, step/3), H: 12}, role)
	}
	return x + float64(n)*step + 14
}

// likely names the nucs that probably got one.
func (d recordDraw) likely(c rules.Closing) string {
	if d.w.Done < d.w.Nucs && d.s.Form == nil {
		return "" // most of them come with the rows that are open
	}
	var names []string
	for _, id := range c.Likely {
		names = append(names, d.s.Reading().View.Nuc(id).Name)
	}
	switch n := len(names); {
	case n == 0:
		return ""
	case n > 6:
		return fmt.Sprintf("in one of %d nucs", n)
	case n > 1:
		return "probably " + strings.Join(names[:n-1], ", ") + " or " + names[n-1]
	}
	return "probably " + names[0]
}

// openWords say what is open: rows, questions, goods, lines typed twice.
func (d recordDraw) openWords() string {
	var said []string
	add := func(n int, one, many string) {
		if n > 0 {
			said = append(said, plural(n, one, many))
		}
	}
	add(d.w.Nucs-d.w.Done, "row", "rows")
	add(d.w.Asking, "question", "questions")
	for _, what := range []book.Goods{book.Cells, book.Virgins, book.Queens, book.Cages} {
		missing := 0
		for _, c := range d.w.Closing {
			if c.What == what {
				missing += max(0, c.Missing()-d.w.Coming(c))
			}
		}
		add(missing, strings.TrimSuffix(what.String(), "s"), what.String())
	}
	if len(said) > 0 {
		said[len(said)-1] += " open"
	}
	add(state.TwinNucs(d.w.Twins), "nuc typed twice", "nucs typed twice")
	return strings.Join(said, ", ")
}
