package main

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/yard"
	"lidmark/ui/state"
)

// layoutPaper is the layout that is printed, as the flags want it.
type layoutPaper struct {
	state.Laid
	scale  string
	pegs   []string
	fronts []book.FrontMarked
}

// oneLayout finds a try-out; without a name it is the plan of the yard, else how the
// yard stands.
func oneLayout(p *printing, f finder, names []string) error {
	if len(names) > 1 {
		return &usageError{err: errors.New("print layout: name one try-out, or none for the plan of the yard")}
	}
	y, err := f.Yard(p.yard), error(nil)
	if p.yard.IsZero() {
		y, err = f.laidOr("")
	}
	if err != nil {
		return err
	}
	kept, err := f.keptOrStanding(y, names)
	if err != nil {
		return err
	}
	now := yard.Of(f.View, y.Yard)
	p.laid.Laid = state.Laid{Yard: y.Yard, Name: kept.Name, Try: now.Try(kept.LayoutTried), From: kept.From}
	if p.laid.Scale, err = scaleOf(p.laid.scale); err != nil {
		return err
	}
	p.laid.Pegs, err = pegsOf(y, p.laid.pegs)
	return err
}

// keptOrStanding is the try-out of a name; without one the plan, or a try-out that
// changes nothing.
func (f finder) keptOrStanding(y *book.Yard, names []string) (book.Layout, error) {
	if len(names) == 1 {
		return f.tryOut(y, names[0])
	}
	l, _ := f.PlannedLayout(y.Yard)
	return l, nil
}

// scaleOf reads a scale, "1:100"; 0 for none.
func scaleOf(text string) (float64, error) {
	if text == "" {
		return 0, nil
	}
	n, err := strconv.Atoi(strings.TrimPrefix(strings.ReplaceAll(text, " ", ""), "1:"))
	const least, most = 10, 100_000
	if err != nil || n < least || n > most {
		return 0, fmt.Errorf("--scale %s: write a scale from 1:%d to 1:%d, like 1:100", text, least, most)
	}
	return float64(n), nil
}

// pegsOf are the points at which tapes begin, by their names or as they are typed.
func pegsOf(y *book.Yard, typed []string) (two []yard.Peg, err error) {
	if len(typed) != 0 && len(typed) != 2 {
		return nil, fmt.Errorf("--peg: say it twice, for the two points at which tapes begin, or not at all")
	}
	g := yard.GroundOf(y)
	drawn := g.Pegs()
	for _, text := range typed {
		if i := slices.IndexFunc(drawn, func(p yard.Peg) bool { return strings.EqualFold(p.Name, text) }); i >= 0 {
			two = append(two, drawn[i])
			continue
		}
		at, err := pointOf(text)
		if err != nil {
			return nil, unknownPeg(drawn, text)
		}
		two = append(two, yard.Peg{Name: "the point " + strings.TrimSpace(text), At: at})
	}
	return two, nil
}

func unknownPeg(drawn []yard.Peg, text string) error {
	var there []string
	for _, p := range drawn {
		there = append(there, p.Name)
	}
	if len(there) == 0 {
		return fmt.Errorf("--peg %s: nothing is drawn there; write a point in metres, like 4.5,12", text)
	}
	return fmt.Errorf("--peg %s: there is %s; or write a point in metres, like 4.5,12", text, shortList(there))
}

// anyFronts finds the try-out whose marks are printed; without a name they are those
// that the fronts have.
func anyFronts(p *printing, f finder, names []string) error {
	if len(names) == 0 {
		return nil
	}
	if err := oneLayout(p, f, names); err != nil {
		return err
	}
	p.yard = p.laid.Yard
	l, err := f.tryOut(f.Yard(p.laid.Yard), names[0])
	p.laid.fronts = l.Fronts
	return err
}
