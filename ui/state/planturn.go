package state

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
)

// The fields of the turn of a nuc.
const (
	TurnGap   = "season.gap"   // days from the catch to the next cell; empty: none
	TurnVisit = "season.visit" // days between visits; empty: one
	TurnLast  = "season.last"  // the day until which queens are wanted; empty: the season's
)

// the most of what a turn may have: beyond lies a fault of typing.
const mostTurnDays = 60

// NucTurn is what one nuc gives in the season of a yard, by how it is worked. The zero
// NucTurn is of no yard.
type NucTurn struct {
	Yard        string       // its name; "": there is none
	First, Last calendar.Day // Last 0: nobody told when the season ends
	Why         string       // there is no Last

	yields func(plan.Turn) []plan.Yield
}

// nucTurnOf is what a nuc of a yard gives; none is that of most nucs.
func nucTurnOf(r *Reading, p *plan.Planner, yard book.YardID) (n NucTurn) {
	if yard.IsZero() {
		yard = p.YardOfMostNucs()
	}
	if yard.IsZero() {
		return n
	}
	n.Yard = r.View.Yard(yard).Name
	if t, err := p.Season(yard, plan.Turn{Last: r.View.Today() + plan.MostAhead}); err == nil {
		n.First = t.First
	}
	if t, err := p.Season(yard, plan.Turn{First: n.First}); err != nil {
		n.Why = err.Error()
	} else {
		n.Last = t.Last
	}
	rates, numbers := plan.RatesOf(r.View), r.View.Numbers()
	n.yields = memo(func(t plan.Turn) []plan.Yield { return rates.Yields(t, numbers) })
	return n
}

// TurnTyped is how the nuc is worked as the fields have it, and what is wrong there, the
// first of it.
func (s State) TurnTyped(n NucTurn) (t plan.Turn, wrong WishWrong) {
	t = plan.Turn{First: n.First, Last: n.Last}
	days := func(field string, least int, what string) int {
		text := strings.TrimSpace(s.Typed(field))
		if text == "" {
			return least
		}
		d, err := strconv.Atoi(text)
		if (err != nil || d < least || d > mostTurnDays) && wrong.Field == "" {
			wrong = WishWrong{field, fmt.Sprintf("%s: write days, %d to %d", what, least, mostTurnDays)}
		}
		return d
	}
	t.Gap, t.Drive = days(TurnGap, 0, "the next cell"), days(TurnVisit, 1, "a visit")
	if text := strings.TrimSpace(s.Typed(TurnLast)); text != "" {
		d, err := line.ParseComing(text, s.Today())
		switch t.Last = d; {
		case wrong.Field != "":
		case err != nil:
			wrong = WishWrong{TurnLast, err.Error()}
		case d <= n.First || d > s.Today()+plan.MostAhead:
			wrong = WishWrong{TurnLast, fmt.Sprintf("queens until: say a day after the first cells of %s, within %d days", n.First.ShortFrom(s.Today()), plan.MostAhead)}
		}
	}
	if t.Last == 0 && wrong.Field == "" {
		wrong = WishWrong{TurnLast, n.Why}
	}
	return t, wrong
}

// Yields are what a nuc gives when it is worked so, by the age at the catch.
func (n NucTurn) Yields(t plan.Turn) []plan.Yield { return n.yields(t) }

// turn writes what a nuc gives in the season.
func (p *seasonLines) turn(s State, n NucTurn) {
	if n.Yard == "" {
		return
	}
	p.title("The turn of a nuc of " + n.Yard + ", first cells " + n.First.ShortFrom(s.Today()))
	p.add(SeasonLine{SeasonLook: SeasonTurn}, seasonAsk)
	t, wrong := s.TurnTyped(n)
	if wrong.Field != "" {
		p.said(SeasonLine{Cells: []string{plan.Sentence(wrong.Why)}}, scene.Regular, p.width)
		return
	}
	all := n.Yields(t)
	if len(all) == 0 {
		p.said(SeasonLine{Cells: []string{"No queen of it is ready by then: say a later day"}}, scene.Regular, p.width)
		return
	}
	most, living := plan.BestTurns(all)
	p.heads(SeasonTurnAge, "caught at", "queens", "live 15 weeks", "cells", "of 100 live")
	for _, y := range all {
		p.add(SeasonLine{SeasonLook: SeasonTurnAge, Cells: turnCells(y, s.Present().Numbers()), Best: [2]bool{slices.Contains(most, y), slices.Contains(living, y)}}, orderLine)
	}
	says := fmt.Sprintf("Most queens: %s; most that live: %s. Means of one nuc by your rates; a nuc without eggs when a virgin is late is given the next cell", plan.CaughtAt(most), plan.CaughtAt(living))
	p.said(SeasonLine{Cells: []string{says}}, scene.Regular, p.width)
}

// turnCells are what a nuc gives when its queens are caught at an age.
func turnCells(y plan.Yield, n practice.Numbers) []string {
	return []string{
		fmt.Sprintf("%d d", y.Catch), fmt.Sprintf("%.1f", y.Queens), fmt.Sprintf("%.1f", y.Living), fmt.Sprintf("%.1f", y.Cells), fmt.Sprintf("%.0f, %s", 100*y.Share, y.Basis(n)),
	}
}

// toTurn is the window on the page of the season with the turn of a nuc in sight, the keys
// in the field that is still wanted.
func (s State) toTurn() State {
	s = s.toSeason()
	s.Planning.Turn = true
	field := TurnLast
	if sheet := s.SeasonSheet(); s.Typed(TurnLast) != "" || sheet != nil && sheet.Turn.Last != 0 {
		field = TurnGap
	}
	at := 1e6 // not known yet: at the end
	for _, l := range s.SeasonPane(s.Layout()).Lines {
		if l.SeasonLook == SeasonTurn {
			at = l.Y - orderTitle
		}
	}
	return s.scrolled(SeasonPlace, at-s.Scroll[SeasonPlace]).toField(field)
}
