package course_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
)

// score is how chances told compare with what was true.
type score struct {
	bins            [10]struct{ n, told, true float64 }
	n, sure, square float64 // n told, of these true, squared errors
	rule            float64 // squared errors of the plain rule
}

func (s *score) add(p float64, is, rule bool) {
	b := &s.bins[min(int(10*p), 9)]
	truth, said := 0.0, 0.0
	if is {
		truth = 1
	}
	if rule {
		said = 1
	}
	b.n, b.told, b.true = b.n+1, b.told+p, b.true+truth
	s.n, s.sure = s.n+1, s.sure+truth
	s.square, s.rule = s.square+(p-truth)*(p-truth), s.rule+(said-truth)*(said-truth)
}

// off is the mean distance of what was told from the share in which it was so,
// over ten bins: the expected calibration error.
func (s *score) off() (off float64) {
	for _, b := range s.bins {
		off += math.Abs(b.told-b.true) / s.n
	}
	return off
}

// early is how much too high all that was told is on the average.
func (s *score) early() (by float64) {
	for _, b := range s.bins {
		by += (b.told - b.true) / s.n
	}
	return by
}

// brier is the mean squared error; that of telling the base rate is its spread.
func (s *score) brier() (course, base, rule float64) {
	rate := s.sure / s.n
	return s.square / s.n, rate * (1 - rate), s.rule / s.n
}

func (s *score) String() string {
	var text strings.Builder
	for _, b := range s.bins {
		if b.n > 0 {
			fmt.Fprintf(&text, " %.0f: %.1f→%.1f", b.n, 100*b.told/b.n, 100*b.true/b.n)
		}
	}
	model, base, rule := s.brier()
	return fmt.Sprintf("%.0f nuc-days, off by %.3f, Brier %.4f, base rate %.4f, plain rule %.4f;%s", s.n, s.off(), model, base, rule, text.String())
}

// tell asks the course of every nuc of a world on every evening, as known then;
// begins are the days of age on which most queens begin to lay.
func tell(world *season) (lays, queenless, begins score) {
	season := book.NewSeason(booktest.Zones, world.pen.Entries)
	slices.SortStableFunc(world.truths, func(a, b truth) int { return a.day - b.day })
	var c *course.Course
	for i, is := range world.truths {
		if i == 0 || is.day != world.truths[i-1].day {
			on := time.Date(2027, 5, 1+is.day, 23, 30, 0, 0, time.UTC)
			c = course.Again(season.AsKnown(on, on), c)
		}
		got := c.Held(c.View().Nuc(is.nuc)).Chances()
		lays.add(got.Lays(), is.lays, is.saidLays)
		queenless.add(got.Queenless(), is.queenless, is.saidQueenless)
		if is.age >= 8 && is.age <= 12 {
			begins.add(got.Lays(), is.lays, is.saidLays)
		}
	}
	return lays, queenless, begins
}

// TestCalibration: what is told of a laying queen and of no queen is so as often
// as told, over a season of another structure; it is worth more than the base
// rate and than the plain rule. About fifteen nuc-days in a row are of one nuc,
// so that shares of a bin of 500 waver by some 8 points.
func TestCalibration(t *testing.T) {
	lays, queenless, begins := tell(newSeason(1, 1500))
	t.Logf("laying, 8 to 12 d: %v", &begins)
	if early := begins.early(); !(math.Abs(early) < 0.025) { // a day too early or too late is some 0.09
		t.Errorf("laying from 8 to 12 d: told %.3f too high", early)
	}
	for name, s := range map[string]*score{"laying": &lays, "no queen": &queenless} {
		t.Logf("%s: %v", name, s)
		if s.n < 20_000 {
			t.Errorf("%s: only %.0f nuc-days", name, s.n)
		}
		if off := s.off(); !(off < 0.02) {
			t.Errorf("%s: off by %.3f, want under 0.02", name, off)
		}
		for i, b := range s.bins {
			if far := math.Abs(b.told-b.true) / b.n; b.n >= 500 && !(far < 0.12) {
				t.Errorf("%s, bin %d: off by %.3f, want under 0.12", name, i, far)
			}
		}
		// Measured over five seasons: of laying 0.37 of the base rate's and 0.45 of
		// the plain rule's, of no queen 0.48 and 0.47.
		model, base, rule := s.brier()
		if !(model < 0.6*base && model < 0.6*rule) {
			t.Errorf("%s: Brier score %.4f, base rate %.4f, plain rule %.4f; want under 0.6 of both", name, model, base, rule)
		}
	}
}

// TestWorldIsLikeThePublished: in fine weather the queens of the simulated world
// lay their first egg at the published age, and as many of those accepted lay.
func TestWorldIsLikeThePublished(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 7))
	fine := newSky(r, 60, 2)
	const queens = 4000
	var lay, sum, squares float64
	for range queens {
		h := &hive{r: r, sky: &fine}
		q := newLady(r, 24*r.Float64(), false)
		h.queen = q
		for now := range 24 * 59 {
			h.hour(float64(now))
		}
		if q.lays > 0 {
			lay, sum, squares = lay+1, sum+q.firstEggDays, squares+q.firstEggDays*q.firstEggDays
		}
	}
	mean := sum / lay
	spread := math.Sqrt(squares/lay - mean*mean)
	t.Logf("mean %.2f, spread %.2f d, laying %.3f", mean, spread, lay/queens)
	rows := published(t, "first-egg-age.csv")
	about(t, "mean", mean, figure(t, rows, "Szabo", "mean_d"), 0.3)      // 10.6
	about(t, "mean", mean, figure(t, rows, "Kaftanoglu", "mean_d"), 0.4) // 10.33
	about(t, "laying", lay/queens, figure(t, published(t, "mating-success.csv"), "all methods", "laying_pct")/100, 0.02)
}
