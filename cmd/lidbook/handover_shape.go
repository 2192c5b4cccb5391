package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
	"lidmark/domain/season"
)

// sheetShape is who gets which queen, in JSON.
type sheetShape struct {
	Day     string        `json:"day"`
	Orders  []servedShape `json:"orders"`
	Left    []leftOfLine  `json:"forNobodyYet"`
	Caution string        `json:"caution"`
}

// servedShape is what an order gets, in JSON. Chances are shares of one.
type servedShape struct {
	Order    string       `json:"order"`
	Customer string       `json:"customer"`
	Open     int          `json:"open"`
	Line     string       `json:"line,omitempty"`
	Instead  []string     `json:"substitutes,omitempty"`
	Late     int          `json:"daysLate,omitempty"`
	Sent     bool         `json:"sent"`
	On       string       `json:"on"`
	Arrive   string       `json:"there"`
	Catch    string       `json:"catchOn"`
	Warning  string       `json:"warning,omitempty"`
	Gets     []givenShape `json:"gets"`
	Short    int          `json:"short"`
	Lost     bool         `json:"cannotBeKept,omitempty"`
	Since    string       `json:"shortSince,omitempty"`
	Fell     []fellShape  `json:"batchesFellShort,omitempty"`
	Coming   int          `json:"comingInTime,omitempty"`
	Planned  int          `json:"planned,omitempty"`
	Sure     *float64     `json:"plannedChance,omitempty"`
	Less     string       `json:"plannedLessFor,omitempty"` // what takes from it, in words
	Promised *int         `json:"canBePromised,omitempty"`  // of those missing, as surely as is wished, where not all can
	Look     []string     `json:"lookFirst,omitempty"`
	GraftBy  string       `json:"graftBy,omitempty"`
	Last     string       `json:"graftLast,omitempty"`    // the latest in time, no day in hand
	Nucs     *int         `json:"nucsForGraft,omitempty"` // that are free for a graft by then
	Next     string       `json:"missingBy,omitempty"`
	Chance   float64      `json:"missingChance,omitempty"`
	Most     float64      `json:"mostChance,omitempty"`

	lookAt   string // the nucs into which a look comes first
	lookSure float64
	promised string // what can be promised, in words

	graftBy string // the day, and the last, in words
	few     string // that it has too few nucs
	forIt   string // the question whether a graft planned for nobody is for it
	stand   handover.Stand
	why     string // it is short: what its batches have left
	stands  string // how the batches stand that it waits for
	leaves  string // when its queens do
	tooLate string // that it cannot be kept
}

// fellShape is a batch that gives an order fewer queens than planned, in JSON.
type fellShape struct {
	Batch   int    `json:"batch,omitempty"` // none: the graft was not made
	Graft   string `json:"graft"`
	Planned int    `json:"planned"`
	Gives   int    `json:"gives"`
	Sure    int    `json:"toBeCountedOn"`
}

// givenShape is a queen for an order, in JSON.
type givenShape struct {
	Queen      string `json:"queen,omitempty"`
	Nuc        string `json:"nuc,omitempty"`
	Yard       string `json:"yard,omitempty"`
	Cage       string `json:"cage,omitempty"`
	Bank       bool   `json:"bank,omitempty"`
	Caged      string `json:"cagedSince,omitempty"`
	Line       string `json:"line,omitempty"`
	Substitute bool   `json:"substitute,omitempty"`
	Mark       string `json:"mark,omitempty"`
	Ready      string `json:"readyFrom"`
	Catch      string `json:"catchBy,omitempty"`
	ToBank     bool   `json:"thenToBank,omitempty"`
	Room       bool   `json:"giveRoom,omitempty"`
	How        string `json:"how,omitempty"` // what is to be done with her, in words

	Lacks []string `json:"lacks,omitempty"` // of what the order wants
}

// leftOfLine are the queens of a line whom nobody ordered, in JSON.
type leftOfLine struct {
	Line   string   `json:"line"`
	Queens int      `json:"queens"`
	Cages  []string `json:"cages"`
	Nucs   []string `json:"nucs"`
}

func shapeOfSheet(p *plan.Planner) sheetShape {
	return shapeOfDealt(p, handover.New(p))
}

func shapeOfDealt(p *plan.Planner, sheet *handover.Sheet) sheetShape {
	v := p.View()
	s := sheetShape{Day: v.Today().String(), Orders: []servedShape{}, Left: leftByLine(v, sheet.Left), Caution: soldCaution}
	since, waits := handover.ShortSince(v, sheet), waitsOf(p, sheet)
	for i, o := range sheet.Orders {
		one := shapeOfServed(p, o)
		one.Since = since[o.Order.Order].String()
		if e, ok := waits[o.Order.Order]; ok {
			one.Sure, one.Less, one.stands = new(thousandth(e.Chance)), e.Less, e.Stands()
		}
		if m, unsure := sheet.Promised(p, i); unsure {
			one.Promised, one.promised = new(m.Queens), "promise "+m.Words(o.Short)
			if m.Queens == 0 {
				one.promised = "none can be promised so surely as is wished"
			}
		}
		s.Orders = append(s.Orders, one)
	}
	return s
}

