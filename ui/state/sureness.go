package state

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/spread"
	"lidmark/domain/strength"
)

// Sureness is how sure it is that a nuc holds what is shown of it.
type Sureness struct {
	Chance float64
	Parts  CourseParts
	Known  bool // the course of the nuc is known; else nothing can be said
}

// Doubt is how much of what is shown is doubtful, in three steps.
type Doubt uint8

// The steps. The zero Doubt is next to none.
const (
	Sure Doubt = iota
	Likely
	Doubtful
)

// sureFrom and likelyFrom are the chances from which what is shown is sure, and
// likely (common practice, no source).
const (
	sureFrom   = 0.9
	likelyFrom = 0.6
)

// Doubt is the step of a chance.
func (s Sureness) Doubt() Doubt {
	switch {
	case s.Chance >= sureFrom:
		return Sure
	case s.Chance >= likelyFrom:
		return Likely
	default:
		return Doubtful
	}
}

// Sureness is how sure it is that the nuc holds what is shown. It is reckoned for
// all nucs at once, when it is asked for first.
func (n *Nuc) Sureness() Sureness { return n.reading.sure()[n.place] }

// SurenessSays is that in one line, beside the nuc's name.
func (n *Nuc) SurenessSays() string {
	s := n.Sureness()
	if !s.Known {
		return n.Name + "  " + n.Presumed.Condition.String()
	}
	return fmt.Sprintf("%s  shown: %s; most probably %s", n.Name, n.Presumed.Condition, s.Parts)
}

func (r *Reading) readSure() []Sureness {
	all := make([]Sureness, len(r.Nucs))
	spread.Over(len(all), func(i int) {
		n := r.Nucs[i]
		if held := r.Course.Held(n.Nuc); !held.From.IsZero() {
			chances := held.Chances()
			all[i] = Sureness{chanceOf(n.Presumed.Condition, chances), coursePartsOf(chances), true}
		}
	})
	return all
}

// chanceOf is the chance of what a lid shows. One that is due for a look shows
// nothing but that, so it is as sure as the most probable thing it may hold.
func chanceOf(shown book.Condition, c course.Chances) float64 {
	switch shown {
	case book.NoQueen:
		return c.None + c.OwnCell + c.LayingWorkers
	case book.Cell:
		return c.Cell
	case book.Virgin:
		return c.Late()
	case book.Laying, book.GoodBrood:
		return c.Lays()
	case book.DroneLayer:
		return c.DroneLayer
	case book.LayingWorkers:
		return c.LayingWorkers
	default:
		p := coursePartsOf(c)
		return p[p.Most()]
	}
}

// Robbing is how exposed the nuc is to robbers. It is reckoned for all nucs at
// once, when it is asked for first.
func (n *Nuc) Robbing() strength.Exposure { return n.reading.robbers()[n.place] }

// RobbingSays is that in one line, beside the nuc's name.
func (n *Nuc) RobbingSays() string {
	e := n.Robbing()
	switch {
	case n.Presumed.Condition == book.Empty:
		return n.Name + "  empty"
	case n.Presumed.Condition == book.BeingRobbed:
		return n.Name + "  " + n.Presumed.Why
	case e.Level == strength.Quiet:
		return n.Name + "  robbers: quiet"
	}
	said := fmt.Sprintf("%s  robbers: %s; %s", n.Name, RobbingWord(e.Level), e.Reason)
	if e.Remedy != strength.NoRemedy {
		said += "; " + e.Remedy.String()
	}
	return said
}

// RobbingWord is a level in one word.
func RobbingWord(l strength.Level) string { return [...]string{"quiet", "watch", "act"}[l] }

func (r *Reading) readRobbers() []strength.Exposure {
	all := make([]strength.Exposure, len(r.Nucs))
	spread.Over(len(all), func(i int) {
		n := r.Nucs[i]
		if n.Presumed.Condition != book.Empty {
			y := r.judged.Strength(n.Yard)
			all[i] = y.Exposure(n.Nuc, y.Of(n.Nuc))
		}
	})
	return all
}
