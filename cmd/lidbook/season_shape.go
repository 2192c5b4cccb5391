package main

import (
	"lidmark/domain/book"
	"lidmark/domain/season"
)

// seasonShape is a season in JSON.
type seasonShape struct {
	Clashes []clashShape `json:"clashes"`
	Search  *searchShape `json:"search,omitempty"`
}

// clashShape is what batches want at once, in JSON.
type clashShape struct {
	What string        `json:"what"`
	From string        `json:"from"`
	To   string        `json:"to"`
	Of   []thing       `json:"of"`
	Want float64       `json:"wanted"`
	Have float64       `json:"there"`
	Unit string        `json:"unit,omitempty"`
	Why  string        `json:"why"`
	Ways []wayOutShape `json:"ways"`
}

// wayOutShape is a way out of a clash in JSON.
type wayOutShape struct {
	What   string   `json:"what"`
	Days   int      `json:"moves,omitempty"`
	Left   float64  `json:"stillMissing,omitempty"`
	Before *float64 `json:"sureBefore,omitempty"`
	After  *float64 `json:"sureAfter,omitempty"`
}

// searchShape is what was found in JSON.
type searchShape struct {
	Batches  []foundShape     `json:"batches"`
	Promises []statedShape    `json:"promises"`
	Planned  []entrustedShape `json:"planned,omitempty"`
	Clashes  []clashShape     `json:"clashes,omitempty"`        // there once they are planned
	Without  []droppedShape   `json:"withoutPlanned,omitempty"` // grafts without which fewer queens are short
	Sure     float64          `json:"sureWished"`
	Minutes  float64          `json:"minutes"`
	Short    int              `json:"queensShort"`
	Least    int              `json:"leastShort"` // in any plan
	Bound    float64          `json:"leastMinutes"`
	Exact    bool             `json:"best"`
}

// droppedShape is what dropping planned grafts gives, in JSON.
type droppedShape struct {
	Grafts []string `json:"grafts"`
	Short  int      `json:"queensShort"`
	Said   string   `json:"said"`
}

func shapesOfDropped(all []season.Dropped) (shapes []droppedShape) {
	for _, d := range all {
		one := droppedShape{Short: d.Short, Said: d.Said()}
		for _, b := range d.Grafts {
			one.Grafts = append(one.Grafts, b.Day.String())
		}
		shapes = append(shapes, one)
	}
	return shapes
}

// entrustedShape is an order that waits for planned batches, in JSON.
type entrustedShape struct {
	Name   string  `json:"name"`
	Queens int     `json:"queens"`
	By     string  `json:"by"`
	Chance float64 `json:"sure"`
	Said   string  `json:"said"`
}

// foundShape is a batch that was found, in JSON.
type foundShape struct {
	Graft   string   `json:"graftOn"`
	Line    string   `json:"line,omitempty"`
	Breeder string   `json:"breeder,omitempty"`
	Larvae  int      `json:"larvae"`
	Nucs    int      `json:"nucs"`
	Yard    string   `json:"yard"`
	Minutes float64  `json:"minutes"`
	For     []string `json:"for"`
	With    *float64 `json:"sure,omitempty"`        // all queens of its order with it, where something is there without it
	Without *float64 `json:"sureWithout,omitempty"` // likewise without it

	adds string
}

// statedShape is a promise and whether it is kept, in JSON.
type statedShape struct {
	Name    string  `json:"name"`
	Queens  int     `json:"queens"`
	By      string  `json:"by"`
	Chance  float64 `json:"sure,omitempty"`
	Nearly  string  `json:"nearlyKept,omitempty"`
	Why     string  `json:"notKept,omitempty"`
	Off     int     `json:"short,omitempty"`
	Most    int     `json:"mostByThen,omitempty"`
	Nearest string  `json:"allBy,omitempty"`
}

func shapesOfClashes(v *book.View, all []season.Clash) []clashShape {
	shapes := []clashShape{}
	for _, c := range all {
		s := clashShape{
			What: c.String(), From: c.From.String(), To: c.To.String(), Of: things(v, c.Subjects()),
			Want: round(c.Want), Have: round(c.Have), Unit: c.Unit(), Why: c.Why, Ways: []wayOutShape{},
		}
		for _, w := range c.Ways {
			way := wayOutShape{What: w.What, Days: w.Days, Left: round(w.Left)}
			if w.Wished {
				before, after := round(w.Before), round(w.After)
				way.Before, way.After = &before, &after
			}
			s.Ways = append(s.Ways, way)
		}
		shapes = append(shapes, s)
	}
	return shapes
}

func searchedShape(v *book.View, f season.Found) searchShape {
	s := searchShape{Batches: []foundShape{}, Promises: []statedShape{}, Sure: round(f.Sure), Minutes: round(f.Minutes), Least: f.Least, Bound: round(f.Bound), Exact: f.Exact}
	_, s.Short = f.Queens()
	for _, b := range f.Batches {
		one := foundShape{Graft: b.Day.String(), Line: b.Line, Larvae: b.Larvae, Nucs: b.Nucs, Yard: v.Yard(b.Yard).Name, Minutes: round(b.Minutes), For: []string{}}
		if b.Breeder != nil {
			one.Breeder = b.Breeder.Name
		}
		if a := b.Adds; a != nil {
			one.With, one.Without, one.adds = new(round(a.With)), new(round(a.Without)), a.Said()
		}
		for _, i := range b.Promises {
			one.For = append(one.For, f.Promises[i].Name)
		}
		s.Batches = append(s.Batches, one)
	}
	for _, k := range f.Kept {
		p := f.Promises[k.Promise]
		s.Promises = append(s.Promises, statedShape{Name: p.Name, Queens: p.Queens, By: p.By.String(), Chance: round(k.Chance), Nearly: f.Nearly(k)})
	}
	for _, short := range f.Short {
		p := f.Promises[short.Promise]
		s.Promises = append(s.Promises, statedShape{Name: p.Name, Queens: p.Queens, By: p.By.String(), Chance: round(short.Chance), Why: short.Why, Off: short.Off, Most: short.Queens, Nearest: short.Day.String()})
	}
	return s
}
