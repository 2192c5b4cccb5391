package view

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/ui/state"
)

// TestStreamsNarrow reads the demo season's batches on many days: stages stand
// in the order of time, each thinner than the one before, and what was counted
// is sure.
func TestStreamsNarrow(t *testing.T) {
	today := calendar.Date(2027, time.May, 11)
	b := &state.Book{Season: book.NewSeason(time.LoadLocation, demo.Season(today, time.UTC))}
	seen := 0
	for d := today - 40; d <= today+30; d++ {
		r := b.On(today.At(7, 0, time.UTC), d)
		for _, batch := range r.Batches() {
			s := streamOf(r, batch)
			for i, stage := range s.stages {
				seen++
				if stage.low > stage.n || stage.n > stage.high || stage.low < 0 {
					t.Errorf("%v, batch %d, %q: %v is not within %v to %v", d, batch.Number, stage.label, stage.n, stage.low, stage.high)
				}
				if i == 0 {
					continue
				}
				before := s.stages[i-1]
				if stage.at.Before(before.at) {
					t.Errorf("%v, batch %d: stage %q begins before %q", d, batch.Number, stage.label, before.label)
				}
				if stage.n > before.n {
					t.Errorf("%v, batch %d: %q follows on %q", d, batch.Number, stage.label, before.label)
				}
			}
		}
	}
	if seen == 0 {
		t.Fatal("the demo season has no batches")
	}
}

// A graft that nobody counted is expected to give as many capped cells as today's work and the
// plan reckon with: by the shares of the book, where half of the larvae of earlier grafts were
// taken.
func TestAGraftIsExpectedByTheKeepersRates(t *testing.T) {
	day := calendar.Date(2027, time.July, 20)
	pen := &booktest.Pen{}
	for i := range 4 {
		b := booktest.Batch(string(rune('a' + i)))
		pen.At("2027-05-01 12:00").Write(book.Grafted{Batch: b, Number: i + 1, Larvae: 40})
		pen.At("2027-05-02 12:00").Write(book.TakeCounted{Batch: b, Accepted: 20})
		pen.At("2027-05-06 12:00").Write(book.CappedCounted{Batch: b, Capped: 18})
	}
	pen.At("2027-07-20 08:00").Write(book.Grafted{Batch: booktest.Batch("new"), Number: 9, Larvae: 80})
	r := (&state.Book{Season: book.NewSeason(nil, pen.Entries)}).On(day.At(12, 0, time.UTC), day)
	capped := streamOf(r, r.View.BatchNumbered(9)).stages[2].n
	if want := plan.RatesOf(r.View).Ripe(80); math.Abs(capped-want) > 1e-9 || want > 55 {
		t.Errorf("%.2f capped cells, by the rates %.2f", capped, want)
	}
}

// TestAGraftIsExpectedByTheRates follows a graft of 100 larvae of which
// nothing was counted yet.
func TestAGraftIsExpectedByTheRates(t *testing.T) {
	day := calendar.Date(2027, time.May, 11)
	at := calendar.On(day, calendar.Morning, time.UTC)
	season := book.NewSeason(nil, []book.Entry{{ID: book.EntryID{1}, At: at, Fact: book.Grafted{Batch: book.BatchID{2}, Number: 1, Larvae: 100}}})
	r := (&state.Book{Season: season}).On(day.At(12, 0, time.UTC), day)
	stages := streamOf(r, r.Batches()[0]).stages
	n := r.Numbers()
	want := 100.0
	for i, rate := range []practice.Key{0, practice.Take, practice.RipeOfTakes, practice.EmergedOfCells, practice.AcceptCell, practice.LayingOfAccepted, 0} {
		if rate != 0 {
			want *= n.Get(rate)
		}
		if d := stages[i].n - want; d > 1e-9 || d < -1e-9 {
			t.Errorf("stage %d holds %v, want %v", i, stages[i].n, want)
		}
	}
}

// TestRipeCellsAreCounted: where nobody counted the take nor the capped cells, the ripe
// ones that were counted are what the rest is expected of, given or not.
func TestRipeCellsAreCounted(t *testing.T) {
	day := calendar.Date(2027, time.May, 11)
	id, nuc := book.BatchID{2}, book.NucID{3}
	at := func(d calendar.Day) calendar.Moment { return calendar.On(d, calendar.Morning, time.UTC) }
	season := book.NewSeason(nil, []book.Entry{
		{ID: book.EntryID{1}, At: at(day - 11), Fact: book.Grafted{Batch: id, Number: 1, Larvae: 24}},
		{ID: book.EntryID{2}, At: at(day - 1), Fact: book.RipeCounted{Batch: id, Ripe: 22}},
		{ID: book.EntryID{3}, At: at(day), Fact: book.NucMadeUp{Nuc: nuc, Cups: 3}},
		{ID: book.EntryID{4}, At: at(day), Fact: book.CellGiven{Nuc: nuc, Batch: id}},
	})
	r := (&state.Book{Season: season}).On(day.At(12, 0, time.UTC), day)
	stages := streamOf(r, r.Batches()[0]).stages
	if got := stages[2]; got.n != 22 || !got.counted {
		t.Errorf("capped: %v counted %v, want 22 counted", got.n, got.counted)
	}
	if got := stages[1]; got.n < 22 || got.counted {
		t.Errorf("taken: %v counted %v, want 22 at least and not counted", got.n, got.counted)
	}
	if got, want := stages[3].n, 22*r.Numbers().Get(practice.EmergedOfCells); math.Abs(got-want) > 1e-9 {
		t.Errorf("%v emerge, want %v", got, want)
	}
}

// TestTheFanIsThatOfTheLinks reckons the chain of a graft of 60 by independent
// arithmetic: every number of larvae with its chance, link by link, where the
// luck of a batch is two equally likely rates about the mean. Mean and variance
// of the end are those of the stream.
func TestTheFanIsThatOfTheLinks(t *testing.T) {
	links := []link{{0.80, 0.11}, {0.95, 0}, {0.95, 0}, {0.80, 0}, {0.875, 0.11}} // the practice numbers
	const larvae = 60
	chances := make([]float64, larvae+1)
	chances[larvae] = 1
	mean, variance := float64(larvae), 0.0
	for _, l := range links {
		next := make([]float64, larvae+1)
		for n, chance := range chances {
			for _, p := range []float64{l.mean - l.luck, l.mean + l.luck} {
				for k := range n + 1 {
					next[k] += chance / 2 * binomial(n, k, p)
				}
			}
		}
		chances = next
		mean, variance = l.of(mean, variance)
	}
	m, v := 0.0, 0.0
	for n, chance := range chances {
		m += chance * float64(n)
	}
	for n, chance := range chances {
		v += chance * (float64(n) - m) * (float64(n) - m)
	}
	if math.Abs(mean-m) > 1e-9 || math.Abs(variance-v) > 1e-9 {
		t.Errorf("the stream expects %.6f with a variance of %.6f, the chances add up to %.6f and %.6f", mean, variance, m, v)
	}
}

// binomial is the chance of k of n with the chance p each.
func binomial(n, k int, p float64) float64 {
	chance := 1.0
	for i := range k {
		chance *= float64(n-i) / float64(i+1) * p
	}
	return chance * math.Pow(1-p, float64(n-k))
}
