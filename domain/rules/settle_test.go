package rules_test

import (
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestSettle: the answers stand before and behind what asked, a mistake is not
// kept, and without an answer the entries go in as they are.
func TestSettle(t *testing.T) {
	p := pen(t)
	layingOn1June(p)
	v := p.View("2027-06-05 18:00")
	queen := v.Nuc(a1).Holds.Queen
	cell, caught, note := book.CellGiven{Nuc: a1, Batch: batch(4)}, book.QueenCaught{Nuc: a1, Queen: queen}, book.Noted{Text: "dry"}
	for _, c := range []struct {
		name   string
		key    string
		write  []book.Fact
		want   []book.Fact // nil: not kept
		asking int
	}{
		{"gone, not known when", "1", []book.Fact{note, cell}, []book.Fact{note, cell, book.QueenGone{Nuc: a1}}, 1},
		{"taken out before", "2", []book.Fact{note, cell}, []book.Fact{note, caught, cell}, 1},
		{"the wrong nuc", "3", []book.Fact{note, cell}, nil, 1},
		{"nobody answers", "", []book.Fact{note, cell}, []book.Fact{note, cell}, 1},
		{"written with it", "3", []book.Fact{caught, cell}, []book.Fact{caught, cell}, 0},
		{"nothing to ask", "3", []book.Fact{note}, []book.Fact{note}, 0},
	} {
		at := time.Date(2027, time.June, 5, 18, 0, 0, 0, time.UTC)
		ids := book.NewIDs(at, v.Season(), [32]byte{1})
		entries := ids.Entries(calendar.Instantly(at), at.Add(time.Hour), "Ida", c.write...)
		before := slices.Clone(entries)
		asked := 0
		all, keep := rules.Settle(v.Season(), entries, &ids, func(q rules.Question) rules.Answer {
			asked++
			i := slices.IndexFunc(q.Answers, func(a rules.Answer) bool { return a.Key == c.key })
			if i < 0 {
				return rules.Answer{}
			}
			return q.Answers[i]
		})
		if keep != (c.want != nil) || asked != c.asking {
			t.Errorf("%s: kept %v after %d questions, want %d", c.name, keep, asked, c.asking)
		}
		var got []book.Fact
		for i, e := range all {
			got = append(got, e.Fact)
			if e.At != before[0].At || !e.Written.Equal(before[0].Written) || e.Writer != "Ida" {
				t.Errorf("%s: %+v was not written with the others", c.name, e)
			}
			if i > 0 && all[i-1].Compare(e) >= 0 {
				t.Errorf("%s: entry %d does not come after the one before", c.name, i)
			}
		}
		if diff := cmp.Diff(c.want, got); diff != "" {
			t.Errorf("%s:\n%s", c.name, diff)
		}
		if diff := cmp.Diff(before, entries); diff != "" {
			t.Errorf("%s: the entries were changed:\n%s", c.name, diff)
		}
	}
}
