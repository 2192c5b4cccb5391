package state

import (
	"fmt"
	"slices"
	"strconv"

	"lidmark/domain/calendar"
	"lidmark/domain/season"
	"lidmark/ui/scene"
)

// Kinds of a [scene.Ref] on the page of the season.
const (
	ClashRef = "clash" // what batches want at once; ID is its place
	OutRef   = "out"   // a way out of it; ID is the clash, Part the way, both by their places
)

// seasonCommands are the commands of the page of the season.
var seasonCommands = []Command{
	{Name: "season", Does: "the season: batches and clashes", Keys: "Alt+Shift+S", Word: "Season", Why: noBook, Do: pure(State.toSeason)},
	{Name: "turn of a nuc", Does: "what a nuc gives, by age at the catch", Keys: "Alt+Shift+T", Word: "Turn of a nuc", Why: noBook, Do: pure(State.toTurn)},
	{Name: "find dates", Does: "find dates for open orders", Keys: "Ctrl+D", Word: "Find dates", Why: noDates, Do: findDates},
	{Name: "stop dates", Does: "stop and keep the best so far, like Esc", Word: "Stop", Why: notFinding, Do: datesStopped},
	{Name: "plan dates", Does: "make the dates the plan", Keys: "Ctrl+Enter", Word: "Make it the plan", Why: noDatesPlanned, Do: datesPlanned},
	{Name: "forget dates", Does: "forget the dates", Word: "Forget them", Why: noDatesFound, Do: pure(func(s State) State { s.seasoned.dates = nil; return s })},
}

// toSeason is the window on the page of the season.
func (s State) toSeason() State {
	s = s.entered(Plan)
	s.Planning.Page, s.Planning.Turn = SeasonPage, false
	return s
}

func notOnSeason(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if !s.OnSeason() {
		return "go to the season first with Alt+Shift+S"
	}
	return ""
}

func noDates(s State) string {
	if why := notOnSeason(s); why != "" {
		return why
	}
	switch sheet := s.SeasonSheet(); {
	case sheet == nil:
		return "the season is being reckoned, a moment"
	case s.seasoned.dates != nil && s.seasoned.dates.Looking():
		return "dates are being found: stop with Esc"
	case s.Busy != nil:
		return "something is under way: wait for it, or stop it in the bottom line"
	case len(sheet.Promises) == 0:
		return "no order needs a graft"
	}
	if _, ok := s.mostMinutes(); !ok {
		return fmt.Sprintf("minutes a day: write 1 to %d, or nothing for no limit", 24*60)
	}
	return ""
}

func notFinding(s State) string {
	if why := notOnSeason(s); why != "" {
		return why
	}
	if d := s.seasoned.dates; d == nil || !d.Looking() {
		return "no dates are being found"
	}
	return ""
}

func noDatesFound(s State) string {
	if why := notOnSeason(s); why != "" {
		return why
	}
	if d := s.SeasonDates(); d == nil || !d.Known || len(d.Batches) == 0 {
		return "no dates are found: find them with Ctrl+D"
	}
	return ""
}

func noDatesPlanned(s State) string {
	if why := noDatesFound(s); why != "" {
		return why
	}
	switch {
	case s.SeasonDates().Looking():
		return "dates are being found: stop with Esc"
	case s.Form != nil:
		return "leave the form first with Esc"
	}
	return s.noMove()
}

// ClashOf names what batches want at once in a scene.
func ClashOf(i int) scene.Ref { return scene.Ref{Kind: ClashRef, ID: strconv.Itoa(i)} }

// OutOf names a way out of it.
func OutOf(clash, way int) scene.Ref {
	return scene.Ref{Kind: OutRef, ID: strconv.Itoa(clash), Part: strconv.Itoa(way)}
}

