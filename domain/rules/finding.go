package rules

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Rule names a rule in the keeper's words; a book that puts a finding off
// keeps it by this name.
type Rule string

// Severity is how much a finding presses.
type Severity uint8

// The severities, from the least. Ahead is for a window that is not open yet,
// Open for one that is, Pressing for what needs the keeper: trouble, no queen,
// weak, robbers, and whatever is past its best day or past due.
const (
	Ahead Severity = iota
	Open
	Pressing
)

var severities = [...]string{"ahead", "open", "needs you"}

// String is the severity in words.
func (s Severity) String() string { return severities[s] }

// Finding is one thing that wants doing or knowing. Its texts have no full
// stop and stand alone.
type Finding struct {
	Rule     Rule
	Severity Severity
	Of       book.Subject   // what it is about
	Also     []book.Subject // what else it is about: the other batch, the nucs of a yard's line
	Yard     book.YardID
	Act      Act                    // what is to be done
	Then     Act                    // what is done at once after it; none
	OwnFirst bool                   // nothing is given before a look for a virgin of the nuc's own
	Takes    float64                // minutes, where the act does not say how many
	Amount   float64                // how many cells, cups or litres that takes, or how many cm² are left open; 0 where none
	Goods    Goods                  // what is packed for it besides
	Each     map[book.NucID]float64 // the amounts of nucs of which Amount is not that; nil: it is that of all
	Since    time.Time              // since when it is so; zero: does not matter
	From     time.Time              // the window: first day or hour
	Best     time.Time              // best day or hour
	By       time.Time              // last day or hour
	Hard     bool                   // By is a deadline of nature, to the hour; else By means a day
	What     string                 // what is the matter
	Why      string                 // the reason, with figures
	Do       string                 // what to do
	Sure     string                 // how sure that is
	Used     []practice.Key
	PutOff   calendar.Day // put off until this day; zero: not
	Step     plan.Step    // of a planned batch, that it is; zero: none
	CellBy   time.Time    // the hard hour of the cell that it clears the nuc for; zero: of none
}

// AmountOf is the amount that a nuc takes which the finding is about.
func (f Finding) AmountOf(id book.NucID) float64 {
	if own, ok := f.Each[id]; ok {
		return own
	}
	return f.Amount
}

// NeedsYou tells whether the finding marks its subject as needing the keeper.
func (f Finding) NeedsYou() bool { return f.Severity == Pressing && f.PutOff.IsZero() }

// PastDue tells whether its last day or hour has gone by.
func (f Finding) PastDue(now time.Time) bool { return !f.By.IsZero() && now.After(f.By) }
