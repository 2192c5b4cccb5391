package state

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// OrderLine is a line on the page of the orders, with what stands in its columns.
type OrderLine struct {
	OrderLook
	Cells []string
	Alarm bool         // it wants the keeper
	Sure  bool         // of an order: it is as sure as is wished
	To    book.Subject // where it leads; none: nowhere
	Left  int          // of what is left over: its place counted from 1; 0: no such line
	Y, H  float64      // from the top of the page's body
}

// OrderLook is the kind of a line. The zero OrderLook is a sentence.
type OrderLook uint8

// The kinds of lines.
const (
	OrderSaid   OrderLook = iota
	OrderTitle            // the head of a section
	OrderHead             // an order
	OrderQueen            // a queen for it
	OrderLeft             // a line of which queens are left over
	OrderHeads            // heads of columns
	OrderGone             // a queen who was handed over
	OrderClaims           // claims of a group
)

// Heights of lines, dp.
const (
	orderLine  = 26.0
	orderTitle = 42.0
	orderSaid  = 20.0
	orderSize  = 15.0 // of the name of an order
)

// SearchField is the field in which a queen who was handed over is looked for.
const SearchField = "orders.search"

// LeftRef names what is left over of a line; ID is its place.
const LeftRef = "left"

// Ref is what a click on the line is about; none: nothing.
func (l OrderLine) Ref() scene.Ref {
	switch {
	case !l.To.IsZero():
		return LinkTo(l.To)
	case l.Left > 0:
		return scene.Ref{Kind: LeftRef, ID: strconv.Itoa(l.Left)}
	}
	return scene.Ref{}
}

// orderPage is a page of lines being written.
type orderPage struct {
	r     *Reading
	sheet *OrderSheet
	width float64 // of sentences, dp
	all   []OrderLine
	y     float64
}

func (p *orderPage) add(l OrderLine, high float64) {
	l.Y, l.H = p.y, high
	p.all, p.y = append(p.all, l), p.y+high
}

func (p *orderPage) title(words string) {
	p.add(OrderLine{OrderLook: OrderTitle, Cells: []string{words}}, orderTitle)
}

func (p *orderPage) said(words string, alarm bool) {
	if words != "" {
		p.add(OrderLine{Cells: []string{words}, Alarm: alarm}, 2+orderSaid*float64(linesOf(words, titleSize, p.width)))
	}
}

// OrderLines are the lines of the page: with something looked for the queens who were
// handed over, else who gets which queen; below both the claims.
func (s State) OrderLines(width float64) []OrderLine {
	p := orderPage{r: s.Present(), sheet: s.OrderSheet(), width: width}
	if p.sheet == nil {
		return nil
	}
	if text := s.Typed(SearchField); text != "" {
		p.gone(text)
	} else {
		for _, o := range p.sheet.Orders {
			p.order(o)
		}
		if len(p.sheet.Orders) == 0 {
			p.y = 8
			p.said("No order is open. Write one down with New order in the card beside: who waits, for how many queens, by when.", false)
		}
		p.left()
	}
	p.claims()
	return p.all
}

// order writes an order and who goes to it.
func (p *orderPage) order(o handover.Served) {
	alarm := InVain(o)
	short, sure := p.sheet.stands(o)
	name := "Order " + o.Order.Number
	if o.Order.Customer != "" {
		name += ", " + o.Order.Customer
	}
	wants, below := ServedOf(o)+"; "+o.LeavesSaid(p.r.Day), ""
	if m := (Reckoner{}); m.Width(name, orderSize, scene.SemiBold)+m.Width(wants, titleSize, scene.Regular)+m.Width(short, titleSize, scene.SemiBold)+2*Edge > p.width {
		wants, below = "", wants
	}
	if m := (Reckoner{}); m.Width(name, orderSize, scene.SemiBold)+m.Width(short, titleSize, scene.SemiBold)+2*Edge > p.width {
		name, below = "Order "+o.Order.Number, o.Order.Customer+": "+below
	}
	p.add(OrderLine{OrderLook: OrderHead, Cells: []string{name, wants, short}, Alarm: !sure, Sure: sure, To: o.Order.Order.Subject()}, orderTitle)
	p.said(below, false)
	if o.Warning != "" {
		p.said("Mind: "+o.Warning, true)
	}
	p.said(Fell(o), alarm)
	p.said(p.sheet.Ring(o), alarm)
	for _, q := range p.r.ServedQueens(o) {
		p.add(OrderLine{OrderLook: OrderQueen, Cells: []string{q.Where, q.Line, q.Mark, q.When}, To: q.To}, orderLine)
	}
}

// leftOfLine are the queens of a line who are for nobody yet.
type leftOfLine struct {
	line string
	all  []handover.Queen
}

// of are the nucs and queens of the line.
func (l leftOfLine) of() (all []book.Subject) {
	for _, q := range l.all {
		all = append(all, holder(q))
	}
	return all
}

