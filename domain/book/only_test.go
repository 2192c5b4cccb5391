package book_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

func TestOnlyPerson(t *testing.T) {
	pen := (&booktest.Pen{}).At("2027-05-01 10:00")
	for _, c := range []struct{ add, want string }{{"", ""}, {"Ida", "Ida"}, {"Jon", ""}, {"Kay", ""}} {
		if c.add != "" {
			pen.Write(book.PersonDescribed{Person: booktest.Person(c.add), Name: c.add})
		}
		if got := pen.View("2027-05-02 10:00").OnlyPerson(); got != c.want {
			t.Errorf("after %q the only person is %q, want %q", c.add, got, c.want)
		}
	}
}
