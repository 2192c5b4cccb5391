package state

import (
	"maps"
	"slices"
	"unicode"

	"lidmark/domain/calendar"
	"lidmark/domain/review"
	"lidmark/ui/scene"
)

// Names of the amounts that are no ware of the book.
const (
	cupsAmount    = "cups of bees"
	minutesAmount = "minutes"
	dayAmount     = "day"
)

// AmountOf names an amount in a scene.
func AmountOf(name string) scene.Ref { return scene.Ref{Kind: AmountRef, ID: name} }

// Amount is something in hand that can be changed.
type Amount struct {
	Name  string
	Label string
	Value int
	Says  string // in place of the value
	Note  string
	Own   bool // the keeper changed it
}

// handOf is what is in hand with the keeper's changes.
func handOf(base review.Hand, amounts map[string]int) review.Hand {
	hand := base
	hand.Wares = slices.Clone(base.Wares)
	for i := range hand.Wares {
		if w := &hand.Wares[i]; has(amounts, w.Name) {
			w.Many = amounts[w.Name]
			w.Queens = w.Queens[:min(len(w.Queens), w.Many)]
		}
	}
	if has(amounts, cupsAmount) {
		hand.Cups = amounts[cupsAmount]
	}
	if has(amounts, minutesAmount) {
		hand.Minutes = float64(amounts[minutesAmount])
	}
	return hand
}

func has(amounts map[string]int, name string) bool {
	_, ok := amounts[name]
	return ok
}

// Amounts are what is in hand, each as the keeper has it now.
func (s State) Amounts() (all []Amount) {
	sheet, _ := s.ReviewSheet()
	if sheet == nil {
		return nil
	}
	add := func(a Amount) {
		if v, ok := s.Reviewing.Amounts[a.Name]; ok {
			a.Own, a.Value = v != a.Value, v
		}
		all = append(all, a)
	}
	for _, w := range sheet.Base.Wares {
		a := Amount{Name: w.Name, Label: w.Name, Value: w.Many}
		switch w.Name {
		case review.AnyCell:
			a.Label = "ripe cells, if there were any"
		case review.AnyVirgin:
			a.Label = "young virgins, if there were any"
		}
		add(a)
	}
	add(Amount{Name: cupsAmount, Label: "cups of bees", Value: sheet.Base.Cups, Note: sheet.BeesWords()})
	add(Amount{Name: minutesAmount, Label: "minutes of work", Value: int(sheet.Base.Minutes), Note: "0: as many as it takes"})
	if last := &all[len(all)-1]; last.Value == 0 {
		last.Says = "no limit"
	}
	by := Amount{Name: dayAmount, Label: "queens wanted by", Says: sheet.By.Short(), Own: !s.Reviewing.By.IsZero()}
	if s.Reviewing.By != 0 {
		by.Says = s.Reviewing.By.Short()
	}
	return append(all, by)
}

// amountStep is by how much an amount changes at once.
func amountStep(name string) int {
	if name == minutesAmount {
		return 15
	}
	return 1
}

// amountMoved is the window with an amount changed by so many steps.
func (s State) amountMoved(name string, by int) State {
	for _, a := range s.Amounts() {
		if a.Name != name {
			continue
		}
		if name == dayAmount {
			return s.wantedBy(by)
		}
		return s.amountSet(name, a.Value+by*amountStep(name))
	}
	return s
}

// mostAmount is the most of anything in hand.
const mostAmount = 9999

// amountSet is the window with an amount set.
func (s State) amountSet(name string, v int) State {
	if why := noAmounts(s); why != "" {
		s.Note = Note{Text: why, Bad: true}
		return s
	}
	next := maps.Clone(s.Reviewing.Amounts)
	if next == nil {
		next = map[string]int{}
	}
	next[name] = min(max(v, 0), mostAmount)
	s.Reviewing.Amounts = next
	s.Reviewing.turn++
	s.Focus, s.Reviewing.typed = AmountOf(name), false
	return s
}

// wantedBy is the window with queens wanted so many days later; not before
// tomorrow, nor beyond the season.
func (s State) wantedBy(days int) State {
	const ahead = 120
	if why := noAmounts(s); why != "" {
		s.Note = Note{Text: why, Bad: true}
		return s
	}
	sheet, _ := s.ReviewSheet()
	by := s.Reviewing.By
	if by.IsZero() {
		by = sheet.By
	}
	s.Reviewing.By = min(max(by+calendar.Day(days), s.Looked()+1), s.Looked()+ahead)
	s.Reviewing.turn++
	s.Focus = AmountOf(dayAmount)
	return s
}

// amountTyped is the window after a digit typed at an amount.
func (s State) amountTyped(r rune) State {
	name, v := s.Focus.ID, int(r-'0')
	if name == dayAmount {
		return s
	}
	for _, a := range s.Amounts() {
		if a.Name == name && s.Reviewing.typed {
			v += 10 * a.Value
		}
	}
	s = s.amountSet(name, v)
	s.Reviewing.typed = true
	return s
}

// typesAmount tells whether a character goes to the amount that has the keys.
func (s State) typesAmount(r rune) bool {
	return s.Room == Review && s.Focus.Kind == AmountRef && unicode.IsDigit(r) && r < unicode.MaxASCII
}

// amountCut takes the last digit of an amount away.
func (s State) amountCut() State {
	for _, a := range s.Amounts() {
		if a.Name == s.Focus.ID && a.Name != dayAmount {
			s = s.amountSet(a.Name, a.Value/10)
			s.Reviewing.typed = true
		}
	}
	return s
}

// asInBook is the window with what is in hand as the book has it, the usual day,
// and no way taken by hand.
func (s State) asInBook() State {
	s.Reviewing.Amounts, s.Reviewing.By, s.Reviewing.Ways = nil, 0, nil
	s.Reviewing.turn++
	return s
}