// leftOver are the queens for nobody yet by their lines, in the order of their names.
func (p *OrderSheet) leftOver() (all []leftOfLine) {
	for _, q := range p.Left {
		i := slices.IndexFunc(all, func(l leftOfLine) bool { return l.line == q.Line })
		if i < 0 {
			i, all = len(all), append(all, leftOfLine{line: q.Line})
		}
		all[i].all = append(all[i].all, q)
	}
	slices.SortStableFunc(all, func(a, b leftOfLine) int { return cmp.Compare(a.line, b.line) })
	return all
}

// left writes what is left over, by line.
func (p *orderPage) left() {
	if len(p.sheet.Left) == 0 {
		if len(p.sheet.Orders) > 0 {
			p.title("Nothing is left over")
		}
		return
	}
	p.title("Left over, for nobody yet")
	for i, l := range p.sheet.leftOver() {
		var names []string
		for _, q := range l.all {
			names = append(names, p.r.whereQueen(q))
		}
		runs := book.Names(book.Runs(names), func(said string) bool { return len(said) < mostLeft })
		p.add(OrderLine{OrderLook: OrderLeft, Cells: []string{cmp.Or(l.line, "line not known"), strconv.Itoa(len(l.all)), runs}, Left: i + 1}, orderLine)
	}
}

// mostLeft is how long the names of what is left over of a line are, in letters.
const mostLeft = 60

// gone writes the queens who were handed over and hold all words of a text.
func (p *orderPage) gone(text string) {
	var found []handover.Gone
	for _, g := range p.sheet.Gone {
		if g.Holds(text) {
			found = append(found, g)
		}
	}
	if len(found) == 0 {
		p.title("Nobody found among those handed over")
		p.said("Try fewer words: a customer, an order, a name, a disc, a colour, a line or a year", false)
		return
	}
	p.title(counted(len(found), "queen") + " handed over")
	p.add(OrderLine{OrderLook: OrderHeads, Cells: goneHeads}, orderLine)
	for _, g := range found {
		p.add(OrderLine{OrderLook: OrderGone, Cells: p.goneCells(g), Alarm: g.Claimed != 0, To: g.Queen.Queen.Subject()}, orderLine)
	}
}

var goneHeads = []string{"handed over", "queen", "line", "to", "batch", "caught", "claimed"}

func (p *orderPage) goneCells(g handover.Gone) []string {
	to, batch, age := g.Customer, "", ""
	if g.Number != "" {
		to = "order " + g.Number + ", " + to
	}
	if g.Batch != 0 {
		batch = strconv.Itoa(g.Batch)
	}
	if g.Age > 0 {
		age = fmt.Sprintf("%d d old", g.Age)
	}
	name := cmp.Or(g.Name, markWords(g.Mark), rules.Name(p.r.View, g.Queen.Queen.Subject()))
	return []string{g.On.String(), name, g.Line, to, batch, age, claimWords(g)}
}

// claims writes the claims by batch, and by age at catching.
func (p *orderPage) claims() {
	c := p.sheet.Claims
	if len(c.ByBatch) == 0 {
		return
	}
	p.title("Claims")
	p.claimTable("batch", c.ByBatch, c.BatchNotSaid, func(group int) string { return strconv.Itoa(group) })
	p.claimTable("age at catching", c.ByAge, c.AgeNotSaid, func(group int) string { return fmt.Sprintf("%d–%d d", group, group+6) })
}

func (p *orderPage) claimTable(of string, rows []handover.ClaimRow, notSaid handover.ClaimRow, name func(int) string) {
	p.add(OrderLine{OrderLook: OrderHeads, Cells: append([]string{of}, claimHeads...)}, orderLine+8)
	for _, r := range rows {
		group := "not known"
		if r.Group > 0 {
			group = name(r.Group)
		}
		p.claimRow(group, r, ofAll(r))
	}
	if n := notSaid.All(); n > 0 {
		p.claimRow("not said which", notSaid, strconv.Itoa(n))
	}
}

func (p *orderPage) claimRow(group string, r handover.ClaimRow, claimed string) {
	cells := []string{group}
	for _, n := range []int{r.Out, r.Dead, r.NotAccepted, r.Superseded, r.Unsaid} {
		cells = append(cells, someOf(n))
	}
	p.add(OrderLine{OrderLook: OrderClaims, Cells: append(cells, claimed)}, orderLine)
}

var claimHeads = []string{"handed over", "dead", "not accepted", "superseded", "not said how", "claimed"}

// someOf is a count; none is left blank.
func someOf(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

// ofAll is how many of a group were claimed.
func ofAll(r handover.ClaimRow) string {
	if r.All() == 0 {
		return "none"
	}
	return fmt.Sprintf("%d of %d", r.All(), r.Out)
}
