package view

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"lidmark/domain/review"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// besideReview draws what stands beside the nucs of Review: what is in hand and its
// best use, the chosen nuc with all its ways, or what is in hand to be changed.
func (c *cardDraw) besideReview() {
	sheet, _ := c.s.ReviewSheet()
	if sheet == nil {
		return
	}
	c.y += 8
	i, chosen := c.s.ReviewChosen()
	switch {
	case c.s.Reviewing.Side == state.AmountSide && !c.s.Ahead():
		c.amounts()
	case c.s.Reviewing.Side == state.WhySide && chosen:
		c.reviewWhy(sheet, i)
	default:
		c.hand(sheet)
	}
}

// hand draws what is in hand, its best use, and what comes of it.
func (c *cardDraw) hand(sheet *state.ReviewSheet) {
	c.y = c.wrap(c.x, c.y, c.handWords(sheet.Hand), ink(16).semi(), c.w, 2) + 1
	if out := c.firstOut(sheet.Hand); !out.IsZero() {
		f := ink(14).semi().as(scene.Act)
		if c.s.Away() {
			f = f.as(scene.Ink2)
		}
		said := "a virgin may walk from " + hour(out, c.r.View.Zone())
		if out.Before(c.r.View.On()) {
			said = "a virgin may have walked since " + hour(out, c.r.View.Zone())
		}
		c.para(said, f, 2)
	}
	c.uses(sheet)
	c.left(sheet)
	c.sums(sheet)
	c.oneMore(sheet)
	c.canOrWhy(button{"Change by hand", "review amounts", false})
	if _, ok := c.s.ReviewChosen(); ok {
		c.foot.can = append(c.foot.can, button{"Why", "review why", false})
	}
}

// canOrWhy puts a button at the foot, on another day than today with the reason beside it
// where it cannot be used then.
func (c *cardDraw) canOrWhy(b button) {
	if command, _ := state.CommandNamed(b.command); c.s.Away() && command.Reason(c.s) != "" {
		c.foot.refused = &b
		return
	}
	c.foot.can = append(c.foot.can, b)
}

// handWords say what is in hand.
func (c *cardDraw) handWords(h review.Hand) string {
	said := ""
	switch cells, virgins := h.Cells(), h.Virgins(); {
	case cells > 0 && virgins > 0:
		said = plural(cells, "cell", "cells") + " and " + plural(virgins, "virgin", "virgins")
	case cells > 0:
		said = plural(cells, "cell", "cells")
	case virgins > 0:
		said = plural(virgins, "virgin", "virgins")
	default:
		said = "No ripe cell and no virgin"
	}
	said += " in hand"
	if h.Cups > 0 {
		said += ", " + plural(h.Cups, "cup of bees", "cups of bees")
	}
	if h.Minutes > 0 {
		said += ", " + minutes(h.Minutes)
	}
	return said
}

// firstOut is from when on cells in hand may emerge: one in a hundred has by then.
func (c *cardDraw) firstOut(h review.Hand) (first time.Time) {
	for _, w := range h.Wares {
		if w.Virgin || w.Many == 0 || w.Batch.IsZero() {
			continue
		}
		if out := c.r.Course.Clock(w.Batch).FirstOut(0.01); first.IsZero() || out.Before(first) {
			first = out
		}
	}
	return first
}

// handed is something given to a nuc.
type handed struct {
	nuc review.Nuc
	way review.Way
}

// gains is by how much the nuc lays more probably than if it is left.
func (h handed) gains() float64 { return h.way.Lays - h.nuc.Ways[0].Lays }

// given are the uses of what is in hand: cells first, those that gain most first.
func (c *cardDraw) given(sheet *state.ReviewSheet) (all []handed) {
	virgin := func(h handed) int {
		if sheet.Hand.Wares[h.way.Ware-1].Virgin {
			return 1
		}
		return 0
	}
	for i := range sheet.Nucs {
		if sheet.Nucs[i].Decided {
			continue
		}
		if w, _ := sheet.Way(i, c.s.Reviewing); w.Gives() {
			all = append(all, handed{sheet.Nucs[i], w})
		}
	}
	slices.SortStableFunc(all, func(a, b handed) int {
		return cmp.Or(virgin(a)-virgin(b), cmp.Compare(b.gains(), a.gains()))
	})
	return all
}

