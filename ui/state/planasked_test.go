package state_test

import (
	"slices"
	"testing"

	"lidmark/ui/state"
)

// What was asked for is in sight: what a nuc gives by the age at the catch, and the dates
// found, however many lanes stand above.
func TestWhatWasAskedForIsInSight(t *testing.T) {
	for _, size := range [][2]float64{{1280, 800}, {1920, 1080}, {853, 533}} {
		w := seasonal(t)
		w.send(state.Resized{Width: size[0], Height: size[1]})
		lanes := w.Layout().Lanes.H
		w.State = w.WithField(state.TurnLast, state.FieldOf("31 Aug"))
		for command, look := range map[string]state.SeasonLook{"turn of a nuc": state.SeasonTurnAge, "find dates": state.SeasonGraft} {
			w.send(state.Ran{Command: command})
			if look == state.SeasonGraft {
				w.send(w.found().Search(func(state.SeasonFound) bool { return true }))
			}
			p := w.SeasonPane(w.Layout())
			rows := slices.DeleteFunc(slices.Clone(p.Lines), func(l state.SeasonLine) bool { return l.SeasonLook != look })
			if len(rows) < 2 || !rows[0].Head {
				t.Fatalf("%s at %v: %d rows, and no head over them", command, size, len(rows))
			}
			if first, last := rows[0], rows[len(rows)-1]; first.Y < p.Offset || last.Y+last.H > p.Offset+p.Body.H {
				t.Errorf("%s at %v: rows from %.0f to %.0f, the page shows %.0f to %.0f", command, size, first.Y, last.Y+last.H, p.Offset, p.Offset+p.Body.H)
			}
			w.send(state.Ran{Command: "season"}, state.Ran{Command: "forget dates"}).settled()
			if h := w.Layout().Lanes.H; h != lanes {
				t.Errorf("%s at %v: left again, lanes are %.0f high, before %.0f", command, size, h, lanes)
			}
		}
	}
}
