package view

import (
	"fmt"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// wish draws the sentence of the wish with its fields, what comes of it, and below
// it what can be said more closely.
func (d *planDraw) wish() {
	a := d.Wish
	d.rect(a, scene.Panel)
	d.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Rule)
	w := wishLine{d: d, x: a.X + state.Edge, left: a.X + state.Edge, y: a.Y + 12, to: a.Right() - state.Edge}
	wide := a.W >= planSide
	if wide {
		w.to = a.Right() - planAnswer
		d.answer(scene.Area{X: w.to + 20, Y: a.Y, W: planAnswer - 20, H: a.H})
	}
	w.sentence()
	w.closer()
	if !wide {
		d.answer(scene.Area{X: a.X, Y: w.y + 34, W: a.W, H: a.Bottom() - w.y - 34})
	}
}

// planSide is the width from which on the answer stands beside the wish, and
// planAnswer how wide it is.
const planSide, planAnswer = 1120.0, 480.0

// wishLine writes words and fields one behind the other, on as many lines as they
// need.
type wishLine struct {
	d           *planDraw
	x, left, to float64
	y           float64
}

const wishField = 36.0

func (w *wishLine) room(width, line float64) {
	if w.x+width > w.to && w.x > w.left {
		w.x, w.y = w.left, w.y+line
	}
}

func (w *wishLine) word(text string, f font, line float64) {
	wide := w.d.width(text, f)
	w.room(wide, line)
	w.x = w.d.text(w.x, w.y+line*0.66, text, f) + 10
}

// field draws a field as wide as its text.
func (w *wishLine) field(name, empty string, size, high float64) {
	_, wrong := w.d.s.Wish()
	text := w.d.s.Field(name).Text
	if text == "" {
		text = empty
	}
	wide := max(46, w.d.width(text, ink(size).semi())+26)
	w.room(wide, high+4)
	look := fieldLook{size: size, weight: scene.SemiBold, empty: empty, wrong: wrong.Field == name, reason: "typed, or one more and less with Up and Down"}
	w.d.input(scene.Area{X: w.x, Y: w.y, W: wide, H: high}, name, look)
	w.x += wide + 10
}

// sentence is the wish.
func (w *wishLine) sentence() {
	s := w.d.s
	const line = wishField + 4
	big := ink(19)
	if s.Planning.Forwards {
		w.word("I graft on", big, line)
		w.field(state.WishDay, "19 Apr", 19, wishField)
		w.word("for", big, line)
		w.field(state.WishQueens, "40", 19, wishField)
		w.word("queens", big, line)
		w.command("laying by", "laying", "ready to hand over", s.Planning.Laying)
	} else {
		w.word("I want", big, line)
		w.field(state.WishQueens, "40", 19, wishField)
		w.word("queens", big, line)
		w.command("laying by", "laying", "ready to hand over", s.Planning.Laying)
		w.word("by", big, line)
		w.field(state.WishDay, "31 May", 19, wishField)
	}
	w.word("from", big, line)
	w.field(state.WishLine, "any line", 19, wishField)
	w.x, w.y = w.left, w.y+line+2
}

// command is a word of the sentence that is changed by a click.
func (w *wishLine) command(name, on, off string, is bool) {
	word := off
	if is {
		word = on
	}
	f := ink(19).as(scene.Pen)
	wide := w.d.width(word, f)
	w.room(wide, wishField+4)
	w.d.rule(w.x, w.y+32, w.x+wide, w.y+32, scene.Pen)
	w.d.text(w.x, w.y+26, word, f)
	w.d.command(scene.Area{X: w.x - 4, Y: w.y, W: wide + 8, H: wishField}, name)
	w.x += wide + 10
}

// closer is what can be said more closely; what is left blank is found.
func (w *wishLine) closer() {
	const line = 32.0
	f := ink2(14)
	found := func(v int, one string) string {
		if w.d.all == nil || v == 0 {
			return one
		}
		return fmt.Sprint(v)
	}
	all := w.d.all
	nucs, larvae, sure := 0, 0, 0
	if all != nil {
		nucs, larvae, sure = all.Nucs, all.Larvae, int(all.Sure*100+0.5)
	}
	w.word("in", f, line)
	w.field(state.WishNucs, found(nucs, "all"), 14, 28)
	w.word("nucs, grafting", f, line)
	w.field(state.WishLarvae, found(larvae, "enough"), 14, 28)
	w.word("larvae, to be sure", f, line)
	w.field(state.WishSure, found(sure, "90"), 14, 28)
	w.word("times of 100", f, line)
	w.toOrders(line)
}

// answer says how sure the wish is, and what would make it surer.
func (d *planDraw) answer(a scene.Area) {
	x, to := a.X+state.Edge, a.Right()-state.Edge
	if _, wrong := d.s.Wish(); wrong.Field != "" {
		d.wrap(x, a.Y+30, sentence(wrong.Why), ink(14).as(scene.Act), to-x, 4)
		return
	}
	if d.all == nil {
		return
	}
	if a.H > 90 {
		d.rule(a.X, a.Y+14, a.X, a.Bottom()-14, scene.Rule)
	}
	n := "One batch: "
	if len(d.all.Batches) > 1 {
		n = "Two batches: "
	}
	f := ink(17).semi()
	if !d.now {
		f = f.as(scene.Ink3)
	}
	y := a.Y + 30
	d.fit(x, y, n+ofHundred(d.all.Chance), f, to)
	says := fmt.Sprintf("graft %s, laying by %s, ready by %s", longDay(d.all.Batches[0].Day), d.all.LayBy.Short(), d.all.By.Short())
	if !d.all.InTime {
		says = fmt.Sprintf("No graft from tomorrow on is in time for %s: the nearest is %s", d.all.By.Short(), d.all.Nearest.Short())
		y = d.wrap(x, y+20, says, ink(14).as(scene.Act), to-x, 2) - 20
	} else {
		y = d.wrap(x, y+20, says, ink2(13), to-x, 1) - 18
	}
	y += 20
	d.turns(x, y, to)
}

// turns are the words that read the wish another way.
func (d *planDraw) turns(x, y, to float64) {
	pen := ink(13.5).as(scene.Pen)
	word := "one batch instead"
	if d.all.Two > 0 {
		word = "two batches, a week apart: " + ofHundred(d.all.Two)
	}
	x = d.link(x, y+20, word, pen, "two grafts", false) + 18
	back := "or from a graft, forwards"
	if d.s.Planning.Forwards {
		back = "or backwards from a day"
	}
	if x+d.width(back, pen) <= to {
		d.link(x, y+20, back, pen, "forwards", false)
	}
}
