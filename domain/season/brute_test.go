package season_test

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/season"
)

// worth is what plans are told apart by: less is better, in this order.
type worth struct {
	short   [turns]int // by turn
	tenths  int        // of work, and of what less certainty is made up for
	grafts  int
	earlier int // sum of the days of grafts, the other way round
}

// turns are the priorities 1 and 2, and none.
const turns = 3

func turnOf(p season.Promise) int { return (p.Priority + turns - 1) % turns }

func (w worth) less(v worth) bool {
	return slices.Compare(append(w.short[:], w.tenths, w.grafts, w.earlier), append(v.short[:], v.tenths, v.grafts, v.earlier)) < 0
}

func (w worth) queens() (sum int) {
	for _, n := range w.short {
		sum += n
	}
	return sum
}

// before tells whether it is less but for the days, which count down.
func (w worth) before(v worth) bool {
	w.earlier, v.earlier = 0, 0
	return w.less(v)
}

func (w worth) plus(v worth) worth {
	for i, n := range v.short {
		w.short[i] += n
	}
	return worth{w.short, w.tenths + v.tenths, w.grafts + v.grafts, w.earlier + v.earlier}
}

// use is so much of a good on a day.
type use struct {
	good string
	day  calendar.Day
}

type choice struct {
	worth
	uses map[use]int
}

// brute goes through every plan there is, with the chances of plan.Rates and its
// own account of what is taken, and knows nothing of how Search looks.
type brute struct {
	planner *plan.Planner
	world   world
	wanted  season.Wanted
	best    worth
}

// All worlds have one weather and the rates of a book that tells nothing: what is
// reckoned of one holds in all.
var (
	knownChances = map[string]plan.Chances{}
	knownLadders = map[[2]int]plan.Ladder{}
)

func (b *brute) queens(r plan.Rates, grafts []plan.Graft) plan.Chances {
	key := fmt.Sprint(r.Laying, grafts)
	c, ok := knownChances[key]
	if !ok {
		c = r.Queens(grafts...)
		knownChances[key] = c
	}
	return c
}

func (b *brute) ladder(d calendar.Day, larvae int) plan.Ladder {
	key := [2]int{int(d), larvae}
	l, ok := knownLadders[key]
	if !ok {
		l = b.planner.Ladder(b.planner.GraftAt(d), larvae, booktest.Yard("home"))
		knownLadders[key] = l
	}
	return l
}

func bruteForce(p *plan.Planner, w world, wanted season.Wanted) worth {
	b := &brute{planner: p, world: w, wanted: wanted, best: worth{short: [turns]int{math.MaxInt}}}
	b.split(0, make([]int, len(wanted.Promises)))
	return b.best
}

// split puts each promise into a group of those before it, into one of its own, or
// into group 0, of those that are given up.
func (b *brute) split(at int, in []int) {
	if at == len(in) {
		b.groups(in)
		return
	}
	for g := 0; g <= slices.Max(append([]int{0}, in[:at]...))+1; g++ {
		in[at] = g
		b.split(at+1, in)
	}
}

func (b *brute) groups(in []int) {
	var start worth
	var all [][]choice
	for g := 0; g <= slices.Max(in); g++ {
		var members []season.Promise
		for i, to := range in {
			if to == g {
				members = append(members, b.wanted.Promises[i])
			}
		}
		if g == 0 {
			for _, m := range members {
				start.short[turnOf(m)] += m.Queens
			}
			continue
		}
		if !b.oneLine(members) {
			return
		}
		all = append(all, b.choices(members))
	}
	b.pick(all, start, map[use]int{})
}

// oneLine tells whether one line will do for all of which there are larvae; each takes one,
// several or any.
func (b *brute) oneLine(members []season.Promise) bool {
	if !slices.ContainsFunc(members, func(m season.Promise) bool { return len(m.Lines) > 0 }) {
		return true
	}
	return slices.ContainsFunc([]string{"Rook", "Plover"}, func(line string) bool {
		return (len(b.world.breeders) == 0 || slices.Contains(b.world.breeders, line)) && all(members, line)
	})
}

// all tells whether all take a line.
func all(members []season.Promise, line string) bool {
	return !slices.ContainsFunc(members, func(m season.Promise) bool { return len(m.Lines) > 0 && !slices.Contains(m.Lines, line) })
}

