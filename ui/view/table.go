package view

import (
	"slices"
	"strings"
	"unicode/utf8"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// column is a column of the table: its head, where it stands, how it is
// sorted, and how a nuc shows in it.
type column struct {
	head  string
	by    state.Column
	slim  float64 // how wide it is at least
	width float64 // and where there is room; 0: as wide as its content, or what is left
	right bool
	least float64 // the width of the pane below which it is left out
	cell  func(t *tableDraw, n *state.Nuc, a scene.Area)
}

var columns = []column{
	{head: "nuc", by: state.ByName, cell: (*tableDraw).nuc},
	{head: "holds", by: state.ByHolds, slim: 132, width: 146, cell: (*tableDraw).holds},
	{head: "place", by: state.ByPlace, slim: 42, width: 56, least: tableFull, cell: (*tableDraw).place},
	{head: "batch", by: state.ByBatchNumber, slim: 44, width: 84, least: 640, cell: (*tableDraw).batch},
	{head: "age, d", by: state.ByAge, slim: 50, width: 58, right: true, least: 720, cell: (*tableDraw).age},
	{head: "last seen", by: state.BySeen, least: tableSeen, cell: (*tableDraw).seen},
	{head: "due", by: state.ByDueDay, slim: 150, width: 184, least: 460, cell: (*tableDraw).due},
	{head: "days to due", by: state.ByDueDay, slim: 42, width: 50, right: true, least: 400, cell: (*tableDraw).days},
	{head: "most probably", by: state.ByHolds, slim: 74, width: 102, least: tableSeen, cell: (*tableDraw).probably},
	{head: "bees", by: state.ByBees, slim: 44, width: 46, right: true, least: tableFull, cell: (*tableDraw).bees},
	{head: "stores", by: state.ByStores, slim: 50, width: 54, right: true, least: tableFull, cell: (*tableDraw).stores},
	{head: "needs you: why", by: state.ByNeed, cell: (*tableDraw).need},
}

// given are the columns that give way where there is no room for all, the first first:
// the name of a nuc mostly tells its place, and what was seen last its bees and stores.
var given = []state.Column{state.ByPlace, state.ByStores, state.ByBees}

// Widths of a pane, dp: under tableFull, which is a window under 1200, place, bees and
// stores have no columns; under tableSeen what was seen last and the chances have none.
const (
	tableWide = 1000.0
	tableFull = 862.0
	tableSeen = 820.0
)

// Last seen and needs you are so wide at least; what is free is theirs up to the usual,
// before others have more than slim columns.
const seenLeast, seenUsual, needLeast, needUsual = 118.0, 140.0, 176.0, 200.0

// Widths of the column of names, dp.
const namesLeast, namesMost, namesWide = 54.0, 110.0, 180.0

// tableDraw is the table being drawn.
type tableDraw struct {
	*sheet
	area  scene.Area
	r     *state.Reading
	names float64 // width of the column of names
	shown []column
	ease  float64 // how much of the way from slim to full width the columns have, 0 to 1
}

// table draws the nucs as rows with columns that can be sorted.
func (p *sheet) table(a scene.Area) {
	t := tableDraw{sheet: p, area: a, r: p.s.Reading()}
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.GridGround}}, func() {
		p.rect(a, scene.Panel)
		nucs := p.s.Shown()
		t.names = t.namesWidth(nucs)
		t.choose()
		p.formHead(a, plural(len(nucs), "nuc", "nucs"), "filter: type any word, stand, batch or letter")
		t.heads(a.Y + 60)
		t.rows(p.s.Listing(), len(nucs))
	})
}

// formHead draws the head of a pane that fills the room: how many there are,
// the filter, and the forms of Yard. Where room is short a filter in use takes
// the place of the count.
func (p *sheet) formHead(a scene.Area, title, hint string) {
	const least, most = 96.0, 380.0
	to := p.allForms(a) - 20
	x := a.X + state.Edge
	if end := x + p.width(title, ink(14).semi()); !p.filtering() || to-end-20 >= 2*least {
		p.fit(x, a.Y+25, title, ink(14).semi(), to)
		x = p.headsMenu(end+14, a.Y+25, to-2*least) + 24
	}
	if to-x >= least {
		field := scene.Area{X: x, Y: a.Y + 6, W: min(most, to-x), H: leastTarget}
		p.filterField(field, p.firstFitting(field.W-30, hint, "filter: type any word", "filter"))
	}
}

