package course_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// TestCellByHand: a cell is given to bees without brood; it emerges today or
// tomorrow, even odds. After two days a look finds no queen.
//
//	taken in           0.80: cell out today 0.40, tomorrow 0.40; no queen 0.20
//	after a day        virgin of 0 d 0.40, cell 0.40, no queen 0.20
//	dies at home       1 − e^−0.002 = 0.0019980013
//	after two          virgin of 1 d 0.40 · 0.9980019987 = 0.3992007995
//	                   virgin of 0 d                       0.4000000000
//	                   no queen 0.20 + 0.40 · 0.0019980013 = 0.2007992005
//	not found          virgin 0.45^0.4 = 0.7265826205, else 0.998^0.4 = 0.9991995195
//	times              virgin 0.7992007995 · 0.7265826205 = 0.5806854111
//	                   no queen 0.2007992005 · 0.9991995195 = 0.2006384647
//	sum 0.7813238758   virgin 0.7432070478, no queen 0.2567929522
func TestCellByHand(t *testing.T) {
	m := course.NewModel(practice.Numbers{})
	b := m.Queenless(false)
	m.GiveCell(&b, course.Emerging{0.5, 0.5})
	b = b.After(m.Day(3, 1))
	b = b.After(m.Day(3, 1))
	near(t, "found no queen", m.Weigh(&b, course.Sight{Queen: book.NoneSeen}), 0.7813238758)
	c := b.Chances()
	near(t, "virgin", c.Virgin, 0.7432070478)
	near(t, "no queen", c.Queenless(), 0.2567929522)
}

// TestLateVirginByHand: a virgin of 15 d, old enough to fly whenever she was to
// begin. Three hours are fit on the first day, none on the second; a look finds
// no eggs.
//
//	an hour is worth   1 − Φ((15.5 − 21)/2) = 0.9970202368, three 2.9910607103
//	dies at home       0.0019980013
//	leaves by flight   0.9980019987 · (1 − e^−(0.333 · 2.9910607103)) = 0.6293946202
//	of these mated     · 0.300/0.333 = 0.5670221804, lost 0.0623724398
//	after a day        virgin 0.3686073784, mated 0.5670221804, no queen 0.0643704412
//	second day         lays the day after 0.02 · 0.5670221804 = 0.0113404436
//	                   mated still 0.5556817368
//	                   dies 0.0019980013 · 0.3686073784 = 0.0007364780
//	after two          virgin 0.3678709004, mated 0.5556817368, laying 0.0113404436, no queen 0.0651069192
//	no eggs            laying since today 0.5, else 0.998
//	times              0.3671351586, 0.5545703733, 0.0056702218, 0.0649767054
//	sum 0.9923524591   laying 0.0057139192
func TestLateVirginByHand(t *testing.T) {
	m := course.NewModel(with(t, practice.NeverFlies, 0))
	b := m.Virgin(15)
	b = b.After(m.Day(3, 1))
	c := b.Chances()
	near(t, "mated", c.Mated, 0.5670221804)
	near(t, "no queen after a day", c.Queenless(), 0.0643704412)
	b = b.After(m.Day(0, 1))
	near(t, "no eggs seen", m.Weigh(&b, course.Sight{Eggs: book.NoEggs}), 0.9923524591)
	near(t, "laying", b.Chances().Lays(), 0.0057139192)
}

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) < 1e-9) {
		t.Errorf("%s %.12f, want %.10f", what, got, want)
	}
}