// larvaeHold tells whether each graft is of a line that all it serves take, from the one
// breeder that can be meant.
func larvaeHold(w world, f season.Found) error {
	for i, b := range f.Batches {
		var members []season.Promise
		for _, p := range b.Promises {
			members = append(members, f.Promises[p])
		}
		planned := f.Plan(i, booktest.Batch("b"))
		serve := slices.DeleteFunc(slices.Clone(w.breeders), func(line string) bool { return planned.Line != "" && line != planned.Line })
		switch {
		case planned.Line != "" && !all(members, planned.Line), planned.Line == "" && slices.ContainsFunc(members, func(m season.Promise) bool { return len(m.Lines) > 0 }):
			return fmt.Errorf("a graft of %q for %+v", planned.Line, members)
		case len(w.breeders) > 0 && len(serve) == 0, (len(serve) == 1) != (planned.Breeder != book.ColonyID{}), planned.Breeder.IsZero() != planned.Mother.IsZero():
			return fmt.Errorf("a graft of %q from %v, breeders of %v", planned.Line, planned.Breeder, w.breeders)
		}
	}
	return nil
}

func (b *brute) pick(all [][]choice, sum worth, used map[use]int) {
	if len(all) == 0 {
		if sum.less(b.best) {
			b.best = sum
		}
		return
	}
	for _, c := range all[0] {
		if with := sum.plus(c.worth); b.best.before(with) || b.over(c, used) {
			continue // what is still to come only adds
		}
		for u, n := range c.uses {
			used[u] += n
		}
		b.pick(all[1:], sum.plus(c.worth), used)
		for u, n := range c.uses {
			used[u] -= n
		}
	}
}

func (b *brute) over(c choice, used map[use]int) bool {
	kilograms := 0.0
	for _, g := range b.planner.Givers(b.wanted.From + 60) { // nothing was given: the same every day
		kilograms += g.Kilograms
	}
	have := map[string]int{
		"nucs": b.world.nucs, "starters": b.world.starters, "finishers": b.world.finishers, "grafts": 1, "minutes": int(10 * b.wanted.Minutes),
		"bees": int(1000 * (kilograms + 0.01)), "virgins": 25 * b.world.drones, "incubator": b.world.places,
	}
	for u, n := range c.uses {
		if n > 0 && used[u]+n > have[u.good] {
			return true
		}
	}
	return false
}

// choices are all grafts that keep some promises: of the last days, as many as the
// window has, on which there is one.
func (b *brute) choices(members []season.Promise) (all []choice) {
	slices.SortStableFunc(members, func(p, q season.Promise) int {
		return cmp.Or(int(p.By-q.By), cmp.Compare(q.Sure, p.Sure), q.Queens-p.Queens)
	})
	hard := b.hard(members)
	for _, l := range b.lesser(members) {
		at := b.one(l)
		if hard && (len(members) == 1 || !l.part) && !slices.ContainsFunc(at, b.fits) {
			at = b.several(l)
		}
		for _, c := range at {
			c.worth = c.plus(l.worth)
			all = append(all, c)
		}
	}
	return all
}

// hard tells whether several unlike grafts are tried: for one promise, and for some of which one
// cannot be kept by one graft or two alike.
func (b *brute) hard(members []season.Promise) bool {
	return len(members) == 1 || slices.ContainsFunc(members, func(m season.Promise) bool {
		return !slices.ContainsFunc(b.one(lesser{members: []season.Promise{m}}), b.fits)
	})
}

// fits tells whether there is room for grafts in a season of their own.
func (b *brute) fits(c choice) bool { return !b.over(c, map[use]int{}) }

// one are all single grafts, and two alike, for a level.
func (b *brute) one(l lesser) (all []choice) {
	days := 0
	for d := l.members[0].By - 20; d >= b.wanted.From && days < b.wanted.Window; d-- {
		on := b.onDay(l, d)
		if len(on) > 0 {
			days++
		}
		all = append(all, on...)
	}
	return all
}