// uses lists who gets what.
func (c *cardDraw) uses(sheet *state.ReviewSheet) {
	const row, least, kept, line = 30.0, 4, 440.0, 36.0 // kept for what comes of it, and of what is left
	all, end := c.given(sheet), c.x+c.w
	most := max(least, int((c.l.Card.H-kept-line*float64(len(sheet.Left())))/row))
	if len(all) == 0 {
		c.y += 4
		c.para(c.noUse(sheet), ink(14), 4)
		return
	}
	c.y += 8
	c.fit(c.x, c.y, "best use", ink2(12), end-130)
	c.right(end-52, c.y, "laying, of 100", ink2(12))
	c.right(end, c.y, "if not", ink2(12))
	c.y += 8
	for i, h := range all {
		if i == most {
			c.text(c.x, c.y+18, fmt.Sprintf("and %s more, as the list says", thousands(len(all)-i)), ink2(13))
			c.y += 28
			break
		}
		c.use(sheet, h, scene.Area{X: c.x, Y: c.y, W: c.w, H: row})
		c.y += row
	}
	c.rule(c.x, c.y, end, c.y, scene.Ink)
	c.y += 6
}

// noUse says why nothing is given.
func (c *cardDraw) noUse(sheet *state.ReviewSheet) string {
	if sheet.Hand.Cells()+sheet.Hand.Virgins() == 0 {
		return "The list says what is best without them. What one would do: change by hand."
	}
	return "None of it is worth more in a nuc of the list than kept."
}

// use draws who gets what in a row.
func (c *cardDraw) use(sheet *state.ReviewSheet, h handed, a scene.Area) {
	n, y := c.r.Nuc(h.nuc.Nuc.Nuc), a.Y+a.H/2
	if n == nil {
		return
	}
	ware := sheet.Hand.Wares[h.way.Ware-1]
	c.rule(a.X, a.Y, a.Right(), a.Y, scene.Hair)
	if c.s.Selection.Has(n.Nuc.Nuc.Subject()) {
		c.add(scene.Rect{Area: scene.Area{X: a.X - 6, Y: a.Y + 1, W: a.W + 12, H: a.H - 2}, Radius: 5, Fill: scene.PenTint})
	}
	sign := cellToken
	if ware.Virgin {
		sign = virginToken
	}
	c.token(sign, at(a.X+9, y), 9, scene.Panel)
	c.add(scene.Line{From: at(a.X+24, y), To: at(a.X+38, y), Stroke: stroke(scene.Ink2, 1.6)},
		scene.Poly{Points: []scene.Point{at(a.X+44, y), at(a.X+37, y-4), at(a.X+37, y+4)}, Fill: scene.Ink2})
	l := small(c.lidOf(n, at(a.X+62, y), 24))
	l.Tag = scene.Tag{}
	c.add(l)
	end := c.text(a.X+84, y+5, n.Name, ink(14).semi())
	c.fit(end+8, y+5, useNote(h.way), ink2(13), a.Right()-84)
	c.right(a.Right()-52, y+5, percent(h.way.Lays), ink(14).semi())
	c.right(a.Right(), y+5, percent(h.nuc.Ways[0].Lays), ink2(14))
	c.hit(a, n.Tag().Ref, sheet.Title(h.way)+"; "+plural(ware.Many, "such in hand", "such in hand"))
}

// useNote is what comes before something is given.
func useNote(w review.Way) string {
	switch {
	case w.OwnFirst:
		return "after a look"
	case w.If() != "":
		return w.If()
	case w.Kind == review.BreakDown:
		return "own cells down first"
	case w.Kind == review.TakeOut:
		return "the day after"
	case w.Kind == review.MakeUp, w.Kind == review.ShakeOut:
		return "made up first"
	default:
		return ""
	}
}