// ChosenClash is the place of the clash whose ways out the figures take: the one with
// the keys, else the first that has any to write.
func (s State) ChosenClash() int {
	for i := range s.SeasonClashes() {
		if s.onClash(i) {
			return i
		}
	}
	for i, c := range s.SeasonClashes() {
		if slices.ContainsFunc(c.Ways, func(w season.Way) bool { return !w.Plan.Batch.IsZero() }) {
			return i
		}
	}
	return 0
}

// onClash tells whether the keys are on a clash, or on one of its ways out.
func (s State) onClash(i int) bool {
	return (s.Focus.Kind == ClashRef || s.Focus.Kind == OutRef) && s.Focus.ID == strconv.Itoa(i)
}

// keySeason gives a key to the page of the season, and tells whether that took it: a
// figure takes a way out, the arrows go from line to line, Esc stops what is looked for.
func (s State) keySeason(m Keyed) (State, []Effect, bool) {
	if m.Mods != 0 || s.Form != nil || s.InField() != "" && len(m.Key) == 1 {
		return s, nil, false
	}
	if m.Key == "Escape" && notFinding(s) == "" {
		next, effects := datesStopped(s)
		return next, effects, true
	}
	if n, err := strconv.Atoi(m.Key); err == nil && n > 0 && len(m.Key) == 1 {
		next, effects := s.outTaken(s.ChosenClash(), n-1)
		return next, effects, true
	}
	p := s.SeasonPane(s.Layout())
	page := max(1, int(p.Body.H/orderLine)-1)
	if by, moves := map[string]int{"Up": -1, "Down": 1, "PageUp": -page, "PageDown": page}[m.Key]; moves {
		return s.seasonStepped(p, by), nil, true
	}
	return s, nil, false
}

// seasonStepped is the window with the keys so many lines on.
func (s State) seasonStepped(p SeasonPane, by int) State {
	var stops []SeasonLine
	for _, l := range p.Lines {
		if l.Ref != (scene.Ref{}) {
			stops = append(stops, l)
		}
	}
	if len(stops) == 0 {
		return s
	}
	at := slices.IndexFunc(stops, func(l SeasonLine) bool { return l.Ref == s.Focus })
	if at < 0 {
		at, by = 0, 0
	}
	l := stops[min(max(at+by, 0), len(stops)-1)]
	s.Trail = nil
	return s.clashClicked(l.Ref)
}

// clashClicked is the window with the keys on a clash, which is in sight.
func (s State) clashClicked(r scene.Ref) State {
	s.Focus = r
	p := s.SeasonPane(s.Layout())
	i := slices.IndexFunc(p.Lines, func(l SeasonLine) bool { return l.Ref == r })
	if i < 0 {
		return s
	}
	return s.within(SeasonPlace, p.Offset, p.Lines[i].Y, p.Lines[i].H, p.Body.H)
}

// outClicked takes the way out that a scene names.
func (s State) outClicked(r scene.Ref) (State, []Effect) {
	clash, err := strconv.Atoi(r.ID)
	way, wrong := strconv.Atoi(r.Part)
	if err != nil || wrong != nil {
		return s, nil
	}
	return s.focused(r).outTaken(clash, way)
}

// outTaken writes a batch down as a way out of a clash plans it, or says why not.
func (s State) outTaken(clash, way int) (State, []Effect) {
	sheet := s.SeasonSheet()
	if sheet == nil || clash >= len(sheet.Clashes) || way >= len(sheet.Clashes[clash].Ways) {
		return s, nil
	}
	w := sheet.Clashes[clash].Ways[way]
	why := s.noMove()
	if w.Plan.Batch.IsZero() {
		why = "that is to be had, not to be written: " + w.What
	}
	if why != "" {
		s.Note = Note{Text: why}
		return s, nil
	}
	s.Focus = scene.Ref{}
	return s.write(wayWords(w), calendar.Instantly(s.Now), w.Plan)
}

// wayWords are what a way out did, for undo.
func wayWords(w season.Way) string {
	words := w.What
	if w.Wished {
		words += ": " + chanceBeside(w.After, "before", w.Before)
	}
	return words
}
