package siting_test

import (
	"math"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

var (
	usual = practice.Numbers{}
	marks = []siting.Stock{
		{Mark: yard.Mark{Shape: "disc", Colour: "blue"}, Count: 8},
		{Mark: yard.Mark{Shape: "bar", Colour: "yellow"}, Count: 8},
		{Mark: yard.Mark{Shape: "cross", Colour: "white"}, Count: 8},
		{Mark: yard.Mark{Shape: "wedge", Colour: "black"}, Count: 8},
	}
)

func at(x, y float64) book.Point { return book.Point{X: x, Y: y} }

// singles are single boxes of one row with a virgin each, a queen behind each door
// with a chance of one half.
func singles(row string, points ...book.Point) (l yard.Layout) {
	for i, p := range points {
		name := row + strconv.Itoa(i+1)
		l.Stands = append(l.Stands, yard.Stand{ID: id(name), Letter: name, At: p, Places: 1, Nucs: []yard.Nuc{
			{ID: book.NucID(id(name)), Name: name, Place: 1, Virgins: 1, Queenright: 0.5},
		}})
	}
	return l
}

func id(name string) (id book.StandID) {
	copy(id[:], name)
	return id
}

func inRow(n int, apart float64) (points []book.Point) {
	for i := range n {
		points = append(points, at(float64(i)*apart, 0))
	}
	return points
}

func search(t testing.TB, task siting.Task) siting.Found {
	t.Helper()
	s, err := siting.New(task, usual)
	if err != nil {
		t.Fatal(err)
	}
	for s.Step(1000) {
		continue
	}
	return s.Best()
}

// What is kept along while a layout is changed is what it costs reckoned anew: what a
// search says of its best layout is the full bill, and the best it ever had.
func TestKeptCostsAreTheFullOnes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		task := someTask(t)
		s, err := siting.New(task, usual)
		if err != nil {
			t.Skip(err)
		}
		for range 2 {
			s.Step(50)
			if kept, full := s.Kept(), s.FullOfKept(); math.Abs(kept-full) > 1e-9 {
				t.Fatalf("kept along %.12f, anew %.12f", kept, full)
			}
		}
		f := s.Best()
		if f.Now.Queens > s.Kept()+task.Least*float64(len(f.Layout.Stands))+1e-9 {
			t.Fatalf("the best costs %v, kept along %v", f.Now.Queens, s.Kept())
		}
	})
}

// someTask is a small yard with singles and stands of four, some of them fixed, and a
// strong colony.
func someTask(t *rapid.T) siting.Task {
	l := singles("N", inRow(rapid.IntRange(1, 5).Draw(t, "singles"), 1)...)
	for i := range rapid.IntRange(0, 2).Draw(t, "fours") {
		s := yard.Stand{ID: id("four" + strconv.Itoa(i)), Letter: string(rune('A' + i)), At: at(float64(i)*3, 4), Places: 4}
		for k := range 4 {
			s.Nucs = append(s.Nucs, yard.Nuc{Place: k + 1, Bearing: float64(k) * 90, Virgins: rapid.Float64Range(0, 1).Draw(t, "virgins"), Queenright: 0.3, Bees: 700})
		}
		l.Stands = append(l.Stands, s)
	}
	l.Stands[0].Fixed = rapid.Bool().Draw(t, "fixed")
	l.Colonies = []yard.Colony{{At: at(6, 6), Bees: 20_000}}
	task := siting.Moving(l, nil, marks[:rapid.IntRange(0, 3).Draw(t, "marks")], yard.Ground{}, usual)
	task.Seed, task.Tries, task.Least = rapid.Uint64().Draw(t, "seed"), 400, 0
	if rapid.Bool().Draw(t, "added") {
		task.Add = singles("P", at(0, 0)).Stands
	}
	return task
}

