package crew

import (
	"cmp"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// outing is a team's day by the clock. Who rides is away as long as the van: the ways, and
// in every round as long as the one who is at work there longest. Who does not ride does
// what there is at home, by himself.
type outing struct {
	people []Hand
	ride   int // so many ride, those with most time
	drive  float64
	by     [][]int // by round and piece: who does it, counted from 1; 0: nobody of them
	saved  worth
	whole  bool // all that was chosen for them is done, and nothing better can be
}

// piece is one of the pieces of a round.
type piece struct{ round, at int }

// outings reckons the outings of one team.
type outings struct {
	people []Hand
	sites  []Site
	jobs   bundles
	rounds []round
	work   [][]Work
	chosen [][]int // by round and piece: the team that does it; 0: nobody yet
	team   int     // counted from 1
}

// best is the outing that saves most: with all that was chosen, each part of a round in
// walking order, if nobody is away longer than he has time. Else of as many as ride best,
// what no time is left for waits, and what waits fills the time that is left.
func (o outings) best() outing {
	mine := o.pieces(func(p piece) bool { return o.chosen[p.round][p.at] == o.team })
	riders, _ := teamOf(o.people).riders(o.way(mine))
	if out, fits := o.side(mine, riders); fits && (riders == len(o.people) || !o.anyAtHome()) {
		out.whole = true
		return out
	}
	var best outing
	for n := range len(o.people) + 1 {
		for _, order := range orders {
			out := o.fill(mine, n, order)
			if out.by != nil && (best.by == nil || out.saved.compare(best.saved) > 0) {
				best = out
			}
		}
	}
	if out, fits := o.side(best.pieces(), best.ride); fits {
		return out // the same work, each part of a round in walking order
	}
	return best
}

// anyAtHome tells whether there is anything that who does not ride could do.
func (o outings) anyAtHome() bool {
	return len(o.pieces(func(p piece) bool {
		by := o.chosen[p.round][p.at]
		return (by == 0 || by == o.team) && o.atHome(p.round)
	})) > 0
}

// atHome tells whether a round of the team is at home, at any hour.
func (o outings) atHome(round int) bool {
	return o.sites[round].Far == 0 && o.rounds[round].dusk.IsZero() && o.sites[round].may(o.team-1)
}

func (o outings) pieces(which func(piece) bool) (all []piece) {
	for i, jobs := range o.chosen {
		for k := range jobs {
			if p := (piece{i, k}); which(p) {
				all = append(all, p)
			}
		}
	}
	return all
}

func (o outing) pieces() (all []piece) {
	for i, jobs := range o.by {
		for k, who := range jobs {
			if who > 0 {
				all = append(all, piece{i, k})
			}
		}
	}
	return all
}

func teamOf(people []Hand) (t Team) {
	for _, h := range people {
		t.Minutes = append(t.Minutes, h.Minutes)
	}
	return t
}

// way is how long one person drives to the rounds of some pieces.
func (o outings) way(pieces []piece) (minutes float64) {
	seen := make([]bool, len(o.sites))
	for _, p := range pieces {
		if !seen[p.round] {
			seen[p.round] = true
			minutes += 2 * o.sites[p.round].Far
		}
	}
	return minutes
}

func (o outings) job(p piece) Job { return o.sites[p.round].Jobs[p.at] }

// empty is an outing on which so many ride and nothing is done.
func (o outings) empty(ride int) outing {
	out := outing{people: o.people, ride: ride}
	for _, jobs := range o.chosen {
		out.by = append(out.by, make([]int, len(jobs)))
	}
	return out
}

// side is an outing on which those who ride part every round among them in walking order,
// and whether all are home in time.
func (o outings) side(pieces []piece, ride int) (out outing, fits bool) {
	out = o.empty(ride)
	if ride == 0 {
		return out, len(pieces) == 0
	}
	out.drive = o.way(pieces)
	for _, job := range o.together(pieces) {
		out.saved = out.saved.plus(worthOf(o.whole(job[0])))
	}
	c := o.clock(ride, out.drive)
	for len(pieces) > 0 {
		n, all := 0, 0.0
		for n < len(pieces) && pieces[n].round == pieces[0].round {
			all += o.job(pieces[n]).Minutes
			n++
		}
		gone, who := 0.0, 0
		for _, p := range pieces[:n] {
			half := o.job(p).Minutes / 2
			for who < ride-1 && gone+half >= all*float64(who+1)/float64(ride) {
				who++
			}
			if !c.add(o, p, who) {
				return out, false
			}
			gone += 2 * half
			out.by[p.round][p.at] = who + 1
		}
		pieces = pieces[n:]
	}
	return out, true
}

// clock is how long people are at work: those who ride in each round, the others at home.
type clock struct {
	at   [][]float64 // by round and who rides
	van  []float64   // by round: how long the van stays
	left float64     // minutes that the van can still stay
	most []float64   // by round: how long it can stay there at the hour of the round
	home []float64   // minutes that each of the others has left
}

func (o outings) clock(ride int, drive float64) *clock {
	c := &clock{left: math.Inf(1)}
	for i, h := range o.people {
		if i < ride {
			c.left = min(c.left, h.Minutes-drive)
		} else {
			c.home = append(c.home, h.byHimself().Minutes)
		}
	}
	for i := range o.sites {
		c.at, c.van, c.most = append(c.at, make([]float64, ride)), append(c.van, 0), append(c.most, math.Inf(1))
		if dusk := o.rounds[i].dusk; !dusk.IsZero() {
			for _, h := range o.people[:ride] {
				c.most[i] = min(c.most[i], h.after(dusk)-o.sites[i].Far)
			}
		}
	}
	return c
}

// clone is a clock that goes on by itself.
func (c *clock) clone() *clock {
	other := *c
	other.van, other.home, other.at = slices.Clone(c.van), slices.Clone(c.home), slices.Clone(c.at)
	for i := range other.at {
		other.at[i] = slices.Clone(other.at[i])
	}
	return &other
}

// add lets one who rides do a piece, if all are home in time.
func (c *clock) add(o outings, p piece, who int) bool {
	now := c.at[p.round][who] + o.job(p).Minutes
	more := max(0, now-c.van[p.round])
	if more > c.left+hardlyAny || now > c.most[p.round]+hardlyAny || c.left < -hardlyAny {
		return false
	}
	c.at[p.round][who] = now
	c.van[p.round] += more
	c.left -= more
	return true
}

// hardlyAny is less of a minute than anybody counts: what is left of floats.
const hardlyAny = 1e-6

// orders are those in which pieces are given time: what is worth most by the minute, the
// longest, and what is worth most first.
var orders = [...]func(a, b Job) int{
	func(a, b Job) int { return cmp.Compare(b.Loss*a.Minutes, a.Loss*b.Minutes) },
	func(a, b Job) int { return cmp.Compare(b.Minutes, a.Minutes) },
	func(a, b Job) int { return cmp.Compare(b.Loss, a.Loss) },
}

// fill is an outing on which so many ride and each piece in its turn gets time where there
// is some: first those chosen for the team, then what waits where it comes by. A round that
// is driven to for nothing is left out. Without pieces there is none.
func (o outings) fill(mine []piece, ride int, order func(a, b Job) int) outing {
	with := o.carried(mine)
	for {
		out := o.empty(ride)
		out.drive = o.way(mine)
		if ride == 0 {
			out.drive = 0
		}
		c := o.clock(ride, out.drive)
		for _, job := range o.inTurn(mine, order) {
			who := o.place(c, job, with)
			if who == nil {
				continue
			}
			out.saved = out.saved.plus(worthOf(o.whole(job[0])))
			for k, p := range job {
				out.by[p.round][p.at] = who[k]
			}
		}
		done := out.pieces()
		if ride == 0 || o.way(done) == out.drive {
			return out
		}
		mine = slices.DeleteFunc(slices.Clone(mine), func(p piece) bool {
			return o.sites[p.round].Far > 0 && !slices.ContainsFunc(done, func(q piece) bool { return q.round == p.round })
		})
	}
}

// inTurn are the pieces that a team may do on an outing to the rounds of its own, by the job
// they are of, those with a hard end first.
func (o outings) inTurn(mine []piece, order func(a, b Job) int) [][]piece {
	visited := make([]bool, len(o.sites))
	for _, p := range mine {
		visited[p.round] = true
	}
	all := o.together(o.pieces(func(p piece) bool {
		by := o.chosen[p.round][p.at]
		return (by == 0 || by == o.team) && (visited[p.round] || o.atHome(p.round))
	}))
	slices.SortStableFunc(all, func(ps, qs []piece) int {
		p, q := ps[0], qs[0]
		a, b := o.whole(p), o.whole(q)
		return cmp.Or(book.TrueFirst(a.Hard, b.Hard), book.TrueFirst(o.chosen[p.round][p.at] == o.team, o.chosen[q.round][q.at] == o.team), order(a, b))
	})
	return all
}

// together are pieces by the job they are of.
func (o outings) together(pieces []piece) (all [][]piece) {
	at := map[piece]int{}
	for _, p := range pieces {
		job := piece{p.round, o.jobs.of[p.round][p.at]}
		i, known := at[job]
		if !known {
			i = len(all)
			at[job], all = i, append(all, nil)
		}
		all[i] = append(all[i], p)
	}
	return all
}

// whole is the job that a piece is of.
func (o outings) whole(p piece) Job { return o.jobs.Sites[p.round].Jobs[o.jobs.of[p.round][p.at]] }

// carried is what a van has with it.
type carried struct {
	out  bool // cells, which are collected at home before
	home bool // queens, who may be handed over at home then
}

// carried is what the van takes along, and brings home.
func (o outings) carried(mine []piece) (with carried) {
	for _, p := range mine {
		if w := o.work[p.round][p.at]; o.sites[p.round].Far > 0 {
			with.out = with.out || w.Task.Act == rules.ActGiveCell || w.Task.Findings[0].Then == rules.ActGiveCell
			with.home = with.home || w.Task.Act == rules.ActCatchQueen
		}
	}
	return with
}

// waits tells whether a round at home is for those who ride: before they set out, or when
// they are back.
func (with carried) waits(r round) bool { return with.out && r.load || with.home && r.last }

// place gives the pieces of one job to people, all of them or none.
func (o outings) place(c *clock, job []piece, with carried) (who []int) {
	was := c
	if len(job) > 1 {
		was = c.clone()
	}
	for _, p := range job {
		w := o.placeOne(c, p, with)
		if w == 0 {
			*c = *was
			return nil
		}
		who = append(who, w)
	}
	return who
}

// placeOne gives a piece to somebody, counted from 1: to one at home if it is there and the van
// does not wait for it, else to the one who rides and is free there first; 0: to nobody.
func (o outings) placeOne(c *clock, p piece, with carried) int {
	ride := len(c.at[p.round])
	if o.atHome(p.round) && !with.waits(o.rounds[p.round]) {
		for i := range c.home {
			if c.home[i] >= o.job(p).Minutes-hardlyAny {
				c.home[i] -= o.job(p).Minutes
				return ride + i + 1
			}
		}
	}
	if ride == 0 {
		return 0
	}
	who := 0
	for i, t := range c.at[p.round] {
		if t < c.at[p.round][who] {
			who = i
		}
	}
	if c.add(o, p, who) {
		return who + 1
	}
	return 0
}
