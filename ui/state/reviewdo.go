package state

import (
	"maps"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/review"
	"lidmark/ui/scene"
)

// reviewCommands are the commands of the room Review.
var reviewCommands = []Command{
	{Name: "review", Does: "Review", Keys: "Alt+R", Why: noBook, Do: enter(Review)},
	{Name: "accept", Does: "accept what is chosen", Keys: "Enter", Word: "Accept", Why: noAccept, Do: accept},
	{Name: "accept all", Does: "accept all", Keys: "Ctrl+Enter", Word: "Accept all", Why: noAcceptAll, Do: acceptAll},
	{Name: "one by one", Does: "Review: one by one, the worst first", Word: "One by one", Why: noneToDecide, Do: pure(State.oneByOne)},
	{Name: "review why", Does: "why, and the other ways", Word: "Why", Why: noReviewNuc, Do: side(WhySide)},
	{Name: "review amounts", Does: "change what is in hand", Word: "Change by hand", Why: noAmounts, Do: pure(State.toAmounts)},
	{Name: "review hand", Does: "what is in hand, and its best use", Word: "Best use", Why: noReview, Do: side(HandSide)},
	{Name: "as in book", Does: "in hand as the book has it", Word: "As in the book", Why: notChanged, Do: pure(State.asInBook)},
	{Name: "take back", Does: "take the decision back", Word: "Take it back", Why: notDecided, Do: takeBack},
}

func side(to ReviewSide) func(State) (State, []Effect) {
	return pure(func(s State) State { return s.reviewSide(to) })
}

// reviewSide is the window with one side of Review beside the nucs, at its top.
func (s State) reviewSide(to ReviewSide) State {
	s.Reviewing.Side, s.Reviewing.typed, s.Sheet = to, false, s.Layout().Over
	if s.Focus.Kind == AmountRef || s.Focus.Kind == UseRef {
		s.Focus = scene.Ref{}
	}
	return s.scrolled(CardPlace, -s.Scroll[CardPlace])
}

// toAmounts shows what is in hand to be changed, the keys on the first of it.
func (s State) toAmounts() State {
	s = s.reviewSide(AmountSide)
	if all := s.Amounts(); len(all) > 0 {
		s.Focus = AmountOf(all[0].Name)
	}
	return s
}

func noReview(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Room != Review {
		return "go to Review first with Alt+R"
	}
	if sheet, _ := s.ReviewSheet(); sheet == nil {
		return "it is being reckoned, a moment"
	}
	return ""
}

func noneToDecide(s State) string {
	if why := noReview(s); why != "" {
		return why
	}
	if len(s.reviewOpen(1)) == 0 {
		return "nothing needs a decision"
	}
	return s.notCome()
}

// noAmounts says why what is in hand cannot be changed: nobody knows yet what will be on
// a day ahead.
func noAmounts(s State) string {
	if why := noReview(s); why != "" {
		return why
	}
	return s.notCome()
}

func noReviewNuc(s State) string {
	if why := noReview(s); why != "" {
		return why
	}
	if _, ok := s.ReviewChosen(); !ok {
		return "choose a nuc first, with Down or a click"
	}
	return ""
}

func notChanged(s State) string {
	if why := noReview(s); why != "" {
		return why
	}
	if len(s.Reviewing.Amounts) == 0 && s.Reviewing.By.IsZero() && len(s.Reviewing.Ways) == 0 {
		return "it is as the book has it"
	}
	return ""
}

func notDecided(s State) string {
	if why := noReviewNuc(s); why != "" {
		return why
	}
	if i, _ := s.ReviewChosen(); !s.isDecided(i) {
		return "nothing is decided for it"
	}
	return noDecisions(s)
}

// noDecisions says why no decision can be written: it is written of the day looked at,
// which can neither have gone nor be ahead.
func noDecisions(s State) string {
	switch {
	case s.Book.ReadOnly != "":
		return s.Book.ReadOnly
	case s.Form != nil:
		return "leave the form first with Esc"
	case s.notToday() != "":
		return s.notToday()
	case s.Unsaved():
		return "what was written last is on its way, a moment"
	}
	if _, now := s.ReviewSheet(); !now {
		return "it is being reckoned anew, a moment"
	}
	return ""
}

func noAccept(s State) string {
	if why := noReviewNuc(s); why != "" {
		return why
	}
	if why := noDecisions(s); why != "" {
		return why
	}
	if len(s.reviewMarked()) == 0 {
		return "that is decided already"
	}
	return ""
}

func noAcceptAll(s State) string {
	if why := noneToDecide(s); why != "" {
		return why
	}
	return noDecisions(s)
}

func (s State) isDecided(i int) bool { _, is := s.ReviewDecided(i); return is }

// reviewOpen are the nucs of the list that have no decision, the worst first, at
// most so many.
func (s State) reviewOpen(most int) (all []int) {
	sheet, _ := s.ReviewSheet()
	now := s.Reading()
	for _, row := range s.ReviewRows() {
		if row.Within {
			continue
		}
		for _, i := range row.Nucs {
			if len(all) == most {
				return all
			}
			if _, is := sheet.decided(now, i); !is {
				all = append(all, i)
			}
		}
	}
	return all
}