// Of up to four boxes with few bearings and marks the search finds the best there is.
func TestSmallCasesAreThoseOfAllLayouts(t *testing.T) {
	for _, boxes := range []int{1, 2, 3, 4} {
		for _, apart := range []float64{0.5, 1.5} {
			l := singles("N", inRow(boxes, apart)...)
			task := siting.TurnAndPaint(l, marks[:2], yard.Ground{}, usual)
			task.Marks[0].Count = 1
			task.Turn, task.Least, task.Tries = 90, 0, 8000
			s, err := siting.New(task, usual)
			if err != nil {
				t.Fatal(err)
			}
			best := math.Inf(1)
			everyLayout(l.Clone(), 0, task.Marks, 1, func(l yard.Layout) { best = min(best, s.Bill(l).Queens) })
			if got := search(t, task).Now.Queens; math.Abs(got-best) > 1e-9 {
				t.Errorf("%d boxes %v m apart: %.6f queens, the best of all %.6f", boxes, apart, got, best)
			}
		}
	}
}

// everyLayout goes through all bearings and marks of the boxes from one on; of the
// first mark there are so many left.
func everyLayout(l yard.Layout, from int, marks []siting.Stock, left int, yield func(yard.Layout)) {
	if from == len(l.Stands) {
		yield(l)
		return
	}
	for _, turn := range []float64{0, 90, 180, 270} {
		for _, m := range []yard.Mark{{}, marks[0].Mark, marks[1].Mark} {
			now := left
			if m == marks[0].Mark {
				now--
			}
			if now < 0 {
				continue
			}
			l.Stands[from].Turn, l.Stands[from].Nucs[0].Mark = turn, m
			everyLayout(l, from+1, marks, now, yield)
		}
	}
	l.Stands[from].Turn, l.Stands[from].Nucs[0].Mark = 0, yard.Mark{}
}

// A seed gives the same layout however often it is asked on the way; the longer a
// search runs the better its best is.
func TestTheSameSeedTheSameLayout(t *testing.T) {
	task := siting.Moving(singles("N", inRow(12, 1)...), nil, marks, yard.Ground{}, usual)
	task.Tries, task.Seed = 6000, 7
	asked, err := siting.New(task, usual)
	if err != nil {
		t.Fatal(err)
	}
	last := math.Inf(1)
	for more := true; more; {
		more = asked.Step(500)
		if now := asked.Kept(); now > last+1e-9 {
			t.Errorf("the best was %v and is %v", last, now)
		} else {
			last = now
		}
		asked.Best()
	}
	a, b := asked.Best(), search(t, task)
	if !reflect.DeepEqual(a, b) {
		t.Errorf("asked on the way %+v, else %+v", a, b)
	}
	if a.Tries != 6000 || a.Of != 6000 {
		t.Errorf("%d tries of %d", a.Tries, a.Of)
	}
}

func TestRulesAreKept(t *testing.T) {
	ring := []book.Point{at(-2, -2), at(14, -2), at(14, 12), at(-2, 12)}
	pond := []book.Point{at(5, 4), at(8, 4), at(8, 8), at(5, 8)}
	g := yard.Ground{Features: []book.FeatureDrawn{{What: book.Boundary, Points: ring}, {What: book.Dwelling, Points: pond}}}
	l := singles("N", inRow(10, 0.6)...)
	l.Stands[4].Fixed = true
	n, err := usual.With(practice.SetbackDwelling, 1)
	if err != nil {
		t.Fatal(err)
	}
	task := siting.Moving(l, nil, marks[:1], g, n)
	task.Marks[0].Count, task.Add = 2, singles("P", at(0, 0), at(0, 0), at(0, 0)).Stands
	f := search(t, task)
	if f.Layout.Stands[4].At != l.Stands[4].At || f.Layout.Stands[4].Turn != 0 || f.Layout.Stands[4].Nucs[0].Mark != (yard.Mark{}) {
		t.Errorf("a fixed stand was changed: %+v", f.Layout.Stands[4])
	}
	if f.Now.Painted > 2 || f.Now.Queens >= f.Was.Queens {
		t.Errorf("%+v, before %+v", f.Now, f.Was)
	}
	room := g.Room(n)
	for i, s := range f.Layout.Stands {
		moved := i >= len(l.Stands) || s.At != l.Stands[i].At
		if moved && !room.Has(s.At) {
			t.Errorf("stand %s was put at %v, where there is no room", s.Letter, s.At)
		}
		for k, o := range f.Layout.Stands[:i] {
			was := 0.0
			if i < len(l.Stands) {
				was = math.Hypot(l.Stands[i].At.X-l.Stands[k].At.X, l.Stands[i].At.Y-l.Stands[k].At.Y)
			}
			d := math.Hypot(s.At.X-o.At.X, s.At.Y-o.At.Y)
			if d < task.Apart-1e-9 && (i >= len(l.Stands) || d < was-1e-9) {
				t.Errorf("%s and %s are %.2f m apart, before %.2f", s.Letter, o.Letter, d, was)
			}
		}
	}
}

