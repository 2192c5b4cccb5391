package view

import (
	"cmp"
	"fmt"

	"lidmark/domain/plan"
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
	wide := a.W >= state.PlanWide
	if wide {
		answer := planAnswer * a.W
		if d.stacks() { // the button stands beside it
			answer += 132
		}
		w.to = a.Right() - answer
		d.answer(scene.Area{X: w.to + 20, Y: a.Y, W: answer - 20, H: a.H})
	}
	below := answerTall
	if wide {
		below = 0
	}
	w.fitted(a.Bottom() - below - closerTall)
	w.closer()
	if !wide {
		d.answer(scene.Area{X: a.X, Y: w.y + answerAbove, W: a.W, H: a.Bottom() - w.y - answerAbove})
	}
}

// planAnswer is how wide the answer is where it stands beside the wish, as a share of both.
const planAnswer = 0.375

// wishLine writes words and fields one behind the other, on as many lines as they
// need.
type wishLine struct {
	d           *planDraw
	x, left, to float64
	y           float64
	size        float64 // of the sentence
	dry         bool    // nothing is drawn: it is only measured
}

// wishSizes are the sizes of the sentence, the one that is meant first.
var wishSizes = [...]float64{19, 17, 15}

// fitted writes the sentence in the largest size in which it ends above a place.
func (w *wishLine) fitted(bottom float64) {
	for _, size := range wishSizes {
		try := *w
		try.size, try.dry = size, true
		if try.sentence(); try.y <= bottom {
			w.size = size
			break
		}
		w.size = size
	}
	w.sentence()
}

// wishField is the height of a field of the sentence, closerTall that of the line
// below it, answerTall that of the answer below both, which begins answerAbove below the top
// of that line, dp.
const wishField, closerTall, answerTall, answerAbove = 36.0, 36.0, 84.0, 26.0

// leastLine is the least width of the field of a line's name, dp.
const leastLine = 110.0

func (w *wishLine) room(width, line float64) {
	if w.x+width > w.to && w.x > w.left {
		w.x, w.y = w.left, w.y+line
	}
}

func (w *wishLine) word(text string, f font, line float64) {
	wide := w.d.width(text, f)
	w.room(wide, line)
	if w.dry {
		w.x += wide + 10
		return
	}
	w.x = w.d.text(w.x, w.y+line*0.66, text, f) + 10
}

// fieldHolds are texts that a field has room for whatever stands in it, so that the words behind it
// stay where they are while it is typed in.
var fieldHolds = map[string]string{
	state.WishQueens: "000", state.WishDay: "Wed 28 May", state.WishHour: "00:00", state.WishNucs: "000", state.WishLarvae: "000",
	state.WishApart: "00", state.WishSure: "00", state.WishLine: "any line",
}

// field draws a field as wide as its text, and as what it holds in any case.
func (w *wishLine) field(name, empty string, size, high float64) {
	_, wrong := w.d.s.Wish()
	text := w.d.s.Field(name).Text
	if text == "" {
		text = empty
	}
	wide := max(46, w.d.width(text, ink(size).semi())+26, w.d.width(fieldHolds[name], ink(size).semi())+26)
	if left := w.to - w.x; name == state.WishLine && left >= leastLine {
		wide = min(wide, left) // a long name scrolls in its field
	}
	wide = min(wide, w.to-w.left)
	w.room(wide, high+4)
	if w.dry {
		w.x += wide + 10
		return
	}
	look := fieldLook{size: size, weight: scene.SemiBold, empty: empty, wrong: wrong.Field == name, reason: "typed, or one more and less with Up and Down"}
	if name == state.WishLarvae {
		look.reason = "typed, 80 + 60 for two grafts a week apart, or a few more and less with Up and Down"
	}
	w.d.input(scene.Area{X: w.x, Y: w.y, W: wide, H: high}, name, look)
	w.x += wide + 10
}

// sentence is the wish.
func (w *wishLine) sentence() {
	s := w.d.s
	const line = wishField + 4
	big, queens := ink(w.size), "queens"
	if s.Typed(state.WishQueens) == "1" {
		queens = "queen"
	}
	if s.Planning.Forwards {
		w.word("I graft on", big, line)
		w.field(state.WishDay, "19 Apr", w.size, wishField)
		w.word("at", big, line)
		w.field(state.WishHour, cmp.Or(s.HourFound(), "any hour"), w.size, wishField)
		w.word("for", big, line)
		w.field(state.WishQueens, "40", w.size, wishField)
		w.word(queens, big, line)
		w.command("laying by", "laying", "ready", s.Planning.Laying)
		if s.Planning.By != 0 {
			w.command("any day", "", "by "+s.Planning.By.ShortFrom(s.Today()), false)
		}
	} else {
		w.word("I want", big, line)
		w.field(state.WishQueens, "40", w.size, wishField)
		w.word(queens, big, line)
		w.command("laying by", "laying", "ready to hand over", s.Planning.Laying)
		w.word("by", big, line)
		w.field(state.WishDay, "31 May", w.size, wishField)
	}
	w.word("from", big, line)
	w.field(state.WishLine, "any line", w.size, wishField)
	w.x, w.y = w.left, w.y+line+2
}

// command is a word of the sentence that is changed by a click.
func (w *wishLine) command(name, on, off string, is bool) {
	word := off
	if is {
		word = on
	}
	f := ink(w.size).as(scene.Pen)
	wide := w.d.width(word, f)
	w.room(wide, wishField+4)
	if w.dry {
		w.x += wide + 10
		return
	}
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
	nucs, larvae, apart, sure := 0, 0, 0, 0
	if all != nil {
		nucs, larvae, apart, sure = all.Nucs, all.Larvae, all.Apart, int(all.Sure*100+0.5)
	}
	w.word("in", f, line)
	w.field(state.WishNucs, found(nucs, "all"), 14, 28)
	several := w.several()
	w.word(several.nucs, f, line)
	w.field(state.WishLarvae, found(larvae, "enough"), 14, 28)
	w.word(several.larvae, f, line)
	if several.are {
		w.field(state.WishApart, found(apart, "7"), 14, 28)
		w.word("days apart, sure", f, line)
	}
	w.field(state.WishSure, found(sure, "90"), 14, 28)
	w.word(several.sure, f, line)
	w.toOrders(line)
}

// severalSaid are the words between the fields that differ where a wish has several grafts: they
// are short, so that how far apart these are has room.
type severalSaid struct {
	are                bool
	nucs, larvae, sure string
}

func (w *wishLine) several() severalSaid {
	wish, _ := w.d.s.Wish()
	if wish.Grafts < 2 {
		nucs, larvae := "nucs", "larvae"
		if w.d.all != nil && w.d.all.Nucs == 1 {
			nucs = "nuc"
		}
		if w.d.all != nil && w.d.all.Larvae == 1 {
			larvae = "larva"
		}
		return severalSaid{false, nucs + ", grafting", larvae + ", to be sure", "times of 100"}
	}
	says := severalSaid{true, "nucs, grafting", "larvae each,", "of 100"}
	if w.d.all != nil && w.d.all.Turns() > 1 {
		says.nucs = "nucs, each " + plan.Times(w.d.all.Turns()) + ", grafting"
	}
	if wish.OneByOne() {
		says.larvae = "larvae,"
	}
	return says
}
