package state

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
)

// TodayGround is the ground of the yard as it stands, beside that of the try-out.
var TodayGround = scene.Ref{Kind: "today's layout"}

// standingOf are the stands of a layout as a map shows them; ref names each.
func (r *Reading) standingOf(l yard.Layout, ref func(book.StandID) scene.Ref) []Standing {
	all := make([]Standing, len(l.Stands))
	stands := make([]book.Stand, len(l.Stands))
	places := make([]scene.Point, len(l.Stands))
	for i := range l.Stands {
		st := &l.Stands[i]
		stands[i].StandSet = book.StandSet{Stand: st.ID, Yard: l.Yard, Letter: st.Letter, At: st.At, Turn: st.Turn, Places: st.Places, Round: st.Round}
		places[i] = OnGround(st.At)
		all[i] = Standing{Stand: &stands[i], On: places[i], Ref: ref(st.ID), Says: standSays(st)}
		for _, n := range st.Nucs {
			if nuc := r.Nuc(n.ID); nuc != nil {
				all[i].Nucs = append(all[i].Nucs, nuc)
			}
		}
	}
	for i, apart := range Apart(places) {
		all[i].Apart = apart
	}
	return all
}

// sinceWhen is the day on which a stand of a layout was last set otherwise.
func sinceWhen(r *Reading, l yard.Layout) (since calendar.Day) {
	for i := range l.Stands {
		for e := range r.View.Lines(l.Stands[i].ID.Subject()) {
			if _, set := e.Fact.(book.StandSet); set {
				since = max(since, calendar.DayOf(e.At.Instant, r.View.Zone()))
			}
		}
	}
	return since
}

// standSays is a stand in a few words.
func standSays(st *yard.Stand) string {
	words := fmt.Sprintf("%s  at %.1f m east, %.1f m north; turned %.0f°", st.Letter, st.At.X, st.At.Y, yard.Bearing(st.Turn))
	if st.Fixed {
		words += "; it stays where it is"
	}
	return words
}

// FrontSays is the entrance of a nuc in a layout: where it looks, and its mark.
func FrontSays(st *yard.Stand, n *yard.Nuc) string {
	mark := strings.TrimSpace(n.Mark.Colour + " " + n.Mark.Shape)
	if mark == "" {
		mark = "no front mark"
	}
	return fmt.Sprintf("%s  entrance %.0f°, %s", n.Name, yard.Bearing(n.Bearing+st.Turn), mark)
}

func wrapped(degrees float64) float64 {
	for degrees < 0 {
		degrees += 360
	}
	for degrees >= 360 {
		degrees -= 360
	}
	return degrees
}

// shadesBy are what lies in the shade of a yard's ground at the hour by which the sun
// should reach the entrances.
func shadesBy(g yard.Ground, d calendar.Day, zone *time.Location, n practice.Numbers) ([]yard.Shadow, time.Time) {
	hour := n.Get(practice.SunOnFrontBy)
	at := d.At(int(hour), int(60*(hour-float64(int(hour)))), zone)
	return g.Shadows(at), at
}
