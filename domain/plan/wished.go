package plan

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Wished is a planned batch with how sure its queens are wished by its day, and how sure
// they are: with several grafts of one wish, those of all of them, grafted ones among them.
type Wished struct {
	book.BatchPlan
	Sure   float64 // the keeper's number where the plan says none
	Chance float64
	All    int          // queens that are wished of all grafts of the wish; those of orders once
	None   string       // why its chance is none, "order 3 takes Teal"; "": it is reckoned
	Less   string       // what takes from it, of it and the other grafts of its wish, see [Planner.Against]
	Until  calendar.Day // the day of the wish, or the sooner one on which its orders leave: by it the chance is
	by     string       // that day, said
	sooner bool         // it is that
	own    string       // that of its own graft
	grafts []string     // the days of its grafts, said
}

// Wished is how sure the queens of a planned batch are by its day, or the sooner one by which its orders
// leave; none are where no open order of it takes its line. Ok is false where it is not told
// how many are wished, or by when, and of one that has lapsed. Grafts that are made and those that are planned are joined as if
// their rates had nothing in common: of the first the book knows more, and a test shows how
// little it moves.
func (p *Planner) Wished(b book.BatchPlan) (w Wished, ok bool) {
	if b.Queens == 0 || b.By.IsZero() || p.notMade(b) {
		return w, false
	}
	by, none := p.leavesBy(b)
	w = Wished{BatchPlan: b, Sure: cmp.Or(b.Sure, p.numbers.Get(practice.PlanSure)), None: none, Until: by, by: p.said(by), sooner: by < b.By, own: p.said(b.Day)}
	planned, begun := p.WishOf(b), p.Begun(b)
	all := slices.Concat(begun, planned)
	chances := p.Joint(planned, by)
	for _, g := range begun {
		chances = chances.With(p.Gives(p.view.Batch(g.Batch), by, b.Laying))
	}
	w.All = p.queensOf(all)
	if none == "" {
		w.Chance = chances.AtLeast(w.All)
	}
	for _, o := range all {
		w.grafts = append(w.grafts, p.said(o.Day))
	}
	w.Less = p.Against(planned)
	return w, true
}

// leavesBy is the day by which the queens of a planned batch are wanted: its own, or, sooner, the last on which
// those of the open orders leave that it is for and that take its line; and where none of these takes it, what they take.
func (p *Planner) leavesBy(b book.BatchPlan) (by calendar.Day, none string) {
	var last calendar.Day
	var others []string
	for _, id := range b.Orders {
		o := p.view.Order(id)
		switch {
		case o.Open() == 0:
		case b.Line != "" && !o.Takes(b.Line):
			others = append(others, fmt.Sprintf("order %s takes %s", o.Number, o.Lines()))
		default:
			last = max(last, o.LeavesBy(p.numbers))
		}
	}
	if last == 0 {
		return b.By, strings.Join(others, ", ")
	}
	return min(b.By, last), ""
}

// Sure is the chance that a planned batch, together with the other grafts of its wish, gives
// the queens that are wished of them by its day; 0 where it is not told how many, or by when.
func (p *Planner) Sure(b book.BatchPlan) float64 {
	w, _ := p.Wished(b)
	return w.Chance
}

// Unordered are the planned batches for which no order waits, and how sure the queens are
// that are wished of them by a day; of several grafts of one wish the first stands for all.
func (p *Planner) Unordered() (all []Wished) {
	for b := range p.view.ToGraft() {
		told := slices.ContainsFunc(all, func(w Wished) bool { return OneWish(w.BatchPlan, b) })
		if w, ok := p.Wished(b); ok && !told && len(b.Orders) == 0 {
			all = append(all, w)
		}
	}
	return all
}

// Unsure tells whether they are less sure than is wished, as far as a reader is told.
func (w Wished) Unsure() bool { return Unsure(w.Chance, w.Sure) }

// Unsure tells whether a chance is less than is wished, as far as a reader is told: both
// in whole hundredths.
func Unsure(chance, wished float64) bool { return math.Round(100*chance) < math.Round(100*wished) }

// Said is how sure they are, in a sentence without a full stop.
func (w Wished) Said() string {
	said := fmt.Sprintf("the graft of %s gives its", w.grafts[0])
	if last := len(w.grafts) - 1; last > 0 {
		said = fmt.Sprintf("the grafts of %s and %s together give their", strings.Join(w.grafts[:last], ", "), w.grafts[last])
	}
	said += fmt.Sprintf(" %s by %s %s", QueensSaid(w.All), w.by, OfHundred(w.Chance))
	if w.Unsure() {
		said += fmt.Sprintf(", %.0f wished", 100*w.Sure)
	}
	return said + w.why()
}

// why is why the chance is none, or what makes it less than is wished, behind it.
func (w Wished) why() string {
	switch {
	case w.None != "":
		return ": " + w.None
	case w.Less != "" && w.Unsure():
		return ": " + w.Less
	}
	return ""
}

// Short is both in few words: "wished 90 of 100, reckoned 60".
func (w Wished) Short() string {
	together := w.Together()
	if w.sooner {
		together += " by " + w.by
	}
	together += w.why()
	if w.BatchPlan.Sure == 0 {
		return "reckoned " + OfHundred(w.Chance) + together
	}
	reckoned := strings.TrimSuffix(OfHundred(w.Chance), " of 100")
	return fmt.Sprintf("wished %.0f of 100, reckoned %s", 100*w.BatchPlan.Sure, reckoned) + together
}

// Together is " together" where the chance is that of several grafts, else nothing.
func (w Wished) Together() string {
	if len(w.grafts) > 1 {
		return " together"
	}
	return ""
}

// With says with which other grafts they are as sure as that: ", with the graft of Mon 10 May";
// nothing where it is alone.
func (w Wished) With() string {
	own := slices.Index(w.grafts, w.own)
	if len(w.grafts) < 2 || own < 0 {
		return ""
	}
	others := slices.Delete(slices.Clone(w.grafts), own, own+1)
	return ", with the graft of " + strings.Join(others, " and of ")
}

// Sentence is all of it: how sure they are, and what to do where that is not enough.
func (w Wished) Sentence() string {
	said := Sentence(w.Said()) + "."
	if w.Unsure() {
		said += " " + w.Do() + "."
	}
	return said
}

// Do is what to do where they are not sure enough.
func (w Wished) Do() string {
	if w.None != "" {
		return "Graft a line that its order takes"
	}
	if w.Less != "" {
		return "Move it, or take a way out that the season tells"
	}
	return "Graft earlier or more, or promise fewer"
}
