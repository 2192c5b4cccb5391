package handover

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Against every dealing of those who are ready and those who surely are soon: each order
// has the most in its turn; of such dealings the first ones wait least, and if nobody
// goes short of the ready, nobody waits.
func TestWaitAgainstEveryDealing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line := rapid.SampledFrom([]string{"", "Rook", "Linnet"})
		s, now := &Sheet{}, goods{have: rapid.SliceOfN(rapid.IntRange(0, 2), 1, 2).Draw(t, "have")}
		var want []int
		for i := range rapid.IntRange(1, 3).Draw(t, "orders") {
			o := book.OrderTaken{Line: line.Draw(t, "line"), Substitute: []string{line.Draw(t, "substitute")}}
			s.Orders = append(s.Orders, Served{Order: &book.Order{OrderTaken: o}, rank: i, Day: Day{Catch: calendar.Day(rapid.IntRange(1, 3).Draw(t, "catch"))}})
			want = append(want, rapid.IntRange(0, 2).Draw(t, "want"))
			var cost []float64
			for range now.have {
				cost = append(cost, rapid.SampledFrom([]float64{0, 3, ofSubstitute, math.Inf(1)}).Draw(t, "cost"))
			}
			now.cost = append(now.cost, cost)
		}
		var all []soon
		for range rapid.IntRange(0, 2).Draw(t, "soon") {
			all = append(all, soon{line.Draw(t, "of line"), calendar.Day(rapid.IntRange(1, 3).Draw(t, "by")), 1})
		}
		both := s.withSoon(now, all)
		m := matched(want, both.have, both.cost)
		gets, cost := totals(m.deal, both.cost)
		if most, least := every(want, both.have, both.cost); !slices.Equal(gets, most) || cost != least {
			t.Fatalf("%v at %v, best is %v at %v", gets, cost, most, least)
		}
		turns := waitsOnly(both.cost, len(now.have))
		_, waits := totals(m.deal, turns)
		if _, least := every(want, both.have, turns); waits != least {
			t.Fatalf("waits by turn %v, least is %v", waits, least)
		}
		plain := matched(want, now.have, now.cost)
		if got, sum := totals(plain.deal, now.cost); slices.Equal(got, want) && (waits != 0 || sum != cost) {
			t.Fatalf("all are ready at %v, and orders wait by turn %v at %v", sum, waits, cost)
		}
	})
}

// waitsOnly are costs of which only waiting counts, the more the sooner the turn.
func waitsOnly(cost [][]float64, kinds int) (all [][]float64) {
	for i, of := range cost {
		row := slices.Clone(of)
		for k := range row {
			switch {
			case math.IsInf(row[k], 1):
			case k < kinds:
				row[k] = 0
			default:
				row[k] = float64(len(cost) - i)
			}
		}
		all = append(all, row)
	}
	return all
}

