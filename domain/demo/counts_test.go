package demo_test

import (
	"maps"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/bee"
	"lidmark/domain/book"
)

// The one nuc in whose book a cell was given over a laying queen.
const wantedGap = "R2"

func TestGapsAreThoseWanted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		for n := range s.Nucs() {
			switch {
			case n.Name == wantedGap && (len(n.Gaps) != 1 || !n.Gaps[0].Asks):
				t.Errorf("%s has the gaps %v, want one that asks", n.Name, n.Gaps)
			case n.Name != wantedGap && len(n.Gaps) > 0:
				t.Errorf("%s has the gaps %v", n.Name, n.Gaps)
			}
		}
	})
}

func TestBatchesAddUp(t *testing.T) {
	// Cells left together: all of the late batch, and the larvae just grafted.
	left := map[int]int{1: 0, 2: 0, 3: 0, 4: 0, 5: 25, 6: 45}
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		seen := map[int]int{}
		for b := range s.Batches() {
			seen[b.Number] = b.Left()
			if b.Taken.Counted() {
				addsUp(t, b)
			}
		}
		if !maps.Equal(seen, left) {
			t.Errorf("cells left %v, want %v", seen, left)
		}
	})
}

func addsUp(t *rapid.T, b *book.Batch) {
	gone := b.Culled + b.Out + b.Dead + b.Lost + len(b.Caged) + b.Left()
	for _, g := range b.Given {
		if !g.Virgin {
			gone++
		}
	}
	if gone != b.Capped.N {
		t.Errorf("batch %d: %d capped, %d accounted for", b.Number, b.Capped.N, gone)
	}
	take, ripe := float64(b.Taken.N)/float64(b.Larvae), float64(b.Capped.N)/float64(b.Taken.N)
	if take < .7 || take > .95 || ripe < .9 || ripe > 1 {
		t.Errorf("batch %d: take %.2f, capped %.2f of it", b.Number, take, ripe)
	}
}

func TestWhatWentOutIsPlaced(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	out, placed := map[int]int{}, map[int]int{}
	for e := range s.All() {
		switch f := e.Fact.(type) {
		case book.TakenAlong:
			if f.What != book.Cells {
				continue
			}
			out[s.Batch(f.Batch).Number] += f.Count
		case book.Dropped:
			placed[s.Batch(f.Batch).Number] += f.Count
		case book.CellGiven:
			placed[s.Batch(f.Batch).Number]++
		case book.VirginCaged:
			if f.Cell {
				placed[s.Batch(f.Batch).Number]++
			}
		}
	}
	if len(out) != 4 || !maps.Equal(out, placed) {
		t.Errorf("went out %v, placed %v", out, placed)
	}
}

func TestNoTwoNucsOnOnePlace(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	type place struct {
		stand book.StandID
		n     int
	}
	names, places := map[string]bool{}, map[place]string{}
	for n := range s.Nucs() {
		at := place{n.Stand, n.Place}
		if names[n.Name] || places[at] != "" {
			t.Errorf("%s stands where %q does, or its name is taken", n.Name, places[at])
		}
		if n.Place < 1 || n.Place > s.Stand(n.Stand).Places {
			t.Errorf("%s stands on place %d of %d", n.Name, n.Place, s.Stand(n.Stand).Places)
		}
		names[n.Name], places[at] = true, n.Name
	}
}

func TestQueensBearTheColourOfTheirYear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySeason(t)
		marked := 0
		for n := range s.Nucs() {
			l := life{season: s, name: n.Name}
			for e := range s.Lines(n.Nuc.Subject()) {
				l.take(e)
				if f, ok := e.Fact.(book.QueenMarked); ok {
					marked++
					hasColourOf(t, l.emerged.In(s.zone).Year(), f)
				}
			}
		}
		for q := range s.Queens() {
			if !q.Born.IsZero() {
				hasColourOf(t, q.Born.In(s.zone).Year(), q.Mark)
			}
		}
		if marked < 20 {
			t.Errorf("only %d queens are marked", marked)
		}
	})
}

func hasColourOf(t *rapid.T, year int, m book.QueenMarked) {
	if want := bee.MarkColour(year).String(); m.Colour != want {
		t.Errorf("a queen born in %d is %s, want %s", year, m.Colour, want)
	}
}

func TestEveryConditionIsThere(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	have := map[book.Condition]int{}
	for n := range s.Nucs() {
		have[n.Condition()]++
	}
	want := book.Conditions()
	want = slices.DeleteFunc(want, func(c book.Condition) bool { return c == book.Due }) // never recorded
	for _, c := range want {
		if have[c] == 0 {
			t.Errorf("no nuc holds %q: %v", c, have)
		}
	}
}

func TestNucsAreFreeForTheLateBatch(t *testing.T) {
	s := seasonOf(someDay, zone(t, "Europe/Berlin"))
	free := 0
	for n := range s.Nucs() {
		if n.Condition() == book.NoQueen {
			free++
		}
	}
	if left := s.BatchNumbered(5).Left(); free < left*2/3 || free > left {
		t.Errorf("%d nucs are free for %d cells", free, left)
	}
}
