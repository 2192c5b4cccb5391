package rules

import (
	"fmt"
	"math"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// layoutSteps is the layout that is the plan of a yard as work at its nucs: stands
// to be carried and turned after dusk, those with virgins who fly held back until
// they lay, and fronts to be painted.
func (p *pass) layoutSteps(y *yardCase) {
	plan, ok := p.view.PlannedLayout(y.id)
	if !ok {
		return
	}
	stands, fronts := p.view.Left(plan)
	on := map[book.StandID][]*book.Nuc{}
	if len(stands) > 0 {
		on = p.onStands(y.id)
	}
	for _, to := range stands {
		if nucs := on[to.Stand]; len(nucs) > 0 {
			p.add(y, p.standMoves(y, plan, to, nucs))
		}
	}
	for _, f := range fronts {
		if n := p.view.Nuc(f.Nuc); n.Yard == y.id {
			p.add(y, p.frontMarks(y, plan, n, f))
		}
	}
}

func (p *pass) onStands(yard book.YardID) map[book.StandID][]*book.Nuc {
	on := map[book.StandID][]*book.Nuc{}
	for n := range p.view.Nucs() {
		if n.Yard == yard && !n.Stand.IsZero() {
			on[n.Stand] = append(on[n.Stand], n)
		}
	}
	return on
}

// standMoves is a stand that is to stand elsewhere or turned. It is told at its first
// nuc, since that is where the keeper goes.
func (p *pass) standMoves(y *yardCase, plan book.Layout, to book.StandSet, nucs []*book.Nuc) Finding {
	from, held := p.flown(y, plan.From, nucs)
	dusk := p.clock(practice.Dusk, max(from, y.today), y.zone)
	f := Finding{
		Rule: LayoutStep, Of: nucs[0].Nuc.Subject(), Act: ActCarryStand, Takes: p.numbers.Get(practice.MinutesCarryStand) * float64(len(nucs)),
		Since: plan.At.Instant, From: p.clock(practice.Dusk, from, y.zone), Best: dusk,
		What: "stand " + to.Letter + " is to stand elsewhere",
		Do:   "After dusk, entrances shut: " + moveWords(p.view.Stand(to.Stand).StandSet, to),
		Why:  fmt.Sprintf("the layout %q is the plan from %s", plan.Name, plan.From.Short()),
		Sure: sureCalendar, Used: []practice.Key{practice.VirginMayFlyFrom, practice.MinutesCarryStand, practice.Dusk},
	}
	for _, n := range nucs[1:] {
		f.Also = append(f.Also, n.Nuc.Subject())
	}
	if held != "" {
		f.Why += "; " + held
	}
	return f
}

// flown is the day from which no virgin of the nucs flies any more, and why that is
// later than the plan has it: carried a few metres she does not find home.
func (p *pass) flown(y *yardCase, from calendar.Day, nucs []*book.Nuc) (calendar.Day, string) {
	why := ""
	for _, n := range nucs {
		h := p.course.Of(n)
		if h.Condition != book.Virgin && h.Condition != book.Due || h.Age < int(p.numbers.Get(practice.VirginMayFlyFrom)) {
			continue
		}
		if lays := y.day(h.LookBest); lays > from {
			from = lays
			why = fmt.Sprintf("the virgin of %s is %s old and flies: not before the look of %s", n.Name, count(h.Age, "day"), lays.Short())
		}
	}
	return from, why
}

// moveWords is how a stand is carried and turned.
func moveWords(from, to book.StandSet) string {
	var words []string
	if d := math.Hypot(to.At.X-from.At.X, to.At.Y-from.At.Y); d >= 0.05 {
		words = append(words, fmt.Sprintf("carry stand %s %.1f m %s", to.Letter, d, towards(to.At.X-from.At.X, to.At.Y-from.At.Y)))
	}
	if turn := math.Mod(math.Mod(to.Turn-from.Turn, 360)+540, 360) - 180; math.Abs(turn) >= 1 {
		way := "clockwise"
		if turn < 0 {
			way = "anticlockwise"
		}
		words = append(words, fmt.Sprintf("turn it %.0f° %s", math.Abs(turn), way))
	}
	if len(words) == 0 {
		return "set stand " + to.Letter + " as it is planned"
	}
	return strings.Replace(strings.Join(words, ", "), "turn it", "turn "+stemOf(words, to.Letter), 1)
}

// stemOf is "it" where the stand was named before, else the stand.
func stemOf(words []string, letter string) string {
	if len(words) > 1 {
		return "it"
	}
	return "stand " + letter
}

// towards is the way of a move in words of the compass.
func towards(east, north float64) string {
	eighth := int(math.Round(math.Atan2(east, north)/(math.Pi/4))+8) % 8
	return [...]string{"north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"}[eighth]
}

// frontMarks is a front that is to get another mark.
func (p *pass) frontMarks(y *yardCase, plan book.Layout, n *book.Nuc, to book.FrontMarked) Finding {
	from := plan.From.Start(y.zone)
	do := strings.TrimSpace("Mark the front " + strings.TrimSpace(to.Colour+" "+to.Shape))
	if to.Shape+to.Colour == "" {
		do = "Take the mark off the front"
	}
	return Finding{
		Rule: LayoutStep, Of: n.Nuc.Subject(), Act: ActPaintFront, Takes: p.numbers.Get(practice.MinutesPaintFront),
		Since: plan.At.Instant, From: from, Best: from,
		What: "front to be marked", Do: do,
		Why:  fmt.Sprintf("the layout %q is the plan from %s", plan.Name, plan.From.Short()),
		Sure: sureCalendar, Used: []practice.Key{practice.MinutesPaintFront},
	}
}

// LaidOut is what is written when a task of the planned layout is done at a nuc:
// its stand as planned, or the mark of its front; ok is false for other tasks.
func LaidOut(v *book.View, f Finding) (fact book.Fact, ok bool) {
	id, is := f.Of.Nuc()
	if f.Rule != LayoutStep || !is {
		return nil, false
	}
	plan, ok := v.PlannedLayout(f.Yard)
	if !ok {
		return nil, false
	}
	stands, fronts := v.Left(plan)
	if f.Act == ActPaintFront {
		for _, front := range fronts {
			if front.Nuc == id {
				return front, true
			}
		}
		return nil, false
	}
	for _, s := range stands {
		if s.Stand == v.Nuc(id).Stand {
			return s, true
		}
	}
	return nil, false
}
