package view

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of the pane of a batch's nucs, dp.
const (
	batchLid  = 36.0
	batchDays = 86.0 // the days of what comes
)

// inNucs draws the lids of its nucs, what comes, and the buttons. Where there is no room
// for all they scroll; in a narrow room what comes stands below the clock.
func (d batchDraw) inNucs(a scene.Area) {
	x, w, bottom := a.X+state.Edge, a.W-2*state.Edge, a.Bottom()-d.s.BatchButtons()
	if high := d.s.BatchNucsHigh(d.l, d.b); high > 0 {
		body := scene.Area{X: a.X, Y: a.Y, W: a.W, H: bottom - a.Y}
		offset := min(d.s.NucsOffset(d.l), max(0, high-body.H))
		d.wholeLines(body, func() {
			y := d.batchLids(scene.Area{X: x, Y: a.Y - offset, W: w, H: high}, body)
			if d.l.Main.W >= state.BatchWide {
				d.comes(scene.Area{X: x, Y: y + 6, W: w, H: math.Inf(1)})
			}
		})
		d.scrollBar(body, offset, high)
	} else {
		comes := 0.0
		if d.l.Main.W >= state.BatchWide {
			comes = d.comesHigh(w)
		}
		lids := scene.Area{X: x, Y: a.Y, W: w, H: bottom - a.Y - comes}
		if y := d.batchLids(lids, a); comes > 0 {
			d.comes(scene.Area{X: x, Y: y + 6, W: w, H: bottom - y - 6})
		}
	}
	d.rule(x, bottom, x+w, bottom, scene.Hair)
	work := d.s.BatchWork()
	if shut := d.refused(w, button{sentence(work.Word), work.Command, true}); shut != "" {
		d.fit(x, bottom+20, shut, ink2(13), x+w)
		bottom += state.RefusedLine
	}
	d.button(x, bottom+12, sentence(work.Word), work.Command, true)
	end := d.button(x, bottom+56, "Print its sheet", "print batch", false)
	d.button(end+8, bottom+56, "Wallet card", "print wallet", false)
}

// lidSize is how large so many lids can be where there is that much room: as large as
// the table of the yard has them at most, while six or all stand in a row.
func (d batchDraw) lidSize(n int, a scene.Area) (size, wide, high float64) {
	const name, head, inRow = state.BatchLidHigh - batchLid, 76.0, 6
	for _, size := range []float64{56, 48, 44} {
		wide = size + state.BatchLidWide - batchLid
		per := max(1, int(a.W/wide))
		if per >= min(n, inRow) && head+(size+name)*float64((n+per-1)/per) <= a.H {
			return size, wide, size + name
		}
	}
	return batchLid, state.BatchLidWide, state.BatchLidHigh
}

// lidRows are how many lids stand in a row, and in how many rows all of them.
type lidRows struct{ inRow, rows int }

func lidRowsOf(n int, w, wide float64) lidRows {
	per := max(1, int(w/wide))
	return lidRows{per, (n + per - 1) / per}
}

