package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// numberShape is one of the keeper's numbers in JSON.
type numberShape struct {
	Name       string  `json:"name"`
	Title      string  `json:"title"`
	Group      string  `json:"group"`
	Unit       string  `json:"unit"`
	Value      float64 `json:"value"`
	ByBook     float64 `json:"byYourBook"`
	Default    float64 `json:"default"`
	Min        float64 `json:"min"`
	Max        float64 `json:"max"`
	Own        bool    `json:"own"`
	Front      bool    `json:"front"`
	Source     string  `json:"source"`
	Confidence string  `json:"confidence"`
	Used       string  `json:"usedFor"`
}

func numbersCommand(a *app) *cobra.Command {
	var all bool
	c := a.reading(&cobra.Command{
		Use:   "numbers [NAME]",
		Short: "My numbers: what the rules reckon with, and where it comes from",
		Example: "  lidbook numbers                     those that matter most, and your own\n  lidbook numbers --all\n" +
			"  lidbook numbers emergence_spread    one of them, with its source\n  lidbook numbers set emergence_spread 10\n  lidbook numbers back emergence_spread",
		Args: cobra.MaximumNArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		if len(args) == 1 {
			key, err := numberNamed(args[0])
			if err != nil {
				return err
			}
			n := numberOf(v, byBook(v), practice.Of(key), true)
			return a.show([]numberShape{n}, func() { a.printNumber(n) })
		}
		return a.numberList(v, all)
	})
	c.Flags().BoolVar(&all, "all", false, "all of them")
	c.AddCommand(setNumberCommand(a), backCommand(a))
	return c
}

func numberNamed(name string) (practice.Key, error) {
	key, ok := practice.ByName(name)
	if !ok {
		return 0, fmt.Errorf("no number is called %s: see them with lidbook numbers --all", name)
	}
	return key, nil
}

// byBook are the numbers as the book has moved them: what is expected is reckoned with these.
func byBook(v *book.View) practice.Numbers { return plan.RatesOf(v).In(v.Numbers()) }

func numberOf(v *book.View, moved practice.Numbers, row practice.Number, own bool) numberShape {
	return numberShape{
		row.Name, row.Title, row.Group.String(), string(row.Unit), v.Numbers().Get(row.Key), moved.Get(row.Key), row.Default, row.Min, row.Max, own,
		row.Front, row.Source, row.Confidence.String(), row.Used,
	}
}

func (a *app) numberList(v *book.View, all bool) error {
	own := map[practice.Key]bool{}
	for k := range v.Numbers().Changed() {
		own[k] = true
	}
	list, moved := []numberShape{}, byBook(v)
	for row := range practice.All() {
		if all || row.Front || own[row.Key] {
			list = append(list, numberOf(v, moved, row, own[row.Key]))
		}
	}
	count := 0
	for range practice.All() {
		count++
	}
	return a.show(list, func() {
		a.printNumbers(list)
		if len(list) < count {
			a.line("%d of %d numbers; the others with --all, one of them with lidbook numbers NAME", len(list), count)
		}
	})
}

func (a *app) printNumbers(list []numberShape) {
	group := ""
	rows := [][]string{{"  name", "value", "allowed", "what", "how sure, and source"}}
	for _, n := range list {
		if n.Group != group {
			a.table(rows)
			rows, group = nil, n.Group
			a.line("%s", group)
		}
		own := ""
		if n.Own {
			own = "yours; default " + figure(n.Default)
		}
		if by := n.moved(); by != "" {
			own = strings.TrimPrefix(own+"; "+by, "; ")
		}
		rows = append(rows, []string{"  " + n.Name, figure(n.Value) + " " + n.Unit, figure(n.Min) + " to " + figure(n.Max), n.Title, n.Confidence + ": " + n.Source, own})
	}
	a.table(rows)
}

func (a *app) printNumber(n numberShape) {
	a.line("%s: %s", n.Name, n.Title)
	a.facts("value", figure(n.Value)+" "+n.Unit, "in use", n.moved(), "default", figure(n.Default), "allowed", figure(n.Min)+" to "+figure(n.Max),
		"source", n.Source, "how sure", n.Confidence, "used for", n.Used)
}

// moved says what is in use where the batches of the book have moved a number.
func (n numberShape) moved() string {
	if math.Abs(n.ByBook-n.Value) < 0.005 {
		return ""
	}
	return fmt.Sprintf("%.2f by your batches", n.ByBook)
}

func figure(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

func setNumberCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:   "set NAME VALUE [MONEY]",
		Short: "Set a number of your own, from now on; a price with your word for the money",
		Args:  cobra.RangeArgs(2, 3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		key, err := numberNamed(args[0])
		if err != nil {
			return err
		}
		value, err := strconv.ParseFloat(args[1], 64)
		if err != nil {
			return fmt.Errorf("%s: %q is no number", args[0], args[1])
		}
		if _, err := d.view().Numbers().With(key, value); err != nil {
			return err
		}
		f := book.NumberChanged{Number: args[0], Value: value}
		if len(args) == 3 {
			if practice.Of(key).Unit != practice.Money {
				return fmt.Errorf("%s is counted in %s: leave out %q", args[0], practice.Of(key).Unit, args[2])
			}
			f.In = args[2]
		}
		return d.write(f)
	})
}

func backCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:   "back NAME",
		Short: "Put a number back to its default, from now on",
		Args:  cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		if _, err := numberNamed(args[0]); err != nil {
			return err
		}
		return d.write(book.NumberChanged{Number: args[0], Back: true})
	})
}
