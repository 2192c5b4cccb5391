package state_test

import (
	"strconv"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// BenchmarkPlanDrag drags a step of the ladder by a day. Floor: the answer alone,
// with its amounts. It is to be there within two frames, 33 ms.
func BenchmarkPlanDrag(b *testing.B) {
	w := planner(b)
	sheet := w.answer()
	from := scene.Point{X: w.Layout().Ribbon.At(sheet.Batches[0].Day), Y: w.PlanPane(w.Layout()).Ladder.Y + 100}
	tag := scene.Tag{Ref: scene.Ref{Kind: state.RungRef, ID: "graft", Part: "0"}}
	b.Run("drag", func(b *testing.B) {
		w.send(state.Pressed{At: from, Tag: tag})
		n := 0
		for b.Loop() {
			n++
			w.send(state.Moved{At: from.Add(days(w, float64(-1-n%8)))})
		}
		w.press("Escape").settled()
	})
	b.Run("floor", func(b *testing.B) {
		p, wish, n := plan.New(w.Present().Course), sheet.Wish, 0
		for b.Loop() {
			n++
			wish.Graft = sheet.Graft - calendar.Day(1+n%8)
			p.Answer(wish)
		}
	})
}

// BenchmarkPlanAnswer finds an answer with all that stands around it. Floor: the
// answer alone.
func BenchmarkPlanAnswer(b *testing.B) {
	w := planner(b)
	wish, _ := w.Wish()
	b.Run("sheet", func(b *testing.B) {
		n := 0
		for b.Loop() {
			n++
			w.State = w.WithField(state.WishQueens, state.FieldOf(strconv.Itoa(30+n%20)))
			w.press("End").settled()
		}
	})
	b.Run("floor", func(b *testing.B) {
		p, n := plan.New(w.Present().Course), 0
		for b.Loop() {
			n++
			wish.Queens = 30 + n%20
			p.Answer(wish)
		}
	})
}

// BenchmarkPlanOfMany opens the room Plan on 10,000 nucs and half a million entries, each time
// on another day, with all that it reckons behind the window. Floor: the day read, and the answer alone.
func BenchmarkPlanOfMany(b *testing.B) {
	begin := func() *window {
		w := &window{t: b, State: yardstick()}
		w.send(state.Opened{Book: w.Book}).settled()
		return w
	}
	b.Run("room", func(b *testing.B) {
		w := begin()
		for b.Loop() {
			w.Day = w.Today() + 1
			w.press("P", state.Alt).settled()
			if sheet, now := w.PlanSheet(); sheet == nil || !now {
				b.Fatal("no answer")
			}
			w.press("T", state.Alt)
		}
	})
	b.Run("floor", func(b *testing.B) {
		w := begin()
		w.press("P", state.Alt).settled()
		wish, _ := w.Wish()
		for b.Loop() {
			w.Day = w.Today() + 1
			if a := plan.New(w.Present().Course).Answer(wish); a.Larvae == 0 {
				b.Fatal("nothing is wished")
			}
		}
	})
}
