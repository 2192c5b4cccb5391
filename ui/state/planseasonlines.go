package state

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
	"lidmark/ui/scene"
)

// SeasonLine is a line on the page of the season, with what stands in its columns.
type SeasonLine struct {
	SeasonLook
	Cells []string
	Alarm bool      // it wants the keeper
	Head  bool      // it is over the columns of the lines of its kind
	Ref   scene.Ref // what a click on it is about; none: nothing
	Best  [2]bool   // of a turn: it gives most queens, and most who live
	Digit int       // the figure that takes the way; 0: none does now
	X     float64   // from where the lines of the page begin: 0, or that of those beside
	Y, H  float64   // from the top of the page's body
}

// SeasonLook is the kind of a line. The zero SeasonLook is a sentence.
type SeasonLook uint8

// The kinds of lines.
const (
	SeasonSaid    SeasonLook = iota
	SeasonTitle              // the head of a section
	SeasonClash              // what batches want at once
	SeasonWay                // a way out
	SeasonAsk                // the buttons that find dates
	SeasonGraft              // a graft that is found
	SeasonKept               // a promise that it keeps
	SeasonTurn               // how a nuc is worked: the fields that say it
	SeasonTurnAge            // what it gives, by the age at which its queens are caught
)

// SeasonPane says where the page of the season lies.
type SeasonPane struct {
	Head   scene.Area // the words that turn the pages, and papers
	Body   scene.Area // the lines; they scroll
	Wide   float64    // of a line: less than the body where that is wider than is read with ease
	Lines  []SeasonLine
	Tall   float64
	Offset float64
}

// Measures of the page of the season, dp.
const (
	StripHeight = 36.0 // of the orders in time
	seasonAsk   = 52.0
	seasonFoot  = 8.0
	seasonWide  = 900.0
	seasonHalf  = 720.0 // from here on two columns of lines stand beside each other
	seasonGap   = 44.0  // between them
	fewWays     = 2     // told of a clash that is not chosen
)

// SeasonPane is how the page is divided.
func (s State) SeasonPane(l Layout) (p SeasonPane) {
	p.Head, p.Body = cutTop(l.Main, PlanHead)
	beside := 0.0
	if p.Wide = p.Body.W - 2*Edge; p.Wide >= 2*seasonHalf+seasonGap {
		p.Wide = (p.Wide - seasonGap) / 2
		beside = p.Wide + seasonGap
	}
	p.Wide = min(seasonWide, p.Wide)
	p.Lines = s.SeasonLines(p.Wide, beside)
	for _, l := range p.Lines {
		p.Tall = max(p.Tall, l.Y+l.H+seasonFoot)
	}
	p.Offset = min(s.Scroll[SeasonPlace], p.most())
	return p
}

func (p SeasonPane) most() float64 { return max(0, p.Tall-p.Body.H) }

// seasonLines are lines being written.
type seasonLines struct {
	width float64
	all   []SeasonLine
	x, y  float64
}

func (p *seasonLines) add(l SeasonLine, high float64) {
	l.X, l.Y, l.H = p.x, p.y, high
	p.all, p.y = append(p.all, l), p.y+high
}

func (p *seasonLines) title(words string) {
	p.add(SeasonLine{SeasonLook: SeasonTitle, Cells: []string{words}}, orderTitle)
}

// heads adds the heads over the columns of the lines of a kind.
func (p *seasonLines) heads(of SeasonLook, cells ...string) {
	p.add(SeasonLine{SeasonLook: of, Head: true, Cells: cells}, orderLine)
}

// said adds a sentence, as high as its lines are in letters of a weight.
func (p *seasonLines) said(l SeasonLine, weight scene.Weight, width float64) {
	lines := len(scene.Wrap(Reckoner{}, l.Cells[0], titleSize, weight, width))
	p.add(l, 8+orderSaid*float64(lines))
}

// SeasonLines are the lines of the page: the dates for what is owed, then what batches
// want at once with the ways out, then that nothing is owed, and last the turn of a nuc: below,
// or, where there is a place for it, beside.
func (s State) SeasonLines(width, beside float64) []SeasonLine {
	p, sheet := seasonLines{width: width}, s.SeasonSheet()
	if sheet == nil {
		return nil
	}
	owed := s.seasonOwed()
	if len(owed.Promises) > 0 {
		p.owed(s, owed)
	}
	if d := s.SeasonDates(); d != nil && d.Known {
		p.dates(s, d)
	}
	for _, e := range owed.Waits {
		if e.Unsure() {
			p.said(SeasonLine{Cells: []string{e.Said()}, Alarm: true}, scene.Regular, p.width)
		}
	}
	for _, w := range owed.Unordered {
		if w.Unsure() {
			p.said(SeasonLine{Cells: []string{w.Sentence()}, Alarm: true}, scene.Regular, p.width)
		}
	}
	all := s.SeasonClashes()
	p.title(s.clashesSaid(len(all), len(sheet.Clashes)))
	for i, c := range all {
		p.clash(i, s.clashSaid(i, c), i == s.ChosenClash())
	}
	if len(owed.Promises) == 0 { // clashes have their ways out in sight before what needs nothing
		p.owed(s, owed)
	}
	if beside > 0 {
		p.x, p.y = beside, 0
	}
	if s.Drag.Kind != PlannedDrag {
		p.turn(s, sheet.Turn)
	}
	return p.all
}