func TestOnlyThePickedAreChanged(t *testing.T) {
	l := singles("N", inRow(8, 0.8)...)
	f := search(t, siting.Moving(l, yard.Pick{l.Stands[2].ID, l.Stands[3].ID}, marks, yard.Ground{}, usual))
	changed := 0
	for i, s := range f.Layout.Stands {
		if !reflect.DeepEqual(s, l.Stands[i]) {
			changed++
			if i != 2 && i != 3 {
				t.Errorf("stand %s was not picked and is changed", s.Letter)
			}
		}
	}
	if changed == 0 {
		t.Error("nothing was changed")
	}
}

func TestNoRoom(t *testing.T) {
	ring := []book.Point{at(0, 0), at(7, 0), at(7, 7), at(0, 7)} // 3 m setback leave 1 m by 1 m
	task := siting.Adding(yard.Layout{}, singles("P", make([]book.Point, 9)...).Stands, nil, yard.Ground{Features: []book.FeatureDrawn{{What: book.Boundary, Points: ring}}}, usual)
	_, err := siting.New(task, usual)
	if err == nil || !strings.Contains(err.Error(), "of 9 more stands") || !strings.Contains(err.Error(), "draw the boundary wider") {
		t.Errorf("error %v", err)
	}
}

// Where a change gains less than it takes, nothing is changed: boxes ten metres apart
// lose next to nobody.
func TestWhatDoesNotPayIsLeft(t *testing.T) {
	l := singles("N", inRow(6, 10)...)
	task := siting.Moving(l, nil, marks, yard.Ground{}, usual)
	task.Prices.Rounds, task.Tries = 0, 3000 // else they are set nearer for a shorter walk
	f := search(t, task)
	if !reflect.DeepEqual(f.Layout.Stands, l.Stands) || len(f.Steps) != 0 || len(f.Left) != 6 {
		t.Errorf("%+v", f)
	}
}

func TestStepsSayWhatChangesAndWhatItGains(t *testing.T) {
	l := singles("P", inRow(8, 0.6)...)
	far := singles("Q", at(100, 0), at(120, 0))
	l.Stands = append(l.Stands, far.Stands...)
	f := search(t, siting.TurnAndPaint(l, marks, yard.Ground{}, usual))
	if len(f.Steps) != 1 || !strings.HasSuffix(strings.Join(f.Left, " "), "Q1 Q2") {
		t.Fatalf("steps %+v, left %v", f.Steps, f.Left)
	}
	s := f.Steps[0]
	if !strings.HasPrefix(s.Title(), "Row P, ") || len(s.Letters)+len(f.Left) != 10 || !strings.Contains(s.Words(), "marked anew; drift ") || s.Gain <= 0 || s.Drift >= s.DriftWas || s.Lost >= s.LostWas {
		t.Errorf("%s: %s; %+v", s.Title(), s.Words(), s)
	}
}

