package main

import (
	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// layoutShape is what it costs how the boxes of a yard stand, and what would be
// better, in JSON.
type layoutShape struct {
	Yard    string         `json:"yard"`
	Nucs    int            `json:"nucs"`
	Full    bool           `json:"asIfAVirginFlewFromEach"`
	Virgins float64        `json:"virginsToFly"`
	Lost    float64        `json:"virginsLost"`
	Wrong   float64        `json:"virginsAtAWrongDoor"`
	Drift   float64        `json:"driftShare"`
	Alike   int            `json:"entrancesAlike"`
	Pull    float64        `json:"strongColoniesAdd"`
	Round   float64        `json:"roundM"`
	Better  *betterShape   `json:"better,omitempty"`
	TooMany []tooManyShape `json:"tooMany,omitempty"`
	TryOuts []tryShape     `json:"tryOuts"`
}

// betterShape is a layout that was found, in JSON.
type betterShape struct {
	Tries  int               `json:"tries"`
	Was    billShape         `json:"was"`
	Now    billShape         `json:"now"`
	Lost   string            `json:"virginsLostSaid,omitempty"` // not where boxes are added
	Drift  string            `json:"driftSaid,omitempty"`
	Steps  []layoutStepShape `json:"steps"`
	Left   []string          `json:"leftAsTheyAre,omitempty"`
	Stands []laidShape       `json:"stands"`
}

type billShape struct {
	Lost    float64 `json:"virginsLost"`
	Stay    float64 `json:"virginsAtAWrongDoorWithoutQueen"`
	Drift   float64 `json:"driftShare"`
	Round   float64 `json:"roundM"`
	Carried int     `json:"nucsCarried"`
	Turned  int     `json:"nucsTurned"`
	Painted int     `json:"frontsMarked"`
	Minutes float64 `json:"minutes"`
	Queens  float64 `json:"queens"`
}

type layoutStepShape struct {
	Title string  `json:"title"`
	Words string  `json:"words"`
	Gain  float64 `json:"gainQueens"`
}

type laidShape struct {
	Letter string   `json:"letter"`
	X      float64  `json:"xM"`
	Y      float64  `json:"yM"`
	Turn   float64  `json:"turnDeg"`
	Marks  []string `json:"marks,omitempty"`
}

type tooManyShape struct {
	Nuc   string  `json:"nuc"`
	Words string  `json:"words"`
	Gain  float64 `json:"gainQueens"`
}

func shapeOfLayout(v *book.View, y *book.Yard) (layoutShape, yard.Layout) {
	n := v.Numbers()
	l := yard.Of(v, y.Yard).With(course.New(v).Holding)
	c := yard.CostOf(l, n)
	full := c.Virgins < 1
	if full {
		l = l.Full()
		c = yard.CostOf(l, n)
	}
	_, metres := yard.RoundOf(l, yard.GroundOf(y))
	return layoutShape{
		Yard: y.Name, Nucs: c.Nucs, Full: full, Virgins: round(c.Virgins), Lost: round(c.Lost), Wrong: round(c.Wrong),
		Drift: c.Drift, Alike: c.Alike, Pull: round(c.Pull), Round: round(metres),
	}, l
}

func shapeOfBetter(v *book.View, l yard.Layout, f siting.Found) *betterShape {
	b := &betterShape{Tries: f.Tries, Was: shapeOfBill(f.Was), Now: shapeOfBill(f.Now), Left: f.Left, Steps: []layoutStepShape{}}
	if len(f.Layout.Stands) == len(l.Stands) {
		c := yard.Compare(l, f.Layout, v.Numbers())
		b.Lost, b.Drift = c.Lost.Words(), c.Drift.Words()
	}
	for _, s := range f.Steps {
		b.Steps = append(b.Steps, layoutStepShape{s.Title(), s.Words(), round(s.Gain)})
	}
	for _, s := range f.Layout.Stands {
		stand := laidShape{Letter: s.Letter, X: round(s.At.X), Y: round(s.At.Y), Turn: s.Turn}
		for _, n := range s.Nucs {
			stand.Marks = append(stand.Marks, n.Mark.Colour+" "+n.Mark.Shape)
		}
		b.Stands = append(b.Stands, stand)
	}
	return b
}

func shapeOfBill(b siting.Bill) billShape {
	return billShape{round(b.Lost), round(b.Stay), b.Drift, round(b.Round), b.Carried, b.Turned, b.Painted, round(b.Minutes), round(b.Queens)}
}