// clashesSaid is how many clashes there are; while a batch is dragged, with it there.
func (s State) clashesSaid(n, now int) string {
	said := func(n int) string {
		if n == 1 {
			return "1 clash"
		}
		return fmt.Sprintf("%d clashes", n)
	}
	switch {
	case s.Drag.Kind == PlannedDrag && s.Drag.far():
		return fmt.Sprintf("%s, so moved %d", said(now), n)
	case n == 0 && s.laneCountAll() == 0:
		return "No batch is under way or planned: plan one in Wish, Alt+P"
	case n == 0:
		return "No two batches want the same"
	}
	return said(n)
}

// clashSaid is a clash as it is told: one that is there only while something is dragged is new.
func (s State) clashSaid(i int, c season.Clash) season.Clash {
	if m, ok := s.seasonTrial(); ok && i < m.fresh {
		c.Why = "New: " + WithinSentence(c.Why)
	}
	return c
}

// clash writes what batches want at once, and the ways out: all of the one that is
// chosen, each with its figure.
func (p *seasonLines) clash(i int, c season.Clash, chosen bool) {
	p.said(SeasonLine{SeasonLook: SeasonClash, Cells: []string{plan.Sentence(c.Why)}, Alarm: true, Ref: ClashOf(i)}, scene.SemiBold, p.width-ClashIndent)
	for j, w := range c.Ways {
		if !chosen && j == fewWays {
			break
		}
		l := SeasonLine{SeasonLook: SeasonWay, Cells: []string{plan.Sentence(w.What), waySaid(w)}, Alarm: costs(w)}
		if !w.Plan.Batch.IsZero() {
			l.Ref = OutOf(i, j)
			if chosen {
				l.Digit = j + 1
			}
		}
		p.add(l, orderLine+4)
	}
}

// ClashIndent is how far the words of a clash and its ways out stand in, dp.
const ClashIndent = 20.0

// costs tells whether a way out makes a promise less sure than it is, and than it is wished.
func costs(w season.Way) bool {
	return w.Wished && plan.Unsure(w.After, min(w.Before, w.Sure))
}

// waySaid is what a way does to the promise, and whether the others still clash.
func waySaid(w season.Way) string {
	var all []string
	switch {
	case w.Plan.Batch.IsZero():
		return ""
	case w.Wished:
		all = append(all, chanceBeside(w.After, "now", w.Before))
	default:
		all = append(all, "no promise hangs on it")
	}
	if w.Left > 0 {
		all = append(all, "the others still clash")
	}
	return strings.Join(all, "; ")
}

// owed says how much is owed that no graft is planned for, or how far it is found,
// beside what finds it.
func (p *seasonLines) owed(s State, owed *SeasonSheet) {
	if len(owed.Promises) == 0 {
		none := "No order needs a graft: what is ready, to be expected or planned is enough"
		switch {
		case len(s.OpenOrders()) == 0:
			none = "No order is open: write one down in Orders, Alt+S"
		case slices.ContainsFunc(owed.Waits, season.Entrusted.Unsure):
			none = "Every order has its graft, and not each is as sure as it is wished: see above"
		}
		p.said(SeasonLine{Cells: []string{none}}, scene.Regular, p.width)
		return
	}
	words := cmp.Or(s.datesSaid(), owed.needsSaid())
	p.add(SeasonLine{SeasonLook: SeasonAsk, Cells: []string{words}}, seasonAsk)
}

// needsSaid is which orders miss queens who are neither to be expected nor planned, and how many in all,
// as the hand-over has it; and how many of the others are less sure than is wished.
func (owed *SeasonSheet) needsSaid() (words string) {
	var title string
	orders, queens := 0, 0
	for _, o := range owed.Promises {
		i := slices.IndexFunc(owed.dealt.Orders, func(s handover.Served) bool { return s.Order.Order == o.Order })
		if more := owed.dealt.Orders[i].Missing(); more > 0 {
			title, orders, queens = plan.Sentence(o.Name), orders+1, queens+more
		}
	}
	switch orders {
	case 0:
	case 1:
		words = fmt.Sprintf("%s needs a graft for %s", title, counted(queens, "queen"))
	default:
		words = fmt.Sprintf("%s need a graft, for %s in all", counted(orders, "order"), counted(queens, "queen"))
	}
	switch unsure := len(owed.Promises) - orders; {
	case unsure == 0:
	case orders > 0:
		words += fmt.Sprintf("; of %d more, fewer can be promised than is wished", unsure)
	case unsure == 1:
		words = plan.Sentence(owed.Promises[0].Name) + " has its graft, and is less sure than is wished"
	default:
		words = counted(unsure, "order") + " have their grafts, and are less sure than is wished"
	}
	return words
}

