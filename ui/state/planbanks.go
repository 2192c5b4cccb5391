package state

import (
	"fmt"
	"math"

	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// BankHeight is how high the lane of a bank is, dp.
const BankHeight = 26.0

// bankLanes is how high the lanes of the banks are together, in a room: as many of them as
// leave the page enough, and one in any case.
func (s State) bankLanes(room float64) float64 {
	fit := max(1, math.Floor((room-s.seasonPage())/BankHeight))
	return BankHeight * min(float64(len(s.Banks())), mostBanks, fit)
}

// mostBanks is how many banks have lanes, of those that there are.
const mostBanks = 4

// Banks are the caged queens that may have lanes on the page of the season, those first who
// have to be out first: none where nobody is caged.
func (s State) Banks() []rules.Bank {
	if !s.OnSeason() {
		return nil
	}
	return s.Present().banks()
}

func (r *Reading) readBanks() []rules.Bank { return rules.Banks(r.View, r.Course) }

// BankName is where a bank is, in the keeper's words.
func (s State) BankName(b rules.Bank) string {
	if _, hangs := b.Of.Colony(); hangs {
		return rules.Name(s.Present().View, b.Of)
	}
	return "cages"
}

// BankSays is how many queens a bank has, until when, and how many more hang in its colony
// than it takes; late where there are such, or the first of them should be out already.
func (s State) BankSays(b rules.Bank) (says string, late bool) {
	says, late = s.bankKeeps(b)
	if id, hangs := b.Of.Colony(); hangs {
		if over := rules.BankOver(s.Present().View.Colony(id), s.Present().Numbers()); over > 0 {
			return fmt.Sprintf("%s; %d more than it takes", says, over), true
		}
	}
	return says, late
}

func (s State) bankKeeps(b rules.Bank) (says string, late bool) {
	says = counted(len(b.Kept), "mated queen")
	if b.Virgins {
		says = counted(len(b.Kept), "virgin")
	}
	past := 0
	for _, k := range b.Kept {
		past += boolInt(k.By < s.Today())
	}
	switch {
	case past == len(b.Kept):
		return fmt.Sprintf("%s, too long since %s", says, b.Last().ShortFrom(s.Today())), true
	case past > 0:
		return fmt.Sprintf("%s, %d of them too long; the next out by %s", says, past, b.Kept[past].By.ShortFrom(s.Today())), true
	case len(b.Kept) == 1:
		return fmt.Sprintf("%s, out by %s", says, b.First().ShortFrom(s.Today())), false
	}
	return fmt.Sprintf("%s, the first out by %s", says, b.First().ShortFrom(s.Today())), false
}

// BankWhy is how long the queens of a bank keep, and why.
func (s State) BankWhy(b rules.Bank) string {
	n := s.Present().Numbers()
	if b.Virgins {
		return fmt.Sprintf("since %s; virgins keep well for %d days, %d at most, and have to mate by %d days of age", b.Since().Short(), n.Days(practice.VirginBankGood), n.Days(practice.VirginBankMost), n.Days(practice.VirginLate))
	}
	if _, hangs := b.Of.Colony(); !hangs {
		return fmt.Sprintf("since %s; in no bank mated queens keep for %d days at most", b.Since().Short(), n.Days(practice.CagedMost))
	}
	return fmt.Sprintf("since %s; mated queens keep for %d days at most", b.Since().Short(), n.Days(practice.MatedBankMost))
}
