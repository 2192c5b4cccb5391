package view

import (
	"fmt"
	"math"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// plannedLane draws the lane of a planned batch: all of it hatched, for nothing is
// counted yet, with its fan. While it is dragged it says what the other day costs.
func (p *sheet) plannedLane(b state.PlannedLane, a scene.Area) {
	g := p.laneOf(plannedStream(b), a)
	g.name, g.ref = "Graft "+shortDay(b.Day), b.Ref()
	p.add(scene.Rect{Area: a, Tag: scene.Tag{Ref: g.ref, Reason: g.name + "  planned, drag it to another day; " + plannedSays(b, p.s.Today())}})
	days := scene.Area{X: g.ribbon.X, Y: a.Y, W: a.W - g.ribbon.X, H: a.H}
	p.clipped(days, scene.Tag{}, func() {
		g.windows()
		g.fan()
		g.pieces()
		if b.Moved() {
			p.movedFrom(b, days)
		}
	})
	p.names = append(p.names, func() { p.clipped(days, scene.Tag{}, g.labels) })
	g.title()
	if b.Moved() {
		p.names = append(p.names, func() { p.moveShown(b, days) })
	}
	p.rule(0, a.Bottom()-1, a.W, a.Bottom()-1, scene.Hair)
}

// movedFrom marks the day that is planned.
func (p *sheet) movedFrom(b state.PlannedLane, a scene.Area) {
	was := p.l.Ribbon.At(b.Was)
	p.add(scene.Line{From: at(was, a.Y+3), To: at(was, a.Bottom()-4), Stroke: scene.Stroke{Role: scene.Pen, Width: 1.4, Dash: [2]float64{3, 3}}})
}

// moveShown says over the lane what the other day costs, above all that stands there.
func (p *sheet) moveShown(b state.PlannedLane, a scene.Area) {
	r := p.l.Ribbon
	was := r.At(b.Was)
	says, f := moveSays(b, p.s.Today()), ink(13).semi().as(scene.Pen)
	if b.Unsure() {
		f = f.as(scene.Act)
	}
	w := p.width(says, f)
	x := min(was, r.Left(b.Day)) - 10 - w
	if x < a.X+4 {
		x = max(r.Left(b.Ladder.Rung(plan.Ready).By+1), was) + 10
	}
	x = max(a.X+4, r.Left(p.s.Today()+1)+8, min(x, a.Right()-w-8))
	p.add(scene.Rect{Area: scene.Area{X: x - 6, Y: a.Y + 1, W: w + 12, H: 20}, Radius: 4, Fill: scene.Panel, Stroke: stroke(f.role, 1)})
	p.text(x, a.Y+15.5, says, f)
}

// moveSays is what moving a planned batch does to its promise.
func moveSays(b state.PlannedLane, today calendar.Day) string {
	says := b.Was.ShortFrom(today) + " → " + b.Day.ShortFrom(today)
	if b.Queens == 0 || b.By == 0 {
		return says
	}
	says = fmt.Sprintf("%s: %s, before %s", says, plan.OfHundred(b.Chance)+b.Wished.Together(), strings.TrimSuffix(plan.OfHundred(b.Before), " of 100"))
	if len(b.Assumes) > 0 {
		says += ", as if nothing were short"
	}
	return says
}

// plannedGraft is the graft of a planned batch in one line.
func plannedGraft(b state.PlannedLane, today calendar.Day) string {
	says := fmt.Sprintf("graft %s, %d larvae, %d nucs", b.Day.ShortFrom(today), b.Larvae, b.Nucs)
	if b.Line != "" {
		says += ", " + b.Line
	}
	return says
}

// plannedSays is a planned batch in one line.
func plannedSays(b state.PlannedLane, today calendar.Day) string {
	says := plannedGraft(b, today)
	if b.NotMade {
		return says + "; not made: move it, or take it off"
	}
	if b.Queens > 0 && b.By != 0 {
		says += fmt.Sprintf("; %s by %s: %s", plan.QueensSaid(b.Wished.All), b.Wished.Until.ShortFrom(today), plan.OfHundred(b.Chance)+b.Wished.Together())
	}
	return says
}

// plannedStream is a planned batch as a lane draws it: how many are left after each
// link, from the step of the ladder on after which they are.
func plannedStream(b state.PlannedLane) stream {
	s := stream{Batch: &book.Batch{Grafted: book.Grafted{Batch: b.Batch, Larvae: b.Larvae, Line: b.Line}}}
	zone := b.Ladder.Graft.Location()
	on := func(step plan.Step) time.Time { return b.Ladder.Rung(step).Best.At(12, 0, zone) }
	raw := stageLook{scene.Off, scene.Ink3, "larvae", "larvae to graft"}
	taken := raw
	taken.word, taken.is = "taken", "cells taken"
	if b.NotMade { // nothing comes of it, and nothing is reckoned
		n := float64(b.Larvae)
		s.stages = []stage{{at: b.Ladder.Graft, n: n, low: n, high: n, fill: raw.fill, line: raw.line, label: "not made", word: raw.is}}
		s.ends = (b.Day + 1).Start(zone)
		return s
	}
	from := map[plan.Link]struct {
		at time.Time
		stageLook
	}{
		plan.Grafted:          {b.Ladder.Graft, raw},
		plan.Taken:            {on(plan.CountTake), taken},
		plan.RipeOfTaken:      {on(plan.CountCapped), look(scene.Cell, "capped", "capped cells")},
		plan.Placed:           {on(plan.GiveCells), look(scene.Cell, "", "cells in nucs")},
		plan.EmergedOfRipe:    {on(plan.Emerge), look(scene.Virgin, "emerge", "virgins")},
		plan.CellAccepted:     {b.Ladder.Rung(plan.LookForEggs).From.Start(zone), look(scene.Due, "", "queens due for a look")},
		plan.VirginAccepted:   {b.Ladder.Rung(plan.LookForEggs).From.Start(zone), look(scene.Due, "", "queens due for a look")},
		plan.LayingOfAccepted: {on(plan.LookForEggs), look(scene.Laying, "laying", "laying queens")},
		plan.GoodOfLaying:     {on(plan.Ready), look(scene.GoodBrood, "ready", "queens ready to hand over")},
	}
	if b.Laying {
		from[plan.InTime] = from[plan.LayingOfAccepted]
	} else {
		from[plan.InTime] = from[plan.GoodOfLaying]
	}
	for _, link := range b.Stages {
		l, shown := from[link.Link]
		if !shown {
			continue
		}
		n := float64(link.Likely())
		if link.Link == plan.InTime { // those who come too late are not told beside them
			s.stages = s.stages[:len(s.stages)-1]
		}
		s.stages = append(s.stages, stage{
			at: l.at, n: n, fill: l.fill, line: l.line, label: l.label(n), word: l.is,
			low: float64(link.Low()), high: math.Max(n, float64(link.High())),
		})
	}
	fly, eggs := b.Ladder.Rung(plan.Fly), b.Ladder.Rung(plan.LookForEggs)
	s.flightFrom, s.flightBy = fly.From.Start(zone), (fly.By + 1).Start(zone)
	s.eggsFrom, s.eggsBy = eggs.From.Start(zone), (eggs.By + 1).Start(zone)
	s.ends = (b.Ladder.Rung(plan.Ready).By + 1).Start(zone)
	return s
}