// allOpen is more than any book has nucs.
const allOpen = 1 << 30

// ReviewMarked is how many nucs are chosen that have no decision yet.
func (s State) ReviewMarked() int {
	if noReview(s) != "" {
		return 0
	}
	return len(s.reviewMarked())
}

// reviewMarked are those of them that are chosen.
func (s State) reviewMarked() []int {
	sheet, _ := s.ReviewSheet()
	return slices.DeleteFunc(s.reviewOpen(allOpen), func(i int) bool { return !s.Selection.Has(sheet.Nucs[i].Nuc.Nuc.Subject()) })
}

// accept decides for what is chosen, and goes on to what needs a decision next.
func accept(s State) (State, []Effect) {
	all := s.reviewMarked()
	open := s.reviewOpen(allOpen)
	next := slices.Index(open, all[len(all)-1]) + 1
	s.Focus = scene.Ref{}
	after, effects := s.decide(all)
	if len(effects) == 0 {
		return after, nil
	}
	sheet, _ := s.ReviewSheet()
	if next < len(open) {
		after.Selection = Select(sheet.Nucs[open[next]].Nuc.Nuc.Subject())
		after.reviewed.last = after.Selection.Last()
		after = after.reviewRevealed()
	}
	return after, effects
}

func acceptAll(s State) (State, []Effect) { return s.decide(s.reviewOpen(allOpen)) }

// decide writes the ways of nucs as decisions.
func (s State) decide(all []int) (State, []Effect) {
	sheet, _ := s.ReviewSheet()
	chosen := make(map[int]int, len(all))
	for _, i := range all {
		w, _ := s.ReviewWay(i)
		chosen[i] = slices.IndexFunc(sheet.Nucs[i].Ways, func(o review.Way) bool { return sameWay(o, w) })
	}
	facts := asFacts(sheet.Accept(chosen))
	if len(facts) == 0 {
		s.Note = Note{Text: "leaving it with no look to come is no task: nothing is written"}
		return s, nil
	}
	return s.write(s.decisionWords(facts), calendar.Instantly(s.Now), facts...)
}

func asFacts(all []book.Planned) []book.Fact {
	facts := make([]book.Fact, len(all))
	for i, f := range all {
		facts[i] = f
	}
	return facts
}

// decisionWords say what was decided, for undo.
func (s State) decisionWords(facts []book.Fact) string {
	if len(facts) == 1 {
		f := facts[0].(book.Planned)
		f.Why = "" // it stands in the book
		return s.factWords(f)
	}
	return counted(len(facts), "decision")
}

// takeBack takes back what was decided for the nuc chosen last.
func takeBack(s State) (State, []Effect) {
	i, _ := s.ReviewChosen()
	sheet, _ := s.ReviewSheet()
	n := sheet.Nucs[i]
	return s.write(n.NucNamed.Name+": decision taken back", calendar.Instantly(s.Now), book.Planned{Nuc: n.Nuc.Nuc})
}

// oneByOne begins with the worst that needs a decision, and says why.
func (s State) oneByOne() State {
	sheet, _ := s.ReviewSheet()
	n := sheet.Nucs[s.reviewOpen(1)[0]]
	s.Selection = Select(n.Nuc.Nuc.Subject())
	s.reviewed.last = s.Selection.Last()
	return s.reviewSide(WhySide).reviewRevealed()
}

// ReviewUse is which of the ways with the nuc chosen last is taken, as they are
// listed; below 0 where none is chosen.
func (s State) ReviewUse() int {
	i, ok := s.ReviewChosen()
	if !ok {
		return -1
	}
	taken, _ := s.ReviewWay(i)
	return slices.IndexFunc(s.ReviewUses(i), func(w review.Way) bool { return sameWay(w, taken) })
}

// useMoved is the window with the way above or below taken, where there is one.
func (s State) useMoved(by int) State {
	i, ok := s.ReviewChosen()
	if at := s.ReviewUse() + by; ok && at >= 0 && at < len(s.ReviewUses(i)) {
		return s.useTaken(at)
	}
	return s
}

// useTaken is the window with another way taken with the nuc chosen last; taken
// once more, it is left to the best use again.
func (s State) useTaken(at int) State {
	i, ok := s.ReviewChosen()
	if !ok {
		return s
	}
	sheet, _ := s.ReviewSheet()
	uses := s.ReviewUses(i)
	at = min(max(at, 0), len(uses)-1)
	nuc, taken := sheet.Nucs[i].Nuc.Nuc, sheet.ChoiceOf(uses[at])
	next := maps.Clone(s.Reviewing.Ways)
	if next == nil {
		next = map[book.NucID]review.Choice{}
	}
	if old, is := next[nuc]; is && old == taken {
		delete(next, nuc)
	} else {
		next[nuc] = taken
	}
	s.Reviewing.Ways = next
	s.Reviewing.turn++
	s.Focus = UseOf(at)
	return s
}