func TestNames(t *testing.T) {
	for want, letters := range map[string]string{
		"": "", "A": "A", "A, B": "A B", "N1, N2": "N1 N2", "A, N1–N3, N5, P1–P3": "A N1 N2 N3 N5 P1 P2 P3", "N9–N11": "N9 N10 N11", "N1, N01": "N1 N01",
	} {
		if got := siting.Names(strings.Fields(letters)); got != want {
			t.Errorf("%s: %q, want %q", letters, got, want)
		}
	}
}

// What is done is said in a sentence.
func TestStepWords(t *testing.T) {
	for _, tt := range []struct {
		step         siting.Step
		title, words string
	}{
		{
			siting.Step{Row: "N", Letters: []string{"N1", "N2"}, Nucs: 2, Carried: 2, Nearest: 2, Furthest: 4.25, Painted: 1, DriftWas: 0.16, Drift: 0.06},
			"Row N, 2 singles", "all carried 2.0 to 4.2 m, 1 front marked anew; drift 16 → 6 of 100",
		},
		{
			siting.Step{Letters: []string{"B", "D"}, Nucs: 8, Turned: 4, Degrees: 315, DriftWas: 0.1, Drift: 0.09},
			"Stands B, D", "4 of 8 turned by 45° anticlockwise; drift 10 → 9 of 100",
		},
		{siting.Step{Letters: []string{"P7"}, Added: true, Nucs: 1, Drift: 0.02}, "New stand P7", "drift 2 of 100"},
	} {
		if tt.step.Title() != tt.title || tt.step.Words() != tt.words {
			t.Errorf("%q: %q", tt.step.Title(), tt.step.Words())
		}
	}
}

// Of four boxes three stand close; the one in the middle is one too many, and going
// through all of them says so too.
func TestOneTooMany(t *testing.T) {
	l := singles("N", at(0, 0), at(0.6, 0), at(1.2, 0), at(30, 0))
	got := siting.Spare(l, 1, nil, usual)
	if len(got) != 1 || got[0].Name != "N2" || strings.Join(got[0].Beside, " ") != "N3 N1" || !strings.Contains(got[0].Words(), "most at N3 and N1") {
		t.Fatalf("%+v", got)
	}
	if again := siting.Spare(l, 9, func(n book.NucID) bool { return n != l.Stands[1].Nucs[0].ID }, usual); len(again) != 3 || again[0].Name == "N2" {
		t.Errorf("without N2: %+v", again)
	}
}

func TestOneTooManyIsThatOfAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var points []book.Point
		for range rapid.IntRange(2, 8).Draw(t, "boxes") {
			points = append(points, at(rapid.Float64Range(0, 6).Draw(t, "x"), rapid.Float64Range(0, 6).Draw(t, "y")))
		}
		l := singles("N", points...)
		best := 0.0
		for i := range l.Stands {
			best = max(best, others(l, i, false)-others(l, i, true))
		}
		if got := siting.Spare(l, 1, nil, usual)[0]; math.Abs(got.Gain-best) > 1e-9 {
			t.Fatalf("%s gains %.9f, the best %.9f", got.Name, got.Gain, best)
		}
	})
}

// others is what all nucs but one cost, with that one there or taken away.
func others(l yard.Layout, but int, gone bool) (sum float64) {
	l = l.Clone()
	if gone {
		l.Stands[but].At = at(1e6, 0)
	}
	doors := l.Doors(yard.SpacingOf(usual))
	virgins, workers := yard.HomingOf(doors, yard.VirginKernel(usual)), yard.HomingOf(doors, yard.WorkerKernel(usual))
	p := siting.PricesOf(usual)
	for i := range doors {
		if i != but {
			lost := l.Lost(virgins, i)
			sum += p.Lost*lost + p.Stays*(virgins.Wrong(i)-lost) + p.Drift*workers.Wrong(i)
		}
	}
	return sum
}