// batchLids draws the lids of its nucs, as many as there is room for, and gives
// where they end. Rows that what shows of them would cut are left out.
func (d batchDraw) batchLids(a, shows scene.Area) float64 {
	nucs, y := d.r.NucsOf(d.b.Batch), a.Y+28
	if len(nucs) == 0 {
		d.text(a.X, y, "Its nucs", ink(14).semi())
		return d.wrap(a.X, y+22, "no nuc holds a cell or a queen of it", ink2(13), a.W, 2)
	}
	end := d.text(a.X, y, "Its nucs, "+thousands(len(nucs)), ink(14).semi())
	if said := conditionsOf(nucs); end+10+d.width(said, ink2(13)) <= a.Right() {
		d.right(a.Right(), y, said, ink2(13))
	}
	need := slices.DeleteFunc(slices.Clone(nucs), func(n *state.Nuc) bool { return !n.NeedsYou })
	need = need[:min(len(need), 2)]
	bottom := a.Bottom()
	a.H -= 20 * float64(len(need))
	size, wide, high := d.lidSize(len(nucs), a)
	if a.Bottom() > shows.Bottom() { // they scroll
		size, wide, high = batchLid, state.BatchLidWide, state.BatchLidHigh
		if d.l.Main.W < state.BatchWide {
			size, wide, high, need = state.BatchSmall, state.BatchSmallWide, state.BatchSmallHigh, nil
		}
	}
	per, most := lidRowsOf(len(nucs), a.W, wide), max(1, int((a.H-76)/high))
	if per.rows > most && d.s.SmallLids(d.l, d.b) {
		size, high, need = state.BatchSmall, state.BatchSmallHigh, nil // the corner says who needs you
		per = lidRowsOf(len(nucs), a.W, state.BatchSmallWide)
		most = per.rows
	}
	pitch, rows := a.W/float64(per.inRow), min(per.rows, most)
	shown := nucs[:min(len(nucs), per.inRow*rows)]
	for i, n := range shown {
		o := at(a.X+pitch/2+float64(i%per.inRow)*pitch, y+18+size/2+float64(i/per.inRow)*high)
		if o.Y-size/2 < shows.Y || o.Y+size/2+18 > shows.Bottom() {
			continue
		}
		l := d.lidOf(n, o, size)
		l.Selected = false // all of them are the batch's
		d.add(l)
		d.centre(o.X, o.Y+size/2+15, scene.Shorten(d.measure, n.Name, 12.5, scene.Medium, pitch-4), ink(12.5).medium())
	}
	y += 24 + high*float64(rows)
	x := a.X
	if more := len(nucs) - len(shown); more > 0 {
		x = d.text(a.X, y+10, fmt.Sprintf("and %d more", more), ink2(13)) + 16
		if y += 20; y+20*float64(len(need)) <= bottom {
			x = a.X
		} else if len(need) > 0 { // beside it where there is no room below
			y, need = y-20, need[:1]
		}
	}
	for _, n := range need {
		d.corner(at(x, y), 11)
		d.fit(x+16, y+10, n.Name+": "+strings.Join(whys(n), "; "), ink(13), a.Right())
		y += 20
	}
	return y
}

// conditionsOf says how many nucs are in each condition, the most first.
func conditionsOf(nucs []*state.Nuc) string {
	count := map[book.Condition]int{}
	for _, n := range nucs {
		count[n.Presumed.Condition]++
	}
	all := slices.SortedStableFunc(slices.Values(book.Conditions()), func(a, b book.Condition) int { return count[b] - count[a] })
	var said []string
	for _, c := range all {
		if count[c] > 0 {
			said = append(said, thousands(count[c])+" "+c.String())
		}
	}
	return strings.Join(said, ", ")
}

// comesHigh is how high all that comes is.
func (d batchDraw) comesHigh(w float64) float64 {
	h := 56.0
	for _, c := range d.r.Comes(d.b) {
		h += d.comingHigh(c, w)
	}
	return h
}

// comingHigh is how high one line of what comes is.
func (d batchDraw) comingHigh(c state.Coming, w float64) float64 {
	lines := len(scene.Wrap(d.measure, d.say(c.Words()), 14, scene.Regular, w-batchDays))
	return 4 + float64(min(lines, 3))*scene.LineHeight(14)
}

// comes draws what is to be done at its nucs in the days to come, as far as there
// is room.
func (d batchDraw) comes(a scene.Area) {
	all := d.r.Comes(d.b)
	if a.H < 60 || len(all) == 0 {
		return
	}
	y := d.section(a.X, a.Y, a.W, "What comes", "")
	for _, c := range all {
		if y+d.comingHigh(c, a.W) > a.Bottom() {
			break
		}
		d.text(a.X, y+12, c.Day.Short(), ink2(13))
		y = d.wrap(a.X+batchDays, y+12, c.Words(), ink(14), a.W-batchDays, 3) - 8
	}
}
