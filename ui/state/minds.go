package state

import (
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// minded are what the rules have against the facts of a form, like words of several
// nucs gathered: twenty nucs that are all too early are one line.
type minded struct {
	all   int // nucs that were judged
	minds []mindOf
}

// mindOf is one reason, without the name of its nuc, and whom it concerns.
type mindOf struct {
	why, do string
	names   []string // none where the reason names no nuc
	first   string   // the reason of the first of them, whole
}

// mind notes what the rules have against a fact as a plan, and tells whether one
// of them is a refusal.
func (m *minded) mind(v *book.View, fact book.Fact) (refused bool) {
	plan := rules.PlanOf(v, fact)
	if plan == nil {
		return false
	}
	m.all++
	name := ""
	if id := nucIn(fact); !id.IsZero() {
		name = v.Nuc(id).Name
	}
	verdict := rules.Check(v, plan)
	for _, r := range slices.Concat(verdict.Refused, verdict.Warned) {
		m.note(name, r)
	}
	return len(verdict.Refused) > 0
}

func (m *minded) note(name string, r rules.Reason) {
	why, named := r.Why, false
	if name != "" {
		why, named = strings.CutPrefix(r.Why, name+" ")
	}
	i := slices.IndexFunc(m.minds, func(o mindOf) bool { return o.why == why && o.do == r.Do })
	if i < 0 {
		i = len(m.minds)
		m.minds = append(m.minds, mindOf{why: why, do: r.Do, first: r.Why})
	}
	if named && !slices.Contains(m.minds[i].names, name) {
		m.minds[i].names = append(m.minds[i].names, name)
	}
}

// words are the lines, one a reason: "All 20: wait until Tue 04:59; A1 has been
// without a queen for 0 h only".
func (m *minded) words() (all []string) {
	for _, o := range m.minds {
		all = append(all, o.words(m.all))
	}
	return all
}

func (o mindOf) words(of int) string {
	const most = 30 // letters of names
	switch n := len(o.names); {
	case n < 2:
		return because(rules.Reason{Why: o.first, Do: o.do})
	case n == of:
		return "all " + strconv.Itoa(n) + ": " + o.told()
	default:
		return book.Names(book.Runs(o.names), func(said string) bool { return utf8.RuneCountInString(said) <= most }) + ": " + o.told()
	}
}

// told is what to do, and why of the first of several.
func (o mindOf) told() string {
	if o.do == "" {
		return o.first
	}
	r, size := utf8.DecodeRuneInString(o.do)
	return string(unicode.ToLower(r)) + o.do[size:] + "; " + o.first
}
