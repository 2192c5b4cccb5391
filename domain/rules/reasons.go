package rules

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
)

// mostReasons is how many reasons one line tells in full: more would hide what is to
// be done.
const mostReasons = 3

// reasons are why the nucs of one line want the same done. No nuc is lent the reason
// of another.
type reasons struct {
	told []reason
	rest int // nucs with reasons beyond these
}

type reason struct {
	why string
	of  []book.Subject
}

// add takes in the reason of a task.
func (r *reasons) add(t Task) {
	for i := range r.told {
		if r.told[i].why == t.Why {
			r.told[i].of = append(r.told[i].of, t.Of...)
			return
		}
	}
	if len(r.told) == mostReasons {
		r.rest += len(t.Of)
		return
	}
	r.told = append(r.told, reason{t.Why, append([]book.Subject(nil), t.Of...)})
}

// say is one reason where all share it, else each with the names of its nucs.
func (r *reasons) say(v *book.View) string {
	if len(r.told) == 1 {
		return r.told[0].why
	}
	words := make([]string, len(r.told), len(r.told)+1)
	for i, why := range r.told {
		names := make([]string, len(why.of))
		for k, s := range why.of {
			names[k] = Name(v, s)
		}
		words[i] = book.Together(names) + ": " + why.why
	}
	if r.rest > 0 {
		words = append(words, fmt.Sprintf("%s more, each its own reason", count(r.rest, "nuc")))
	}
	return strings.Join(words, "; ")
}
