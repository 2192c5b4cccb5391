package siting_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// A stand is turned the way it is told: clockwise by so many degrees, and the other way
// round where that is shorter.
func TestStepsSayWhichWayAStandIsTurned(t *testing.T) {
	for _, tt := range []struct {
		was, is, degrees float64
		words            string
	}{
		{0, 45, 45, "the nuc turned by 45°;"},
		{45, 0, 315, "the nuc turned by 45° anticlockwise;"},
		{350, 10, 20, "the nuc turned by 20°;"},
		{10, 350, 340, "the nuc turned by 20° anticlockwise;"},
	} {
		l := singles("N", at(0, 0), at(1, 0))
		l.Stands[0].Turn = tt.was
		to := l.Clone()
		to.Stands[0].Turn = tt.is
		steps := siting.StepsTo(siting.TurnAndPaint(l, nil, yard.Ground{}, usual), to, false, usual)
		if len(steps) != 1 || steps[0].Turned != 1 || steps[0].Degrees != tt.degrees || !strings.HasPrefix(steps[0].Words(), tt.words) {
			t.Errorf("from %v° to %v°: %+v, %q", tt.was, tt.is, steps, steps[0].Words())
		}
	}
}

// What gains less than the task's least is left as it is, however much is done; with no
// least it pays.
func TestNothingPaysAboveTheLeast(t *testing.T) {
	l := singles("N", inRow(6, 0.6)...)
	to := l.Clone()
	for i := range to.Stands {
		to.Stands[i].Nucs[0].Mark = marks[i%len(marks)].Mark
	}
	task := siting.TurnAndPaint(l, marks, yard.Ground{}, usual)
	task.Least = 0
	steps := siting.StepsTo(task, to, true, usual)
	if len(steps) == 0 || steps[0].Gain <= 0 {
		t.Fatalf("marks on a close row gain nothing: %+v", steps)
	}
	for _, one := range []float64{1000, steps[0].Gain + 1} {
		if task.Least = one; len(siting.StepsTo(task, to, true, usual)) != 0 {
			t.Errorf("with a least of %v queens: %+v", one, siting.StepsTo(task, to, true, usual))
		}
	}
}

// What the others gain without a nuc is what the layout costs with it and without it,
// its own bees apart.
func TestSparedFiguresAreThoseOfTheLayouts(t *testing.T) {
	l := singles("N", at(0, 0), at(0.5, 0), at(-0.6, 0), at(0, 0.7), at(0, -0.8))
	for i := range l.Stands {
		got := siting.Spare(l, 1, only(l.Stands[i].Nucs[0].ID), usual)[0]
		without := l.Clone()
		without.Stands = slices.Delete(without.Stands, i, i+1)
		before, after := yard.CostOf(l, usual), yard.CostOf(without, usual)
		doors := l.Doors(yard.SpacingOf(usual))
		workers, virgins := yard.HomingOf(doors, yard.WorkerKernel(usual)), yard.HomingOf(doors, yard.VirginKernel(usual))
		drift := before.Drift*float64(before.Nucs) - workers.Wrong(i) - after.Drift*float64(after.Nucs)
		lost := before.Lost - l.Lost(virgins, i) - after.Lost
		if math.Abs(got.Drift-drift) > 1e-9 || math.Abs(got.Lost-lost) > 1e-9 || drift <= 0 {
			t.Errorf("without %s drift falls by %.9f and %.9f fewer are lost, reckoned anew %.9f and %.9f", got.Name, got.Drift, got.Lost, drift, lost)
		}
	}
}

// only is the choice of one nuc.
func only(id book.NucID) func(book.NucID) bool { return func(n book.NucID) bool { return n == id } }

// Of four neighbours that fare better the three are named that do so by most: the
// nearest.
func TestThreeNeighboursAreNamed(t *testing.T) {
	l := singles("N", at(0, 0), at(0.5, 0), at(-0.6, 0), at(0, 0.7), at(0, -0.8))
	got := siting.Spare(l, 1, only(l.Stands[0].Nucs[0].ID), usual)[0]
	if strings.Join(got.Beside, " ") != "N2 N3 N4" || !strings.HasSuffix(got.Words(), "most at N2, N3 and N4") {
		t.Errorf("%v: %s", got.Beside, got.Words())
	}
}
