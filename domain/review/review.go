package review

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
	"lidmark/domain/spread"
)

// Nuc is a nuc under review.
type Nuc struct {
	*book.Nuc
	Chances course.Chances
	Ways    []Way   // the first leaves it
	Best    int     // the way of most worth for this nuc alone, with what is in hand
	Next    int     // the best of another kind; -1: there is none
	Loses   float64 // what leaving it loses against the best, in queens
	Decide  bool    // it needs a decision
	Decided bool    // one stands already: what is in hand is not shared out to it
	Why     string  // why it does; "" when it does not
	Sure    bool    // one thing is as good as certain: its row may fold

	looks bool // its decision gives something only where a look finds no eggs
	place int  // along the walk
	open  bool // something may gain in it, whether in hand or not
	empty bool
}

// Review is a season under review.
type Review struct {
	Day   calendar.Day
	By    calendar.Day // the day by which queens are wanted
	Hand  Hand
	Nucs  []Nuc // the worst first
	This  Use   // the best use of what is in hand
	Order Use   // what is in hand given in stand order
	None  Use   // nothing given
	Open  int   // nucs in which something may gain, whether it is in hand or not, no decision standing
	Empty int   // nucs that stand empty

	numbers practice.Numbers
	view    *book.View
	course  *course.Course
	taken   map[int]int // by nuc, the way taken whatever the best use says
	left    []Left
	banks   []rules.Finding // about virgins in cages
}

// Usual is the day by which queens are wanted while the keeper names none.
func Usual(v *book.View) calendar.Day {
	return v.Today() + calendar.Day(v.Numbers().Days(practice.ReviewAhead))
}

// Of is a judged season under review, with what is in hand and the day by which
// queens are wanted; a day that is not ahead is tomorrow.
func Of(j *rules.Judged, hand Hand, by calendar.Day) *Review {
	v := j.Course().View()
	by = max(by, v.Today()+1)
	k := newReckoner(j, hand, by)
	r := &Review{Day: v.Today(), By: by, Hand: hand, numbers: k.numbers, view: v, course: j.Course()}
	for _, f := range j.Findings() {
		if f.Rule == rules.BankVirgins {
			r.banks = append(r.banks, f)
		}
	}
	cases, empty := k.cases()
	r.Empty = empty
	spread.Over(len(cases), func(i int) { cases[i].gather() })
	r.unite(cases)
	r.Nucs = make([]Nuc, len(cases))
	spread.Over(len(cases), func(i int) { r.Nucs[i] = cases[i].settle(i) })
	slices.SortStableFunc(r.Nucs, func(a, b Nuc) int {
		return cmp.Or(book.TrueFirst(a.Decide, b.Decide), cmp.Compare(b.Loses, a.Loses), cmp.Compare(a.place, b.place))
	})
	for _, n := range r.Nucs {
		if n.open {
			r.Open++
		}
	}
	r.uses()
	return r
}

// cases are the nucs in walking order; of empty ones as many as the bees in hand
// can fill. Besides it says how many stand empty.
func (r *reckoner) cases() (cases []*nucCase, empty int) {
	all, presumed := slices.Collect(r.view.Nucs()), r.judged.Presumed()
	found := make([]*course.Held, len(all))
	spread.Over(len(all), func(i int) { found[i] = r.course.Held(all[i]) })
	shared := map[heldKey]*held{}
	var once []*held
	of := make([]*held, len(all))
	for i, n := range all {
		key := heldKey{found[i], r.course.SpotOf(n)}
		if found[i].From == 0 {
			key.held = nil
		}
		h := shared[key]
		if h == nil {
			h = &held{Held: found[i], of: r, horizon: r.horizon(key.at)}
			shared[key] = h
			once = append(once, h)
		}
		of[i] = h
	}
	spread.Over(len(once), func(i int) { once[i].reckon() })
	slots := make([]*nucCase, len(all))
	spread.Over(len(all), func(i int) { slots[i] = r.caseOf(all[i], &presumed[i], of[i]) })
	cups := float64(r.hand.Cups)
	cases = make([]*nucCase, 0, len(all))
	for i, k := range slots {
		if of[i].From == 0 {
			empty++
			if cups -= k.cups; cups < 0 {
				continue
			}
		}
		cases = append(cases, k)
	}
	return cases, empty
}