// waitsOf are how sure the orders are that wait for batches, planned or grafted.
func waitsOf(p *plan.Planner, sheet *handover.Sheet) map[book.OrderID]season.Entrusted {
	waits := map[book.OrderID]season.Entrusted{}
	for _, e := range season.EntrustedTo(p, sheet) {
		waits[e.Order] = e
	}
	return waits
}

func shapeOfServed(p *plan.Planner, o handover.Served) servedShape {
	v := p.View()
	s := servedShape{
		Order: o.Order.Number, Customer: o.Order.Customer, Open: o.Order.Open(), Line: o.Order.Line, Instead: o.Order.Substitute, Sent: o.Order.Sent,
		On: o.On.String(), Arrive: o.Arrive.String(), Catch: o.Catch.String(), Warning: o.Warning, Gets: []givenShape{}, Short: o.Short,
		stand: o.Stand(), why: o.FellWords(), Lost: o.Lost, Coming: o.Coming, Planned: o.Planned, GraftBy: o.GraftBy.Day.String(), Last: o.GraftBy.Last.String(), Next: o.Next.Day.String(), Chance: thousandth(o.Next.Chance), Most: thousandth(o.Next.Most),
	}
	if by := o.GraftBy; by.Day != 0 {
		s.Nucs, s.few, s.graftBy = new(by.Nucs), p.TooFew(by), by.Said(func(d calendar.Day) string { return d.ShortFrom(v.Today()) })
	}
	if o.Lost {
		s.tooLate = o.TooLate().Said(func(d calendar.Day) string { return d.ShortFrom(v.Today()) })
	}
	if b, ok := o.Unordered(v); ok {
		s.forIt = fmt.Sprintf("is the graft of %s for it? then: lidbook plan for %s --order %s", b.Day.ShortFrom(v.Today()), argument(finder{View: v}.called(b)), argument(o.Order.Number))
	}
	s.leaves = o.LeavesSaid(v.Today())
	if by := o.Order.By; by != 0 {
		s.Late = max(0, v.From().Sub(by))
	}
	s.lookAt, s.lookSure = o.LookAt(), o.Sure
	for _, n := range o.Look {
		s.Look = append(s.Look, n.Name)
	}
	for _, f := range o.Fell {
		s.Fell = append(s.Fell, fellShape{f.Number, f.Day.String(), f.Meant, f.Gives, f.Sure})
	}
	for _, g := range o.Queens {
		s.Gets = append(s.Gets, shapeOfGiven(v, g))
	}
	return s
}

func shapeOfGiven(v *book.View, g handover.Given) givenShape {
	s := givenShape{
		Cage: g.Label, Bank: g.Bank, Caged: g.Caged.String(), Line: g.Line, Substitute: g.Substitute, Ready: g.Ready.String(),
		Mark: markWords(&book.Queen{Mark: g.Mark}), Catch: g.By.String(), ToBank: g.ToBank, Room: g.Room, How: g.Words(),
	}
	if g.Lacks.Any() {
		s.Lacks = strings.Split(g.Lacks.Wanted(), ", ")
	}
	if !g.ID.IsZero() {
		s.Queen = rules.Name(v, g.ID.Subject())
	}
	if !g.Nuc.IsZero() {
		n := v.Nuc(g.Nuc)
		s.Nuc, s.Yard = n.Name, v.Yard(n.Yard).Name
	}
	return s
}

// leftByLine are queens for nobody, by their lines.
func leftByLine(v *book.View, all []handover.Queen) []leftOfLine {
	lines := []leftOfLine{}
	for _, q := range all {
		i := slices.IndexFunc(lines, func(l leftOfLine) bool { return l.Line == q.Line })
		if i < 0 {
			i = len(lines)
			lines = append(lines, leftOfLine{Line: q.Line, Cages: []string{}, Nucs: []string{}})
		}
		l := &lines[i]
		l.Queens++
		if q.Nuc.IsZero() {
			l.Cages = append(l.Cages, cmp.Or(q.Label, rules.Name(v, q.ID.Subject())))
		} else {
			l.Nucs = append(l.Nucs, v.Nuc(q.Nuc).Name)
		}
	}
	slices.SortStableFunc(lines, func(a, b leftOfLine) int { return cmp.Compare(a.Line, b.Line) })
	return lines
}