// several are two grafts for a level, else three, that fit a season of their own: of each days
// the sizes that cost least.
func (b *brute) several(l lesser) (all []choice) {
	for n := 2; n <= 3 && len(all) == 0; n++ {
		days := 0
		for d := l.members[0].By - 20; d >= b.wanted.From && days < b.wanted.Window; d-- {
			if b.late(l, d) {
				continue
			}
			days++
			for _, gap := range []calendar.Day{2, 5, 7, 10, 14} {
				if c, ok := b.sized(l, d, gap, n); ok {
					all = append(all, c)
				}
			}
		}
	}
	return all
}

func (b *brute) sized(l lesser, d, gap calendar.Day, n int) (best choice, found bool) {
	if d-gap*calendar.Day(n-1) < b.wanted.From {
		return best, false
	}
	sizes := b.sizes()
	for _, before := range sizes {
		for _, last := range sizes {
			var grafts []plan.Graft
			c := choice{uses: map[use]int{}}
			for i := n - 1; i >= 0; i-- {
				g := before
				if i == 0 {
					g = last
				}
				grafts = append(grafts, g)
				b.graft(&c, d-gap*calendar.Day(i), g.Larvae, g.Nucs)
			}
			if !b.keepsApart(l.members, d, gap, grafts) {
				continue
			}
			if b.fits(c) && (!found || c.less(best.worth)) {
				best, found = c, true
			}
			break // a larger last one costs more
		}
	}
	return best, found
}

// sizes are those of grafts of several: as many nucs as they have ripe cells, or all.
func (b *brute) sizes() (all []plan.Graft) {
	r := plan.RatesOf(b.planner.View())
	for _, larvae := range b.wanted.Larvae {
		ripe := int(math.Ceil(r.Link[plan.Taken].Mean() * r.Link[plan.RipeOfTaken].Mean() * float64(larvae)))
		if all = append(all, plan.Graft{Larvae: larvae, Nucs: min(ripe, b.world.nucs), Again: true}); 2*ripe > 3*b.world.nucs {
			break
		}
	}
	return all
}

// keepsApart tells whether grafts so many days apart, each with nucs of its own, keep promises.
func (b *brute) keepsApart(members []season.Promise, last, gap calendar.Day, grafts []plan.Graft) bool {
	queens := 0
	for _, m := range members {
		queens += m.Queens
		for i := range grafts {
			d := last - gap*calendar.Day(len(grafts)-1-i)
			grafts[i].Late = b.part(1-b.ladder(d, 1).Laid.InTime(m.By, m.Laying), 50)
		}
		r := plan.RatesOf(b.planner.View())
		r.Laying = m.Laying
		if b.queens(r, grafts).AtLeast(queens) < m.Sure-1e-9 {
			return false
		}
	}
	return true
}

// part is a lateness rounded up to so many parts.
func (b *brute) part(late, parts float64) float64 { return math.Ceil(parts*late-1e-9) / parts }

// lesser is what some promises want, or less than that and what it costs.
type lesser struct {
	members []season.Promise
	part    bool // of what is wished of one of them
	first   bool // which is the first
	worth
}

// lesser are what some promises want as is wished; of one alone up to two hundredths less sure, and so many
// queens of the one that is served last.
func (b *brute) lesser(members []season.Promise) []lesser {
	all := []lesser{{members: members}}
	last := 0
	for i, m := range members {
		if turnOf(m) >= turnOf(members[last]) {
			last = i
		}
	}
	p := members[last]
	with := func(queens int, sure float64, w worth) {
		less := slices.Clone(members)
		less[last].Queens, less[last].Sure = queens, sure
		all = append(all, lesser{members: less, part: w.queens() > 0, first: last == 0, worth: w})
	}
	if len(members) == 1 {
		with(p.Queens, p.Sure-0.01, worth{tenths: 300})
		with(p.Queens, p.Sure-0.02, worth{tenths: 600})
	}
	for n := 1; n < p.Queens; n++ {
		w := worth{}
		w.short[turnOf(p)] = n
		with(p.Queens-n, p.Sure, w)
	}
	return all
}

// late tells whether a graft is too late: three in five in time will do for a part.
func (b *brute) late(l lesser, d calendar.Day) bool {
	laid, m := b.ladder(d, 1).Laid, l.members[0]
	least := b.planner.View().Numbers().Get(practice.PlanInTime)
	if l.part && l.first {
		least = 0.6
	}
	return laid.InTime(m.By, m.Laying) < least*laid.Ends()
}

