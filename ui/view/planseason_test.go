package view_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// inSeason is the page of the season of the demo, with two grafts planned for one day
// and two orders more, after commands.
func inSeason(t testing.TB, commands ...string) state.State {
	s := open(t)
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	home, on, by := s.Present().View.HomeYard().Yard, today+7, today+60
	p.At(s.Now.Add(-time.Minute).Format("2006-01-02 15:04")).Write(
		book.OrderTaken{Order: booktest.Order("41"), Number: "41", Customer: "Farm of the long valley", Queens: 10, Line: "Rook", By: by},
		book.OrderTaken{Order: booktest.Order("42"), Number: "42", Queens: 8, Line: "Linnet", By: calendar.Date(2027, time.August, 6)},
		book.ColonyDescribed{Colony: booktest.Colony("S40"), Name: "S40", Yard: home, Roles: []book.Role{book.Breeder}, Line: "Linnet"},
		book.BatchPlanned{Batch: booktest.Batch("rook"), Line: "Rook", Day: on, Minute: 540, Yard: home, Larvae: 36, Nucs: 24, Queens: 10, By: by, Orders: []book.OrderID{booktest.Order("41")}},
		book.BatchPlanned{Batch: booktest.Batch("plover"), Line: "Plover", Day: on, Minute: 540, Yard: home, Larvae: 36, Nucs: 24})
	season := s.Book.Season.With(p.Entries...)
	s = planning(s, state.Opened{Book: &state.Book{Season: season, Name: "hill"}, IDs: book.NewIDs(s.Now, season, [32]byte{1})})
	s.Pen.Writer = "Ida"
	s = planning(s, state.Ran{Command: "season"})
	for _, c := range commands {
		s = planning(s, state.Ran{Command: c})
	}
	return s
}

// TestSeasonIsReadInEverySize: no word of the page covers another, and none leaves its
// pane; ways out and their keys are whole.
func TestSeasonIsReadInEverySize(t *testing.T) {
	carded := inSeason(t)
	carded = planning(carded, state.Pressed{}, state.Released{})
	carded.Selection = state.Select(carded.PlannedBatches()[0].Batch.Subject())
	looks := map[string]state.State{"demo": planning(open(t), state.Ran{Command: "season"}), "season": inSeason(t), "dates": inSeason(t, "find dates"), "a turn": planning(inSeason(t).WithField(state.TurnLast, state.FieldOf("31 Aug")), state.Ran{Command: "turn of a nuc"}), "a card": carded}
	for name, s := range looks {
		for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1.5}, {1920, 1080, 1}, {800, 560, 1}} {
			s := planning(s, state.Resized{Width: size[0], Height: size[1]})
			s.Text = size[2]
			at := fmt.Sprintf("%s, %.0fx%.0f at %.0f %%", name, size[0], size[1], 100*size[2])
			for range 4 {
				for _, wrong := range overWritten(t, s) {
					t.Errorf("%s: %s", at, wrong)
				}
				for _, p := range walk(t, window(s), s.Size()) {
					if r, ok := p.mark.(scene.Rect); ok && r.Ref.Kind == state.OutRef && r.Intersect(p.clip).H < r.H-8 {
						t.Errorf("%s: a way out is cut", at)
					}
				}
				s = planning(s, state.Wheeled{At: s.Layout().Main.Centre(), DY: 110})
			}
		}
	}
}

// The page says each clash with its way out, marks it in the lanes, and says of each
// order on its flag what becomes of it.
func TestSeasonSaysWhatItKnows(t *testing.T) {
	s := planning(inSeason(t, "find dates"), state.Resized{Width: 1920, Height: 1080})
	var said strings.Builder
	marked, flags := 0, 0
	down := s
	for range 8 { // to the end of its list
		for _, w := range texts(t, window(down), s.Size()) {
			said.WriteString(w.Text.Text + "\n")
		}
		down = planning(down, state.Wheeled{At: s.Layout().Main.Centre(), DY: 110})
	}
	for _, p := range walk(t, window(s), s.Size()) {
		if m, ok := p.mark.(scene.Rect); ok {
			if m.Ref.Kind == state.ClashRef && s.Layout().Lanes.Contains(m.Centre()) {
				marked++
			}
			if m.Ref.Kind == state.FlagRef && strings.Contains(m.Reason, "by ") {
				flags++
			}
		}
	}
	for _, want := range []string{"are on one day", "Make it the plan", "graft ", "Order 42", "of 100", "Buying list", "Print the week"} {
		if !strings.Contains(said.String(), want) {
			t.Errorf("the page does not say %q", want)
		}
	}
	if marked < 2 || flags != len(s.OpenOrders()) {
		t.Errorf("%d clashes are marked in the lanes, %d of %d orders have a flag", marked, flags, len(s.OpenOrders()))
	}
}