// WithinSentence is a text as it stands within a sentence: it begins small.
func WithinSentence(text string) string {
	first := min(1, len(text))
	return strings.ToLower(text[:first]) + text[first:]
}

// datesSaid is how far the search is, and how good what it found.
func (s State) datesSaid() string {
	d := s.SeasonDates()
	switch {
	case d == nil:
		return ""
	case !d.Known:
		return "looking for a first answer …"
	}
	words := fmt.Sprintf("%s, %.0f h of work", counted(len(d.Batches), "graft"), d.Minutes/60)
	switch {
	case len(d.Batches) == 0:
		words = "no graft keeps any of it"
	case d.Exact && len(d.Short) == 0:
		words += "; nothing that is tried takes less"
	case d.Exact:
		words += d.shortSaid() + "; no plan that is tried is short of fewer"
	case len(d.Short) > 0:
		words += d.shortSaid()
	case d.Bound > 0:
		words += fmt.Sprintf("; at least %.0f h are needed", d.Bound/60)
	}
	if d.Looking() {
		return fmt.Sprintf("round %d of %d: best so far %s", d.Round, d.Of, words)
	}
	if d.Stopped {
		return "stopped: " + words
	}
	return words
}

// shortSaid says how many queens are short.
func (d *SeasonDates) shortSaid() string {
	_, short := d.Queens()
	return fmt.Sprintf(", %s short", counted(short, "queen"))
}

// dates writes the grafts that are found, what they keep, and what they do not.
func (p *seasonLines) dates(s State, d *SeasonDates) {
	for _, short := range d.Short {
		p.said(SeasonLine{Cells: []string{short.Why}, Alarm: true}, scene.Regular, p.width)
	}
	for _, drop := range d.Dropped {
		p.said(SeasonLine{Cells: []string{plan.Sentence(drop.Said())}}, scene.Regular, p.width)
	}
	if len(d.Clashes) > 0 {
		p.said(SeasonLine{Cells: []string{plan.Sentence(season.ClashesThen(len(d.Clashes)))}, Alarm: true}, scene.Regular, p.width)
	}
	for _, c := range d.Clashes {
		p.said(SeasonLine{Cells: []string{plan.Sentence(c.Why)}, Alarm: true}, scene.Regular, p.width)
	}
	v := s.Present().View
	if len(d.Batches) > 0 {
		p.heads(SeasonGraft, "graft", "larvae", "nucs", "work", "for")
	}
	for _, b := range d.Batches {
		var forOrders []string
		for _, i := range b.Promises {
			forOrders = append(forOrders, d.Promises[i].Name)
		}
		whom := strings.Join(forOrders, ", ")
		line := b.Line
		if b.Breeder != nil {
			line += " (" + b.Breeder.Name + ")"
		}
		p.add(SeasonLine{SeasonLook: SeasonGraft, Cells: []string{
			b.Day.ShortFrom(s.Today()), strings.TrimSpace(fmt.Sprintf("%d %s", b.Larvae, line)), fmt.Sprintf("%d in %s", b.Nucs, v.Yard(b.Yard).Name),
			fmt.Sprintf("%.0f min", b.Minutes), whom,
		}}, orderLine)
		if b.Adds != nil {
			p.add(SeasonLine{SeasonLook: SeasonGraft, Cells: []string{"", "", "", "", b.Adds.Said()}}, orderLine)
		}
	}
	if len(d.Kept) > 0 {
		p.heads(SeasonKept, "kept", "queens", "how sure")
	}
	for _, k := range d.Kept {
		o := d.Promises[k.Promise]
		p.add(SeasonLine{SeasonLook: SeasonKept, Cells: []string{
			plan.Sentence(o.Name), fmt.Sprintf("%d by %s", o.Queens, o.By.ShortFrom(s.Today())), cmp.Or(d.Nearly(k), plan.OfHundred(k.Chance)),
		}}, orderLine)
	}
}

// FoundDays are the days of the grafts that are found.
func (s State) FoundDays() (all []calendar.Day) {
	if d := s.SeasonDates(); d != nil && d.Known {
		for _, b := range d.Batches {
			all = append(all, b.Day)
		}
	}
	return all
}