func (b *brute) onDay(l lesser, d calendar.Day) (all []choice) {
	if b.late(l, d) {
		return nil
	}
	members, laid := l.members, b.ladder(d, 1).Laid
	for _, larvae := range b.wanted.Larvae {
		for nucs := 1; nucs <= larvae; nucs++ {
			if b.keeps(members, laid, 50, plan.Graft{Larvae: larvae, Nucs: nucs}) {
				all = append(all, b.choice(d, larvae, nucs, 1))
			}
		}
	}
	r := plan.RatesOf(b.planner.View())
	for larvae := 24; larvae <= slices.Max(b.wanted.Larvae) && d-7 >= b.wanted.From; larvae += 24 {
		nucs := int(math.Ceil(r.Link[plan.Taken].Mean() * r.Link[plan.RipeOfTaken].Mean() * float64(larvae)))
		g := plan.Graft{Larvae: larvae, Nucs: nucs}
		if b.keeps(members, laid, 10, g, g) {
			all = append(all, b.choice(d, larvae, nucs, 2))
			break
		}
	}
	return all
}

// keeps tells whether grafts keep promises, those of earlier days first; lateness
// is rounded up to parts.
func (b *brute) keeps(members []season.Promise, laid plan.Laid, parts float64, grafts ...plan.Graft) bool {
	queens := 0
	for _, m := range members {
		queens += m.Queens
		late := b.part(b.part(1-laid.InTime(m.By, m.Laying), 50), parts)
		for i := range grafts {
			grafts[i].Late = late
		}
		r := plan.RatesOf(b.planner.View())
		r.Laying = m.Laying
		if b.queens(r, grafts).AtLeast(queens) < m.Sure-1e-9 {
			return false
		}
	}
	return true
}

func (b *brute) choice(d calendar.Day, larvae, nucs, grafts int) choice {
	c := choice{uses: map[use]int{}}
	for i := range grafts {
		b.graft(&c, d-calendar.Day(7*i), larvae, nucs)
	}
	return c
}

func (b *brute) graft(c *choice, d calendar.Day, larvae, nucs int) {
	home, n := booktest.Yard("home"), b.planner.View().Numbers()
	l := b.ladder(d, larvae)
	s := b.planner.SizeOf(book.BatchPlan{BatchPlanned: book.BatchPlanned{Larvae: larvae, Nucs: nucs, Yard: home}})
	c.grafts++
	c.earlier -= int(d)
	c.uses[use{"grafts", d}]++
	c.tenths += b.world.clashes(b.planner, l)
	put := func(good string, from, until calendar.Day, amount float64) {
		for ; from < until; from++ {
			c.uses[use{good, from}] += int(math.Ceil(amount))
		}
	}
	move := l.Rung(plan.ToFinisher).Best
	put("nucs", l.Rung(plan.MakeUpNucs).Best, l.Rung(plan.Ready).By, float64(nucs))
	put("starters", l.Rung(plan.SetUpStarter).Best, move, float64(larvae)/n.Get(practice.CellsPerStarter))
	put("finishers", move, move+calendar.Day(n.Days(practice.FinisherTurn)), s.Takes/n.Get(practice.CellsPerFinisher))
	if b.world.places > 0 {
		put("incubator", l.Rung(plan.CountCapped).Best, l.Rung(plan.GiveCells).Best, s.Cells)
	}
	up := l.Rung(plan.MakeUpNucs).Best
	if b.world.givers+b.world.drones > 0 {
		set := l.Rung(plan.SetUpStarter).Best
		put("bees", set, set+7, 1000*1.2*math.Ceil(float64(larvae)/45))
		put("bees", up, up+7, 1000*b.bees(l, s))
	}
	if b.world.drones > 0 {
		put("virgins", l.Rung(plan.Fly).From, l.Rung(plan.Fly).By+1, float64(nucs))
	}
	for _, m := range b.planner.Minutes(l, s) {
		t := int(math.Round(10 * m.Minutes))
		c.tenths += t
		if b.wanted.Minutes > 0 {
			c.uses[use{"minutes", m.Day}] += t
		}
	}
}

// bees are the kilograms for the nucs of a batch, all of which are the same and empty.
func (b *brute) bees(l plan.Ladder, s plan.Size) (kg float64) {
	for _, n := range b.planner.Needs(l, s) {
		if n.Good == plan.KilogramsOfBees {
			kg = n.Amount
		}
	}
	return kg
}