// left says what becomes of what the best use leaves in hand.
func (c *cardDraw) left(sheet *state.ReviewSheet) {
	c.y += 12
	for _, l := range sheet.Left() {
		f := ink(13)
		if l.Late && !sheet.Hand.Wares[l.Ware].Virgin || l.Many < 0 {
			f = f.semi().as(scene.Act)
		}
		c.para(sheet.LeftWords(l), f, 4)
	}
}

// sums draws how many queens come of this use, of giving in stand order, of none.
func (c *cardDraw) sums(sheet *state.ReviewSheet) {
	if sheet.This.Over == 0 {
		return
	}
	c.y += 20
	c.y = c.wrap(c.x, c.y, "Queens by "+shortDay(sheet.By)+" from "+plural(sheet.Open, "open nuc", "open nucs")+" and "+plural(sheet.Empty, "empty one", "empty ones"), ink(14).semi(), c.w, 2)
	c.para("open: something could gain in it, in hand or not; laying, or caught", ink2(12), 2)
	c.y -= 4
	most := max(sheet.This.High, sheet.Order.High, sheet.None.High, 1)
	names, figures := 104.0, 70.0
	k := (c.w - names - figures) / most
	for i, u := range []struct {
		word string
		review.Use
	}{{"this use", sheet.This}, {"in stand order", sheet.Order}, {"none of them", sheet.None}} {
		c.y += 24
		f, fill := ink2(13), scene.Bar
		if i == 0 {
			f, fill = ink(13).semi(), scene.Ink
		}
		c.text(c.x, c.y, u.word, f)
		x := c.x + names
		c.rect(scene.Area{X: x, Y: c.y - 10, W: k * u.Expected, H: 10}, fill)
		c.add(scene.Line{From: at(x+k*u.Low, c.y-5), To: at(x+k*u.Expected, c.y-5), Stroke: stroke(scene.Ground, 1.5)},
			scene.Line{From: at(x+k*u.Expected, c.y-5), To: at(x+k*u.High, c.y-5), Stroke: stroke(scene.Ink2, 1.5)})
		f.size = 14
		c.right(c.x+c.w, c.y, state.Span{Low: u.Low, High: u.High}.String(), f)
	}
	c.y += 22
	c.text(c.x, c.y, "thin line and figures: 10–90 %", ink2(12))
	c.y += 20
	if n := sheet.This.Caught; n > 0 {
		c.para("this use counts "+plural(n, "proven queen", "proven queens")+" caught; when to catch is yours, the list does not ask", ink2(12), 3)
	}
}

// oneMore says what one more of each would be worth.
func (c *cardDraw) oneMore(sheet *state.ReviewSheet) {
	const least = 0.005
	c.y += 4
	for _, virgin := range []bool{false, true} {
		var best review.More
		name := ""
		for i, w := range sheet.Hand.Wares {
			if m := sheet.More(i); w.Virgin == virgin && m.Worth > best.Worth {
				best, name = m, w.Name
			}
		}
		if best.Worth >= least {
			c.para(sheet.MoreWords("One more "+name, best), ink(14), 3)
		}
	}
	if m := sheet.MoreBees(); m.Worth >= least {
		said := sheet.MoreWords("One more cup of bees", m)
		if sheet.Hand.Cups == 0 {
			said += "; " + sheet.BeesWords()
		}
		c.para(said, ink(14), 4)
	}
	if m := sheet.This.Hour; m.Worth >= least {
		c.para(sheet.MoreWords("One more hour", m), ink(14), 2)
	}
	if !sheet.This.Exact && sheet.This.Bound-sheet.This.Worth >= least {
		c.para("No use can be better by more than "+sheet.Worth(sheet.This.Bound-sheet.This.Worth), ink2(13), 2)
	}
	if m := sheet.This.Minutes; m > 0 {
		c.para(minutes(m)+" of work in all", ink2(13), 1)
	}
}
