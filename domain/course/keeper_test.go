package course_test

import (
	"fmt"
	"math/rand/v2"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// season is a world of nucs with keepers who write down what they do and see,
// and what was true on each evening.
type season struct {
	pen    booktest.Pen
	r      *rand.Rand
	sky    sky
	shifts map[int]float64 // of batches, by the day of the graft
	truths []truth
}

// truth is how a nuc was at the end of a day, and what the plain rule says of
// it: eggs seen is laying, no eggs from day 14 on is none, and a queen of 14
// days of whom nobody knows better is laying.
type truth struct {
	day, age                int // age: days since the queen given was told to be out
	nuc                     book.NucID
	lays, queenless         bool
	saidLays, saidQueenless bool
}

const seasonDays = 75

func newSeason(seed uint64, nucs int) *season {
	r := rand.New(rand.NewPCG(seed, 7))
	s := &season{r: r, sky: newSky(r, seasonDays, -1), shifts: map[int]float64{}}
	s.at(-20 * 24).Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "UTC"})
	for d, kind := range s.sky.kind {
		day := calendar.Date(2027, 5, 1+d)
		s.at(24*d + 19).Write(book.WeatherSeen{Yard: yard, Day: day, Sign: []book.Sign{book.NoFlight, book.HalfFit, book.Flying}[kind]})
	}
	for i := range nucs {
		k := &keeper{season: s, nuc: booktest.Nuc(fmt.Sprint(i)), hive: &hive{r: r, sky: &s.sky}}
		k.keeps()
	}
	return s
}

func (s *season) at(hour int) *booktest.Pen {
	t := time.Date(2027, 5, 1, 0, 0, 0, 0, time.UTC).Add(time.Duration(hour) * time.Hour)
	return s.pen.At(t.Format("2006-01-02 15:04"))
}

// batch is one grafted on a day at six in the evening, and when a cell of it
// emerges: cells of a batch are early or late together, and each for itself.
func (s *season) batch(day int) (id book.BatchID, out float64) {
	id = booktest.Batch(fmt.Sprint("day ", day))
	if _, ok := s.shifts[day]; !ok {
		s.shifts[day] = practice.Of(practice.SharedShiftSpread).Default * s.r.NormFloat64()
		s.at(24*day + 18).Write(book.Grafted{Batch: id, Number: len(s.shifts), Larvae: 60, LarvaAge: 18})
	}
	out = float64(24*day+18) + 294.5 + s.shifts[day] + practice.Of(practice.EmergenceSpread).Default*s.r.NormFloat64()
	if s.r.Float64() < practice.Of(practice.OverAgedShare).Default {
		out -= 24
	}
	return id, out
}

// keeper keeps one nuc.
type keeper struct {
	*season
	hive     *hive
	nuc      book.NucID
	next     int     // hour of the next look
	cellDue  float64 // hour the cell given is told to be out; 0: nothing was given
	seenCell bool    // the cell was looked for
	noEggs   bool    // the last look found none, at a queen of 14 days
	eggs     int     // day on which eggs were seen; 0: none
}

func (k *keeper) keeps() {
	begun := 24*k.r.IntN(25) + 10
	k.at(begun).Write(book.NucNamed{Nuc: k.nuc, Name: k.nuc.String()}, book.NucPlaced{Nuc: k.nuc, Yard: yard})
	open := float64(k.r.IntN(2))
	k.pen.Write(book.NucMadeUp{Nuc: k.nuc, Cups: 3, Open: open})
	if open > 0 {
		k.hive.young = float64(begun + 24*5)
	}
	k.hive.bereaved(float64(begun))
	gives := begun + 24*k.r.IntN(2)
	k.next = gives + 24*(5+k.r.IntN(3)) + k.r.IntN(8)
	for now := begun; now < begun+24*45; now++ {
		k.hive.hour(float64(now))
		switch now {
		case gives:
			k.gives(now)
		case k.next:
			k.looks(now)
		}
		if now%24 == 23 {
			k.tells(now)
		}
		if k.eggs > 0 && now > 24*(k.eggs+4) {
			return
		}
	}
}

// gives is a cell, or a virgin by one keeper in four.
func (k *keeper) gives(now int) {
	k.seenCell, k.noEggs = false, false
	if k.r.IntN(4) == 0 {
		age := 4 + 76*k.r.Float64()
		out := time.Date(2027, 5, 1, 0, 0, 0, 0, time.UTC).Add(time.Duration((float64(now) - age) * float64(time.Hour)))
		k.at(now).Write(book.VirginPutIn{Nuc: k.nuc, Emerged: out})
		k.hive.given(newLady(k.r, float64(now)-age, false), float64(now), 0.74-0.11*min(age/72, 1))
		k.cellDue, k.seenCell = float64(now)-age, true
		return
	}
	id, out := k.batch(now/24 - 11)
	k.at(now).Write(book.CellGiven{Nuc: k.nuc, Batch: id})
	k.hive.given(newLady(k.r, max(out, float64(now)), false), float64(now), 0.80)
	k.cellDue = float64(now + 30)
}