// clashes is what a graft is made up for of whose virgins no drones are ripe, in tenths of minutes.
func (w world) clashes(p *plan.Planner, l plan.Ladder) int {
	if w.drones == 0 || p.CombServes(max(l.Rung(plan.DroneComb).Best, p.View().Today()), l) {
		return 0
	}
	return 10_000
}

// worthOf is what an answer of the search is worth.
func worthOf(p *plan.Planner, in world, f season.Found) (w worth) {
	for _, s := range f.Short {
		w.short[turnOf(f.Promises[s.Promise])] += s.Off
	}
	w.tenths, w.grafts = int(math.Round(10*f.Minutes)), len(f.Batches)
	for _, k := range f.Kept {
		w.tenths += 300 * k.Points
	}
	for _, b := range f.Batches {
		w.tenths += in.clashes(p, b.Ladder)
		w.earlier -= int(b.Day)
	}
	return w
}

// tiny is a season that can be gone through whole: at most three promises, three
// days each, three sizes.
func tiny(t *rapid.T) (world, season.Wanted) {
	w := world{
		nucs: rapid.IntRange(8, 50).Draw(t, "nucs"), starters: rapid.IntRange(1, 2).Draw(t, "starters"), finishers: rapid.IntRange(1, 3).Draw(t, "finishers"),
		givers: rapid.SampledFrom([]int{0, 0, 2, 5}).Draw(t, "givers"), drones: rapid.SampledFrom([]int{0, 0, 1, 2}).Draw(t, "drones"),
		places: rapid.SampledFrom([]int{0, 0, 10, 24}).Draw(t, "places"),
	}
	wanted := season.Wanted{Window: rapid.IntRange(1, 3).Draw(t, "window"), Larvae: []int{12, 24, 36}, Sizes: 100, Near: 60}
	w.breeders = rapid.SampledFrom([][]string{nil, {"Rook"}, {"Plover", "Rook"}, {"Rook", "Rook"}, {"Plover", "Rook", "Rook"}}).Draw(t, "breeders")
	if rapid.Bool().Draw(t, "hurried") {
		wanted.Minutes = float64(rapid.IntRange(60, 200).Draw(t, "minutes"))
	}
	from, _ := calendar.ParseDay("2027-04-02")
	wanted.From = from
	for range rapid.IntRange(1, 3).Draw(t, "promises") {
		by := rapid.IntRange(52, 62).Draw(t, "by")
		if rapid.Bool().Draw(t, "again") {
			by += rapid.IntRange(38, 50).Draw(t, "later") // when the nucs of the first are about to be free
		}
		wanted.Promises = append(wanted.Promises, season.Promise{
			Queens: rapid.IntRange(1, 9).Draw(t, "queens"), By: from + calendar.Day(by), Lines: rapid.SampledFrom([][]string{nil, {"Rook"}, {"Plover"}, {"Rook", "Plover"}}).Draw(t, "lines"),
			Sure: rapid.SampledFrom([]float64{0.6, 0.8, 0.9, 0.95}).Draw(t, "sure"), Laying: rapid.Bool().Draw(t, "laying"),
			Priority: rapid.IntRange(0, turns-1).Draw(t, "priority"),
		})
	}
	return w, wanted
}

func TestSmallSeasonsAreExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, wanted := tiny(t)
		p := plannerOf(w.pen())
		f := season.Search(p, wanted, nil)
		if !f.Exact {
			t.Fatalf("not exact")
		}
		want := bruteForce(p, w, wanted)
		if got := worthOf(p, w, f); got != want {
			t.Fatalf("found %+v, there is %+v", got, want)
		}
		if err := larvaeHold(w, f); err != nil {
			t.Fatal(err)
		}
		// A search that is stopped early says no more than is true.
		wanted.Nodes, wanted.Rounds = 1, 1
		if early := season.Search(p, wanted, nil); beyond(early) || worthOf(p, w, early).less(want) || early.Bound > float64(want.tenths)/10+1e-6 && early.Least == want.queens() {
			t.Fatalf("bounds %d queens short, %v min; there is %+v", early.Least, early.Bound, want)
		}
	})
}
