package view_test

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestNothingHasEmergedBeforeItEmerges: until then the room of a batch counts its cells
// as the book does, and nothing in it speaks of what has emerged.
func TestNothingHasEmergedBeforeItEmerges(t *testing.T) {
	s, told := open(t), 0
	for _, b := range s.Reading().Batches() {
		now := s.Reading().CellsNow(b)
		if now == "" {
			continue
		}
		told++
		one := s
		one.Selection = state.Select(b.Batch.Subject())
		one, _ = state.Update(one, state.Ran{Command: "batch room"})
		var said []string
		for _, w := range texts(t, window(one), one.Size()) {
			said = append(said, w.Text.Text)
		}
		all := strings.Join(said, "\n")
		if !strings.Contains(all, fmt.Sprintf("%d grafted, now %s", b.Larvae, now)) {
			t.Errorf("batch %d is not counted as %q:\n%s", b.Number, now, all)
		}
		if strings.Contains(all, "since they emerged") || strings.Contains(all, "virgins under a day") {
			t.Errorf("batch %d has emerged:\n%s", b.Number, all)
		}
	}
	if told == 0 {
		t.Fatal("the demo season has no batch with capped cells")
	}
}

// TestAllNucsOfABatchCanBeReached in every size: where the room is low its lids scroll,
// and none of them is cut.
func TestAllNucsOfABatchCanBeReached(t *testing.T) {
	s := filled(t, "batch room")
	id, _ := s.FillOf.Batch()
	for _, size := range [][3]float64{{800, 560, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1}} {
		s.Width, s.Height, s.Text, s.Scroll = size[0], size[1], size[2], nil
		found := map[string]bool{}
		for range 60 {
			for name, all := range lids(t, s, s.Layout().Main) {
				for _, l := range all {
					found[name] = found[name] || l.At.X > s.Layout().Main.X+s.Layout().Main.W/2
				}
			}
			s, _ = state.Update(s, state.Wheeled{At: s.Layout().Main.Centre(), DY: 20})
		}
		for _, n := range s.Reading().NucsOf(id) {
			if !found[n.Name] {
				t.Errorf("%v: %s of %d is never in sight", size, n.Name, len(s.Reading().NucsOf(id)))
			}
		}
	}
}

// TestSixLidsOfABatchStandInARow: in a large window as well its nucs are seen at once, six
// a row, and what is the matter with one reads as a sentence.
func TestSixLidsOfABatchStandInARow(t *testing.T) {
	for _, size := range [][2]float64{{1440, 900}, {1920, 1080}} {
		s := filled(t, "batch room")
		s.Width, s.Height = size[0], size[1]
		main, rows, all := s.Layout().Main, map[float64]int{}, 0
		for _, p := range walk(t, window(s), s.Size()) {
			if l, ok := p.mark.(scene.Lid); ok && l.At.X > main.Right()-state.CardWidth {
				rows[l.At.Y]++
				all++
			}
		}
		if len(rows) == 0 || len(rows) != (all+5)/6 {
			t.Errorf("%v: %d lids stand in %d rows", size, all, len(rows))
		}
		for _, w := range texts(t, window(s), s.Size()) {
			if strings.Contains(w.Text.Text, "does not fit") {
				t.Errorf("%v: %q", size, w.Text.Text)
			}
		}
	}
}

// TestTheNucsOfABatchBeginAtTheirHead on any day, though its clock begins at now.
func TestTheNucsOfABatchBeginAtTheirHead(t *testing.T) {
	begun := filled(t, "batch room")
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1.5}} {
		for _, ahead := range []calendar.Day{0, 9, 21} {
			s := begun
			s.Width, s.Height, s.Text, s.Fill, s.Day = size[0], size[1], size[2], state.NoFill, s.Today()+ahead
			s.Selection = state.Select(begun.FillOf)
			s, _ = state.Update(s, state.Ran{Command: "batch room"})
			head := false
			for _, w := range texts(t, window(s), s.Size()) {
				head = head || strings.HasPrefix(w.Text.Text, "Its nucs") && w.box.Y >= w.clip.Y
			}
			if !head {
				t.Errorf("%v, %d days ahead: the head of its nucs is out of sight", size, ahead)
			}
		}
	}
}

// TestWhatIsDoneByDaylightHasNoHour: on whatever day a batch is looked at, its clock says
// flights and all that follows by the day; a virgin flies at no quarter to midnight.
func TestWhatIsDoneByDaylightHasNoHour(t *testing.T) {
	s := filled(t, "batch room")
	s.Width, s.Height = 1280, 800
	hour := regexp.MustCompile(`\d\d:\d\d`)
	said := 0
	for by := calendar.Day(1); by <= 30; by++ {
		s.Day = today + by
		all := texts(t, window(s), s.Size())
		for _, w := range all {
			if w.Text.Text != "First mating flights" && w.Text.Text != "Look for eggs from" && w.Text.Text != "Ready to hand over" {
				continue
			}
			for _, beside := range all {
				if beside.At.Y == w.At.Y && beside.At.X > w.At.X {
					said++
					if hour.MatchString(beside.Text.Text) {
						t.Errorf("%v: %s %s", s.Day, w.Text.Text, beside.Text.Text)
					}
				}
			}
		}
	}
	if said == 0 {
		t.Error("the clock says no days")
	}
}