// With three months in sight the ribbon still names the first one, beside "now" or the flag.
func TestTheFirstMonthIsNamedOverALongSeason(t *testing.T) {
	s := inSeason(t)
	for _, size := range planSizes {
		for _, ahead := range []calendar.Day{0, 9} {
			s := planOn(s, size, ahead)
			var months strings.Builder
			for _, w := range texts(t, window(s), s.Size()) {
				if s.Layout().Ribbon.Contains(w.At) && w.Text.Size == 12.5 {
					months.WriteString(w.Text.Text + " ")
				}
			}
			if !strings.HasPrefix(months.String(), "May ") {
				t.Errorf("%v, %d days ahead: the ribbon names %q", size, ahead, months.String())
			}
		}
	}
}

// TestTheLastFlagIsNamedBeforeItsPost: the last order in sight, where there is no room behind its post.
func TestTheLastFlagIsNamedBeforeItsPost(t *testing.T) {
	s, by, near := inSeason(t), calendar.Date(2027, time.August, 6), 0
	for s.Shift = range 120 {
		r, end := s.Layout().Ribbon, s.Width
		post := r.At(by)
		if post > end-30 || post < end-90 {
			continue
		}
		near++
		named := false
		for _, w := range texts(t, window(s), s.Size()) {
			if w.Text.Text == "42: 8" && w.clip.X <= w.box.X && w.box.Right() <= w.clip.Right() {
				named = true
				if behind := post + 13; w.box.Right() > post && behind+w.box.W > end {
					t.Errorf("shift %d: the flag at %.0f of %.0f is named from %.0f to %.0f", s.Shift, post, end, w.box.X, w.box.Right())
				}
			}
		}
		if !named {
			t.Errorf("shift %d: the flag at %.0f of %.0f has no name", s.Shift, post, end)
		}
	}
	if near == 0 {
		t.Error("the last flag is never near the edge")
	}
}

// TestNothingFollowsAGraftThatWasNotMade: its stream ends on its day, and its card lists no steps; the page is
// drawn though nothing is reckoned of it.
func TestNothingFollowsAGraftThatWasNotMade(t *testing.T) {
	s, b := open(t), booktest.Batch("lapsed")
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	pen.At("2027-04-20 08:00").Write(book.BatchPlanned{Batch: b, Line: "Plover", Day: today - 5, Yard: s.Present().View.HomeYard().Yard, Larvae: 36, Nucs: 24})
	for name, at := range map[string]time.Duration{"before its day": -10 * 24 * time.Hour, "five days later": 0} {
		s := s
		s.Now, s.Width, s.Height = s.Now.Add(at), 1440, 1600
		s.Book = s.Book.With(pen.Entries...)
		s = planning(s, state.Ran{Command: "season"})
		s.Selection = state.Select(b.Subject())
		card, after := strings.Join(cardTexts(t, s), " "), 0
		l := s.Layout()
		for i, planned := range s.PlannedLanes(l) {
			row := scene.Area{X: l.Ribbon.At(today - 3), Y: l.Lanes.Y + float64(len(s.Lanes(l))+i)*l.Lane, W: l.Lanes.W, H: l.Lane}
			for _, w := range texts(t, window(s), s.Size()) {
				if planned.Batch == b && row.Contains(w.At) {
					after++
				}
			}
		}
		if notMade := at == 0; strings.Contains(card, "Its steps") == notMade || (after == 0) != notMade {
			t.Errorf("%s: %d words follow it in its lane, its card says %q", name, after, card)
		}
	}
}

// Two orders of one day are told together on the flag of that day: how many, and what is owed of both;
// each answers to the pointer.
func TestOrdersOfOneDayAreToldTogether(t *testing.T) {
	s := inSeason(t)
	by := today + 60 // that of order 41, for ten
	pen := s.Pen.IDs
	taken := book.Entry{
		ID: pen.Next(), At: calendar.Instantly(s.Now), Written: s.Now, Writer: "Ida",
		Fact: book.OrderTaken{Order: booktest.Order("44"), Number: "44", Customer: "Farm", Queens: 30, Line: "Linnet", By: by},
	}
	season := s.Book.Season.With(taken)
	s = planning(s, state.Opened{Book: &state.Book{Season: season, Name: "hill"}, IDs: book.NewIDs(s.Now, season, [32]byte{2})}, state.Ran{Command: "season"})
	s = planning(s, state.Resized{Width: 1920, Height: 1080})
	told, flags := false, 0
	for _, w := range texts(t, window(s), s.Size()) {
		told = told || w.Text.Text == "2 orders, 40"
	}
	for _, m := range walk(t, window(s), s.Size()) {
		if r, ok := m.mark.(scene.Rect); ok && r.Ref.Kind == state.FlagRef {
			flags++
		}
	}
	if !told || flags != len(s.OpenOrders()) {
		t.Errorf("told %v, %d of %d orders answer", told, flags, len(s.OpenOrders()))
	}
}