// allForms draws the forms of Yard at the right of a pane's head and gives
// where they begin.
func (p *sheet) allForms(a scene.Area) float64 {
	x := a.Right() - state.Edge
	for _, form := range []struct {
		word string
		pane state.Pane
	}{{"table", state.Table}, {"wall", state.Wall}, {"lids", state.Lids}, {"map", state.Map}} {
		f := ink2(13)
		on := p.s.Pane == form.pane
		if on {
			f = f.semi()
		}
		from := x - p.width(form.word, f)
		p.link(from, a.Y+25, form.word, ink2(13), form.word, on)
		x = from - 16
	}
	return x + 16
}

// choose takes the columns for which the pane is wide enough, and how wide they are.
func (t *tableDraw) choose() {
	t.shown = slices.DeleteFunc(slices.Clone(columns), func(c column) bool { return t.area.W < c.least })
	free, more := t.room()
	for _, by := range given {
		if free >= 0 {
			break
		}
		t.shown = slices.DeleteFunc(t.shown, func(c column) bool { return c.by == by })
		free, more = t.room()
	}
	t.ease = max(0, min(1, (free+seenLeast-seenUsual+needLeast-needUsual)/more))
}

// room is how much is free when all columns are slim, and how much more they would take.
func (t *tableDraw) room() (free, more float64) {
	free = t.area.W - 2*state.Edge - t.names - needLeast
	for _, c := range t.shown {
		free, more = free-c.slim, more+c.width-c.slim
		if c.by == state.BySeen {
			free -= seenLeast
		}
	}
	return free, more
}

// columns draws them from the left. What is free is for why a nuc needs the keeper, once
// there is room for what was seen last.
func (t *tableDraw) columns(draw func(c column, x, w float64)) {
	free := t.area.W - 2*state.Edge
	for _, c := range t.shown {
		free -= t.columnWidth(c)
	}
	x := t.area.X + state.Edge
	for _, c := range t.shown {
		w := t.columnWidth(c)
		switch c.by {
		case state.BySeen:
			if w = free - needLeast; w > seenUsual {
				w = max(seenUsual, min(free/2, 2*seenUsual))
			}
		case state.ByNeed:
			w = t.area.Right() - state.Edge - x
		}
		draw(c, x, w)
		x += w
	}
}

// columnWidth is how wide a column is that does not take what is free.
func (t *tableDraw) columnWidth(c column) float64 {
	if c.by == state.ByName {
		return t.names
	}
	return c.slim + t.ease*(c.width-c.slim)
}

// namesWidth is how wide the names are, as far as there is room for them.
func (t *tableDraw) namesWidth(nucs []*state.Nuc) float64 {
	long := ""
	for _, n := range nucs {
		if utf8.RuneCountInString(n.Name) > utf8.RuneCountInString(long) {
			long = n.Name
		}
	}
	most := namesMost
	if t.area.W >= tableWide {
		most = namesWide
	}
	return min(max(t.width(long, ink(14).bold())+14, namesLeast), most)
}

func (t *tableDraw) heads(y float64) {
	t.columns(func(c column, x, w float64) {
		f := ink2(13)
		on := t.s.Sort.By == c.by && c.head != "days to due" && c.head != "most probably"
		if on {
			f = ink(13).semi()
		}
		ref := scene.Ref{Kind: state.SortRef, ID: c.by.String()}
		if t.hovers(ref) {
			f = f.as(scene.Ink)
		}
		head := c.head
		if t.width(head, f) > w-20 {
			head, _, _ = strings.Cut(head, ":")
			head = strings.TrimPrefix(strings.TrimSuffix(head, " to due"), "most ")
		}
		head = scene.Shorten(t.measure, head, f.size, f.weight, w-4)
		if c.right {
			t.right(x+w-14, y, head, f)
		} else if end := t.text(x, y, head, f); on {
			t.arrow(end+6, y, t.s.Sort.Down)
		}
		t.hit(scene.Area{X: x - 4, Y: y - 18, W: w - 6, H: leastTarget}, ref, "sort by "+c.head)
	})
	t.rule(t.area.X+state.Edge, y+8, t.area.Right()-state.Edge, y+8, scene.Ink)
}

