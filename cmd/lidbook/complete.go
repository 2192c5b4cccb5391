package main

import (
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// completes lets the shell complete the first argument with names of the book.
func (a *app) completes(c *cobra.Command, names func(*book.View) []string) *cobra.Command {
	all := a.namesFor(names)
	c.ValidArgsFunction = func(c *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
		if len(args) > 0 {
			return nil, cobra.ShellCompDirectiveNoFileComp
		}
		return all(c, args, typed)
	}
	return c
}

// namesFor lets the shell complete with names of the book.
func (a *app) namesFor(names func(*book.View) []string) cobra.CompletionFunc {
	return func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		s, err := a.season()
		if err != nil {
			return nil, cobra.ShellCompDirectiveNoFileComp
		}
		return names(s.At(a.now)), cobra.ShellCompDirectiveNoFileComp
	}
}

func nucNames(v *book.View) (all []string) {
	for n := range v.Nucs() {
		all = append(all, n.Name)
	}
	return all
}

func batchNumbers(v *book.View) (all []string) {
	for b := range v.Batches() {
		all = append(all, strconv.Itoa(b.Number))
	}
	return all
}

func planNames(v *book.View) (all []string) {
	for p := range v.Plans() {
		all = append(all, finder{View: v}.called(p))
	}
	return all
}

func orderNumbers(v *book.View) (all []string) {
	for o := range v.Orders() {
		if o.Open() > 0 {
			all = append(all, o.Number)
		}
	}
	return all
}

func colonyNames(v *book.View) (all []string) {
	for c := range v.Colonies() {
		all = append(all, c.Name)
	}
	return all
}

func queenNames(v *book.View) (all []string) {
	for q := range v.Queens() {
		if q.Name != "" {
			all = append(all, q.Name)
		}
	}
	return all
}

// thingNames are the names of all that a card can be asked of.
func thingNames(v *book.View) []string {
	all := append(nucNames(v), colonyNames(v)...)
	for _, n := range batchNumbers(v) {
		all = append(all, "batch "+n)
	}
	return append(all, queenNames(v)...)
}
