package rules

import "lidmark/domain/practice"

// Reason is why a plan is refused or warned of, and the way out.
type Reason struct {
	Why  string
	Do   string // the way out
	Used []practice.Key
}

// Verdict is what the rules say of a plan.
type Verdict struct {
	Refused []Reason // the plan cannot be, or would destroy a queen to no purpose
	Warned  []Reason // it can be done; kept with the entry
}

// OK tells whether the plan may be carried out, with or without warnings.
func (v Verdict) OK() bool { return len(v.Refused) == 0 }