// looks is one opening: for the cell at first, later for eggs.
func (k *keeper) looks(now int) {
	look := book.Looked{Nuc: k.nuc}
	if !k.seenCell {
		k.seenCell = true
		look.Cell = k.seesCell(float64(now))
		k.next = now/24*24 + 24*(6+k.r.IntN(7)) + 9 + k.r.IntN(10)
	} else {
		look.Eggs = k.seesEggs(float64(now))
		k.next = now/24*24 + 24*(3+k.r.IntN(6)) + 9 + k.r.IntN(10)
	}
	if k.r.IntN(2) == 0 {
		look.Queen = k.seesQueen(float64(now))
	}
	if k.r.IntN(3) == 0 {
		look.OwnCells = k.seesOwnCells(float64(now))
	}
	k.at(now).Write(look)
	if k.r.IntN(5) == 0 { // from memory, a day later
		last := &k.pen.Entries[len(k.pen.Entries)-1]
		last.Written = last.Written.Add(26 * time.Hour)
	}
	old := float64(now)-k.cellDue >= 14*24
	switch look.Eggs {
	case book.SingleEggs:
		k.eggs = now / 24
	case book.NoEggs:
		k.noEggs = old
		if old && look.Queen != book.QueenSeen && look.Queen != book.VirginSeen && k.r.IntN(3) == 0 {
			k.gives(now)
		}
	}
}

func (k *keeper) seesCell(now float64) book.CellSight {
	q := k.hive.queen
	walked := q != nil && !q.own
	slip := k.r.Float64()
	switch {
	case walked && now < q.out && slip < 0.9:
		return book.CellShut
	case walked && slip < 0.9:
		return book.CellOpenAtTip
	case !walked && slip < 0.3: // she walked and was not taken in
		return book.CellOpenAtTip
	case walked && slip < 0.95:
		return book.CellShut
	default:
		return book.CellTornAtSide
	}
}

func (k *keeper) seesEggs(now float64) book.EggSight {
	sees, many := 0.002, 0.0
	switch days := k.hive.laysFor(now) / 24; {
	case days >= 0:
		sees = 0.95
		if days < 1 {
			sees = 0.5
		} else if days < 2 {
			sees = 0.8
		}
		if days < 3 {
			many = 0.15
		}
	case k.hive.workersLay(now):
		sees, many = 0.9, 1
	case k.hive.queen != nil && k.hive.queen.droneLayer:
		sees, many = 0.5, 0.2
	}
	switch {
	case k.r.Float64() >= sees:
		return book.NoEggs
	case k.r.Float64() < many:
		return book.ManyEggs
	default:
		return book.SingleEggs
	}
}

// seesQueen: every second keeper who says a word of her has hardly searched.
func (k *keeper) seesQueen(now float64) book.Sight {
	finds, calls := 0.002, 0.5
	if q := k.hive.queen; q != nil && now >= q.out {
		switch {
		case k.hive.laysFor(now) >= 0 || q.droneLayer:
			finds, calls = 0.85, 0.1
		case q.mated > 0:
			finds, calls = 0.65, 0.9
		default:
			finds, calls = 0.55, 0.9
		}
	}
	if k.r.IntN(2) == 0 {
		finds *= 0.3
	}
	switch {
	case k.r.Float64() >= finds:
		return book.NoneSeen
	case k.r.Float64() < calls:
		return book.VirginSeen
	default:
		return book.QueenSeen
	}
}

func (k *keeper) seesOwnCells(now float64) book.Amount {
	sees := 0.03
	if q := k.hive.queen; q != nil && (q.own && now < q.out || now < k.hive.beside) {
		sees = 0.9
	}
	if k.r.Float64() < sees {
		return book.Said(2)
	}
	return book.Said(0)
}

func (k *keeper) tells(now int) {
	day := now / 24
	if day >= seasonDays-1 {
		return
	}
	old := k.cellDue > 0 && float64(now)-k.cellDue >= 14*24
	k.truths = append(k.truths, truth{
		day: day, age: int(float64(now)-k.cellDue) / 24, nuc: k.nuc, lays: k.hive.laysFor(float64(now)) >= 0, queenless: k.hive.queenless(),
		saidLays: k.eggs > 0 || old && !k.noEggs, saidQueenless: k.eggs == 0 && old && k.noEggs,
	})
}
