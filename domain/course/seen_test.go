package course_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/course"
)

// TestSeenIsSeen: a virgin is as seen only when somebody saw her, or put her in, and
// no look since has missed her.
func TestSeenIsSeen(t *testing.T) {
	open := book.Looked{Nuc: a1, Cell: book.CellOpenAtTip}
	none := book.Looked{Nuc: a1, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(2)}
	seen := book.Looked{Nuc: a1, Queen: book.VirginSeen}
	for _, c := range []struct {
		name  string
		first book.Fact
		looks []book.Fact
		want  bool
	}{
		{"nobody looked", book.CellGiven{Nuc: a1, Batch: batch}, nil, false},
		{"an opened cell", book.CellGiven{Nuc: a1, Batch: batch}, []book.Fact{open}, false},
		{"no queen found", book.CellGiven{Nuc: a1, Batch: batch}, []book.Fact{open, none}, false},
		{"seen", book.CellGiven{Nuc: a1, Batch: batch}, []book.Fact{open, seen}, true},
		{"seen, then missed", book.CellGiven{Nuc: a1, Batch: batch}, []book.Fact{seen, none}, false},
		{"put in", book.VirginPutIn{Nuc: a1}, nil, true},
		{"put in, then missed", book.VirginPutIn{Nuc: a1}, []book.Fact{none}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := pen(t)
			p.At("2027-05-15 10:00").Write(c.first)
			for i, look := range c.looks {
				p.At([]string{"2027-05-20 10:00", "2027-05-21 10:00"}[i]).Write(look)
			}
			v := p.View("2027-05-21 12:00")
			if got := course.New(v).Of(v.Nuc(a1)); got.Condition != book.Virgin || got.Seen != c.want {
				t.Errorf("%s, seen %v: %s", got.Condition, got.Seen, got.Why)
			}
		})
	}
}
