package season_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/season"
)

// One helper who is away is one clash: where nobody is free until the hour by which cells must
// be out, the other work of the batch on these days is no clash of its own; and the help that
// is missing is a way out of it.
func TestAMissingHelperIsOneClash(t *testing.T) {
	pen, ida := world{nucs: 60}.pen(), booktest.Person("Ida")
	who := book.PersonDescribed{Person: ida, Name: "Ida M."}
	for d := range who.Free {
		who.Free[d] = book.FreeHours{From: 600, Until: 1200}
	}
	pen = planned(pen.Write(who), day(t, "2027-05-01"))
	if there := season.Clashes(plannerOf(pen)); len(ofHours(there)) != 0 {
		t.Fatalf("with Ida there: %+v", there)
	}
	pen.Write(book.DaysOff{Person: ida, From: day(t, "2027-05-09"), To: day(t, "2027-05-13")})
	found := ofHours(season.Clashes(plannerOf(pen)))
	if len(found) != 1 || found[0].Kind != season.NobodyFree {
		t.Fatalf("%d clashes, want one: %+v", len(found), found)
	}
	c := found[0]
	if !strings.HasSuffix(c.Why, " min of its work.") || !strings.Contains(c.Ways[len(c.Ways)-1].What, " min of help between ") {
		t.Errorf("%s %+v", c.Why, c.Ways)
	}
	if c.Ways[0].Days == 0 {
		t.Errorf("the graft does not move: %+v", c.Ways)
	}
}

// ofHours are the clashes of people's time.
func ofHours(all []season.Clash) (found []season.Clash) {
	for _, c := range all {
		if c.Kind == season.NobodyFree || c.Kind == season.MinutesOver {
			found = append(found, c)
		}
	}
	return found
}
