package state

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/course"
)

// CourseParts are the chances of a nuc by what strips and bands tell apart. They
// sum to one.
type CourseParts [courseParts]float64

// CoursePart is a part of a strip, in the order in which they stand. The zero
// CoursePart is a laying queen.
type CoursePart uint8

// The parts of a strip.
const (
	LayingPart CoursePart = iota
	MatedPart
	VirginPart
	CellPart
	OwnPart // a queen of the nuc's own, from her cell until she mated
	NonePart
	DronePart
	WorkersPart
	courseParts
)

// String is the part in the keeper's words.
func (p CoursePart) String() string {
	return [...]string{
		LayingPart:  "laying",
		MatedPart:   "mated, not laying yet",
		VirginPart:  "virgin",
		CellPart:    "cell",
		OwnPart:     "own virgin or cell",
		NonePart:    "no queen",
		DronePart:   "drone layer",
		WorkersPart: "laying workers",
	}[p]
}

func coursePartsOf(c course.Chances) CourseParts {
	return CourseParts{
		LayingPart:  c.Lays(),
		MatedPart:   c.Mated + c.OwnMated,
		VirginPart:  c.Virgin,
		CellPart:    c.Cell,
		OwnPart:     c.OwnCell + c.OwnVirgin,
		NonePart:    c.None,
		DronePart:   c.DroneLayer,
		WorkersPart: c.LayingWorkers,
	}
}

// Percent is the chance of a part in whole per cent.
func (p CourseParts) Percent(of CoursePart) int { return percent(p[of]) }

// Shown tells whether a part is worth a word: it rounds to one in a hundred.
func (p CourseParts) Shown(of CoursePart) bool { return p.Percent(of) > 0 }

// Drawn are the parts as a strip shows them in which a part has at least a share of its
// width: what is less stands with the greatest. They sum to what the parts did.
func (p CourseParts) Drawn(least float64) (parts CourseParts) {
	for i, share := range p {
		if share < least {
			i = int(p.Most())
		}
		parts[i] += share
	}
	return parts
}

// Most is the most probable part.
func (p CourseParts) Most() (most CoursePart) {
	for i := range courseParts {
		if p[i] > p[most] {
			most = i
		}
	}
	return most
}

// String is the chances in words, the greatest first named: "laying 71 of 100;
// no queen 15".
func (p CourseParts) String() string {
	var said []string
	for _, part := range p.Order() {
		word := fmt.Sprintf("%s %d", part, p.Percent(part))
		if len(said) == 0 {
			word += " of 100"
		}
		said = append(said, word)
	}
	return strings.Join(said, "; ")
}

// Order are the parts worth a word, the most probable first.
func (p CourseParts) Order() (parts []CoursePart) {
	for i := range courseParts {
		if p.Shown(i) {
			parts = append(parts, i)
		}
	}
	slices.SortStableFunc(parts, func(a, b CoursePart) int { return cmp.Compare(p[b], p[a]) })
	return parts
}

// percent is a share in whole per cent.
func percent(share float64) int { return int(math.Round(100 * share)) }
