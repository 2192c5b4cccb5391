package course_test

import (
	"math"
	"math/rand/v2"
)

// What follows is a world of its own to try the course in. It goes by the hour
// and knows no belief: a queen has an hour at which she emerges, an age at which
// she first flies and one at which she no longer does, makes flights of 20
// minutes while an hour is fit, some of which end with her mated and some with
// her lost, and lays her first egg some hours after the last. All times are hours
// from the midnight the season begins at.

// sky is the weather: how fit each hour is for a mating flight, 0 to 1.
type sky struct {
	fit  []float64
	kind []int // by day: 2 fine, 1 half, 0 poor
}

// overDay is how fit the hours from 11 to 17 are on a perfect day.
var overDay = [...]float64{11: 0.25, 0.75, 1, 1, 0.75, 0.25}

func newSky(r *rand.Rand, days int, only int) (s sky) {
	kind := 2
	for range days {
		if r.Float64() < 0.4 { // weather keeps
			kind = []int{0, 1, 1, 2, 2, 2}[r.IntN(6)]
		}
		if only >= 0 {
			kind = only
		}
		clear := 0.0
		switch kind {
		case 2:
			clear = 0.6 + 0.35*r.Float64()
		case 1:
			clear = 0.15 + 0.3*r.Float64()
		}
		s.kind = append(s.kind, kind)
		for hour := range 24 {
			fit := 0.0
			if hour < len(overDay) {
				fit = clear * overDay[hour]
			}
			s.fit = append(s.fit, fit)
		}
	}
	return s
}

// lady is a queen from her cell on.
type lady struct {
	out          float64 // hour she emerges, or did
	first, last  float64 // days of age from which and until which she flies
	eager        float64 // how readily
	own          bool    // of the nuc's own raising
	mated, lays  float64 // hours; 0: not
	droneLayer   bool
	layingEnds   float64 // hours she lays
	turnsAt      float64 // age in hours at which she turns drone layer, unmated
	diesAt       float64 // age in hours at which she dies at home, unmated
	firstEggDays float64 // age at the first egg
}

func clamp(v, low, high float64) float64 { return min(max(v, low), high) }

func newLady(r *rand.Rand, out float64, own bool) *lady {
	return &lady{
		out: out, own: own,
		first: clamp(6.2+2.2*r.NormFloat64(), 4, 14), last: 21.5 + 2*r.NormFloat64(),
		eager:      clamp(1+0.25*r.NormFloat64(), 0.4, 1.6),
		layingEnds: r.ExpFloat64() * 24 / 0.002,
		turnsAt:    24 * (21.5 + r.ExpFloat64()/0.1), diesAt: 24 * r.ExpFloat64() / 0.002,
	}
}

// hive is a nuc as it truly is.
type hive struct {
	r       *rand.Rand
	sky     *sky
	queen   *lady   // there, or in her cell
	young   float64 // hour until which larvae are young enough for own cells
	begins  float64 // hour at which own cells are begun; 0: not
	beside  float64 // hour until which own cells stand beside a queen taken in
	workers float64 // hour at which workers lay, if no queen comes
	lost    float64 // hour of the last loss
}

// bereaved: the nuc is without a queen from now on.
func (h *hive) bereaved(now float64) {
	h.queen, h.lost = nil, now
	h.workers = now + 24*(23+4*h.r.NormFloat64())
	if now <= h.young && h.r.Float64() < 0.7 {
		h.begins = now + clamp(30+6*h.r.NormFloat64(), 12, 48)
	}
}

// given: a cell or a virgin is put in. Where no queen is it may be taken in, and
// own cells are torn down once she has walked for a while. Laying workers let nobody in.
func (h *hive) given(l *lady, now, taken float64) bool {
	queenless := h.queen == nil || h.queen.own && h.queen.out > now
	if !queenless || h.workersLay(now) || h.r.Float64() >= taken {
		return false
	}
	if h.begins > 0 || h.queen != nil {
		h.beside = max(now, l.out) + 24*(0.5+1.5*h.r.Float64())
	}
	h.queen, h.begins = l, 0
	return true
}

func (h *hive) hour(now float64) {
	if h.begins > 0 && now >= h.begins && h.queen == nil {
		h.queen = newLady(h.r, h.lost+24*clamp(12+h.r.NormFloat64(), 10, 14), true)
		h.begins = 0
	}
	q := h.queen
	switch {
	case q == nil || now < q.out || q.droneLayer:
	case q.lays > 0 && now >= q.lays:
		h.young = now + 24*6
		if now-q.lays > q.layingEnds {
			h.bereaved(now)
		}
	case q.mated > 0:
	case now-q.out > q.diesAt:
		h.bereaved(now)
	case now-q.out > q.turnsAt:
		q.droneLayer = true
	default:
		h.flies(q, now)
	}
}

// flies is an hour of a virgin: three times there is room for a flight.
func (h *hive) flies(q *lady, now float64) {
	age := (now - q.out) / 24
	fit := h.sky.fit[int(now)]
	if fit == 0 || age < q.first || age > q.last {
		return
	}
	for range 3 {
		switch flight := h.r.Float64(); {
		case h.r.Float64() >= fit*q.eager/3:
		case flight < 0.033:
			h.bereaved(now)
			return
		case flight < 0.033+0.29:
			q.mated = now
			q.lays = now + 24*math.Exp(math.Log(2.85)+0.33*h.r.NormFloat64())
			q.firstEggDays = (q.lays - q.out) / 24
			return
		}
	}
}

func (h *hive) laysFor(now float64) float64 {
	if q := h.queen; q != nil && q.lays > 0 && now >= q.lays {
		return now - q.lays
	}
	return -1
}

// queenless: no queen is there and none is to come out of a cell.
func (h *hive) queenless() bool { return h.queen == nil && h.begins == 0 }

func (h *hive) workersLay(now float64) bool {
	return h.queenless() && h.workers > 0 && now >= h.workers
}
