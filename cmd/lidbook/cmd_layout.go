package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/siting"
	"lidmark/domain/yard"
)

// layoutFlags are what is asked of a layout.
type layoutFlags struct {
	improve          string
	marks            []string
	add, less, tries int
	seed             int
}

func layoutCommand(a *app) *cobra.Command {
	var f layoutFlags
	c := a.reading(&cobra.Command{
		Use:   "layout",
		Short: "What the way the boxes of a yard stand costs, and a better one",
		Long: "Reckons the virgins who end at a wrong door and are lost, and the workers who drift.\nWith --improve it looks for a better layout, with --add for places for more single\nboxes, with --less for boxes that are too many. Nothing is written: lidbook layout try\n" +
			"keeps what is found, lidbook layout plan makes it the plan. The same seed finds the same.",
		Example: "  lidbook layout\n  lidbook layout --improve turn --mark \"8 blue disc\" --mark \"8 yellow bar\"\n  lidbook layout --improve move --tries 50000 --seed 2",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		y, err := finder{View: v}.laidOr(a.flags.yard)
		if err != nil {
			return err
		}
		a.sayYard(v, y)
		s, l := shapeOfLayout(v, y)
		s.TryOuts = triesOf(v, y)
		if s.Better, err = f.better(v, y, l); err != nil {
			return err
		}
		for _, spared := range siting.Spare(l, f.less, nil, v.Numbers()) {
			s.TooMany = append(s.TooMany, tooManyShape{spared.Name, spared.Words(), round(spared.Gain)})
		}
		return a.show(s, func() { a.printLayout(s) })
	})
	f.search(c)
	amount(c, &f.less, "less", 0, "tell which `BOXES` are too many, so many")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard, or the first with stands)")
	c.AddCommand(layoutTry(a), layoutSet(a), layoutPlan(a), layoutDrop(a), layoutCompare(a))
	return c
}

// better looks for a better layout, where that is asked for.
func (f layoutFlags) better(v *book.View, y *book.Yard, l yard.Layout) (*betterShape, error) {
	task, err := f.task(v, y, l, unnamed())
	if err != nil || task == nil {
		return nil, err
	}
	found, err := f.found(*task, v)
	if err != nil {
		return nil, err
	}
	return shapeOfBetter(v, l, found), nil
}

// task is what is to be looked for, nil where nothing is; name names boxes that are
// added.
func (f layoutFlags) task(v *book.View, y *book.Yard, l yard.Layout, name func() (book.StandID, string)) (*siting.Task, error) {
	marks, err := stocks(f.marks)
	if err != nil {
		return nil, err
	}
	g, n := yard.GroundOf(y), v.Numbers()
	var t siting.Task
	switch {
	case f.improve == "" && f.add == 0:
		return nil, nil
	case f.improve == "":
		t = siting.Adding(l, nil, marks, g, n)
	case f.improve == "turn":
		t = siting.TurnAndPaint(l, marks, g, n)
	case f.improve == "move":
		t = siting.Moving(l, nil, marks, g, n)
	default:
		return nil, fmt.Errorf("--improve %s: say turn or move", f.improve)
	}
	t.Add = siting.Singles(f.add, name)
	return &t, nil
}

// unnamed names boxes that are added without being kept.
func unnamed() func() (book.StandID, string) {
	k := 0
	return func() (book.StandID, string) {
		k++
		return book.StandID{}, fmt.Sprintf("new %d", k)
	}
}

// stocks are marks to hand as they are typed: how many, the colour, the shape.
func stocks(typed []string) (marks []siting.Stock, err error) {
	for _, text := range typed {
		words := strings.Fields(text)
		if len(words) != 3 {
			return nil, fmt.Errorf("--mark %q: say how many, the colour and the shape, as in \"8 blue disc\"", text)
		}
		count, err := strconv.Atoi(words[0])
		if err != nil || count < 1 {
			return nil, fmt.Errorf("--mark %q: %q is no number of marks; say how many first, as in \"8 blue disc\"", text, words[0])
		}
		marks = append(marks, siting.Stock{Mark: yard.Mark{Colour: words[1], Shape: words[2]}, Count: count})
	}
	return marks, nil
}
