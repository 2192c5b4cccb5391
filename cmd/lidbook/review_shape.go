package main

import (
	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/review"
)

// reviewShape is a review in JSON. Chances are shares, worth is in queens.
type reviewShape struct {
	Day   string           `json:"day"`
	By    string           `json:"by"`
	Hand  []wareShape      `json:"hand"`
	Nucs  []reviewNucShape `json:"nucs"`
	Best  useShape         `json:"best"`
	Order useShape         `json:"inStandOrder"`
	None  useShape         `json:"none"`
	Left  []leftShape      `json:"left"`
	Exact bool             `json:"proven"`
}

// wareShape is like things in hand, in JSON.
type wareShape struct {
	What string  `json:"what"`
	Many int     `json:"many"`
	More float64 `json:"oneMoreIsWorth"`
	Most bool    `json:"atMost,omitempty"`
}

// leftShape is what the best use leaves in hand, in JSON.
type leftShape struct {
	What string `json:"what"`
	Many int    `json:"many"`
	Do   string `json:"do"`
	By   string `json:"by,omitempty"`
}

// reviewNucShape is a nuc under review in JSON.
type reviewNucShape struct {
	Nuc    thing          `json:"nuc"`
	Yard   string         `json:"yard"`
	Decide bool           `json:"decide"`
	Sure   bool           `json:"sure"`
	Why    string         `json:"why,omitempty"`
	Spot   string         `json:"spot,omitempty"`
	Loses  float64        `json:"loses"`
	Holds  course.Chances `json:"chances"`
	Best   int            `json:"best"`
	Chosen int            `json:"chosen"`
	Ways   []optionShape  `json:"ways"`
}

// optionShape is a way with a nuc in JSON.
type optionShape struct {
	Do      string       `json:"do"`
	Gives   string       `json:"gives,omitempty"`
	If      string       `json:"if,omitempty"`
	Given   float64      `json:"given"`
	Lays    float64      `json:"laying"`
	Ready   float64      `json:"ready"`
	Minutes float64      `json:"minutes"`
	Worth   float64      `json:"worth"`
	Sums    []review.Sum `json:"sums"`
	Warned  []string     `json:"warnings,omitempty"`
}

// useShape is a use of what is in hand, in JSON.
type useShape struct {
	Nucs     int     `json:"nucs"`
	Expected float64 `json:"expected"`
	Low      float64 `json:"low"`
	High     float64 `json:"high"`
	Worth    float64 `json:"worth"`
	Minutes  float64 `json:"minutes"`
}

func shapeOfReview(v *book.View, r *review.Review, places []int) reviewShape {
	s := reviewShape{
		Day: r.Day.String(), By: r.By.String(), Hand: []wareShape{}, Left: []leftShape{}, Nucs: []reviewNucShape{},
		Best: shapeOfUse(r.This), Order: shapeOfUse(r.Order), None: shapeOfUse(r.None), Exact: r.This.Exact,
	}
	for i, w := range r.Hand.Wares {
		s.Hand = append(s.Hand, wareShape{w.Name, w.Many, round(r.More(i).Worth), !r.More(i).Exact})
	}
	for _, l := range r.Left() {
		s.Left = append(s.Left, leftShape{r.Hand.Wares[l.Ware].Name, l.Many, r.LeftWords(l), stamp(l.By, v.Zone())})
	}
	for _, i := range places {
		n := r.Nucs[i]
		row := reviewNucShape{
			Nuc: thingOf(v, n.NucNamed.Nuc.Subject()), Yard: v.Yard(n.Yard).Name, Decide: n.Decide, Sure: n.Sure, Why: n.Why, Spot: r.Spot(n, n.Ways[n.Best]),
			Loses: round(n.Loses), Holds: n.Chances, Best: n.Best, Chosen: r.This.Chosen[i], Ways: []optionShape{},
		}
		for _, w := range n.Ways {
			row.Ways = append(row.Ways, shapeOfWay(r, w))
		}
		s.Nucs = append(s.Nucs, row)
	}
	return s
}

func shapeOfWay(r *review.Review, w review.Way) optionShape {
	s := optionShape{
		Do: r.Title(w), If: w.If(), Given: round(w.Given), Lays: round(w.Lays), Ready: round(w.Ready), Minutes: w.Minutes, Worth: round(w.Worth),
		Sums: r.Why(w),
	}
	if w.Gives() {
		s.Gives = r.Hand.Wares[w.Ware-1].Name
	}
	for _, reason := range w.Warned {
		s.Warned = append(s.Warned, reason.Why)
	}
	return s
}

func shapeOfUse(u review.Use) useShape {
	return useShape{u.Over, round(u.Expected), u.Low, u.High, round(u.Worth), u.Minutes}
}