type heldKey struct {
	held *course.Held
	at   course.Spot
}

// settle finds the best way and whether a decision is needed.
func (k *nucCase) settle(place int) Nuc {
	k.bar()
	n := Nuc{Nuc: k.nuc, Ways: k.ways, Next: -1, place: place, empty: k.held.From == 0}
	if k.held.From != 0 {
		n.Chances = k.held.Chances()
		n.Sure = sure(n.Chances) >= k.numbers.Get(practice.ReviewSure)
	}
	for i, w := range k.ways {
		if k.may(w) && w.Worth > k.ways[n.Best].Worth {
			n.Best = i
		}
	}
	for i, w := range k.ways {
		if k.may(w) && w.Kind != k.ways[n.Best].Kind && (n.Next < 0 || w.Worth > k.ways[n.Next].Worth) {
			n.Next = i
		}
	}
	n.Loses = k.ways[n.Best].Worth - k.ways[0].Worth
	n.Why = k.why(n)
	n.Decided = rules.PlanStands(k.nuc, k.today, k.numbers)
	n.looks = n.Decided && n.Plan.What == book.PlanLookOrGive && !k.ask.ownFirst()
	n.Decide = n.Why != "" && !n.Decided
	n.open = !n.empty && !n.Decided && (n.Why != "" || slices.ContainsFunc(k.ways, func(w Way) bool { return !w.Barred && w.Worth > k.ways[0].Worth }))
	return n
}

// may tells whether a way can be the best.
func (k *nucCase) may(w Way) bool { return !w.Barred && !k.lacks(w) }

// lacks tells whether a way gives what is not in hand: it is told, so that it is
// known what one more would do, and never the best.
func (k *nucCase) lacks(w Way) bool { return k.hand.Lacks(w) }

// sure is the greatest chance of what a keeper tells apart.
func sure(c course.Chances) float64 {
	return max(c.Lays(), c.Cell, c.Virgin+c.Mated, c.OwnCell+c.OwnVirgin+c.OwnMated, c.DroneLayer, c.LayingWorkers, c.None)
}

// why tells why a nuc needs a decision.
func (k *nucCase) why(n Nuc) string {
	if k.held.From == 0 {
		return ""
	}
	switch c := k.holds.Calendar; {
	case c == book.DroneLayer, c == book.LayingWorkers, c == book.NoQueen:
		return k.asked(c.String())
	case c == book.Due && !k.view.On().Before(k.holds.LookFrom) && (k.held.eggLook || k.held.ownLook):
		return k.asked(c.String())
	case n.Best > 0 && n.Ways[n.Best].Kind == Feed && k.ask.feed != nil && n.Loses >= k.numbers.Get(practice.ReviewLoss):
		return k.ask.feed.Why
	case n.Best > 0 && n.Ways[n.Best].Kind != Catch && (n.Ways[n.Best].Kind == LookFirst || n.Loses >= k.numbers.Get(practice.ReviewLoss)):
		if best, left := n.Ways[n.Best], n.Ways[0]; left.Doubtful-best.Doubtful > max(0, best.Lays-left.Lays) {
			return k.title(best) + ": her descent would be sure"
		}
		return k.title(n.Ways[n.Best]) + " is worth more than leaving it"
	default:
		return ""
	}
}

// asked is why the rules ask for what settles a nuc's queen; otherwise where they ask
// for nothing.
func (k *nucCase) asked(otherwise string) string {
	if k.ask.queen == nil {
		return otherwise
	}
	return k.ask.queen.Why
}
