package view

import (
	"fmt"
	"strings"

	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// today draws the room Today: the day's time and kit, the route, the card.
func (p *sheet) today() {
	l := p.l
	if !l.Turns.Empty() {
		p.turns()
	}
	if !l.Side.Empty() {
		p.daySide(l.Side)
	}
	if !l.Main.Empty() {
		p.route(l.Main)
	}
	p.card()
	p.days()
}

// turns draws the head by which parts take turns in a small window.
func (p *sheet) turns() {
	a := p.l.Turns
	p.rect(a, scene.Ground)
	p.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Hair)
	parts := []struct {
		word, command string
		part          state.Part
	}{{"Route", "part main", state.MainPart}, {"Kit and time", "part side", state.SidePart}}
	if p.s.Room == state.Yard {
		parts[0].word, parts[1].word = "Nucs", "Map"
		parts = append(parts, parts[0])
		parts[2].word, parts[2].command, parts[2].part = "Batches", "part lanes", state.LanePart
	}
	x := a.X + state.Edge
	for _, part := range parts {
		x = p.link(x, a.Y+22, part.word, ink2(14), part.command, p.s.Turn() == part.part) + 20
	}
	if p.l.MapTurns() {
		p.turnHead(x, a)
		return
	}
	if p.s.Room == state.Yard && p.s.Part == state.MainPart {
		to := p.forms(scene.Area{X: a.Right(), Y: a.Y, H: a.H})
		p.headsMenu(x, a.Y+22, to)
	}
}

// nextNoon is the noon up to which the day looks for hard deadlines.
func (p *sheet) nextNoon() string {
	if p.s.Away() {
		return "noon on " + (p.s.Looked() + 1).Short()
	}
	return "tomorrow noon"
}

// hardStrip draws the hard deadline that comes first, with how many follow. On
// another day than today it is grey: it is not true now.
func (p *sheet) hardStrip(hard []rules.Finding, a scene.Area) {
	r := p.s.Reading()
	to := a.Right() - state.Edge
	if len(hard) == 0 {
		p.rect(a, scene.Sunk)
		p.fit(a.X+state.Edge, a.Y+a.H/2+5, p.noHard(), ink2(14), to)
		return
	}
	tone, tint := p.alarm()
	p.rect(a, tint)
	p.rect(scene.Area{X: a.X, Y: a.Y, W: 6, H: a.H}, tone)
	f := hard[0]
	word := "Hard by "
	switch {
	case f.PastDue(r.View.On()) && r.Ahead:
		word = "Would be past since "
	case f.PastDue(r.View.On()):
		word = "Past since "
	}
	const twoLines, wide = 40.0, 700.0
	two := a.H >= twoLines && a.W < wide
	y := a.Y + a.H/2 + 6
	if two {
		y = a.Y + 18
	}
	late := p.lateButton()
	if late.ok {
		to -= late.w + 12
	}
	head, bold := word+hour(f.By, r.View.Zone()), ink(15).bold().as(tone)
	if p.width(head, bold) > to-a.X-state.Edge {
		head = word[:strings.LastIndex(strings.TrimSpace(word), " ")+1] + weekdayHour(f.By, r.View.Zone())
	}
	end := to
	if more := fmt.Sprintf("and %d more", len(hard)-1); len(hard) > 1 && p.width(head, bold)+p.width(more, ink2(13))+24 <= to-a.X-state.Edge {
		end = p.right(end, y, more, ink2(13)) - 12
	}
	x := p.fit(a.X+state.Edge, y, head, bold, end)
	switch {
	case two:
		p.fit(a.X+state.Edge, y+19, p.hardSaid(f, to-a.X-state.Edge), ink(13), to)
	case end-x > 60:
		p.fit(x+14, y, p.hardSaid(f, end-x-14), ink(14), end)
	}
	p.hit(a, state.RefOf(f.Of), "hard: "+f.Why)
	if late.ok {
		p.stripButton(late, a)
	}
}

// hardSaid is what a hard deadline is about and what to do: as much in whole
// sentences as there is room for.
func (p *sheet) hardSaid(f rules.Finding, room float64) string {
	said := sentence(f.What)
	do, _, _ := strings.Cut(f.Do, ":")
	for _, all := range []string{said + ". " + f.Do + ".", said + ". " + do + "."} {
		if p.width(all, ink(14)) <= room {
			return all
		}
	}
	return said
}

// noHard says that no hard deadline presses: there is none, or it was put off.
func (p *sheet) noHard() string {
	for _, f := range p.s.Reading().Findings {
		if f.Hard && f.Act == rules.ActCollectCells && !f.PutOff.IsZero() {
			return sentence(f.What) + ": put off to " + f.PutOff.Short()
		}
	}
	if f, ok := p.nextHard(); ok {
		return "Next, hard by " + hour(f.By, p.s.Reading().View.Zone()) + ": " + f.What
	}
	return "No hard deadline until " + p.nextNoon()
}

// nextHard is the hard line that comes first within the days of the axis, as the
// lines of the route and the ribbon show them.
func (p *sheet) nextHard() (next rules.Finding, ok bool) {
	r := p.s.Reading()
	end := (r.Day + axisDays - axisBefore).Start(r.View.Zone())
	for _, f := range r.Findings {
		if f.Hard && f.Act != rules.ActNone && f.PutOff.IsZero() && f.By.After(r.View.On()) && f.By.Before(end) && (!ok || f.By.Before(next.By)) {
			next, ok = f, true
		}
	}
	return next, ok
}

// wayButton is the button to the late day in the strip of the hard deadlines.
type wayButton struct {
	word string
	w    float64
	ok   bool
}

func (p *sheet) lateButton() wayButton {
	c, _ := state.CommandNamed("late day")
	b := wayButton{word: c.Word, w: p.width(c.Word, ink(14).medium()) + 24}
	b.ok = c.Reason(p.s) == "" && p.l.Main.W >= 420
	return b
}

func (p *sheet) stripButton(b wayButton, a scene.Area) {
	h := min(a.H-6, 30)
	p.wideButton(scene.Area{X: a.Right() - state.Edge - b.w, Y: a.Y + (a.H-h)/2, W: b.w, H: h}, b.word, "late day", false)
}