// readyOf writes a batch of a line, all of whose queens are ready.
func readyOf(p *booktest.Pen, line string, number, nucs int) {
	b := booktest.Batch("ready " + line)
	p.At("2027-03-20 15:00").Write(book.Grafted{Batch: b, Number: number, Line: line, Larvae: 20})
	for i := range nucs {
		n := booktest.Nuc(fmt.Sprint("ready", line, i))
		p.At("2027-03-25 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("%c%d", line[0], i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
		p.At("2027-03-30 12:00").Write(book.CellGiven{Nuc: n, Batch: b})
		p.At("2027-04-14 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs})
		p.At("2027-04-25 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs, Brood: book.Said(4)})
	}
}

// tiny is a book with few ready queens of two lines, some on the way, and orders.
func tiny(t *rapid.T) *booktest.Pen {
	p := unproven(rapid.IntRange(1, 5).Draw(t, "coming"))
	for i, line := range []string{"Rook", "Linnet"} {
		readyOf(p, line, 40+i, rapid.IntRange(1, 3).Draw(t, "ready"))
	}
	for i := range rapid.IntRange(2, 3).Draw(t, "orders") {
		number, priority, from, until := fmt.Sprint(i), 0, 0, 25
		switch {
		case i == 0: // one is served first and due late
			priority, from = 1, 18
		case i == 1: // one is due before others come
			until = 4
		default:
			priority = rapid.IntRange(0, 2).Draw(t, "priority")
		}
		p.At("2027-04-26 08:00").Write(book.OrderTaken{
			Order: booktest.Order(number), Number: number, Priority: priority,
			Queens: rapid.IntRange(1, 3).Draw(t, "queens"), Line: rapid.SampledFrom([]string{"Rook", "Rook", "Rook", "Linnet"}).Draw(t, "line"),
			By: calendar.Date(2027, 5, 10) + calendar.Day(rapid.IntRange(from, until).Draw(t, "by")),
		})
	}
	return p
}

// Against every dealing of the ready in small books, each with what orders are told to
// expect in time: an order has all it wants, or what it has if nobody waits, and no other such
// dealing gives an order more that leaves those before it theirs. Grafts are left out: on the
// day no order can be grafted for.
func TestSheetAgainstEveryDealing(t *testing.T) {
	waited := 0
	rapid.Check(t, func(t *rapid.T) {
		p := plannerOf(tiny(t), "2027-05-08 08:00")
		c, s, all := p.Course(), Deal(p), comings(p)
		n := c.View().Numbers()
		sure := max(n.Get(practice.PlanSure), n.Get(practice.NextSure))
		want := make([]int, len(s.Orders))
		for i, o := range s.Orders {
			want[i] = o.Order.Open()
		}
		got := s.has(want, all, sure)
		kinds, had := kindsOf(stock(c)), []int{}
		have, cost := make([]int, len(kinds)), make([][]float64, len(want))
		for k := range kinds {
			have[k] = len(kinds[k].queens)
		}
		for i, o := range s.Orders {
			had = append(had, o.Short)
			for _, k := range kinds {
				cost[i] = append(cost[i], costOf(k.queens[0], o, c.View().Today(), n))
			}
		}
		s.missing(want, matched(want, have, cost))
		plain := s.has(want, all, sure)
		for i, o := range s.Orders {
			if got[i] < plain[i] {
				t.Fatalf("order %s has %d, without waiting %d", o.Order.Number, got[i], plain[i])
			}
			if had[i] > o.Short {
				waited++
			}
		}
		best := plain
		everyReady(want, have, cost, func(deal [][]int) {
			s.missing(want, &match{deal: deal})
			has := s.has(want, all, sure)
			for i, n := range has {
				if n != plain[i] && n != want[i] {
					return
				}
			}
			if slices.Compare(has, best) > 0 {
				best = has
			}
		})
		if !slices.Equal(got, best) {
			t.Fatalf("orders have %v, best is %v, without waiting %v", got, best, plain)
		}
	})
	t.Logf("%d orders waited", waited)
	if waited == 0 {
		t.Error("no order waited in any book")
	}
}

// Nobody waits at the cost of a third: P, which takes any line, could wait for a Rook and leave
// Q a Linnet, for whom no graft is in time; but of the four Rook who come one is all that R may
// surely expect, and for R no graft is in time either. Without R, P does wait.
func TestNobodyWaitsAtTheCostOfAThird(t *testing.T) {
	for third, want := range map[bool][]int{false: {2, 1}, true: {3, 0, 0}} {
		p := unproven(4)
		readyOf(p, "Rook", 40, 1)
		readyOf(p, "Linnet", 41, 2)
		take := func(number, line string, priority, queens int, by calendar.Day) {
			p.At("2027-04-26 08:00").Write(book.OrderTaken{Order: booktest.Order(number), Number: number, Priority: priority, Queens: queens, Line: line, By: by})
		}
		take("P", "", 1, 3, calendar.Date(2027, 5, 28))
		take("Q", "Linnet", 0, 1, calendar.Date(2027, 5, 10))
		if third {
			take("R", "Rook", 0, 1, calendar.Date(2027, 5, 23))
		}
		planner := plannerOf(p, "2027-05-08 08:00")
		s := Deal(planner)
		var ready []int
		for _, o := range s.Orders {
			ready = append(ready, o.Order.Open()-o.Short)
		}
		if !slices.Equal(ready, want) {
			t.Errorf("with the third %v: orders have %v of those who are ready, want %v", third, ready, want)
		}
		if r := len(s.Orders) - 1; third && s.inTime(r, comings(planner), practice.Numbers{}.Get(practice.NextSure)) != 1 {
			t.Error("R may expect none of the two who come")
		}
	}
}

// everyReady tries every dealing.
func everyReady(want, have []int, cost [][]float64, try func([][]int)) {
	deal := make([][]int, len(want))
	for i := range deal {
		deal[i] = make([]int, len(have))
	}
	var from func(i, k int)
	from = func(i, k int) {
		switch {
		case i == len(want):
			try(deal)
			return
		case k == len(have):
			from(i+1, 0)
			return
		}
		for n := 0; n <= min(have[k], want[i]-sum(deal[i][:k])) && (n == 0 || !math.IsInf(cost[i][k], 1)); n++ {
			deal[i][k], have[k] = n, have[k]-n
			from(i, k+1)
			have[k] += n
		}
		deal[i][k] = 0
	}
	from(0, 0)
}
