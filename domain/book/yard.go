package book

import (
	"cmp"
	"iter"
	"slices"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Yard is what the book says of a yard.
type Yard struct {
	YardDescribed
	Zone        *time.Location
	Forage      Forage // zero: nobody said
	ForageSince calendar.Moment
	Wasps       calendar.Moment // they were last seen about, and not gone since; zero: not
	Features    []FeatureDrawn
	Wind        Reading        // degrees from which it mostly blows
	Picture     GroundPictured // of the ground; without JPEG there is none
	Papers      []PaperHeld
	Weather     map[calendar.Day]WeatherSeen
	Hours       map[calendar.Day]WeatherHours // of a day told by the hour and not told otherwise since
	Told        map[calendar.Day]calendar.Day // the day on which the weather of a day was told
	Normals     [12]WeatherNormal             // of January to December; the yard is zero where nobody said
	Standstill  *Standstill                   // nil: bees may move
	LastChecked calendar.Moment
	Treated     Treatment
}

// Standstill is why nothing may leave a yard.
type Standstill struct {
	Since calendar.Moment
	Of    Subject
	What  string
}

// Stand is what the book says of a stand.
type Stand struct {
	StandSet
}

// Yard is the yard of an id; a yard nobody described has only its id.
func (v *View) Yard(id YardID) *Yard { return v.yards.get(id, v.foldYard) }

// Yards yields the yards, the home yard first, then by name.
func (v *View) Yards() iter.Seq[*Yard] {
	all := collect(v, KindYard, v.Yard)
	slices.SortFunc(all, compareYards)
	return slices.Values(all)
}

func compareYards(a, b *Yard) int {
	return cmp.Or(TrueFirst(a.Home, b.Home), cmp.Compare(a.Name, b.Name), a.Yard.compare(b.Yard))
}

// HomeYard is the yard from which the keeper starts, or any yard when none is
// marked so; nil in a book without yards.
func (v *View) HomeYard() *Yard {
	for y := range v.Yards() {
		return y
	}
	return nil
}

// Zone is the time zone of the home yard; UTC in a book without yards.
func (v *View) Zone() *time.Location { return v.zone() }

// homeZone asks for what is written of the yards alone: a standstill follows from
// queens and batches, and these ask for the zone.
func (v *View) homeZone() *time.Location {
	if all := collect(v, KindYard, v.describeYard); len(all) > 0 {
		return slices.MinFunc(all, compareYards).Zone
	}
	return time.UTC
}

// Stand is the stand of an id.
func (v *View) Stand(id StandID) *Stand { return v.stands.get(id, v.foldStand) }

// Stands yields the stands of a yard in the order of their letters.
func (v *View) Stands(in YardID) iter.Seq[*Stand] {
	return slices.Values(v.rows()[in])
}

func (v *View) orderStands() map[YardID][]*Stand {
	all := collect(v, KindStand, v.Stand)
	slices.SortFunc(all, func(a, b *Stand) int {
		return cmp.Or(compareNames(a.Letter, b.Letter), a.Stand.compare(b.Stand))
	})
	rows := map[YardID][]*Stand{}
	for _, s := range all {
		rows[s.Yard] = append(rows[s.Yard], s)
	}
	return rows
}

func (v *View) foldYard(id YardID) *Yard {
	y := &Yard{YardDescribed: YardDescribed{Yard: id}, Zone: time.UTC, Weather: map[calendar.Day]WeatherSeen{}, Hours: map[calendar.Day]WeatherHours{}, Told: map[calendar.Day]calendar.Day{}}
	for _, e := range v.lines(id.Subject()) {
		v.foldYardFact(y, e)
	}
	v.foldStandstill(y)
	return y
}

// describeYard is a yard as it was described last, and no more.
func (v *View) describeYard(id YardID) *Yard {
	y := &Yard{YardDescribed: YardDescribed{Yard: id}, Zone: time.UTC}
	for _, e := range v.lines(id.Subject()) {
		if f, ok := e.Fact.(YardDescribed); ok {
			y.YardDescribed, y.Zone = f, v.season.zone(f.Zone)
		}
	}
	return y
}

func (v *View) foldYardFact(y *Yard, e *Entry) {
	switch f := e.Fact.(type) {
	case YardDescribed:
		y.YardDescribed, y.Zone = f, v.season.zone(f.Zone)
	case ForageSeen:
		if f.Forage != y.Forage {
			y.Forage, y.ForageSince = f.Forage, e.At
		}
		if y.Wasps = (calendar.Moment{}); f.Wasps {
			y.Wasps = e.At
		}
	case FeatureDrawn:
		y.draw(f)
	case WindSaid:
		y.Wind = Reading{f.From, e.At}
	case GroundPictured:
		y.Picture = f
	case PaperHeld:
		y.Papers = append(y.Papers, f)
	case WeatherSeen:
		y.takeWeather(f, e.At.Day(y.Zone))
	case WeatherHours:
		y.takeHours(f, e.At.Day(y.Zone))
	case WeatherNormal:
		y.takeNormal(f)
	case Inspected:
		y.LastChecked = e.At
	case Treated:
		y.Treated.take(e, y.Yard.Subject())
	}
}

// draw puts a feature in the place of the one it was before; one without points is
// gone.
func (y *Yard) draw(f FeatureDrawn) {
	i := slices.IndexFunc(y.Features, func(g FeatureDrawn) bool { return g.Feature == f.Feature && !f.Feature.IsZero() })
	switch gone := len(f.Points) == 0; {
	case i < 0 && !gone:
		y.Features = append(y.Features, f)
	case i >= 0 && gone:
		y.Features = slices.Delete(y.Features, i, i+1)
	case i >= 0:
		y.Features[i] = f
	}
}

// foldStandstill looks for open suspicions of the yard and of all that stands
// in it, and of what gave bees or brood that reached it.
func (v *View) foldStandstill(y *Yard) {
	var open []*Standstill // in the order of the book: of two of one instant the one written first counts
	about := func(of Subject) func(*Standstill) bool { return func(s *Standstill) bool { return s.Of == of } }
	for e := range v.suspicions() {
		switch f := e.Fact.(type) {
		case DiseaseSuspected:
			if !slices.ContainsFunc(open, about(f.Of)) && v.touches(e, f.Of, y.Yard) {
				open = append(open, &Standstill{e.At, f.Of, f.What})
			}
		case SuspicionEnded:
			open = slices.DeleteFunc(open, about(f.Of))
		}
	}
	if len(open) > 0 {
		y.Standstill = open[0]
	}
}

// touches tells whether a suspicion of a subject reaches a yard: the subject
// stands there, or bees and brood it gave in the time before did.
func (v *View) touches(e *Entry, of Subject, yard YardID) bool {
	if v.yardOf(of) == yard {
		return true
	}
	since := e.At.Instant.Add(-v.Numbers().Duration(practice.TraceBack))
	return slices.Contains(v.Trace(of, since).Yards, yard)
}

func (v *View) suspicions() iter.Seq[*Entry] { return v.counted(v.season.suspicions) }

// yardOf is where a subject stands, by its own entries alone, so that a yard
// can be folded without folding what stands in it.
func (v *View) yardOf(s Subject) (in YardID) {
	if y, ok := s.Yard(); ok {
		return y
	}
	for _, e := range v.lines(s) {
		switch f := e.Fact.(type) {
		case NucPlaced:
			if f.Nuc.Subject() == s {
				in = f.Yard
			}
		case ColonyDescribed:
			if f.Colony.Subject() == s {
				in = f.Yard
			}
		}
	}
	return in
}

func (v *View) foldStand(id StandID) *Stand {
	return v.season.folded.stands.get(id, v.lines(id.Subject()), practice.Numbers{}, Stand{StandSet{Stand: id}})
}

func (s *Stand) again() Stand { return *s }

func (s *Stand) take(e *Entry) {
	if f, ok := e.Fact.(StandSet); ok {
		s.StandSet = f
	}
}