// arrow shows which way a column is sorted.
func (p *sheet) arrow(x, y float64, up bool) {
	tip := []scene.Point{at(x, y-8), at(x+8, y-8), at(x+4, y-2)}
	if up {
		tip = []scene.Point{at(x, y-2), at(x+8, y-2), at(x+4, y-8)}
	}
	p.add(scene.Poly{Points: tip, Fill: scene.Ink})
}

// rows draws the rows in sight and how many there are.
func (t *tableDraw) rows(rows []state.TableLine, nucs int) {
	fit := t.l.TableRows()
	first := min(int(t.s.Scroll[state.TablePlace]/state.TableRow+0.5), max(0, len(rows)-fit))
	y := t.area.Y + state.TableHead
	for _, row := range rows[first:min(len(rows), first+fit)] {
		a := scene.Area{X: t.area.X + state.Edge, Y: y, W: t.area.W - 2*state.Edge, H: state.TableRow}
		if row.Head != nil {
			t.sectionHead(a, row.Head)
		} else {
			t.row(row.Nuc, a)
		}
		y += state.TableRow
	}
	t.scrollBar(scene.Area{X: t.area.X, Y: t.area.Y + state.TableHead, W: t.area.W, H: float64(fit) * state.TableRow},
		float64(first)*state.TableRow, float64(len(rows))*state.TableRow)
	switch {
	case nucs == 0 && t.filtering():
		t.fit(t.area.X+state.Edge, y+20, "Nothing matches; Esc shows all", ink2(14), t.area.Right()-state.Edge)
	case nucs == 0:
		t.noNucs(scene.Area{X: t.area.X, Y: t.area.Y + state.TableHead, W: t.area.W, H: t.area.H - state.TableHead})
		return
	}
	t.foot(fit, len(rows), nucs)
}

// foot says how much is shown and how the table is sorted and copied, as far as
// there is room.
func (t *tableDraw) foot(fit, rows, nucs int) {
	x, y, end := t.area.X+state.Edge, t.area.Bottom()-12, t.area.Right()-state.Edge
	said := []string{"Shift-click: sort within", "Ctrl+C: copy"}
	if hidden := t.s.Hidden(); hidden > 0 {
		said = append([]string{plural(hidden, "selected nuc is", "selected nucs are") + " hidden by the filter"}, said...)
	}
	if all := len(t.r.In(t.s.Filled())); nucs < all {
		said = append([]string{thousands(all-nucs) + " hidden by the filter, Esc shows all"}, said...)
	}
	if fit < rows {
		said = append([]string{thousands(fit) + " of " + plural(rows, "row", "rows") + " in sight"}, said...)
	}
	for _, word := range said {
		if x+t.width(word, ink2(13)) > end {
			return
		}
		x = t.text(x, y, word, ink2(13)) + 20
	}
}

func (t *tableDraw) row(n *state.Nuc, a scene.Area) {
	subject := n.Nuc.Nuc.Subject()
	tag := n.Tag()
	row := scene.Rect{Area: a, Tag: tag}
	if t.hovers(tag.Ref) {
		row.Fill = scene.Sunk
	}
	if t.s.Selection.Has(subject) {
		row = scene.Rect{Area: scene.Area{X: a.X - 12, Y: a.Y + 1, W: a.W + 12 + state.Edge - besideBar, H: a.H - 2}, Radius: 5, Fill: scene.PenTint, Stroke: stroke(scene.Pen, 1.5), Tag: tag}
	}
	t.add(row)
	t.columns(func(c column, x, w float64) {
		c.cell(t, n, scene.Area{X: x, Y: a.Y, W: w, H: a.H})
	})
	t.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Hair)
}
